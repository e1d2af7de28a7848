// Looks kept on this device (theme, text size). Never anything that changes a figure: that is a
// fact.

const prefix = 'two_clocks.look.';

/** @returns {[string, string][]} */
export function keptSettings() {
  try {
    return Object.keys(localStorage)
      .filter((key) => key.startsWith(prefix))
      .map((key) => [key.slice(prefix.length), localStorage.getItem(key) ?? '']);
  } catch {
    return []; // a browser may refuse; then looks are simply not remembered
  }
}

/** @param {string} name @param {string} value */
export function keepSetting(name, value) {
  show(name, value);
  try {
    localStorage.setItem(prefix + name, value);
  } catch {
    // not remembered
  }
}

/** What the page itself takes up: the colours of the real field and of the browser's bars. */
/** @param {string} name @param {string} value */
export function show(name, value) {
  const root = document.documentElement;
  if (name === 'text_size') root.style.setProperty('--text-size', String(Number(value) / 100));
  if (name !== 'theme') return;
  root.dataset['theme'] = value;
  const paper = getComputedStyle(root).getPropertyValue('--paper').trim();
  for (const element of document.querySelectorAll('meta[name=theme-color]')) {
    const meta = /** @type {HTMLMetaElement} */ (element);
    meta.dataset['system'] ??= meta.content;
    meta.content = value === 'system' ? meta.dataset['system'] : paper;
  }
}

const whole = 'two_clocks.whole';

/** A wish for the next load of this tab, kept no longer. */
export const forOneLoad = {
  /** Whether the load before this one wished for the whole program at once. */
  asked: taken(),

  /** False when this tab keeps nothing. */
  ask() {
    try {
      sessionStorage.setItem(whole, '1');
      return true;
    } catch {
      return false;
    }
  },
};

function taken() {
  try {
    const asked = sessionStorage.getItem(whole) !== null;
    sessionStorage.removeItem(whole);
    return asked;
  } catch {
    return false;
  }
}
