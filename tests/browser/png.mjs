// Small pictures: a page has few colours, so it is kept with a palette of at most 256.
import { deflateSync } from 'node:zlib';
import { need } from '../support/packages.mjs';

const { PNG } = need('pngjs');

/** A rare colour becomes a frequent one this close in every channel: an edge of a letter. */
export const same_shade = 24;
/** A colour that covers this share of the picture was chosen: it is kept to the bit. */
const common_share = 0.001;
const most_colours = 256;

/** `{ width, height, data }` with four bytes a pixel. */
export const readPng = (bytes) => PNG.sync.read(bytes);
export const writeFullPng = (picture) =>
  PNG.sync.write(Object.assign(new PNG({ width: picture.width, height: picture.height }), picture));

const parts = (colour) => [colour >> 16, (colour >> 8) & 255, colour & 255];

function distance(one, two) {
  return Math.max(...one.map((part, at) => Math.abs(part - two[at])));
}

function colourAt(data, pixel) {
  return (data[4 * pixel] << 16) | (data[4 * pixel + 1] << 8) | data[4 * pixel + 2];
}

/** How many pixels each colour has, the most frequent first. */
function coloursOf({ width, height, data }) {
  const counts = new Map();
  for (let pixel = 0; pixel < width * height; pixel += 1) {
    const colour = colourAt(data, pixel);
    counts.set(colour, (counts.get(colour) ?? 0) + 1);
  }
  return [...counts].sort(([one, a], [two, b]) => b - a || one - two);
}

/** Share of the picture of each colour that covers much of it, by its six hexadecimal digits. */
export function commonColours(picture, least_share) {
  const pixels = picture.width * picture.height;
  const common = coloursOf(picture).filter(([, count]) => count >= pixels * least_share);
  const name = (colour) => `#${colour.toString(16).padStart(6, '0')}`;
  return new Map(common.map(([colour, count]) => [name(colour), count / pixels]));
}

function paletteOf(picture) {
  const common = picture.width * picture.height * common_share;
  const palette = [];
  const places = new Map();
  for (const [colour, count] of coloursOf(picture)) {
    const wanted = parts(colour);
    let place = 0;
    let least = Infinity;
    palette.forEach((each, at) => {
      const away = distance(each, wanted);
      if (away < least) [place, least] = [at, away];
    });
    const own = least > same_shade || count >= common;
    if (own && palette.length < most_colours) place = palette.push(wanted) - 1;
    places.set(colour, place);
  }
  return { palette, places };
}

/** CRC-32 of the PNG specification, annex D. */
const crc_table = Int32Array.from({ length: 256 }, (_, index) => {
  let crc = index;
  for (let bit = 0; bit < 8; bit += 1) crc = crc & 1 ? (crc >>> 1) ^ 0xedb88320 : crc >>> 1;
  return crc;
});

function chunk(kind, content) {
  const body = Buffer.concat([Buffer.from(kind, 'latin1'), content]);
  let crc = -1;
  for (const byte of body) crc = (crc >>> 8) ^ crc_table[(crc ^ byte) & 255];
  const length = Buffer.alloc(4);
  const check = Buffer.alloc(4);
  length.writeUInt32BE(content.length);
  check.writeInt32BE(~crc);
  return Buffer.concat([length, body, check]);
}

/** The picture with its rare shades merged, as it is kept. */
export function mergeShades(picture) {
  const { palette, places } = paletteOf(picture);
  const data = Buffer.from(picture.data);
  for (let pixel = 0; pixel < picture.width * picture.height; pixel += 1) {
    data.set(palette[places.get(colourAt(data, pixel))], 4 * pixel);
  }
  return { ...picture, data };
}

/** A PNG with a palette, of 4 bits a pixel when that is enough. */
export function writeSmallPng(picture) {
  const { width, height, data } = picture;
  const { palette, places } = paletteOf(picture);
  const bits = palette.length <= 16 ? 4 : 8;
  const row_bytes = Math.ceil((width * bits) / 8) + 1; // the first byte: no filter
  const rows = Buffer.alloc(row_bytes * height);
  for (let pixel = 0; pixel < width * height; pixel += 1) {
    const [x, y] = [pixel % width, Math.floor(pixel / width)];
    const place = places.get(colourAt(data, pixel));
    if (bits === 8) rows[y * row_bytes + 1 + x] = place;
    else rows[y * row_bytes + 1 + (x >> 1)] |= place << (x % 2 === 0 ? 4 : 0);
  }
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([bits, 3, 0, 0, 0], 8); // 3: with a palette
  return Buffer.concat([
    Buffer.from('\x89PNG\r\n\x1a\n', 'latin1'),
    chunk('IHDR', header),
    chunk('PLTE', Buffer.from(palette.flat())),
    chunk('IDAT', deflateSync(rows, { level: 9 })),
    chunk('IEND', Buffer.alloc(0)),
  ]);
}
