// Rows for pages.mjs: what an overhaul costs, and its forms.
import { openMoney, openUsualLines } from './page_taps.mjs';

/** The page anew, without the notice of the last save. */
async function again(page) {
  await page.back();
  await page.tap('button', /^Money/);
}

export const moneyPages = [
  {
    name: 'money',
    from: 'demo',
    taps: openMoney('ISLE-1'),
    sign: ['link', /^Net: /],
    screens: 3,
  },
  {
    name: 'money_routes',
    from: 'demo',
    async taps(page) {
      await openMoney('ISLE-3')(page);
      await page.tap('button', 'Start from the usual lines');
      await page.sees('heading', 'Line by line');
      await again(page);
    },
    sign: ['heading', 'What each way comes to'],
  },
  {
    name: 'money_nothing',
    from: 'demo',
    taps: openMoney('ISLE-4'),
    sign: ['button', 'Start from the usual lines'],
  },
  {
    name: 'form_cost_line',
    from: 'demo',
    async taps(page) {
      await openUsualLines('ISLE-4')(page);
      await page.tap('button', /^Labour, hours/);
    },
    sign: ['textbox', /^Price of one expected/],
  },
  {
    name: 'form_exchange_rate',
    from: 'demo',
    async taps(page) {
      await openMoney('ISLE-1')(page);
      await page.tap('button', 'A rate between currencies');
    },
    sign: ['textbox', /^Rate/],
  },
  {
    name: 'form_price_list',
    from: 'demo',
    async taps(page) {
      await openMoney('ISLE-1')(page);
      await page.tap('button', 'A price list');
    },
    sign: ['textbox', /^Price list/],
  },
  {
    name: 'form_cost_terms',
    from: 'demo',
    async taps(page) {
      await openMoney('ISLE-1')(page);
      await page.tap('button', 'How sums are made');
    },
    sign: ['textbox', /^Home currency/],
  },
];
