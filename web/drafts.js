// What is being typed and not yet saved, kept apart from the records: it survives a reload, a crash
// and a closed tab, and is never exported. The program decides what it says and when it goes.

const key = 'two_clocks.draft';

export class Drafts {
  /** @param {() => Storage} storage refused by some browsers, and then nothing is kept */
  constructor(storage) {
    this.storage = storage;
    /** @type {string | undefined} */
    this.waiting = undefined;
  }

  /** What was kept last, empty for nothing. */
  kept() {
    try {
      return this.storage().getItem(key) ?? '';
    } catch {
      return '';
    }
  }

  /**
   * Keeps a text in place of the last one; many in one event are one write. There is no timer that
   * could outlive the page.
   * @param {string} text
   */
  keep(text) {
    const asked = this.waiting !== undefined;
    this.waiting = text;
    if (!asked) queueMicrotask(() => this.flush());
  }

  /** Writes what waits, at once: the page may not live to the next moment. */
  flush() {
    const text = this.waiting;
    this.waiting = undefined;
    if (text === undefined) return;
    try {
      if (text === '') this.storage().removeItem(key);
      else this.storage().setItem(key, text);
    } catch {
      // Not kept: a draft is a convenience, and what is saved is not touched by this.
    }
  }
}
