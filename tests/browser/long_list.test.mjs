// History at 2,000 readings: flung through with a finger, in a document that stays small, and still
// again when nothing moves.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';

const readings = 2000;
const day_ms = 86_400_000;
const tenth_s = 360;

/** A name like those of the journal, made of a number. */
function id(number) {
  const digits = number.toString(16).padStart(12, '0');
  return `01700000-0000-7000-8000-${digits}`;
}

/** A journal of one invented aircraft, read every other day for eleven years. */
function longJournal() {
  const [aircraft, meter] = [id(1), id(2)];
  const start_ms = Date.UTC(2015, 0, 1);
  const day = (days) => new Date(start_ms + days * day_ms).toISOString().slice(0, 10);
  let tick = 0;
  const fact = (name, kind, days, about, fields) => ({
    id: name,
    kind,
    on: day(days),
    at: start_ms + days * day_ms,
    tick: (tick += 1),
    device: 'invented-device',
    by: 'Nobody',
    about,
    ...fields,
  });
  const lines = [
    { journal: 'twoclocks', version: 1 },
    fact(aircraft, 'aircraft', 0, [aircraft], {
      registration: 'LONG-1',
      type: 'Gannet 2 (invented)',
      serial: 'G2-2000',
      manufactured: day(0),
      invented: true,
    }),
    fact(meter, 'meter', 0, [aircraft, meter], {
      name: 'Collective meter',
      drive: 'collective',
      reads: 0,
      total: 0,
    }),
  ];
  for (let at = 1; at <= readings; at += 1) {
    const reads = at * 3 * tenth_s;
    lines.push(fact(id(at + 2), 'reading', 2 * at, [aircraft, meter], { reads }));
  }
  return Buffer.from(lines.map((line) => `${JSON.stringify(line)}\n`).join(''));
}

/** Rows that the document holds: their places, and how many they say there are. */
const rowsIn = (page) =>
  page.run(() =>
    [...document.querySelectorAll('#mirror [role=list] > li')].map((row) => ({
      place: Number(row.getAttribute('aria-posinset')),
      of: Number(row.getAttribute('aria-setsize')),
    })),
  );

test('2,000 rows: flung through, a window of them in the document, then still', async (context) => {
  const page = await open('chromium', { fleet: 'none' });
  context.after(() => page.close());
  await page.tap('tab', 'Files');
  const file = { name: 'long.jsonl', bytes: longJournal() };
  await page.choose(file, () => page.tap('button', 'Import a file'));
  await page.tap('button', 'Join it to mine');
  await page.reads('status', `Joined: ${(readings + 2).toLocaleString('en-GB')} records.`);
  await page.tap('tab', 'History');

  const first = await rowsIn(page);
  assert.equal(first[0].place, 1);
  const start = await page.frames();
  await page.run(() => window.frame_costs_ms.splice(0));
  const passed = [];
  for (let flings = 0; flings < 6; flings += 1) {
    await page.window.fling(195, 420, 420);
    await page.settled();
    const rows = await rowsIn(page);
    assert.ok(rows.length < 60, `${rows.length} rows in the document`);
    assert.ok(rows.every(({ of }) => of === readings + 2));
    assert.ok(rows.every(({ place }, at) => place === rows[0].place + at));
    passed.push(rows[0].place);
  }
  assert.ok(
    passed.every((place, at) => at === 0 || place > passed[at - 1]),
    `the list went ${passed}`,
  );
  const drawn = (await page.frames()) - start;
  assert.ok(drawn >= 60, `${drawn} frames while it was flung`);

  const still = await page.work();
  await page.page.waitForTimeout(10_000);
  assert.deepEqual(await page.work(), still, 'frames and timers within ten idle seconds');
  assert.deepEqual(page.faults, []);
  // Of the whole frame as script, building and handing over to be drawn: the page tells no more.
  // A figure to look at and no gate, because the machine's other work is in it.
  const costs_ms = await page.run(() => window.frame_costs_ms.sort((one, two) => one - two));
  const cost = (share) => costs_ms[Math.floor(costs_ms.length * share)].toFixed(1);
  const script = `script of a frame p50 ${cost(0.5)} ms, p95 ${cost(0.95)} ms`;
  context.diagnostic(
    `2,000 rows: ${drawn} frames in 6 flings to row ${passed.at(-1)}, then 0; ${script}`,
  );
});
