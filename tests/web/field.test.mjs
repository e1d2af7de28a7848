import assert from 'node:assert/strict';
import { test } from 'node:test';
import { dayIn, kinds, withColon } from '../../web/field.js';

test('two decimal signs in a row are the sign before the minutes', () => {
  for (const [typed, shown] of [
    ['12..', '12:'],
    ['12,,18', '12:18'],
    ['12.,18', '12:18'],
    ['12.3', '12.3'],
    ['12.', '12.'],
    ['12:18', '12:18'],
    ['..', '..'],
    ['1.234..5', '1.234..5'],
  ]) {
    assert.equal(withColon(typed), shown, typed);
  }
});

test('a day that was copied goes into a date input only as it takes it', () => {
  assert.equal(dayIn('2026-05-31'), '2026-05-31');
  assert.equal(dayIn(' 2026-05-31\n'), '2026-05-31');
  for (const other of ['31.05.2026', '2026-5-31', '2026-05-31T10:00', 'x2026-05-31', '']) {
    assert.equal(dayIn(other), undefined, other);
  }
});

test('every kind that is typed has its keyboard', () => {
  assert.equal(kinds.hours.mode, 'decimal');
  assert.equal(kinds.money.mode, 'decimal');
  assert.equal(kinds.whole.mode, 'numeric');
  assert.equal(kinds.code.capitals, 'characters');
  assert.equal(kinds.search.enter, 'search');
  assert.equal(kinds.note.element, 'field_note');
  assert.equal(kinds.date.element, 'field_date');
});
