// The screen in words: an unseen document over the canvas, for screen readers, keyboards and tests.
// It is patched, never rebuilt, so that the focus stays where a person put it.

import { besideField, oneStop, setAttribute, stepWithArrows } from './mirror_keys.js';

/** @typedef {import('./types').MirrorNode} MirrorNode */

/** Element and role of each kind of node; a heading's element goes by its level. */
const shapes = /** @type {Record<string, { tag: string, role?: string }>} */ ({
  text: { tag: 'p' },
  button: { tag: 'button' },
  link: { tag: 'button', role: 'link' },
  tab: { tag: 'button', role: 'tab' },
  field: { tag: 'div', role: 'textbox' },
  list: { tag: 'ul', role: 'list' },
  list_item: { tag: 'li' },
  choice: { tag: 'button', role: 'radio' },
  status: { tag: 'div', role: 'status' },
  alert: { tag: 'div', role: 'alert' },
  image: { tag: 'div', role: 'img' },
  dialog: { tag: 'div', role: 'dialog' },
});
/** Roles whose name is their text; the others are labelled. */
const texts = new Set(['heading', 'text', 'button', 'link', 'tab', 'choice', 'status', 'alert']);

/** The least that a finger finds [S, WCAG 2.2 success criterion 2.5.8]. */
const least_px = 24;

/** So little of it is in sight that nobody can press it. @param {MirrorNode} node */
const isSliver = ({ c }) => c !== undefined && ((c[2] ?? 0) < least_px || (c[3] ?? 0) < least_px);

/** Of the element that says something about a field. @param {MirrorNode} node */
const aboutId = (node) => `about_${node.r}_${node.d ?? ''}`;

/**
 * Ties a field to what stands beside it, so that it is spoken with the field.
 * @param {Element} element @param {MirrorNode} field @param {MirrorNode[]} nodes
 */
export function describe(element, field, nodes) {
  const about = nodes.filter((node) => node.d !== undefined && node.d === field.id).map(aboutId);
  setAttribute(element, 'aria-describedby', about.length > 0 ? about.join(' ') : undefined);
  setAttribute(element, 'aria-invalid', field.w === 1 ? 'true' : undefined);
}

export class Mirror {
  /**
   * @param {HTMLElement} root
   * @param {{ activate: (id: string) => void, focus: (id: string) => void }} told
   */
  constructor(root, told) {
    this.root = root;
    this.told = told;
    /** @type {Map<string, HTMLElement>} elements of the last patch by their key */
    this.elements = new Map();
    this.edited = '';
    this.patching = false;
    root.addEventListener('click', (event) => this.act(event));
    root.addEventListener('keydown', (event) => {
      const field = /** @type {Element} */ (event.target).getAttribute('role') === 'textbox';
      if (field && (event.key === 'Enter' || event.key === ' ')) this.act(event);
      stepWithArrows(this.root, event);
    });
    root.addEventListener('focusin', (event) => this.focused(event.target));
    root.addEventListener('focusout', (event) => {
      if (event.relatedTarget === null) this.focused(null);
    });
  }

  /** @param {Event} event */
  act(event) {
    const from = /** @type {Element} */ (event.target).closest('[data-id]');
    if (!(from instanceof HTMLElement) || from.getAttribute('aria-disabled') === 'true') return;
    event.preventDefault();
    this.told.activate(from.dataset['id'] ?? '');
  }

  /** @param {EventTarget | null} target */
  focused(target) {
    if (this.patching) return;
    this.told.focus((target instanceof HTMLElement && target.dataset['id']) || '');
  }

  /** Where the keyboard goes on from. @param {string} id */
  focusOn(id) {
    for (const element of this.elements.values()) {
      if (element.dataset['id'] === id) element.focus({ preventScroll: true });
    }
  }

  /** Where Tab leads from a field that was edited. @param {string} id @param {number} step */
  focusBeside(id, step) {
    const next = besideField(this.root, id, step);
    if (next === undefined) this.focusOn(id);
    else next.focus({ preventScroll: true });
    if (next?.getAttribute('role') === 'textbox') this.told.activate(next.dataset['id'] ?? '');
  }

  /** The field with this id has a real input over it: its double would be a second voice. */
  /** @param {string} id */
  setEdited(id) {
    this.edited = id;
    for (const element of this.root.querySelectorAll('[role=textbox]')) {
      const field = /** @type {HTMLElement} */ (element);
      field.hidden = id !== '' && field.dataset['id'] === id;
    }
  }

  /** @param {MirrorNode[]} nodes */
  patch(nodes) {
    const had_focus = document.activeElement;
    this.patching = true;
    const before = this.elements;
    this.elements = new Map();
    const layers = nodes.some((node) => (node.y ?? 0) > 0);
    const places = new Places(this, before, layers, nodes);
    for (const node of nodes) places.put(node);
    places.settle();
    if (had_focus instanceof HTMLElement && this.root.contains(had_focus)) {
      if (document.activeElement !== had_focus) had_focus.focus({ preventScroll: true });
    }
    this.patching = false;
  }

  /**
   * The element of the last patch with this key, or a new one.
   * @param {string} key @param {string} tag @param {Map<string, HTMLElement>} before
   */
  element(key, tag, before) {
    const known = before.get(key);
    const made = known?.localName === tag ? known : document.createElement(tag);
    this.elements.set(key, made);
    return made;
  }
}

