// Carries calls between the page and the program. Text crosses as UTF-8, an address and a length;
// the C++ side is wasm/platform/browser.cpp. Nothing here decides anything.

/** @typedef {import('./types').Program} Program */
/** @typedef {import('./types').Handlers} Handlers */

const encoder = new TextEncoder();
const decoder = new TextDecoder();

/** Kind of input element, in the order of FieldKind. */
const field_kinds = /** @type {const} */ ([
  'text',
  'note',
  'decimal',
  'whole',
  'date',
  'hours',
  'money',
  'code',
  'search',
  'secret',
]);

/**
 * What the program calls. The program's memory can move, so it is looked up at every call.
 * @param {() => Program} program
 * @param {Handlers} handlers
 */
export function hostFor(program, handlers) {
  /** @param {number} at @param {number} length */
  const bytes = (at, length) => program().HEAPU8.slice(at, at + length);
  /** @param {number} at @param {number} length */
  const text = (at, length) => decoder.decode(program().HEAPU8.subarray(at, at + length));
  let field = { id: '', label: '', text: '' };
  /** @typedef {number} n */
  return {
    /** @param {n} token @param {n} at @param {n} length */
    commit: (token, at, length) => handlers.commit(token, bytes(at, length)),
    /** @param {n} at @param {n} length */
    keepSnapshot: (at, length) => handlers.keepSnapshot(bytes(at, length)),
    /** @param {n} name @param {n} name_length @param {n} at @param {n} length */
    handOverFile: (name, name_length, at, length) =>
      handlers.handOverFile(text(name, name_length), bytes(at, length)),
    /** @param {n} name @param {n} name_length @param {n} at @param {n} length */
    printPaper: (name, name_length, at, length) =>
      handlers.printPaper(text(name, name_length), text(at, length)),
    /**
     * @param {n} locks @param {n} name @param {n} nl @param {n} at @param {n} l
     * @param {n} word @param {n} wl
     */
    lock: (locks, name, nl, at, l, word, wl) =>
      handlers.lock(locks !== 0, text(name, nl), bytes(at, l), text(word, wl)),
    chooseFile: () => handlers.chooseFile(),
    fetchDemo: () => handlers.fetchDemo(),
    /** @param {n} id @param {n} idl @param {n} label @param {n} ll @param {n} at @param {n} tl */
    nameField: (id, idl, label, ll, at, tl) => {
      field = { id: text(id, idl), label: text(label, ll), text: text(at, tl) };
    },
    /** @param {n} kind @param {n} left @param {n} top @param {n} width @param {n} height */
    editField: (kind, left, top, width, height) =>
      handlers.editField({
        ...field,
        kind: field_kinds[kind] ?? 'text',
        box: [left, top, width, height],
      }),
    closeField: () => handlers.closeField(),
    /** @param {n} at @param {n} length */
    mirror: (at, length) => handlers.mirror(JSON.parse(text(at, length))),
    /** @param {n} at @param {n} length */
    announce: (at, length) => handlers.announce(text(at, length)),
    pushPage: () => handlers.pushPage(),
    goBack: () => handlers.goBack(),
    /** @param {n} name @param {n} name_length @param {n} value @param {n} value_length */
    keepSetting: (name, name_length, value, value_length) =>
      handlers.keepSetting(text(name, name_length), text(value, value_length)),
    /** @param {n} at @param {n} length */
    keepDraft: (at, length) => handlers.keepDraft(text(at, length)),
    startNewVersion: () => handlers.startNewVersion(),
    /** @param {n} frames */
    wake: (frames) => handlers.wake(frames),
  };
}

/** The program as the page sees it: strings and bytes instead of addresses. */
export class App {
  /** @param {Program} program */
  constructor(program) {
    this.program = program;
  }

  /**
   * Writes into the program's memory; the program frees it.
   * @param {string | Uint8Array} data
   * @returns {[number, number]}
   */
  give(data) {
    const bytes = typeof data === 'string' ? encoder.encode(data) : data;
    const at = this.program._malloc(Math.max(bytes.length, 1));
    this.program.HEAPU8.set(bytes, at);
    return [at, bytes.length];
  }

