import assert from 'node:assert/strict';
import { File } from 'node:buffer';
import { test } from 'node:test';
import { openedWith, toShare } from '../../web/files.js';

globalThis.File ??= File;

test('a share sheet gets papers and tables as what they are, the rest as text', () => {
  for (const [name, shared, type] of [
    ['A-1-sale-2026-11-25.html', 'A-1-sale-2026-11-25.html', 'text/html'],
    ['A-1-due-2026-11-25.csv', 'A-1-due-2026-11-25.csv', 'text/csv'],
    ['two-clocks-2026-11-25.jsonl', 'two-clocks-2026-11-25.jsonl.txt', 'text/plain'],
    ['A-1-record-2026-11-25.locked', 'A-1-record-2026-11-25.locked.txt', 'text/plain'],
    ['note.txt', 'note.txt', 'text/plain'],
  ]) {
    const file = toShare(name, 'x');
    assert.equal(file.name, shared);
    assert.equal(file.type, type);
  }
  assert.equal(toShare('A-1-days-2026-11-25.ics', 'x'), undefined);
});

test('a file that was opened with the page reaches it', async () => {
  globalThis.window = {};
  openedWith(() => assert.fail('nothing was opened'));
  const told = [];
  let consumer;
  globalThis.window = { launchQueue: { setConsumer: (one) => (consumer = one) } };
  openedWith((name, bytes) => told.push([name, new TextDecoder().decode(bytes)]));
  await consumer({ files: [] });
  await consumer({ files: [{ getFile: () => new File(['{}'], 'a.jsonl') }] });
  assert.deepEqual(told, [['a.jsonl', '{}']]);
});
