// The program comes in two parts. These hold the second one back, in Chromium.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { begin, visitOf } from './driver.mjs';

let house;
before(async () => {
  house = await begin();
});
after(() => house.end());

const rest = /\/rest\.[0-9a-f]+\.wasm$/;
const state = (visit) => visit.run(() => document.documentElement.dataset.state);

/** Forgets what the worker kept: the next load is a first visit again. */
async function forgetFiles(visit) {
  await visit.page.evaluate(async () => {
    for (const each of await navigator.serviceWorker.getRegistrations()) await each.unregister();
    for (const name of await caches.keys()) await caches.delete(name);
  });
}

/** A first visit whose second part waits until it is let go; counts how often it was asked for. */
async function heldVisit(context, options) {
  let letGo;
  const free = new Promise((resolve) => (letGo = resolve));
  let asked = 0;
  const visit = await visitOf(house, context, options);
  await forgetFiles(visit);
  await visit.page.route(rest, async (route) => {
    asked += 1;
    await free;
    await route.continue();
  });
  await visit.page.reload();
  return { visit, letGo, asked: () => asked };
}

for (const size of ['small', 'phone', 'laptop']) {
  for (const colorScheme of ['light', 'dark']) {
    test(`the first picture needs one part: ${size}, ${colorScheme}`, async (context) => {
      const { visit, letGo, asked } = await heldVisit(context, { size, colorScheme });
      await visit.until('the first picture', async () => (await state(visit)) === 'drawn');
      const named = (name) =>
        visit.run(
          (wanted) =>
            [...document.querySelectorAll('#mirror *')].some(
              (element) => element.textContent === wanted,
            ),
          name,
        );
      assert.ok(await named('Get a second pair of eyes on controls and balance.'));
      // A tap that comes too early is not lost: it is answered once the rest is here.
      await visit.run(() =>
        [...document.querySelectorAll('#mirror button')]
          .find((button) => button.textContent === 'I have read this')
          .click(),
      );
      assert.ok(!(await named('Look at an invented fleet')));
      letGo();
      await visit.running();
      await visit.sees('button', 'Look at an invented fleet');
      assert.equal(asked(), 1);
    });
  }
}

test('where the first part does not do, the page starts over with the whole', async (context) => {
  const visit = await visitOf(house, context);
  await visit.page.addInitScript(() => {
    if (sessionStorage.getItem('spoilt')) return;
    const made = WebAssembly.instantiateStreaming;
    WebAssembly.instantiateStreaming = async (answer, imports) => {
      const { instance, module } = await made.call(WebAssembly, answer, imports);
      if (imports.placeholder === undefined) return { instance, module };
      // Somewhere in the start a function is called that the first part does not have.
      let calls = 0;
      const spoilt = (call) =>
        typeof call !== 'function'
          ? call
          : (...given) => {
              calls += 1;
              if (calls === 20) {
                sessionStorage.setItem('spoilt', '1');
                imports.placeholder.any();
              }
              return call(...given);
            };
      const exports = Object.fromEntries(
        Object.entries(instance.exports).map(([name, call]) => [name, spoilt(call)]),
      );
      return { instance: { exports }, module };
    };
  });
  await visit.page.reload();
  await visit.running();
  assert.ok(await visit.run(() => sessionStorage.getItem('spoilt')), 'nothing was spoilt');
  await visit.tap('button', 'I have read this');
  await visit.sees('button', 'Look at an invented fleet');
});

test('a second part that never comes is said, and a later load starts', async (context) => {
  const visit = await visitOf(house, context);
  await forgetFiles(visit);
  await visit.page.route(rest, (route) => route.abort());
  await visit.page.reload();
  await visit.until('what is wrong', () =>
    visit.run(() => !document.getElementById('trouble').hidden),
  );
  await visit.page.unroute(rest);
  await visit.reload();
  await visit.tap('button', 'I have read this');
  await visit.sees('button', 'Look at an invented fleet');
});
