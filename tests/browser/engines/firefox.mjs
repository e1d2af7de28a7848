// Firefox through Puppeteer, which speaks WebDriver BiDi with it. It has no WebGL without a screen,
// so it gets one in memory.
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { need } from '../../support/packages.mjs';
import { handedOver, holdChooser, toChoose } from './folder.mjs';
import { beginScreen } from './screen.mjs';

const puppeteer = need('puppeteer-core');

/** What a person would set: touch on, the language, and where files go without being asked. */
const preferences = (downloads) => ({
  'dom.w3c_touch_events.enabled': 1,
  'intl.accept_languages': 'en-GB',
  'intl.locale.requested': 'en-GB',
  'webgl.force-enabled': true,
  'browser.download.folderList': 2,
  'browser.download.dir': downloads,
  'browser.download.useDownloadDir': true,
  'browser.download.alwaysOpenPanel': false,
});

const to = (x, y) => ({ type: 'pointerMove', x: Math.round(x), y: Math.round(y) });
const rest = (duration) => ({ type: 'pause', duration });
const down = { type: 'pointerDown', button: 0 };
const up = { type: 'pointerUp', button: 0 };

export async function beginEngine() {
  const folder = await mkdtemp(join(tmpdir(), 'two_clocks_firefox_'));
  const screen = await beginScreen();
  const browser = await puppeteer.launch({
    browser: 'firefox',
    executablePath: process.env.FIREFOX ?? '/usr/bin/firefox-esr',
    headless: false,
    env: { ...process.env, DISPLAY: screen.display, LIBGL_ALWAYS_SOFTWARE: '1', HOME: folder },
    extraPrefsFirefox: preferences(folder),
  });
  return {
    browser,
    async window({ size, before }) {
      const context = await browser.createBrowserContext();
      const page = await context.newPage();
      await page.setViewport({ ...size, deviceScaleFactor: 1, hasTouch: true });
      if (before !== undefined) await page.evaluateOnNewDocument(before);
      return new FirefoxWindow(context, page, folder);
    },
    async end() {
      await browser.close();
      screen.end();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

class FirefoxWindow {
  constructor(context, page, folder) {
    Object.assign(this, { context, page, folder });
    this.requests = [];
    this.faults = [];
    page.on('request', (request) => this.requests.push(request.url()));
    page.on('pageerror', (error) => this.faults.push(String(error.stack ?? error)));
    page.on('console', (message) => {
      if (message.type() === 'error') this.faults.push(message.text());
    });
  }

  run(script, given) {
    return this.page.evaluate(script, given);
  }

  go(address) {
    return this.page.goto(address);
  }

  reload() {
    return this.page.reload();
  }

  /**
   * Moves one finger. Said to the browser directly: Puppeteer's own touch gives an angle of the
   * finger that Firefox refuses.
   */
  finger(...moves) {
    const parameters = { pointerType: 'touch' };
    const { browsingContext } = this.page.mainFrame();
    const actions = moves.flatMap((move, at) => (at === 1 ? [down, move] : [move]));
    return browsingContext.performActions([
      { type: 'pointer', id: 'finger', parameters, actions: [...actions, up] },
    ]);
  }

  press(x, y) {
    return this.finger(to(x, y), rest(40));
  }

  /** Moves the page under this point up by so many pixels (down when negative). */
  drag(x, y, up_px) {
    const from = y + up_px / 2;
    const steps = [1, 2, 3, 4, 5].flatMap((part) => [rest(16), to(x, from - (up_px * part) / 5)]);
    // At rest before it is lifted: let go while moving, the page would glide on.
    return this.finger(to(x, from), ...steps, rest(120), to(x, from - up_px));
  }

  type(text) {
    return this.page.keyboard.type(text);
  }

  key(name) {
    return this.page.keyboard.press(name);
  }

  download(action) {
    return handedOver(this.folder, action);
  }

  async choose(file, action) {
    const path = await toChoose(this.folder, file);
    await this.run(holdChooser);
    await action();
    const input = await this.page.waitForSelector('#file[data-asked]');
    await input.uploadFile(path);
  }

  picture() {
    return this.page.screenshot();
  }

  close() {
    return this.context.close();
  }
}
