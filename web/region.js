// How this person writes numbers and days, taken from the browser's language settings. Looks only.

/** Order of a date's parts, as the engine counts them. */
const orders = { day: 0, month: 1, year: 2 };

/**
 * @param {string | undefined} locale undefined: the browser's own
 * @returns {{ decimal: string, group: string, order: number }}
 */
export function regionOf(locale) {
  const number = new Intl.NumberFormat(locale).formatToParts(1234567.5);
  const date = new Intl.DateTimeFormat(locale, {
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
  }).formatToParts();
  /** @param {string} type */
  const sign = (type) => number.find((part) => part.type === type)?.value ?? '';
  const first = date.find((part) => part.type in orders)?.type ?? 'day';
  return {
    decimal: sign('decimal') || '.',
    group: sign('group'),
    order: orders[/** @type {keyof typeof orders} */ (first)],
  };
}
