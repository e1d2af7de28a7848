// A third of all pages in every theme, beside the picture of each that was kept; and proof that a
// changed word and a changed colour would be seen.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { pages } from './pages.mjs';
import { testThird } from './picture_tests.mjs';
import { compare, nameOf, orphans, take } from './pictures.mjs';
import { readPng, writeSmallPng } from './png.mjs';

const held = testThird(0);

test('every kept picture is of a page', async () => {
  assert.deepEqual(await orphans(), []);
});

const row = pages.find(({ name }) => name === 'empty_fleet');
const looks = [{ size: 'phone', worn: ['paper'] }];

/** The picture of a page, and what is kept of it. */
async function seen(visit = held.stage.visit) {
  const taken = (await take(visit, row, looks)).get(nameOf(row, 'phone', 'paper'));
  return { taken, kept: writeSmallPng(readPng(taken)) };
}

/** The same page of a program in which some bytes are others. */
async function altered(alter) {
  let found = 0;
  const visit = async ({ fleet, ...options }) => {
    const context_made = await held.stage.visit(options);
    const { page } = context_made;
    await page.route('**/*.wasm', async (route) => {
      const response = await route.fetch();
      const body = await response.body();
      found += alter(body);
      await route.fulfill({ response, body });
    });
    await page.evaluate(async () => {
      for (const each of await navigator.serviceWorker.getRegistrations()) await each.unregister();
    });
    await context_made.reload();
    if (fleet !== undefined) await context_made.tap('button', 'I have read this');
    return context_made;
  };
  const { taken } = await seen(visit);
  assert.ok(found > 0, 'nothing in the program was altered');
  return taken;
}

/** Puts other bytes of the same length in place, wherever they are. Returns how often. */
function replace(body, from, to) {
  let count = 0;
  for (let at = body.indexOf(from); at >= 0; at = body.indexOf(from, at + 1)) {
    to.copy(body, at);
    count += 1;
  }
  return count;
}

test('two runs of one build are alike to the pixel', async () => {
  const first = await seen();
  const second = await seen();
  assert.ok(readPng(first.taken).data.equals(readPng(second.taken).data));
  assert.equal(compare(first.kept, second.taken)?.said, undefined);
});

test('one letter of one word is seen', async () => {
  const { kept } = await seen();
  const text = 'Add an aircraft';
  const other = text.replace('Add', 'Odd');
  const taken = await altered((body) => replace(body, Buffer.from(text), Buffer.from(other)));
  assert.match(compare(kept, taken).said, /pixels changed/);
});

test('a colour that is one step another is seen', async () => {
  const { kept } = await seen();
  const page = await held.stage.visit();
  const [paper, card] = await page.run(() => {
    const style = getComputedStyle(document.documentElement);
    return ['--paper', '--card'].map((name) => style.getPropertyValue(name).trim().slice(1));
  });
  await page.close();
  // As the palette lies in the program: red, green, blue, cover; paper, then card.
  const from = Buffer.from(`${paper}ff${card}ff`, 'hex');
  const to = Buffer.from(from);
  to[6] -= 1;
  const taken = await altered((body) => replace(body, from, to));
  const { changed, colours } = compare(kept, taken);
  assert.equal(changed, 0);
  assert.ok(colours.includes(`#${card}`), `${card} is not among ${colours}`);
});
