// Rows for pages.mjs: the plan of an overhaul, its routes, the fleet, and their forms.
import { openPlan, openRoutes } from './page_taps.mjs';

export const planPages = [
  {
    name: 'plan_late',
    from: 'demo',
    taps: openPlan('ISLE-3'),
    sign: ['heading', /^Plan, ISLE-3/],
    screens: 3,
  },
  {
    name: 'plan_tasks',
    from: 'demo',
    async taps(page) {
      await openPlan('ISLE-1')(page);
      await page.tap('heading', 'All tasks');
    },
    sign: ['heading', 'All tasks'],
  },
  {
    name: 'plan_induction',
    from: 'demo',
    async taps(page) {
      await openPlan('ISLE-3')(page);
      await page.tap('heading', 'When to go in');
      await page.key('PageDown');
    },
    sign: ['link', /^Cheapest to go in on/],
  },
  {
    name: 'routes',
    from: 'demo',
    taps: openRoutes('ISLE-3'),
    sign: ['heading', 'ISLE-3: routes'],
    screens: 3,
  },
  {
    name: 'stagger',
    from: 'demo',
    async taps(page) {
      await page.tap('button', 'Who goes in when');
    },
    sign: ['heading', 'Who goes in when'],
  },
  {
    name: 'form_plan_task',
    from: 'demo',
    async taps(page) {
      await openPlan('ISLE-3')(page);
      await page.tap('button', 'Change or add a task');
    },
    sign: ['textbox', /^Days expected/],
  },
  {
    name: 'form_plan_step',
    from: 'demo',
    async taps(page) {
      await openPlan('ISLE-3')(page);
      await page.tap('button', 'Begun, promised or done');
    },
    sign: ['textbox', /^Promised for/],
  },
  {
    name: 'form_plan_terms',
    from: 'demo',
    async taps(page) {
      await openPlan('ISLE-3')(page);
      await page.tap('button', 'How sure to be, kit and cores');
    },
    sign: ['textbox', /^Days kept free/],
  },
  {
    name: 'form_closed',
    from: 'demo',
    async taps(page) {
      await openPlan('ISLE-3')(page);
      await page.tap('button', 'Closed days');
    },
    sign: ['textbox', /^Last closed day/],
  },
  {
    name: 'form_route',
    from: 'demo',
    async taps(page) {
      await openRoutes('ISLE-3')(page);
      await page.tap('button', /^Change it.*Shop of the example/);
    },
    sign: ['textbox', /^Name of the route/],
    screens: 2,
  },
  {
    name: 'plan_worth',
    from: 'demo',
    async taps(page) {
      await openPlan('ISLE-3')(page);
      await page.tap('button', 'What days and hours are worth');
      await page.fill(/^Earnings lost a day standing/, '900');
    },
    sign: ['button', 'Keep these figures'],
  },
  {
    name: 'form_fleet_bound',
    from: 'demo',
    async taps(page) {
      await page.tap('button', 'Who goes in when');
      await page.tap('button', 'How many may be out');
    },
    sign: ['textbox', /^Most of the fleet out at once/],
  },
  {
    name: 'form_plan_costs',
    from: 'demo',
    async taps(page) {
      await openPlan('ISLE-3')(page);
      await page.tap('button', 'What days and hours are worth');
      await page.fill(/^Earnings lost a day standing/, '900');
      await page.tap('button', 'Keep these figures');
    },
    sign: ['textbox', /^Earnings lost a day standing/],
  },
  {
    name: 'form_plan_kept',
    from: 'demo',
    async taps(page) {
      await openPlan('ISLE-3')(page);
      await page.tap('button', 'Keep as first plan');
    },
    sign: ['textbox', /^Back in service/],
  },
];
