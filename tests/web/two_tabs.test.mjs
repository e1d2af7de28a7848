// Two tabs of one browser that write at once: with the browser's locks, and without them, where
// only the store's own check stands between them.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { randomOf } from './random.mjs';
import { browserAround, bytesOf, freshStorage, textOf } from './storage.mjs';
import { openStore } from '../../web/store.js';
import { Records } from '../../web/records.js';

/** Web Locks as far as one name and one holder at a time; `free` ends the holder's tab. */
function oneLock() {
  const waiting = [];
  const lock = {
    free: undefined,
    async request(_name, options, then = options) {
      if (lock.free === undefined) return grant(then);
      if (options.ifAvailable) return then(null);
      waiting.push(then);
      return undefined;
    },
  };
  const grant = async (then) => {
    const gone = new Promise((free) => {
      lock.free = free;
    });
    await Promise.race([then({}), gone]);
    lock.free = undefined;
    const next = waiting.shift();
    if (next !== undefined) await grant(next);
  };
  return lock;
}

/** What one tab says to all others of the same browser. */
function channels() {
  const all = new Set();
  return class {
    constructor() {
      this.heard = [];
      all.add(this);
    }
    postMessage(data) {
      for (const other of all) {
        if (other !== this) for (const then of other.heard) queueMicrotask(() => then({ data }));
      }
    }
    addEventListener(_kind, then) {
      this.heard.push(then);
    }
  };
}

async function tabOn(factory) {
  const tab = { held: [], acknowledged: [], refused: [], asked: new Map(), reads_only: false };
  const app = {
    device() {},
    storageNote() {},
    readOnly: (only) => (tab.reads_only = only),
    stored: (_kind, bytes) => tab.held.push(textOf(bytes)),
    otherTabWrote: (bytes) => tab.held.push(textOf(bytes)),
    committed(token, ok, reason) {
      const text = tab.asked.get(token);
      if (ok) tab.held.push(text);
      (ok ? tab.acknowledged : tab.refused).push(ok ? text : reason);
    },
  };
  globalThis.indexedDB = factory;
  tab.records = new Records({ app: () => app, input: () => app, stuck() {} });
  await tab.records.open();
  await tab.records.replay();
  tab.commit = (text) => {
    tab.asked.set(tab.asked.size, text);
    tab.records.commit(tab.asked.size - 1, bytesOf(text));
  };
  return tab;
}

async function storedOn(factory) {
  const store = await openStore(factory);
  const { segments, cut, gaps } = await store.load(0, false);
  store.close();
  assert.deepEqual([cut, gaps], [0, 0]);
  return segments.map(textOf);
}

test('without locks all that was acknowledged is there once, the rest was refused', async () => {
  let refused = 0;
  for (let seed = 0; seed < 300; seed += 1) {
    browserAround();
    const below = randomOf(seed);
    const factory = freshStorage();
    const tabs = [await tabOn(factory), await tabOn(factory)];
    for (let step = 0; step < 8; step += 1) {
      const tab = tabs[below(2)];
      tab.commit(`${seed} ${step}`);
      if (below(3) === 0) await tab.records.idle();
    }
    for (const tab of tabs) await tab.records.idle();
    const there = (await storedOn(factory)).sort();
    assert.deepEqual(there, [...tabs[0].acknowledged, ...tabs[1].acknowledged].sort());
    for (const tab of tabs) {
      assert.ok(tab.refused.every((reason) => reason === 'other_writer'));
      refused += tab.refused.length;
    }
    for (const tab of tabs) tab.records.store.close();
  }
  assert.ok(refused > 100);
});

test('with locks one tab writes, the other hears of it, and takes over when it goes', async () => {
  const locks = oneLock();
  browserAround({ locks, BroadcastChannel: channels() });
  const factory = freshStorage();
  const first = await tabOn(factory);
  const second = await tabOn(factory);
  assert.deepEqual([first.reads_only, second.reads_only], [false, true]);
  first.commit('a');
  second.commit('not mine to write');
  await first.records.idle();
  await second.records.idle();
  assert.deepEqual(second.refused, ['other_writer']);
  assert.deepEqual(second.held, ['a']);
  assert.deepEqual(await storedOn(factory), ['a']);
  first.records.tabs.channel = undefined; // what it writes last is not heard
  first.commit('b');
  await first.records.idle();
  locks.free();
  while (second.reads_only) await new Promise((turn) => setTimeout(turn, 1));
  assert.deepEqual(second.held, ['a', 'b']);
  second.commit('c');
  await second.records.idle();
  assert.deepEqual(await storedOn(factory), ['a', 'b', 'c']);
});
