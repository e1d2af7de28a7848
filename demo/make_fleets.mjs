// Makes the invented fleets: node demo/make_fleets.mjs writes demo/*.jsonl, always the same bytes.
// Nothing in them is real: no registration, maker, type, document, person or price.
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const here = dirname(fileURLToPath(import.meta.url));
const dayMs = 86_400_000;
const day = (text) => Date.parse(`${text}T00:00:00Z`);
const iso = (ms) => new Date(ms).toISOString().slice(0, 10);
const tenth = 360;

/** Small generator with a fixed seed: the fleets must not change from run to run. */
function makeRandom(seed) {
  let state = BigInt(seed);
  return () => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffff_ffff_ffff_ffffn;
    return Number(state >> 33n) / 2 ** 31;
  };
}

class Book {
  constructor(seed, by) {
    this.random = makeRandom(seed);
    this.by = by;
    this.lines = [];
    this.stamp = 0;
    this.salt = seed;
  }

  id(ms) {
    this.salt += 1;
    const hex = ms.toString(16).padStart(12, '0');
    const tail =
      (0x8000_0000_0000_0000n + BigInt(this.salt) * 0x9e3779b97f4a7c15n) & 0x3fff_ffff_ffff_ffffn;
    const low = (tail | 0x8000_0000_0000_0000n).toString(16);
    return `${hex.slice(0, 8)}-${hex.slice(8)}-7001-${low.slice(0, 4)}-${low.slice(4)}`;
  }

  /** Writes one fact an hour after the last, at the earliest on the evening of its day. */
  add(kind, on, about, fields) {
    const at = Math.max(day(on) + 18 * 3_600_000, this.stamp + 60_000);
    this.stamp = at;
    const id = this.id(at);
    const subjects = about.map((one) => one ?? id);
    this.lines.push({
      at,
      id,
      text: JSON.stringify({
        id,
        kind,
        on,
        at,
        tick: 0,
        device: 'invented-device',
        by: this.by,
        about: subjects,
        ...fields,
      }),
    });
    return id;
  }
}

/** Hours flown in a month of 30 days, by season. */
const seasons = {
  touring: [2, 4, 9, 15, 20, 24, 26, 25, 17, 9, 4, 2],
  private: [1, 2, 4, 7, 8, 9, 9, 8, 6, 4, 2, 1],
  summer: [0, 0, 3, 12, 18, 22, 24, 22, 14, 8, 0, 0],
};

/** Total time on a day, from what was flown by then. */
function totalOn(state, on) {
  return state.log.filter((one) => one.on <= on).at(-1)?.total ?? state.log[0].total;
}

/** Readings from one day to another, some days apart, with landings when counted. */
function fly(book, aircraft, meter, from, to, season, state, scale, counted) {
  for (let now = day(from); ; ) {
    const gap = 4 + Math.floor(book.random() * book.random() * 30);
    now += gap * dayMs;
    if (now > day(to)) return;
    const month = new Date(now).getUTCMonth();
    const hours = (seasons[season][month] * scale * gap) / 30;
    const tenths = Math.round(hours * (0.4 + 1.2 * book.random()) * 10);
    if (tenths === 0) continue;
    state.reads += tenths * tenth;
    state.landings += Math.round(tenths / 4);
    state.log.push({ on: iso(now), total: state.reads + state.offset });
    book.add(
      'reading',
      iso(now),
      [aircraft, meter],
      counted ? { reads: state.reads, landings: state.landings } : { reads: state.reads },
    );
  }
}

const manual = { source: 'Gannet maintenance manual (invented)', revision: 'revision 7' };

function addAircraft(book, on, registration, serial, manufactured) {
  return book.add('aircraft', on, [null], {
    registration,
    type: 'Gannet 2 (invented)',
    serial,
    manufactured,
    invented: true,
  });
}

function addItem(book, on, aircraft, name, role, limit) {
  const item = book.add('item', on, [aircraft, null], { name, role });
  book.add('limit', on, [aircraft, item], limit);
  return item;
}

function overhaulLimit(anchorOn, anchorTotal) {
  return {
    class: 'airworthiness_limitation',
    hours: 2200 * 3600,
    months: 144,
    calendar_rule: 'exact',
    anchor: anchorTotal === 0 ? 'manufacture' : 'overhaul',
    anchor_on: anchorOn,
    anchor_total: anchorTotal,
    ...manual,
  };
}

const hundred = (on, total) => ({
  class: 'programme',
  hours: 100 * 3600,
  calendar_rule: 'exact',
  anchor: 'release',
  anchor_on: on,
  anchor_total: total,
  ...manual,
});
const annual = (on) => ({
  class: 'programme',
  months: 12,
  calendar_rule: 'month_end',
  anchor: 'release',
  anchor_on: on,
  ...manual,
});

