// Chromium through Playwright: real touches, files in and out, emulation of what a system asks for.
import { readdir, readFile } from 'node:fs/promises';
import { need } from '../../support/packages.mjs';

const size_of_a_laptop = { width: 1280, height: 800 };
const { chromium } = need('playwright-core');

const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium';
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

export async function beginEngine() {
  const browser = await chromium.launch({ executablePath, args: flags });
  return {
    browser,
    /** A person with a profile of their own in a folder. */
    profile: (kept_in) =>
      chromium.launchPersistentContext(kept_in, { executablePath, args: flags }),
    async window({ size, touch = true, ratio = 1, now, before, ...rest }) {
      const context = await browser.newContext({
        viewport: size,
        deviceScaleFactor: ratio,
        hasTouch: touch,
        isMobile: touch,
        locale: 'en-GB',
        timezoneId: 'Europe/Berlin',
        ...rest,
      });
      if (now !== undefined) await standStill(context, now, rest.storageState !== undefined);
      return ChromiumWindow.tab(context, before, touch);
    },
    /** A person whose browser can be killed: one more process, its profile in a folder. */
    async windowIn(kept_in, before) {
      const context = await chromium.launchPersistentContext(kept_in, {
        executablePath,
        args: flags,
        viewport: size_of_a_laptop,
        locale: 'en-GB',
      });
      const window = await ChromiumWindow.tab(context, before, false);
      window.kill = () => killOwner(kept_in, context);
      return window;
    },
    end: () => browser.close(),
  };
}

// More than a first visit throws: who comes again throws others.
const drawn_first_time = 1_000_000;

/** The page's days and times stand still. Its frames go on, and its events bear their own times. */
function holdDay(context, now) {
  return context.addInitScript((standing_ms) => {
    const Running = window.running_date ?? Date;
    Object.defineProperty(window, 'running_date', { value: Running, configurable: true });
    window.Date = class extends Running {
      constructor(...given) {
        super(...(given.length === 0 ? [standing_ms] : given));
      }

      static now() {
        return standing_ms;
      }
    };
  }, new Date(now).getTime());
}

/** A world that stays as it is, so that two pictures of it agree: its clock, its disk, its dice. */
async function standStill(context, now, is_again) {
  await holdDay(context, now);
  await context.addInitScript(
    (drawn_before) => {
      Object.assign(StorageManager.prototype, {
        estimate: async () => ({ usage: 3_000_000, quota: 12_000_000_000 }),
        persist: async () => false,
        persisted: async () => false,
      });
      let drawn = drawn_before;
      Crypto.prototype.getRandomValues = (numbers) => {
        for (let place = 0; place < numbers.length; place += 1) {
          drawn += 1;
          numbers[place] = Math.imul(drawn, 0x9e37_79b1) >>> 7;
        }
        return numbers;
      };
    },
    is_again ? drawn_first_time : 0,
  );
}

/** Ends every process of the browser that a profile belongs to, without a word of warning. */
async function killOwner(kept_in, context) {
  const gone = new Promise((resolve) => context.once('close', resolve));
  for (const name of await readdir('/proc')) {
    if (!/^\d+$/.test(name)) continue;
    const line = await readFile(`/proc/${name}/cmdline`, 'utf8').catch(() => '');
    const words = line.split('\0');
    if (!words.includes(`--user-data-dir=${kept_in}`)) continue;
    if (words.some((word) => word.startsWith('--type='))) continue;
    process.kill(-Number(name), 'SIGKILL'); // Playwright starts a browser as a group of its own
  }
  await gone;
}

class ChromiumWindow {
  constructor(context, page, before, touch) {
    Object.assign(this, { context, page, before, touch });
    /** Every address asked for, and everything that went wrong. */
    this.requests = [];
    this.faults = [];
    page.on('request', (request) => this.requests.push(request.url()));
    page.on('pageerror', (error) => this.faults.push(String(error.stack ?? error)));
    page.on('console', (message) => {
      if (message.type() === 'error') this.faults.push(message.text());
    });
  }

  static async tab(context, before, touch) {
    const page = await context.newPage();
    page.setDefaultTimeout(patience_ms);
    if (before !== undefined) await page.addInitScript(before);
    return new ChromiumWindow(context, page, before, touch);
  }

  /** One more tab of the same person. */
  secondTab() {
    return ChromiumWindow.tab(this.context, this.before, this.touch);
  }

  run(script, given) {
    return this.page.evaluate(script, given);
  }

  go(address) {
    return this.page.goto(address);
  }

  /** The day that stands still from the next load on. */
  holdDay(now) {
    return holdDay(this.context, now);
  }

  reload() {
    return this.page.reload();
  }

  press(x, y) {
    return this.touch ? this.page.touchscreen.tap(x, y) : this.page.mouse.click(x, y);
  }

  /**
   * Moves the page under this point up by so many pixels (down when negative). The finger rests
   * before it is lifted: let go while moving, the page would glide on.
   */
  async drag(x, y, up_px) {
    if (!this.touch) {
      await this.page.mouse.move(x, y);
      await this.page.mouse.wheel(0, up_px);
      return;
    }
    await this.stroke(x, y, up_px, 120);
  }

  /** A quick stroke that lets go while moving: the page glides on by itself. */
  fling(x, y, up_px) {
    return this.stroke(x, y, up_px, 0);
  }

  /**
   * One finger's way in five moves. It bears the times of a finger before a screen, however slow
   * the machine that plays it: a busy browser joins moves, and a late one would change what they
   * mean.
   */
  async stroke(x, y, up_px, rests_ms) {
    const session = await this.context.newCDPSession(this.page);
    const from = y + up_px / 2;
    let time_ms = Date.now();
    const send = (type, touchPoints) => {
      time_ms += 16;
      return session.send('Input.dispatchTouchEvent', {
        type,
        touchPoints,
        timestamp: time_ms / 1000,
      });
    };
    await send('touchStart', [{ x, y: from }]);
    for (let part = 1; part <= 5; part += 1) {
      await send('touchMove', [{ x, y: from - (up_px * part) / 5 }]);
    }
    time_ms += rests_ms;
    await send('touchEnd', []);
    await session.detach();
  }

  type(text) {
    return this.page.keyboard.type(text);
  }

  key(name) {
    return this.page.keyboard.press(name);
  }

  /** What the browser has kept for the page, to begin another person with. */
  kept() {
    return this.context.storageState({ indexedDB: true });
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
  }

  picture() {
    return this.page.screenshot();
  }

  close() {
    return this.context.close();
  }
}
