// A browser's storage for tests: a whole one, and ones that fail in the ways real ones do.
import { webcrypto } from 'node:crypto';
import { need } from '../support/packages.mjs';

need('fake-indexeddb/auto'); // the names the browser has: IDBKeyRange and its like
const { IDBFactory } = need('fake-indexeddb');
globalThis.crypto ??= webcrypto;

export const freshStorage = () => new IDBFactory();

export const bytesOf = (text) => new TextEncoder().encode(text);
export const textOf = (bytes) => new TextDecoder().decode(bytes);

/** One database connection, plainly, for looking at and damaging what lies there. */
export async function lookInto(factory, store, mode, use) {
  const request = factory.open('two_clocks', 1);
  const database = await new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
  const transaction = database.transaction(store, mode);
  const asked = use(transaction.objectStore(store));
  await new Promise((resolve, reject) => {
    transaction.oncomplete = resolve;
    transaction.onabort = () => reject(transaction.error);
  });
  database.close();
  return asked?.result;
}

/** Storage that a private window refuses. */
export const refusingStorage = () => ({
  open() {
    throw new DOMException('refused', 'SecurityError');
  },
});

/**
 * Storage whose write transactions are spoilt: `spoil` gets each one, once it is armed.
 * @param {(transaction: IDBTransaction) => void} spoil
 */
export function spoiltStorage(spoil) {
  const factory = freshStorage();
  const state = { armed: false, factory };
  state.storage = {
    open(...rest) {
      const request = factory.open(...rest);
      request.addEventListener('success', () => {
        const database = request.result;
        const begin = database.transaction.bind(database);
        database.transaction = (names, mode, options) => {
          const transaction = begin(names, mode, options);
          if (state.armed && mode === 'readwrite') spoil(transaction, state);
          return transaction;
        };
      });
      return request;
    },
  };
  return state;
}

/** What the page's modules find around them in a browser, as far as storage needs it. */
export function browserAround({ locks, BroadcastChannel } = {}) {
  globalThis.window = BroadcastChannel === undefined ? {} : { BroadcastChannel };
  globalThis.BroadcastChannel = BroadcastChannel;
  Object.defineProperty(globalThis, 'navigator', { value: { locks }, configurable: true });
}
