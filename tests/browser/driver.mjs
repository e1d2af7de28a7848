// A visit to the page in Chromium, as a person makes it: everything is found by role and name in
// the mirror, then tapped with a real touch at the middle of its box. Nothing reaches into the
// program.
import { fileURLToPath } from 'node:url';
import { need } from '../support/packages.mjs';
import { serve } from '../../web/tools/serve.mjs';

const { chromium } = need('playwright-core');

export const site = fileURLToPath(new URL('../../build/site', import.meta.url));
export const phone = { width: 390, height: 844 };
export const desk = { width: 1280, height: 800 };
const patience_ms = 15_000;
const flags = [
  '--headless',
  '--no-sandbox',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--use-gl=angle',
  '--use-angle=swiftshader',
  '--enable-unsafe-swiftshader',
];

/** Starts Chromium and a server for build/site. `base`: a path in front, as on a shared host. */
export async function begin({ base = '', folder = site } = {}) {
  const { server, address } = await serve({ folder, base });
  const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
  const browser = await chromium.launch({ executablePath, args: flags });
  return {
    address,
    browser,
    visit: (options = {}) => Visit.open(browser, address, options),
    /** A person with a profile of their own in a folder. */
    profile: (kept_in) =>
      chromium.launchPersistentContext(kept_in, { executablePath, args: flags }),
    async end() {
      await browser.close();
      server.closeAllConnections();
      server.close();
    },
  };
}

/** Counts animation frames and timers from the page's first moment. */
function countWork() {
  const counts = { frames: 0, timers: 0 };
  const frame = window.requestAnimationFrame;
  window.requestAnimationFrame = (then) =>
    frame.call(window, (time_ms) => {
      counts.frames += 1;
      then(time_ms);
    });
  for (const name of ['setTimeout', 'setInterval']) {
    const original = window[name];
    window[name] = (...rest) => {
      counts.timers += 1;
      return original.apply(window, rest);
    };
  }
  Object.defineProperty(window, 'work_counts', { value: counts });
}

export class Visit {
  constructor(context, page, address) {
    this.context = context;
    this.page = page;
    this.address = address;
    /** Every address asked for, and everything that went wrong. */
    this.requests = [];
    this.faults = [];
    page.on('request', (request) => this.requests.push(request.url()));
    page.on('pageerror', (error) => this.faults.push(String(error.stack ?? error)));
    page.on('console', (message) => {
      if (message.type() === 'error') this.faults.push(message.text());
    });
  }

  static async open(browser, address, { size = phone, ratio = 1, touch = true, ...rest } = {}) {
    const context = await browser.newContext({
      viewport: size,
      deviceScaleFactor: ratio,
      hasTouch: touch,
      isMobile: touch,
      locale: 'en-GB',
      timezoneId: 'Europe/Berlin',
      ...rest,
    });
    return Visit.tab(context, address);
  }

  /** One more tab of the same person. */
  static async tab(context, address) {
    const page = await context.newPage();
    page.setDefaultTimeout(patience_ms);
    await page.addInitScript(countWork);
    const visit = new Visit(context, page, address);
    await page.goto(address);
    await visit.running();
    return visit;
  }

  secondTab() {
    return Visit.tab(this.context, this.address);
  }

  async running() {
    await this.page.waitForSelector('html[data-state=running]', { state: 'attached' });
    await this.settled();
  }

  /** Until the page has drawn what it wanted to. */
  async settled() {
    let before = -1;
    for (let now = 0; now !== before; now = await this.frames()) {
      before = now;
      await this.page.waitForTimeout(80);
    }
  }

  frames() {
    return this.page.evaluate(() => window.work_counts.frames);
  }

  work() {
    return this.page.evaluate(() => ({ ...window.work_counts }));
  }

  find(role, name) {
    return this.page.getByRole(role, name === undefined ? {} : { name, exact: !isPattern(name) });
  }

  /** Waits until it is there. */
  async sees(role, name) {
    await this.find(role, name).first().waitFor({ state: 'attached' });
  }

  /** Waits until something of this role, which bears no name, reads like this. */
  async reads(role, text) {
    await this.find(role).filter({ hasText: text }).first().waitFor({ state: 'attached' });
  }

