// What an invented overhaul costs: nothing in it is real, no price is anybody's.
import { readFileSync } from 'node:fs';
import { URL } from 'node:url';

const schema = JSON.parse(
  readFileSync(new URL('../../engine/facts/journal.schema.json', import.meta.url), 'utf8'),
);

/** Fields of a kind in the order of the file. */
function inOrder(kind, fields) {
  const keys = Object.keys(schema.$defs[kind].properties).filter((key) => key in fields);
  return Object.fromEntries(keys.map((key) => [key, fields[key]]));
}

const hours = (count) => count * 1000; // quantities are recorded in thousandths

const lists = [
  ['2026-01-12', 'K-22\t161900.00 USD\tKit of the example\nK-22C\t38600.00 USD\tCalendar kit\n'],
  ['2026-06-01', 'K-22\t168400.00 USD\tKit of the example\nK-22C\t39900.00 USD\tCalendar kit\n'],
];

const back = { tax: 'recoverable', tax_permille: 200 };
const usual = { cost_for: 'either', duty_relief: 'none', taken: 'counted' };
const kit = {
  cost_group: 'kit',
  tax: 'reverse_charge',
  duty_permille: 27,
  duty_relief: 'processing',
  relief_until: '2031-12-31',
  relief_terms: 'the old parts go back within two years',
  at_shipment: true,
  price_list: 'Kits of the example',
  said_by: 'Works of the example',
};
const shop = { ...back, price: '88.50 EUR', said_by: 'Shop of the example' };
const engine = { cost_group: 'engine', cost_for: 'overhaul', one_of: 'Engine', ...back };

/** In the order of the file: key, and what is said of it. */
const lines = [
  ['kit', { ...kit, line_name: 'Overhaul kit', cost_for: 'overhaul', article: 'K-22' }],
  [
    'kit_calendar',
    { ...kit, line_name: 'Calendar kit', cost_for: 'calendar_work', article: 'K-22C' },
  ],
  [
    'labour',
    {
      line_name: 'Labour, hours',
      cost_group: 'labour',
      cost_for: 'overhaul',
      low_quantity_thousandths: hours(220),
      quantity_thousandths: hours(240),
      high_quantity_thousandths: hours(320),
      ...shop,
    },
  ],
  [
    'labour_calendar',
    {
      line_name: 'Calendar work, hours',
      cost_group: 'labour',
      cost_for: 'calendar_work',
      low_quantity_thousandths: hours(110),
      quantity_thousandths: hours(130),
      high_quantity_thousandths: hours(190),
      ...shop,
    },
  ],
  [
    'engine_own',
    {
      ...engine,
      line_name: 'Own engine, overhauled',
      low_price: '43500.00 EUR',
      price: '49000.00 EUR',
      high_price: '66000.00 EUR',
      taken: 'chosen',
    },
  ],
  [
    'engine_exchange',
    { ...engine, line_name: 'Exchange engine', price: '81500.00 USD', taken: 'offered' },
  ],
  [
    'findings',
    {
      line_name: 'Findings',
      cost_group: 'findings',
      low_price: '5000.00 EUR',
      price: '13000.00 EUR',
      high_price: '36000.00 EUR',
      ...back,
    },
  ],
  [
    'frame',
    {
      line_name: 'Frame finish',
      cost_group: 'frame',
      cost_for: 'overhaul',
      low_price: '6800.00 EUR',
      price: '7600.00 EUR',
      high_price: '9900.00 EUR',
      ...back,
    },
  ],
  [
    'interior',
    {
      line_name: 'New interior',
      cost_group: 'interior',
      price: '9450.00 EUR',
      taken: 'offered',
      removed_grams: 3400,
      added_days: 4,
      ...back,
    },
  ],
  [
    'freight',
    {
      line_name: 'Freight of the kit',
      cost_group: 'freight',
      low_price: '1900.00 USD',
      price: '2300.00 USD',
      high_price: '3500.00 USD',
      tax: 'none',
    },
  ],
  ['cover', { line_name: 'Hull cover', cost_group: 'cover', price: '2950.00 EUR', tax: 'none' }],
];

