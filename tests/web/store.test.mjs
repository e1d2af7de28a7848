import assert from 'node:assert/strict';
import { test } from 'node:test';
import {
  bytesOf,
  freshStorage,
  lookInto,
  refusingStorage,
  spoiltStorage,
  textOf,
} from './storage.mjs';
import { openStore, reasonOf } from '../../web/store.js';

/** A store that was filled, closed and opened again. */
async function filled(texts, factory = freshStorage()) {
  const store = await openStore(factory);
  await store.load(0, true);
  for (const text of texts) await store.append(bytesOf(text));
  store.close();
  return factory;
}

async function loaded(factory, after = 0, may_write = true) {
  const store = await openStore(factory);
  const found = await store.load(after, may_write);
  return { store, ...found, texts: found.segments.map(textOf) };
}

const sayWhy = (work) => work.then(() => 'done', reasonOf);

test('what was appended comes back in order after the store is opened again', async () => {
  const { store, texts, cut, gaps } = await loaded(await filled(['a', 'b', 'c']));
  assert.deepEqual(texts, ['a', 'b', 'c']);
  assert.deepEqual([store.sequence, cut, gaps], [3, 0, 0]);
});

test('an empty store gives nothing and its first segment is number one', async () => {
  const { store, texts } = await loaded(freshStorage());
  assert.deepEqual(texts, []);
  assert.equal(await store.append(bytesOf('first')), 1);
});

test('a torn tail is cut, reported once and kept aside', async () => {
  const factory = await filled(['a', 'b', 'c']);
  const half = { length: 9, crc: 1, previous: '', hash: '', bytes: bytesOf('c') };
  await lookInto(factory, 'segments', 'readwrite', (segments) => segments.put(half, 3));
  const first = await loaded(factory);
  assert.deepEqual([first.texts, first.cut, first.gaps], [['a', 'b'], 1, 0]);
  assert.equal(await first.store.append(bytesOf('d')), 3);
  first.store.close();
  const second = await loaded(factory);
  assert.deepEqual([second.texts, second.cut, second.gaps], [['a', 'b', 'd'], 0, 0]);
  second.store.close();
  const aside = await lookInto(factory, 'torn', 'readonly', (torn) => torn.getAll());
  assert.deepEqual(aside, [half]);
});

test('damage and a hole amid good segments lose only themselves, reported once', async () => {
  const factory = await filled(['a', 'b', 'c', 'd', 'e']);
  await lookInto(factory, 'segments', 'readwrite', (segments) => {
    segments.put({ bytes: bytesOf('?') }, 2);
    segments.delete(4);
  });
  const first = await loaded(factory);
  assert.deepEqual([first.texts, first.cut, first.gaps], [['a', 'c', 'e'], 0, 2]);
  first.store.close();
  const second = await loaded(factory);
  assert.deepEqual([second.texts, second.cut, second.gaps], [['a', 'c', 'e'], 0, 0]);
});

test('a segment that does not follow the one before it is used, and reported once', async () => {
  const factory = await filled(['a', 'b', 'c', 'd']);
  const other = await filled(['x', 'y', 'z']);
  const strange = await lookInto(other, 'segments', 'readonly', (segments) => segments.get(3));
  await lookInto(factory, 'segments', 'readwrite', (segments) => segments.put(strange, 3));
  const reader = await loaded(factory, 0, false);
  assert.deepEqual([reader.texts, reader.gaps], [['a', 'b', 'z', 'd'], 2]);
  reader.store.close();
  const first = await loaded(factory);
  assert.deepEqual([first.texts, first.cut, first.gaps], [['a', 'b', 'z', 'd'], 0, 2]);
  assert.equal(await first.store.append(bytesOf('e')), 5);
  first.store.close();
  const second = await loaded(factory);
  assert.deepEqual([second.texts.length, second.gaps], [5, 0]);
  second.store.close();
  const after_three = await loaded(factory, 3);
  assert.deepEqual([after_three.texts, after_three.gaps], [['d', 'e'], 0]);
});

test('a tab that may not write reports damage and leaves it where it is', async () => {
  const factory = await filled(['a', 'b']);
  await lookInto(factory, 'segments', 'readwrite', (segments) => segments.put({}, 2));
  const reader = await loaded(factory, 0, false);
  assert.deepEqual([reader.texts, reader.cut], [['a'], 1]);
  reader.store.close();
  const left = await lookInto(factory, 'segments', 'readonly', (segments) => segments.count());
  assert.equal(left, 2);
});

