// The driver itself: what it taps is what was meant, wherever it lies on the page.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { now } from './pages.mjs';

for (const size of ['small', 'phone', 'laptop']) {
  test(`at ${size} size every card of the fleet opens its own aircraft`, async (context) => {
    const page = await open('chromium', { size, fleet: 'demo' });
    context.after(() => page.close());
    for (const registration of ['ISLE-1', 'ISLE-2', 'ISLE-3']) {
      await page.tap('button', new RegExp(`^${registration}`));
      await page.sees('heading', registration);
      await page.tap('tab', 'Fleet');
    }
  });
}

test('of a card that goes on under a fixed button the seen part is aimed at', async (context) => {
  const page = await open('chromium', { size: { width: 390, height: 760 }, fleet: 'demo', now });
  context.after(() => page.close());
  const { box: over } = await page.sees('button', 'Log a reading');
  const cards = await page.run(() => window.reader.all({ role: 'button' }));
  const under = cards.find(({ said, box }) => /^ISLE/.test(said) && box.bottom > over.top);
  assert.ok(under !== undefined && !under.out, 'the fleet no longer fills the page');
  assert.ok(under.part.bottom <= over.top);
  const { y } = await page.spot('button', under.said);
  assert.ok(y < over.top);
});

test('taps are counted, digits are not', async (context) => {
  const page = await open('chromium', { fleet: 'demo' });
  context.after(() => page.close());
  assert.equal(page.taps, 0);
  await page.tap('button', /^ISLE-1/);
  await page.tap('button', 'Log a reading');
  await page.digits('12.3');
  assert.equal(page.taps, 2);
});

test('what never comes is said together with what the page says', async (context) => {
  const page = await open('chromium', { fleet: 'none' });
  context.after(() => page.close());
  page.patience_ms = 300;
  await assert.rejects(page.tap('button', 'No such thing'), /No such thing[^]*Add an aircraft/);
});
