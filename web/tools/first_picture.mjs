// Runs the program under node, without a browser, as far as the first picture of a first visit, and
// writes down which functions that took. The drawing is thrown away.
//
//   node web/tools/first_picture.mjs WATCHED_WASM LOADER FONTS_FOLDER PROFILE
import { readFile, writeFile } from 'node:fs/promises';
import { pathToFileURL } from 'node:url';
import { App, hostFor } from '../bridge.js';

const [watched = '', loader = '', fonts = '', profile = ''] = process.argv.slice(2);

const uniforms = ['ProjMtx', 'Texture'];
const active_uniforms = 0x8b86;
const strings = new Set([0x1f00, 0x1f01, 0x1f02, 0x8b8c]);
const answers = {
  getSupportedExtensions: () => [],
  getContextAttributes: () => ({}),
  getAttribLocation: () => 0,
  getParameter: (asked) => (strings.has(asked) ? 'WebGL 2.0' : 0),
  getShaderParameter: () => 1,
  getProgramParameter: (_, asked) => (asked === active_uniforms ? uniforms.length : 1),
  getActiveUniform: (_, at) => ({ name: uniforms[at], size: 1 }),
};

/** Takes every call of WebGL 2, remembers nothing but what is set on it. */
const gl = new Proxy(answers, {
  get: (known, name) => known[name] ?? (() => ({})),
});
globalThis.document = { querySelector: () => ({ getContext: () => gl }) };
globalThis.window = { addEventListener() {} };
globalThis.WebGLRenderingContext = class {};

const handlers = new Proxy({}, { get: () => () => {} });
/** @type {{ app?: App }} */
const made = {};
let exported = {};
const { default: createApp } = await import(pathToFileURL(loader).href);
const program = await createApp({
  host: hostFor(() => made.app.program, handlers),
  instantiateWasm(imports, done) {
    void readFile(watched)
      .then((bytes) => WebAssembly.instantiate(bytes, imports))
      .then(({ instance }) => {
        exported = instance.exports;
        done(instance);
      });
    return {};
  },
});
const app = new App(program);
made.app = app;

let time_ms = 0;
/** Draws until nothing more is wanted. */
function draw() {
  for (let more = true, frames = 0; more; frames += 1) {
    if (frames > 1000) throw new Error('the first picture never comes to rest');
    time_ms += 16;
    more = app.frame(time_ms);
  }
}

function resize([width, height, ratio]) {
  app.resize({ width, height, ratio, safe_top: 0, safe_bottom: 34 });
}

// In the order of web/shell.js. Days and numbers are examples: what runs does not hang on them.
const example_day = 20_786;
const example_wall_ms = 1_795_910_400_000;
if (!app.start()) throw new Error('the program found no WebGL');
for (const weight of [400, 600]) {
  if (app.font(weight, await readFile(`${fonts}/inter_${weight}.otf`)) !== 1)
    throw new Error(`the typeface of weight ${weight} was not taken`);
}
for (const order of [0, 1, 2]) app.region({ decimal: ',', group: '.', order });
app.setting('page', '');
app.refresh(example_day, example_wall_ms, new Uint32Array([1, 2, 3, 4]));
app.device('0123456789abcdef0123456789abcdef');
app.storageNote('refused', 1);
app.draft('');
for (const online of [false, true]) app.online(online);
const views = [
  [390, 844, 3],
  [320, 568, 2],
  [768, 1024, 2],
  [1280, 800, 1],
];
const [phone] = views;
resize(phone);
app.appearance(false, false, false);
app.loaded();
draw();
for (const view of views) {
  resize(view);
  for (const looks of [0, 1, 2, 3, 4, 5, 6, 7]) {
    app.appearance(Boolean(looks & 1), Boolean(looks & 2), Boolean(looks & 4));
    draw();
  }
}
app.contextRestored();
draw();

const length = exported.__write_profile(0, 0);
const at = program._malloc(length);
exported.__write_profile(at, length);
await writeFile(profile, program.HEAPU8.slice(at, at + length));