function work(book, on, aircraft, what, items, total, reference) {
  book.add('work', on, [aircraft, ...items], {
    what,
    renews: items.map((item) => ({ item })),
    total,
    place: 'Skerry workshop (invented)',
    done_by: 'R. Invented',
    reference,
  });
}

/** Flown hard by a touring firm: the hours come first, and soon. */
function boundByHours() {
  const book = new Book(101, 'Owner of the example');
  const start = '2019-05-06';
  const aircraft = addAircraft(book, start, 'ISLE-3', 'G2-0031', '2019-04-11');
  const meter = book.add('meter', start, [aircraft, null], {
    name: 'Collective meter',
    drive: 'collective',
    reads: 0,
    total: 0,
  });
  const overhaul = addItem(
    book,
    start,
    aircraft,
    'Overhaul',
    'overhaul',
    overhaulLimit('2019-04-11', 0),
  );
  const check = addItem(
    book,
    start,
    aircraft,
    '100 h inspection',
    'inspection',
    hundred('2019-04-11', 0),
  );
  const yearly = addItem(
    book,
    start,
    aircraft,
    'Annual inspection',
    'inspection',
    annual('2019-04-11'),
  );
  void overhaul;
  const state = { reads: 0, landings: 0, offset: 0, log: [{ on: start, total: 0 }] };
  fly(book, aircraft, meter, start, '2024-01-20', 'touring', state, 1.66, false);
  for (const year of [2020, 2021, 2022, 2023]) {
    const on = `${year}-03-18`;
    work(
      book,
      on,
      aircraft,
      'Annual and 100 h inspection',
      [check, yearly],
      totalOn(state, on),
      `SK ${year}-12`,
    );
  }
  const total = state.reads;
  state.offset = total;
  const changed = book.add('meter', '2024-01-24', [aircraft, null], {
    name: 'Collective meter, second',
    drive: 'collective',
    reads: 0,
    total,
    why: 'The first one stopped',
  });
  state.reads = 0;
  fly(book, aircraft, changed, '2024-01-24', '2026-10-30', 'touring', state, 1.66, false);
  work(
    book,
    '2025-03-12',
    aircraft,
    'Annual inspection',
    [yearly],
    totalOn(state, '2025-03-12'),
    'SK 2025-08',
  );
  work(
    book,
    '2026-03-20',
    aircraft,
    'Annual inspection',
    [yearly],
    totalOn(state, '2026-03-20'),
    'SK 2026-09',
  );
  const now = total + state.reads;
  work(book, '2026-11-02', aircraft, '100 h inspection', [check], now, 'SK 2026-31');
  book.add('reading', '2026-11-20', [aircraft, changed], { reads: state.reads + 31 * tenth });
  return book;
}

/** A private owner's: twelve years pass long before the hours do. Bought after an overhaul. */
function boundByCalendar() {
  const book = new Book(202, 'Owner of the example');
  const start = '2022-06-14';
  const overhauled = 2187.4 * 3600;
  const aircraft = addAircraft(book, start, 'ISLE-1', 'G2-0007', '2006-09-30');
  const meter = book.add('meter', start, [aircraft, null], {
    name: 'Oil pressure meter',
    drive: 'oil_pressure',
    reads: 1204.3 * 3600,
    total: overhauled + 402.6 * 3600,
  });
  const overhaul = addItem(
    book,
    start,
    aircraft,
    'Overhaul',
    'overhaul',
    overhaulLimit('2018-08-31', overhauled),
  );
  const check = addItem(
    book,
    start,
    aircraft,
    '100 h inspection',
    'inspection',
    hundred('2022-06-14', overhauled + 402.6 * 3600),
  );
  const yearly = addItem(
    book,
    start,
    aircraft,
    'Annual inspection',
    'inspection',
    annual('2022-06-14'),
  );
  const gear = addItem(book, start, aircraft, 'Landing gear inspection', 'component', {
    class: 'recommended',
    landings: 3000,
    calendar_rule: 'exact',
    anchor: 'release',
    anchor_landings: 3100,
    ...manual,
  });
  void overhaul;
  void gear;
  const firstReads = Math.round(1204.3 * 3600);
  const firstTotal = Math.round(overhauled + 402.6 * 3600);
  const state = {
    reads: firstReads,
    landings: 3380,
    offset: firstTotal - firstReads,
    log: [{ on: start, total: firstTotal }],
  };
  fly(book, aircraft, meter, start, '2025-04-02', 'private', state, 1.15, true);
  const total = state.reads + state.offset;
  for (const year of [2023, 2024]) {
    const on = `${year}-05-22`;
    work(book, on, aircraft, 'Annual inspection', [yearly], totalOn(state, on), `SK ${year}-20`);
  }
  const changed = book.add('meter', '2025-04-08', [aircraft, null], {
    name: 'Oil pressure meter, second',
    drive: 'oil_pressure',
    reads: 0,
    total,
    why: 'Replaced with the oil pressure switch',
  });
  state.reads = 0;
  state.offset = total;
  fly(book, aircraft, changed, '2025-04-08', '2026-11-18', 'private', state, 1.15, true);
  work(
    book,
    '2025-05-22',
    aircraft,
    'Annual inspection',
    [yearly],
    totalOn(state, '2025-05-22'),
    'SK 2025-20',
  );
  work(
    book,
    '2024-08-12',
    aircraft,
    '100 h inspection',
    [check],
    totalOn(state, '2024-08-12'),
    'SK 2024-31',
  );
  // The logbook page of this one was not at hand: its total time is not given.
  work(book, '2026-02-03', aircraft, '100 h inspection', [check], undefined, 'SK 2026-04');
  work(
    book,
    '2026-05-19',
    aircraft,
    'Annual inspection',
    [yearly],
    totalOn(state, '2026-05-19'),
    'SK 2026-18',
  );
  return book;
}

