// Ways to the pages of the table, as a person taps them.

export const tabTo = (name) => (page) => page.tap('tab', name);
export const openAircraft = (registration) => (page) =>
  page.tap('button', new RegExp(`^${registration},`));

/** The page that says how sure the date of an aircraft is. */
export const openSure = (registration) => async (page) => {
  await openAircraft(registration)(page);
  await page.tap('button', /^How sure is the date\?/);
};

/** The plan of the overhaul of an aircraft. */
export const openPlan = (registration) => async (page) => {
  await openAircraft(registration)(page);
  await page.tap('button', /^Plan the overhaul/);
};

/** The routes of that overhaul, side by side. */
export const openRoutes = (registration) => async (page) => {
  await openPlan(registration)(page);
  await page.tap('button', 'Routes');
};

/** What the overhaul of an aircraft costs. */
export const openMoney = (registration) => async (page) => {
  await openAircraft(registration)(page);
  await page.tap('button', /^Money/);
};

/** The same, begun from the usual lines. */
export const openUsualLines = (registration) => async (page) => {
  await openMoney(registration)(page);
  await page.tap('button', 'Start from the usual lines');
  await page.sees('heading', 'Line by line');
};

export async function openPad(page) {
  await page.tap('tab', 'Log');
  await page.tap('button', /^ISLE-3/);
}

export async function openParts(page) {
  await openAircraft('ISLE-3')(page);
  await page.tap('button', 'Parts: ISLE-3');
}

/** Adds a part on ISLE-3, or in what `host` names. */
export async function addPart(page, { name, serial, hours, host }) {
  await page.tap('button', 'Add a part');
  await page.fill(/^Name of the part/, name);
  await page.fill('Part number', 'B-200');
  await page.fill('Serial number', serial);
  if (hours !== undefined) await page.fill(/^Time since new/, hours);
  if (host !== undefined) {
    await page.tap('button', /^Fitted to/);
    await page.tap('radio', host);
  }
  await page.tap('button', 'Add a part');
  await page.sees('heading', 'ISLE-3: parts');
}

export async function openGearbox(page) {
  await openParts(page);
  await addPart(page, { name: 'Main gearbox', serial: '0017', hours: '1234.5' });
  await page.tap('button', /^Main gearbox/);
}

export const openPartForm = (button) => async (page) => {
  await openGearbox(page);
  await page.tap('button', button);
};

export async function takeOff(page) {
  await openPartForm('Take it off')(page);
  await page.tap('button', 'Save');
  await page.sees('heading', 'Main gearbox, serial 0017');
}

/** Opens an aircraft anew, from its top and without what was said after a save. */
export async function again(page, registration) {
  await page.tap('tab', 'Files');
  await page.tap('tab', 'Fleet');
  await openAircraft(registration)(page);
  await page.key('Home'); // a page keeps where it was left, and how far a finger drags it may vary
}

/** A directive on ISLE-3 that nobody has decided on. */
export async function addDirective(page) {
  await openAircraft('ISLE-3')(page);
  await page.tap('button', 'Directive');
  await page.fill(/^Number/, 'D 9');
  await page.fill(/^What it asks for/, 'Mast check');
  await page.fill(/^Every so many hours/, '100');
  await page.tap('button', 'Save');
}

/** The day so many days ago, as a date field holds it. */
function daysAgo(visit, days) {
  return visit.run((back) => {
    const day = new Date();
    day.setDate(day.getDate() - back);
    const two = (number) => String(number).padStart(2, '0');
    return `${day.getFullYear()}-${two(day.getMonth() + 1)}-${two(day.getDate())}`;
  }, days);
}

/** Adds the aircraft of the story: 2,200 h or 12 years, new ten years ago, flown 100 h a year. */
export async function addAircraft(visit) {
  await visit.tap('button', 'Add an aircraft');
  await visit.fill('Registration', 'TEST-1');
  await visit.fill(/^Overhaul at hours/, '2200');
  await visit.fill(/^Overhaul at years/, '12');
  await visit.fill('Day of manufacture or last overhaul', await daysAgo(visit, 3650));
  await visit.fill('Hour meter reads now', '1000.0');
  await visit.fill(/^Hours you fly in a year/, '100');
  await visit.tap('button', 'Add aircraft');
  await visit.sees('heading', 'TEST-1');
}
