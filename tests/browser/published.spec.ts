/**
 * The built site as src/pages/publish.md says it is published: static files in a folder below the root of a host, with the
 * headers of that page and nothing else.
 */
import { createServer, type Server } from 'node:http';
import { existsSync, readFileSync, statSync } from 'node:fs';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';
import { fileURLToPath } from 'node:url';
import { chromium, expect, test } from '@playwright/test';
import { demoButton, untilReview } from './screens.ts';

const FOLDER = '/practice/landfall/';
const app = process.env.LANDFALL_APP ?? fileURLToPath(new URL('../../dist/app', import.meta.url));
const page = readFileSync(new URL('../../src/pages/publish.md', import.meta.url), 'utf8');
const headers = JSON.parse(/```json headers\.json\n([^`]*)```/.exec(page)![1]!) as Record<string, string>;

/** What any web server knows. */
const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.wasm': 'application/wasm',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
};

let server: Server;
test.beforeAll(async () => {
  server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    const asked = path.startsWith(FOLDER)
      ? join(app, normalize(path.slice(FOLDER.length)) || 'index.html')
      : '';
    const file = path === FOLDER ? join(app, 'index.html') : asked;
    if (file === '' || !existsSync(file) || !statSync(file).isFile()) {
      response.writeHead(404, headers).end();
      return;
    }
    const type = TYPES[extname(file)] ?? 'application/octet-stream';
    response.writeHead(200, { ...headers, 'Content-Type': type }).end(readFileSync(file));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
});
test.afterAll(() => {
  server.close();
});

test('in a folder of a host, with the headers of the page, the demo take is graded', async () => {
  const browser = await chromium.launch({
    executablePath: process.env.LANDFALL_EXECUTABLE!,
    args: ['--no-sandbox', '--disable-gpu', '--autoplay-policy=no-user-gesture-required'],
    env: { ...process.env, ...JSON.parse(process.env.LANDFALL_EXECUTABLE_ENV ?? '{}') },
  });
  try {
    const visit = await browser.newPage({ reducedMotion: 'reduce' });
    const wrong: string[] = [];
    visit.on('pageerror', (error) => wrong.push(String(error)));
    visit.on('console', (message) => {
      if (message.type() === 'error') wrong.push(message.text());
    });
    visit.on('response', (answer) => {
      if (answer.status() !== 200) wrong.push(`${answer.status()} ${answer.url()}`);
    });
    const { port } = server.address() as AddressInfo;
    const opened = await visit.goto(`http://127.0.0.1:${port}${FOLDER}`);
    expect(await opened?.headerValue('content-security-policy')).toBe(headers['Content-Security-Policy']);
    await demoButton(visit).click();
    await untilReview(visit);
    expect(wrong).toEqual([]);
  } finally {
    await browser.close();
  }
});
