// The stored records and this tab's right to write them: opened first, replayed once, then saved
// to.
import { openStore, reasonOf, StoreError } from './store.js';
import { Saver, withinTime, patience_ms } from './saver.js';
import { Tabs } from './tabs.js';

/** @typedef {import('./bridge').App} App */

/** So many times as long as a save may take: a slow phone may have years of records to read. */
const reading_takes = 5;

/** A random name for this device, in hexadecimal. */
function randomName() {
  const random = crypto.getRandomValues(new Uint8Array(16));
  return Array.from(random, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

export class Records {
  /**
   * `app` is for the start; `input` for what comes by itself and may have to wait in line.
   * @param {{ app: () => App, input: () => App, stuck: () => void }} told
   * @param {number} [limit_ms] how long the store may take to answer
   */
  constructor(told, limit_ms = patience_ms) {
    this.told = told;
    this.limit_ms = limit_ms;
    /** @type {import('./store.js').Store | undefined} */
    this.store = undefined;
    const channel = 'BroadcastChannel' in window ? new BroadcastChannel('two_clocks') : undefined;
    this.tabs = new Tabs(navigator.locks, channel);
    this.saver = new Saver(undefined, this.saverTold(), limit_ms);
    this.asked_to_persist = false;
  }

  saverTold() {
    return {
      /** @param {number} token @param {boolean} ok @param {string} reason */
      committed: (token, ok, reason) => {
        this.told.app().committed(token, ok, reason);
        if (ok) void this.persist();
      },
      /** @param {number} number @param {Uint8Array} bytes */
      wrote: (number, bytes) => this.tabs.tell(number, this.store?.tail ?? '', bytes),
      stuck: this.told.stuck,
    };
  }

  get stored() {
    return this.store !== undefined;
  }

  /**
   * Where storage is refused the page still runs. Fails when there is a store and it does not
   * answer: an empty page would look as if the records were gone.
   */
  async open() {
    try {
      this.store = await withinTime(openStore(indexedDB), this.limit_ms);
    } catch (error) {
      console.warn('storage', reasonOf(error));
      if (reasonOf(error) === 'no_answer') throw error;
    }
    this.may_write = await this.tabs.claim(() => void this.promoted());
  }

  /** Whether there is certainly nothing to replay. */
  async empty() {
    if (!this.may_write) return false;
    if (this.store === undefined) return true;
    return this.inTime(this.store.empty()).catch(() => false);
  }

  /** Gives the program everything stored, oldest first. Fails when it cannot be read. */
  async replay() {
    try {
      await this.replayAll();
    } catch (error) {
      throw new StoreError(reasonOf(error), error);
    }
  }

  async replayAll() {
    const app = this.told.app();
    const { store } = this;
    app.device(store === undefined ? randomName() : await this.inTime(store.device(randomName)));
    this.saver = new Saver(store, this.saverTold(), this.limit_ms);
    this.saver.writer = this.may_write ?? true;
    if (store === undefined) {
      app.storageNote('refused', 1);
      return;
    }
    const covered = await this.replaySnapshot(store, app);
    await this.replayAfter(store, app, covered, this.saver.writer);
    this.tabs.listen((number, hash, bytes) => {
      this.saver.follow(number, hash);
      this.told.input().otherTabWrote(bytes);
    });
    if (!this.saver.writer) app.readOnly(true);
  }

  /**
   * A store that never answers must not leave an empty page for ever.
   * @template T @param {Promise<T>} work
   */
  inTime(work) {
    return withinTime(work, reading_takes * this.limit_ms);
  }

  /** @param {import('./store.js').Store} store @param {App} app */
  async replaySnapshot(store, app) {
    let older = 0;
    for (const { covers, bytes } of await this.inTime(store.snapshots())) {
      if (bytes !== undefined && app.stored('snapshot', bytes)) {
        if (older > 0) app.storageNote('old_snapshot', older);
        return covers;
      }
      older += 1;
    }
    return 0;
  }

  /**
   * @param {import('./store.js').Store} store @param {App} app
   * @param {number} covered @param {boolean} may_write
   */
  async replayAfter(store, app, covered, may_write) {
    const { segments, cut, gaps } = await this.inTime(store.load(covered, may_write));
    for (const bytes of segments) app.stored('segment', bytes);
    if (cut > 0) app.storageNote('cut', cut);
    if (gaps > 0) app.storageNote('gap', gaps);
    this.saver.acknowledged = store.sequence;
  }

  /** The tab that wrote is gone: catch up with what it may have written unheard, then write. */
  async promoted() {
    const app = this.told.input();
    if (this.store !== undefined) {
      const { segments } = await this.inTime(this.store.load(this.saver.acknowledged, true));
      for (const bytes of segments) app.otherTabWrote(bytes);
      this.saver.acknowledged = this.store.sequence;
    }
    this.saver.writer = true;
    app.readOnly(false);
  }

  /** @param {number} token @param {Uint8Array} bytes */
  commit(token, bytes) {
    void this.saver.commit(token, bytes);
  }

  /** @param {Uint8Array} bytes */
  keepSnapshot(bytes) {
    this.saver.keepSnapshot(bytes);
  }

  /** @param {boolean} hidden */
  hide(hidden) {
    this.saver.hide(hidden);
  }

  idle() {
    return this.saver.idle();
  }

  /** Asks the browser, once and after the first save, to keep what is here; its answer is shown. */
  async persist() {
    if (this.asked_to_persist) return;
    this.asked_to_persist = true;
    const kept = (await navigator.storage?.persist?.()) ?? false;
    this.told.input().storageNote('persisted', kept ? 1 : 0);
    await this.tellRoom();
  }

  /** What the browser says of what it keeps. */
  tell() {
    if (!this.stored) return;
    void this.tellPromise();
    void this.tellRoom();
  }

  /** What is known of the room without asking for anything. */
  async tellRoom() {
    const told = await navigator.storage?.estimate?.().catch(() => undefined);
    if (told?.usage === undefined || told.quota === undefined) return;
    this.told.input().storageNote('used', told.usage);
    this.told.input().storageNote('room', told.quota);
  }

  /** What the browser promised at an earlier visit. */
  async tellPromise() {
    if (await navigator.storage?.persisted?.().catch(() => false))
      this.told.input().storageNote('persisted', 1);
  }
}
