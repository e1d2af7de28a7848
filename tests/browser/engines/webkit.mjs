// WebKit through its own driver, in the plain words of the W3C WebDriver protocol.
import { spawn } from 'node:child_process';
import { existsSync, readdirSync } from 'node:fs';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { handedOver, holdChooser, toChoose } from './folder.mjs';
import { beginScreen } from './screen.mjs';

const patience_ms = 30_000;
const sleep = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/** Debian keeps WebKit's small browser in a folder named after the machine's architecture. */
function miniBrowser() {
  const places = readdirSync('/usr/lib').map((name) =>
    join('/usr/lib', name, 'webkit2gtk-4.1/MiniBrowser'),
  );
  return places.find(existsSync) ?? 'MiniBrowser';
}

/** Starts a screen, a message bus and WebKit's driver. */
export async function beginEngine() {
  const folder = await mkdtemp(join(tmpdir(), 'two_clocks_webkit_'));
  const screen = await beginScreen();
  const port = 20_000 + (process.pid % 20_000);
  const env = {
    ...process.env,
    DISPLAY: screen.display,
    XDG_RUNTIME_DIR: folder,
    HOME: folder,
    LANG: 'en_GB.UTF-8',
    LC_ALL: 'en_GB.UTF-8',
    LANGUAGE: 'en_GB',
    LIBGL_ALWAYS_SOFTWARE: '1',
    WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1',
  };
  const command = ['--', 'WebKitWebDriver', `--port=${port}`, '--host=127.0.0.1'];
  const driver = spawn('dbus-run-session', command, { env, stdio: 'ignore', detached: true });
  const wire = new Wire(`http://127.0.0.1:${port}`);
  return {
    /** A person of their own: the driver has one at a time, and forgets the one before. */
    async window({ size }) {
      await wire.close();
      await wire.open();
      await wire.ask('POST', '/window/rect', { width: size.width, height: size.height });
      return new WebKitWindow(wire, folder);
    },
    async end() {
      await wire.close();
      try {
        process.kill(-driver.pid, 'SIGTERM');
      } catch {
        // it had ended by itself
      }
      screen.end();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

/** One WebDriver session. */
class Wire {
  constructor(root) {
    this.root = root;
    this.session = '';
  }

  async ask(method, path, body) {
    const answer = await fetch(`${this.root}${this.session}${path}`, {
      method,
      headers: { 'content-type': 'application/json' },
      ...(body === undefined ? {} : { body: JSON.stringify(body) }),
      signal: AbortSignal.timeout(patience_ms),
    });
    const { value } = await answer.json();
    if (value?.error) throw new Error(`${method} ${path}: ${value.error}: ${value.message}`);
    return value;
  }

  async open() {
    const browser = { binary: miniBrowser(), args: ['--automation'] };
    const capabilities = { alwaysMatch: { 'webkitgtk:browserOptions': browser } };
    for (let tries = 0; ; tries += 1) {
      try {
        const { sessionId } = await this.ask('POST', '/session', { capabilities });
        this.session = `/session/${sessionId}`;
        return;
      } catch (error) {
        if (tries > 40) throw error;
        await sleep(250); // the driver is still starting
      }
    }
  }

  async close() {
    if (this.session !== '') await this.ask('DELETE', '').catch(() => {});
    this.session = '';
  }
}

class WebKitWindow {
  constructor(wire, folder) {
    Object.assign(this, { wire, folder });
    // The driver tells of neither.
    this.requests = [];
    this.faults = [];
  }

  run(script, given) {
    const body = { script: `return (${script}).apply(null, arguments)`, args: [given ?? null] };
    return this.wire.ask('POST', '/execute/sync', body);
  }

  go(address) {
    return this.wire.ask('POST', '/url', { url: address });
  }

  reload() {
    return this.wire.ask('POST', '/refresh', {});
  }

  actions(...actions) {
    return this.wire.ask('POST', '/actions', { actions });
  }

  press(x, y) {
    const parameters = { pointerType: 'touch' };
    const actions = [
      { type: 'pointerMove', x: Math.round(x), y: Math.round(y), duration: 0 },
      { type: 'pointerDown', button: 0 },
      { type: 'pause', duration: 40 },
      { type: 'pointerUp', button: 0 },
    ];
    return this.actions({ type: 'pointer', id: 'finger', parameters, actions });
  }

  /** WebKit on a desktop turns the driver's fingers into a mouse, so the page goes by wheel. */
  async drag(x, y, up_px) {
    const [at_x, at_y, deltaY] = [x, y, up_px].map(Math.round);
    const scroll = { type: 'scroll', x: at_x, y: at_y, deltaX: 0, deltaY, duration: 0 };
    await this.actions({ type: 'wheel', id: 'wheel', actions: [scroll] });
    await this.wire.ask('DELETE', '/actions'); // or the same turn again would count as no turn
    await sleep(150);
  }

  async keys(...keys) {
    const actions = keys.flatMap((value) => [
      { type: 'keyDown', value },
      { type: 'keyUp', value },
    ]);
    await this.actions({ type: 'key', id: 'keys', actions });
    await sleep(100);
  }

  type(text) {
    return this.keys(...text);
  }

  key(name) {
    const codes = { Escape: '\uE00C', Enter: '\uE007', Tab: '\uE004' };
    return this.keys(codes[name]);
  }

  download(action) {
    return handedOver(this.folder, action);
  }

  async choose(file, action) {
    const path = await toChoose(this.folder, file);
    await this.run(holdChooser);
    await action();
    const asked = { using: 'css selector', value: '#file[data-asked]' };
    const [input] = Object.values(await this.wire.ask('POST', '/element', asked));
    await this.wire.ask('POST', `/element/${input}/value`, { text: path });
  }

  async picture() {
    return Buffer.from(await this.wire.ask('GET', '/screenshot'), 'base64');
  }

  close() {
    return this.wire.close();
  }
}
