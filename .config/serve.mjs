import { createHash } from 'node:crypto';
import { readFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import path from 'node:path';
import { brotliCompressSync } from 'node:zlib';
import { top } from './prepare.mjs';

const types = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
};

// The page's own policy is in the built page; these are for the server to say.
const headers = {
  'Content-Security-Policy': "frame-ancestors 'none'",
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
};

/** Serves the built app: files only, compressed, hashed assets kept for ever, the rest checked each time. */
export function serve({ folder, port, host = '127.0.0.1', isCompressed = true }) {
  const root = path.resolve(top, folder);
  const compressed = new Map();
  const server = createServer(async (request, response) => {
    const name = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    const file = path.join(root, name.endsWith('/') ? `${name}index.html` : name);
    if (file !== root && !file.startsWith(root + path.sep)) return response.writeHead(403).end();
    let body;
    try {
      body = await readFile(file);
    } catch {
      return response.writeHead(404, { 'Content-Type': 'text/plain' }).end('Not found');
    }
    const extension = path.extname(file);
    const sent = {
      ...headers,
      'Content-Type': types[extension] ?? 'application/octet-stream',
      'Cache-Control': name.startsWith('/assets/') ? 'public, max-age=31536000, immutable' : 'no-cache',
    };
    if (isCompressed && /br/.test(String(request.headers['accept-encoding'])) && extension !== '.png') {
      // By content: a new release can have files of the same name, length and beginning.
      const key = createHash('sha1').update(body).digest('hex');
      if (!compressed.has(key)) compressed.set(key, brotliCompressSync(body));
      body = compressed.get(key);
      sent['Content-Encoding'] = 'br';
    }
    response.writeHead(200, sent).end(body);
  });
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      const { port: actual } = server.address();
      resolve({
        url: `http://${host === '0.0.0.0' ? 'localhost' : host}:${actual}/`,
        close: () => {
          server.closeAllConnections();
          return new Promise((done) => server.close(done));
        },
      });
    });
  });
}
