// An invented story: nothing in it is real.
import { Book, changeMeter, fly, inspect, newAircraft, tenth } from './book.mjs';

/** Flown hard by a touring firm: the hours come first, and soon. */
export function boundByHours() {
  const book = new Book(101, 'Owner of the example');
  const start = '2019-05-06';
  const made = '2019-04-11';
  const craft = newAircraft(
    book,
    start,
    { registration: 'ISLE-3', serial: 'G2-0031', manufactured: made },
    { name: 'Collective meter', drive: 'collective', reads: 0, total: 0 },
    [made, 0],
    [made, 0],
  );
  fly(craft, start, '2024-01-20', 'touring', 1.66, false);
  const years = [2020, 2021, 2022, 2023];
  inspect(
    craft,
    'Annual and 100 h inspection',
    [craft.check, craft.yearly],
    years.map((year) => [`${year}-03-18`, `SK ${year}-12`]),
  );
  changeMeter(
    craft,
    '2024-01-24',
    'Collective meter, second',
    'collective',
    'The first one stopped',
  );
  fly(craft, '2024-01-24', '2026-10-30', 'touring', 1.66, false);
  inspect(
    craft,
    'Annual inspection',
    [craft.yearly],
    [
      ['2025-03-12', 'SK 2025-08'],
      ['2026-03-20', 'SK 2026-09'],
    ],
  );
  inspect(craft, '100 h inspection', [craft.check], [['2026-11-02', 'SK 2026-31']]);
  book.add('reading', '2026-11-20', [craft.aircraft, craft.meter], {
    reads: craft.state.reads + 31 * tenth,
  });
  plan(book, craft.aircraft);
  return book;
}

/** Its overhaul is planned: the seller's days are longer than usual, and nothing is ordered yet. */
function plan(book, aircraft) {
  book.add('plan_terms', '2026-10-12', [aircraft], {
    plan_work: 'overhaul',
    confidence_percent: 90,
    margin_days: 7,
    core_days: 150,
    out_at_once: 1,
  });
  book.add('plan_task', '2026-10-26', [aircraft], {
    task: 'kit',
    low_days: 168,
    likely_days: 182,
    high_days: 210,
    said_by: 'Seller of the example',
  });
  book.add('plan_task', '2026-10-28', [aircraft], {
    task: 'queue',
    low_days: 60,
    likely_days: 75,
    high_days: 100,
    said_by: 'Shop of the example',
  });
  book.add('plan_step', '2026-10-12', [aircraft], { task: 'quotes', step: 'begun' });
  book.add('plan_step', '2026-11-06', [aircraft], { task: 'quotes', step: 'finished' });
  book.add('plan_step', '2026-11-16', [aircraft], {
    task: 'slot',
    step: 'begun',
    reference: 'Asked by letter',
  });
  book.add('plan_step', '2026-11-20', [aircraft], {
    task: 'slot',
    step: 'finished',
    reference: 'Confirmed by letter',
  });
  book.add('closed', '2026-12-24', [aircraft], {
    closed_last: '2027-01-06',
    why: 'Turn of the year',
  });
  worth(book, aircraft);
}

/** Three routes to choose from: the day each was told, and what was said. */
const routes = [
  [
    '2026-11-04',
    {
      route_key: 'near',
      route_name: 'Shop of the example',
      route_by: 'service_centre',
      carriage: 'flown',
      ferry_hours: 2880,
      there_days: 1,
      back_days: 1,
      queue_days: 75,
      low_days: 75,
      likely_days: 95,
      high_days: 130,
      price_basis: 'estimate',
      price: '278000.00 EUR',
      tax: 'recoverable',
      tax_permille: 200,
      price_until: '2027-03-31',
      warranty_months: 12,
      warranty_hours: 3600000,
      warranty_from: 'release',
      release_accepted: 'accepted',
      shop_takes: 1,
      said_by: 'Shop of the example',
    },
  ],
  [
    '2026-11-09',
    {
      route_key: 'works',
      route_name: 'Works of the example',
      route_by: 'works',
      carriage: 'flown',
      ferry_hours: 25200,
      there_days: 3,
      back_days: 4,
      queue_days: 150,
      kit_days: 30,
      low_days: 28,
      likely_days: 35,
      high_days: 45,
      price_basis: 'fixed',
      price: '312000.00 EUR',
      tax: 'recoverable',
      tax_permille: 190,
      price_until: '2026-12-31',
      warranty_months: 24,
      warranty_hours: 3600000,
      warranty_from: 'first_flight',
      release_accepted: 'accepted',
      said_by: 'Works of the example',
    },
  ],
  [
    '2026-11-18',
    {
      route_key: 'water',
      route_name: 'Shop over the water',
      route_by: 'abroad',
      carriage: 'crated',
      there_days: 35,
      back_days: 35,
      queue_days: 20,
      low_days: 50,
      likely_days: 60,
      high_days: 90,
      price_basis: 'hourly',
      price: '226000.00 EUR',
      freight: '19500.00 EUR',
      tax: 'borne',
      tax_permille: 200,
      duty_permille: 25,
      warranty_months: 12,
      warranty_from: 'shipment',
      release_accepted: 'unknown',
      said_by: 'Shop over the water',
    },
  ],
];

/** What its days are worth, the plan that was kept, and three routes to choose from. */
function worth(book, aircraft) {
  book.add('plan_costs', '2026-10-14', [aircraft], {
    overhaul_sum: '278000.00 EUR',
    lost_day: '410.00 EUR',
    saved_day: '120.00 EUR',
    interest_permille: 45,
  });
  book.add('plan_kept', '2026-10-16', [aircraft], {
    order_on: '2026-11-02',
    book_on: '2026-11-30',
    stop_on: '2027-05-10',
    back_on: '2027-09-20',
  });
  for (const [on, route] of routes) book.add('route', on, [aircraft], route);
}
