// The page around the program, in Chromium: start, frames, picture, focus, storage, tabs.
import assert from 'node:assert/strict';
import { after, before, test } from 'node:test';
import { begin, visitOf } from './driver.mjs';

const read = 'I have read this';
let house;
before(async () => {
  house = await begin();
});
after(() => house.end());

const visitFor = (context, options, from = house) => visitOf(from, context, options);

/** Past the first page, with the invented fleet joined. */
async function withFleet(visit) {
  await visit.tap('button', read);
  await visit.tap('button', 'Look at an invented fleet');
  await visit.tap('button', 'Join it to mine');
  await visit.reads('paragraph', /^5 aircraft/);
}

test('the page starts without a fault and asks nobody else for anything', async (context) => {
  const visit = await visitFor(context);
  await visit.sees('heading', 'Two Clocks');
  assert.deepEqual(visit.faults, []);
  assert.deepEqual(visit.strangers(), []);
});

test('it works under any path', async (context) => {
  const elsewhere = await begin({ base: '/some/where/else' });
  context.after(() => elsewhere.end());
  const visit = await visitFor(context, {}, elsewhere);
  await withFleet(visit);
  assert.deepEqual(visit.faults, []);
  assert.ok(visit.requests.every((url) => url.startsWith(elsewhere.address)));
});

test('an idle page draws no frame and sets no timer for ten seconds', async (context) => {
  const visit = await visitFor(context);
  await withFleet(visit);
  await visit.tap('tab', 'Fleet');
  const start = await visit.work();
  await visit.page.waitForTimeout(10_000);
  assert.deepEqual(await visit.work(), start);
  assert.ok(start.frames > 0);
});

test('a tapped field has a real input over it, and its text reaches the page', async (context) => {
  const visit = await visitFor(context);
  await visit.tap('button', read);
  await visit.tap('tab', 'Files');
  await visit.tap('button', 'Change the signature');
  const [field] = await visit.page.getByRole('textbox').all();
  const name = await field.getAttribute('aria-label');
  const seen = await field.boundingBox();
  await visit.page.evaluate(() => {
    document.getElementById('field_line').addEventListener('focus', () => {
      window.focused_in = window.event?.type;
    });
  });
  await visit.tap('textbox', name);
  const input = visit.page.locator('#field_line');
  assert.deepEqual(await input.boundingBox(), seen);
  assert.ok((await input.evaluate((each) => parseFloat(getComputedStyle(each).fontSize))) >= 16);
  await visit.page.keyboard.insertText('Émile 日');
  await visit.page.keyboard.press('Escape');
  await visit.settled();
  assert.equal((await visit.sees('textbox', name)).text, 'Émile 日');
});

test('the keyboard alone gets to every page, and the focus stays where it was', async (context) => {
  const visit = await visitFor(context, { touch: false });
  const { keyboard } = visit.page;
  const focused = () => visit.page.evaluate(() => document.activeElement.textContent);
  await keyboard.press('Tab');
  assert.equal(await focused(), read);
  await keyboard.press('Enter');
  await visit.sees('heading', 'Fleet');
  const passed = [];
  for (let presses = 0; presses < 12 && passed.at(-1) !== 'Files'; presses += 1) {
    await keyboard.press('Tab');
    passed.push(await focused());
  }
  assert.deepEqual(passed.slice(-4), ['Fleet', 'Log', 'History', 'Files']);
  await keyboard.press('Enter');
  await visit.sees('heading', 'Files');
  assert.equal(await focused(), 'Files');
});

test('a lost picture comes back', async (context) => {
  const visit = await visitFor(context);
  const seen = await visit.screenshot();
  await visit.page.evaluate(async () => {
    const canvas = document.getElementById('canvas');
    const lose = canvas.getContext('webgl2').getExtension('WEBGL_lose_context');
    const said = (name) => new Promise((then) => canvas.addEventListener(name, then));
    const lost = said('webglcontextlost');
    lose.loseContext();
    await lost;
    // The browser makes up its mind after the event: only then can the picture come back.
    await new Promise((then) => setTimeout(then, 100));
    const restored = said('webglcontextrestored');
    lose.restoreContext();
    await restored;
  });
  await visit.settled();
  assert.ok(seen.equals(await visit.screenshot()));
  assert.ok(await visit.page.locator('#trouble').isHidden());
});

