/** The built site on a server of the test's own, which can go away, and can bring a newer build. */
import { createReadStream, existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json',
};

export interface SiteServer {
  readonly url: string;
  /** From now on the service worker differs by a byte, as that of a newer build does. */
  bringNewerBuild(): void;
  /** The machine is off the network: nobody answers any more. */
  goAway(): Promise<void>;
}

/** @param folder the built site @param without paths that are missing from the server */
export async function siteServer(folder: string, without: readonly string[] = []): Promise<SiteServer> {
  let newerBuilds = 0;
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://site').pathname));
    const file = join(folder, path === '/' ? 'index.html' : path);
    if (without.some((name) => path.includes(name)) || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream' });
    if (newerBuilds > 0 && path === '/service-worker.js')
      response.end(`${readFileSync(file, 'utf8')}\n// newer build ${newerBuilds}`);
    else createReadStream(file).pipe(response);
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  return {
    url: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    bringNewerBuild: () => void newerBuilds++,
    goAway: () => {
      server.closeAllConnections();
      return new Promise((gone) => server.close(() => gone()));
    },
  };
}
