// The plan of an overhaul, by taps on a phone: what is late, what comes of it, a task whose days
// are changed, a promise, and the answer that moves.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { openPlan } from './page_taps.mjs';
import { now } from './pages.mjs';

test('an aircraft inside its lead time: order late, then promised', async () => {
  const page = await open('chromium', { size: 'phone', fleet: 'demo', now });
  await page.sees('button', /^ISLE-3, act/);
  await openPlan('ISLE-3')(page);
  await page.sees('link', /^The last day to order in time was/);
  await page.sees('link', /^Back in service by/);
  await page.reads('paragraph', /^In \d+ of 100 ways the aircraft stands a day or more/);
  await page.reads('paragraph', /^Flown no more than [\d.]+ h a month, the hours last until/);
  await page.tap('link', /^The last day to order in time was/);
  await page.reads('paragraph', 'Kit on its way: 168 to 210 calendar days, expected 182.');
  await page.tap('button', 'Close');

  // The seller has one on the shelf: promised for the middle of January.
  await page.tap('button', /^Kit on its way/);
  await page.sees('heading', 'Task of the plan');
  await page.back();
  await page.tap('button', 'Begun, promised or done');
  await page.tap('button', /^Task/);
  await page.tap('radio', 'Kit on its way');
  await page.tap('radio', 'promised');
  await page.fill(/^Promised for/, '2027-01-15');
  await page.tap('button', 'Save');
  await page.sees('heading', 'Plan, ISLE-3');
  await page.reads('paragraph', 'The kit comes between 15 Jan 2027 and 15 Jan 2027.');
  await page.sees('button', /^Kit on its way\. promised for 15 Jan 2027/);
  assert.deepEqual(page.faults, []);
});
