// The plan of an overhaul, by taps on a phone: what is late, what comes of it, a task whose days
// are changed, a promise, and the answer that moves.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { openPlan, openRoutes } from './page_taps.mjs';
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

test('routes side by side, one taken, and the plan goes by it', async () => {
  const page = await open('chromium', { size: 'phone', fleet: 'demo', now });
  await openRoutes('ISLE-3')(page);
  await page.sees('heading', 'ISLE-3: routes');
  // 226,000 and 19,500 freight and 2.5 % duty, 20 % tax on all of it, borne: worked by hand.
  await page.reads('paragraph', 'Tax 20.0 %, borne: 50,230 EUR');
  await page.tap('button', /^Change it.*Works of the example/);
  await page.tap('radio', 'the plan goes by it');
  await page.tap('button', 'Save');
  await page.sees('heading', 'ISLE-3: routes');
  await page.back();
  await page.reads('paragraph', 'Planned by the route Works of the example.');
  await page.reads('paragraph', '7.0 h are kept for the flight there.');
  assert.deepEqual(page.faults, []);
});

test('what a day is worth moves the cheapest day; who goes in when is proposed', async () => {
  const page = await open('chromium', { size: 'phone', fleet: 'demo', now });
  await openPlan('ISLE-3')(page);
  await page.sees('link', /^Cheapest to go in on/);
  await page.tap('button', 'What days and hours are worth');
  await page.fill(/^Earnings lost a day standing/, '900');
  await page.tap('link', /^Cheapest to go in/);
  await page.reads('paragraph', /^A day standing past the limit: 780\.00/);
  await page.tap('button', 'Close');
  await page.tap('button', 'Keep these figures');
  await page.tap('button', 'Save');
  await page.sees('heading', 'Plan, ISLE-3');
  await page.tap('link', /^Cheapest to go in/);
  await page.reads('paragraph', /^A day standing past the limit: 780\.00/);
  await page.tap('button', 'Close');
  await page.tap('tab', 'Files');
  await page.tap('tab', 'Fleet');
  await page.tap('button', 'Who goes in when');
  await page.reads('paragraph', 'At most 1 out at once.');
  await page.tap('button', 'How many may be out');
  await page.fill(/^Most of the fleet out at once/, '2');
  await page.tap('button', 'Save');
  await page.reads('paragraph', 'At most 2 out at once.');
  await page.sees('button', /^ISLE-3.*In on/);
  assert.deepEqual(page.faults, []);
});
