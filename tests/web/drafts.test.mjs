import assert from 'node:assert/strict';
import { test } from 'node:test';
import { Drafts } from '../../web/drafts.js';

/** A browser's storage that counts what it is asked to write. */
function storage() {
  const held = new Map();
  return {
    writes: 0,
    getItem: (key) => held.get(key) ?? null,
    setItem(key, text) {
      this.writes += 1;
      held.set(key, text);
    },
    removeItem(key) {
      this.writes += 1;
      held.delete(key);
    },
    held,
  };
}

const nextMoment = () => new Promise((resolve) => queueMicrotask(resolve));

test('what is kept comes back to the next page', async () => {
  const place = storage();
  new Drafts(() => place).keep('a draft');
  await nextMoment();
  assert.equal(new Drafts(() => place).kept(), 'a draft');
});

test('many changes in one event are one write, of the last', async () => {
  const place = storage();
  const drafts = new Drafts(() => place);
  for (const text of ['1', '12', '12.3']) drafts.keep(text);
  assert.equal(place.writes, 0);
  await nextMoment();
  assert.equal(place.writes, 1);
  assert.equal(drafts.kept(), '12.3');
  await nextMoment();
  assert.equal(place.writes, 1);
});

test('a page that goes away writes at once, and not a second time', async () => {
  const place = storage();
  const drafts = new Drafts(() => place);
  drafts.keep('half');
  drafts.flush();
  assert.equal(drafts.kept(), 'half');
  await nextMoment();
  drafts.flush();
  assert.equal(place.writes, 1);
});

test('an empty draft leaves nothing behind, and touches nothing of others', async () => {
  const place = storage();
  place.held.set('two_clocks.look.theme', 'night');
  const drafts = new Drafts(() => place);
  drafts.keep('half');
  await nextMoment();
  drafts.keep('');
  await nextMoment();
  assert.deepEqual([...place.held.keys()], ['two_clocks.look.theme']);
  assert.equal(drafts.kept(), '');
});

test('a browser that refuses storage, or has no room, loses the draft alone', async () => {
  const refusing = new Drafts(() => {
    throw new DOMException('refused', 'SecurityError');
  });
  refusing.keep('half');
  await nextMoment();
  assert.equal(refusing.kept(), '');
  const full = storage();
  full.setItem = () => {
    throw new DOMException('no room', 'QuotaExceededError');
  };
  const drafts = new Drafts(() => full);
  drafts.keep('half');
  await nextMoment();
  assert.equal(drafts.kept(), '');
});

test('no timer is left running', async () => {
  const timers = [];
  const original = globalThis.setTimeout;
  globalThis.setTimeout = (...rest) => timers.push(rest);
  try {
    const drafts = new Drafts(() => storage());
    drafts.keep('half');
    await nextMoment();
  } finally {
    globalThis.setTimeout = original;
  }
  assert.deepEqual(timers, []);
});
