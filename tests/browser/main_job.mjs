// The main job, told once for every engine: an owner adds an aircraft with its two limits, logs two
// readings, sees which clock stops it first and when, finds it all again after a reload, hands the
// file over, and gets the same file out of an empty browser that it was joined to.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { addAircraft } from './page_taps.mjs';

/** Logs a reading from the page of the only aircraft. */
export async function logReading(visit, digits) {
  await visit.tap('button', 'Log a reading');
  await visit.digits(digits);
  await visit.tap('button', 'Save the reading');
}

export async function exported(visit) {
  await visit.tap('tab', 'Files');
  return visit.download(() => visit.tap('button', 'Export the journal'));
}

/** Kinds of the records in a journal file. */
function kindsIn({ bytes }) {
  const lines = bytes.toString().trimEnd().split('\n');
  const [header, ...records] = lines.map((line) => JSON.parse(line));
  assert.equal(header.journal, 'twoclocks');
  return records.map(({ kind }) => kind);
}

export function tellMainJob(engine) {
  test(`the main job in ${engine}: add, log, see, reload, hand over, wipe, join`, async () => {
    const visit = await open(engine, { fleet: 'none' });
    await addAircraft(visit);
    await visit.sees('link', 'Hours left: 1,200.0 h. Why?');
    await logReading(visit, '1001.2');
    await visit.reads('status', 'Saved: 1,001.2 h for TEST-1.');
    await logReading(visit, '1002.3');
    await visit.reads('status', 'Saved: 1,002.3 h for TEST-1.');
    // Each browser writes a day as its own language settings have it.
    assert.match(await visit.answer(), /^The calendar stops it first, on [\w ,]+ \d{4}\./);

    await visit.reload();
    await visit.tap('button', /^TEST-1/);
    await visit.sees('link', 'Hours left: 1,197.7 h. Why?');
    assert.match(await visit.answer(), /^The calendar stops it first/);

    const first = await exported(visit);
    assert.match(first.name, /^two-clocks-\d{4}-\d{2}-\d{2}\.(jsonl|txt)$/);
    const about = ['aircraft', 'meter', 'item', 'limit', 'usage_planned'];
    assert.deepEqual(kindsIn(first), [...about, 'reading', 'reading']);

    // Wiped: another person's empty browser.
    const other = await open(engine, { fleet: 'none' });
    await other.tap('tab', 'Files');
    await other.choose(first, () => other.tap('button', 'Import a file'));
    await other.reads('paragraph', 'New aircraft: TEST-1');
    await other.tap('button', 'Join it to mine');
    await other.reads('status', 'Joined: 7 records.');
    await other.tap('tab', 'Fleet');
    await other.tap('button', /^TEST-1/);
    await other.sees('link', 'Hours left: 1,197.7 h. Why?');
    const second = await exported(other);
    assert.ok(first.bytes.equals(second.bytes), 'export, wipe, import, export: the same bytes');
    for (const person of [visit, other]) {
      assert.deepEqual(person.faults, []);
      assert.deepEqual(person.strangers(), []);
    }
  });
}
