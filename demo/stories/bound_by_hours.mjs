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
}