/** Where each element of one patch goes. */
class Places {
  /**
   * @param {Mirror} mirror @param {Map<string, HTMLElement>} before
   * @param {boolean} layered @param {MirrorNode[]} nodes
   */
  constructor(mirror, before, layered, nodes) {
    this.nodes = nodes;
    this.mirror = mirror;
    this.before = before;
    this.layered = layered;
    /** @type {Map<Element, Element[]>} wanted children, in order */
    this.children = new Map([[mirror.root, []]]);
    /** @type {(HTMLElement | undefined)[]} element of each node, by its index */
    this.by_index = [];
    /** @type {Map<string, number>} how often an unnamed key was used */
    this.used = new Map();
  }

  /** @param {MirrorNode} node */
  keyOf(node) {
    if (node.id !== undefined) return `${node.r} ${node.id}`;
    const kind = `${node.r} ${node.g ?? ''}`;
    const count = (this.used.get(kind) ?? 0) + 1;
    this.used.set(kind, count);
    return `${kind} #${count}`;
  }

  /** @param {Element} parent @param {HTMLElement} child */
  append(parent, child) {
    const list = this.children.get(parent);
    if (list === undefined) this.children.set(parent, [child]);
    else list.push(child);
    if (!this.children.has(child)) this.children.set(child, []);
  }

  /** Wraps what the document's rules want wrapped: tabs in a tab list, list contents in an item. */
  /** @param {MirrorNode} node @param {string} key */
  parentOf(node, key) {
    const { root } = this.mirror;
    const parent = node.g === undefined ? root : (this.by_index[node.g] ?? root);
    if (node.r === 'tab') return this.wrapper(parent, 'div', 'tablist', `tabs ${node.g ?? ''}`);
    if (parent.getAttribute('role') !== 'list' || node.r === 'list_item') return parent;
    const last = this.children.get(parent)?.at(-1);
    if (last !== undefined && last.localName === 'li') return last;
    return this.wrapper(parent, 'li', undefined, `item ${key}`);
  }

  /**
   * @param {Element} parent @param {string} tag
   * @param {string | undefined} role @param {string} key
   */
  wrapper(parent, tag, role, key) {
    const made = this.mirror.elements.get(key);
    if (made !== undefined) return made;
    const element = this.mirror.element(key, tag, this.before);
    setAttribute(element, 'role', role);
    this.append(parent, element);
    return element;
  }

  /** @param {MirrorNode} node */
  put(node) {
    const key = this.keyOf(node);
    const shape = shapes[node.r] ?? { tag: 'p' };
    const heading = node.r === 'heading' ? `h${Math.min(node.l ?? 1, 6)}` : undefined;
    let parent = this.parentOf(node, key);
    let element = this.mirror.element(key, heading ?? shape.tag, this.before);
    this.append(parent, element);
    this.by_index.push(element);
    setAttribute(element, 'role', shape.role);
    if (node.r === 'list_item') {
      setAttribute(element, 'aria-setsize', node.s?.toString());
      setAttribute(element, 'aria-posinset', node.p?.toString());
      // What an item says, and what a tap on it does, is one button or one text in it.
      parent = element;
      const inner = node.id === undefined ? 'p' : 'button';
      element = this.mirror.element(`in ${key}`, inner, this.before);
      this.append(parent, element);
    }
    this.fill(element, node);
  }

  /** @param {HTMLElement} element @param {MirrorNode} node */
  fill(element, node) {
    const field = node.r === 'field';
    const words = texts.has(node.r) || node.r === 'list_item';
    const text = field ? (node.v ?? '') : words ? (node.n ?? '') : undefined;
    if (text !== undefined && element.textContent !== text) element.textContent = text;
    setAttribute(element, 'aria-label', words ? undefined : node.n);
    if (node.id === undefined) delete element.dataset['id'];
    else element.dataset['id'] = node.id;
    const state = node.v === 'on' || node.v === 'current';
    setAttribute(element, 'aria-checked', node.r === 'choice' ? String(state) : undefined);
    setAttribute(element, 'aria-selected', node.r === 'tab' ? String(state) : undefined);
    setAttribute(element, 'aria-disabled', node.off === 1 ? 'true' : undefined);
    const chosen = node.r === 'list_item' && node.v === 'current';
    setAttribute(element, 'aria-current', chosen ? 'true' : undefined);
    setAttribute(element, 'aria-modal', node.r === 'dialog' ? 'true' : undefined);
    setAttribute(element, 'tabindex', field ? '0' : undefined);
    setAttribute(element, 'id', node.d === undefined ? undefined : aboutId(node));
    if (field) describe(element, node, this.nodes);
    // Under a sheet the page neither speaks nor takes the focus.
    element.inert = this.layered && (node.y ?? 0) === 0;
    if (field) element.hidden = this.mirror.edited !== '' && node.id === this.mirror.edited;
    if (node.out === 1 || isSliver(node)) element.dataset['out'] = 'scrolled';
    else delete element.dataset['out'];
    if (node.c === undefined) delete element.dataset['seen'];
    else element.dataset['seen'] = node.c.join(' ');
    const [left, top, width, height] = node.b;
    const { style } = element;
    style.left = `${left}px`;
    style.top = `${top}px`;
    style.width = `${width}px`;
    style.height = `${height}px`;
  }

  /** Puts the document in the wanted order, moving as little as possible. */
  settle() {
    for (const [parent, wanted] of this.children) {
      const keep = new Set(wanted);
      for (const child of [...parent.children]) {
        if (!keep.has(child)) child.remove();
      }
      wanted.forEach((child, at) => {
        const there = parent.children[at];
        if (there !== child) parent.insertBefore(child, there ?? null);
      });
    }
    for (const parent of this.children.keys()) {
      if (parent.localName === 'ul') oneStop(parent);
    }
  }
}
