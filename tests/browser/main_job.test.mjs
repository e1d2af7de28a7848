// The main job in Chromium, by role and tap: an owner adds an aircraft and its limits, logs it,
// sees which clock stops it first and when, loses signal, comes back, and hands the file over.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { begin } from './driver.mjs';

let stage;

before(async () => {
  stage = await begin();
});
after(() => stage.end());

/** The day so many days ago, as a date field holds it. */
async function daysAgo(visit, days) {
  return visit.page.evaluate((back) => {
    const day = new Date();
    day.setDate(day.getDate() - back);
    const two = (number) => String(number).padStart(2, '0');
    return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
  }, days);
}

async function accept(visit) {
  await visit.tap('button', 'I have read this');
}

/** Adds the aircraft of the story: 2,200 h or 12 years, new ten years ago, flown 100 h a year. */
async function addAircraft(visit) {
  await visit.tap('button', 'Add an aircraft');
  await visit.fill('Registration', 'TEST-1');
  await visit.fill(/^Overhaul at hours/, '2200');
  await visit.fill(/^Overhaul at years/, '12');
  await visit.fill('Day of manufacture or last overhaul', await daysAgo(visit, 3650));
  await visit.fill('Hour meter reads now', '1000.0');
  await visit.fill(/^Hours you fly in a year/, '100');
  await visit.tap('button', 'Add aircraft');
  await visit.sees('heading', 'TEST-1');
}

/** Types digits on the pad, one tap a digit. */
async function type(visit, digits) {
  for (const digit of digits) await visit.tap('button', digit === '.' ? 'Decimal sign' : digit);
}

async function exported(visit) {
  await visit.tap('tab', 'Files');
  return visit.download(() => visit.tap('button', 'Export the journal'));
}

test('the main job: add, log, see, lose signal, hand over, wipe, join', async (context) => {
  const visit = await stage.visit();
  context.after(() => visit.close());
  await accept(visit);
  await addAircraft(visit);
  await visit.sees('link', 'Hours left: 1,200.0 h. Why?');
  await visit.keptOffline();
  await visit.offline(true);

  // A reading from opening: Log, digits, Save. One aircraft goes straight to its pad.
  await visit.reload();
  await visit.sees('button', /TEST-1/);
  let taps = 0;
  await visit.tap('button', 'Log a reading');
  taps += 1;
  await type(visit, '1002.3');
  await visit.tap('button', 'Save the reading');
  taps += 1;
  assert.ok(taps <= 4, `a reading takes ${taps} taps, digits not counted`);
  await visit.reads('status', 'Saved: 1,002.3 h for TEST-1.');
  await visit.sees('link', 'Hours left: 1,197.7 h. Why?');

  // Still there without a signal after the page was closed.
  await visit.reload();
  await visit.tap('button', /TEST-1/);
  await visit.sees('link', 'Hours left: 1,197.7 h. Why?');
  await visit.offline(false);

  const first = await exported(visit);
  assert.match(first.name, /^two-clocks-\d{4}-\d{2}-\d{2}\.(jsonl|txt)$/);
  const lines = first.bytes
    .toString()
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line));
  assert.equal(lines[0].journal, 'twoclocks');
  assert.deepEqual(
    lines.slice(1).map((fact) => fact.kind),
    ['aircraft', 'meter', 'item', 'limit', 'usage_planned', 'reading'],
  );

  // Another phone: the same file, joined, gives the same bytes.
  const other = await stage.visit();
  context.after(() => other.close());
  await accept(other);
  await other.tap('tab', 'Files');
  await other.choose({ name: first.name, bytes: first.bytes }, () =>
    other.tap('button', 'Import a file'),
  );
  await other.reads('paragraph', 'New aircraft: TEST-1');
  await other.tap('button', 'Join it to mine');
  await other.reads('status', 'Joined: 6 records.');
  const second = await exported(other);
  assert.ok(first.bytes.equals(second.bytes), 'export, wipe, import, export gives the same bytes');

  // Set aside, it is out of sight and not lost.
  await other.tap('button', /^Set aside/);
  await other.tap('tab', 'Fleet');
  await other.sees('button', 'Add an aircraft');
  await other.tap('tab', 'Files');
  await other.tap('button', 'Count it again');
  await other.tap('tab', 'Fleet');
  await other.sees('button', /TEST-1/);

  for (const person of [visit, other]) {
    assert.deepEqual(person.faults, []);
    assert.deepEqual(person.strangers(), []);
  }
});

