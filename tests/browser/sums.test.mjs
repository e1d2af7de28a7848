// Cores, cash and the reserve, by taps on a phone: a core from the aircraft to its credit, shares
// and payments, and what should be set aside.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { openMoney } from './page_taps.mjs';
import { now } from './pages.mjs';

test('a core is recorded, comes off, goes back and is settled', async () => {
  const page = await open('chromium', { size: 'phone', fleet: 'demo', now });
  await openMoney('ISLE-4')(page);
  await page.tap('button', /^Cores/);
  await page.tap('button', 'A core');
  await page.fill(/^What it is called/, 'Main gearbox');
  await page.fill(/^Charge/, '24000');
  await page.fill(/^Full credit/, '19500');
  await page.fill(/^Part of the credit/, '9000');
  await page.fill(/^Chance of a part/, '40');
  await page.fill(/^To be back by/, '2026-12-05');
  await page.tap('button', 'Save');
  // 0.6 x 19,500 + 0.4 x 9,000 = 15,300: worked by hand.
  await page.sees('link', /^Counted on: 15,300\.00/);
  await page.tap('button', /^Main gearbox.*10 days left: to be back by 5 Dec 2026/);
  await page.tap('button', 'Save'); // what comes next is chosen: it came off
  await page.sees('heading', 'To send or destroy now');
  await page.tap('button', /^Main gearbox/);
  await page.fill(/^Day/, '2026-11-24');
  await page.tap('button', 'Save');
  await page.reads('alert', /was sent on 24 Nov 2026 and came off on 25 Nov 2026/);
  await page.fill(/^Day/, '2026-11-25');
  await page.tap('button', 'Save');
  await page.sees('heading', 'On their way');
  await page.tap('button', /^Main gearbox.*Credit expected by 24 Feb 2027/);
  await page.tap('button', /^What happened/);
  await page.tap('radio', 'settled');
  await page.fill(/^Credit/, '9000');
  await page.tap('button', 'Save');
  await page.sees('link', /^Counted on: 0\.00/);
  assert.deepEqual(page.faults, []);
});

test('the lowest point follows the shares and what was paid', async () => {
  const page = await open('chromium', { size: 'phone', fleet: 'demo', now });
  await openMoney('ISLE-4')(page);
  await page.tap('button', 'Add a line');
  await page.fill(/^What it is/, 'Overhaul kit');
  await page.fill(/^Price of one expected/, '90000');
  await page.tap('radio', 'none');
  await page.tap('button', 'Save');
  await page.tap('button', /^Cash/);
  await page.sees('link', /^Lowest: −90,000\.00/);
  await page.tap('button', 'A payment');
  await page.tap('radio', 'Overhaul kit');
  await page.fill(/^Amount/, '30000');
  await page.tap('button', 'Save');
  await page.sees('link', /^Lowest: −60,000\.00/);
  await page.tap('button', 'What is in an account');
  await page.fill(/^Account/, 'Overhaul account');
  await page.fill(/^Amount/, '10000');
  await page.tap('button', 'Save');
  await page.tap('link', /^Lowest: −50,000\.00/);
  await page.reads('paragraph', /^In hand today: 10,000\.00/);
  assert.deepEqual(page.faults, []);
});
