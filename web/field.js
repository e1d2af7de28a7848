// A real input element laid over the field that is being edited. It owns the text and the caret, so
// paste menus, dictation, decimal and date keyboards and every input method work as people know
// them.

/** @typedef {import('./types').FieldRequest} FieldRequest */
/** @typedef {HTMLInputElement | HTMLTextAreaElement} Input */

import { describe } from './mirror.js';

const keyboard_px = 120;

/** Which element and keyboard each kind of field gets. */
export const kinds = /** @type {const} */ ({
  text: { element: 'field_line', mode: 'text', capitals: 'sentences', enter: 'next' },
  note: { element: 'field_note', mode: 'text', capitals: 'sentences', enter: 'enter' },
  decimal: { element: 'field_line', mode: 'decimal', capitals: 'off', enter: 'next' },
  whole: { element: 'field_line', mode: 'numeric', capitals: 'off', enter: 'next' },
  date: { element: 'field_date', mode: 'numeric', capitals: 'off', enter: 'next' },
  hours: { element: 'field_line', mode: 'decimal', capitals: 'off', enter: 'next' },
  money: { element: 'field_line', mode: 'decimal', capitals: 'off', enter: 'next' },
  code: { element: 'field_line', mode: 'text', capitals: 'characters', enter: 'next' },
  secret: { element: 'field_secret', mode: 'text', capitals: 'off', enter: 'next' },
  search: { element: 'field_line', mode: 'search', capitals: 'off', enter: 'search' },
});

/**
 * A phone's decimal keyboard has no colon: two decimal signs in a row stand for it.
 * @param {string} text
 */
export const withColon = (text) => text.replace(/^(\d+)[.,]{2}/, '$1:');

/**
 * A day in a text that was copied from elsewhere; a date input takes only this one way of writing.
 * @param {string} text
 */
export const dayIn = (text) => /^\s*(\d{4}-\d{2}-\d{2})\s*$/.exec(text)?.[1];

export class Field {
  /**
   * @param {HTMLElement} holder
   * @param {{
   *   text: (id: string, text: string) => void,
   *   closed: (id: string, next: boolean) => void,
   *   moved: (id: string) => void,
   *   left: (id: string) => void,
   *   stepped: (id: string, step: number) => void,
   * }} told left: with the keyboard, and no other field opened; stepped: with Tab, on or back
   */
  constructor(holder, told) {
    this.holder = holder;
    this.told = told;
    /** @type {FieldRequest | undefined} */
    this.request = undefined;
    /** @type {Input | undefined} */
    this.input = undefined;
    this.fresh = false;
    this.least_view_px = Infinity;
    for (const input of holder.querySelectorAll('input, textarea')) {
      this.listen(/** @type {Input} */ (input));
    }
    // Android's back key hides the keyboard and leaves the field focused: that is the end of
    // editing too.
    visualViewport?.addEventListener('resize', () => this.keyboardMoved());
  }

  /** @param {Input} input */
  listen(input) {
    input.addEventListener('input', () => this.typed(input));
    input.addEventListener('paste', (event) => {
      const text = /** @type {ClipboardEvent} */ (event).clipboardData?.getData('text') ?? '';
      const day = input.type === 'date' ? dayIn(text) : undefined;
      if (day === undefined) return;
      event.preventDefault();
      input.value = day;
      this.typed(input);
    });
    input.addEventListener('blur', () => {
      if (this.input === input) this.end(false);
    });
    input.addEventListener('keydown', (event) => {
      const key = /** @type {KeyboardEvent} */ (event);
      if (key.isComposing) return;
      const line_break = key.key === 'Enter' && input instanceof HTMLTextAreaElement;
      const next = key.key === 'Enter' && !line_break;
      if (!next && key.key !== 'Escape' && key.key !== 'Tab') return;
      event.preventDefault();
      const { request } = this;
      this.end(next);
      if (request === undefined || this.request !== undefined) return;
      if (key.key === 'Tab') this.told.stepped(request.id, key.shiftKey ? -1 : 1);
      else this.told.left(request.id);
    });
  }

  /** @param {Input} input */
  typed(input) {
    if (this.request === undefined) return;
    if (this.request.kind === 'hours') {
      const text = withColon(input.value);
      if (text !== input.value) input.value = text;
    }
    this.told.text(this.request.id, input.value);
  }

  /**
   * Called inside the tap, and focuses at once: later, a phone would not raise its keyboard.
   * @param {FieldRequest} request
   */
  open(request) {
    if (this.request?.id === request.id && this.input !== undefined) {
      // It moved. The text is the person's now, with its caret and its undo.
      this.place(request.box);
      return;
    }
    if (this.request !== undefined) this.end(false);
    const kind = kinds[request.kind];
    const input = /** @type {Input} */ (document.getElementById(kind.element));
    this.request = request;
    this.input = undefined;
    for (const each of this.holder.querySelectorAll('input, textarea')) {
      /** @type {Input} */ (each).hidden = each !== input;
    }
    this.holder.hidden = false;
    this.place(request.box);
    input.inputMode = kind.mode;
    input.autocapitalize = kind.capitals;
    input.enterKeyHint = kind.enter;
    input.spellcheck = request.kind === 'note' || request.kind === 'text';
    input.setAttribute('aria-label', request.label);
    input.value = request.text;
    this.input = input;
    this.fresh = true;
    this.least_view_px = visualViewport?.height ?? Infinity;
    input.focus({ preventScroll: true });
    if (input.id === 'field_line') input.select();
    this.told.moved(request.id);
  }

  /** The app is done with the field. */
  close() {
    const { input } = this;
    this.request = undefined;
    this.input = undefined;
    this.holder.hidden = true;
    if (input?.type === 'password') input.value = '';
    input?.blur();
    this.told.moved('');
  }

  /** The person is done with it. @param {boolean} next */
  end(next) {
    const { request } = this;
    if (request === undefined) return;
    this.close();
    this.told.closed(request.id, next);
  }

  /** A tap on the canvas is about to be dealt with. */
  beforeTap() {
    this.fresh = false;
  }

  /** It was: unless it opened this field, it leaves it. */
  tapped() {
    if (this.request !== undefined && !this.fresh) this.end(false);
  }

  /** Stays over its field when that moves. @param {import('./types').MirrorNode[]} nodes */
  follow(nodes) {
    if (this.request === undefined) return;
    const { id } = this.request;
    const node = nodes.find((each) => each.r === 'field' && each.id === id);
    if (node === undefined) return;
    this.place(node.b);
    if (this.input !== undefined) describe(this.input, node, nodes);
  }

  /** @param {import('./types').Box} box */
  place([left, top, width, height]) {
    const { style } = this.holder;
    style.left = `${left}px`;
    style.top = `${top + (visualViewport?.offsetTop ?? 0)}px`;
    style.width = `${width}px`;
    style.height = `${height}px`;
  }

  keyboardMoved() {
    const height = visualViewport?.height ?? Infinity;
    if (this.input === undefined || this.input.id === 'field_date') return;
    if (height > this.least_view_px + keyboard_px) this.end(false);
    else this.least_view_px = Math.min(this.least_view_px, height);
  }
}
