// The browser is killed, all its processes at once, while readings are being saved one after the
// other. What the page had announced as saved is there at the next start, and nothing is torn.
//
//   TWO_CLOCKS_KILLS=300 node --test tests/browser/kills.test.mjs
import assert from 'node:assert/strict';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { begin } from './driver.mjs';

const kills = Number(process.env.TWO_CLOCKS_KILLS ?? 30);
const longest_ms = 3000;
const first_tenth = 10_000; // 1,000.0 h

/** Runs in the page: says aloud to the test what it says to people. */
function tellSpoken() {
  document.addEventListener('DOMContentLoaded', () => {
    const spoken = document.getElementById('spoken');
    const tell = () => console.log(`spoken: ${spoken.textContent}`);
    new MutationObserver(tell).observe(spoken, { childList: true, characterData: true });
  });
}

/** Tenths of an hour of every reading in a journal file. */
function readingsIn(journal) {
  const facts = journal.trim().split('\n').slice(1);
  return facts
    .map((line) => JSON.parse(line))
    .filter(({ kind }) => kind === 'reading')
    .map(({ reads }) => reads / 360);
}

/** Logs one reading after the other until the browser is gone. */
async function saveOn(visit, asked, next) {
  const { keyboard } = visit.page;
  for (;;) {
    const tenth = next();
    asked.add(tenth);
    await keyboard.press('l');
    await keyboard.type(`${Math.floor(tenth / 10)}.${tenth % 10}`);
    await visit.tap('button', 'Save the reading');
    await visit.reads('status', 'saved');
  }
}

async function addAircraft(visit) {
  await visit.tap('button', 'Add an aircraft');
  await visit.fill('Registration', 'KILL-1');
  await visit.fill(/^Overhaul at hours/, '2200');
  await visit.fill('Day of manufacture or last overhaul', '2016-06-15');
  await visit.fill('Hour meter reads now', '1000.0');
  await visit.tap('button', 'Add aircraft');
}

test('a browser killed while saving has kept all that it said it had', async (context) => {
  const stage = await begin();
  context.after(() => stage.end());
  const folder = await mkdtemp(join(tmpdir(), 'two_clocks_profile_'));
  context.after(() => rm(folder, { recursive: true, force: true }));
  const asked = new Set();
  const acknowledged = new Set();
  let last = first_tenth;
  for (let round = 0; round <= kills; round += 1) {
    const visit = await stage.visitIn(folder, tellSpoken);
    // What was read once may be asked again: browsers write settings down when they like.
    const welcome = await visit.first('button', { name: 'I have read this' });
    if (welcome !== null) await visit.tap('button', 'I have read this');
    if (round === 0) await addAircraft(visit);
    visit.page.on('console', (message) => {
      const said = /^spoken: Saved: ([\d,]+)\.(\d) h/.exec(message.text());
      if (said !== null) acknowledged.add(Number(said[1].replace(',', '') + said[2]));
    });
    const spoken = await visit.texts('paragraph');
    assert.ok(!spoken.some((text) => /cut off|could not be read/.test(text)));
    const file = await visit.download(() => visit.key('e'));
    const kept = readingsIn(file.bytes.toString());
    for (const tenth of acknowledged) assert.ok(kept.includes(tenth), `${tenth} is lost`);
    for (const tenth of kept) assert.ok(asked.has(tenth) || tenth === first_tenth);
    assert.equal(new Set(kept).size, kept.length);
    if (round === kills) {
      await visit.close();
      break;
    }
    visit.patience_ms = longest_ms; // nobody answers any more once it is killed
    const saving = saveOn(visit, asked, () => (last += 1)).catch(() => {});
    await new Promise((resolve) => setTimeout(resolve, Math.random() * longest_ms));
    await visit.window.kill();
    await saving;
  }
  console.log(`kills: ${kills}, ${asked.size} readings asked for, ${acknowledged.size} said saved`);
  assert.ok(acknowledged.size > kills / 2);
});
