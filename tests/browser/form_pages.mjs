// Every form, and the taps that lead there: rows of the table in pages.mjs.
import { again, openAircraft, openPartForm, openParts, takeOff } from './page_taps.mjs';

export const formPages = [
  {
    name: 'form_new_aircraft',
    from: 'none',
    taps: (page) => page.tap('button', 'Add an aircraft'),
    sign: ['textbox', 'Registration'],
  },
  {
    name: 'form_event',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Something happened');
    },
    sign: ['textbox', /^What was seen/],
  },
  {
    name: 'aircraft_event',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Something happened');
      await page.tap('button', 'Save');
      await again(page, 'ISLE-3');
    },
    sign: ['button', /^Sign the inspection/],
  },
  {
    name: 'form_sign_event',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Something happened');
      await page.tap('button', 'Save');
      await page.tap('button', /^Sign the inspection/);
    },
    sign: ['textbox', /^Done by/],
  },
  {
    name: 'form_wear_limit',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Wear limit');
    },
    sign: ['textbox', 'Unit'],
  },
  {
    name: 'form_with_problems',
    from: 'none',
    taps: async (page) => {
      await page.tap('button', 'Add an aircraft');
      await page.tap('button', 'Add aircraft');
    },
    sign: ['alert'],
  },
  {
    name: 'form_new_item',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Add an item with a limit');
    },
    sign: ['button', 'More settings'],
    screens: 2,
  },
  {
    name: 'form_more_settings',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Add an item with a limit');
      await page.tap('button', 'More settings');
    },
    sign: ['button', 'Fewer settings'],
    screens: 6,
  },
  {
    name: 'form_change_limit',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Change limit: Overhaul');
    },
    sign: ['heading', 'Change this limit'],
    screens: 2,
  },
  {
    name: 'form_permit',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-2')(page);
      await page.tap('button', /^Permit past it/);
    },
    sign: ['textbox', 'Issued by'],
  },
  {
    name: 'form_new_part',
    from: 'demo',
    taps: async (page) => {
      await openParts(page);
      await page.tap('button', 'Add a part');
    },
    sign: ['textbox', 'Part number'],
    screens: 3,
  },
  {
    name: 'form_part_fit',
    from: 'demo',
    taps: async (page) => {
      await takeOff(page);
      await page.tap('button', 'Fit it');
    },
    sign: ['radio', 'ISLE-1'],
  },
  {
    name: 'form_part_remove',
    from: 'demo',
    taps: openPartForm('Take it off'),
    sign: ['textbox', /^Hours of what it is fitted to/],
  },
  {
    name: 'form_part_move',
    from: 'demo',
    taps: async (page) => {
      await takeOff(page);
      await page.tap('button', 'Move or lend it');
      await page.tap('button', 'Save');
    },
    sign: ['alert', /where it went/],
  },
  {
    name: 'form_part_work',
    from: 'demo',
    taps: openPartForm('Overhaul or other work'),
    sign: ['textbox', 'What was done'],
  },
  {
    name: 'form_template',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Take over from a type template');
      await page.tap('radio', /^Light piston/);
    },
    sign: ['radio', /^as shown: 50 h check/],
    screens: 3,
  },
];
