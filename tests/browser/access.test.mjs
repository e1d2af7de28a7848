// Every page by the rules for assistive technology, as axe-core [L] knows them, and target sizes.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, before, test } from 'node:test';
import { need } from '../support/packages.mjs';
import { begin } from './driver.mjs';

let house;
let axe;
before(async () => {
  house = await begin();
  axe = await readFile(need.resolve('axe-core/axe.min.js'), 'utf8');
});
after(() => house.end());

/** What axe has against the page as it stands. The canvas is drawn: its contrast is not for axe. */
async function complaints(visit) {
  await visit.page.evaluate(axe);
  const { violations } = await visit.page.evaluate(async () => {
    // What cannot be seen has no size to judge.
    const { style } = document.getElementById('mirror');
    Object.assign(style, { opacity: '1', pointerEvents: 'auto' });
    const rules = { 'target-size': { enabled: true }, 'color-contrast': { enabled: false } };
    const result = await window.axe.run(document, { rules });
    Object.assign(style, { opacity: '', pointerEvents: '' });
    return result;
  });
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

/** Whatever can be tapped and is less than a gloved finger wide or high. */
function smallTargets(visit) {
  return visit.page.evaluate((least_px) => {
    const targets = [...document.querySelectorAll('#mirror [data-id]:not([data-out])')];
    return targets
      .map((each) => ({ each, box: each.getBoundingClientRect() }))
      .filter(({ box }) => box.width < least_px || box.height < least_px)
      .map(({ each, box }) => `${each.textContent} is ${box.width} x ${box.height} px`);
  }, 48);
}

test('no page breaks a rule for assistive technology', async (context) => {
  const visit = await house.visit({ bypassCSP: true });
  context.after(() => visit.close());
  const found = [];
  const look = async (page) => {
    for (const complaint of await complaints(visit)) found.push(`${page}: ${complaint}`);
    for (const target of await smallTargets(visit)) found.push(`${page}: ${target}`);
  };
  await look('welcome');
  await visit.tap('button', 'I have read this');
  await look('empty fleet');
  await visit.tap('button', 'Look at an invented fleet');
  await look('import');
  await visit.tap('button', 'Join it to mine');
  await visit.reads('paragraph', /^3 aircraft/);
  for (const tab of ['Fleet', 'Log', 'History', 'Files']) {
    await visit.tap('tab', tab);
    await look(tab);
  }
  await visit.tap('tab', 'Fleet');
  await visit.tap('button', /^ISLE-1/);
  await look('aircraft');
  await visit.tap('link', /^Hours left/);
  await visit.sees('dialog');
  await look('why');
  assert.deepEqual(found, []);
});

test('a nameless button and a small target would be found', async (context) => {
  const visit = await house.visit({ bypassCSP: true });
  context.after(() => visit.close());
  await visit.tap('button', 'I have read this');
  await visit.page.evaluate(() => {
    const [one, two] = document.querySelectorAll('#mirror button');
    one.textContent = '';
    for (const [at, each] of [one, two].entries()) {
      Object.assign(each.style, { left: `${100 + at}px`, top: '100px' });
      Object.assign(each.style, { width: '10px', height: '10px' });
    }
  });
  const found = (await complaints(visit)).map((complaint) => complaint.split(':')[0]);
  assert.deepEqual(found.sort(), ['button-name', 'target-size']);
});

test('under a sheet the page neither speaks nor takes the focus', async (context) => {
  const visit = await house.visit();
  context.after(() => visit.close());
  await visit.tap('button', 'I have read this');
  await visit.tap('button', 'Look at an invented fleet');
  await visit.tap('button', 'Join it to mine');
  await visit.tap('tab', 'Fleet');
  await visit.tap('button', /^ISLE-1/);
  await visit.tap('link', /^Hours left/);
  await visit.sees('dialog');
  const free = await visit.page.evaluate(() =>
    [...document.querySelectorAll('#mirror [data-id]')]
      .filter((each) => each.closest('[inert]') === null)
      .every((each) => each.closest('[role=dialog]') !== null),
  );
  assert.ok(free);
});
