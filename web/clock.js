// The only clock of the page. Everybody else is told the day, the time and when to give up waiting.

const day_ms = 86_400_000;

/** Number of today's day by the device's own calendar, 1970-01-01 being 0. */
export function todayDayNumber() {
  const now = new Date();
  return Date.UTC(now.getFullYear(), now.getMonth(), now.getDate()) / day_ms;
}

/** Wall time in milliseconds since 1970. */
export function wallMs() {
  return Date.now();
}

/**
 * Calls back once after a while, unless cancelled.
 * @param {number} delay_ms
 * @param {() => void} then
 * @returns {() => void} cancels
 */
export function after(delay_ms, then) {
  const timer = setTimeout(then, delay_ms);
  return () => clearTimeout(timer);
}
