// What the system asks for is honoured at once, without loading the page again.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { readPng } from './png.mjs';

/** Colour of the paper, in a corner of the canvas where nothing else is. */
async function paper(visit) {
  const { data } = readPng(await visit.screenshot());
  return `#${data.subarray(0, 3).toString('hex')}`;
}

/** What the style sheet has for the same theme. */
const sheet = (visit) =>
  visit.run(() => getComputedStyle(document.documentElement).getPropertyValue('--paper').trim());

test('scheme, contrast and forced colours change the look of the canvas', async (context) => {
  const visit = await open('chromium', { fleet: 'demo' });
  context.after(() => visit.close());
  const look = async (media) => {
    await visit.page.emulateMedia(media);
    await visit.settled();
    return paper(visit);
  };
  const none = { colorScheme: 'light', contrast: 'no-preference', forcedColors: 'none' };
  const light = await look(none);
  assert.equal(light, await sheet(visit));
  const dark = await look({ ...none, colorScheme: 'dark' });
  assert.equal(dark, await sheet(visit));
  const strong = await look({ ...none, contrast: 'more' });
  assert.equal(strong, '#ffffff');
  assert.equal(new Set([light, dark, strong]).size, 3);
  assert.equal(await look({ ...none, forcedColors: 'active' }), strong);
  assert.equal(await look({ ...none, colorScheme: 'dark', forcedColors: 'active' }), dark);
  assert.equal(await look(none), light);
});

test('a person’s own choice beats the system’s', async (context) => {
  const visit = await open('chromium', { fleet: 'none' });
  context.after(() => visit.close());
  const light = await paper(visit);
  await visit.tap('tab', 'Files');
  await visit.tap('radio', /^paper/i);
  await visit.page.emulateMedia({ colorScheme: 'dark', contrast: 'more' });
  await visit.settled();
  assert.equal(await paper(visit), light);
});

test('less motion: a flung page stops where the finger left it', async (context) => {
  const visit = await open('chromium', { fleet: 'demo' });
  context.after(() => visit.close());
  await visit.tap('tab', 'History');
  const top = () =>
    visit.run(() => Number.parseFloat(document.querySelector('#mirror [role=list]').style.top));
  const glide = async (reducedMotion) => {
    await visit.page.emulateMedia({ reducedMotion });
    await visit.settled();
    const before = await top();
    await visit.window.fling(195, 400, 300);
    await visit.settled();
    return before - (await top());
  };
  const less = await glide('reduce');
  const full = await glide('no-preference');
  // The finger moves 300 px, of which the slop may be kept.
  assert.ok(less >= 290 && less <= 300, `${less} px`);
  assert.ok(full > less + 20, `${full} px after ${less}`);
});
