// The store, its saver and the tab that replays it, on a disk that goes wrong at operation N, for
// every N of one script and for ten thousand random ones. A plain list is the model: what was
// acknowledged is there after the next start, once, unless the disk itself changed it behind our
// back, and then it says so; and nothing is there that nobody asked to save.
//
//   TWO_CLOCKS_FAULT_SCRIPTS=1000000   so many random scripts
//   TWO_CLOCKS_FAULT_SEED=n            this one alone
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { browserAround, bytesOf, freshStorage, textOf } from './storage.mjs';
import { FaultyDisk, faults } from './faulty_disk.mjs';
import { randomOf } from './random.mjs';
import { Records } from '../../web/records.js';

browserAround();
const patient_ms = 3000;
const impatient_ms = 100; // where nobody will answer
const scripts = Number(process.env.TWO_CLOCKS_FAULT_SCRIPTS ?? 10_000);
const only = process.env.TWO_CLOCKS_FAULT_SEED;

/** One tab, from its start to its end, as the program behind it would see it. */
class Tab {
  constructor(disk) {
    this.disk = disk;
    /** What the program holds, in the order in which it heard of it. */
    this.held = [];
    this.acknowledged = [];
    this.refused = 0;
    this.stuck = 0;
    this.notes = [];
    this.asked = new Map();
    const app = {
      device() {},
      readOnly() {},
      otherTabWrote() {},
      stored: (kind, bytes) => this.take(kind, textOf(bytes)),
      storageNote: (code, count) => this.note(code, count),
      committed: (token, ok) => this.hear(token, ok),
    };
    const limit_ms = disk.plan.fault === 'hang' ? impatient_ms : patient_ms;
    this.records = new Records(
      { app: () => app, input: () => app, stuck: () => (this.stuck += 1) },
      limit_ms,
    );
  }

  take(kind, text) {
    if (kind === 'segment') this.held.push(text);
    else this.held.push(...JSON.parse(text));
    return true;
  }

  /** An older snapshot and the segments after it tell the same: nobody needs to know. */
  note(code, count) {
    if (code !== 'old_snapshot') this.notes.push(`${code} ${count}`);
  }

  hear(token, ok) {
    if (this.disk.dead) return;
    const text = this.asked.get(token);
    if (!ok) {
      this.refused += 1;
      return;
    }
    this.held.push(text);
    this.acknowledged.push(text);
  }

  /** False when it could not, and a person was told. */
  start() {
    globalThis.indexedDB = this.disk.storage;
    const begin = async () => {
      await this.records.open();
      await this.records.replay();
      return this.records.stored;
    };
    return Promise.race([begin().catch(() => false), this.disk.death]);
  }

  /** Until everything asked for has been dealt with, or the page has ended. */
  idle() {
    return Promise.race([this.records.idle(), this.disk.death]);
  }

  commit(token, text) {
    this.asked.set(token, text);
    this.records.commit(token, bytesOf(text));
  }

  /** As the program does: a snapshot holds what it holds when it asks. */
  keepSnapshot() {
    this.records.keepSnapshot(bytesOf(JSON.stringify(this.held)));
  }

  async end() {
    await this.idle();
    this.disk.release();
    await this.idle();
    this.records.store?.close();
  }
}

