// What assistive technology is told. Every page is held against the rules for it where its pictures
// are taken; here is proof that a break of them would be found.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { complaints } from './access.mjs';
import { pages, reach } from './pages.mjs';
import { begin } from './stage.mjs';

let stage;
before(async () => {
  stage = await begin();
});
after(() => stage.end());

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
