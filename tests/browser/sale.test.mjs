// A sale by taps on a phone: the buyer's flying, a price, the closing list, and a paper that opens
// by itself and prints.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { now } from './pages.mjs';
import { openSale } from './sale_pages.mjs';

test('the buyer’s hours move the answer; what was noted stands on the closing list', async () => {
  const page = await open('chromium', { size: 'phone', fleet: 'demo', now });
  await openSale('ISLE-3')(page);
  await page.fill(/^Hours a year the buyer flies/, '400');
  await page.sees('link', /^130\.9 h can be flown, until .* the hours stop it/);
  await page.fill(/^Hours a year the buyer flies/, '10');
  await page.sees('link', /the calendar stops it/);
  await page.tap('button', /^Closing list/);
  await page.tap('button', 'A point');
  await page.fill(/^In words/, 'Bank has a claim');
  await page.tap('button', 'Save');
  await page.sees('button', /^Bank has a claim/);
  assert.deepEqual(page.faults, []);
});

test('the sale and the days of the plan are handed over as files', async () => {
  const page = await open('chromium', { size: 'laptop', fleet: 'demo', now });
  await openSale('ISLE-1')(page);
  const paper = await page.download(() => page.tap('button', /^As a paper/));
  assert.equal(paper.name, 'ISLE-1-sale-2026-11-25.html');
  assert.match(
    Buffer.from(paper.bytes).toString(),
    /^<!doctype html>[\s\S]*To reach a fresh overhaul/,
  );
  await page.back();
  await page.tap('button', /^Plan the overhaul/);
  const days = await page.download(() => page.tap('button', /^Days for a calendar/));
  assert.equal(days.name, 'ISLE-1-days-2026-11-25.ics');
  assert.match(Buffer.from(days.bytes).toString(), /^BEGIN:VCALENDAR\r\n/);
  assert.deepEqual(page.faults, []);
});
