/**
 * Serves the built site on this machine, compressed, under BASE as it was built. Used by `npm start` and by the browser checks.
 * `node src/build/serve.mjs [--open-sheet]`; the port is PORT, 4321 unless given, or the next free one.
 */
import { readFile, stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { brotliCompress, gzip } from 'node:zlib';

const encodings = { br: promisify(brotliCompress), gzip: promisify(gzip) };
const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.ts': 'text/plain; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
};

/**
 * What `_headers` says of a path: lines without a margin name paths, `*` for the rest of one, and those under them a header each.
 * The file itself is for the host.
 */
async function rulesIn(dir) {
  const rules = [];
  for (const line of (await readFile(join(dir, '_headers'), 'utf8').catch(() => '')).split('\n')) {
    const header = /^\s+([^:]+):\s*(.*)$/.exec(line);
    if (header) rules.at(-1)?.headers.push([header[1].toLowerCase(), header[2]]);
    else if (line !== '') rules.push({ path: line.trim(), headers: [] });
  }
  return (path) =>
    Object.fromEntries(
      rules
        .filter((rule) => (rule.path.endsWith('*') ? path.startsWith(rule.path.slice(0, -1)) : path === rule.path))
        .flatMap(({ headers }) => headers),
    );
}

/** What was compressed once is not compressed again while the file is the same: a host would have done it beforehand. */
const done = new Map();
async function packed(encoding, file, body) {
  const key = `${encoding} ${file}`;
  const before = done.get(key);
  if (before?.of.equals(body)) return before.gives;
  const gives = await encodings[encoding](body);
  done.set(key, { of: body, gives });
  return gives;
}

/** The file of an address, `null` where there is none, or a path to go to instead. */
async function find(dir, base, address) {
  const { pathname, search } = new URL(address, 'http://localhost');
  const path = decodeURIComponent(pathname);
  if (!path.startsWith(base)) return path === '/' || `${path}/` === base ? { goTo: base } : null;
  const file = join(dir, path.slice(base.length));
  if ((file !== dir && !file.startsWith(dir + sep)) || file === join(dir, '_headers')) return null;
  const found = await stat(file).catch(() => null);
  if (!found) return null;
  if (found.isFile()) return { file };
  return path.endsWith('/') ? { file: join(file, 'index.html') } : { goTo: `${pathname}/${search}` };
}

async function answer(dir, base, rulesOf, request) {
  const found = await find(dir, base, request.url).catch(() => null);
  if (found?.goTo) return { status: 308, headers: { location: found.goTo }, body: '' };
  const kept = found && (await readFile(found.file).catch(() => null));
  const file = kept ? found.file : join(dir, '404.html');
  let body = kept ?? (await readFile(file).catch(() => Buffer.from('Not found')));
  const type = types[extname(file)] ?? 'application/octet-stream';
  const { pathname } = new URL(request.url, 'http://localhost');
  const headers = { 'cache-control': 'no-cache', ...rulesOf(pathname), 'content-type': type };
  const accepted = request.headers['accept-encoding'] ?? '';
  const encoding = Object.keys(encodings).find((name) => accepted.includes(name));
  if (encoding && /^text|json|svg|manifest/.test(type)) {
    body = await packed(encoding, file, body);
    headers['content-encoding'] = encoding;
    headers.vary = 'accept-encoding';
  }
  return { status: kept ? 200 : 404, headers, body };
}

/** Listens on the port, or on the next free one. Port 0 takes any. */
function listen(server, port) {
  return new Promise((resolve, reject) => {
    server.once('error', (error) => {
      if (error.code === 'EADDRINUSE' && port < 65535) resolve(listen(server, port + 1));
      else reject(error);
    });
    server.listen(port, '127.0.0.1', () => resolve(server.address().port));
  });
}

/** Starts the server. Gives the site's address, base included and with a slash at its end, and a way to close it. */
export async function serve({
  dir = fileURLToPath(new URL('../../dist', import.meta.url)),
  port = 0,
  base = '/',
} = {}) {
  const folder = base.endsWith('/') ? base : `${base}/`;
  const rulesOf = await rulesIn(dir);
  const server = createServer(async (request, response) => {
    const { status, headers, body } = await answer(dir, folder, rulesOf, request);
    response.writeHead(status, headers).end(request.method === 'HEAD' ? undefined : body);
  });
  const taken = await listen(server, port);
  const close = () =>
    new Promise((resolve) => {
      server.close(resolve);
      server.closeAllConnections();
    });
  return { url: `http://127.0.0.1:${taken}${folder}`, close };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const { url } = await serve({ port: Number(process.env.PORT ?? 4321), base: process.env.BASE ?? '/' });
  console.log(process.argv.includes('--open-sheet') ? `${url}worksheets/capacity/?demo` : url);
}
