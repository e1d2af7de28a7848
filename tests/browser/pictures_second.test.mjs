// A second third of all pages beside the pictures that were kept, so that several run side by side.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { third, wrongOf } from './pictures.mjs';
import { begin } from './stage.mjs';

let stage;
before(async () => {
  stage = await begin();
});
after(() => stage.end());

for (const row of third(1)) {
  test(`${row.name} looks as it did when it was last looked at, and can be told`, async () => {
    assert.deepEqual(await wrongOf(stage.visit, row), []);
  });
}
