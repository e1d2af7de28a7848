// The main job in WebKit, and what is the browser's own there: the field that is typed into.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { tellMainJob } from './main_job.mjs';

tellMainJob('webkit');

test('a tapped field takes the text typed into it', async () => {
  const visit = await open('webkit', { fleet: 'none' });
  await visit.tap('tab', 'Files');
  await visit.tap('button', 'Change the signature');
  const { said } = await visit.sees('textbox');
  await visit.fill(said, 'Ann');
  assert.equal((await visit.sees('textbox', said)).text, 'Ann');
});
