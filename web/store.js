// Where the journal lies on this device: IndexedDB, one strict transaction per commit.
//
// segments   by sequence number: every commit, for ever; nothing is ever changed in place
// snapshots  by the sequence number they cover; the two newest are kept
// torn       damaged segments, taken out of the way but not thrown away
// meta       the device's random name; the last foreign segment that a person was told of
import { wrap } from 'idb';
import { isWhole, seal } from './segment.js';

/** @typedef {import('idb').IDBPDatabase} Database */
/** @typedef {import('./segment.js').Segment} Segment */
/** @typedef {{ number: number, stored: unknown }} Numbered */

const database_name = 'two_clocks';
const strict = /** @type {const} */ ({ durability: 'strict' });
const snapshots_kept = 2;
const foreign_told = 'foreign_told';
/** Lies where a damaged segment was. */
const put_aside = { put_aside: true };

/** @param {unknown} stored */
const isPutAside = (stored) => /** @type {any} */ (stored)?.put_aside === true;

/** Why a commit did not happen, in a word the engine's catalogue knows. */
export class StoreError extends Error {
  /**
   * @param {'other_writer' | 'full' | 'closed' | 'failed' | 'no_answer'} reason
   * @param {unknown} [cause]
   */
  constructor(reason, cause) {
    super(reason, { cause });
    this.reason = reason;
  }
}

/** @param {unknown} error */
export function reasonOf(error) {
  if (error instanceof StoreError) return error.reason;
  const name = error instanceof Error || error instanceof DOMException ? error.name : '';
  if (name === 'QuotaExceededError') return 'full';
  return name === 'InvalidStateError' ? 'closed' : 'failed';
}

/**
 * Its end is awaited where it matters; without the empty handler an abort would count as unhandled
 * besides.
 * @template {{ done: Promise<unknown> }} T
 * @param {T} transaction
 */
function begun(transaction) {
  transaction.done.catch(() => {});
  return transaction;
}

/** @param {IDBDatabase} database */
function lay(database) {
  for (const name of ['segments', 'snapshots', 'torn', 'meta']) {
    if (!database.objectStoreNames.contains(name)) database.createObjectStore(name);
  }
}

/**
 * @param {IDBFactory} factory
 * @returns {Promise<Store>}
 */
export async function openStore(factory) {
  const request = factory.open(database_name, 1);
  request.onupgradeneeded = () => lay(request.result);
  const database = /** @type {Database} */ (/** @type {unknown} */ (await wrap(request)));
  return new Store(factory, database);
}

export class Store {
  /** @param {IDBFactory} factory @param {Database} database */
  constructor(factory, database) {
    this.factory = factory;
    this.closed = false;
    /** Number of the last segment known, and its hash. */
    this.sequence = 0;
    this.tail = '';
    this.adopt(database);
  }

  /** @param {Database} database */
  adopt(database) {
    this.database = database;
    this.closed = false;
    // A newer version of the page wants to change the layout: it must not have to wait for us.
    database.addEventListener('versionchange', () => this.close());
    database.addEventListener('close', () => {
      this.closed = true;
    });
  }

  close() {
    this.closed = true;
    this.database?.close();
  }

  /** The database, if it is still ours to use. */
  open() {
    if (this.closed || this.database === undefined) throw new StoreError('closed');
    return this.database;
  }

  /** After a hang: a new connection, everything known kept. */
  async reopen() {
    this.close();
    const again = await openStore(this.factory);
    this.adopt(again.open());
  }

  /** The device's random name, made once. @param {() => string} make */
  async device(make) {
    const transaction = begun(this.open().transaction('meta', 'readwrite', strict));
    const known = /** @type {unknown} */ (await transaction.store.get('device'));
    const device = typeof known === 'string' ? known : make();
    if (device !== known) await transaction.store.put(device, 'device');
    await transaction.done;
    return device;
  }

  /** Whether nothing was ever kept here but the device's name. */
  async empty() {
    const transaction = begun(this.open().transaction(['segments', 'snapshots']));
    const segments = /** @type {unknown} */ (await transaction.objectStore('segments').count());
    const snapshots = /** @type {unknown} */ (await transaction.objectStore('snapshots').count());
    return segments === 0 && snapshots === 0;
  }

  /** Everything that was ever committed, damaged or not, for the rescue page. */
  async everything() {
    const transaction = begun(this.open().transaction(['segments', 'torn']));
    const whole = /** @type {unknown[]} */ (await transaction.objectStore('segments').getAll());
    const torn = /** @type {unknown[]} */ (await transaction.objectStore('torn').getAll());
    return [...whole, ...torn];
  }

  /** Snapshots, newest first; a damaged one has no bytes. */
  async snapshots() {
    const transaction = begun(this.open().transaction('snapshots'));
    const covers = /** @type {number[]} */ (await transaction.store.getAllKeys());
    const found = /** @type {unknown[]} */ (await transaction.store.getAll());
    return covers
      .map((number, at) => {
        const stored = found[at];
        return { covers: number, bytes: isWhole(stored) ? stored.bytes : undefined };
      })
      .reverse();
  }

