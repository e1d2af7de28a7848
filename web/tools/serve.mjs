// A small server for build/site: for looking at the page and for the tests. Any static host will
// do.
import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.wasm': 'application/wasm',
  '.otf': 'font/otf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.jsonl': 'text/plain; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.md': 'text/plain; charset=utf-8',
};
const hashed = /\.[0-9a-f]{12}\.[a-z]+$/;

/** File of an address below the folder, or nothing. */
async function fileFor(folder, address) {
  const path = decodeURIComponent(new URL(address, 'http://local').pathname);
  const file = join(folder, normalize(path.endsWith('/') ? `${path}index.html` : path));
  if (!file.startsWith(folder)) return undefined;
  const found = await stat(file).catch(() => undefined);
  return found?.isFile() ? { file, size: found.size } : undefined;
}

/**
 * Serves a folder on the loopback address. `base` is a path in front of it, as on a shared host.
 * @param {{ folder: string, port?: number, base?: string }} options
 */
export async function serve({ folder, port = 0, base = '' }) {
  const server = createServer(async (request, response) => {
    const address = request.url ?? '/';
    const inside = address.startsWith(`${base}/`) ? address.slice(base.length) : undefined;
    const found = inside === undefined ? undefined : await fileFor(folder, inside);
    if (found === undefined || !['GET', 'HEAD'].includes(request.method ?? '')) {
      response.writeHead(404, { 'content-type': 'text/plain' }).end('not here\n');
      return;
    }
    const keep = hashed.test(found.file) ? 'max-age=31536000, immutable' : 'no-cache';
    response.writeHead(200, {
      'content-type': types[extname(found.file)] ?? 'application/octet-stream',
      'content-length': found.size,
      'cache-control': keep,
      'x-content-type-options': 'nosniff',
    });
    if (request.method === 'HEAD') response.end();
    else createReadStream(found.file).pipe(response);
  });
  await new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', () => resolve(undefined));
  });
  const { port: taken } = /** @type {import('node:net').AddressInfo} */ (server.address());
  return { server, address: `http://localhost:${taken}${base}/` };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const port = Number(process.argv[2] ?? 8080);
  const folder = fileURLToPath(new URL('../../build/site', import.meta.url));
  try {
    const { address } = await serve({ folder, port });
    console.log(`Two Clocks is at ${address}  (Ctrl+C ends it)`);
  } catch (error) {
    console.error(`Port ${port} cannot be used (${error.code}): try demo/run --port ${port + 1}`);
    process.exitCode = 1;
  }
}
