// tables.csv as npm papaparse writes it, and as it and npm csv-parse read it: the cells that
// tables_test.cpp finds in it.
import assert from 'node:assert/strict';
import { readFile, writeFile } from 'node:fs/promises';
import { test } from 'node:test';
import { need } from '../support/packages.mjs';

const papa = need('papaparse');
const { parse } = need('csv-parse/sync');
const file = new URL('./tables.csv', import.meta.url);

const cells = [
  ['plain', 'two words', 'ü€😀', ''],
  ['a,b', 'semi;colon', 'tab\there', '"quoted"'],
  ['line\nbreak', 'cr\r\nlf', ' leading', 'trailing '],
  ['=1+1', '-5', '1,234.5', '12:18'],
  ['', '', '', ''],
  ['"', '""', '\\n', 'a"b'],
];

test('two other programs read and write the table as ours does', async () => {
  const text = papa.unparse(cells, { newline: '\r\n' });
  if (process.env.TWO_CLOCKS_REWRITE) await writeFile(file, text);
  const kept = await readFile(file, 'utf8');
  assert.equal(kept, text);
  assert.deepEqual(papa.parse(kept, { delimiter: ',' }).data, cells);
  assert.deepEqual(parse(kept), cells);
});
