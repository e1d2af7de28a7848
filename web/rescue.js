// The way out when the program does not start: reads the raw store and writes a journal file of all
// whole records in it, those set aside and those in damaged segments included.
import { download } from './files.js';
import { openStore } from './store.js';
import { words } from './words.js';

const header = '{"journal":"twoclocks","version":1}';

/** @param {string} line */
function isRecord(line) {
  try {
    return typeof JSON.parse(line).kind === 'string';
  } catch {
    return false; // a torn line, or one that says how a segment was saved
  }
}

/** Every record once, in the order in which it was stored. @param {unknown[]} stored */
export function recordsOf(stored) {
  const decoder = new TextDecoder();
  const lines = stored.flatMap((each) => {
    const { bytes } = /** @type {{ bytes?: unknown }} */ (each ?? {});
    return bytes instanceof Uint8Array ? decoder.decode(bytes).split('\n') : [];
  });
  return [...new Set(lines.filter(isRecord))];
}

/** A file that the program can join. @param {string[]} records */
export const journalOf = (records) => `${[header, ...records].join('\n')}\n`;

async function start() {
  const found = /** @type {HTMLElement} */ (document.getElementById('found'));
  const save = /** @type {HTMLButtonElement} */ (document.getElementById('save'));
  try {
    const records = recordsOf(await (await openStore(indexedDB)).everything());
    found.textContent = `${words.rescue_found} ${records.length}`;
    save.hidden = records.length === 0;
    save.addEventListener('click', () => download('two-clocks-rescue.jsonl', journalOf(records)));
  } catch {
    found.textContent = words.no_store;
  }
}

if (typeof document !== 'undefined') void start();
