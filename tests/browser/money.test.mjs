// What an overhaul costs, by taps on a phone: an estimate begun from the usual lines, prices, a
// rate, an engine chosen instead, and the sums with their whys.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { openUsualLines } from './page_taps.mjs';
import { now } from './pages.mjs';

test('from the usual lines to gross, what comes back and net', async () => {
  const page = await open('chromium', { size: 'phone', fleet: 'demo', now });
  await openUsualLines('ISLE-4')(page);
  await page.reads('paragraph', '8 lines are not in the sum.');
  await page.sees('link', 'Net: not known Why?');
  await page.tap('button', /^Labour, hours/);
  await page.fill(/^Price of one expected/, '90');
  await page.tap('radio', 'paid and recovered');
  await page.fill(/^Tax, per cent/, '20');
  await page.tap('button', 'Save');
  // 240 h at 90 are 21,600, and 20 % of it 4,320: worked by hand.
  await page.sees('link', /^To pay: 25,920/);
  await page.sees('link', /^Comes back: 4,320/);
  await page.tap('link', /^Net: 21,600/);
  await page.reads('paragraph', /^All that comes back: 4,320\.00/);
  await page.tap('button', 'Close');
  // 220 to 320 h of it: in 8 of 10 ways between.
  await page.reads('paragraph', /in 8 of 10 between.*at its least 19,800.*at its most 28,800/);
  assert.deepEqual(page.faults, []);
});

test('another engine in another currency waits for its rate', async () => {
  const page = await open('chromium', { size: 'phone', fleet: 'demo', now });
  await openUsualLines('ISLE-4')(page);
  await page.tap('button', /^Own engine, overhauled/);
  await page.tap('radio', 'can be had, not chosen');
  await page.tap('button', 'Save');
  await page.reads('alert', /Of “Engine” none is chosen/);
  await page.tap('button', /^Exchange engine/);
  await page.fill(/^Price of one expected/, '81500 USD');
  await page.tap('radio', 'chosen');
  await page.tap('button', 'Save');
  await page.tap('button', 'How sums are made');
  await page.fill(/^Home currency/, 'EUR');
  await page.tap('button', 'Save');
  await page.sees('button', /^Exchange engine.*No rate from USD to EUR/);
  await page.tap('button', 'A rate between currencies');
  await page.fill(/^One of/, 'USD');
  await page.fill(/^Rate/, '0.9174');
  await page.tap('button', 'Save');
  // 81,500 USD at 0.9174 are 74,768.10: worked by hand, rounded up.
  await page.sees('button', /^Exchange engine.*74,769/);
  assert.deepEqual(page.faults, []);
});
