/**
 * `npm run pictures`: every picture of the guide pages, from the built site in the light palette. A screen is laid out at
 * 1280 pixels and written at three quarters of that. `npm run pictures -- -g review` makes those whose name holds a word.
 */
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Page } from '@playwright/test';
import { chance } from '../../src/core/base/random.ts';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';
import { pluckLine } from '../analysis/pluck.ts';
import { renderTrack, wanderingSeconds } from '../core/beats/rendered-track.ts';
import { kitSynth } from '../core/sound/kit-file.ts';
import { expect, test } from './app.ts';
import { keepTakes, keptTake } from './kept-takes.ts';
import { demoButton, untilReview } from './screens.ts';

const WIDTH = 1280;
const HEIGHT = 800;
const SCALE = 0.75;
const RATE = 44_100;
/** Bars of the demo take, at its 96 beats a minute. */
const DEMO_BAR_MS = 2500;

const prepare = async (page: Page): Promise<void> => {
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  await page.setViewportSize({ width: WIDTH, height: HEIGHT });
};

/** @param height of the window */
async function take(page: Page, name: string, height = HEIGHT): Promise<void> {
  await page.setViewportSize({ width: WIDTH, height });
  await page.mouse.move(0, 0);
  await page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
  await page.evaluate(() => document.fonts.ready);
  await page.waitForTimeout(500);
  const y = await page.evaluate(() => window.scrollY);
  const browser = await page.context().newCDPSession(page);
  const { data } = await browser.send('Page.captureScreenshot', {
    format: 'png',
    clip: { x: 0, y, width: WIDTH, height, scale: SCALE },
  });
  writeFileSync(
    fileURLToPath(new URL(`../../src/pages/pictures/${name}.png`, import.meta.url)),
    Buffer.from(data, 'base64'),
  );
}

test('ready', async ({ openApp }) => {
  const { page } = await openApp();
  await prepare(page);
  await page.getByText('Jazz blues', { exact: true }).first().click();
  await page.getByLabel(/^Key/).first().selectOption('Db');
  await page.getByLabel('Tempo').fill('118');
  await page.getByLabel('Tempo').press('Enter');
  await take(page, 'ready', 933);
});

test('playing', async ({ openApp }) => {
  const { page } = await openApp();
  await prepare(page);
  await demoButton(page).click();
  await expect(page.getByText('To the review')).toBeVisible({ timeout: 30_000 });
  // Into bar 11: the form is filled, and the V comes next.
  await page.waitForTimeout(10 * DEMO_BAR_MS + 300);
  await take(page, 'playing');
});

async function demoReview(page: Page): Promise<void> {
  await prepare(page);
  await demoButton(page).click();
  await untilReview(page);
}

test('review', async ({ openApp }) => {
  const { page } = await openApp();
  await demoReview(page);
  await take(page, 'review', 1515);
});

test('correct', async ({ openApp }) => {
  const { page } = await openApp();
  await demoReview(page);
  await page.getByRole('button', { name: 'Correct notes (E)' }).click();
  await page.getByRole('heading', { name: 'The line' }).evaluate((heading) => heading.scrollIntoView());
  await take(page, 'correct', 762);
});

test('written-out', async ({ openApp }) => {
  const { page } = await openApp();
  await demoReview(page);
  await page.getByRole('button', { name: 'Written out' }).click();
  await expect(page.locator('.screen svg').first()).toBeVisible({ timeout: 20_000 });
  await take(page, 'written-out');
});

/** E2 to E4, as a guitar is tuned. */
const OPEN_STRINGS = [40, 45, 50, 55, 59, 64];

test('sound-check', async ({ openApp }) => {
  const file = join(process.env.LANDFALL_LINES!, 'open-strings.wav');
  // Four times round, over a quiet room: a file of the fake microphone runs on by itself.
  const plucks = Array.from({ length: 4 * OPEN_STRINGS.length }, (_, i) => ({
    atSeconds: 0.5 + 1.6 * i,
    midi: OPEN_STRINGS[i % OPEN_STRINGS.length]!,
    seconds: 1.5,
  }));
  const { next } = chance(3);
  const samples = pluckLine(plucks, RATE, 40).map((sample) => 3 * sample + 0.0005 * (2 * next() - 1));
  writeFileSync(file, writeWav(toPcm16(samples), RATE));
  const { page } = await openApp({ microphone: { file } });
  await prepare(page);
  await page.getByRole('button', { name: 'Sound check' }).click();
  await expect(page.getByText('Together they give A =')).toBeVisible({ timeout: 30_000 });
  await expect(page.getByText('not played')).toHaveCount(0);
  await take(page, 'sound-check', 850);
});

