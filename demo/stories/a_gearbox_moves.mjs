// An invented story: nothing in it is real.
import { addItem, Book, fly, inspect, newAircraft, totalOn, work } from './book.mjs';

const rules = { source: 'Gannet maintenance manual (invented)', revision: 'revision 7' };
const office = 'Island Aviation Office (invented)';
const lentOn = '2023-05-10';
const backOn = '2024-04-15';
const storedOn = '2026-09-15';

function twoAircraft(book) {
  const meter = { name: 'Collective meter', drive: 'collective', reads: 0, total: 0 };
  const plate = (registration, serial, manufactured) => ({ registration, serial, manufactured });
  const craft = (on, marks, serial, made) =>
    newAircraft(book, on, plate(marks, serial, made), meter, [made, 0], [made, 0]);
  return [
    craft('2020-04-01', 'ISLE-4', 'G2-0036', '2020-03-15'),
    craft('2021-03-01', 'ISLE-5', 'G2-0041', '2021-02-10'),
  ];
}

/** A tail gearbox with its papers, and the overhaul that it carries along. */
function gearbox(book, on, serial, made) {
  const part = book.add('part', on, [null], {
    part_number: 'TG-2',
    serial,
    name: 'Tail gearbox',
    chapter: '65',
    tsn: 0,
    manufactured: made,
    condition: 'new',
    papers: `Release certificate ${serial}-1 (invented)`,
  });
  const overhaul = addItem(book, on, part, 'Tail gearbox overhaul', 'overhaul', {
    class: 'airworthiness_limitation',
    hours: 2200 * 3600,
    months: 144,
    calendar_rule: 'exact',
    anchor: 'manufacture',
    ...rules,
  });
  return { part, overhaul };
}

function fit(craft, { part }, on, reference) {
  const host_total = totalOn(craft.state, on);
  craft.book.add('part_fitted', on, [part, craft.aircraft], {
    position: 'Tail',
    host_total,
    reference,
  });
}

function takeOff(craft, { part }, on, condition, why) {
  const host_total = totalOn(craft.state, on);
  craft.book.add('part_removed', on, [part, craft.aircraft], { host_total, condition, why });
}

/** An item that rests on a directive; `acts` says what it replaces and what ends it. */
function directive(book, on, part, name, limit, number, effective_on, acts) {
  const item = addItem(book, on, part, name, 'inspection', {
    class: 'directive',
    ...limit,
    anchor: 'release',
    source: `Directive ${number} (invented)`,
    revision: 'issue 1',
  });
  book.add('directive', on, [part, item], {
    number: `${number} (invented)`,
    revision: 'issue 1',
    issuer: office,
    effective_on,
    part_number: 'TG-2',
    applies: 'applies',
    applies_why: 'The part number is named, every serial',
    ...acts,
  });
  return item;
}

/** Each time about so many hours were flown since the last time. */
function comply(craft, part, item, what, from, to, everyHours) {
  let last = totalOn(craft.state, from);
  for (const { on, total } of craft.state.log.filter((one) => one.on > from && one.on <= to)) {
    if (total - last < everyHours * 3600) continue;
    last = total;
    craft.book.add('work', on, [craft.aircraft, part, item], {
      what,
      renews: [{ item }],
      total,
      place: 'Skerry workshop (invented)',
      done_by: 'R. Invented',
      reference: `SK ${on.slice(0, 4)}-${on.slice(5, 7)}`,
    });
  }
}

/** It is lent for a year, while the gearbox of the other is repaired, and comes back. */
function lend(four, five, mine, theirs) {
  takeOff(five, mine, lentOn, 'inspected', 'Lent to ISLE-4');
  takeOff(four, theirs, lentOn, 'as_removed', 'Metal on the chip detector');
  fit(four, mine, lentOn, 'SK 2023-19');
  fly(four, lentOn, backOn, 'touring', 0.9, false);
  takeOff(four, mine, backOn, 'inspected', 'Goes back to ISLE-5');
  fit(four, theirs, backOn, 'SK 2024-16');
  fit(five, mine, backOn, 'SK 2024-16');
}

