/** What is fetched before the open page can be used, and what happens where the rest of the program does not come. */
import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import type { Page, Route } from '@playwright/test';
import { expect, test } from './app.ts';
import { knownLine } from './known-line.ts';
import { startButton, stopButton, untilReview } from './screens.ts';
import { siteServer } from './site-server.ts';

const site = process.env.LANDFALL_SITE!;

/** Script and style of the open page, compressed. Asked are 90 kB. */
const MOST_FIRST_LOAD_KB = 90;

/** The browser never has nothing to do: what comes later does not come by itself. */
const neverIdle = (page: Page) =>
  page.addInitScript(() => {
    window.requestIdleCallback = () => 0;
  });

test('the open page stands with little script and style, and takes what is set', async ({ openApp }) => {
  const fetched: string[] = [];
  const { page } = await openApp({
    before: async (opened) => {
      await neverIdle(opened);
      opened.on('request', (request) => {
        if (['script', 'stylesheet'].includes(request.resourceType())) fetched.push(request.url());
      });
    },
  });
  await expect(startButton(page)).toBeEnabled();
  await page.getByRole('combobox', { name: 'Key' }).selectOption('G');
  await page.waitForLoadState('networkidle');
  const bytes = fetched.map((url) => {
    const name = new URL(url).pathname.replace(/^\//, '');
    return [name, gzipSync(readFileSync(`${site}/${name}`)).length] as const;
  });
  for (const [name, size] of bytes) console.log(`${name}: ${(size / 1000).toFixed(1)} kB`);
  const kilobytes = bytes.reduce((sum, [, size]) => sum + size, 0) / 1000;
  console.log(`First load: ${kilobytes.toFixed(1)} kB of script and style, compressed`);
  expect(bytes.some(([name]) => name.endsWith('.css'))).toBe(true);
  expect(kilobytes).toBeLessThan(MOST_FIRST_LOAD_KB);
  // Another language comes when it is chosen.
  const before = fetched.length;
  await page.getByRole('combobox', { name: 'Language' }).selectOption('de');
  await expect(page.locator('html[lang=de]')).toBeVisible();
  expect(fetched.length).toBeGreaterThan(before);
});

/** Of the layout shifts of a page their sum may be this much (web.dev, "Cumulative Layout Shift": good is 0.1 at most). */
const MOST_SHIFT = 0.1;
const LATE_FONT_MS = 1500;

for (const [width, height] of [
  [1280, 800],
  [390, 844],
] as const)
  test(`nothing moves on the open page when its typefaces come late, at ${width} × ${height}`, async ({
    openApp,
  }) => {
    const { page } = await openApp({
      at: process.env.LANDFALL_URL!,
      before: async (opened) => {
        await opened.setViewportSize({ width, height });
        await opened.route('**/service-worker.js', (route) => route.abort('connectionrefused'));
        await opened.route(/\.(woff2|otf)$/, async (route) => {
          await new Promise((after) => setTimeout(after, LATE_FONT_MS));
          await route.continue();
        });
        await opened.addInitScript(() => {
          const sums = { shifts: 0 };
          Object.assign(window, { sums });
          new PerformanceObserver((list) => {
            for (const entry of list.getEntries())
              sums.shifts += (entry as PerformanceEntry & { value: number }).value;
          }).observe({ type: 'layout-shift', buffered: true });
        });
      },
    });
    const stands = await page.evaluate(async () => {
      const known = ['Times New Roman', 'Liberation Serif', 'Tinos'].map((name) =>
        new FontFace('asked', `local('${name}')`).load().then(
          () => true,
          () => false,
        ),
      );
      return (await Promise.all(known)).includes(true);
    });
    test.skip(!stands, 'this machine has none of the fonts that stand in: Times New Roman, Liberation Serif');
    await expect(startButton(page)).toBeEnabled();
    await page.evaluate(() => document.fonts.ready);
    await expect
      .poll(() => page.evaluate(() => document.fonts.check('600 20px Besley')), { timeout: 20_000 })
      .toBe(true);
    // Two frames: what the fonts moved has been drawn and counted.
    await page.evaluate(
      () => new Promise((drawn) => requestAnimationFrame(() => requestAnimationFrame(drawn))),
    );
    await page.waitForTimeout(500);
    const shifts = await page.evaluate(() => (window as unknown as { sums: { shifts: number } }).sums.shifts);
    console.log(`Layout shifts at ${width} × ${height}: ${shifts.toFixed(4)}`);
    expect(shifts).toBeLessThan(MOST_SHIFT);
  });

/** The page stands, and as long as `isGone` says so, neither `part` nor an answer of the server comes any more. */
async function serverGone(page: Page, part: string, isGone: () => boolean): Promise<void> {
  const unlessGone = (route: Route) => (isGone() ? route.abort('connectionrefused') : route.continue());
  await neverIdle(page);
  await page.route('**/service-worker.js', (route) => route.abort('connectionrefused'));
  // Whether the server answers is asked by a fetch of the page itself.
  await page.route(
    ({ pathname }) => pathname === '/',
    (route) => (route.request().resourceType() === 'fetch' ? unlessGone(route) : route.continue()),
  );
  await page.route(part, unlessGone);
}

test('a folded part is fetched when it is unfolded; where it does not come, its place says so', async ({
  openApp,
}) => {
  let isGone = true;
  const { page } = await openApp({
    at: process.env.LANDFALL_URL!,
    before: (opened) => serverGone(opened, '**/assets/later-parts-*.js', () => isGone),
  });
  const fold = page.getByRole('group').filter({ hasText: 'Practise a part of it' });
  const again = fold.getByRole('button', { name: 'Try again' });
  const fromBar = fold.getByRole('combobox', { name: 'From bar' });
  await page.getByText('Practise a part of it').press('Enter');
  await expect(fold).toContainText('could not be fetched');
  // The page goes on, and the button that was pressed keeps the focus.
  await page.getByRole('combobox', { name: 'Key' }).selectOption('G');
  await again.press('Enter');
  await expect(fold).toContainText('could not be fetched');
  await expect(again).toBeFocused();
  isGone = false;
  const anew = page.waitForEvent('load');
  await again.press('Enter');
  await anew;
  await expect(page.getByRole('combobox', { name: 'Key' })).toHaveValue('G');
  await expect(fromBar).toHaveCount(0);
  const summary = page.getByText('Practise a part of it');
  await summary.press('Enter');
  await expect(fromBar).toBeVisible();
  await expect(summary).toBeFocused();
});

test('where the rest does not come, a press says so in one sentence, and a later one loads the page anew', async ({
  openApp,
}) => {
  let isGone = true;
  const { page } = await openApp({
    at: process.env.LANDFALL_URL!,
    before: (opened) => serverGone(opened, '**/assets/*rest-*', () => isGone),
  });
  const sentence = page.getByText('The rest of Landfall could not be fetched');
  await page.getByRole('combobox', { name: 'Key' }).selectOption('G');
  await startButton(page).click();
  await expect(sentence).toBeVisible();
  await expect(startButton(page)).toBeEnabled();
  await expect(page.getByRole('combobox', { name: 'Key' })).toHaveValue('G');
  // A page of its own says it in its place, with a way on and a way back.
  await page.getByRole('button', { name: 'What to practise today' }).click();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('The rest of Landfall could not');
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await expect(startButton(page)).toBeEnabled();
  isGone = false;
  // The server answers again: the page is loaded anew, with what was set.
  const anew = page.waitForEvent('load');
  await startButton(page).click();
  await anew;
  await expect(page.getByRole('combobox', { name: 'Key' })).toHaveValue('G');
  await page.getByRole('button', { name: 'What to practise today' }).click();
  await expect(page.getByRole('button', { name: 'Back', exact: true })).toBeVisible();
  await expect(sentence).toHaveCount(0);
});

test('a take that has begun needs the server no more: it is graded and kept', async ({ openApp }) => {
  const server = await siteServer(site);
  const line = await knownLine();
  const { page } = await openApp({
    at: server.url,
    microphone: { file: line.file },
    before: async (opened) => {
      await neverIdle(opened);
      await opened.route('**/service-worker.js', (route) => route.abort('connectionrefused'));
    },
  });
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
  // At once: what the end of the take needs was fetched before it began.
  await server.goAway();
  await page.waitForTimeout(6000);
  await stopButton(page).click();
  await untilReview(page);
  await expect(page.getByText(/\b[1-9]\d*\snotes\b/).first()).toBeVisible();
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'Takes' })).toBeVisible();
});
