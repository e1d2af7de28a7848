// Pictures of every page in every theme, beside those that somebody looked at and kept.
//
//   node tests/browser/pictures.mjs --rewrite [part of a name]
//                                                     after a change that is meant to show
//
// The kept ones are in tests/golden/pictures. What differs is written to build/pictures, as it is
// now and with the changed pixels marked.
import { mkdir, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { need } from '../support/packages.mjs';
import { complaintsOf } from './access.mjs';
import { pages, reach } from './pages.mjs';
import { commonColours, mergeShades, readPng, writeFullPng, writeSmallPng } from './png.mjs';
import { begin } from './stage.mjs';
import { sizes } from './visit.mjs';

const { default: pixelmatch } = await import(need.resolve('pixelmatch'));
const kept = fileURLToPath(new URL('../golden/pictures', import.meta.url));
const differing = fileURLToPath(new URL('../../build/pictures', import.meta.url));

/** What the system asks for, and the theme that the page then wears. */
export const themes = {
  paper: { colorScheme: 'light', contrast: 'no-preference' },
  night: { colorScheme: 'dark', contrast: 'no-preference' },
  sun: { colorScheme: 'light', contrast: 'more' },
};
/** Size of the page and the themes it is looked at in. */
export const views = [
  { size: 'phone', worn: ['paper', 'night', 'sun'] },
  { size: 'laptop', worn: ['paper', 'night', 'sun'] },
  { size: 'small', worn: ['paper'] },
];

// Two runs of one build differ in no pixel. The kept picture has its rare shades merged: by up to
// 24 of 255, which pixelmatch calls 0.091: sqrt(0.5053 * 24 * 24 / 35215). One figure of body text
// changed is 25 pixels or more.
const threshold = 0.095;
const changed_most = 8;
// Colours of surfaces and words are compared to the bit. How much each covers is let move a little.
const token_share = 0.005;
const share_slack = 0.002;

export const nameOf = (row, size, theme) => `${row.name}_${size}_${theme}`;

/**
 * Pictures of one page: a map of names to bytes. It is reached at the first size; for the others
 * the window is made wider and narrower, as when a device is turned. What is done `then` finds it
 * at the first size again.
 */
export async function take(visit, row, looks = views, then = undefined) {
  const page = await reach(visit, row, { size: looks[0].size, bypassCSP: then !== undefined });
  const taken = new Map();
  try {
    for (const { size, worn } of looks) {
      if (size !== looks[0].size) await page.page.setViewportSize(sizes[size]);
      for (const theme of worn) {
        await page.page.emulateMedia(themes[theme]);
        await page.settled();
        taken.set(nameOf(row, size, theme), await page.screenshot());
      }
    }
    if (then !== undefined) {
      await page.page.setViewportSize(sizes[looks[0].size]);
      await then(page);
    }
  } finally {
    await page.close();
  }
  return taken;
}

/** Colours that only one of the pictures wears much of. Both have their rare shades merged. */
function otherColours(was, is) {
  const [before, now] = [was, is].map((picture) => commonColours(picture, token_share));
  const [before_all, now_all] = [was, is].map((picture) => commonColours(picture, 0));
  const gone = (some, all) =>
    [...some].filter(([name, share]) => share - (all.get(name) ?? 0) > share_slack);
  return [...gone(before, now_all), ...gone(now, before_all)].map(([name]) => name);
}

/** What differs between a kept picture and one taken now; nothing when they are alike. */
export function compare(kept_bytes, taken_bytes) {
  const [was, is] = [readPng(kept_bytes), readPng(taken_bytes)];
  const { width, height } = is;
  if (was.width !== width || was.height !== height) return { said: 'another size' };
  const marked = { width, height, data: Buffer.alloc(4 * width * height) };
  // Edges of letters count: they are drawn by our own program, the same on every machine.
  const options = { threshold, includeAA: true };
  const changed = pixelmatch(was.data, is.data, marked.data, width, height, options);
  const colours = otherColours(was, mergeShades(is));
  if (changed <= changed_most && colours.length === 0) return undefined;
  const said = [`${changed} pixels changed`];
  if (colours.length > 0) said.push(`colours that came or went: ${colours.join(' ')}`);
  return { said: said.join('; '), changed, colours, marked: writeFullPng(marked) };
}

/**
 * What is otherwise about a page than in the pictures kept of it, at every size, and what stands
 * against it by the rules for assistive technology.
 */
export async function wrongOf(visit, row) {
  const found = [];
  const taken = await take(visit, row, views, async (page) => {
    found.push(...(await complaintsOf(page, row, themes)));
  });
  return [...(await judge(taken)), ...found];
}

/** What a picture and the kept one of that name differ in; nothing when they are alike. */
async function differenceOf(name, bytes) {
  const golden = await readFile(join(kept, `${name}.png`)).catch(() => undefined);
  return golden === undefined ? { said: 'no picture is kept' } : compare(golden, bytes);
}

/** Compares with the kept pictures; says what is wrong with each, and writes what to look at. */
export async function judge(taken) {
  const wrong = [];
  for (const [name, bytes] of taken) {
    const difference = await differenceOf(name, bytes);
    if (difference === undefined) continue;
    await mkdir(differing, { recursive: true });
    await writeFile(join(differing, `${name}.png`), bytes);
    if (difference.marked)
      await writeFile(join(differing, `${name}.changed.png`), difference.marked);
    wrong.push(`build/pictures/${name}.png: ${difference.said}`);
  }
  return wrong;
}

/** Names of kept pictures that no page and theme stands for any more. */
export async function orphans() {
  const names = new Set();
  for (const row of pages) {
    for (const { size, worn } of views) {
      for (const theme of worn) names.add(`${nameOf(row, size, theme)}.png`);
    }
  }
  const files = await readdir(kept).catch(() => []);
  return files.filter((file) => !names.has(file));
}

async function rewrite(part) {
  await mkdir(kept, { recursive: true });
  const stage = await begin();
  let bytes = 0;
  let count = 0;
  for (const row of pages.filter(({ name }) => name.includes(part))) {
    for (const [name, picture] of await take(stage.visit, row)) {
      const difference = await differenceOf(name, picture);
      if (difference === undefined) continue;
      const small = writeSmallPng(readPng(picture));
      await writeFile(join(kept, `${name}.png`), small);
      bytes += small.length;
      count += 1;
      console.log(`${name}: ${difference.said}`);
    }
  }
  await stage.end();
  for (const file of await orphans()) await rm(join(kept, file));
  console.log(`${count} pictures, ${Math.round(bytes / 1024)} KB`);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  if (process.argv[2] === '--rewrite') await rewrite(process.argv[3] ?? '');
  else {
    console.error('usage: node tests/browser/pictures.mjs --rewrite [part of a name]');
    process.exitCode = 2;
  }
}
