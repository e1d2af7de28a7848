// Rows for pages.mjs: cores, cash and the reserve, and their forms.
import { openMoney } from './page_taps.mjs';

/** One of the three pages of an aircraft. */
function openSums(registration, button) {
  return async (page) => {
    await openMoney(registration)(page);
    await page.tap('button', new RegExp(`^${button}`));
  };
}

/** A form that is opened from one of them. */
function openForm(button, form) {
  return async (page) => {
    await openSums('ISLE-1', button)(page);
    await page.tap('button', form);
  };
}

export const sumsPages = [
  {
    name: 'cores',
    from: 'demo',
    taps: openSums('ISLE-1', 'Cores'),
    sign: ['link', /^Counted on: /],
    screens: 3,
  },
  {
    name: 'cores_nothing',
    from: 'demo',
    taps: openSums('ISLE-4', 'Cores'),
    sign: ['button', 'A core'],
  },
  {
    name: 'cash',
    from: 'demo',
    taps: openSums('ISLE-1', 'Cash'),
    sign: ['link', /^Lowest: /],
    screens: 3,
  },
  {
    name: 'reserve',
    from: 'demo',
    taps: openSums('ISLE-1', 'Reserve'),
    sign: ['link', /^Short by /],
    screens: 2,
  },
  {
    name: 'form_core',
    from: 'demo',
    taps: openForm('Cores', 'A core'),
    sign: ['textbox', /^What it is called/],
  },
  {
    name: 'form_core_step',
    from: 'demo',
    async taps(page) {
      await openSums('ISLE-1', 'Cores')(page);
      await page.tap('button', /^Main gearbox/);
    },
    sign: ['textbox', /^Consignment/],
  },
  {
    name: 'form_pay_term',
    from: 'demo',
    taps: openForm('Cash', 'A share of a price'),
    sign: ['textbox', /^Share, per cent/],
  },
  {
    name: 'form_payment',
    from: 'demo',
    taps: openForm('Cash', 'A payment'),
    sign: ['textbox', /^Amount/],
  },
  {
    name: 'form_balance',
    from: 'demo',
    taps: openForm('Reserve', 'What is in an account'),
    sign: ['textbox', /^Account/],
  },
  {
    name: 'form_reserve_terms',
    from: 'demo',
    taps: openForm('Reserve', 'What is set aside'),
    sign: ['textbox', /^For each hour flown/],
  },
  {
    name: 'form_holder',
    from: 'demo',
    taps: openForm('Reserve', 'A share in the aircraft'),
    sign: ['textbox', /^Who/],
  },
];
