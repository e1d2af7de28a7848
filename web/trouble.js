// A plain panel of the document for when the canvas cannot speak: no WebGL, no storage, lost
// picture.
import { words } from './words.js';

/**
 * @param {string} title
 * @param {string} text
 * @param {[label: string, act: () => void][]} actions each closes the panel
 */
export function showTrouble(title, text, actions) {
  const panel = /** @type {HTMLElement} */ (document.getElementById('trouble'));
  const heading = document.createElement('h1');
  heading.id = 'trouble_title';
  heading.textContent = title;
  const paragraph = document.createElement('p');
  paragraph.textContent = text;
  const buttons = actions.map(([label, act]) => {
    const button = document.createElement('button');
    button.textContent = label;
    button.addEventListener('click', () => {
      hideTrouble();
      act();
    });
    return button;
  });
  panel.replaceChildren(heading, paragraph, ...buttons);
  panel.hidden = false;
  document.documentElement.dataset['state'] ??= 'stopped'; // nothing is being opened any more
  buttons[0]?.focus();
}

export function hideTrouble() {
  const panel = document.getElementById('trouble');
  if (panel !== null) panel.hidden = true;
}

/** @type {[string, () => void]} */
export const load_again = [words.reload, () => location.reload()];
