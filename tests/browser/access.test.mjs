// Every page by the rules for assistive technology, as axe-core [L] knows them, and target sizes.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { after, before, test } from 'node:test';
import { need } from '../support/packages.mjs';
import { pages, reach } from './pages.mjs';
import { themes } from './pictures.mjs';
import { begin } from './stage.mjs';

let stage;
let axe;
before(async () => {
  stage = await begin();
  axe = await readFile(need.resolve('axe-core/axe.min.js'), 'utf8');
});
after(() => stage.end());

/** What axe has against the page as it stands. The canvas is drawn: its contrast is not for axe. */
async function complaints(visit) {
  await visit.page.evaluate(axe);
  const { violations, passes } = await visit.run(async () => {
    // What cannot be seen has no size to judge: an unseen document, and what is scrolled out.
    const { style } = document.getElementById('mirror');
    Object.assign(style, { opacity: '1', pointerEvents: 'auto' });
    const rules = { 'target-size': { enabled: false }, 'color-contrast': { enabled: false } };
    const all = await window.axe.run(document, { rules });
    const seen = { include: [['#mirror']], exclude: [['[data-out]']] };
    const sizes = await window.axe.run(seen, {
      runOnly: ['target-size'],
      rules: { 'target-size': { enabled: true } },
    });
    Object.assign(style, { opacity: '', pointerEvents: '' });
    return { violations: [...all.violations, ...sizes.violations], passes: sizes.passes };
  });
  const targets = await visit.run(
    () => document.querySelectorAll('#mirror [data-id]:not([data-out])').length,
  );
  assert.ok(passes.length > 0 || targets === 0, 'the sizes of targets were not judged');
  return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' ')}`);
}

/** Whatever can be tapped and is less than a gloved finger wide or high. */
function smallTargets(visit) {
  return visit.run((least_px) => {
    const targets = [...document.querySelectorAll('#mirror [data-id]:not([data-out])')];
    return targets
      .map((each) => ({ each, box: each.getBoundingClientRect() }))
      .filter(({ box }) => box.width < least_px || box.height < least_px)
      .map(({ each, box }) => `${each.textContent} is ${box.width} x ${box.height} px`);
  }, 48);
}

for (const row of pages) {
  test(`${row.name} breaks no rule for assistive technology`, async (context) => {
    const visit = await reach(stage.visit, row, { bypassCSP: true });
    context.after(() => visit.close());
    const found = [];
    // A long page is judged screen by screen.
    for (let screen = 0; screen < (row.screens ?? 1); screen += 1) {
      for (const theme of screen === 0 ? ['paper', 'sun'] : ['paper']) {
        await visit.page.emulateMedia(themes[theme]);
        await visit.settled();
        const wrong = [...(await complaints(visit)), ...(await smallTargets(visit))];
        found.push(...wrong.map((complaint) => `${theme}, screen ${screen}: ${complaint}`));
      }
      await visit.key('PageDown');
    }
    assert.deepEqual(found, []);
  });
}

test('a nameless button and a small target would be found', async (context) => {
  const visit = await stage.visit({ fleet: 'none', bypassCSP: true });
  context.after(() => visit.close());
  await visit.run(() => {
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
  const row = pages.find(({ name }) => name === 'why_sheet');
  const visit = await reach(stage.visit, row, {});
  context.after(() => visit.close());
  await visit.sees('dialog');
  const free = await visit.run(() =>
    [...document.querySelectorAll('#mirror [data-id]')]
      .filter((each) => each.closest('[inert]') === null)
      .every((each) => each.closest('[role=dialog]') !== null),
  );
  assert.ok(free);
});

test('a save and a refusal are announced', async (context) => {
  const visit = await stage.visit({ fleet: 'demo' });
  context.after(() => visit.close());
  await visit.run(() => {
    window.announcements = [];
    const live = '[aria-live], [role=status], [role=alert]';
    new MutationObserver((changes) => {
      for (const { target, addedNodes } of changes) {
        const added = [...addedNodes].filter((node) => node.matches?.(live));
        const inside = (target.nodeType === Node.TEXT_NODE ? target.parentElement : target).closest(
          live,
        );
        for (const node of inside === null ? added : [inside, ...added]) {
          window.announcements.push(node.textContent.trim());
        }
      }
    }).observe(document.body, { childList: true, characterData: true, subtree: true });
  });
  const said = (pattern) =>
    visit.until(`an announcement like ${pattern}`, () =>
      visit.run(
        (source) => window.announcements.some((text) => new RegExp(source).test(text)),
        pattern,
      ),
    );
  await visit.tap('tab', 'Log');
  await visit.tap('button', /^ISLE-3/);
  await visit.digits('800.1');
  await said('It cannot fall');
  for (let presses = 0; presses < 5; presses += 1)
    await visit.tap('button', 'Erase the last digit');
  await visit.digits('808.1');
  await visit.tap('button', 'Save the reading');
  await said('^Saved: 808.1 h for ISLE-3');
  await visit.tap('tab', 'Files');
  const bytes = Buffer.from('{"not":"ours"}\n');
  await visit.choose({ name: 'other.json', bytes }, () => visit.tap('button', 'Import a file'));
  await said('not a Two Clocks journal');
});
