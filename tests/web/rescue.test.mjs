import assert from 'node:assert/strict';
import { test } from 'node:test';
import { bytesOf, freshStorage, lookInto } from './storage.mjs';
import { journalOf, recordsOf } from '../../web/rescue.js';
import { openStore } from '../../web/store.js';

test('whole records of whole and of torn segments are saved, each once', async () => {
  const factory = freshStorage();
  const store = await openStore(factory);
  await store.append(bytesOf('{"segment":"facts"}\n{"id":"1","kind":"reading"}\n'));
  await store.append(bytesOf('{"segment":"import"}\n{"id":"1","kind":"reading"}\n'));
  const torn = { bytes: bytesOf('{"segment":"facts"}\n{"id":"2","kind":"note"}\n{"id":"3","ki') };
  await lookInto(factory, 'torn', 'readwrite', (aside) => aside.put(torn, 3));
  await lookInto(factory, 'torn', 'readwrite', (aside) => aside.put('nonsense', 4));
  assert.equal(
    journalOf(recordsOf(await store.everything())),
    '{"journal":"twoclocks","version":1}\n{"id":"1","kind":"reading"}\n{"id":"2","kind":"note"}\n',
  );
});
