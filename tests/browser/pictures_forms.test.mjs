// Every form and every page of the plan beside the pictures that were kept: a half of its own, so
// that two of them run side by side.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { formPages } from './form_pages.mjs';
import { wrongOf } from './pictures.mjs';
import { moneyPages } from './money_pages.mjs';
import { salePages } from './sale_pages.mjs';
import { sumsPages } from './sums_pages.mjs';
import { planPages } from './plan_pages.mjs';
import { begin } from './stage.mjs';

let stage;
before(async () => {
  stage = await begin();
});
after(() => stage.end());

for (const row of [...formPages, ...planPages, ...moneyPages, ...sumsPages, ...salePages]) {
  test(`${row.name} looks as it did when it was last looked at`, async () => {
    assert.deepEqual(await wrongOf(stage.visit, row), []);
  });
}