test('a picture that stays away is explained, with a way out', async (context) => {
  const visit = await visitFor(context);
  await visit.page.evaluate(() => {
    const canvas = document.getElementById('canvas');
    canvas.getContext('webgl2').getExtension('WEBGL_lose_context').loseContext();
  });
  await visit.page.getByRole('button', { name: 'Load again' }).click();
  await visit.running();
  assert.ok(await visit.page.locator('#trouble').isHidden());
});

/** A page that is spoilt before it starts. */
async function spoilt(context, spoil) {
  const browser_context = await house.browser.newContext();
  context.after(() => browser_context.close());
  const page = await browser_context.newPage();
  await page.addInitScript(spoil);
  await page.goto(house.address);
  return page;
}

test('a browser without WebGL 2 is told so in plain text', async (context) => {
  const page = await spoilt(context, () => {
    HTMLCanvasElement.prototype.getContext = () => null;
  });
  await page.getByText('WebGL 2').waitFor();
});

test('a browser that refuses storage shows the page, and says nothing is kept', async (context) => {
  const page = await spoilt(context, () => {
    IDBFactory.prototype.open = () => {
      throw new DOMException('refused', 'SecurityError');
    };
  });
  await page.getByText('Nothing can be stored here').waitFor();
  await page.getByRole('button', { name: 'Go on without saving' }).click();
  await page.getByRole('button', { name: read }).waitFor({ state: 'attached' });
});

test('a store that never answers at the start is said, with a way out', async (context) => {
  const page = await spoilt(context, () => {
    if (!location.pathname.endsWith('rescue.html')) {
      IDBObjectStore.prototype.getAllKeys = () => new EventTarget();
    }
  });
  await page.getByText('Your records cannot be read just now').waitFor();
  await page.getByRole('button', { name: 'Load again' }).waitFor();
  await page.getByRole('button', { name: 'Save the records to a file' }).click();
  await page.getByRole('status').filter({ hasText: 'Records found: 0' }).waitFor();
});

test('when saving is never answered, what is in memory can be exported', async (context) => {
  const visit = await visitFor(context);
  await withFleet(visit);
  await visit.page.evaluate(() => {
    const add = IDBObjectStore.prototype.add;
    // A write that never ends: the transaction is kept alive for ever.
    IDBObjectStore.prototype.add = function hang(...rest) {
      const request = add.apply(this, rest);
      const keep = () => {
        this.count().onsuccess = keep;
      };
      keep();
      return request;
    };
  });
  await visit.tap('button', /^Set aside/);
  const way_out = visit.page.getByRole('button', { name: 'Export now' });
  await way_out.waitFor();
  const { bytes } = await visit.download(() => way_out.click());
  const text = bytes.toString('utf8');
  assert.match(text, /^\{"journal":"twoclocks"/);
  assert.match(text, /ISLE-1/);
});

test('a second tab reads along and takes the pen when the first one goes', async (context) => {
  const first = await visitFor(context);
  await first.tap('button', read);
  const second = await first.secondTab();
  await second.page.bringToFront();
  await second.reads('status', 'open elsewhere');
  await first.page.bringToFront();
  await first.tap('button', 'Look at an invented fleet');
  await first.tap('button', 'Join it to mine');
  await first.reads('paragraph', /^5 aircraft/);
  await second.page.bringToFront();
  await second.tap('tab', 'Files');
  await second.reads('paragraph', /^5 aircraft/);
  await first.page.close();
  await second.reads('status', /^saved$/);
  assert.deepEqual(second.faults, []);
});

test('the rescue page saves a journal that the program can join', async (context) => {
  const visit = await visitFor(context);
  await withFleet(visit);
  await visit.page.goto(`${house.address}rescue.html`);
  const save = visit.page.getByRole('button', { name: 'Save it as a journal file' });
  await save.waitFor();
  assert.ok((await visit.page.getByRole('status').textContent()).endsWith(' 1015'));
  const { name, bytes } = await visit.download(() => save.click());
  const other = await visitFor(context);
  await other.tap('button', read);
  await other.tap('tab', 'Files');
  await other.choose({ name, bytes }, () => other.tap('button', 'Import a file'));
  await other.tap('button', 'Join it to mine');
  await other.reads('paragraph', /^5 aircraft, 1,015 records/);
});
