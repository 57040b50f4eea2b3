/** A plain file server whose folder can be changed while it runs, as when a new version is put up. */
import { readFile } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.webmanifest': 'application/manifest+json',
};

export interface Site {
  readonly url: string;
  /** What is served from now on. */
  folder: string;
  close(): Promise<void>;
}

export async function serve(folder: string): Promise<Site> {
  const site: { folder: string } = { folder };
  const server: Server = createServer(async ({ url = '/' }, answer) => {
    const path = normalize(decodeURIComponent(new URL(url, 'http://site').pathname));
    const file = join(site.folder, path.endsWith('/') ? `${path}index.html` : path);
    try {
      const bytes = await readFile(file);
      answer.writeHead(200, {
        'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
        'cache-control': 'no-cache',
      });
      answer.end(bytes);
    } catch {
      answer.writeHead(404).end();
    }
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  return Object.assign(site, {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    close: () =>
      new Promise<void>((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  });
}
