// Saves in order, one at a time, and says what became of each. What the program asks for is
// acknowledged only when the disk has it; a store that hangs is opened once more, and then a person
// is told.
import { after, wallMs } from './clock.js';
import { reasonOf, StoreError } from './store.js';

/** @typedef {import('./store.js').Store} Store */

export const patience_ms = 3000;

/**
 * @template T
 * @param {Promise<T>} work
 * @param {number} limit_ms
 * @returns {Promise<T>}
 */
export function withinTime(work, limit_ms) {
  return new Promise((resolve, reject) => {
    const cancel = after(limit_ms, () => reject(new StoreError('no_answer')));
    work.then(resolve, reject).finally(cancel);
  });
}

export class Saver {
  /**
   * @param {Store | undefined} store none when the browser refuses storage
   * @param {{ committed: (token: number, ok: boolean, reason: string) => void,
   *   wrote: (number: number, bytes: Uint8Array) => void, stuck: () => void }} told
   * @param {number} [limit_ms]
   */
  constructor(store, told, limit_ms = patience_ms) {
    this.store = store;
    this.told = told;
    this.limit_ms = limit_ms;
    /** Number of the last segment the program knows to be safe. */
    this.acknowledged = store?.sequence ?? 0;
    this.queue = Promise.resolve();
    /** Kept while the page is seen; a new one holds the queue while it is not. */
    this.seen = Promise.resolve();
    this.see = () => {};
    this.hidden = false;
    this.writer = true;
    this.slowest_ms = 0;
  }

  /** @param {number} token @param {Uint8Array} bytes */
  commit(token, bytes) {
    this.queue = this.queue.then(() => this.seen).then(() => this.save(token, bytes));
    return this.queue;
  }

  /**
   * A page out of sight may be stopped at any moment, and some browsers then leave a transaction
   * open for ever: none is begun until it is seen again. What waits is not acknowledged.
   * @param {boolean} hidden
   */
  hide(hidden) {
    if (hidden === this.hidden) return;
    this.hidden = hidden;
    this.see();
    if (!hidden) return;
    this.seen = new Promise((see) => {
      this.see = () => see(undefined);
    });
  }

  /** @param {number} token @param {Uint8Array} bytes */
  async save(token, bytes) {
    const began_ms = wallMs();
    try {
      const number = await this.write(bytes);
      this.acknowledged = number;
      this.told.wrote(number, bytes);
      this.told.committed(token, true, '');
    } catch (error) {
      const reason = reasonOf(error);
      this.told.committed(token, false, reason);
      if (reason === 'no_answer') this.told.stuck();
    }
    this.slowest_ms = Math.max(this.slowest_ms, wallMs() - began_ms);
  }

  /** @param {Uint8Array} bytes */
  async write(bytes) {
    const { store } = this;
    if (store === undefined) throw new StoreError('closed');
    if (!this.writer) throw new StoreError('other_writer');
    try {
      return await withinTime(store.append(bytes), this.limit_ms);
    } catch (error) {
      const reason = reasonOf(error);
      if (reason !== 'no_answer' && reason !== 'closed') throw error;
    }
    await withinTime(store.reopen(), this.limit_ms);
    return withinTime(store.append(bytes), this.limit_ms);
  }

  /** Never answered; a snapshot that fails only costs time at the next start. */
  /** @param {Uint8Array} bytes */
  keepSnapshot(bytes) {
    const covers = this.acknowledged;
    const { store } = this;
    if (store === undefined || !this.writer) return;
    const keep = () => withinTime(store.keepSnapshot(bytes, covers), this.limit_ms);
    this.queue = this.queue
      .then(() => this.seen)
      .then(keep)
      .catch(() => {});
  }

  /**
   * Another tab wrote: what comes next goes behind it.
   * @param {number} number @param {string} hash
   */
  follow(number, hash) {
    if (this.store === undefined) return;
    this.store.sequence = number;
    this.store.tail = hash;
    this.acknowledged = number;
  }

  /** When everything asked for so far has been dealt with. */
  idle() {
    return this.queue;
  }
}