test('a falling meter is refused with a way out: the meter change', async (context) => {
  const visit = await stage.visit();
  context.after(() => visit.close());
  await accept(visit);
  await addAircraft(visit);
  await visit.tap('button', 'Log a reading');
  await type(visit, '0999.9'); // a leading zero is not kept
  await visit.reads('alert', /It cannot fall/);
  await visit.tap('button', 'The meter was changed');
  await visit.fill('Old meter’s last reading', '1001');
  await visit.fill('New meter’s first reading', '0');
  await visit.tap('button', 'Save');
  await visit.reads('status', 'Saved: 2 records.');
  await visit.tap('tab', 'Fleet');
  await visit.tap('button', /TEST-1/);
  await visit.sees('link', 'Hours left: 1,199.0 h. Why?');
  await visit.tap('button', 'Log a reading');
  await type(visit, '0.4');
  await visit.tap('button', 'Save the reading');
  await visit.sees('link', 'Hours left: 1,198.6 h. Why?');
  assert.deepEqual(visit.faults, []);
});

test('every figure answers why, and Back closes the answer before the page', async (context) => {
  const visit = await stage.visit();
  context.after(() => visit.close());
  await accept(visit);
  await addAircraft(visit);
  await visit.tap('link', /^Hours left/);
  await visit.sees('heading', 'Hours left to overhaul');
  await visit.back();
  await visit.seesNo('heading', 'Hours left to overhaul');
  await visit.sees('heading', 'TEST-1');
  await visit.tap('link', /^Break-even/);
  await visit.sees('heading', 'The rate that meets both clocks at once');
  await visit.tap('button', 'Close');
  await visit.seesNo('heading', 'The rate that meets both clocks at once');
  await visit.sees('heading', 'TEST-1');
});

test('a record is corrected and withdrawn, and both stay in sight', async (context) => {
  const visit = await stage.visit();
  context.after(() => visit.close());
  await accept(visit);
  await addAircraft(visit);
  await visit.tap('button', 'Log a reading');
  await type(visit, '1005');
  await visit.tap('button', 'Save the reading');
  await visit.tap('button', 'History');
  await visit.tap('button', /Reading 1,005.0 h/);
  await visit.tap('button', 'Correct');
  await visit.fill('Reading', '1004.5');
  await visit.fill('Why it is corrected', 'Misread');
  await visit.tap('button', 'Save correction');
  await visit.sees('button', /Reading 1,004.5 h/);
  await visit.sees('button', /Reading 1,005.0 h.*corrected/);
  await visit.tap('button', /Reading 1,004.5 h/);
  await visit.tap('button', 'Withdraw');
  await visit.fill('Why it is withdrawn', 'Another aircraft');
  await visit.tap('button', 'Withdraw');
  await visit.tap('tab', 'Fleet');
  await visit.tap('button', /TEST-1/);
  await visit.sees('link', 'Hours left: 1,200.0 h. Why?');
  assert.deepEqual(visit.faults, []);
});

test('a foreign file is refused and changes nothing', async (context) => {
  const visit = await stage.visit();
  context.after(() => visit.close());
  await accept(visit);
  await visit.tap('tab', 'Files');
  const bytes = Buffer.from('{"not":"ours"}\n');
  await visit.choose({ name: 'other.json', bytes }, () => visit.tap('button', 'Import a file'));
  await visit.reads('alert', /not a Two Clocks journal/);
  await visit.seesNo('button', 'Join it to mine');
  assert.deepEqual(visit.faults, []);
});

test('the invented fleet is one tap away and says that it is invented', async (context) => {
  const visit = await stage.visit();
  context.after(() => visit.close());
  await accept(visit);
  await visit.tap('button', 'Look at an invented fleet');
  await visit.tap('button', 'Join it to mine');
  await visit.tap('tab', 'Fleet');
  for (const registration of ['ISLE-1', 'ISLE-2', 'ISLE-3'])
    await visit.sees('button', new RegExp(registration));
  await visit.reads('paragraph', 'Some of this fleet is invented, to look round in.');
});