/** Runs a script of tabs on one disk, one of which has a fault, and compares with the model. */
async function play(script, plan) {
  const factory = freshStorage();
  const asked = [];
  const acknowledged = [];
  const spoilt = new Set();
  const told = [];
  let fired = false;
  let operations = 0;
  for (const [place, tab_script] of script.entries()) {
    const disk = new FaultyDisk(factory, place === plan.tab ? plan : {});
    const tab = new Tab(disk);
    const started = await tab.start();
    if (started) {
      for (const step of tab_script) {
        if (disk.dead) break;
        if (step === 'snapshot') tab.keepSnapshot();
        else if (step === 'wait') await tab.idle();
        else {
          asked.push(step);
          tab.commit(asked.length, step);
        }
      }
    }
    await tab.end();
    fired ||= disk.fired;
    operations = Math.max(operations, place === plan.tab ? disk.operations : 0);
    acknowledged.push(...tab.acknowledged);
    told.push(...tab.notes);
    for (const text of disk.spoilt) spoilt.add(text);
  }
  const first = await look(factory);
  told.push(...first.notes);
  for (const text of acknowledged) {
    const times = first.held.filter((each) => each === text).length;
    const lost = times === 0 && spoilt.has(text);
    assert.ok(lost || times === 1, `${text} is there ${times} times`);
    // The very last write can vanish without a trace when the disk lied about it.
    const unseen = plan.fault === 'reorder' && acknowledged.at(-1) === text;
    assert.ok(!lost || unseen || told.length > 0, `${text} is gone and nobody was told`);
  }
  for (const text of first.held) assert.ok(asked.includes(text), `nobody saved ${text}`);
  const second = await look(factory);
  assert.deepEqual(second.held, first.held);
  assert.deepEqual(second.notes, [], 'a damage is reported once');
  return { fired, operations, acknowledged: acknowledged.length, spoilt, first };
}

async function look(factory) {
  const tab = new Tab(new FaultyDisk(factory));
  assert.ok(await tab.start());
  await tab.end();
  return tab;
}

const script = [
  ['a', 'wait', 'b', 'c', 'wait', 'snapshot', 'd', 'wait'],
  ['e', 'f', 'wait', 'snapshot', 'g', 'wait', 'snapshot', 'h', 'wait'],
  ['i', 'wait'],
];

test('every fault at every operation of a script loses nothing that was acknowledged', async () => {
  let runs = 0;
  for (const tab of script.keys()) {
    const { operations } = await play(script, { tab });
    assert.ok(operations > 10);
    for (const fault of faults) {
      for (let at = 1; at <= operations; at += 1) {
        const { fired } = await play(script, { tab, at, fault, bit: 7 * at }).catch((error) => {
          throw new Error(`${fault} at operation ${at} of tab ${tab}: ${error.message}`);
        });
        assert.ok(fired, `${fault} at operation ${at} of tab ${tab} did not happen`);
        runs += 1;
      }
    }
  }
  console.log(`faults: ${runs} runs, one for each fault and operation`);
});

/** A few tabs one after the other, and what goes wrong in one of them. */
function randomScript(seed) {
  const below = randomOf(seed);
  const tabs = Array.from({ length: 1 + below(3) }, (_, tab) =>
    Array.from({ length: 1 + below(6) }, (__, step) => {
      const kind = below(6);
      if (kind === 0) return 'snapshot';
      return kind === 1 ? 'wait' : `${tab}-${step}-${'x'.repeat(below(40))}`;
    }),
  );
  // A hang costs real time: seldom.
  const fault = below(100) === 0 ? 'hang' : faults.filter((each) => each !== 'hang')[below(8)];
  return [tabs, { tab: below(tabs.length), at: 1 + below(25), fault, bit: below(1000) }];
}

test('ten thousand random scripts with one fault each lose nothing acknowledged', async () => {
  const seeds =
    only === undefined ? Array.from({ length: scripts }, (_, seed) => seed) : [Number(only)];
  const tally = { fired: 0, acknowledged: 0, damaged: 0 };
  for (const seed of seeds) {
    const played = await play(...randomScript(seed)).catch((error) => {
      throw new Error(`seed ${seed}: ${error.message}`);
    });
    tally.fired += played.fired ? 1 : 0;
    tally.acknowledged += played.acknowledged;
    tally.damaged += played.spoilt.size;
  }
  console.log(
    `faults: ${seeds.length} random scripts, ${tally.fired} faults, ` +
      `${tally.acknowledged} commits acknowledged, ${tally.damaged} spoilt by the disk itself`,
  );
  assert.ok(only !== undefined || tally.fired > scripts / 2);
});
