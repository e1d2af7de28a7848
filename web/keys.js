// Keys that are not typed into a field. Tab belongs to the mirror, whose focus the canvas follows.

/** In the order of Key in wasm/app.hpp; tab and back_tab are left to the browser. */
const numbers = /** @type {const} */ ({
  Enter: 0,
  ' ': 1,
  Escape: 2,
  ArrowUp: 5,
  ArrowDown: 6,
  PageUp: 7,
  PageDown: 8,
  Home: 9,
  End: 10,
  Backspace: 11,
});
/** Characters that are keys of the number pad or shortcuts; a capital means its small letter. */
const signs = '0123456789.,lae?';

/** @param {string} key @returns {key is keyof typeof numbers} */
const isOurs = (key) => key in numbers;

/**
 * @param {import('./bridge').App} app
 * @param {() => void} before
 */
export function listenToKeys(app, before) {
  window.addEventListener('keydown', (event) => {
    if (event.isComposing || event.ctrlKey || event.metaKey || event.altKey) return;
    const sign = event.key.length === 1 ? event.key.toLowerCase() : '';
    const typed = sign !== '' && signs.includes(sign);
    if (event.defaultPrevented || (!typed && !isOurs(event.key))) return;
    const target = /** @type {Element} */ (event.target);
    if (target.closest('#field, #trouble')) return;
    // A focused button of the mirror answers these two by itself.
    const focused = target.closest('#mirror [data-id]') !== null;
    if (focused && (event.key === 'Enter' || event.key === ' ')) return;
    event.preventDefault();
    before();
    // A comma is the decimal sign where people write one.
    if (typed) app.key((sign === ',' ? '.' : sign).charCodeAt(0));
    else if (isOurs(event.key)) app.key(numbers[event.key]);
  });
}