test('of two writers the one that does not know of the other is refused', async () => {
  const factory = await filled(['a']);
  const one = await loaded(factory);
  const two = await loaded(factory);
  assert.equal(await one.store.append(bytesOf('one')), 2);
  assert.equal(await sayWhy(two.store.append(bytesOf('two'))), 'other_writer');
  assert.deepEqual((await two.store.load(0, false)).segments.map(textOf), ['a', 'one']);
  assert.equal(await two.store.append(bytesOf('two')), 3);
});

test('the same segment written again after an unanswered write is not written twice', async () => {
  const factory = await filled(['a']);
  const one = await loaded(factory);
  const two = await loaded(factory);
  await one.store.append(bytesOf('b'));
  assert.equal(await two.store.append(bytesOf('b')), 2);
  assert.deepEqual((await two.store.load(0, false)).segments.map(textOf), ['a', 'b']);
});

test('a write that was given up on and one in its stead come to one segment', async () => {
  const { store } = await loaded(freshStorage());
  const both = [store.append(bytesOf('a')), store.append(bytesOf('a'))];
  assert.deepEqual(await Promise.all(both), [1, 1]);
  assert.equal(await store.append(bytesOf('b')), 2);
  assert.deepEqual((await store.load(0, false)).segments.map(textOf), ['a', 'b']);
});

test('an aborted transaction stores nothing and the next takes the same number', async () => {
  const spoilt = spoiltStorage((transaction) => transaction.abort());
  const { store } = await loaded(spoilt.storage);
  await store.append(bytesOf('a'));
  spoilt.armed = true;
  assert.equal(await sayWhy(store.append(bytesOf('b'))), 'closed');
  spoilt.armed = false;
  assert.equal(await store.append(bytesOf('c')), 2);
});

test('a full disk is told by its name', async () => {
  const spoilt = spoiltStorage((transaction) => {
    const objects = transaction.objectStore.bind(transaction);
    transaction.objectStore = (name) => {
      const store = objects(name);
      store.add = () => {
        throw new DOMException('no room', 'QuotaExceededError');
      };
      return store;
    };
  });
  const { store } = await loaded(spoilt.storage);
  spoilt.armed = true;
  assert.equal(await sayWhy(store.append(bytesOf('b'))), 'full');
});

test('a browser that refuses storage fails at once', async () => {
  assert.equal(await sayWhy(openStore(refusingStorage())), 'failed');
});

test('a store closed for a newer version of the page says so', async () => {
  const factory = await filled(['a']);
  const { store } = await loaded(factory);
  await new Promise((resolve, reject) => {
    const request = factory.open('two_clocks', 2);
    request.onsuccess = () => resolve(request.result.close());
    request.onblocked = () => reject(new Error('the old page stands in the way'));
  });
  assert.equal(await sayWhy(store.append(bytesOf('b'))), 'closed');
});

test('snapshots: the newest whole one first, and only two are kept', async () => {
  const factory = await filled(['a', 'b', 'c']);
  const { store } = await loaded(factory);
  for (const covers of [1, 2, 3]) await store.keepSnapshot(bytesOf(`s${covers}`), covers);
  const found = await store.snapshots();
  assert.deepEqual(
    found.map(({ covers, bytes }) => [covers, textOf(bytes)]),
    [
      [3, 's3'],
      [2, 's2'],
    ],
  );
  const after = await store.load(2, true);
  assert.deepEqual(after.segments.map(textOf), ['c']);
});

test('a damaged snapshot has no bytes and the older one still has', async () => {
  const factory = await filled(['a', 'b']);
  const { store } = await loaded(factory);
  await store.keepSnapshot(bytesOf('s1'), 1);
  await store.keepSnapshot(bytesOf('s2'), 2);
  await lookInto(factory, 'snapshots', 'readwrite', (snapshots) => snapshots.put({}, 2));
  const [newest, older] = await store.snapshots();
  assert.equal(newest.bytes, undefined);
  assert.equal(textOf(older.bytes), 's1');
});

test('the name of the device is made once', async () => {
  const factory = freshStorage();
  const store = await openStore(factory);
  assert.equal(await store.device(() => 'first'), 'first');
  assert.equal(await store.device(() => 'second'), 'first');
});
