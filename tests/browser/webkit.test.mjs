// A smoke test of the main job in WebKit: an aircraft added, a reading logged, both kept.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { begin } from './webdriver.mjs';

let house;
let visit;
before(async () => {
  house = await begin();
  visit = await house.visit();
});
after(() => house.end());

test('an aircraft is added, a reading logged, and both survive a reload', async () => {
  await visit.tap('button', 'I have read this');
  await visit.tap('button', 'Add an aircraft');
  await visit.fill('Registration', 'TEST-1');
  await visit.fill(/^Overhaul at hours/, '2200');
  await visit.fill(/^Overhaul at years/, '12');
  const years_ago = await visit.run(() => `${new Date().getFullYear() - 10}-03-05`);
  await visit.fill('Day of manufacture or last overhaul', years_ago);
  await visit.fill('Hour meter reads now', '1000.0');
  await visit.fill(/^Hours you fly in a year/, '100');
  await visit.tap('button', 'Add aircraft');
  await visit.sees('heading', 'TEST-1');
  await visit.tap('tab', 'Log');
  for (const key of ['1', '0', '0', '2', 'Decimal sign', '3']) await visit.tap('button', key);
  await visit.tap('button', 'Save the reading');
  await visit.reads('status', /^Saved: 1,?002.3 h for TEST-1\.$/);
  await visit.reload();
  await visit.tap('button', /^TEST-1/);
  await visit.sees('link', /^Hours left: 1,?197.7 h\. Why\?$/);
});

test('a tapped field takes the text typed into it', async () => {
  await visit.tap('tab', 'Files');
  await visit.tap('button', 'Change the signature');
  const { said } = await visit.sees('textbox');
  await visit.fill(said, 'Ann');
  assert.equal((await visit.sees('textbox', said)).text, 'Ann');
});
