import assert from 'node:assert/strict';
import { test } from 'node:test';
import { regionOf } from '../../web/region.js';

// [L] the browser's own language data (Unicode CLDR), as node carries it.
const cases = [
  ['en-GB', '.', ',', 0],
  ['en-US', '.', ',', 1],
  ['de-DE', ',', '.', 0],
  ['sv-SE', ',', '\u00a0', 2],
];

for (const [locale, decimal, group, order] of cases) {
  test(`numbers and days as people write them in ${locale}`, () => {
    assert.deepEqual(regionOf(locale), { decimal, group, order });
  });
}
