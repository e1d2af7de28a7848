// What every invented story is written with: a book of facts that is the same every time, flying
// by season, and the limits of an invented type.
const dayMs = 86_400_000;
const day = (text) => Date.parse(`${text}T00:00:00Z`);
const iso = (ms) => new Date(ms).toISOString().slice(0, 10);
export const tenth = 360;

/** Small generator with a fixed seed: the fleets must not change from run to run. */
function makeRandom(seed) {
  let state = BigInt(seed);
  return () => {
    state = (state * 6364136223846793005n + 1442695040888963407n) & 0xffff_ffff_ffff_ffffn;
    return Number(state >> 33n) / 2 ** 31;
  };
}

export class Book {
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
export function totalOn(state, on) {
  return state.log.filter((one) => one.on <= on).at(-1)?.total ?? state.log[0].total;
}

/** Readings from one day to another, some days apart, with landings when counted. */
export function fly(craft, from, to, season, scale, counted) {
  const { book, aircraft, meter, state } = craft;
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

export const manual = { source: 'Gannet maintenance manual (invented)', revision: 'revision 7' };

function addAircraft(book, on, registration, serial, manufactured) {
  return book.add('aircraft', on, [null], {
    registration,
    type: 'Gannet 2 (invented)',
    serial,
    manufactured,
    invented: true,
  });
}

export function addItem(book, on, aircraft, name, role, limit) {
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

/**
 * An aircraft with its meter, its overhaul, a 100 h and an annual inspection.
 * `overhauled` and `inspected` say from which day and total time those count.
 */
export function newAircraft(book, on, plate, meter, overhauled, inspected) {
  const aircraft = addAircraft(book, on, plate.registration, plate.serial, plate.manufactured);
  const fitted = book.add('meter', on, [aircraft, null], meter);
  const overhaul = addItem(
    book,
    on,
    aircraft,
    'Overhaul',
    'overhaul',
    overhaulLimit(...overhauled),
  );
  const check = addItem(
    book,
    on,
    aircraft,
    '100 h inspection',
    'inspection',
    hundred(...inspected),
  );
  const yearly = addItem(
    book,
    on,
    aircraft,
    'Annual inspection',
    'inspection',
    annual(inspected[0]),
  );
  const state = {
    reads: Math.round(meter.reads),
    landings: 0,
    offset: Math.round(meter.total) - Math.round(meter.reads),
    log: [{ on, total: Math.round(meter.total) }],
  };
  return { book, aircraft, meter: fitted, overhaul, check, yearly, state };
}

/** Another meter takes over where the first one stopped. */
export function changeMeter(craft, on, name, drive, why) {
  const { book, state } = craft;
  const total = state.reads + state.offset;
  craft.meter = book.add('meter', on, [craft.aircraft, null], {
    name,
    drive,
    reads: 0,
    total,
    why,
  });
  state.reads = 0;
  state.offset = total;
}

/** Work on items at the total time of its day, with its reference. */
export function inspect(craft, what, items, days) {
  for (const [on, reference] of days) {
    work(craft.book, on, craft.aircraft, what, items, totalOn(craft.state, on), reference);
  }
}

export function work(book, on, aircraft, what, items, total, reference) {
  book.add('work', on, [aircraft, ...items], {
    what,
    renews: items.map((item) => ({ item })),
    total,
    place: 'Skerry workshop (invented)',
    done_by: 'R. Invented',
    reference,
  });
}
