// A paper on the printer: its words stand in the page while the browser prints, and are seen only
// there.

const printing = 'data-printing';

/** Words and rules of a paper, out of the file that the program makes of it. */
const policy = /** @type {any} */ (window).trustedTypes?.createPolicy('two-clocks-paper', {
  // Our own program wrote it and made every sign in it harmless; nothing in it is ever run.
  createHTML: (/** @type {string} */ text) => text,
});

/** Takes the last paper out of the page. */
let takeAway = () => {};

/** @param {string} html */
function read(html) {
  // The page lets no rule in that stands in a text: they are taken out, and come in as an object.
  let said = '';
  const words = html.replace(/<style>([^]*?)<\/style>/, (_, found) => {
    said = found;
    return '';
  });
  const parsed = new DOMParser().parseFromString(policy?.createHTML(words) ?? words, 'text/html');
  const rules = new CSSStyleSheet();
  rules.replaceSync(`@media print{${said}}`);
  const sheet = document.createElement('article');
  sheet.id = 'sheet';
  sheet.append(...parsed.body.childNodes);
  return { rules, sheet };
}

/**
 * Puts a paper in the place of the page for whoever prints it. The name stands for the page
 * meanwhile: it becomes that of a file where the person keeps one.
 * @param {string} name @param {string} html
 */
function putIn(name, html) {
  takeAway();
  const { rules, sheet } = read(html);
  const { title, activeElement, adoptedStyleSheets } = document;
  document.adoptedStyleSheets = [...adoptedStyleSheets, rules];
  document.body.append(sheet);
  document.documentElement.setAttribute(printing, '');
  document.title = name;
  takeAway = () => {
    takeAway = () => {};
    document.title = title;
    document.documentElement.removeAttribute(printing);
    document.adoptedStyleSheets = adoptedStyleSheets;
    sheet.remove();
    // What is not shown on the paper lost the keyboard to it.
    if (activeElement instanceof HTMLElement) activeElement.focus({ preventScroll: true });
  };
}

// Some systems say that printing is over as soon as they have opened it, and lay the sheet out
// after that: it stays until the person does something else with the page.
for (const kind of ['pointerdown', 'keydown'])
  window.addEventListener(kind, () => takeAway(), { capture: true });

/**
 * Opens the browser's printing with a paper. Where there is none, false.
 * @param {string} name @param {string} html
 */
export function printPaper(name, html) {
  putIn(name, html);
  try {
    window.print();
    return true;
  } catch {
    takeAway();
    return false;
  }
}
