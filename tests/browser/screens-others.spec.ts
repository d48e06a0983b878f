/** Screens that are seldom seen, by day and by night: own backing, two files, kept takes, what is practised. WCAG 2.2 A and AA. */
import type { Locator, Page } from '@playwright/test';
import { wavBytes } from '../../fixtures/lines/wav.ts';
import { asOnAFirstVisit, expect, oneVisit, test } from './app.ts';
import { playKeys, withKeyboard } from './fake-midi.ts';
import { knownLine, type KnownLine } from './known-line.ts';
import {
  expectAccessibleInBothLights,
  gradeOpened,
  openRecording,
  startButton,
  stopButton,
  untilReview,
} from './screens.ts';

const RATE = 16_000;
let line: KnownLine;
const app = oneVisit(async () => {
  line = await knownLine();
  return { before: withKeyboard };
});
test.beforeEach(() => asOnAFirstVisit(app()));
const back = () => app().page.getByRole('button', { name: 'Back', exact: true }).click();

/** Strokes at 120 a minute for so many seconds, each fourth one louder: beats are found in it. */
function strokes(seconds: number): Buffer {
  const samples = new Float32Array(seconds * RATE);
  for (let beat = 0; beat < 2 * seconds; beat++) {
    const loud = beat % 4 === 0 ? 0.8 : 0.4;
    for (let i = 0; i < RATE / 10; i++)
      samples[(beat * RATE) / 2 + i] =
        loud * Math.exp(-i / 300) * Math.sin((2 * Math.PI * (beat % 4 === 0 ? 110 : 220) * i) / RATE);
  }
  return Buffer.from(wavBytes(samples, RATE));
}
const file = (name: string, buffer: Buffer) => ({ name, mimeType: 'audio/wav', buffer });

async function andFitsAPhone(page: Page): Promise<void> {
  await expectAccessibleInBothLights(page);
  await page.setViewportSize({ width: 390, height: 844 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(390);
  await page.setViewportSize({ width: 1280, height: 800 });
}

test('a backing of one’s own: its beats on the desk, and on the stand', async () => {
  const { page } = app();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Bring your own backing' }).click(),
  ]);
  await chooser.setFiles(file('strokes.wav', strokes(20)));
  await expect(page.getByText('beats a minute in the middle')).toBeVisible();
  await andFitsAPhone(page);
  await page.getByRole('button', { name: 'Use this backing' }).click();
  await expect(page.getByRole('button', { name: 'Back to the band' })).toBeVisible();
  await andFitsAPhone(page);
});

test('a backing without a beat: what is left to do', async () => {
  const { page } = app();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Bring your own backing' }).click(),
  ]);
  const hum = Float32Array.from(
    { length: 6 * RATE },
    (_, i) => 0.3 * Math.sin((2 * Math.PI * 220 * i) / RATE),
  );
  await chooser.setFiles(file('hum.wav', Buffer.from(wavBytes(hum, RATE))));
  await expect(page.getByText('No beats yet.')).toBeVisible();
  await expectAccessibleInBothLights(page);
});

test('a recording that was opened, and the question which of two files is yours', async () => {
  const { page } = app();
  await openRecording(page, line.file);
  await expect(page.getByRole('heading', { name: 'What did you play over?' })).toBeVisible();
  await expect(page.getByText('The first bar of the chart starts at')).toBeVisible();
  await andFitsAPhone(page);
  await gradeOpened(page, 'as proposed');
  await untilReview(page);
  await page.getByRole('button', { name: 'Change that' }).click();
  await expect(page.getByText('The first bar of the chart starts at')).toBeVisible();
  await andFitsAPhone(page);
  await back();
  await openRecording(page, [file('mine.wav', strokes(4)), file('trio.wav', strokes(4))]);
  await expect(page.getByRole('dialog')).toBeVisible();
  await expectAccessibleInBothLights(page);
});

test('where the machine forces its own colours, bars, marks and buttons are there in them', async () => {
  const { page } = app();
  await page.emulateMedia({ forcedColors: 'active', colorScheme: 'dark' });
  const coloursOf = (part: Locator) =>
    part.evaluate((element) => {
      const { backgroundColor: ground, backgroundImage: drawn, color: words } = getComputedStyle(element);
      return { ground, drawn, words };
    });
  const whole = await coloursOf(page.locator('html'));
  const start = await coloursOf(startButton(page));
  expect(start.ground).not.toBe(whole.ground);
  expect(start.words).toBe(whole.ground);
  // Bar lines and the staff line are drawn in the colour of the words.
  expect((await coloursOf(page.locator('.staff').first())).drawn).toContain(whole.words);
  await expectAccessibleInBothLights(page);
});

test('takes that are kept, and a MIDI pedal being learned', async () => {
  const { page } = app();
  await page.getByText('Display and hands-free control').click();
  await page.getByLabel('Heard by').selectOption('midi');
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
  await expect(page.getByText('chorus', { exact: false })).toBeVisible();
  await playKeys(page, [61, 64]);
  await page.keyboard.press('Space');
  await untilReview(page);
  await back();
  await expect(page.getByRole('region', { name: 'Earlier takes' })).toBeVisible();
  await page.getByText('Display and hands-free control').click();
  await page.getByLabel('A MIDI pedal controls the screen').check();
  await page.getByRole('button', { name: 'Learn another switch' }).click();
  await expect(page.getByText('Press the switch and let it go.')).toBeVisible();
  await andFitsAPhone(page);
});
