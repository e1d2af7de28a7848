// Every page of the product, and the taps that lead there. Pictures and the rules for assistive
// technology go through this table: a later page is one row.
//
// `from`: what is there when the page is opened: nothing accepted yet ('first'), no aircraft
// ('none') or the invented fleet ('demo'). `hash`: after the address. `taps`: the way. `sign`: role
// and name of something that is there when the page has been reached. `screens`: of a long page
// that shows something else on each.

import { ann, ben, joinBoth, lookAt } from './disagreement.mjs';
import { formPages } from './form_pages.mjs';
import { moneyPages } from './money_pages.mjs';
import { filePages } from './file_pages.mjs';
import { salePages } from './sale_pages.mjs';
import { sumsPages } from './sums_pages.mjs';
import { planPages } from './plan_pages.mjs';
import {
  addAircraft,
  addPart,
  again,
  openAircraft,
  openPad,
  openParts,
  openSure,
  tabTo,
  takeOff,
} from './page_taps.mjs';

/** The day that stands still on the pages: some days after the last record of the fleet. */
export const now = '2026-11-25T10:00:00';

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
    name: 'aircraft_stored',
    from: 'demo',
    taps: openAircraft('ISLE-5'),
    sign: ['heading', 'ISLE-5'],
  },
  {
    name: 'sure',
    from: 'demo',
    taps: openSure('ISLE-1'),
    sign: ['heading', 'When each limit comes'],
    screens: 3,
  },
  {
    name: 'sure_tried',
    from: 'demo',
    async taps(page) {
      await openSure('ISLE-3')(page);
      for (const hours of ['25.0', '30.0', '35.0']) await page.tap('button', `More: ${hours} h`);
    },
    sign: ['button', 'Keep as the plan'],
  },
  {
    name: 'sure_paths',
    from: 'demo',
    async taps(page) {
      await openSure('ISLE-1')(page);
      await page.tap('heading', 'Calendar work, or the full overhaul');
    },
    sign: ['heading', 'Calendar work, or the full overhaul'],
  },
  {
    name: 'part_moved',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-5')(page);
      await page.tap('button', 'Parts: ISLE-5');
      await page.tap('button', /^Tail gearbox/);
    },
    sign: ['heading', 'Tail gearbox, serial TG-0117'],
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
    name: 'on_return',
    from: 'demo',
    taps: async (page) => {
      await openAircraft('ISLE-5')(page);
      await page.tap('button', /^On return/);
    },
    sign: ['heading', 'ISLE-5: on return'],
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
    name: 'import_disagrees',
    from: 'demo',
    taps: async (page) => {
      await lookAt(page, ann);
      await page.tap('button', 'Join it to mine');
      await lookAt(page, ben);
    },
    sign: ['button', 'Leave it out'],
    screens: 2,
  },
  {
    name: 'fleet_disagrees',
    from: 'demo',
    taps: async (page) => {
      await joinBoth(page);
      await page.tap('tab', 'Fleet');
    },
    sign: ['button', /open question/],
  },
  {
    name: 'fleet_without_copy',
    from: 'none',
    taps: async (page) => {
      await addAircraft(page);
      await page.window.holdDay('2026-12-20T10:00:00');
      await page.reload();
    },
    sign: ['button', 'Export the journal'],
  },
  {
    name: 'aircraft_disagrees',
    from: 'demo',
    taps: async (page) => {
      await joinBoth(page);
      await page.tap('tab', 'Fleet');
      await openAircraft('ISLE-1')(page);
    },
    sign: ['heading', 'Open questions'],
    screens: 2,
  },
  {
    name: 'status_disagrees',
    from: 'demo',
    taps: async (page) => {
      await joinBoth(page);
      await page.tap('tab', 'Fleet');
      await openAircraft('ISLE-1')(page);
      await page.tap('button', 'Status: ISLE-1');
    },
    sign: ['heading', 'ISLE-1: status'],
  },
  {
    name: 'parts',
    from: 'demo',
    taps: async (page) => {
      await openParts(page);
      await addPart(page, { name: 'Main gearbox', serial: '0017', hours: '1234.5' });
      await addPart(page, { name: 'Bearing', serial: '0018', host: 'Main gearbox 0017' });
      await again(page, 'ISLE-3');
      await page.tap('button', 'Parts: ISLE-3');
    },
    sign: ['button', /^Bearing/],
  },
  {
    name: 'part',
    from: 'demo',
    taps: async (page) => {
      await takeOff(page);
      await page.tap('button', 'Fit it');
      await page.tap('button', /^Fitted to/);
      await page.tap('radio', 'ISLE-1');
      await page.tap('button', 'Save');
      await again(page, 'ISLE-1');
      await page.tap('button', 'Parts: ISLE-1');
      await page.tap('button', /^Main gearbox/);
    },
    sign: ['button', /^The removal: ISLE-3/],
    screens: 2,
  },
  {
    name: 'specimen',
    from: 'none',
    hash: '#specimen',
    sign: ['heading', 'Specimen'],
    screens: 12,
  },
  ...planPages,
  ...moneyPages,
  ...sumsPages,
  ...salePages,
  ...filePages,
  ...formPages,
];

/** What the browser of somebody has kept who made the same first steps, for each kind of visit. */
const kept_of = new WeakMap();

/** A visit that has a fleet. The steps to it are made once, and kept for those who come later. */
async function withFleet(visit, { fleet, ...options }) {
  if (!kept_of.has(visit)) kept_of.set(visit, new Map());
  const kept = kept_of.get(visit);
  if (!kept.has(fleet)) {
    const first = await visit({ fleet, ...options });
    kept.set(fleet, await first.window.kept());
    await first.close();
  }
  return visit({ ...options, storageState: kept.get(fleet) });
}

/** Opens a page of the table. `visit`: of a stage. */
export async function reach(visit, { from, hash = '', taps, sign }, options) {
  const asked = { hash, now, ...options };
  const page =
    from === 'first' ? await visit(asked) : await withFleet(visit, { fleet: from, ...asked });
  await taps?.(page);
  await page.sees(...sign);
  await page.settled();
  return page;
}
