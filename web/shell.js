// Starts the page: store, program, fonts, looks, stored records, first frame; then only events.
import { App, hostFor } from './bridge.js';
import { after, todayDayNumber, wallMs } from './clock.js';
import { followAppearance } from './appearance.js';
import { Drafts } from './drafts.js';
import { Field } from './field.js';
import { fetchFile, handOver, listenToFiles, openedWith } from './files.js';
import { Frames } from './frames.js';
import { listenToKeys } from './keys.js';
import { lockFile, openFile } from './lock.js';
import { Mirror } from './mirror.js';
import { listenToPointer } from './pointer.js';
import { printPaper } from './print.js';
import { inLine, loadProgram, NotYet } from './program.js';
import { regionOf } from './region.js';
import { forOneLoad, keepSetting, keptSettings, show } from './settings.js';
import { Records } from './records.js';
import { StoreError } from './store.js';
import { load_again, showTrouble } from './trouble.js';
import { Update } from './update.js';
import { words } from './words.js';

const restore_patience_ms = 2000;

/** @param {string} id */
const element = (id) => /** @type {HTMLElement} */ (document.getElementById(id));
const canvas = /** @type {HTMLCanvasElement} */ (element('canvas'));
const chooser = /** @type {HTMLInputElement} */ (element('file'));

/** @param {string} address */
async function bytesOf(address) {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return new Uint8Array(await answer.arrayBuffer());
}

/** The program, its memory and everything that hangs on it. */
class Page {
  constructor() {
    /** @type {App} set by `load`, before anything can call */
    this.app = /** @type {any} */ (undefined);
    /** What a person does reaches the program through this, once it is here whole. @type {App} */
    this.input = /** @type {any} */ (undefined);
    this.open = () => {};
    this.whole = () => Promise.resolve();
    this.frames = new Frames((time_ms) => this.draw(time_ms));
    this.records = new Records({
      app: () => this.app,
      input: () => this.input,
      stuck: () =>
        showTrouble(words.storage_title, words.storage, [
          [words.export_now, () => this.app.exportNow()],
          [words.dismiss, () => {}],
        ]),
    });
    this.field = new Field(element('field'), {
      text: (id, text) => this.input.fieldText(id, text),
      closed: (id, next) => {
        this.refresh();
        this.input.fieldClosed(id, next);
      },
      moved: (id) => this.mirror.setEdited(id),
      left: (id) => this.mirror.focusOn(id),
      stepped: (id, step) => this.mirror.focusBeside(id, step),
    });
    this.mirror = new Mirror(element('mirror'), {
      activate: (id) => {
        this.refresh();
        this.input.activate(id);
      },
      focus: (id) => this.input.focus(id),
    });
    this.drafts = new Drafts(() => localStorage);
    this.update = new Update({
      ready: () => this.input.newVersionReady(),
      idle: () => this.records.idle(),
    });
  }

  /** Tells the program the day, the time and something random. */
  refresh() {
    this.app.refresh(todayDayNumber(), wallMs(), crypto.getRandomValues(new Uint32Array(4)));
  }

  /** @param {number} time_ms */
  draw(time_ms) {
    try {
      return this.app.frame(time_ms);
    } catch (error) {
      void this.startWhole(error);
      return false;
    }
  }

  /**
   * The first part did not do for this first picture: starts over, once, with the whole program.
   * @param {unknown} error
   */
  async startWhole(error) {
    if (!(error instanceof NotYet)) throw error;
    console.warn('start', error.message);
    this.frames.stop();
    await this.whole();
    if (!forOneLoad.ask()) throw error;
    location.reload();
  }

  /** @param {string} name @param {Uint8Array} bytes */
  chosen(name, bytes) {
    this.refresh();
    this.input.fileChosen(name, bytes);
  }

  /**
   * Hands a file over locked, or gives the program what is in one.
   * @param {boolean} locks @param {string} name @param {Uint8Array} bytes @param {string} password
   */
  async lock(locks, name, bytes, password) {
    /** @type {Uint8Array | 'wrong' | 'damaged' | 'missing'} */
    let done = 'missing';
    try {
      done = await (locks ? lockFile : openFile)(bytes, password);
    } catch (error) {
      console.warn('lock', error); // no room for it
    }
    this.refresh();
    if (typeof done === 'string') return this.input.lockTold(done, name);
    if (!locks) return this.input.fileChosen(name, done);
    this.input.lockTold('done', name);
    return handOver(name, done);
  }

  /**
   * Prints a paper, or hands it over as a file where nothing prints.
   * @param {string} name @param {string} html
   */
  print(name, html) {
    if (!printPaper(name, html)) void handOver(`${name}.html`, new TextEncoder().encode(html));
  }

