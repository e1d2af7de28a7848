// How the keyboard moves through the mirror, beyond what the browser does by itself.

/** @type {Record<string, number>} */
const steps = { ArrowUp: -1, ArrowLeft: -1, ArrowDown: 1, ArrowRight: 1 };

/** @param {Element} element @param {string} name @param {string | undefined} value */
export function setAttribute(element, name, value) {
  if (value === undefined) element.removeAttribute(name);
  else if (element.getAttribute(name) !== value) element.setAttribute(name, value);
}

/**
 * Arrows move among the items of a list, the choices and the tabs.
 * @param {HTMLElement} root @param {KeyboardEvent} event
 */
export function stepWithArrows(root, event) {
  const step = steps[event.key];
  const from = /** @type {Element} */ (event.target).closest('[data-id]');
  if (step === undefined || from === null) return;
  const kind = from.closest('li') ? 'li > [data-id]' : `[role=${from.getAttribute('role')}]`;
  if (!['li > [data-id]', '[role=radio]', '[role=tab]'].includes(kind)) return;
  const all = [...(from.closest('ul, [role=tablist]') ?? root).querySelectorAll(kind)];
  const next = all[all.indexOf(from) + step];
  if (!(next instanceof HTMLElement)) return;
  event.preventDefault();
  next.focus({ preventScroll: true });
}

/**
 * What Tab comes to from a field that was edited, whatever it is; nothing at the end.
 * @param {HTMLElement} root @param {string} id @param {number} step
 * @returns {HTMLElement | undefined}
 */
export function besideField(root, id, step) {
  const all = /** @type {HTMLElement[]} */ ([
    ...root.querySelectorAll('button, [role=textbox]'),
  ]).filter(
    (each) => each.getAttribute('tabindex') !== '-1' && each.closest('[inert], [hidden]') === null,
  );
  const here = all.findIndex((each) => each.dataset['id'] === id);
  return here < 0 ? undefined : all[here + step];
}

/** A long list is one stop for Tab: arrows move within it. @param {Element} list */
export function oneStop(list) {
  const items = /** @type {HTMLElement[]} */ ([
    ...list.querySelectorAll('li[aria-setsize] > button'),
  ]);
  const stop =
    items.find((item) => item === document.activeElement) ??
    items.find((item) => item.getAttribute('aria-current') === 'true') ??
    items.find((item) => item.dataset['out'] === undefined) ??
    items[0];
  for (const item of items) setAttribute(item, 'tabindex', item === stop ? undefined : '-1');
}