  /** Waits until it is gone. */
  async seesNo(role, name) {
    await this.find(role, name).first().waitFor({ state: 'detached' });
  }

  /** Texts of everything with this role. */
  async texts(role) {
    return (await this.find(role).allTextContents()).map((text) => text.trim());
  }

  /** All that the page says, for looking into a failure. */
  outline() {
    return this.page.locator('#mirror').ariaSnapshot();
  }

  /** Middle of a node's box, scrolled into sight with a finger if need be. */
  async spot(role, name) {
    const node = this.find(role, name).first();
    await node.waitFor({ state: 'attached' });
    const { height } = this.page.viewportSize();
    for (let swipes = 0; swipes < 60; swipes += 1) {
      const box = await node.boundingBox();
      const out = (await node.getAttribute('data-out')) !== null;
      const middle = box.y + box.height / 2;
      if (!out && middle > 0 && middle < height) return { x: box.x + box.width / 2, y: middle };
      const away = middle - height / 2;
      const most = height * 0.4;
      const step = Math.max(-most, Math.min(most, away));
      await this.swipe(Math.abs(step) < 40 ? Math.sign(step) * 40 : step);
    }
    throw new Error(`${role} ${name} cannot be scrolled into sight\n${await this.outline()}`);
  }

  /** Drags the page up by so many pixels (down when negative), resting before letting go. */
  async swipe(up_px) {
    const { width, height } = this.page.viewportSize();
    const x = width / 2;
    const from = height / 2 + up_px / 2;
    const session = await this.context.newCDPSession(this.page);
    const touch = (type, y) =>
      session.send('Input.dispatchTouchEvent', {
        type,
        touchPoints: y === undefined ? [] : [{ x, y }],
      });
    await touch('touchStart', from);
    for (let part = 1; part <= 5; part += 1) await touch('touchMove', from - (up_px * part) / 5);
    await this.page.waitForTimeout(120);
    await touch('touchMove', from - up_px);
    await touch('touchEnd');
    await session.detach();
    await this.settled();
  }

  async tap(role, name) {
    const { x, y } = await this.spot(role, name);
    if (await this.page.evaluate(() => navigator.maxTouchPoints > 0)) {
      await this.page.touchscreen.tap(x, y);
    } else {
      await this.page.mouse.click(x, y);
    }
    await this.settled();
  }

  /** Taps a field, replaces what stands in it and leaves it. */
  async fill(name, text) {
    await this.tap('textbox', name);
    const input = this.page.locator('#field input:visible, #field textarea:visible');
    await input.waitFor();
    if ((await input.getAttribute('type')) === 'date') {
      await input.fill(text);
    } else {
      await this.page.keyboard.press('ControlOrMeta+A');
      await this.page.keyboard.type(text);
    }
    await this.page.keyboard.press('Escape');
    await this.settled();
  }

  async reload() {
    await this.page.reload();
    await this.running();
  }

  async back() {
    await this.page.evaluate(() => history.back());
    await this.settled();
  }

  offline(is_offline) {
    return this.context.setOffline(is_offline);
  }

  /** Until the whole page is kept on the device. */
  async keptOffline() {
    await this.page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  }

  /** Bytes and name of the file that an action hands over. */
  async download(action) {
    const [given] = await Promise.all([this.page.waitForEvent('download'), action()]);
    const parts = [];
    for await (const part of await given.createReadStream()) parts.push(part);
    return { name: given.suggestedFilename(), bytes: Buffer.concat(parts) };
  }

  /** Answers the file chooser that an action opens. `file`: a path, or a name and bytes. */
  async choose(file, action) {
    const [chooser] = await Promise.all([this.page.waitForEvent('filechooser'), action()]);
    const given =
      typeof file === 'string' ? file : { ...file, mimeType: 'text/plain', buffer: file.bytes };
    await chooser.setFiles(given);
    await this.settled();
  }

  /** Requests to anybody but the page's own host. */
  strangers() {
    const { origin } = new URL(this.address);
    return this.requests.filter((url) => !/^(data|blob):/.test(url) && !url.startsWith(origin));
  }

  screenshot(path) {
    return this.page.screenshot({ path });
  }

  close() {
    return this.context.close();
  }
}

const isPattern = (name) => name instanceof RegExp;
