// An invented story: nothing in it is real.
import { Book, changeMeter, fly, inspect, newAircraft } from './book.mjs';

/** Flown in summer, parked every winter: this year the annual lapsed while it stood. */
export function parkedForAWinter() {
  const book = new Book(303, 'Owner of the example');
  const start = '2022-03-02';
  const craft = newAircraft(
    book,
    start,
    { registration: 'ISLE-2', serial: 'G2-0044', manufactured: '2021-11-19' },
    { name: 'Collective meter', drive: 'collective', reads: 12 * 3600, total: 12 * 3600 },
    ['2021-11-19', 0],
    [start, 12 * 3600],
  );
  const parked = (on, until) =>
    book.add('out_of_service', on, [craft.aircraft], { until, why: 'Parked for the winter' });
  fly(craft, start, '2024-05-30', 'summer', 1, false);
  changeMeter(craft, '2024-06-03', 'Collective meter, second', 'collective', 'Display failed');
  fly(craft, '2024-06-03', '2026-10-12', 'summer', 1, false);
  for (const winter of [2022, 2023, 2024, 2025]) {
    parked(`${winter}-11-03`, `${winter + 1}-03-08`);
  }
  inspect(
    craft,
    'Annual and 100 h inspection',
    [craft.check, craft.yearly],
    [
      ['2023-03-05', 'SK 2023-06'],
      ['2024-03-04', 'SK 2024-05'],
      ['2025-03-06', 'SK 2025-07'],
      ['2025-10-28', 'SK 2025-40'],
    ],
  );
  inspect(craft, '100 h inspection', [craft.check], [['2026-08-04', 'SK 2026-27']]);
  parked('2026-10-20', '2027-03-15');
  book.add('note', '2026-10-20', [craft.aircraft], {
    text: 'Invented example: stands in the island shed, battery out.',
  });
  return book;
}
