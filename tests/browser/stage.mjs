// An engine and a server for the page, for as many visits as a test wants.
import { fileURLToPath } from 'node:url';
import { serve } from '../../web/tools/serve.mjs';
import { Visit } from './visit.mjs';

export const site = fileURLToPath(new URL('../../build/site', import.meta.url));

/** A visit whose page is closed when the test ends, whatever became of it. */
export async function visitOf(stage, context, options) {
  const visit = await stage.visit(options);
  context.after(() => visit.close());
  return visit;
}

/**
 * Starts an engine and a server for build/site.
 * `engine`: chromium, webkit or firefox. `base`: a path in front, as on a shared host.
 */
export async function begin({ engine = 'chromium', base = '', folder = site } = {}) {
  const { server, address } = await serve({ folder, base });
  const { beginEngine } = await import(`./engines/${engine}.mjs`);
  const started = await beginEngine();
  return {
    ...started,
    address,
    visit: (options = {}) => Visit.open(started, address, options),
    /** A visit in a browser of its own whose profile lies in a folder (Chromium). */
    async visitIn(kept_in, before) {
      const visit = new Visit(await started.windowIn(kept_in, before), address);
      await visit.window.go(address);
      await visit.running();
      return visit;
    },
    async end() {
      await started.end();
      server.closeAllConnections();
      server.close();
    },
  };
}
