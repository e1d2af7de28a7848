// Two people disagree about one reading: a third joins both files, sees what they would change and
// who says what, leaves it open, looks at the marks, sets one file aside, and chooses.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { ann, ben, lookAt } from './disagreement.mjs';
import { open } from './driver.mjs';
import { now } from './pages.mjs';

const openTab = async (page, tab, registration) => {
  await page.tap('tab', tab);
  if (registration !== undefined) await page.tap('button', new RegExp(`^${registration},`));
};

test('two files that disagree: told before, joined, marked, set aside, answered', async () => {
  const page = await open('chromium', { size: 'phone', fleet: 'demo', now });
  await openTab(page, 'Fleet', 'ISLE-1');
  // 2,200 h less 733.3 h.
  await page.sees('link', 'Hours left: 1,466.7 h. Why?');

  await lookAt(page, ann);
  await page.reads('paragraph', '1 correction for ISLE-1');
  await page.reads(
    'paragraph',
    'ISLE-1, hours left to the overhaul: 1,466.7 now, 1,465.5 with this file',
  );
  await page.tap('button', 'Join it to mine');

  await lookAt(page, ben);
  await page.reads('paragraph', 'ISLE-1: records would disagree');
  await page.reads('paragraph', 'Here');
  await page.reads('paragraph', 'Ann, written 20 Nov 2026 at 08:15 UTC on device 4be1c0');
  await page.reads('paragraph', 'In the file');
  await page.reads('paragraph', 'Ben, written 21 Nov 2026 at 16:40 UTC on device 7f20aa');
  await page.tap('button', 'Join it to mine');

  // The safer of both is in use, and bears a mark; what the reading does not touch does not.
  await page.tap('tab', 'Fleet');
  await page.sees('button', /^ISLE-1, .* 1 open question\.$/);
  await openTab(page, 'Fleet', 'ISLE-1');
  await page.sees('link', 'Hours left: 1,464.6 h (records disagree). Why?');
  await page.sees('link', /^Calendar left: \d+ y \d+ d\. Why\?$/);

  // Set aside in one tap, and counted again.
  await page.tap('tab', 'Files');
  await page.tap('button', /^Set aside.*from_ben/);
  await openTab(page, 'Fleet', 'ISLE-1');
  await page.sees('link', 'Hours left: 1,465.5 h. Why?');
  await page.tap('tab', 'Files');
  await page.tap('button', /^Count it again.*from_ben/);

  await openTab(page, 'Fleet', 'ISLE-1');
  await page.tap('button', /^Use this.*146\.9 h/);
  await page.sees('link', 'Hours left: 1,465.5 h. Why?');
  assert.deepEqual(page.faults, []);
});
