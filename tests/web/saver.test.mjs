import assert from 'node:assert/strict';
import { test } from 'node:test';
import { bytesOf, freshStorage, spoiltStorage, textOf } from './storage.mjs';
import { openStore } from '../../web/store.js';
import { Saver } from '../../web/saver.js';

const limit_ms = 60;

/** A saver that notes down all it says. */
async function saverOn(storage) {
  const said = [];
  const store = storage === undefined ? undefined : await openStore(storage);
  await store?.load(0, true);
  const saver = new Saver(
    store,
    {
      committed: (token, ok, reason) => said.push(`${token} ${ok ? 'ok' : reason}`),
      wrote: (number, bytes) => said.push(`wrote ${number} ${textOf(bytes)}`),
      stuck: () => said.push('stuck'),
    },
    limit_ms,
  );
  return { saver, store, said };
}

test('commits are acknowledged in order, each after its write', async () => {
  const { saver, said } = await saverOn(freshStorage());
  void saver.commit(1, bytesOf('a'));
  await saver.commit(2, bytesOf('b'));
  assert.deepEqual(said, ['wrote 1 a', '1 ok', 'wrote 2 b', '2 ok']);
  assert.equal(saver.acknowledged, 2);
});

test('without a store nothing is acknowledged', async () => {
  const { saver, said } = await saverOn(undefined);
  await saver.commit(1, bytesOf('a'));
  assert.deepEqual(said, ['1 closed']);
});

test('a tab that does not hold the pen writes nothing', async () => {
  const { saver, store, said } = await saverOn(freshStorage());
  saver.writer = false;
  await saver.commit(1, bytesOf('a'));
  assert.deepEqual(said, ['1 other_writer']);
  assert.equal(store.sequence, 0);
});

/** Storage whose first write transactions do not end before the test does. */
function hanging(times, test_context) {
  let left = times;
  let hangs = true;
  test_context.after(() => {
    hangs = false;
  });
  return spoiltStorage((transaction) => {
    if (left === 0) return;
    left -= 1;
    const objects = transaction.objectStore.bind(transaction);
    transaction.objectStore = (name) => {
      const store = objects(name);
      // A request nobody answers, though the transaction keeps alive by asking for more.
      const keep = () => {
        if (hangs) store.count().onsuccess = keep;
      };
      keep();
      store.add = () => store.count();
      return store;
    };
  });
}

test('a store that hangs once is opened again and the save succeeds', async (context) => {
  const spoilt = hanging(1, context);
  const { saver, said } = await saverOn(spoilt.storage);
  spoilt.armed = true;
  const again = spoiltStorage(() => {});
  // The hung connection keeps its database busy, as a real one would.
  saver.store.factory = again.storage;
  await saver.commit(7, bytesOf('a'));
  assert.deepEqual(said, ['wrote 1 a', '7 ok']);
});

test('a store that goes on hanging is reported, the save is not acknowledged', async (context) => {
  const spoilt = hanging(1, context);
  const { saver, said } = await saverOn(spoilt.storage);
  spoilt.armed = true;
  const again = hanging(1, context);
  again.armed = true;
  saver.store.factory = again.storage;
  await saver.commit(7, bytesOf('a'));
  assert.deepEqual(said, ['7 no_answer', 'stuck']);
  assert.equal(saver.acknowledged, 0);
});

test('no transaction begins while the page is out of sight, and none is acknowledged', async () => {
  const { saver, store, said } = await saverOn(freshStorage());
  saver.hide(true);
  const waits = saver.commit(1, bytesOf('a'));
  saver.keepSnapshot(bytesOf('nothing'));
  await new Promise((resolve) => setTimeout(resolve, limit_ms));
  saver.hide(true); // told twice
  await new Promise((resolve) => setTimeout(resolve, limit_ms));
  assert.deepEqual(said, []);
  assert.equal((await store.load(0, false)).segments.length, 0);
  saver.hide(false);
  await waits;
  await saver.commit(2, bytesOf('b'));
  assert.deepEqual(said, ['wrote 1 a', '1 ok', 'wrote 2 b', '2 ok']);
});

test('a snapshot covers what was acknowledged when it was asked for, no more', async () => {
  const { saver, store } = await saverOn(freshStorage());
  await saver.commit(1, bytesOf('a'));
  void saver.commit(2, bytesOf('b'));
  saver.keepSnapshot(bytesOf('with a'));
  await saver.idle();
  const [{ covers }] = await store.snapshots();
  assert.equal(covers, 1);
});
