// Jobs of a day in Chromium, by role and tap: the main job, then what may go wrong in it.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { tellMainJob } from './main_job.mjs';
import { addAircraft } from './page_taps.mjs';

tellMainJob('chromium');

test('without a signal a reading is logged, kept, and still there', async (context) => {
  const visit = await open('chromium', { fleet: 'none' });
  context.after(() => visit.close());
  await addAircraft(visit);
  await visit.keptOffline();
  await visit.offline(true);
  await visit.reload();
  await visit.tap('button', 'Log a reading');
  await visit.digits('1002.3');
  await visit.tap('button', 'Save the reading');
  await visit.reads('status', 'Saved: 1,002.3 h for TEST-1.');
  await visit.reload();
  await visit.tap('button', /TEST-1/);
  await visit.sees('link', 'Hours left: 1,197.7 h. Why?');
  assert.deepEqual(visit.faults, []);
  assert.deepEqual(visit.strangers(), []);
});

test('an import that is set aside is out of sight and not lost', async (context) => {
  const visit = await open('chromium', { fleet: 'demo' });
  context.after(() => visit.close());
  await visit.tap('tab', 'Files');
  await visit.tap('button', /^Set aside/);
  await visit.tap('tab', 'Fleet');
  await visit.sees('button', 'Add an aircraft');
  await visit.tap('tab', 'Files');
  await visit.tap('button', /^Count it again/);
  await visit.tap('tab', 'Fleet');
  await visit.sees('button', /ISLE-1/);
  assert.deepEqual(visit.faults, []);
});

test('a falling meter is refused with a way out: the meter change', async (context) => {
  const visit = await open('chromium', { fleet: 'none' });
  context.after(() => visit.close());
  await addAircraft(visit);
  await visit.tap('button', 'Log a reading');
  await visit.digits('0999.9'); // a leading zero is not kept
  await visit.reads('alert', /It cannot fall/);
  await visit.tap('button', 'The meter was changed');
  await visit.fill('Old meter’s last reading', '1001');
  await visit.fill('New meter’s first reading', '0');
  await visit.tap('button', 'Save');
  await visit.reads('status', 'Saved: 2 records.');
  await visit.tap('tab', 'Fleet');
  await visit.tap('button', /TEST-1/);
  await visit.sees('link', 'Hours left: 1,199.0 h. Why?');
  await visit.tap('button', 'Log a reading');
  await visit.digits('0.4');
  await visit.tap('button', 'Save the reading');
  await visit.sees('link', 'Hours left: 1,198.6 h. Why?');
  assert.deepEqual(visit.faults, []);
});

test('every figure answers why, and Back closes the answer before the page', async (context) => {
  const visit = await open('chromium', { fleet: 'none' });
  context.after(() => visit.close());
  await addAircraft(visit);
  await visit.tap('link', /^Hours left/);
  await visit.sees('heading', 'Hours left to overhaul');
  await visit.back();
  await visit.seesNo('heading', 'Hours left to overhaul');
  await visit.sees('heading', 'TEST-1');
  await visit.tap('link', /^Break-even/);
  await visit.sees('heading', 'The rate that meets both clocks at once');
  await visit.tap('button', 'Close');
  await visit.seesNo('heading', 'The rate that meets both clocks at once');
  await visit.sees('heading', 'TEST-1');
});

test('a record is corrected and withdrawn, and both stay in sight', async (context) => {
  const visit = await open('chromium', { fleet: 'none' });
  context.after(() => visit.close());
  await addAircraft(visit);
  await visit.tap('button', 'Log a reading');
  await visit.digits('1005');
  await visit.tap('button', 'Save the reading');
  await visit.tap('button', 'History: TEST-1');
  await visit.tap('button', /Reading 1,005.0 h/);
  await visit.tap('button', 'Correct');
  await visit.fill('Reading', '1004.5');
  await visit.fill('Why it is corrected', 'Misread');
  await visit.tap('button', 'Save correction');
  await visit.sees('button', /Reading 1,004.5 h/);
  await visit.sees('button', /Reading 1,005.0 h.*corrected/);
  await visit.tap('button', /Reading 1,004.5 h/);
  await visit.tap('button', 'Withdraw');
  await visit.fill('Why it is withdrawn', 'Another aircraft');
  await visit.tap('button', 'Withdraw');
  await visit.tap('tab', 'Fleet');
  await visit.tap('button', /TEST-1/);
  await visit.sees('link', 'Hours left: 1,200.0 h. Why?');
  assert.deepEqual(visit.faults, []);
});

test('a foreign file is refused and changes nothing', async (context) => {
  const visit = await open('chromium', { fleet: 'none' });
  context.after(() => visit.close());
  await visit.tap('tab', 'Files');
  const bytes = Buffer.from('{"not":"ours"}\n');
  await visit.choose({ name: 'other.json', bytes }, () => visit.tap('button', 'Import a file'));
  await visit.reads('alert', /not a Two Clocks journal/);
  await visit.seesNo('button', 'Join it to mine');
  assert.deepEqual(visit.faults, []);
});

test('the invented fleet is one tap away and says that it is invented', async (context) => {
  const visit = await open('chromium', { fleet: 'none' });
  context.after(() => visit.close());
  await visit.tap('button', 'Look at an invented fleet');
  await visit.tap('button', 'Join it to mine');
  await visit.tap('tab', 'Fleet');
  for (const registration of ['ISLE-1', 'ISLE-2', 'ISLE-3'])
    await visit.sees('button', new RegExp(registration));
  await visit.reads('paragraph', 'Some of this fleet is invented, to look round in.');
});
