// What stands against a page by the rules for assistive technology, as axe-core [L] knows them, and
// by the sizes of its targets.
import assert from 'node:assert/strict';
import { readFile } from 'node:fs/promises';
import { need } from '../support/packages.mjs';

const axe = await readFile(need.resolve('axe-core/axe.min.js'), 'utf8');

/** What axe has against the page as it stands. The canvas is drawn: its contrast is not for axe. */
export async function complaints(visit) {
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

/** What stands against a page, screen by screen of a long one, in light and in the sun. */
export async function complaintsOf(visit, row, themes) {
  const found = [];
  for (let screen = 0; screen < (row.screens ?? 1); screen += 1) {
    for (const theme of screen === 0 ? ['paper', 'sun'] : ['paper']) {
      await visit.page.emulateMedia(themes[theme]);
      await visit.settled();
      const wrong = [...(await complaints(visit)), ...(await smallTargets(visit))];
      found.push(...wrong.map((complaint) => `${theme}, screen ${screen}: ${complaint}`));
    }
    await visit.key('PageDown');
  }
  return found;
}
