// A part of the record goes from one browser to another, locked, and rows come out of a table: by
// taps on a phone.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { open } from './driver.mjs';
import { addAircraft, openMoney } from './page_taps.mjs';
import { now } from './pages.mjs';

const kinds = (text) =>
  text
    .trimEnd()
    .split('\n')
    .slice(1)
    .map((line) => JSON.parse(line));

test('one aircraft without money goes over locked, and opens with its password', async () => {
  const page = await open('chromium', { size: 'phone', fleet: 'demo', now });
  await page.tap('tab', 'Files');
  await page.tap('button', 'Hand over a part, or locked');
  await page.tap('radio', /^ISLE-4/);
  await page.tap('radio', /^without prices/);
  await page.tap('radio', 'without them');
  await page.fill(/^Password/, 'four words are good');
  assert.equal((await page.sees('textbox', /^Password/)).text, '19 characters');
  await page.fill(/^The password once more/, 'four words are good');
  const file = await page.download(() => page.tap('button', 'Make the file'));
  assert.match(file.name, /^ISLE-4-record-2026-11-25\.(locked|txt)/);
  assert.match(file.bytes.toString(), /^\{"two_clocks_locked":1,/);
  assert.doesNotMatch(file.bytes.toString(), /ISLE-4/);
  await page.sees('heading', 'Files');

  const other = await open('chromium', { size: 'phone', fleet: 'none', now });
  await other.tap('tab', 'Files');
  await other.choose(file, () => other.tap('button', 'Import a file'));
  await other.sees('heading', 'This file is locked');
  await other.fill(/^Password/, 'four words are bad');
  await other.tap('button', 'Open it');
  await other.reads('alert', /does not open with that password/);
  await other.fill(/^Password/, 'four words are good');
  await other.tap('button', 'Open it');
  await other.reads('paragraph', 'New aircraft: ISLE-4');
  await other.tap('button', 'Join it to mine');
  await other.tap('tab', 'Fleet');
  await other.tap('button', /^ISLE-4/);
  await other.tap('tab', 'Files');
  const { bytes } = await other.download(() => other.tap('button', 'Export the journal'));
  const records = kinds(bytes.toString());
  assert.ok(records.length > 50);
  assert.ok(records.every(({ by }) => by === undefined || by === ''));
  assert.doesNotMatch(bytes.toString(), / EUR"| USD"/);
  assert.deepEqual(other.faults, []);
});

test('readings come out of a table, and the rows that cannot say why', async () => {
  const page = await open('chromium', { size: 'phone', fleet: 'none', now });
  await page.tap('tab', 'Fleet');
  await addAircraft(page);
  await page.tap('tab', 'Files');
  await page.tap('button', 'Readings from a table');
  const table = 'Date;Hours\r\n3.4.2099;1005,0\r\n25.11.2026;1002,5\r\n';
  await page.choose({ name: 'book.csv', bytes: Buffer.from(table) }, () =>
    page.tap('button', 'Choose a file'),
  );
  await page.tap('button', 'Save');
  await page.reads('alert', /can be read two ways/);
  await page.tap('radio', 'day, month, year');
  await page.reads('paragraph', 'Row 2: 3 Apr 2099 lies in the future.');
  await page.tap('radio', /^all but the rows/);
  await page.tap('button', 'Save');
  await page.reads('status', 'Saved: 1 record.');
  await page.tap('tab', 'Fleet');
  await page.tap('button', /^TEST-1/);
  await page.sees('link', 'Hours left: 1,197.5 h. Why?'); // 2,200 - 1,002.5: worked by hand
  assert.deepEqual(page.faults, []);
});

test('a page is printed as its paper: the same words, nothing of the screen', async () => {
  const page = await open('chromium', { size: 'laptop', fleet: 'demo', now });
  await page.run(() => {
    window.printed = 0;
    window.print = () => {
      window.printed += 1;
    };
  });
  const print = async (name, times) => {
    await page.tap('button', name);
    await page.until('the printer', () => page.run((asked) => window.printed === asked, times));
  };
  await page.page.emulateMedia({ colorScheme: 'dark' });
  await page.tap('button', /^ISLE-3,/);
  await page.tap('button', /^Status/);
  const file = await page.download(() => page.tap('button', 'As a paper: ISLE-3'));
  await print('Print: ISLE-3', 1);
  assert.equal(`${await page.page.title()}.html`, file.name);
  const words = (text) => text.replaceAll(/\s+/g, ' ').trim();
  const printed = await page.run(() => document.getElementById('sheet').textContent);
  const body = file.bytes.toString().replace(/^.*<body>/s, '');
  const plain = body
    .replaceAll(/<[^>]*>/g, '')
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>');
  assert.equal(words(printed), words(plain.replaceAll('&quot;', '"').replaceAll('&amp;', '&')));
  // On paper, and in the colours of paper, whatever the screen wears.
  await page.page.emulateMedia({ media: 'print' });
  const worn = await page.run(() => {
    const style = (element) => getComputedStyle(element);
    return {
      shown: ['canvas', 'mirror', 'sheet'].map((id) => style(document.getElementById(id)).display),
      grounds: [document.documentElement, document.body].map((of) => style(of).backgroundColor),
      title: style(document.querySelector('#sheet h1')).fontSize,
    };
  });
  assert.deepEqual(worn.shown, ['none', 'none', 'block']);
  assert.deepEqual(worn.grounds, ['rgb(255, 255, 255)', 'rgb(255, 255, 255)']);
  assert.equal(Math.round(parseFloat(worn.title)), 27); // 20 points, by the rules of the paper
  await page.page.emulateMedia({ media: null });
  // Whatever the person does next takes it away; and a second print is a second one.
  await page.tap('tab', 'History');
  assert.equal(await page.run(() => document.getElementById('sheet')), null);
  assert.equal(await page.page.title(), 'Two Clocks');
  await page.tap('tab', 'Fleet');
  await openMoney('ISLE-1')(page);
  await print('Print: ISLE-1', 2);
  const pdf = await page.page.pdf({ preferCSSPageSize: true });
  const sheets = pdf.toString('latin1').match(/\/Type \/Page\b/g).length;
  assert.ok(sheets > 1, `the estimate on ${sheets} sheet`);
  assert.deepEqual(page.faults, []);
});
