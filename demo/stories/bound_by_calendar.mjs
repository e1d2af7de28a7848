// An invented story: nothing in it is real.
import { addItem, Book, changeMeter, fly, inspect, manual, newAircraft, work } from './book.mjs';
import { estimate } from './estimate.mjs';

const start = '2022-06-14';
const overhauled = 2187.4 * 3600;

function bought(book) {
  const total = overhauled + 402.6 * 3600;
  const craft = newAircraft(
    book,
    start,
    { registration: 'ISLE-1', serial: 'G2-0007', manufactured: '2006-09-30' },
    { name: 'Oil pressure meter', drive: 'oil_pressure', reads: 1204.3 * 3600, total },
    ['2018-08-31', overhauled],
    [start, total],
  );
  craft.state.landings = 3380;
  addItem(book, start, craft.aircraft, 'Landing gear inspection', 'component', {
    class: 'recommended',
    landings: 3000,
    calendar_rule: 'exact',
    anchor: 'release',
    anchor_landings: 3100,
    ...manual,
  });
  return craft;
}

/** What the manual of the invented type has renewed by calendar work, and by the full overhaul. */
function bothPaths({ book, aircraft, overhaul, check, yearly }) {
  const rule = (name, renews) =>
    book.add('work_rule', '2026-05-20', [aircraft], { name, renews, ...manual });
  rule('Twelve-year inspection', [{ item: overhaul, clocks: ['calendar'] }, { item: yearly }]);
  rule('Full overhaul', [{ item: overhaul }, { item: check }, { item: yearly }]);
}

/** Two summers of touring are meant to come. */
function summers({ book, aircraft }) {
  const hour = 3600;
  book.add('usage_planned', '2026-06-01', [aircraft], {
    month: 6 * hour,
    why: 'A holiday by air each summer',
    january: 2 * hour,
    february: 2 * hour,
    july: 18 * hour,
    august: 18 * hour,
    december: 2 * hour,
  });
}

/** What a buyer asks for, as far as somebody noted it. */
function forSale({ book, aircraft, yearly, check }) {
  const said_by = 'Shop of the example';
  book.add('item_price', '2026-06-03', [aircraft, yearly], { item_price: '2900.00 EUR', said_by });
  book.add('item_price', '2026-06-03', [aircraft, check], { item_price: '1450.00 EUR', said_by });
  book.add('closing_point', '2026-06-04', [aircraft], {
    point_key: 'review',
    closing_topic: 'airworthiness_review',
    point_text: 'Airworthiness review certificate',
    point_until: '2027-05-20',
    payer: 'open',
  });
  book.add('closing_point', '2026-06-04', [aircraft], {
    point_key: 'skid',
    closing_topic: 'finding',
    point_text: 'Skid tube worn near the step',
    point_cost: '1180.00 EUR',
    payer: 'seller',
  });
}

/** A private owner's: twelve years pass long before the hours do. Bought after an overhaul. */
export function boundByCalendar() {
  const book = new Book(202, 'Owner of the example');
  const craft = bought(book);
  const yearly = (days) => inspect(craft, 'Annual inspection', [craft.yearly], days);
  fly(craft, start, '2025-04-02', 'private', 1.15, true);
  yearly([
    ['2023-05-22', 'SK 2023-20'],
    ['2024-05-22', 'SK 2024-20'],
  ]);
  changeMeter(
    craft,
    '2025-04-08',
    'Oil pressure meter, second',
    'oil_pressure',
    'Replaced with the oil pressure switch',
  );
  fly(craft, '2025-04-08', '2026-11-18', 'private', 1.15, true);
  yearly([['2025-05-22', 'SK 2025-20']]);
  const check = '100 h inspection';
  inspect(craft, check, [craft.check], [['2024-08-12', 'SK 2024-31']]);
  // The logbook page of this one was not at hand: its total time is not given.
  work(book, '2026-02-03', craft.aircraft, check, [craft.check], undefined, 'SK 2026-04');
  yearly([['2026-05-19', 'SK 2026-18']]);
  bothPaths(craft);
  summers(craft);
  estimate(book, craft.aircraft);
  forSale(craft);
  return book;
}
