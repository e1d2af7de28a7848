// Takes the linked program apart: what the first picture of a first visit runs, and the rest. A
// function that is in the wrong part costs time, never a wrong answer: see web/program.js.
import { execFile } from 'node:child_process';
import { copyFile, mkdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const run = promisify(execFile);
const first_picture = fileURLToPath(new URL('first_picture.mjs', import.meta.url));
const features = ['--enable-mutable-globals', '--enable-bulk-memory'];

/**
 * @param {string} build folder with wasm/app.wasm, wasm/app.js and fonts/
 * @returns {Promise<{ first: Uint8Array, rest: Uint8Array }>}
 */
export async function takeApart(build) {
  const folder = join(build, 'wasm', 'parts');
  await mkdir(folder, { recursive: true });
  const at = (/** @type {string} */ name) => join(folder, name);
  // Names are for the table of bytes per room. Without them the optimiser finds more.
  await run('wasm-opt', [
    '--strip-debug',
    '--strip-producers',
    join(build, 'wasm', 'app.wasm'),
    '-o',
    at('plain.wasm'),
  ]);
  await run('wasm-split', ['--instrument', at('plain.wasm'), '-o', at('watched.wasm')]);
  await copyFile(join(build, 'wasm', 'app.js'), at('app.mjs'));
  await run(process.execPath, [
    first_picture,
    at('watched.wasm'),
    at('app.mjs'),
    join(build, 'fonts'),
    at('profile'),
  ]);
  await run('wasm-split', [
    ...features,
    '--split',
    `--profile=${at('profile')}`,
    '--export-prefix=%',
    `--placeholdermap`,
    at('plain.wasm'),
    '-o1',
    at('first.plain.wasm'),
    '-o2',
    at('rest.plain.wasm'),
  ]);
  for (const part of ['first', 'rest'])
    await run('wasm-opt', [...features, '-Os', at(`${part}.plain.wasm`), '-o', at(`${part}.wasm`)]);
  return { first: await readFile(at('first.wasm')), rest: await readFile(at('rest.wasm')) };
}
