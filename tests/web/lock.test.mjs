// Locked files, opened by a program that is not ours: node:crypto, on OpenSSL. What it locks opens
// here, and what is locked here opens there.
import assert from 'node:assert/strict';
import { createCipheriv, createDecipheriv, pbkdf2Sync } from 'node:crypto';
import { test } from 'node:test';
import { lockFile, openFile } from '../../web/lock.js';

const plain = new TextEncoder().encode('{"two_clocks":1}\n{"kind":"note","text":"ü = 1;\\n"}\n');
const password = 'four words are good';
const text = (bytes) => new TextDecoder().decode(bytes);
const bytes = (written) => new TextEncoder().encode(written);

/** What OpenSSL makes of a locked file. */
function openedElsewhere(locked, word) {
  const [first_line, content] = text(locked).split('\n');
  const { rounds, salt, nonce } = JSON.parse(first_line);
  const key = pbkdf2Sync(word, Buffer.from(salt, 'base64'), rounds, 32, 'sha256');
  const all = Buffer.from(content, 'base64');
  const open = createDecipheriv('aes-256-gcm', key, Buffer.from(nonce, 'base64'));
  open.setAAD(Buffer.from(first_line));
  open.setAuthTag(all.subarray(-16));
  return Buffer.concat([open.update(all.subarray(0, -16)), open.final()]);
}

test('another program opens what is locked here', async () => {
  const locked = await lockFile(plain, password);
  assert.deepEqual(new Uint8Array(openedElsewhere(locked, password)), plain);
  assert.throws(() => openedElsewhere(locked, 'another word'));
  const { rounds, salt, nonce } = JSON.parse(text(locked).split('\n')[0]);
  assert.ok(rounds >= 600_000); // OWASP, password storage, for PBKDF2 with HMAC-SHA-256
  assert.equal(Buffer.from(salt, 'base64').length, 16);
  assert.equal(Buffer.from(nonce, 'base64').length, 12);
  const again = JSON.parse(text(await lockFile(plain, password)).split('\n')[0]);
  assert.notEqual(again.salt, salt);
  assert.notEqual(again.nonce, nonce);
});

test('what another program locked opens here', async () => {
  const salt = Buffer.alloc(16, 7);
  const nonce = Buffer.alloc(12, 9);
  const said = { two_clocks_locked: 1, rounds: 1000, salt: salt.toString('base64') };
  const first_line = JSON.stringify({ ...said, nonce: nonce.toString('base64') });
  const key = pbkdf2Sync('pass phrase', salt, 1000, 32, 'sha256');
  const lock = createCipheriv('aes-256-gcm', key, nonce);
  lock.setAAD(Buffer.from(first_line));
  const content = Buffer.concat([lock.update(plain), lock.final(), lock.getAuthTag()]);
  const file = bytes(`${first_line}\n${content.toString('base64')}\n`);
  assert.deepEqual(await openFile(file, 'pass phrase'), plain);
});

test('a wrong password and a changed sign open nothing', async () => {
  const locked = text(await lockFile(plain, password));
  assert.deepEqual(await openFile(bytes(locked), password), plain);
  assert.equal(await openFile(bytes(locked), 'Four words are good'), 'wrong');
  const [first_line, content] = locked.split('\n');
  const other = content[5] === 'A' ? 'B' : 'A';
  const changed = [
    `${first_line}\n${content.slice(0, 5)}${other}${content.slice(6)}\n`,
    `${first_line.replace('"cipher"', '"cipheR"')}\n${content}\n`, // the first line is locked too
    `${first_line}\n${content.slice(0, -8)}\n`,
    `${first_line}\n`,
  ];
  for (const file of changed) assert.equal(await openFile(bytes(file), password), 'wrong', file);
  const damaged = [
    `${first_line}\n!!!!\n`,
    'nothing of ours',
    '',
    `${first_line.replace(/"rounds":\d+/, '"rounds":99999999999')}\n${content}\n`,
  ];
  for (const file of damaged) assert.equal(await openFile(bytes(file), password), 'damaged', file);
});

test('other ends of lines and a mark in front are no change', async () => {
  const locked = text(await lockFile(plain, password));
  assert.deepEqual(await openFile(bytes(locked.replaceAll('\n', '\r\n')), password), plain);
  assert.deepEqual(await openFile(bytes(`\ufeff${locked}`), password), plain);
});

test('the same letters typed on another system are the same password', async () => {
  const locked = await lockFile(plain, 'Gr\u00fc\u00dfe von der Insel');
  assert.deepEqual(await openFile(locked, 'Gru\u0308\u00dfe von der Insel'), plain);
});