test('progress', async ({ openApp }) => {
  const { page } = await openApp();
  await prepare(page);
  await keepTakes(page, [
    keptTake({ daysAgo: 12, hits: 3 }),
    keptTake({ daysAgo: 10, hits: 4 }),
    keptTake({ daysAgo: 9, hits: 3 }),
    keptTake({ daysAgo: 7, hits: 6 }),
    keptTake({ daysAgo: 6, hits: 7 }),
    keptTake({ daysAgo: 5, hits: 8 }),
  ]);
  await page.getByRole('button', { name: 'What to practise today' }).click();
  await take(page, 'progress');
});

const SHEET = {
  format: 'landfall-sheet',
  version: 1,
  title: 'Thirds over a ii–V–I in E',
  note: 'Land on the third of every chord as it arrives. Slow is fine.',
  chart: '| F#m7 | B7 | E6 | % |',
  tempo: 100,
  feel: 'bossa',
  choruses: 4,
  aims: [{ id: 'third-on-arrival', shareToReach: 0.5 }, { id: 'guide-tones' }],
} as const;

test('lesson-sheet', async ({ openApp }) => {
  const { page } = await openApp();
  await prepare(page);
  await page.getByRole('button', { name: 'Write a lesson sheet' }).click();
  await page.getByLabel('Title', { exact: true }).fill(SHEET.title);
  await page.getByLabel('What you say about it').fill(SHEET.note);
  await take(page, 'lesson-sheet', 970);
});

test('lesson', async ({ openApp }) => {
  const { page } = await openApp();
  await prepare(page);
  await page.locator('input[type=file][accept^=".json"]').setInputFiles({
    name: 'thirds.sheet.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(SHEET)),
  });
  await expect(page.getByRole('heading', { level: 1, name: SHEET.title })).toBeVisible();
  await page.getByLabel('Your name').fill('Alto');
  await take(page, 'lesson', 640);
});

/** A list of notes over the sheet: one a bar, four times round. */
const oneABar = (midis: readonly number[]) =>
  [
    'onset,duration,pitch',
    ...Array.from({ length: 16 }, (_, bar) => `${2.4 * bar},1.2,${midis[bar % midis.length]}`),
    '',
  ].join('\n');

test('desk', async ({ openApp }) => {
  const folder = join(process.env.LANDFALL_LINES!, 'class');
  mkdirSync(folder, { recursive: true });
  const put = (name: string, text: string) => writeFileSync(join(folder, name), text);
  put('thirds.sheet.json', JSON.stringify(SHEET));
  put('alto 2.csv', oneABar([69, 63, 68, 71]));
  put('trumpet.csv', oneABar([66, 71, 68, 64]));
  put('guitar.csv', oneABar([69, 66, 64, 64]));
  put('piano 1.csv', oneABar([69, 63, 64, 68]));
  const { page } = await openApp();
  await prepare(page);
  await page.getByRole('button', { name: 'The teacher’s desk' }).click();
  await page.locator('input[webkitdirectory]').setInputFiles(folder);
  await expect(page.getByRole('button', { name: 'Open the take of guitar' })).toBeVisible({
    timeout: 60_000,
  });
  await take(page, 'desk', 880);
});

test('backing', async ({ openApp }) => {
  const track = renderTrack(await kitSynth(RATE), {
    chart: '| Cm7 | F7 | Cm7 | G7 |',
    feel: 'funk',
    bpm: 103,
    seed: 5100,
    choruses: 2,
    secondsAt: wanderingSeconds(103, 0.08, 24),
  });
  const { page } = await openApp();
  await prepare(page);
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Bring your own backing' }).click(),
  ]);
  const buffer = Buffer.from(writeWav(toPcm16(track.mono), RATE));
  await chooser.setFiles({ name: 'rehearsal room.wav', mimeType: 'audio/wav', buffer });
  await expect(page.getByText('beats a minute in the middle')).toBeVisible({ timeout: 60_000 });
  await take(page, 'backing', 775);
});
