// How sure is the date, by taps on a phone: what is expected, both paths, a rate that is tried by
// typing and by dragging, and kept as the plan.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { openSure } from './page_taps.mjs';
import { now } from './pages.mjs';

test('a rate is tried, moves every date, is set aside, and is kept as the plan', async () => {
  const page = await open('chromium', { size: 'phone', fleet: 'demo', now });
  await openSure('ISLE-1')(page);
  // 1,466.7 h over 3 years and 279 days are 389.6 h a year: 32.4 a month, cut down.
  await page.reads(
    'paragraph',
    'At 32.4 h a month both clocks end together and nothing is given up.',
  );
  await page.reads('paragraph', 'Twelve-year inspection');
  await page.reads('paragraph', 'Full overhaul');
  const never = 'If the plan is kept, the calendar ends first in every way looked at.';
  await page.reads('paragraph', never);
  await page.reads('paragraph', 'It rests on: A holiday by air each summer.');

  await page.fill(/^Hours a month, tried/, '50');
  await page.reads('paragraph', 'Tried, not recorded: 50.0 h a month.');
  // 600 h a year end 1,466.7 h long before the calendar does.
  await page.reads('paragraph', /^If the plan is kept, in 9\d of 100 ways the hours end first\.$/);
  await page.reads('paragraph', 'as recorded: 31 Aug 2030');
  await page.tap('button', 'Less: 45.0 h');
  await page.reads('paragraph', 'Tried, not recorded: 45.0 h a month.');
  await page.tap('button', 'Back to the record');
  await page.sees('link', /^The calendar ends the overhaul life on 31 Aug 2030/);

  await page.tap('button', /^More: /);
  await page.tap('button', 'Keep as the plan');
  await page.fill(/^Why/, 'A longer season');
  await page.tap('button', 'Save');
  // Back on the page it was tried on, and then on the aircraft's.
  await page.sees('heading', 'How sure, ISLE-1');
  await page.back();
  // 84 h a year are 7 a month; one more is 8, and 96 a year.
  await page.sees('link', /^Flown: 96\.0 h a year, as planned/);
  assert.deepEqual(page.faults, []);
});
