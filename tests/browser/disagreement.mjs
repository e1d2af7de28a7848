// Two people who corrected the same reading of ISLE-1 apart from each other, as the files they
// send. Invented, like the fleet.
import { readFileSync } from 'node:fs';

const fleet = new URL('../../demo/fleet.jsonl', import.meta.url);
const seconds_in_a_tenth = 360;

function lastReadingOf(registration) {
  const [header, ...lines] = readFileSync(fleet, 'utf8').trimEnd().split('\n');
  const records = lines.map((line) => JSON.parse(line));
  const aircraft = records.find((record) => record.registration === registration);
  const readings = records.filter(
    ({ kind, about }) => kind === 'reading' && about.includes(aircraft.id),
  );
  return { header, reading: readings.at(-1) };
}

/** The file of one person: the last reading of ISLE-1 so many tenths higher. */
function correctionBy({ author, device, place, at, tenths }) {
  const { header, reading } = lastReadingOf('ISLE-1');
  const { id, on, about, reads } = reading;
  const correction = {
    id: `01a1d500-0000-7000-8000-00000000000${place}`,
    kind: 'correction',
    on,
    at: Date.parse(at),
    tick: 0,
    device,
    by: author,
    about,
    replaces: id,
    why: 'Read again from the meter',
    instead: { kind: 'reading', on, about, reads: reads + tenths * seconds_in_a_tenth },
  };
  const bytes = Buffer.from(`${header}\n${JSON.stringify(correction)}\n`);
  return { name: `from_${author.toLowerCase()}.jsonl`, bytes };
}

export const ann = correctionBy({
  author: 'Ann',
  device: '4be1c0de-0001',
  place: 1,
  at: '2026-11-20T08:15:00Z',
  tenths: 12,
});

export const ben = correctionBy({
  author: 'Ben',
  device: '7f20aa31-0002',
  place: 2,
  at: '2026-11-21T16:40:00Z',
  tenths: 21,
});

/** Looks at a file; nothing is joined yet. */
export async function lookAt(page, file) {
  await page.tap('tab', 'Files');
  await page.choose(file, () => page.tap('button', 'Import a file'));
}

/** Joins what both sent. */
export async function joinBoth(page) {
  for (const file of [ann, ben]) {
    await lookAt(page, file);
    await page.tap('button', 'Join it to mine');
  }
}
