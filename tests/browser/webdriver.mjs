// A visit to the page in WebKit, in the plain words of the W3C WebDriver protocol. The same calls
// as the visit in driver.mjs, as far as both engines have them, so that one story can be told to
// both.
import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { serve } from '../../web/tools/serve.mjs';
import { site } from './driver.mjs';

const patience_ms = 30_000;
const sleep = (ms) => new Promise((resolve) => setTimeout(resolve, ms));

/** Debian keeps WebKit's small browser in a folder named after the machine's architecture. */
function miniBrowser() {
  const places = readdirSync('/usr/lib').map((name) =>
    join('/usr/lib', name, 'webkit2gtk-4.1/MiniBrowser'),
  );
  return places.find(existsSync) ?? 'MiniBrowser';
}

/** Runs in the page: the first element with this role and name, as a reader would say it. */
function findInPage(role, name, pattern) {
  const roles = {
    BUTTON: 'button',
    P: 'paragraph',
    LI: 'listitem',
    H1: 'heading',
    H2: 'heading',
    H3: 'heading',
    INPUT: 'textbox',
    TEXTAREA: 'textbox',
  };
  const wanted = pattern ? new RegExp(name, pattern) : undefined;
  for (const element of document.querySelectorAll('#mirror *, #field *, #trouble *')) {
    if ((element.getAttribute('role') ?? roles[element.tagName]) !== role) continue;
    if (element.closest('[hidden], [inert]') !== null) continue;
    const said = element.getAttribute('aria-label') ?? element.textContent.trim();
    if (name !== null && (wanted ? !wanted.test(said) : said !== name)) continue;
    const { left, top, width, height } = element.getBoundingClientRect();
    const out = element.dataset.out !== undefined;
    return { said, out, x: left + width / 2, y: top + height / 2, text: element.textContent };
  }
  return null;
}

/** Starts a screen, a message bus, WebKit and a server for build/site. */
export async function begin({ folder = site } = {}) {
  const { server, address } = await serve({ folder });
  const runtime = mkdtempSync(join(tmpdir(), 'two_clocks_webkit_'));
  const display = `:${90 + (process.pid % 400)}`;
  const port = 20_000 + (process.pid % 20_000);
  const env = {
    ...process.env,
    DISPLAY: display,
    XDG_RUNTIME_DIR: runtime,
    HOME: runtime,
    LIBGL_ALWAYS_SOFTWARE: '1',
    WEBKIT_DISABLE_SANDBOX_THIS_IS_DANGEROUS: '1',
  };
  const screen = ['-screen', '0', '1400x1100x24', '+extension', 'GLX'];
  const started = [
    spawn('Xvfb', [display, ...screen], { stdio: 'ignore', detached: true }),
    spawn('dbus-run-session', ['--', 'WebKitWebDriver', `--port=${port}`, '--host=127.0.0.1'], {
      env,
      stdio: 'ignore',
      detached: true,
    }),
  ];
  const wire = new Wire(`http://127.0.0.1:${port}`);
  return {
    address,
    visit: (options) => Visit.open(wire, address, options),
    async end() {
      await wire.close();
      for (const child of started) {
        try {
          process.kill(-child.pid, 'SIGTERM');
        } catch {
          // it had ended by itself
        }
      }
      server.closeAllConnections();
      server.close();
      rmSync(runtime, { recursive: true, force: true });
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
  }
}

export class Visit {
  constructor(wire, address) {
    this.wire = wire;
    this.address = address;
  }

  static async open(wire, address, { width = 500, height = 900 } = {}) {
    await wire.open();
    await wire.ask('POST', '/window/rect', { width, height });
    await wire.ask('POST', '/url', { url: address });
    const visit = new Visit(wire, address);
    await visit.running();
    return visit;
  }

  run(script, ...args) {
    const body = { script: `return (${script}).apply(null, arguments)`, args };
    return this.wire.ask('POST', '/execute/sync', body);
  }

  async until(what, look) {
    const tries = patience_ms / 100;
    for (let count = 0; count < tries; count += 1) {
      const found = await look();
      if (found) return found;
      await sleep(100);
    }
    throw new Error(`${what} did not come\n${await this.outline()}`);
  }

  running() {
    const state = () => this.run(() => document.documentElement.dataset.state === 'running');
    return this.until('the first frame', state);
  }

  /** @param {string} role @param {string | RegExp | undefined} name */
  look(role, name) {
    const pattern = name instanceof RegExp;
    const said = pattern ? name.source : (name ?? null);
    return this.run(findInPage, role, said, pattern ? name.flags || 'u' : '');
  }

  sees(role, name) {
    return this.until(`${role} ${name}`, () => this.look(role, name));
  }

  /** Waits until something of this role reads like this. */
  reads(role, text) {
    return this.sees(role, text);
  }

  outline() {
    return this.run(() => document.getElementById('mirror').innerText);
  }

  actions(...actions) {
    return this.wire.ask('POST', '/actions', { actions });
  }

  pointer(...actions) {
    const parameters = { pointerType: 'touch' };
    return this.actions({ type: 'pointer', id: 'finger', parameters, actions });
  }

  /** WebKit on a desktop turns the driver's fingers into a mouse, so the page is moved by wheel. */
  async wheel(down_px) {
    const scroll = { type: 'scroll', x: 240, y: 420, deltaX: 0, deltaY: down_px, duration: 0 };
    await this.actions({ type: 'wheel', id: 'wheel', actions: [scroll] });
    await this.wire.ask('DELETE', '/actions'); // or the same turn again would count as no turn
    await sleep(250);
  }

  async tap(role, name) {
    let spot = await this.sees(role, name);
    const height = await this.run(() => innerHeight);
    for (let turns = 0; spot.out || spot.y < 0 || spot.y > height; turns += 1) {
      if (turns > 60) throw new Error(`${role} ${name} cannot be scrolled into sight`);
      await this.wheel(spot.y > height / 2 ? 240 : -240);
      spot = await this.sees(role, name);
    }
    await this.pointer(
      { type: 'pointerMove', x: Math.round(spot.x), y: Math.round(spot.y), duration: 0 },
      { type: 'pointerDown', button: 0 },
      { type: 'pause', duration: 40 },
      { type: 'pointerUp', button: 0 },
    );
    await sleep(250);
  }

  async keys(...keys) {
    const actions = keys.flatMap((value) => [
      { type: 'keyDown', value },
      { type: 'keyUp', value },
    ]);
    await this.actions({ type: 'key', id: 'keys', actions });
    await sleep(150);
  }

  /** Taps a field, replaces what stands in it and leaves it. */
  async fill(name, text) {
    await this.tap('textbox', name);
    const kind = await this.until('a real field', () =>
      this.run(() => (document.activeElement.closest('#field') ? document.activeElement.type : '')),
    );
    const escape = '\uE00C';
    if (kind === 'date') {
      // How a date is typed differs by desktop; the field's own event is what the page listens to.
      await this.run((value) => {
        const input = document.activeElement;
        input.value = value;
        input.dispatchEvent(new Event('input', { bubbles: true }));
      }, text);
      await this.keys(escape);
      return;
    }
    await this.run(() => document.activeElement.select());
    await this.keys(...text, escape);
  }

  async reload() {
    await this.wire.ask('POST', '/refresh', {});
    await this.running();
  }

  async screenshot() {
    return Buffer.from(await this.wire.ask('GET', '/screenshot'), 'base64');
  }
}
