// The service worker, in Chromium: without a signal, a new version, the kill switch, installing.
import assert from 'node:assert/strict';
import { cp, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { after, before, test } from 'node:test';
import { begin, site, visitOf } from './driver.mjs';

let house;
before(async () => {
  house = await begin();
});
after(() => house.end());

/** A copy of the site that a test may change, with a server of its own. */
async function changingSite(context) {
  const folder = await mkdtemp(join(tmpdir(), 'two_clocks_site_'));
  context.after(() => rm(folder, { recursive: true }));
  await cp(site, folder, { recursive: true });
  const stage = await begin({ folder });
  context.after(() => stage.end());
  return { folder, stage };
}

test('after one visit everything works without a signal', async (context) => {
  const visit = await visitOf(house, context);
  await visit.keptOffline();
  await visit.offline(true);
  await visit.reload();
  await visit.tap('button', 'I have read this');
  await visit.joinDemo();
  await visit.reload();
  await visit.tap('tab', 'Files');
  await visit.reads('paragraph', /^5 aircraft/);
});

test('a new version is offered, and starts only when it is accepted', async (context) => {
  const { folder, stage } = await changingSite(context);
  const visit = await visitOf(stage, context, { fleet: 'none' });
  await visit.keptOffline();
  await visit.reload();
  await renewed(folder);
  await visit.page.evaluate(async () => {
    await (await navigator.serviceWorker.ready).update();
  });
  await visit.sees('button', /new version|start it/i);
  assert.ok(!(await visit.page.title()).endsWith('renewed'));
  const { x, y } = await visit.spot('button', /new version|start it/i);
  await visit.page.touchscreen.tap(x, y);
  await visit.page.waitForFunction(() => document.title.endsWith('renewed'));
  await visit.running();
});

test('the kill switch takes the kept files and the worker away, and no record', async (context) => {
  const { folder, stage } = await changingSite(context);
  const visit = await visitOf(stage, context, { fleet: 'demo' });
  await visit.keptOffline();
  const kept = () => visit.page.evaluate(() => caches.keys());
  assert.ok((await kept()).length > 0);
  await cp(join(folder, 'kill_switch_worker.js'), join(folder, 'service_worker.js'));
  // The page would register the worker again: what is left is looked at from one that does not.
  const other = await visit.context.newPage();
  await other.goto(`${stage.address}rescue.html`);
  await visit.page.close();
  const left = () =>
    other.evaluate(async () => {
      const all = await navigator.serviceWorker.getRegistrations();
      await all[0]?.update();
      return [all.length, await caches.keys()];
    });
  const gone = JSON.stringify([0, []]);
  await visit.until('an end of the worker', async () => JSON.stringify(await left()) === gone);
  await other.reload();
  await other.getByRole('button', { name: 'Save it as a journal file' }).waitFor();
});

/** The next version of a site: a page with another title, and the worker that keeps it. */
async function renewed(folder) {
  const names = await readdir(folder);
  assert.ok(names.includes('service_worker.js'));
  const page = join(folder, 'index.html');
  const text = await readFile(page, 'utf8');
  await writeFile(page, text.replace('</title>', ' renewed</title>'));
  const path = join(folder, 'service_worker.js');
  const worker = await readFile(path, 'utf8');
  const fresh = worker.replace(/(url:"index\.html",revision:")[0-9a-f]+/, '$10123456789ab');
  assert.notEqual(fresh, worker);
  await writeFile(path, fresh);
}

test('it can be installed', async (context) => {
  // Chromium judges this only for a normal profile, not for the private ones that tests use.
  const profile = await mkdtemp(join(tmpdir(), 'two_clocks_profile_'));
  context.after(() => rm(profile, { recursive: true, force: true }));
  const person = await house.profile(profile);
  context.after(() => person.close());
  const page = person.pages()[0] ?? (await person.newPage());
  await page.goto(house.address);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  const session = await person.newCDPSession(page);
  const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
  assert.deepEqual(installabilityErrors, []);
});
