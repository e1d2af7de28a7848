// One committed piece of the journal as it lies in the store, and how it is found whole or damaged.
//
// A segment names its length, the CRC-32C of its bytes and the hash of the segment before it, so a
// torn tail, a flipped bit and a missing piece can each be told apart. Sealing and chain stay on
// this device.

/**
 * @typedef {object} Segment
 * @property {number} length bytes
 * @property {number} crc CRC-32C of the bytes
 * @property {string} previous hash of the segment before, '' for the first
 * @property {string} hash SHA-256 over `previous` and the bytes, in hexadecimal
 * @property {Uint8Array} bytes
 */

/** CRC-32C (Castagnoli), reflected polynomial 0x82F63B78: RFC 3720 appendix B.4. */
const crc_table = Uint32Array.from({ length: 256 }, (_, index) => {
  let crc = index;
  for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0x82f63b78 : crc >>> 1;
  return crc;
});

/** @param {Uint8Array} bytes */
export function crc32c(bytes) {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = (crc >>> 8) ^ (crc_table[(crc ^ byte) & 0xff] ?? 0);
  return (crc ^ 0xffffffff) >>> 0;
}

/** @param {string} previous @param {Uint8Array} bytes */
async function chainHash(previous, bytes) {
  const head = new TextEncoder().encode(previous);
  const whole = new Uint8Array(head.length + bytes.length);
  whole.set(head);
  whole.set(bytes, head.length);
  const digest = new Uint8Array(await crypto.subtle.digest('SHA-256', whole));
  return Array.from(digest, (byte) => byte.toString(16).padStart(2, '0')).join('');
}

/**
 * @param {Uint8Array} bytes
 * @param {string} previous
 * @returns {Promise<Segment>}
 */
export async function seal(bytes, previous) {
  const hash = await chainHash(previous, bytes);
  return { length: bytes.length, crc: crc32c(bytes), previous, hash, bytes };
}

/**
 * Whether what lies there is what was written.
 * @param {unknown} stored
 * @returns {stored is Segment}
 */
export function isWhole(stored) {
  const { bytes, length, crc } = /** @type {Partial<Segment>} */ (stored ?? {});
  return bytes instanceof Uint8Array && bytes.length === length && crc32c(bytes) === crc;
}
