// What is handed over, read by programs that are not ours: calendar files by npm ical.js and
// node-ical, tables by papaparse and csv-parse, papers by html-validate. Two of a kind must agree
// with each other first.
import assert from 'node:assert/strict';
import { execFileSync } from 'node:child_process';
import { test } from 'node:test';
import { fileURLToPath } from 'node:url';
import { need } from '../support/packages.mjs';

const ical = need('ical.js').default ?? need('ical.js');
const nodeIcal = need('node-ical');
const papa = need('papaparse');
const { parse: parseCsv } = need('csv-parse/sync');
const { HtmlValidate } = need('html-validate');

const path = (name) => fileURLToPath(new URL(`../../${name}`, import.meta.url));
const pages = [
  'status',
  'due',
  'work',
  'history',
  'parts',
  'plan',
  'routes',
  'money',
  'cores',
  'cash',
  'reserve',
  'sale',
  'closing',
  'fleet',
  'order',
  'compare',
];

/** One page of ISLE-1 of the invented fleet. */
function reported(form, page) {
  const words = [path('demo/fleet.jsonl'), '--today', '2026-11-25', form, page, 'ISLE-1'];
  return execFileSync(path('build/report'), words, { encoding: 'utf8' });
}

test('two calendar programs read the same whole days with an alarm each', () => {
  const text = reported('--paper', 'days');
  const events = new ical.Component(ical.parse(text)).getAllSubcomponents('vevent');
  assert.ok(events.length >= 5);
  const theirs = Object.values(nodeIcal.sync.parseICS(text)).filter(
    (each) => each.type === 'VEVENT',
  );
  assert.equal(theirs.length, events.length);
  const names = new Set();
  for (const component of events) {
    const event = new ical.Event(component);
    const same = theirs.find((each) => each.uid === event.uid);
    assert.equal(same.summary, event.summary);
    assert.equal(same.description, event.description);
    assert.ok(event.startDate.isDate);
    assert.equal(same.datetype, 'date');
    const begin = event.startDate.toJSDate();
    assert.equal(same.start.getTime(), begin.getTime());
    // The end is the day after, and does not belong to it.
    assert.equal(event.endDate.subtractDate(event.startDate).toSeconds(), 86_400);
    assert.equal(component.getAllSubcomponents('valarm').length, 1);
    assert.ok(component.getFirstPropertyValue('sequence') > 900);
    names.add(event.uid);
  }
  assert.equal(names.size, events.length);
});

test('two table programs read the same cells, and none begins a formula', () => {
  for (const page of pages) {
    const text = reported('--table', page);
    const first = papa.parse(text, { skipEmptyLines: true });
    assert.deepEqual(
      first.errors.filter(({ code }) => code !== 'UndetectableDelimiter'),
      [],
    );
    const second = parseCsv(text, { relax_column_count: true, skip_empty_lines: true });
    assert.deepEqual(first.data, second);
    if (page !== 'closing') assert.ok(second.length > 2, page);
    for (const cell of second.flat())
      assert.doesNotMatch(cell, /^[=@\t\r]|^[+-](?![\d.,]+(\u00a0[A-Z]{3})?$)/, `${page}: ${cell}`);
  }
});

test('papers are valid, fetch nothing and run nothing', async () => {
  const validator = new HtmlValidate({
    extends: ['html-validate:standard'],
    rules: { 'no-inline-style': 'off' },
  });
  for (const page of pages) {
    const text = reported('--paper', page);
    const report = await validator.validateString(text);
    const faults = report.results.flatMap(({ messages }) =>
      messages.map(({ ruleId, message, line }) => `${page}:${line} ${ruleId} ${message}`),
    );
    assert.deepEqual(faults, []);
    assert.doesNotMatch(text, /<script|https?:|src=|@import|url\(/);
    assert.match(text, /Invented example/);
    assert.match(text, /A licensed person decides airworthiness/);
  }
});
