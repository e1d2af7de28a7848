// Locks a file with a password and opens it again, by the browser's own functions: a key by PBKDF2
// (RFC 8018) with HMAC-SHA-256, and AES-256-GCM (NIST SP 800-38D), which also tells whether a
// single sign was changed on the way.
//
// A locked file is text of two lines: what it was locked with, as JSON, and the content in base 64.
// The first line is authenticated with the content. There is no second key: a lost password is
// final.

const rounds = 600_000; // OWASP, password storage, for PBKDF2 with HMAC-SHA-256
const most_rounds = 10_000_000; // a file that asks for more would only keep the phone busy
const salt_bytes = 16;
const nonce_bytes = 12;

const encoder = new TextEncoder();

/** @param {Uint8Array} bytes */
function toBase64(bytes) {
  let text = '';
  const step = 0x8000; // as many arguments as every browser takes
  for (let at = 0; at < bytes.length; at += step) {
    text += String.fromCharCode(...bytes.subarray(at, at + step));
  }
  return btoa(text);
}

/** @param {string} text */
function fromBase64(text) {
  const signs = atob(text);
  const bytes = new Uint8Array(signs.length);
  for (let at = 0; at < signs.length; at += 1) bytes[at] = signs.charCodeAt(at);
  return bytes;
}

/**
 * @param {string} password @param {Uint8Array} salt @param {number} times
 * @param {'encrypt' | 'decrypt'} use
 */
async function keyOf(password, salt, times, use) {
  // The same letters typed on another system are the same password.
  const typed = encoder.encode(password.normalize('NFC'));
  const base = await crypto.subtle.importKey('raw', typed, 'PBKDF2', false, ['deriveKey']);
  const how = { name: 'PBKDF2', hash: 'SHA-256', salt, iterations: times };
  return crypto.subtle.deriveKey(
    /** @type {Pbkdf2Params} */ (/** @type {unknown} */ (how)),
    base,
    { name: 'AES-GCM', length: 256 },
    false,
    [use],
  );
}

/** @param {Uint8Array} nonce @param {string} first_line */
const cipher = (nonce, first_line) =>
  /** @type {AesGcmParams} */ (
    /** @type {unknown} */ ({
      name: 'AES-GCM',
      iv: nonce,
      additionalData: encoder.encode(first_line),
    })
  );

/** Whether the browser has such functions: only pages that came safely do. */
const has_locks = () => globalThis.crypto?.subtle !== undefined;

/**
 * The locked file; a word where the browser has no such functions.
 * @param {Uint8Array} bytes @param {string} password
 * @returns {Promise<Uint8Array | 'missing'>}
 */
export async function lockFile(bytes, password) {
  if (!has_locks()) return 'missing';
  const salt = crypto.getRandomValues(new Uint8Array(salt_bytes));
  const nonce = crypto.getRandomValues(new Uint8Array(nonce_bytes));
  const first_line = JSON.stringify({
    two_clocks_locked: 1,
    key: 'PBKDF2-HMAC-SHA-256',
    rounds,
    salt: toBase64(salt),
    cipher: 'AES-256-GCM',
    nonce: toBase64(nonce),
  });
  const key = await keyOf(password, salt, rounds, 'encrypt');
  const plain = /** @type {BufferSource} */ (/** @type {unknown} */ (bytes));
  const locked = await crypto.subtle.encrypt(cipher(nonce, first_line), key, plain);
  return encoder.encode(`${first_line}\n${toBase64(new Uint8Array(locked))}\n`);
}

/** What a locked file says of itself and holds; nothing where that does not read. */
function takenApart(/** @type {Uint8Array} */ bytes) {
  // Some ways of sending end lines otherwise, or put a mark in front: the decoder drops that.
  const [first_line = '', content = ''] = new TextDecoder().decode(bytes).split(/\r?\n/);
  try {
    const { rounds: told, salt, nonce } = JSON.parse(first_line);
    const times = Number(told);
    if (!(times > 0 && times <= most_rounds)) return undefined;
    return {
      first_line,
      times,
      salt: fromBase64(salt),
      nonce: fromBase64(nonce),
      content: fromBase64(content),
    };
  } catch {
    return undefined;
  }
}

/**
 * What is in a locked file; else a word: 'wrong' where the password is another or a sign was
 * changed, 'damaged' where it does not read, 'missing' where the browser has no such functions.
 * @param {Uint8Array} bytes @param {string} password
 * @returns {Promise<Uint8Array | 'wrong' | 'damaged' | 'missing'>}
 */
export async function openFile(bytes, password) {
  if (!has_locks()) return 'missing';
  const apart = takenApart(bytes);
  if (apart === undefined) return 'damaged';
  const { first_line, times, salt, nonce, content } = apart;
  try {
    const key = await keyOf(password, salt, times, 'decrypt');
    return new Uint8Array(await crypto.subtle.decrypt(cipher(nonce, first_line), key, content));
  } catch {
    return 'wrong';
  }
}
