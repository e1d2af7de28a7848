// The page of DEVELOPERS.md that lists everything that can be wrong, what is said then, and the
// file that shows it. It follows from words.def and the files beside this one:
//
//   TWO_CLOCKS_REWRITE=1 node --test tests/errors/gallery_page.test.mjs
import assert from 'node:assert/strict';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';

const top = fileURLToPath(new URL('../..', import.meta.url));
const page = `${top}DEVELOPERS.md`;
const title = '## What can be wrong\n';

/** Code, what is said and what to do, for every problem there is. */
function troublesIn(words) {
  const one = /^TROUBLE\((\w+),\s*"((?:[^"\\]|\\.)*)",\s*"((?:[^"\\]|\\.)*)"\)/gm;
  const said = (text) =>
    text
      .split('|')[0]
      .replace(/\{\d\}/g, '…')
      .replaceAll('\\"', '"');
  return [...words.matchAll(one)].map(([, code, what, remedy]) => {
    return { code, what: said(what), remedy: said(remedy) };
  });
}

/** Where each code is shown: a file of its name, else a row of a table in the test. */
async function shownIn() {
  const out = new Map();
  for (const folder of ['files', 'records', 'parts', 'templates']) {
    for (const name of await readdir(`${top}tests/errors/${folder}`)) {
      out.set(name.replace(/\.jsonl?$/, ''), `${folder}/${name}`);
    }
  }
  return out;
}

async function section() {
  const troubles = troublesIn(await readFile(`${top}engine/base/words.def`, 'utf8'));
  const shown = await shownIn();
  const rows = troubles.map(({ code, what, remedy }) => {
    return `| ${code} | ${what} | ${remedy} | ${shown.get(code) ?? 'typed'} |`;
  });
  return `${title}
Made by \`tests/errors/gallery_page.test.mjs\` from \`words.def\`; … stands for what was given.
Files are in \`tests/errors\`; what is typed stands in the tables of its tests.

| code | what is said | what to do | shown by |
|---|---|---|---|
${rows.join('\n')}
`;
}

test('the page of everything that can be wrong is up to date', async () => {
  const text = await readFile(page, 'utf8');
  const at = text.indexOf(title);
  const before = at < 0 ? `${text}\n` : text.slice(0, at);
  const fresh = await section();
  assert.ok(fresh.split('\n').length > 120);
  if (process.env.TWO_CLOCKS_REWRITE === '1') await writeFile(page, before + fresh);
  else assert.equal(text.slice(at), fresh);
});