/** Flown in summer, parked every winter: this year the annual lapsed while it stood. */
function parkedForAWinter() {
  const book = new Book(303, 'Owner of the example');
  const start = '2022-03-02';
  const aircraft = addAircraft(book, start, 'ISLE-2', 'G2-0044', '2021-11-19');
  const meter = book.add('meter', start, [aircraft, null], {
    name: 'Collective meter',
    drive: 'collective',
    reads: 12 * 3600,
    total: 12 * 3600,
  });
  const overhaul = addItem(
    book,
    start,
    aircraft,
    'Overhaul',
    'overhaul',
    overhaulLimit('2021-11-19', 0),
  );
  const check = addItem(
    book,
    start,
    aircraft,
    '100 h inspection',
    'inspection',
    hundred('2022-03-02', 12 * 3600),
  );
  const yearly = addItem(
    book,
    start,
    aircraft,
    'Annual inspection',
    'inspection',
    annual('2022-03-02'),
  );
  void overhaul;
  const state = {
    reads: 12 * 3600,
    landings: 0,
    offset: 0,
    log: [{ on: start, total: 12 * 3600 }],
  };
  fly(book, aircraft, meter, start, '2024-05-30', 'summer', state, 1, false);
  const total = state.reads;
  const changed = book.add('meter', '2024-06-03', [aircraft, null], {
    name: 'Collective meter, second',
    drive: 'collective',
    reads: 0,
    total,
    why: 'Display failed',
  });
  state.reads = 0;
  state.offset = total;
  fly(book, aircraft, changed, '2024-06-03', '2026-10-12', 'summer', state, 1, false);
  for (const winter of [2022, 2023, 2024, 2025]) {
    book.add('out_of_service', `${winter}-11-03`, [aircraft], {
      until: `${winter + 1}-03-08`,
      why: 'Parked for the winter',
    });
  }
  for (const [on, reference] of [
    ['2023-03-05', 'SK 2023-06'],
    ['2024-03-04', 'SK 2024-05'],
    ['2025-03-06', 'SK 2025-07'],
    ['2025-10-28', 'SK 2025-40'],
  ]) {
    work(
      book,
      on,
      aircraft,
      'Annual and 100 h inspection',
      [check, yearly],
      totalOn(state, on),
      reference,
    );
  }
  work(
    book,
    '2026-08-04',
    aircraft,
    '100 h inspection',
    [check],
    totalOn(state, '2026-08-04'),
    'SK 2026-27',
  );
  book.add('out_of_service', '2026-10-20', [aircraft], {
    until: '2027-03-15',
    why: 'Parked for the winter',
  });
  book.add('note', '2026-10-20', [aircraft], {
    text: 'Invented example: stands in the island shed, battery out.',
  });
  return book;
}

const header = '{"journal":"twoclocks","version":1}\n';
const print = (lines) =>
  header +
  lines
    .sort((left, right) => left.at - right.at || (left.id < right.id ? -1 : 1))
    .map((line) => `${line.text}\n`)
    .join('');

const stories = {
  bound_by_hours: boundByHours(),
  bound_by_calendar: boundByCalendar(),
  parked_for_a_winter: parkedForAWinter(),
};
for (const [name, book] of Object.entries(stories)) {
  writeFileSync(join(here, `${name}.jsonl`), print(book.lines));
}
writeFileSync(
  join(here, 'fleet.jsonl'),
  print(Object.values(stories).flatMap((book) => book.lines)),
);
