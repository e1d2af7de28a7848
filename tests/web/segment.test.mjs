import assert from 'node:assert/strict';
import { test } from 'node:test';
import { bytesOf } from './storage.mjs';
import { crc32c, isWhole, seal } from '../../web/segment.js';

test('the checksum agrees with the published values', () => {
  // [S] RFC 3720 appendix B.4, read as little-endian words.
  const counted = Uint8Array.from({ length: 32 }, (_, at) => at);
  const cases = [
    [new Uint8Array(32), 0x8a9136aa],
    [new Uint8Array(32).fill(0xff), 0x62a8ab43],
    [counted, 0x46dd794e],
    [counted.slice().reverse(), 0x113fdb5c],
  ];
  for (const [bytes, expected] of cases) assert.equal(crc32c(bytes), expected);
});

test('a sealed segment is whole, and no longer so when any one bit has flipped', async () => {
  const segment = await seal(bytesOf('{"kind":"reading"}\n'), '');
  assert.ok(isWhole(segment));
  for (let bit = 0; bit < segment.bytes.length * 8; bit += 1) {
    const bytes = segment.bytes.slice();
    bytes[bit >> 3] ^= 1 << (bit & 7);
    assert.ok(!isWhole({ ...segment, bytes }), `bit ${bit}`);
  }
});

test('a segment that was cut off, or is not one at all, is not whole', async () => {
  const segment = await seal(bytesOf('abc'), '');
  for (const stored of [
    { ...segment, bytes: segment.bytes.slice(0, 2) },
    { ...segment, bytes: undefined },
    {},
    null,
    undefined,
    'abc',
  ]) {
    assert.ok(!isWhole(stored));
  }
});

test('the chain depends on the bytes and on everything before them', async () => {
  const first = await seal(bytesOf('a'), '');
  const second = await seal(bytesOf('b'), first.hash);
  const other = await seal(bytesOf('b'), (await seal(bytesOf('x'), '')).hash);
  assert.match(first.hash, /^[0-9a-f]{64}$/);
  assert.equal(second.previous, first.hash);
  assert.notEqual(second.hash, other.hash);
});
