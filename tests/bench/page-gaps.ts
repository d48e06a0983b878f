/**
 * Whether the page stays alive while the app works: the longest time between two frames during each long work on a large
 * input, beside an idle run in the same browser, and how long Cancel takes to end it.
 *
 *   npm run build && npx tsx tests/bench/page-gaps.ts [--site FOLDER]
 */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium, type Locator, type Page } from '@playwright/test';
import { chance } from '../../src/core/base/random.ts';
import { findBrowser } from '../browser/find-browser.ts';
import { siteServer } from '../browser/site-server.ts';
import { musicXmlFile, notesFile } from './growth-files.ts';
import { writeLongLine } from './long-line.ts';

const { values } = parseArgs({
  options: {
    site: { type: 'string', default: fileURLToPath(new URL('../../dist/app', import.meta.url)) },
  },
});
const MINUTES = 12;
const IDLE_MS = 10_000;
/** A work that goes on is looked at for so long, and then cancelled. */
const LOOK_MS = 20_000;
const ANSWER_MS = 240_000;

const folder = mkdtempSync(join(tmpdir(), 'landfall-gaps-'));
const path = (name: string) => join(folder, name);
const browser = findBrowser();
const server = await siteServer(values.site);
const context = await chromium.launchPersistentContext(path('profile'), {
  executablePath: browser.executable,
  env: { ...process.env, ...browser.env },
  args: ['--no-sandbox'],
  serviceWorkers: 'block',
});

/** Times between frames, from now on. As text: tsx puts names of its own into functions, which the page does not have. */
const startFrames = (page: Page) =>
  page.evaluate(`{
    const frames = (globalThis.frameTimes = { gaps: [], goes: true });
    let last = performance.now();
    requestAnimationFrame(function frame(now) {
      frames.gaps.push(now - last);
      last = now;
      if (frames.goes) requestAnimationFrame(frame);
    });
  }`);

async function framesSaid(page: Page): Promise<string> {
  const gaps = await page.evaluate(() => {
    const { frameTimes } = globalThis as unknown as { frameTimes: { gaps: number[]; goes: boolean } };
    frameTimes.goes = false;
    return frameTimes.gaps;
  });
  const sorted = gaps.toSorted((a, b) => a - b);
  return `${gaps.length} frames, longest gap ${sorted.at(-1)!.toFixed(0)} ms, 99 of 100 under ${sorted[Math.floor(0.99 * sorted.length)]!.toFixed(0)} ms`;
}

/** @param cancel presses Cancel where the work goes on; null for one that has none */
async function during(
  page: Page,
  name: string,
  begin: () => Promise<unknown>,
  done: Locator,
  cancel: Locator | null = null,
  back: Locator = page.getByRole('button', { name: 'Start playing' }),
): Promise<void> {
  await startFrames(page);
  const began = Date.now();
  await begin();
  const ended = await done
    .first()
    .waitFor({ timeout: cancel === null ? ANSWER_MS : LOOK_MS })
    .then(() => true)
    .catch(() => false);
  const seconds = ((Date.now() - began) / 1000).toFixed(1);
  const frames = await framesSaid(page);
  let end = ended ? `done in ${seconds} s` : `goes on after ${seconds} s`;
  if (!ended && cancel !== null) {
    const pressed = Date.now();
    await cancel
      .or(done)
      .first()
      .click()
      .then(() => back.first().waitFor())
      .then(
        () => (end += `, cancelled in ${Date.now() - pressed} ms`),
        () => (end += ', neither done nor cancelled'),
      );
  }
  console.log(`${name}: ${frames}; ${end}`);
}

try {
  await writeLongLine(path('line.wav'), MINUTES);
  writeFileSync(path('chart.musicxml'), musicXmlFile(4000, chance(1)));
  writeFileSync(path('notes.csv'), notesFile(100_000, 0.2));
  const page = await context.newPage();
  const fresh = async () => {
    await page.goto(server.url);
    await page.getByRole('button', { name: 'Start playing' }).waitFor();
    await page.waitForTimeout(4000);
  };
  const button = (name: string) => page.getByRole('button', { name, exact: true });
  const opened = (file: string) =>
    page.locator('input[type=file][multiple][accept^="audio"]').setInputFiles(path(file));

  await fresh();
  await startFrames(page);
  await page.waitForTimeout(IDLE_MS);
  console.log(`idle: ${await framesSaid(page)}`);

  await during(
    page,
    `a recording of ${MINUTES} minutes is read and its tempo looked for`,
    () => opened('line.wav'),
    button('Grade it'),
    button('Cancel'),
  );
  if (await button('Grade it').isVisible())
    await during(
      page,
      'it is graded',
      () => button('Grade it').click(),
      button('Hear the take'),
      button('Cancel'),
    );

  await fresh();
  await during(
    page,
    'a list of 100,000 notes is read',
    () => opened('notes.csv'),
    button('Grade it'),
    button('Cancel'),
  );

  await fresh();
  await page.locator('span.title', { hasText: 'Write a chart' }).click();
  const chooser = page.locator('input[type=file][accept*=".musicxml"]').first();
  await chooser.waitFor({ state: 'attached' });
  await during(
    page,
    'a chart of 4,000 bars is read from a score and shown',
    () => chooser.setInputFiles(path('chart.musicxml')),
    page.getByText('4000 bars').or(page.getByText('4,000 bars')),
    page.getByRole('button', { name: /^(Cancel|Stop)/ }),
  );

  await fresh();
  await during(
    page,
    `a backing of ${MINUTES} minutes is read`,
    async () => {
      const [files] = await Promise.all([
        page.waitForEvent('filechooser'),
        button('Bring your own backing').click(),
      ]);
      await files.setFiles(path('line.wav'));
    },
    page.getByRole('slider', { name: /Beats of the backing/ }),
    button('Cancel'),
  );
} finally {
  await context.close();
  await server.goAway();
  browser.dispose();
  rmSync(folder, { recursive: true, force: true });
}
