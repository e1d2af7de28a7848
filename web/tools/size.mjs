// Weighs what a first visit loads, as brotli at its best packs it: until its first picture, and
// until it answers. Fails above either gate. The demo fleet, the rescue page and the licences are
// not part of a first visit. The program is also told apart by room.
import { readFile, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { brotliCompressSync, constants } from 'node:zlib';

const top = fileURLToPath(new URL('../..', import.meta.url));
const site = join(top, 'build/site');
const kilobyte = 1024;
const gates = { first: 260 * kilobyte, whole: 640 * kilobyte };
const apart = /^(invented_fleet\.|rescue|icon_512|icon_maskable)/;
const after_the_picture = /^(rest\.|service_worker\.|kill_switch_worker\.)/;

const packed = (bytes) =>
  brotliCompressSync(bytes, {
    params: {
      [constants.BROTLI_PARAM_QUALITY]: constants.BROTLI_MAX_QUALITY,
      [constants.BROTLI_PARAM_LGWIN]: constants.BROTLI_MAX_WINDOW_BITS,
      [constants.BROTLI_PARAM_SIZE_HINT]: bytes.length,
    },
  }).length;

/** Reads an unsigned LEB128 number, as WebAssembly writes them. */
function number(bytes, at) {
  let value = 0;
  for (let shift = 0; ; shift += 7) {
    const byte = bytes[at];
    at += 1;
    value += (byte & 0x7f) * 2 ** shift;
    if (byte < 0x80) return [value, at];
  }
}

/** Sections of a module: id, start and end. */
function* sections(bytes) {
  for (let at = 8; at < bytes.length; ) {
    const id = bytes[at];
    const [size, start] = number(bytes, at + 1);
    yield { id, start, end: start + size };
    at = start + size;
  }
}

/** Imported functions come first in the numbering. */
function importedFunctions(bytes, { start }) {
  let functions = 0;
  let [count, at] = number(bytes, start);
  for (; count > 0; count -= 1) {
    for (let name = 0; name < 2; name += 1) {
      const [length, from] = number(bytes, at);
      at = from + length;
    }
    const kind = bytes[at];
    at += 1;
    if (kind === 0) functions += 1;
    // function: index; table: type and limits; memory: limits; global: type and mutability
    if (kind === 1) at += 1;
    if (kind === 3) at += 2;
    else if (kind === 0) [, at] = number(bytes, at);
    else {
      const flags = bytes[at];
      [, at] = number(bytes, at + 1);
      if (flags & 1) [, at] = number(bytes, at);
    }
  }
  return functions;
}

/** Bodies of the functions, with their numbers. */
function* functionBodies(bytes) {
  let index = 0;
  for (const section of sections(bytes)) {
    if (section.id === 2) index = importedFunctions(bytes, section);
    if (section.id !== 10) continue;
    let [count, at] = number(bytes, section.start);
    for (; count > 0; count -= 1) {
      const [size, start] = number(bytes, at);
      yield { index, body: bytes.subarray(start, start + size) };
      index += 1;
      at = start + size;
    }
  }
}

/** Room of a function by its demangled name. */
function roomOf(name) {
  const ours = /twoclocks::(\w+)/.exec(name) ?? /N\d?K?9twoclocks\d+([a-z]+)/.exec(name);
  if (ours !== null) return ours[1] === 'canvas' ? 'canvas' : `engine/${ours[1]}`;
  if (/nlohmann/.test(name)) return 'JSON library';
  if (/\bIm[A-Z]|\bimstb|\bstbtt|ImGui/.test(name)) return 'Dear ImGui';
  if (/^_?tc_|host_/.test(name)) return 'canvas';
  return 'C and C++ libraries';
}

/** The part of the name section that names functions: which function has which name. */
function functionNames(bytes, start, end) {
  const names = new Map();
  const text = (at, length) => new TextDecoder().decode(bytes.subarray(at, at + length));
  for (let at = start; at < end; ) {
    const part = bytes[at];
    const [size, from] = number(bytes, at + 1);
    at = from + size;
    if (part !== 1) continue;
    let [count, place] = number(bytes, from);
    for (; count > 0; count -= 1) {
      const [index, after] = number(bytes, place);
      const [length, name] = number(bytes, after);
      names.set(index, text(name, length));
      place = name + length;
    }
  }
  return names;
}

/** Names of the functions of a module, from its section of that name. */
function namesIn(bytes) {
  for (const { id, start, end } of sections(bytes)) {
    if (id !== 0) continue;
    const [length, from] = number(bytes, start);
    if (Buffer.from(bytes.subarray(from, from + length)).toString() === 'name')
      return functionNames(bytes, from + length, end);
  }
  throw new Error('app.wasm has no names: is it linked with --profiling-funcs?');
}

async function programByRoom() {
  const bytes = await readFile(join(top, 'build/wasm/app.wasm'));
  const names = namesIn(bytes);
  const rooms = new Map();
  const add = (room, part) => rooms.set(room, [...(rooms.get(room) ?? []), part]);
  for (const { index, body } of functionBodies(bytes)) add(roomOf(names.get(index) ?? ''), body);
  for (const { id, start, end } of sections(bytes)) {
    if (id === 11) add('words and tables', bytes.subarray(start, end));
    else if (id !== 10 && id !== 0) add('frame of the module', bytes.subarray(start, end));
  }
  return [...rooms].map(([room, parts]) => {
    const raw = Buffer.concat(parts);
    return [room, raw.length, packed(raw)];
  });
}

function table(title, rows) {
  console.log(title.padEnd(34), 'raw'.padStart(9), 'brotli'.padStart(9));
  for (const [name, raw, small] of [...rows].sort((a, b) => b[2] - a[2])) {
    console.log(name.padEnd(34), String(raw).padStart(9), String(small).padStart(9));
  }
  console.log('');
}

const files = [];
for (const entry of await readdir(site, { withFileTypes: true })) {
  if (!entry.isFile() || apart.test(entry.name)) continue;
  const bytes = await readFile(join(site, entry.name));
  files.push([entry.name.replace(/\.[0-9a-f]{12}\./, '.'), bytes.length, packed(bytes)]);
}
const kb = (bytes) => `${(bytes / kilobyte).toFixed(1)} KB`;
const sum = (rows) => rows.reduce((total, [, , small]) => total + small, 0);

function hold(said, bytes, gate) {
  console.log(`${said} ${kb(bytes)}, gate ${kb(gate)}`);
  if (bytes <= gate) return;
  console.error('over the gate: take something out of it');
  process.exitCode = 1;
}

const first = files.filter(([name]) => !after_the_picture.test(name));
table('until the first picture', first);
table(
  'after it, until it answers',
  files.filter(([name]) => after_the_picture.test(name)),
);
table('the program by room (packed alone)', await programByRoom());
hold('first picture', sum(first), gates.first);
hold('whole first load', sum(files), gates.whole);
