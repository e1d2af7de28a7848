// A disk that goes wrong at one chosen operation, under the browser's own storage interface.
//
//   fail     the request is refused and its transaction aborted
//   full     the same, because there is no room
//   hang     the request is never answered, until `release`
//   close    the connection closes by itself
//   die      the page ends here, and what it was writing is not done
//   finish   the page ends here, and the disk still does what it was asked for
//   tear     the page ends here and half of what it was writing is on the disk
//   flip     one bit of what is written differs, and nobody is told
//   reorder  what is written never reaches the disk though later writes do; the page ends soon
//
// An operation is a call to open, to begin a transaction, or any request to one of its stores.

/** Everything that can happen, in the order of the list above. */
export const faults = ['fail', 'full', 'hang', 'close', 'die', 'finish', 'tear', 'flip', 'reorder'];
const ends = ['die', 'finish', 'tear'];
const of_writes = ['tear', 'flip', 'reorder'];
const of_reads = faults.filter((fault) => !of_writes.includes(fault));
const of_opening = ['fail', 'full', 'hang', 'die'];
const of_beginning = ['fail', 'full', 'close', 'die'];

const requests = ['get', 'getAll', 'getAllKeys', 'add', 'put', 'delete', 'count', 'openKeyCursor'];
const soon = 4; // operations until the page ends after a reordered write

/** A text that lies in a segment or a snapshot. */
const textIn = (value) => (value?.bytes ? new TextDecoder().decode(value.bytes) : undefined);

export class FaultyDisk {
  /**
   * @param {IDBFactory} factory where everything really lies
   * @param {{ at?: number, fault?: string, bit?: number }} plan nothing happens without `at`
   */
  constructor(factory, plan = {}) {
    this.factory = factory;
    this.plan = plan;
    this.at = plan.at ?? 0;
    this.fault = plan.fault ?? 'none';
    this.operations = 0;
    /** The page is gone: nothing that it still does counts. */
    this.dead = false;
    /** Kept when the page ends. */
    this.death = new Promise((end) => {
      this.end = end;
    });
    this.dies_at = Infinity;
    this.hangs = true;
    /** Texts that the disk changed or dropped behind the page's back. */
    this.spoilt = [];
    this.fired = false;
  }

  /** What the page takes for the browser's storage. */
  get storage() {
    return { open: (...rest) => this.open(...rest) };
  }

  /** Hung requests are let go, so that the process can end. */
  release() {
    this.hangs = false;
  }

  /**
   * Counts one operation. A fault that this one cannot have waits for the next that can.
   * @returns whether the fault is to happen at it
   */
  next(can_have = faults) {
    this.operations += 1;
    if (this.operations >= this.dies_at) this.die();
    if (this.operations !== this.at) return false;
    this.fired = true;
    if (!can_have.includes(this.fault)) {
      this.at += 1;
      return false;
    }
    if (ends.includes(this.fault)) this.die();
    if (this.fault === 'reorder') this.dies_at = this.operations + soon;
    return true;
  }

  die() {
    this.dead = true;
    this.end(false);
  }

  open(...rest) {
    const now = this.next(of_opening);
    if (now && this.fault === 'full') throw new DOMException('no room', 'QuotaExceededError');
    if (now && this.fault === 'fail') throw new DOMException('refused', 'SecurityError');
    if (this.dead || (now && this.fault === 'hang')) return new IDBOpenDBRequest();
    const request = this.factory.open(...rest);
    request.addEventListener('success', () => this.watch(request.result));
    return request;
  }

  watch(database) {
    const begin = database.transaction.bind(database);
    database.transaction = (names, ...rest) => {
      if (this.next(of_beginning)) {
        if (this.fault === 'fail') throw new DOMException('refused', 'UnknownError');
        if (this.fault === 'full') throw new DOMException('no room', 'QuotaExceededError');
        if (this.fault === 'close') {
          database.close();
          throw new DOMException('closing', 'InvalidStateError');
        }
      }
      const transaction = begin(names, ...rest);
      const objects = transaction.objectStore.bind(transaction);
      transaction.objectStore = (name) => this.hold(objects(name), transaction, database);
      return transaction;
    };
  }

  hold(store, transaction, database) {
    if (Object.hasOwn(store, requests[0])) return store;
    for (const name of requests) {
      const ask = store[name].bind(store);
      store[name] = (...given) => {
        if (this.dead) return this.unheard(transaction);
        const [value] = given;
        const writes = (name === 'add' || name === 'put') && value?.bytes !== undefined;
        if (!this.next(writes ? faults : of_reads)) return ask(...given);
        return this.happen(ask, given, { store, transaction, database });
      };
    }
    return store;
  }

  /** Nobody is there any more to hear of it. */
  unheard(transaction) {
    try {
      transaction.abort();
    } catch {
      // it was over before
    }
    return new IDBRequest();
  }

  happen(ask, given, { store, transaction, database }) {
    const [value, key] = given;
    switch (this.fault) {
      case 'fail':
        transaction.abort();
        throw new DOMException('refused', 'UnknownError');
      case 'full':
        throw new DOMException('no room', 'QuotaExceededError');
      case 'hang':
        return this.hang(store);
      case 'close':
        transaction.abort();
        database.close();
        throw new DOMException('closed', 'InvalidStateError');
      case 'tear':
        return ask({ ...value, bytes: value.bytes.slice(0, value.bytes.length / 2) }, key);
      case 'die':
        return this.unheard(transaction);
      case 'finish':
        return ask(...given);
      case 'flip':
        this.spoilt.push(textIn(value));
        return ask({ ...value, bytes: this.flipped(value.bytes) }, key);
      default:
        this.spoilt.push(textIn(value));
        return this.count(store);
    }
  }

  flipped(bytes) {
    const other = bytes.slice();
    const bit = (this.plan.bit ?? 0) % (8 * other.length);
    other[bit >> 3] ^= 1 << (bit & 7);
    return other;
  }

  count(store) {
    return Object.getPrototypeOf(store).count.call(store);
  }

  /** The transaction stays open by asking for more, and what was asked for is not answered. */
  hang(store) {
    const keep = () => {
      if (this.hangs) this.count(store).onsuccess = keep;
    };
    keep();
    return new IDBRequest();
  }
}
