// Rows for pages.mjs: the pages of a sale, and their forms.
import { openAircraft } from './page_taps.mjs';

/** The sale of an aircraft. */
export function openSale(registration) {
  return async (page) => {
    await openAircraft(registration)(page);
    await page.tap('button', /^Sale/);
  };
}

/** What is opened from it. */
function fromSale(button) {
  return async (page) => {
    await openSale('ISLE-1')(page);
    await page.tap('button', button);
  };
}

export const salePages = [
  {
    name: 'sale',
    from: 'demo',
    taps: openSale('ISLE-1'),
    sign: ['link', /^To reach a fresh overhaul: /],
    screens: 3,
  },
  {
    name: 'closing',
    from: 'demo',
    taps: fromSale(/^Closing list/),
    sign: ['heading', 'What the record does not say'],
  },
  {
    name: 'compare',
    from: 'demo',
    taps: fromSale('Compare for a sale'),
    sign: ['heading', 'Least to pay first'],
  },
  {
    name: 'form_item_price',
    from: 'demo',
    taps: fromSale('What an item costs'),
    sign: ['textbox', /^Each time/],
  },
  {
    name: 'form_closing',
    from: 'demo',
    async taps(page) {
      await fromSale(/^Closing list/)(page);
      await page.tap('button', 'A point');
    },
    sign: ['textbox', /^In words/],
  },
];