const core = {
  kit: 'Kit of the example',
  part_permille: 350,
  nothing_permille: 150,
  billed_permille: 50,
  returns_from: 'shipment',
  return_days: 120,
  credit_days: 90,
  log_card: true,
  tax: 'none',
  duty_relief: 'processing',
  export_by: '2032-06-30',
  said_by: 'Works of the example',
};

/** Key, name, part numbers, then charge, full credit, part of it and bill in dollars. */
const cores = [
  ['main_gearbox', 'Main gearbox', 'MG-2, MG-2A', 24000, 19500, 9200, 1800],
  ['tail_gearbox', 'Tail gearbox', 'TG-1', 7800, 6200, 2900, 600],
  ['swashplate', 'Swashplate', 'SW-4', 5400, 4300, 2000, 400],
  ['clutch', 'Clutch', 'CL-2', 4100, 3200, 1500, 300],
];

const usd = (whole) => `${whole}.00 USD`;

const terms = [
  [
    'kit_deposit',
    { term_name: 'deposit', cost_group: 'kit', share_permille: 300, paid_at: 'order' },
  ],
  ['kit_rest', { term_name: 'rest', cost_group: 'kit', share_permille: 700, paid_at: 'shipment' }],
  [
    'labour_half',
    { term_name: 'on arrival', cost_group: 'labour', share_permille: 500, paid_at: 'stop' },
  ],
];

const balances = [
  ['2024-01-02', '41000.00 EUR'],
  ['2025-01-02', '58500.00 EUR'],
  ['2026-11-02', '74250.00 EUR'],
];

/** Cores, terms of payment, the reserve and whose it is. */
function cash(book, aircraft) {
  for (const [core_key, core_name, part_numbers, charge, best, part, bill] of cores)
    book.add(
      'core',
      '2026-06-03',
      [aircraft],
      inOrder('core', {
        core_key,
        core_name,
        part_numbers,
        core_charge: usd(charge),
        best_credit: usd(best),
        part_credit: usd(part),
        core_bill: usd(bill),
        ...core,
      }),
    );
  book.add(
    'core',
    '2026-06-03',
    [aircraft],
    inOrder('core', {
      core_key: 'blades',
      core_name: 'Main rotor blades',
      returns_from: 'release',
      destroy: true,
      tax: 'none',
      duty_relief: 'none',
      said_by: 'Works of the example',
    }),
  );
  for (const [term_key, said] of terms)
    book.add('pay_term', '2026-06-03', [aircraft], inOrder('pay_term', { term_key, ...said }));
  for (const [on, amount] of balances)
    book.add('balance', on, [aircraft], {
      account: 'Overhaul account',
      amount,
      held_by: 'Bank of the example',
    });
  book.add('reserve_terms', '2026-06-03', [aircraft], {
    per_hour: '45.00 EUR',
    interest_permille: 20,
  });
  for (const [holder, share_permille] of [
    ['Harbour flights of the example', 600],
    ['Owner of the example', 400],
  ])
    book.add('holder', '2026-06-03', [aircraft], { holder, holder_role: 'owner', share_permille });
  book.add('plan_costs', '2026-06-03', [aircraft], {
    lost_day: '420.00 EUR',
    saved_day: '95.00 EUR',
    interest_permille: 35,
  });
}

/** The estimate of one aircraft: lists, rates, terms and lines. */
export function estimate(book, aircraft) {
  for (const [on, list_rows] of lists)
    book.add('price_list', on, [aircraft], { price_list: 'Kits of the example', list_rows });
  book.add('exchange_rate', '2026-06-02', [aircraft], {
    rate_from: 'USD',
    rate_to: 'EUR',
    rate: '0.9174',
    said_by: 'Bank of the example',
  });
  book.add('cost_terms', '2026-06-02', [aircraft], {
    home_currency: 'EUR',
    linked_permille: 500,
    kit_rise_permille: 40,
    labour_rise_permille: 30,
    engine_rise_permille: 30,
    tax_round: 'half_up',
    rate_days: 365,
  });
  for (const [line_key, said] of lines)
    book.add(
      'cost_line',
      '2026-06-03',
      [aircraft],
      inOrder('cost_line', { line_key, ...usual, ...said }),
    );
  cash(book, aircraft);
}
