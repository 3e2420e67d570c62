// A small server for the built page.
import { createReadStream, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';

const types = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.ttf': 'font/ttf',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff2': 'font/woff2',
};

/** The file in `folder` that a URL's path names, or null: no such file, or a path that leads out of the folder. */
export function fileFor(folder, urlPath) {
  let path;
  try {
    path = decodeURIComponent(urlPath);
  } catch {
    return null; // a malformed escape names no file
  }
  if (path.includes('\0')) return null;
  const file = normalize(join(folder, path.endsWith('/') ? `${path}index.html` : path));
  if (!file.startsWith(normalize(folder + sep))) return null;
  return statSync(file, { throwIfNoEntry: false })?.isFile() ? file : null;
}

function answer(folder, request, response) {
  const refuse = (status, words) => {
    response.writeHead(status, { 'content-type': types['.txt'] });
    response.end(`${words}\n`);
  };
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(405, 'Only GET and HEAD are served here.');
  const file = fileFor(folder, request.url.split(/[?#]/, 1)[0]);
  if (!file) return refuse(404, 'There is no such file.');
  response.writeHead(200, {
    'content-type': types[extname(file)] ?? 'application/octet-stream',
    'content-length': statSync(file).size,
    'cache-control': 'no-cache',
  });
  if (request.method === 'HEAD') return response.end();
  createReadStream(file)
    .on('error', () => response.destroy())
    .pipe(response);
}

/**
 * Serves `folder` on the first free port from `port` upwards (0: any free port).
 * Resolves to the server and its address.
 */
export function serve(folder, { port = 4173, host = '127.0.0.1' } = {}) {
  return new Promise((resolve, reject) => {
    const server = createServer((request, response) => answer(folder, request, response));
    let next = port;
    server.on('error', (error) => {
      if (error.code === 'EADDRINUSE' && next < Math.min(port + 200, 65535)) server.listen(++next, host);
      else reject(error);
    });
    server.on('listening', () => resolve({ server, url: `http://${host}:${server.address().port}/` }));
    server.listen(next, host);
  });
}