  /** False when the browser has no WebGL 2. */
  start() {
    return Boolean(this.program._tc_start());
  }
  contextRestored() {
    this.program._tc_context_restored();
  }
  /** @param {number} time_ms */
  frame(time_ms) {
    return Boolean(this.program._tc_frame(time_ms));
  }
  /** @param {number} weight @param {Uint8Array} bytes */
  font(weight, bytes) {
    return this.program._tc_font(weight, ...this.give(bytes));
  }
  /** @param {{ decimal: string, group: string, order: number }} region */
  region({ decimal, group, order }) {
    this.program._tc_region(...this.give(decimal), ...this.give(group), order);
  }
  /** @param {string} id */
  device(id) {
    this.program._tc_device(...this.give(id));
  }
  /** @param {string} name @param {string} value */
  setting(name, value) {
    this.program._tc_setting(...this.give(name), ...this.give(value));
  }
  /** @param {string} text */
  draft(text) {
    this.program._tc_draft(...this.give(text));
  }
  /** @param {number} today @param {number} wall_ms @param {Uint32Array} random four numbers */
  refresh(today, wall_ms, [a = 0, b = 0, c = 0, d = 0]) {
    this.program._tc_refresh(today, wall_ms, a, b, c, d);
  }
  /** @param {'snapshot' | 'segment'} kind @param {Uint8Array} bytes */
  stored(kind, bytes) {
    return Boolean(this.program._tc_stored(kind === 'snapshot' ? 0 : 1, ...this.give(bytes)));
  }
  /** @param {string} code @param {number} count */
  storageNote(code, count) {
    this.program._tc_storage_note(...this.give(code), count);
  }
  loaded() {
    this.program._tc_loaded();
  }
  /** @param {import('./types').View} view */
  resize({ width, height, ratio, safe_top, safe_bottom }) {
    this.program._tc_resize(width, height, ratio, safe_top, safe_bottom);
  }
  /** @param {boolean} dark @param {boolean} more_contrast @param {boolean} less_motion */
  appearance(dark, more_contrast, less_motion) {
    this.program._tc_appearance(+dark, +more_contrast, +less_motion);
  }
  /**
   * @param {number} phase 0 down, 1 move, 2 up, 3 cancel
   * @param {number} id @param {number} x @param {number} y @param {number} time_ms
   * @param {number} kind 0 mouse, 1 touch
   */
  pointer(phase, id, x, y, time_ms, kind) {
    this.program._tc_pointer(phase, id, x, y, time_ms, kind);
  }
  /** @param {number} x @param {number} y @param {number} delta_x @param {number} delta_y */
  wheel(x, y, delta_x, delta_y) {
    this.program._tc_wheel(x, y, delta_x, delta_y);
  }
  /** @param {number} key one of Key, or the code of an ASCII character from 32 on */
  key(key) {
    this.program._tc_key(key);
  }
  /** @param {string} id */
  activate(id) {
    this.program._tc_activate(...this.give(id));
  }
  /** @param {string} id */
  focus(id) {
    this.program._tc_focus(...this.give(id));
  }
  /** @param {string} id @param {string} text */
  fieldText(id, text) {
    this.program._tc_field_text(...this.give(id), ...this.give(text));
  }
  /** @param {string} id @param {boolean} next */
  fieldClosed(id, next) {
    this.program._tc_field_closed(...this.give(id), +next);
  }
  /** @param {string} name @param {Uint8Array} bytes */
  fileChosen(name, bytes) {
    this.program._tc_file_chosen(...this.give(name), ...this.give(bytes));
  }
  /** @param {'done' | 'wrong' | 'damaged' | 'missing'} code @param {string} name */
  lockTold(code, name) {
    this.program._tc_lock_told(...this.give(code), ...this.give(name));
  }
  /** @param {number} token @param {boolean} ok @param {string} reason */
  committed(token, ok, reason) {
    this.program._tc_committed(token, +ok, ...this.give(reason));
  }
  /** @param {boolean} is_online */
  online(is_online) {
    this.program._tc_online(+is_online);
  }
  newVersionReady() {
    this.program._tc_new_version_ready();
  }
  /** @param {Uint8Array} segment */
  otherTabWrote(segment) {
    this.program._tc_other_tab_wrote(...this.give(segment));
  }
  /** @param {boolean} is_read_only */
  readOnly(is_read_only) {
    this.program._tc_read_only(+is_read_only);
  }
  back() {
    this.program._tc_back();
  }
  exportNow() {
    this.program._tc_export_now();
  }
}
