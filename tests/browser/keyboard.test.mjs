// The keyboard alone: the whole main job without a pointer, and a focus that is seen and goes the
// way one reads.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { pages, reach } from './pages.mjs';
import { readPng } from './png.mjs';

const at_desk = { size: 'phone', touch: false };

/** Ids and names of all that the keyboard stops at, and which has the focus (-1 for none). */
function stops(visit) {
  return visit.run(() => {
    const all = [...document.querySelectorAll('#mirror [data-id]')].filter(
      (each) =>
        each.closest('[inert], [hidden]') === null && each.getAttribute('tabindex') !== '-1',
    );
    const name = (each) => each.getAttribute('aria-label') ?? each.textContent.trim();
    return {
      ids: all.map((each) => each.dataset.id),
      names: all.map(name),
      at: all.indexOf(document.activeElement),
    };
  });
}

/** Goes there by Tab or Shift+Tab, whichever is shorter, and sees that it arrived. */
async function goTo(visit, name) {
  const is = (said) => (name instanceof RegExp ? name.test(said) : said === name);
  await visit.until(`a stop at ${name}`, async () => (await stops(visit)).names.some(is));
  for (let presses = 0; presses < 80; presses += 1) {
    const { names, at } = await stops(visit);
    if (at >= 0 && is(names[at])) return;
    await visit.key(names.findIndex(is) < at ? 'Shift+Tab' : 'Tab');
  }
  throw new Error(`the focus never came to ${name}`);
}

async function press(visit, name, key = 'Enter') {
  await goTo(visit, name);
  await visit.key(key);
}

async function write(visit, name, text) {
  await press(visit, name);
  await visit.until('a real field', () =>
    visit.run(() => document.activeElement.closest('#field') !== null),
  );
  await visit.window.type(text);
  await visit.key('Escape');
}

test('the main job by keyboard alone', async (context) => {
  const visit = await open('chromium', at_desk);
  context.after(() => visit.close());
  await press(visit, 'I have read this');
  await press(visit, 'Add an aircraft', 'Space');
  await write(visit, 'Registration', 'TEST-1');
  await write(visit, /^Overhaul at hours/, '2200');
  await write(visit, /^Overhaul at years/, '12');
  await press(visit, 'last overhaul', 'Space');
  await write(visit, 'Day of manufacture or last overhaul', '05052020');
  await write(visit, 'Hour meter reads now', '1000.0');
  await write(visit, /^Hours you fly in a year/, '100');
  await press(visit, 'Add aircraft');
  await visit.sees('heading', 'TEST-1');

  // The figure answers why; Escape puts the answer away, and once more goes back.
  await press(visit, /^Hours left/);
  await visit.sees('dialog');
  await visit.key('Escape');
  await visit.seesNo('dialog');
  await visit.sees('heading', 'TEST-1');
  await visit.key('Escape');
  await visit.sees('heading', 'Fleet');
  await press(visit, /^TEST-1,/);

  await press(visit, 'Log a reading');
  for (const sign of '1002') await press(visit, sign);
  await press(visit, 'Decimal sign');
  await press(visit, '3', 'Space');
  await press(visit, 'Save the reading');
  await visit.reads('status', 'Saved: 1,002.3 h for TEST-1.');
  await visit.sees('heading', 'TEST-1');

  await visit.reload();
  await press(visit, 'Files');
  const { bytes } = await visit.download(() => press(visit, 'Export the journal'));
  assert.match(bytes.toString(), /"reads":3608280/); // 1,002.3 h in seconds
  assert.deepEqual(visit.faults, []);
});

test('arrows and the page keys move a long page', async (context) => {
  const visit = await open('chromium', { ...at_desk, fleet: 'demo' });
  context.after(() => visit.close());
  await press(visit, 'History');
  const top_row = () =>
    visit.run(() =>
      Number(
        document.querySelector('#mirror li:has(> :not([data-out]))').getAttribute('aria-posinset'),
      ),
    );
  const start = await top_row();
  for (let presses = 0; presses < 12; presses += 1) await visit.key('ArrowDown');
  const below = await top_row();
  assert.ok(below > start, `${below} after ${start}`);
  await visit.key('PageDown');
  assert.ok((await top_row()) > below);
  await visit.key('Home');
  assert.equal(await top_row(), start);
});

test('the focus can be seen', async (context) => {
  const visit = await open('chromium', { ...at_desk, fleet: 'none' });
  context.after(() => visit.close());
  const without = readPng(await visit.screenshot());
  await goTo(visit, 'Add an aircraft');
  const focused = readPng(await visit.screenshot());
  const { box } = await visit.sees('button', 'Add an aircraft');
  let changed = 0;
  let outside = 0;
  for (let at = 0; at < focused.data.length; at += 4) {
    if (focused.data.readUInt32BE(at) === without.data.readUInt32BE(at)) continue;
    const [x, y] = [(at / 4) % focused.width, Math.floor(at / 4 / focused.width)];
    const around = 6;
    const in_x = x >= box.left - around && x < box.right + around;
    if (in_x && y >= box.top - around && y < box.bottom + around) changed += 1;
    else outside += 1;
  }
  // A ring of two pixels or more all the way round, and nothing else.
  assert.ok(changed >= 2 * 2 * (box.right - box.left), `${changed} pixels tell of the focus`);
  assert.equal(outside, 0);
});

const visitAnew = (options) => open('chromium', options);

/** Runs in the page: the next Tab goes to the first stop, whatever was typed in before. */
function startOver() {
  const { body } = document;
  body.tabIndex = -1;
  body.focus();
  body.removeAttribute('tabindex');
}

for (const row of pages) {
  test(`on ${row.name} Tab goes the way one reads`, async (context) => {
    const visit = await reach(visitAnew, row, at_desk);
    context.after(() => visit.close());
    await visit.run(startOver);
    assert.deepEqual(await visit.run(backwards), []);
    const all = await stops(visit);
    const passed = [];
    let due = all.ids[0];
    for (let presses = 0; presses < Math.min(all.ids.length, 40); presses += 1) {
      await visit.key('Tab');
      const { ids, at } = await stops(visit);
      assert.equal(ids[at], due, `after ${passed.join(', ')}`);
      passed.push(due);
      // Of a long list the document holds a window, which goes along with the focus.
      due = ids[at + 1];
    }
    assert.equal(new Set(passed).size, passed.length, 'the focus came to something twice');
    assert.deepEqual(await visit.run(backwards), []);
  });
}

/** Runs in the page: what follows in the order of focus and yet is seen above, or left in a row. */
function backwards() {
  const all = [...document.querySelectorAll('#mirror [data-id]')].filter(
    (each) => each.closest('[inert], [hidden]') === null,
  );
  const found = [];
  // What is scrolled out is in order among itself; a fixed button stands over it.
  for (const out of [true, false]) {
    const group = all.filter((each) => (each.dataset.out !== undefined) === out);
    const boxes = group.map((each) => {
      const { box, part } = window.sight(each);
      return out ? box : part;
    });
    boxes.slice(1).forEach((next, at) => {
      const before = boxes[at];
      const below = next.top >= before.bottom - 1;
      const in_row = next.top >= before.top && next.left >= before.left;
      if (!below && !in_row) found.push(`${group[at].textContent} / ${group[at + 1].textContent}`);
    });
  }
  return found;
}
