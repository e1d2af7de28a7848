// 10,000 additions of calendar months: the engine against npm date-fns and luxon, which must agree
// with each other first. The engine's side is the hidden test of date_given_test.cpp.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { need } from '../support/packages.mjs';

const { addDays, addMonths, differenceInCalendarDays, format, lastDayOfMonth } = need('date-fns');
const { DateTime } = need('luxon');
const rows = 10_000;
const first = new Date(1900, 0, 1);
const whole_days = 300 * 365;
const program = fileURLToPath(new URL('../../build/native/unit_tests', import.meta.url));

/** Numbers from 0 up to 1, the same every time. */
function* drawn(seed) {
  let state = seed;
  for (;;) {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    yield state / 2 ** 32;
  }
}

const by_date_fns = (from, months) => {
  const exact = addMonths(from, months);
  return [
    format(exact, 'yyyy-MM-dd'),
    format(lastDayOfMonth(exact), 'yyyy-MM-dd'),
    differenceInCalendarDays(exact, from),
  ];
};

const by_luxon = (text, months) => {
  const from = DateTime.fromISO(text, { zone: 'utc' });
  const exact = from.plus({ months });
  return [exact.toISODate(), exact.endOf('month').toISODate(), exact.diff(from, 'days').days];
};

test('10,000 additions of months land where date-fns and luxon put them', () => {
  const draw = drawn(20_261_125);
  const lines = [];
  let clamped = 0;
  while (lines.length < rows) {
    let from = addDays(first, Math.floor(draw.next().value * whole_days));
    // Month ends are where additions go wrong: half of the days are the last of their month.
    if (draw.next().value < 0.5) from = lastDayOfMonth(from);
    const months = 1 + Math.floor(draw.next().value * 600);
    const text = format(from, 'yyyy-MM-dd');
    const [exact, month_end, days] = by_date_fns(from, months);
    assert.deepEqual(by_luxon(text, months), [exact, month_end, days]);
    if (exact > '2199-12-31') continue;
    if (exact.slice(8) !== text.slice(8)) clamped += 1;
    lines.push(`${text} ${months} ${exact} ${month_end} ${days}`);
  }
  assert.ok(clamped > 1_000);
  const folder = mkdtempSync(join(tmpdir(), 'dates-'));
  try {
    const file = join(folder, 'additions.txt');
    writeFileSync(file, `${lines.join('\n')}\n`);
    const said = execFileSync(program, ['[given_dates]'], {
      env: { ...process.env, TWO_CLOCKS_DATES: file },
      encoding: 'utf8',
    });
    assert.match(said, new RegExp(`\\b${rows} additions agree`));
  } finally {
    rmSync(folder, { recursive: true });
  }
});
