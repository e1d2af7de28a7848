// The published schema takes every line of the invented fleets and refuses what the engine refuses.
import assert from 'node:assert/strict';
import { readFileSync, readdirSync } from 'node:fs';
import { test } from 'node:test';
import { need } from '../support/packages.mjs';

const Ajv = need('ajv/dist/2020').default;
const at = (path) => new URL(`../../${path}`, import.meta.url);
const schema = JSON.parse(readFileSync(at('engine/facts/journal.schema.json'), 'utf8'));
// Strict, so that a slip in the schema itself fails; a kind's part needs no type of its own.
const ajv = new Ajv({ strict: true, strictTypes: false, strictRequired: false });
const isLine = ajv.compile(schema);

const id = '018c3f8a-0001-7000-8000-000000000001';
const other = '018c3f8a-0002-7000-8000-000000000002';
const fact = (kind, fields = {}, about = [id, other]) => ({
  id,
  kind,
  on: '2026-05-03',
  at: 1777800000000,
  tick: 0,
  device: 'd',
  about,
  ...fields,
});
const limit = (fields) =>
  fact('limit', { class: 'programme', calendar_rule: 'exact', anchor: 'unknown', ...fields });
const instead = (kind, fields) => ({ kind, on: '2026-05-03', about: [id, other], ...fields });
const correction = (record) =>
  fact('correction', { replaces: id, why: 'Misread', instead: record });
const without = (record, key) => {
  const rest = { ...record };
  delete rest[key];
  return rest;
};

test('every line of the invented fleets is taken', () => {
  const fleets = readdirSync(at('demo/')).filter((name) => name.endsWith('.jsonl'));
  assert.ok(fleets.length >= 4);
  for (const fleet of fleets) {
    const lines = readFileSync(at(`demo/${fleet}`), 'utf8')
      .trimEnd()
      .split('\n');
    for (const [index, line] of lines.entries()) {
      assert.ok(isLine(JSON.parse(line)), `${fleet}:${index + 1} ${ajv.errorsText(isLine.errors)}`);
    }
  }
});

const good = {
  header: { journal: 'twoclocks', version: 1 },
  'header of a newer version': { journal: 'twoclocks', version: 2, made: 'x' },
  'kind of a newer version': fact('vibration', { peak: { at: [1, 2] } }),
  'class of a newer version': limit({ hours: 1, class: 'strict' }),
  'rule of a newer version': limit({ hours: 1, calendar_rule: 'week' }),
  'anchor of a newer version': limit({ hours: 1, anchor: 'sale' }),
  'drive of a newer version': fact('meter', { drive: 'wind', reads: 0, total: 0 }),
  'role of a newer version': fact('item', { name: 'Blades', role: 'rotor' }),
  'clock of a newer version': fact(
    'work',
    { what: 'x', renews: [{ item: id, clocks: ['moons'] }] },
    [id],
  ),
  'field of a newer version': fact('reading', { reads: 0, weather: 'fog' }),
  'longest time': fact('reading', { reads: 720_000_000 }),
  'one second of limit': limit({ hours: 1 }),
  'one month': limit({ months: 1 }),
  'one day': limit({ days: 1 }),
  'first, cap and tolerance': limit({
    hours: 1,
    first_hours: 2,
    first_months: 3,
    once: true,
    combine: 'later',
    cap_days: 4,
    tolerance_hours: 0,
    tolerance_permille: 1000,
    carry_over: 'from_due',
    tolerance_source: 'Programme',
  }),
  'combination of a newer version': limit({ hours: 1, combine: 'second' }),
  'carry-over of a newer version': limit({ hours: 1, carry_over: 'from_plan' }),
  'permit of hours': fact('permit', { issuer: 'Authority', hours: 5 }),
  'permit of days': fact('permit', { issuer: 'Authority', until: '2026-06-01' }),
  '1,200 months': limit({ months: 1200 }),
  'work that renews nothing': fact('work', { what: 'Wash', renews: [] }, [id]),
  'some clocks': fact('work', { what: 'x', renews: [{ item: id, clocks: ['hours'] }] }, [id]),
  'note about nothing': fact('note', { text: '' }, []),
  'reference with content': fact('withdrawal', { withdraws: `${id}/0123456789abcdef`, why: '' }, [
    id,
  ]),
  correction: correction(instead('reading', { reads: 5 })),
  'correction to a newer kind': correction(instead('vibration', { peak: 1 })),
  'part of unknown age': fact('part', { part_number: 'P-1', serial: '7', condition: 'unknown' }, [
    id,
  ]),
  'condition of a newer version': fact('part_removed', { condition: 'singed' }),
  'fit without a total': fact('part_fitted'),
  directive: fact('directive', { number: 'D 1', applies: 'applies', replaces: [id] }),
  'applicability of a newer version': fact('directive', { number: 'D 1', applies: 'partly' }),
  'approved other way': fact('alternative_means', { issuer: 'A', reference: 'R', days: 30 }),
  'event of a newer version': fact('event', { happened: 'hail' }, [id]),
  'wear of nothing': fact('wear', { value_thousandths: 0, unit: 'mm' }),
  'hours not counted': fact('meter_adjusted', {
    reason: 'dead',
    added_hours: 3600,
    reads: 0,
    source: 'Log',
  }),
  'a factor of one': fact(
    'hours_factor',
    { operation: 'training', factor_thousandths: 1000, source: 'L' },
    [id],
  ),
  'stored aircraft': fact('out_of_service', { stored: true }, [id]),
  'limit in storage': limit({ days: 30, in_force: 'in_storage' }),
  'answer that drops all': fact('answer', { settles: [id], keeps: [] }, [id]),
};

