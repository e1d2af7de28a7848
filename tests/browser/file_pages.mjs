// The forms of files: a part of the record, a locked file, rows out of tables. Rows of pages.mjs.
import { openMoney } from './page_taps.mjs';

const bytes = (text) => Buffer.from(text);

const readings = `Day,Hour meter,Landings
20/11/2026,812.4,1204
22/11/2026,813.9,1207
24/11/2026,"1,234",1209
30/11/2026,815.2,1210
`;

const parts = `P/N,S/N,Description,Position,TSN,TSO
X-100-2,4471,Invented swash plate,main,1204.5,204.5
X-210-1,118,Invented belt,,,
`;

const lock = `{"two_clocks_locked":1,"key":"PBKDF2-HMAC-SHA-256"}
AAAA
`;

/** Opens a form of tables and chooses a file for it. */
const withTable = (button, name, text) => async (page) => {
  await page.tap('tab', 'Files');
  await page.tap('button', button);
  await page.tap('radio', 'ISLE-1');
  await page.choose({ name, bytes: bytes(text) }, () => page.tap('button', 'Choose a file'));
};

const prices = `Article;Name;Price
K-1;Invented kit;12500.00
K-2;Invented seal;1.234
`;

export const filePages = [
  {
    name: 'form_price_table',
    from: 'demo',
    taps: async (page) => {
      await openMoney('ISLE-1')(page);
      await page.tap('button', 'A price list');
      await page.choose({ name: 'prices.csv', bytes: bytes(prices) }, () =>
        page.tap('button', 'Choose a file'),
      );
      await page.reads('paragraph', /^Row 3: /);
    },
    sign: ['radio', /^all but the rows/],
    screens: 3,
  },
  {
    name: 'form_share',
    from: 'demo',
    taps: async (page) => {
      await page.tap('tab', 'Files');
      await page.tap('button', 'Hand over a part, or locked');
      await page.tap('radio', /^ISLE-1/);
      await page.tap('radio', /^without prices/);
    },
    sign: ['textbox', /^Password/],
    screens: 2,
  },
  {
    name: 'form_unlock',
    from: 'none',
    taps: async (page) => {
      await page.tap('tab', 'Files');
      await page.choose({ name: 'ISLE-1-record-2026-11-25.locked', bytes: bytes(lock) }, () =>
        page.tap('button', 'Import a file'),
      );
    },
    sign: ['textbox', 'Password'],
  },
  {
    name: 'form_readings_table',
    from: 'demo',
    taps: async (page) => {
      await withTable('Readings from a table', 'readings.csv', readings)(page);
      await page.tap('radio', 'day, month, year');
    },
    sign: ['radio', /^all but the rows/],
    screens: 3,
  },
  {
    name: 'form_parts_table',
    from: 'demo',
    taps: withTable('Parts from a table', 'parts.csv', parts),
    sign: ['radio', /^all but the rows/],
    screens: 3,
  },
];
