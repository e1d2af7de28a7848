// What an invented overhaul costs: nothing in it is real, no price is anybody's.
import { readFileSync } from 'node:fs';
import { URL } from 'node:url';

const schema = JSON.parse(
  readFileSync(new URL('../../engine/facts/journal.schema.json', import.meta.url), 'utf8'),
);

/** Fields in the order of the file. */
function inOrder(fields) {
  const keys = Object.keys(schema.$defs.cost_line.properties).filter((key) => key in fields);
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
    book.add('cost_line', '2026-06-03', [aircraft], inOrder({ line_key, ...usual, ...said }));
}
