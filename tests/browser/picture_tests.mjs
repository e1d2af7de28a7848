// Tests of a third of all pages beside the pictures that were kept: three files run side by side.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { pages } from './pages.mjs';
import { wrongOf } from './pictures.mjs';
import { begin } from './stage.mjs';

/**
 * Tests every third page, from the first, the second or the third on. What it returns holds the
 * stage of the file while its tests run.
 * @param {number} from
 */
export function testThird(from) {
  const held = {};
  before(async () => {
    held.stage = await begin();
  });
  after(() => held.stage.end());
  for (const row of pages.filter((_, at) => at % 3 === from)) {
    test(`${row.name} looks as it did when it was last looked at, and can be told`, async () => {
      assert.deepEqual(await wrongOf(held.stage.visit, row), []);
    });
  }
  return held;
}
