// Every page of the product, and the taps that lead there. Pictures and the rules for assistive
// technology go through this table: a later page is one row.
//
// `from`: what is there when the page is opened: nothing accepted yet ('first'), no aircraft
// ('none') or the invented fleet ('demo'). `hash`: after the address. `taps`: the way. `sign`: role
// and name of something that is there when the page has been reached. `screens`: of a long page
// that shows something else on each.

/** The day that stands still on the pages: some days after the last record of the fleet. */
export const now = '2026-11-25T10:00:00';

const tabTo = (name) => (page) => page.tap('tab', name);
const openAircraft = (registration) => (page) =>
  page.tap('button', new RegExp(`^${registration},`));

async function openPad(page) {
  await page.tap('tab', 'Log');
  await page.tap('button', /^ISLE-3/);
}

async function openParts(page) {
  await openAircraft('ISLE-3')(page);
  await page.tap('button', 'Parts: ISLE-3');
}

/** Adds a part on ISLE-3, or in what `host` names. */
async function addPart(page, { name, serial, hours, host }) {
  await page.tap('button', 'Add a part');
  await page.fill(/^Name of the part/, name);
  await page.fill('Part number', 'B-200');
  await page.fill('Serial number', serial);
  if (hours !== undefined) await page.fill(/^Time since new/, hours);
  if (host !== undefined) await page.tap('radio', host);
  await page.tap('button', 'Add a part');
  await page.sees('heading', 'ISLE-3: parts');
}

async function openGearbox(page) {
  await openParts(page);
  await addPart(page, { name: 'Main gearbox', serial: '0017', hours: '1234.5' });
  await page.tap('button', /^Main gearbox/);
}

const openPartForm = (button) => async (page) => {
  await openGearbox(page);
  await page.tap('button', button);
};

async function takeOff(page) {
  await openPartForm('Take it off')(page);
  await page.tap('button', 'Save');
  await page.sees('heading', 'Main gearbox, serial 0017');
}

export const pages = [
  { name: 'welcome', from: 'first', sign: ['button', 'I have read this'] },
  { name: 'empty_fleet', from: 'none', sign: ['button', 'Look at an invented fleet'] },
  {
    name: 'import_preview',
    from: 'none',
    taps: (page) => page.tap('button', 'Look at an invented fleet'),
    sign: ['button', 'Join it to mine'],
  },
  { name: 'fleet', from: 'demo', sign: ['button', /^ISLE-3,/] },
  {
    name: 'aircraft_hours_bind',
    from: 'demo',
    taps: openAircraft('ISLE-3'),
    sign: ['heading', 'ISLE-3'],
  },
  {
    name: 'aircraft_calendar_binds',
    from: 'demo',
    taps: openAircraft('ISLE-1'),
    sign: ['heading', 'ISLE-1'],
  },
  {
    name: 'aircraft_parked',
    from: 'demo',
    taps: openAircraft('ISLE-2'),
    sign: ['heading', 'ISLE-2'],
  },
  {
    name: 'why_sheet',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('link', /^Hours left/);
    },
    sign: ['heading', 'Hours left to overhaul'],
  },
  {
    name: 'checks',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', 'Search the checks');
    },
    sign: ['heading', 'ISLE-3: checks'],
  },
  {
    name: 'status',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-3')(page);
      await page.tap('button', /^Status/);
    },
    sign: ['heading', 'ISLE-3: status'],
  },
  {
    name: 'keys_sheet',
    from: 'demo',
    taps: async (page) => {
      await page.tap('tab', 'Files');
      await page.tap('button', 'Shortcut keys');
    },
    sign: ['heading', 'Shortcut keys'],
  },
  { name: 'log_choose', from: 'demo', taps: tabTo('Log'), sign: ['button', /^ISLE-3/] },
  {
    name: 'pad',
    from: 'demo',
    taps: async (page) => {
      await openPad(page);
      await page.digits('808.1');
    },
    sign: ['button', 'Save the reading'],
  },
  {
    name: 'pad_with_problem',
    from: 'demo',
    taps: async (page) => {
      await openPad(page);
      await page.digits('800.1');
    },
    sign: ['alert', /cannot fall/],
  },
  { name: 'history', from: 'demo', taps: tabTo('History'), sign: ['heading', 'History'] },
  {
    name: 'record_sheet',
    from: 'demo',
    taps: async (page) => {
      await page.tap('tab', 'History');
      await page.tap('button', /Reading 806.6 h/);
    },
    sign: ['button', 'Correct'],
  },
  { name: 'files', from: 'demo', taps: tabTo('Files'), sign: ['button', 'Export the journal'] },
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
    name: 'parts',
    from: 'demo',
    taps: async (page) => {
      await openParts(page);
      await addPart(page, { name: 'Main gearbox', serial: '0017', hours: '1234.5' });
      await addPart(page, { name: 'Bearing', serial: '0018', host: 'Main gearbox 0017' });
    },
    sign: ['button', /^Bearing/],
  },
  {
    name: 'part',
    from: 'demo',
    taps: async (page) => {
      await takeOff(page);
      await page.tap('button', 'Fit it');
      await page.tap('radio', 'ISLE-1');
      await page.tap('button', 'Save');
    },
    sign: ['button', /^The removal: ISLE-3/],
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
    sign: ['radio', /^62 Rotors/],
    screens: 3,
  },
  {
    name: 'specimen',
    from: 'none',
    hash: '#specimen',
    sign: ['heading', 'Specimen'],
    screens: 12,
  },
];

/** Opens a page of the table. `visit`: of a stage. */
export async function reach(visit, { from, hash = '', taps, sign }, options) {
  const fleet = from === 'first' ? undefined : from;
  const page = await visit({ fleet, hash, now, ...options });
  await taps?.(page);
  await page.sees(...sign);
  await page.settled();
  return page;
}
