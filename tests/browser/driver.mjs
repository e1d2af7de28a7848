// How a test drives the page: by role and name, with taps, in any of three engines.
//
//   const page = await open('chromium', { size: 'phone', fleet: 'demo' });
//   await page.tap('button', /^ISLE-1/);
//   assert.match(await page.answer(), /stops it first/);
//
// - `open(engine, options)`: engine is chromium, webkit or firefox, started once for a test file
//   and ended with it. Every call is a person of their own with an empty browser; WebKit's driver
//   has one person at a time. Options are those of `Visit.open` in visit.mjs.
// - Names are whole strings or patterns, as a screen reader would say them. Everything waits until
//   it is there, and says what the page said when it never came.
// - `tap` brings the thing into sight first and aims at the middle of the part that is seen.
// - `fill` leaves the field again. `digits` types on the number pad.
// - `download(action)` and `choose({ name, bytes }, action)`: files out and in.
// - `page.page` is Playwright's page in Chromium, for what no other engine does.
//
// Nothing here reaches into the program: what can be tapped is found in the mirror, and the tap is
// a real one on the canvas.
import { after } from 'node:test';
import { begin } from './stage.mjs';

export { begin, site, visitOf } from './stage.mjs';
export { sizes } from './visit.mjs';

const stages = new Map();

export async function open(engine = 'chromium', options = {}) {
  if (!stages.has(engine)) stages.set(engine, begin({ engine }));
  const stage = await stages.get(engine);
  return stage.visit(options);
}

after(async () => {
  for (const stage of stages.values()) await (await stage).end();
});