  /**
   * Every whole segment after one, oldest first, and what was wrong. Only the tab that may write
   * takes damaged segments out of the way.
   * @param {number} after
   * @param {boolean} may_write
   */
  async load(after, may_write) {
    const transaction = begun(this.open().transaction('segments'));
    const range = after > 0 ? IDBKeyRange.lowerBound(after) : undefined;
    const keys = /** @type {number[]} */ (await transaction.store.getAllKeys(range));
    const found = /** @type {unknown[]} */ (await transaction.store.getAll(range));
    const numbered = found.map((stored, at) => ({ number: keys[at] ?? 0, stored }));
    const result = this.judge(numbered, after);
    if (may_write) await this.putAside(result);
    const foreign = await this.untold(result.foreign, may_write);
    return { ...result, gaps: result.missing.length + result.torn.length - result.cut + foreign };
  }

  /**
   * How many of the segments that do not follow the one before them nobody was told of yet. They
   * are used: their records are whole.
   * @param {number[]} foreign
   * @param {boolean} may_write
   */
  async untold(foreign, may_write) {
    if (foreign.length === 0) return 0;
    const mode = may_write ? 'readwrite' : 'readonly';
    const transaction = begun(this.open().transaction('meta', mode, strict));
    const told = Number((await transaction.store.get(foreign_told)) ?? 0);
    const news = foreign.filter((number) => number > told);
    // @ts-expect-error there is a put when the mode is readwrite
    if (may_write && news.length > 0) await transaction.store.put(news.at(-1), foreign_told);
    await transaction.done;
    return news.length;
  }

  /**
   * What of the found can be used. A damaged end is a last write that was cut off; anything damaged
   * or missing before that, or not following what lies before it, means that something happened to
   * the disk.
   * @param {Numbered[]} numbered
   * @param {number} after
   */
  judge(numbered, after) {
    /** @type {Uint8Array[]} */
    const segments = [];
    /** @type {Numbered[]} */
    const torn = [];
    /** @type {number[]} */
    const missing = [];
    /** @type {number[]} */
    const foreign = [];
    let expected = Math.max(after, 1);
    this.sequence = after;
    this.tail = '';
    for (const { number, stored } of numbered) {
      for (; expected < number; expected += 1) missing.push(expected);
      expected = number + 1;
      if (!isWhole(stored)) {
        if (!isPutAside(stored)) torn.push({ number, stored });
        continue;
      }
      const known = number === this.sequence + 1 && (number === 1 || this.tail !== '');
      if (number > after && known && stored.previous !== this.tail) foreign.push(number);
      this.sequence = number;
      this.tail = stored.hash;
      if (number > after) segments.push(stored.bytes);
    }
    const cut = torn.filter(({ number }) => number > this.sequence).length;
    return { segments, torn, missing, foreign, cut };
  }

  /**
   * Takes damaged segments out of the way, so that each is reported once, without throwing them
   * away.
   * @param {{ torn: Numbered[], missing: number[] }} found
   */
  async putAside({ torn, missing }) {
    if (torn.length + missing.length === 0) return;
    const transaction = begun(this.open().transaction(['segments', 'torn'], 'readwrite', strict));
    const segments = transaction.objectStore('segments');
    for (const { number, stored } of torn) {
      await transaction.objectStore('torn').put(stored, number);
      if (number > this.sequence) await segments.delete(number);
      else await segments.put(put_aside, number);
    }
    for (const number of missing) {
      if (number < this.sequence) await segments.put(put_aside, number);
    }
    await transaction.done;
  }

  /**
   * Writes one segment; done only when the disk has it.
   * @param {Uint8Array} bytes
   * @returns {Promise<number>} its number
   */
  async append(bytes) {
    // Taken now: a write that was given up on may still succeed while this one waits.
    const number = this.sequence + 1;
    const segment = await seal(bytes, this.tail);
    const transaction = begun(this.open().transaction('segments', 'readwrite', strict));
    const last = await transaction.store.openKeyCursor(null, 'prev');
    const found = Number(last?.key ?? 0);
    if (found < number) {
      await transaction.store.add(segment, number);
    } else {
      const there = /** @type {Segment} */ (await transaction.store.get(number));
      if (found > number || there.hash !== segment.hash) {
        transaction.abort();
        throw new StoreError('other_writer');
      }
    }
    await transaction.done;
    if (number > this.sequence) {
      this.sequence = number;
      this.tail = segment.hash;
    }
    return number;
  }

  /**
   * @param {Uint8Array} bytes
   * @param {number} covers number of the last segment it holds
   */
  async keepSnapshot(bytes, covers) {
    const segment = await seal(bytes, '');
    const transaction = begun(this.open().transaction('snapshots', 'readwrite', strict));
    await transaction.store.put(segment, covers);
    const keys = await transaction.store.getAllKeys();
    for (const key of keys.slice(0, -snapshots_kept)) await transaction.store.delete(key);
    await transaction.done;
  }
}