  /** @returns {import('./types').Handlers} */
  handlers() {
    /** @param {string} name @param {Uint8Array} bytes */
    const chosen = (name, bytes) => this.chosen(name, bytes);
    listenToFiles(chooser, chosen);
    return {
      commit: (token, bytes) => this.records.commit(token, bytes),
      keepSnapshot: (bytes) => this.records.keepSnapshot(bytes),
      handOverFile: (name, bytes) => void handOver(name, bytes),
      // Printing stands still until it is over: not amid the program's own work.
      printPaper: (name, html) => void after(0, () => this.print(name, html)),
      lock: (locks, name, bytes, password) => void this.lock(locks, name, bytes, password),
      chooseFile: () => chooser.click(),
      fetchDemo: () => void fetchFile(ADDRESSES.demo, chosen),
      editField: (request) => this.field.open(request),
      closeField: () => this.field.close(),
      mirror: (nodes) => {
        this.mirror.patch(nodes);
        this.field.follow(nodes);
      },
      announce: (text) => {
        element('spoken').textContent = text;
      },
      pushPage: () => history.pushState(null, ''),
      goBack: () => history.back(),
      keepSetting,
      keepDraft: (text) => this.drafts.keep(text),
      startNewVersion: () => void this.update.accept(),
      wake: (frames) => this.frames.wake(frames),
    };
  }

  async load() {
    const fonts = Object.entries(ADDRESSES.fonts);
    const host = hostFor(() => this.app.program, this.handlers());
    const [{ program, whole }, ...faces] = await Promise.all([
      loadProgram(host, ADDRESSES.program),
      ...fonts.map(([, address]) => bytesOf(address)),
    ]);
    this.app = new App(program);
    this.whole = whole;
    const { held, open } = inLine(this.app);
    this.input = held;
    this.open = open;
    if (!this.app.start()) return false;
    const taken = faces.map((bytes, at) => this.app.font(Number(fonts[at]?.[0]), bytes));
    if (!taken.some((one) => one === 1)) throw new Error('no typeface');
    return true;
  }

  /** Whether nothing at all is known: the first part is made for that picture. */
  async firstVisit() {
    if (forOneLoad.asked || keptSettings().length > 0 || location.hash !== '') return false;
    return this.drafts.kept() === '' && this.records.empty();
  }

  async begin() {
    const { app } = this;
    if (!(await this.firstVisit())) await this.whole();
    app.region(regionOf(undefined));
    for (const [name, value] of keptSettings()) {
      show(name, value);
      app.setting(name, value);
    }
    app.setting('page', location.hash.slice(1));
    this.refresh();
    await this.records.replay();
    app.draft(this.drafts.kept());
    app.online(navigator.onLine);
    followAppearance(canvas, app);
    app.loaded();
    this.listen();
    this.frames.resume();
    document.documentElement.dataset['state'] = 'drawn';
    await this.whole();
    this.open();
    document.documentElement.dataset['state'] = 'running';
  }

  listen() {
    openedWith((name, bytes) => this.chosen(name, bytes));
    const refresh = () => this.refresh();
    const before = () => {
      this.refresh();
      this.field.beforeTap();
    };
    listenToPointer(canvas, this.input, { before, tapped: () => this.field.tapped() });
    listenToKeys(this.input, refresh);
    window.addEventListener('popstate', () => this.input.back());
    window.addEventListener('online', () => this.input.online(true));
    window.addEventListener('offline', () => this.input.online(false));
    document.addEventListener('visibilitychange', () => {
      this.records.hide(document.visibilityState !== 'visible');
      if (document.visibilityState !== 'visible') {
        this.drafts.flush();
        return;
      }
      this.refresh();
      this.frames.wake(1);
    });
    window.addEventListener('pagehide', () => this.drafts.flush());
    this.survivePictureLoss();
  }

  /** A phone may take the drawing context away; only its objects are rebuilt. */
  survivePictureLoss() {
    let cancel = () => {};
    canvas.addEventListener('webglcontextlost', (event) => {
      event.preventDefault();
      this.frames.stop();
      cancel = after(restore_patience_ms, () =>
        showTrouble(words.lost_picture_title, words.lost_picture, [load_again]),
      );
    });
    canvas.addEventListener('webglcontextrestored', () => {
      cancel();
      this.app.contextRestored(); // of the first part
      this.frames.resume();
    });
  }
}

async function start() {
  const page = new Page();
  try {
    const [drawn] = await Promise.all([page.load(), page.records.open()]);
    if (!drawn) {
      showTrouble(words.no_webgl_title, words.no_webgl, [load_again]);
      return;
    }
    await page.begin();
  } catch (error) {
    if (error instanceof NotYet) return page.startWhole(error);
    console.error(error);
    if (error instanceof StoreError) {
      showTrouble(words.unread_title, words.unread, [
        load_again,
        [words.rescue, () => location.assign('rescue.html')],
      ]);
      return;
    }
    showTrouble(words.start_failed_title, words.start_failed, [load_again]);
    return;
  }
  if (!page.records.stored) {
    showTrouble(words.no_store_title, words.no_store, [[words.go_on, () => {}]]);
  }
  page.records.tell();
  await page.update.start();
}

void start();