const bad = {
  'another journal': { journal: 'other', version: 1 },
  'version 0': { journal: 'twoclocks', version: 0 },
  'no kind': without(fact('note', { text: '' }), 'kind'),
  'no id': without(fact('note', { text: '' }), 'id'),
  'no day': without(fact('note', { text: '' }), 'on'),
  'no stamp': without(fact('note', { text: '' }), 'at'),
  'no device': without(fact('note', { text: '' }), 'device'),
  'nothing it is about': without(fact('note', { text: '' }), 'about'),
  'id in capitals': { ...fact('note', { text: '' }), id: id.toUpperCase() },
  'a day of 1899': { ...fact('note', { text: '' }), on: '1899-12-31' },
  'a day without zeros': { ...fact('note', { text: '' }), on: '2026-5-3' },
  'a stamp before 1970': { ...fact('note', { text: '' }), at: -1 },
  'a tick too many': { ...fact('note', { text: '' }), tick: 2 ** 31 },
  'a reading of nothing': fact('reading'),
  'a reading below zero': fact('reading', { reads: -1 }),
  'a reading in hours': fact('reading', { reads: 1234.5 }),
  'a reading as text': fact('reading', { reads: '5' }),
  'a reading past 200,000 h': fact('reading', { reads: 720_000_001 }),
  'a reading of no meter': fact('reading', { reads: 5 }, [id]),
  'landings past ten million': fact('reading', { reads: 5, landings: 10_000_001 }),
  'a limit without any': limit({}),
  'a limit of no hours': limit({ hours: 0 }),
  'a limit of no months': limit({ months: 0 }),
  'a limit of 1,201 months': limit({ months: 1201 }),
  'a limit of no landings': limit({ landings: 0 }),
  'a limit of no days': limit({ days: 0 }),
  'a first interval alone': limit({ first_hours: 5 }),
  'a first interval of no hours': limit({ hours: 1, first_hours: 0 }),
  'a cap of no months': limit({ hours: 1, cap_months: 0 }),
  'a tolerance above the whole': limit({ hours: 1, tolerance_permille: 1001 }),
  'a carry-over that is no word': limit({ hours: 1, carry_over: 1 }),
  'a permit of nothing': fact('permit', { issuer: 'Authority' }),
  'a permit of nobody': fact('permit', { hours: 5 }),
  'a permit past no item': fact('permit', { issuer: 'Authority', hours: 5 }, [id]),
  'a class that is no word': limit({ hours: 1, class: 1 }),
  'a drive that is no word': fact('meter', { drive: ['wind'], reads: 0, total: 0 }),
  'an item without a name': fact('item', { role: 'other' }),
  'work without a word': fact('work', { renews: [] }, [id]),
  'a clock that is no word': fact('work', { what: 'x', renews: [{ item: id, clocks: [2] }] }, [id]),
  'a renewal of nothing': fact('work', { what: 'x', renews: [{}] }, [id]),
  'a text too long': fact('aircraft', { registration: 'x'.repeat(4097) }),
  'a note too long': fact('note', { text: 'x'.repeat(65_537) }),
  'half a reference': fact('withdrawal', { withdraws: `${id}/01`, why: '' }, [id]),
  'a withdrawal without a why': fact('withdrawal', { withdraws: id }, [id]),
  'an answer to nothing': fact('answer', { settles: [], keeps: [] }, [id]),
  'a correction of a correction': correction(instead('correction', {})),
  'a correction to a withdrawal': correction(instead('withdrawal', { withdraws: id, why: '' })),
  'a correction to a bad reading': correction(instead('reading', { reads: -1 })),
  'a correction to nothing': fact('correction', { replaces: id, why: '' }, [id]),
  'a part without a serial': fact('part', { part_number: 'P-1', condition: 'unknown' }, [id]),
  'a fit to nothing': fact('part_fitted', {}, [id]),
  'a removal from nothing': fact('part_removed', { condition: 'unknown' }, [id]),
  'a scrapped part without proof': fact('part_scrapped', {}, [id]),
  'a rebuild without a document': fact('part_rebuilt', { document: '' }, [id]),
  'a directive without a number': fact('directive', { number: '', applies: 'unknown' }),
  'a directive of no item': fact('directive', { number: 'D 1', applies: 'unknown' }, [id]),
  'an approval without a reference': fact('alternative_means', { issuer: 'A', reference: '' }),
  'an approval of two calendars': fact('alternative_means', {
    issuer: 'A',
    reference: 'R',
    months: 1,
    days: 30,
  }),
  'wear without a unit': fact('wear', { value_thousandths: 1, unit: '' }),
  'wear below zero': fact('wear', { value_thousandths: -1, unit: 'mm' }),
  'a wear limit of no item': fact(
    'wear_limit',
    { limit_thousandths: 1, unit: 'mm', sense: 'at_most' },
    [id],
  ),
  'hours not counted by nobody': fact('meter_adjusted', {
    reason: 'dead',
    added_hours: 3600,
    reads: 0,
    source: '',
  }),
  'a factor below one': fact(
    'hours_factor',
    { operation: 'training', factor_thousandths: 999, source: 'L' },
    [id],
  ),
  'a factor without a source': fact(
    'hours_factor',
    { operation: 'training', factor_thousandths: 1500, source: '' },
    [id],
  ),
  'a list': [],
  'an empty value': null,
};

for (const [name, line] of Object.entries(good)) {
  test(`taken: ${name}`, () => {
    assert.ok(isLine(line), ajv.errorsText(isLine.errors));
  });
}

for (const [name, line] of Object.entries(bad)) {
  test(`refused: ${name}`, () => {
    assert.equal(isLine(line), false);
  });
}
