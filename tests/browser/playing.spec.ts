/** The playing screen with both hands busy: every instrument view, foot switches, MIDI, quiet, the next aim. */
import type { Page } from '@playwright/test';
import { asOnAFirstVisit, expect, oneVisit, test } from './app.ts';
import { playKeys, send, withKeyboard } from './fake-midi.ts';
import { knownLine, type KnownLine } from './known-line.ts';
import {
  expectAccessible,
  gradeOpened,
  openRecording,
  startButton,
  stopButton,
  untilReview,
} from './screens.ts';

let line: KnownLine;
const app = oneVisit(async () => {
  line = await knownLine();
  return { microphone: { file: line.file }, before: withKeyboard };
});
const back = () => app().page.getByRole('button', { name: 'Back', exact: true }).click();

const player = (page: Page) => page.getByRole('region', { name: 'The player' });
const untilPlaying = async (page: Page) => {
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
  await expect(page.getByText('chorus', { exact: false })).toBeVisible();
};
/** Whether anything is drawn on the instrument's canvas. */
const isDrawn = (page: Page) =>
  page.locator('.instrument canvas').evaluate((canvas) => {
    const { width, height } = canvas as HTMLCanvasElement;
    const pixels = (canvas as HTMLCanvasElement).getContext('2d')!.getImageData(0, 0, width, height).data;
    return pixels.some((value) => value !== 0);
  });

test('a wall: every screen at 2560 by 1440 can be used by everyone', async () => {
  const { page } = app();
  await page.setViewportSize({ width: 2560, height: 1440 });
  await expectAccessible(page);
  await untilPlaying(page);
  await expectAccessible(page);
  await page.keyboard.press('Enter');
  await untilReview(page);
  await expectAccessible(page);
  await back();
  await openRecording(page, { name: 'words.wav', mimeType: 'audio/wav', buffer: Buffer.from('no sound') });
  await expect(page.getByRole('heading', { level: 1 })).toContainText('words.wav');
  await expectAccessible(page);
  await back();
});

test('on a phone, and on the narrowest page that is asked for, everything keeps to the width', async () => {
  const { page } = app();
  const wide = () => page.evaluate(() => document.documentElement.scrollWidth);
  await page.setViewportSize({ width: 390, height: 844 });
  await page.getByText('Display and hands-free control').click();
  await page.getByText('Practise a part of it').click();
  expect(await wide()).toBe(390);
  await expectAccessible(page);
  // 320 CSS pixels: reflow (WCAG 2.2, 1.4.10).
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await wide()).toBe(320);
  await untilPlaying(page);
  expect(await wide()).toBe(320);
  const dials = page.getByRole('group', { name: 'Band and time' }).getByRole('button');
  for (const dial of await dials.all()) {
    const { x, width } = (await dial.boundingBox())!;
    expect(x).toBeGreaterThanOrEqual(0);
    expect(x + width).toBeLessThanOrEqual(320);
  }
  await asOnAFirstVisit(app());
});

for (const [instrument, view] of [
  ['bass-5', 'neck'],
  ['piano', 'keyboard'],
  ['tenor-sax', 'staff'],
] as const)
  test(`where it lies on a ${view}, remembered`, async () => {
    const { page } = app();
    await player(page)
      .getByLabel(/^Instrument/)
      .selectOption(instrument);
    await expect(player(page).getByLabel('Shown on')).toHaveValue(view);
    await page.waitForTimeout(300);
    await page.reload();
    await expect(player(page).getByLabel(/^Instrument/)).toHaveValue(instrument);
    await untilPlaying(page);
    await expect.poll(() => isDrawn(page)).toBe(true);
    await page.setViewportSize({ width: 390, height: 844 });
    await expectAccessible(page);
    // The page does not scroll while playing, on a phone either.
    expect(await page.evaluate(() => document.documentElement.scrollHeight <= innerHeight + 1)).toBe(true);
    // A pedal that sends page keys stops it, whatever pedal is set.
    await page.keyboard.press('PageDown');
    await untilReview(page);
    await back();
  });

test('the quiet page shows landings and no live note', async () => {
  const { page } = app();
  await asOnAFirstVisit(app());
  await page.getByText('Display and hands-free control').click();
  await player(page).getByLabel('Quiet page').check();
  await untilPlaying(page);
  await expect(page.locator('.note')).toHaveCount(0);
  // It draws no line, so it explains none.
  await expect(page.getByText('land here next')).toBeVisible();
  await expect(page.getByText('your line, in the chord')).toHaveCount(0);
  await expectAccessible(page);
  await page.keyboard.press('Space');
  await untilReview(page);
});

test('the aim that was chosen is answered first, and stays in hand until it is reached', async () => {
  const { page } = app();
  await asOnAFirstVisit(app());
  await player(page).getByLabel('Land on').selectOption('thirds');
  await openRecording(page, line.file);
  await gradeOpened(page);
  await untilReview(page);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('0 of 1 landing so far');
  await expect(page.getByRole('button', { name: /^Next aim/ })).toHaveCount(0);
  await page.getByRole('button', { name: 'Play it yourself' }).click();
  await expect(stopButton(page)).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(startButton(page)).toBeVisible();
  await expect(player(page).getByLabel('Land on')).toHaveValue('thirds');
});

test('a MIDI keyboard is graded, and its pedal stops the take', async () => {
  const { page } = app();
  await asOnAFirstVisit(app());
  await page.getByText('Display and hands-free control').click();
  await player(page).getByLabel('Heard by').selectOption('midi');
  await expect(player(page).getByText('test keys')).toBeVisible();
  await player(page).getByLabel('A MIDI pedal controls the screen').check();
  await untilPlaying(page);
  await playKeys(page, [61, 64, 67]);
  await send(page, 0xb0, 64, 127);
  await untilReview(page);
  await expect(page.getByText(/\b3\snotes\b/).first()).toBeVisible();
});

test('a pedal that sends programs is learned, and starts and stops the take', async () => {
  const { page } = app();
  await asOnAFirstVisit(app());
  await page.getByText('Display and hands-free control').click();
  await player(page).getByLabel('A MIDI pedal controls the screen').check();
  await page.getByRole('button', { name: 'Learn another switch' }).click();
  await send(page, 0xc0, 7);
  await expect(player(page).getByText('program 8 on channel 1')).toBeVisible();
  await send(page, 0xc0, 7);
  await expect(stopButton(page)).toBeVisible();
  await expect(page.getByText('chorus', { exact: false })).toBeVisible();
  await page.waitForTimeout(1500);
  await send(page, 0xc0, 6);
  await page.waitForTimeout(300);
  await expect(stopButton(page)).toBeVisible();
  await send(page, 0xc0, 7);
  await untilReview(page);
});
