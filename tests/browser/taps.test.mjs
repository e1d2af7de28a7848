// Taps from opening the page to a job's end, with one aircraft on the device. Digits do not count.
import assert from 'node:assert/strict';
import { after, test } from 'node:test';
import { open } from './driver.mjs';
import { addAircraft } from './page_taps.mjs';

const counts = [];

/** Does a job from a page just opened, and says how many taps it took. */
async function count(context, job, most, act) {
  const page = await open('chromium', { fleet: 'none' });
  context.after(() => page.close());
  await addAircraft(page);
  await page.reload();
  page.taps = 0;
  await act(page);
  counts.push(`${job} ${page.taps} (at most ${most})`);
  assert.ok(page.taps <= most, `${job} takes ${page.taps} taps`);
}

test('a reading is logged in at most 4 taps', (context) =>
  count(context, 'a reading', 4, async (page) => {
    await page.tap('button', 'Log a reading');
    await page.digits('1002.3');
    await page.tap('button', 'Save the reading');
    await page.reads('status', 'Saved: 1,002.3 h for TEST-1.');
  }));

test('the day it is due is seen in at most 2 taps', (context) =>
  count(context, 'the due date', 2, async (page) => {
    await page.tap('button', /^TEST-1/);
    assert.match(await page.answer(), /stops it first, on \d+ \w+ \d{4}/);
  }));

test('the journal is exported in at most 3 taps', (context) =>
  count(context, 'an export', 3, async (page) => {
    await page.tap('tab', 'Files');
    const { bytes } = await page.download(() => page.tap('button', 'Export the journal'));
    assert.match(bytes.toString(), /TEST-1/);
  }));

after(() => console.log(`taps: ${counts.join(', ')}`));
