// Every form, and the taps that lead there: rows of the table in pages.mjs.
import {
  addDirective,
  again,
  openAircraft,
  openPartForm,
  openParts,
  takeOff,
} from './page_taps.mjs';

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
    name: 'form_storage',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Put into storage');
    },
    sign: ['textbox', /^Document it is preserved by/],
  },
  {
    name: 'form_return',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Put into storage');
      await page.tap('button', 'Save');
      await again(page, 'ISLE-3');
      await page.tap('button', /^Return to service/);
    },
    sign: ['textbox', /^Work order or logbook page of the return/],
  },
  {
    name: 'form_adjust',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Hours the meter did not count');
    },
    sign: ['textbox', 'What the meter reads now'],
  },
  {
    name: 'form_flown_as',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Hours of a kind of flying');
    },
    sign: ['textbox', 'Hours flown'],
  },
  {
    name: 'form_factor',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'How fast that uses limits');
    },
    sign: ['textbox', 'One hour counts as'],
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
    name: 'form_directive',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Directive');
    },
    sign: ['textbox', /^What it asks for/],
    screens: 3,
  },
  {
    name: 'aircraft_directive',
    from: 'demo',
    taps: async (page) => {
      await addDirective(page);
      await again(page, 'ISLE-3');
      await page.key('End');
      await page.key('PageUp');
    },
    sign: ['button', 'Does it apply?: Mast check'],
  },
  {
    name: 'form_decide',
    from: 'demo',
    taps: async (page) => {
      await addDirective(page);
      await again(page, 'ISLE-3');
      await page.tap('button', 'Does it apply?: Mast check');
    },
    sign: ['textbox', /^Who decided/],
  },
  {
    name: 'form_means',
    from: 'demo',
    taps: async (page) => {
      await addDirective(page);
      await again(page, 'ISLE-3');
      await page.tap('button', 'Search the checks');
      await page.tap('button', 'Another approved way: Mast check');
    },
    sign: ['textbox', /^Approval/],
    screens: 2,
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
    sign: ['button', /^Fitted to/],
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
