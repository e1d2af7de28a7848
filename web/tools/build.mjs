// Puts the page together: build/site is all a host needs. Everything that can be cached for long
// carries the hash of its content in its name, so an old program never meets a new shell.
import { createHash } from 'node:crypto';
import { cp, mkdir, readFile, readdir, rm, writeFile } from 'node:fs/promises';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build, transform } from 'esbuild';
import { takeApart } from './two_parts.mjs';

const top = fileURLToPath(new URL('../..', import.meta.url));
const site = join(top, 'build/site');
const options = /** @type {import('esbuild').BuildOptions} */ ({
  bundle: true,
  write: false,
  format: 'esm',
  target: ['es2022', 'safari15'],
  minify: true,
  legalComments: 'none',
  absWorkingDir: top,
  logLevel: 'warning',
});

const hashOf = (bytes) => createHash('sha256').update(bytes).digest('hex').slice(0, 12);

/** Writes a file under a name with its hash. */
async function putHashed(name, extension, bytes) {
  const address = `${name}.${hashOf(bytes)}.${extension}`;
  await writeFile(join(site, address), bytes);
  return address;
}

async function bundle(entry, define, alias = {}) {
  const result = await build({ ...options, entryPoints: [join('web', entry)], define, alias });
  return result.outputFiles[0].contents;
}

async function putFonts() {
  const fonts = {};
  for (const weight of [400, 600]) {
    const bytes = await readFile(join(top, `build/fonts/inter_${weight}.otf`));
    fonts[weight] = await putHashed(`inter_${weight}`, 'otf', bytes);
  }
  return fonts;
}

/** Replaces each of the marked names, which must all be there. */
function filled(text, names) {
  let out = text;
  for (const [mark, value] of Object.entries(names)) {
    if (!out.includes(mark)) throw new Error(`${mark} is not in the text to fill`);
    out = out.replaceAll(mark, value);
  }
  return out;
}

async function putStyle(fonts) {
  const source = await readFile(join(top, 'web/page.css'), 'utf8');
  const text = filled(source, { FONT_400: fonts[400], FONT_600: fonts[600] });
  const { code } = await transform(text, { loader: 'css', minify: true });
  return putHashed('page', 'css', code);
}

async function putAsTheyAre() {
  for (const name of ['icon.svg', 'icon_192.png', 'icon_512.png', 'icon_maskable.png']) {
    await cp(join(top, 'assets/icons', name), join(site, name));
  }
  await cp(join(top, 'web/manifest.webmanifest'), join(site, 'manifest.webmanifest'));
}

/** The licences of what ships, taken from where each was installed from. */
async function putLicences() {
  const folder = join(site, 'licences');
  await mkdir(folder);
  const shipped = {
    'licences.md': 'assets/licences.md',
    'inter.txt': '/usr/share/doc/fonts-inter/copyright',
    'dear_imgui.txt': join(process.env.IMGUI_DIR ?? 'build/deps/imgui', 'LICENSE.txt'),
    'nlohmann_json.txt': '/usr/share/doc/nlohmann-json3-dev/copyright',
    'date.txt': '/usr/share/doc/libhowardhinnant-date-dev/copyright',
    'emscripten.txt': '/usr/share/doc/emscripten/copyright',
    'idb.txt': 'web/node_modules/idb/LICENSE',
    'workbox.txt': 'web/node_modules/workbox-precaching/LICENSE',
  };
  for (const [name, from] of Object.entries(shipped)) {
    const path = from.startsWith('/') ? from : join(top, from);
    if (existsSync(path)) await cp(path, join(folder, name));
    else console.warn(`no licence text at ${from}: put it into build/site/licences/${name}`);
  }
}

/** The invented fleet that is one tap away; the demo folder's own choice of file. */
async function putDemo() {
  const folder = join(top, 'demo');
  const names = (await readdir(folder)).filter((name) => name.endsWith('.jsonl')).sort();
  const chosen = names.find((name) => name.startsWith('fleet')) ?? names[0];
  if (chosen === undefined) throw new Error('demo/ holds no fleet');
  return putHashed('invented_fleet', 'jsonl', await readFile(join(folder, chosen)));
}

/** What the service worker keeps. A name with a hash in it needs no other revision. */
async function filesToKeep() {
  const names = (await readdir(site)).filter((name) => /\.[a-z0-9]+$/.test(name)).sort();
  return Promise.all(
    names.map(async (url) => {
      const hashed = /\.[0-9a-f]{12}\./.test(url);
      return { url, revision: hashed ? null : hashOf(await readFile(join(site, url))) };
    }),
  );
}

await rm(site, { recursive: true, force: true });
await mkdir(site, { recursive: true });
const program = join(top, 'build/wasm/app');
const fonts = await putFonts();
const style = await putStyle(fonts);
const demo = await putDemo();
const parts = await takeApart(join(top, 'build'));
const first = await putHashed('first', 'wasm', parts.first);
const rest = await putHashed('rest', 'wasm', parts.rest);
const addresses = JSON.stringify({ program: { first, rest }, demo, fonts });
const shell = await bundle('shell.js', { ADDRESSES: addresses }, { program: `${program}.js` });
const shell_name = await putHashed('shell', 'js', shell);
const names = { PROGRAM: first, FONT_400: fonts[400], FONT_600: fonts[600], STYLE: style };
const page = filled(await readFile(join(top, 'web/index.html'), 'utf8'), {
  ...names,
  SHELL: shell_name,
});
await writeFile(join(site, 'index.html'), page);
await putAsTheyAre();
const rescue = await readFile(join(top, 'web/rescue.html'), 'utf8');
const rescue_name = await putHashed('rescue', 'js', await bundle('rescue.js', {}));
await writeFile(join(site, 'rescue.html'), filled(rescue, { STYLE: style, RESCUE: rescue_name }));
const files = JSON.stringify(await filesToKeep());
const worker = await bundle('service_worker.js', {
  FILES: files,
  'process.env.NODE_ENV': '"production"',
});
await writeFile(join(site, 'service_worker.js'), worker);
await putLicences();
// Not kept by the worker that it may have to replace.
await cp(join(top, 'web/kill_switch_worker.js'), join(site, 'kill_switch_worker.js'));
console.log(`build/site: ${(await readdir(site)).length} files`);
