/** The site without a network, and newer builds of it: a take is never interrupted, no page runs files of two builds. */
import { readFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { knownLine, type KnownLine } from './known-line.ts';
import {
  demoButton,
  expectAccessible,
  openRecording,
  startButton,
  stopButton,
  untilReview,
} from './screens.ts';
import { siteServer } from './site-server.ts';

const site = process.env.LANDFALL_SITE!;

/** Until every file of the build is kept and the page is served from there. */
const untilKept = (page: Page) =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    while (navigator.serviceWorker.controller === null)
      await new Promise((taken) =>
        navigator.serviceWorker.addEventListener('controllerchange', taken, { once: true }),
      );
  });

const newer = (page: Page) => page.getByRole('status').filter({ hasText: 'A newer Landfall' });

let line: KnownLine;
test.beforeAll(async () => {
  line = await knownLine();
});

test('from the second visit on no server is needed: the demo to its review, the written line, a file', async ({
  openApp,
}) => {
  const server = await siteServer(site);
  const { page, context, faults } = await openApp({ at: server.url });
  await untilKept(page);
  await server.goAway();
  await page.reload();
  await demoButton(page).click();
  await untilReview(page);
  await page.getByRole('button', { name: 'Written out' }).click();
  await expect(page.getByRole('button', { name: 'Print' })).toBeVisible();
  // A file whose decoder is loaded only now.
  await page.goto(server.url);
  const flac = readFileSync(new URL('../../fixtures/audio/pluck.flac', import.meta.url));
  await openRecording(page, { name: 'mine.flac', mimeType: 'audio/flac', buffer: flac });
  await expect(page.getByRole('button', { name: 'Grade it' })).toBeVisible();
  // A new window, and the licences beside the site.
  const other = await context.newPage();
  await other.goto(server.url);
  await expect(startButton(other)).toBeVisible();
  await other.goto(`${server.url}licences.txt`);
  await expect(other.getByText('Permission is hereby granted').first()).toBeVisible();
  // The guide, in its own letters and with its pictures.
  await other.goto(`${server.url}guide/player.html#sound-check`);
  await expect(other.getByRole('heading', { level: 2, name: 'Sound check' })).toBeInViewport();
  const pictures = await other.evaluate(() => [...document.images].map((image) => image.naturalWidth));
  expect(pictures.length).toBeGreaterThan(3);
  expect(Math.min(...pictures)).toBeGreaterThan(0);
  expect(faults).toEqual([]);
});

test('it can be installed: a manifest, icons of the sizes it names, and a service worker', async ({
  openApp,
}) => {
  const server = await siteServer(site);
  const { page, context } = await openApp({ at: server.url });
  await untilKept(page);
  // What Chromium itself has against installing it: nothing.
  const devtools = await context.newCDPSession(page);
  const { errors } = await devtools.send('Page.getAppManifest');
  expect(errors).toEqual([]);
  const { installabilityErrors } = await devtools.send('Page.getInstallabilityErrors');
  expect(installabilityErrors).toEqual([]);
  const manifest = JSON.parse(readFileSync(`${site}/manifest.webmanifest`, 'utf8')) as {
    icons: { src: string; sizes: string }[];
  };
  for (const { src, sizes } of manifest.icons) {
    const pixels = await page.evaluate(async (address) => {
      const picture = new Image();
      picture.src = address;
      await picture.decode();
      return `${picture.naturalWidth}x${picture.naturalHeight}`;
    }, src);
    expect(pixels).toBe(sizes);
  }
  await server.goAway();
});

test('a newer build in mid-take waits, says so afterwards, and is used when the player says so', async ({
  openApp,
}) => {
  const server = await siteServer(site);
  const { page, context } = await openApp({ at: server.url, microphone: { file: line.file } });
  await untilKept(page);
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
  server.bringNewerBuild();
  // Another window looks at the server, as every visit does: the newer build is fetched and waits.
  const other = await context.newPage();
  await other.goto(server.url);
  await expect(newer(other)).toBeVisible();
  await other.getByRole('button', { name: 'Use it now' }).click();
  await expect(other.getByText(/Landfall is open in another window/)).toBeVisible();
  await expectAccessible(other);
  await other.close();
  // The take goes on, unasked.
  await expect(newer(page)).toHaveCount(0);
  await page.waitForTimeout(4000);
  await stopButton(page).click();
  await untilReview(page);
  await expect(page.getByText(/\b[1-9]\d*\snotes\b/).first()).toBeVisible();
  await expect(newer(page)).toHaveCount(0);
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await expect(newer(page)).toBeVisible();
  const before = await page.evaluate(() => performance.timeOrigin);
  await page.getByRole('button', { name: 'Use it now' }).click();
  await page.waitForFunction((then) => performance.timeOrigin !== then, before);
  await expect(startButton(page)).toBeVisible();
  await expect(newer(page)).toHaveCount(0);
  const waiting = await page.evaluate(
    async () => (await navigator.serviceWorker.getRegistration())!.waiting === null,
  );
  expect(waiting).toBe(true);
  // The take is there.
  await page.getByRole('region', { name: 'Earlier takes' }).getByRole('button').first().click();
  await untilReview(page);
  await server.goAway();
});
