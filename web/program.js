// The program comes in two parts: what a first picture without any record runs, and the rest. A
// first visit draws as soon as the first part is there, and answers once the rest is.
import createApp from 'program';

/** @typedef {import('./types').Program} Program */

/** A function of the rest was called before the rest was there. */
export class NotYet extends Error {}

/** @param {string} address @param {WebAssembly.Imports} imports */
async function instantiate(address, imports) {
  try {
    return await WebAssembly.instantiateStreaming(fetch(address), imports);
  } catch {
    // A host that does not call it application/wasm, or a cache that lost it.
    const answer = await fetch(address);
    if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
    return WebAssembly.instantiate(await answer.arrayBuffer(), imports);
  }
}

/** What stands in for a function of the rest; the number is its place in the table. */
const placeholder = new Proxy(
  {},
  {
    get: (_, place) => () => {
      throw new NotYet(`function ${String(place)} is not here yet`);
    },
  },
);

/**
 * Loads the first part. The rest is asked for once somebody waits for it.
 * @param {object} host what the program calls
 * @param {{ first: string, rest: string }} addresses
 * @returns {Promise<{ program: Program, whole: () => Promise<void> }>}
 */
export async function loadProgram(host, { first, rest }) {
  /** @type {WebAssembly.Exports} */
  let exports = {};
  /** @type {Promise<void> | undefined} */
  let arriving;
  const program = await new Promise((resolve, reject) => {
    /**
     * @param {WebAssembly.Imports} imports
     * @param {(instance: WebAssembly.Instance) => void} done
     */
    const instantiateWasm = (imports, done) => {
      instantiate(first, { ...imports, placeholder }).then(({ instance }) => {
        exports = instance.exports;
        done(instance);
      }, reject);
      return {};
    };
    createApp({ host, instantiateWasm }).then(resolve, reject);
  });
  // The rest puts its functions into the first part's table, in the places that were held.
  const fetched = async () => void (await instantiate(rest, { primary: exports }));
  return { program, whole: () => (arriving ??= fetched()) };
}

/**
 * The same object, whose calls wait in line until it is opened. They return nothing.
 * @template {object} T
 * @param {T} target
 * @returns {{ held: T, open: () => void }}
 */
export function inLine(target) {
  /** @type {(() => void)[] | undefined} */
  let waiting = [];
  const held = new Proxy(target, {
    get:
      (_, name) =>
      (/** @type {unknown[]} */ ...given) => {
        const call = () => void (/** @type {any} */ (target)[name](...given));
        if (waiting === undefined) call();
        else waiting.push(call);
      },
  });
  const open = () => {
    const calls = waiting ?? [];
    waiting = undefined;
    for (const call of calls) call();
  };
  return { held, open };
}
