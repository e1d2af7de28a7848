// Makes the invented fleets: node demo/make_fleets.mjs writes demo/*.jsonl, always the same bytes.
// Nothing in them is real: no registration, maker, type, document, person or price. Each story is
// a file of its own under demo/stories.
import { writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { aGearboxMoves } from './stories/a_gearbox_moves.mjs';
import { boundByCalendar } from './stories/bound_by_calendar.mjs';
import { boundByHours } from './stories/bound_by_hours.mjs';
import { parkedForAWinter } from './stories/parked_for_a_winter.mjs';

const here = dirname(fileURLToPath(import.meta.url));

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
  a_gearbox_moves: aGearboxMoves(),
};
for (const [name, book] of Object.entries(stories)) {
  writeFileSync(join(here, `${name}.jsonl`), print(book.lines));
}
writeFileSync(
  join(here, 'fleet.jsonl'),
  print(Object.values(stories).flatMap((book) => book.lines)),
);