/**
 * The second takes the place of the first, and what was done for the first counts for it; an
 * overhaul, with a bearing of another kind, will end it.
 */
function directives(book, four, five, { part, overhaul }) {
  const oil = 'Tail gearbox oil looked at for metal';
  const first = directive(
    book,
    '2022-07-01',
    part,
    oil,
    { hours: 50 * 3600, calendar_rule: 'exact' },
    '2022-07',
    '2022-07-01',
    {},
  );
  comply(five, part, first, oil, '2022-07-01', lentOn, 42);
  comply(four, part, first, oil, lentOn, backOn, 42);
  comply(five, part, first, oil, backOn, '2024-08-31', 38);
  const looked = 'Tail gearbox bearing looked at';
  const second = directive(
    book,
    '2024-09-01',
    part,
    looked,
    { hours: 100 * 3600, months: 12, calendar_rule: 'exact' },
    '2024-03',
    '2024-09-01',
    { credit: true, replaces: [first], ended_by: [overhaul] },
  );
  comply(five, part, second, looked, '2024-09-01', '2026-09-01', 80);
}

/** In storage with what its document asks for meanwhile, and before it flies again. */
function store(book, craft) {
  const kept = { source: 'Gannet storage manual (invented)', revision: 'revision 2' };
  const check = (name, interval, in_force) =>
    addItem(book, storedOn, craft.aircraft, name, 'inspection', {
      class: 'programme',
      ...(interval.months ? { months: interval.months } : {}),
      calendar_rule: 'exact',
      anchor: 'release',
      ...kept,
      ...(interval.days ? { days: interval.days } : {}),
      in_force,
    });
  book.add('out_of_service', storedOn, [craft.aircraft], {
    why: 'In the island shed until it is sold',
    stored: true,
    ...kept,
  });
  const turned = check('Rotor and engine turned by hand', { days: 30 }, 'in_storage');
  check('Preservation renewed', { months: 6 }, 'in_storage');
  check('Inspection on return from storage', { days: 7 }, 'on_return');
  inspect(
    craft,
    'Rotor and engine turned by hand',
    [turned],
    [
      ['2026-10-14', 'SK 2026-29'],
      ['2026-11-12', 'SK 2026-33'],
    ],
  );
}

function yearly(craft, years, day) {
  inspect(
    craft,
    'Annual and 100 h inspection',
    [craft.check, craft.yearly],
    years.map((year) => [`${year}-${day}`, `SK ${year}-11`]),
  );
}

/**
 * A tail gearbox that goes from one aircraft to another and back, with two directives that follow
 * it; and the aircraft that it is on, in storage.
 */
export function aGearboxMoves() {
  const book = new Book(404, 'Owner of the example');
  const [four, five] = twoAircraft(book);
  const theirs = gearbox(book, '2020-04-01', 'TG-0098', '2020-02-01');
  const mine = gearbox(book, '2021-03-01', 'TG-0117', '2021-01-20');
  fit(four, theirs, '2020-04-01', 'As delivered');
  fit(five, mine, '2021-03-01', 'As delivered');
  fly(four, '2020-04-01', lentOn, 'touring', 0.9, false);
  fly(five, '2021-03-01', lentOn, 'private', 1.5, false);
  lend(four, five, mine, theirs);
  fly(four, backOn, '2026-11-15', 'touring', 0.9, false);
  fly(five, backOn, '2026-09-10', 'private', 1.5, false);
  yearly(four, [2021, 2022, 2023, 2024, 2025, 2026], '03-09');
  yearly(five, [2022, 2023, 2024, 2025, 2026], '02-20');
  work(
    book,
    '2026-09-28',
    four.aircraft,
    '100 h inspection',
    [four.check],
    totalOn(four.state, '2026-09-28'),
    'SK 2026-28',
  );
  directives(book, four, five, mine);
  store(book, five);
  return book;
}
