// A visit to the page as a person makes it, in any of three engines. How to use it stands at the
// top of driver.mjs; what an engine does in its own way is in engines/.
import { bringReader, bringSight, countWork } from './in_page.mjs';

export const sizes = {
  small: { width: 320, height: 640 },
  phone: { width: 390, height: 844 },
  laptop: { width: 1280, height: 800 },
};
const look_every_ms = 50;
const settle_ms = 25;
const least_seen_px = 24; // of a box, to be aimed at
const sleep = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/** What is looked for, as it is sent to the page. A string is the whole name, or part of a text. */
function query(role, { name, text }) {
  const wanted = (given, part) =>
    given instanceof RegExp
      ? { pattern: given.source, flags: given.flags }
      : { is: given, ...(part ? { part } : {}) };
  return {
    role,
    ...(name === undefined ? {} : { name: wanted(name, false) }),
    ...(text === undefined ? {} : { text: wanted(text, true) }),
  };
}

export class Visit {
  constructor(window, address) {
    this.window = window;
    this.address = address;
    /** How long to wait for what is looked for. */
    this.patience_ms = 15_000;
    /** Taps made so far; digits of the pad are typing and do not count. */
    this.taps = 0;
  }

  /**
   * `size`: a name of `sizes` or a width and height. `fleet`: 'demo' for the invented fleet joined,
   * 'none' for past the first page; nothing for the first page. `now`: a time that stands still
   * (Chromium). `hash`: after the address. The rest is the engine's.
   */
  static async open(engine, address, options = {}) {
    const { size = 'phone', fleet, hash = '', ...rest } = options;
    const box = typeof size === 'string' ? sizes[size] : size;
    const touch = size !== 'laptop';
    const window = await engine.window({ size: box, touch, before: countWork, ...rest });
    const visit = new Visit(window, address);
    await window.go(address + hash);
    await visit.running();
    if (fleet !== undefined) await visit.tap('button', 'I have read this');
    if (fleet === 'demo') await visit.joinDemo();
    visit.taps = 0;
    return visit;
  }

  async joinDemo() {
    await this.tap('button', 'Look at an invented fleet');
    await this.tap('button', 'Join it to mine');
    await this.reads('paragraph', /^5 aircraft/);
    await this.tap('tab', 'Fleet');
  }

  /** One more tab of the same person (Chromium). */
  async secondTab() {
    const visit = new Visit(await this.window.secondTab(), this.address);
    await visit.window.go(this.address);
    await visit.running();
    return visit;
  }

  /** The engine's own page, for what only it can do. */
  get page() {
    return this.window.page;
  }

  get context() {
    return this.window.context;
  }

  get requests() {
    return this.window.requests;
  }

  get faults() {
    return this.window.faults;
  }

  run(script, given) {
    return this.window.run(script, given);
  }

  async until(what, look) {
    const end_ms = Date.now() + this.patience_ms;
    let trouble;
    while (Date.now() < end_ms) {
      try {
        const found = await look();
        if (found) return found;
      } catch (error) {
        trouble = error; // the page may be loading
      }
      await sleep(look_every_ms);
    }
    const outline = await this.outline().catch(() => '');
    throw new Error(`${what} did not come\n${outline}`, { cause: trouble });
  }

  async running() {
    await this.until('the first frame', () =>
      this.run(() => document.documentElement.dataset.state === 'running'),
    );
    for (const part of [countWork, bringSight, bringReader]) await this.run(part);
    // Until then an engine may drop what a finger does: nobody can aim at what is not shown.
    await this.until('the first picture', () => this.run(() => window.work_counts.painted));
    await this.settled();
  }

  /** Until the page has drawn what it wanted to, looked at twice. */
  async settled() {
    for (let quiet = 0; quiet < 2; ) {
      await sleep(settle_ms);
      const { asked, frames } = await this.work();
      quiet = asked === frames ? quiet + 1 : 0;
    }
  }

  frames() {
    return this.run(() => window.work_counts.frames);
  }

  work() {
    return this.run(() => ({ ...window.work_counts }));
  }

  first(role, wanted = {}) {
    return this.run((asked) => window.reader.first(asked), query(role, wanted));
  }

  /** Waits until it is there. */
  sees(role, name) {
    return this.until(`${role} ${name ?? ''}`, () => this.first(role, { name }));
  }

  /** Waits until something of this role, which bears no name, reads like this. */
  reads(role, text) {
    return this.until(`${role} that reads ${text}`, () => this.first(role, { text }));
  }

  /** Waits until it is gone. */
  seesNo(role, name) {
    return this.until(`an end of ${role} ${name ?? ''}`, async () => {
      return (await this.first(role, { name })) === null;
    });
  }

  /** Texts of everything with this role. */
  async texts(role) {
    const all = await this.run((asked) => window.reader.all(asked), query(role, {}));
    return all.map(({ text }) => text);
  }

  /** The sentence that answers what stops the aircraft first. */
  async answer() {
    await this.until('an answer', () =>
      this.run(() => document.querySelector('[data-id=why-answer]') !== null),
    );
    return this.run(() => document.querySelector('[data-id=why-answer]').textContent);
  }

  /** What was announced last to people who do not look at the page. */
  announced() {
    return this.run(() => document.getElementById('spoken').textContent);
  }

  /** All that the page says, a line each. */
  outline() {
    return this.run(() => {
      const own = (node) => (node.getAttribute('role') ?? node.localName) + ' ';
      const say = (node) => own(node) + (node.getAttribute('aria-label') ?? node.textContent);
      return [...document.querySelectorAll('#mirror *')].map(say).join('\n');
    });
  }

  /** Middle of what is seen of a node, brought into sight with a finger if need be. */
  async spot(role, name) {
    let node = await this.sees(role, name);
    for (let moves = 0; moves < 60; moves += 1) {
      const { box, part, area } = node;
      const wanted = Math.min(least_seen_px, box.bottom - box.top);
      if (part.bottom - part.top >= wanted && part.right > part.left) {
        return { x: (part.left + part.right) / 2, y: (part.top + part.bottom) / 2 };
      }
      await this.dragTo(box, area);
      node = await this.sees(role, name);
    }
    throw new Error(`${role} ${name} cannot be brought into sight\n${await this.outline()}`);
  }

  /** Drags the part of the page that a box is in, so that the box comes to the middle of it. */
  async dragTo(box, area) {
    const middle = (area.top + area.bottom) / 2;
    const across = Math.min(Math.max((box.left + box.right) / 2, area.left), area.right - 1);
    const most = (area.bottom - area.top) * 0.4;
    const away = Math.max(-most, Math.min(most, (box.top + box.bottom) / 2 - middle));
    await this.window.drag(across, middle, Math.abs(away) < 40 ? Math.sign(away) * 40 : away);
    await this.settled();
  }

  async tap(role, name) {
    const { x, y } = await this.spot(role, name);
    await this.window.press(x, y);
    this.taps += 1;
    await this.settled();
  }

  /** Types on the number pad, a tap a sign. */
  async digits(text) {
    const { taps } = this;
    for (const sign of text) await this.tap('button', sign === '.' ? 'Decimal sign' : sign);
    this.taps = taps;
  }

  /** Taps a field, replaces what stands in it and leaves it. */
  async fill(name, text) {
    await this.tap('textbox', name);
    const kind = await this.until('a real field', () =>
      this.run(() => (document.activeElement.closest('#field') ? document.activeElement.type : '')),
    );
    if (kind === 'date') {
      // How a date is typed differs by desktop; the field's own event is what the page listens to.
      await this.run((value) => {
        const input = document.activeElement;
        input.value = value;
        input.dispatchEvent(new Event('input', { bubbles: true }));
      }, text);
    } else {
      await this.run(() => document.activeElement.select());
      await this.window.type(text);
    }
    await this.key('Escape');
  }

  async key(name) {
    await this.window.key(name);
    await this.settled();
  }

  async reload() {
    await this.run(() => delete document.documentElement.dataset.state);
    await this.window.reload();
    await this.running();
  }

  async back() {
    await this.run(() => history.back());
    await this.settled();
  }

  offline(is_offline) {
    return this.context.setOffline(is_offline);
  }

  /** Until the whole page is kept on the device. */
  async keptOffline() {
    await this.run(() => navigator.serviceWorker.ready.then(() => undefined));
  }

  /** Bytes and name of the file that an action hands over. */
  download(action) {
    return this.window.download(action);
  }

  /** Answers the file chooser that an action opens, with a name and bytes. */
  async choose(file, action) {
    await this.window.choose(file, action);
    await this.settled();
  }

  /** Requests to anybody but the page's own host. */
  strangers() {
    const { origin } = new URL(this.address);
    return this.requests.filter((url) => !/^(data|blob):/.test(url) && !url.startsWith(origin));
  }

  screenshot() {
    return this.window.picture();
  }

  close() {
    return this.window.close();
  }
}
