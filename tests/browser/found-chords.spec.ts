/**
 * Chords that are found: a recording with a band in it is graded by them, a line alone is left alone, and a stranger who
 * lets a backing fall on the page plays to it. How long that takes is printed; that it is soon enough is asserted on a quiet
 * machine only (`LANDFALL_QUIET=yes`).
 */
import { copyFileSync } from 'node:fs';
import type { Page } from '@playwright/test';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';
import { renderTrack } from '../core/beats/rendered-track.ts';
import { kitSynth } from '../core/sound/kit-file.ts';
import { expect, test } from './app.ts';
import { knownLine, onceInARun } from './known-line.ts';
import { expectAccessible, openRecording, startButton, stopButton, untilReview } from './screens.ts';

const RATE = 44_100;

// Common practice: a blues with a quick change.
const BLUES = ['A7', 'D7', 'A7', 'A7', 'D7', 'D7', 'A7', 'A7', 'E7', 'D7', 'A7', 'E7'];

/** As long as a backing usually is where times are held against their aims; elsewhere two choruses do. */
const CHORUSES = process.env.LANDFALL_QUIET === 'yes' ? 4 : 2;

/** Choruses of a chart at 132 a minute, as a file. */
async function backingFile(
  name: string,
  bars: readonly string[] = BLUES,
  choruses = CHORUSES,
): Promise<string> {
  const made = await onceInARun(`${choruses} times ${bars.join(' ')}.wav`, async () => {
    const asked = { feel: 'shuffle', bpm: 132, seed: 5103, choruses } as const;
    const band = renderTrack(await kitSynth(RATE), { chart: `| ${bars.join(' | ')} |`, ...asked });
    return writeWav(toPcm16(band.mono), RATE);
  });
  const path = test.info().outputPath(name);
  copyFileSync(made, path);
  return path;
}

/** A file of this machine let fall on the page, as from a window of the system. */
async function letFall(page: Page, path: string): Promise<void> {
  await page.evaluate(() => {
    const field = document.createElement('input');
    field.type = 'file';
    field.id = 'carried';
    field.hidden = true;
    document.body.append(field);
  });
  await page.locator('#carried').setInputFiles(path);
  await page.evaluate(() => {
    const field = document.querySelector<HTMLInputElement>('#carried')!;
    const carried = new DataTransfer();
    carried.items.add(field.files![0]!);
    field.remove();
    window.dispatchEvent(new DragEvent('drop', { dataTransfer: carried, cancelable: true, bubbles: true }));
  });
}

const asked = (page: Page) => page.getByRole('heading', { name: /12 bars, 132 bpm, \d choruses: right\?/ });
const bars = (page: Page) => page.getByRole('button', { name: /^Bar \d+: / });

/** By the clock, from the drop on; asserted where nothing else is running. */
function told(what: string, began: number, within: number): void {
  const seconds = (Date.now() - began) / 1000;
  console.log(`${what}: ${seconds.toFixed(1)} s`);
  if (process.env.LANDFALL_QUIET === 'yes') expect(seconds).toBeLessThan(within);
}

async function fits(page: Page, width: number): Promise<void> {
  await page.setViewportSize({ width, height: 844 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
}

test('a recording with a band in it is graded by the chords that are found in it', async ({ openApp }) => {
  const file = await backingFile('jam.wav', BLUES, 2);
  const { page } = await openApp();
  await openRecording(page, file);
  await expect(page.getByRole('progressbar')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Grade it' })).toBeDisabled();
  await expect(asked(page)).toBeVisible({ timeout: 60_000 });
  await expect(page.getByLabel('Your chart, bar by bar')).toHaveValue(/A7 \| D7 \| A7 \| A7/);
  await expectAccessible(page);
  await fits(page, 390);

  // Another chart is graded by when the player says so, and what was found comes back.
  await page.getByRole('combobox', { name: 'Chart', exact: true }).selectOption({ label: '12-bar blues' });
  await expect(page.getByText(/^It is graded by .*not by the chords that were found\.$/)).toBeVisible();
  await page.getByRole('button', { name: 'Take the chords that were found' }).click();
  await page.getByRole('button', { name: 'Right, grade by this' }).click();
  await untilReview(page);
  await expect(page.getByText(/Graded over .* at 132 bpm/)).toBeVisible();
});

test('the page of a recording fits a phone in German, before and after its chords are found', async ({
  openApp,
}) => {
  const file = await backingFile('session.wav', BLUES, 2);
  const { page } = await openApp();
  await page.getByLabel(/^Language/).selectOption('de');
  await openRecording(page, file);
  await expect(page.getByRole('button', { name: 'Bewerten' })).toBeVisible();
  await fits(page, 390);
  await expect(page.getByRole('heading', { name: /12 Takte, Tempo 132/ })).toBeVisible({ timeout: 60_000 });
  await expectAccessible(page);
  await fits(page, 390);
  await fits(page, 320);
});

test('a line alone leaves the chart on the stand, and that is said; a search can be stopped', async ({
  openApp,
}) => {
  const { page } = await openApp();
  await openRecording(page, (await knownLine()).file);
  await expect(page.getByText(/It is graded by the chart on the stand: .*, 12 bars\.$/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Grade it' })).toBeEnabled();
  await expect(bars(page)).toHaveCount(0);
  await page.getByRole('button', { name: 'Back', exact: true }).click();

  await openRecording(page, await backingFile('long.wav', BLUES, 4));
  await page.getByRole('button', { name: 'Stop searching' }).click();
  await expect(page.getByText(/^The search for chords was stopped\./)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Grade it' })).toBeEnabled();
});

test('a stranger lets a backing fall on the page and plays to it', async ({ openApp }) => {
  const right = await backingFile('right.wav');
  const { page } = await openApp({ microphone: 'beeps' });
  await expect(startButton(page)).toBeEnabled();
  const began = Date.now();
  await letFall(page, right);
  await expect(asked(page)).toBeVisible({ timeout: 60_000 });
  told('the chords are there', began, 20);
  await page.getByRole('button', { name: 'It is a backing: play to it' }).click();
  await page.getByRole('button', { name: 'Right, play to it' }).click();
  await expect(stopButton(page)).toBeVisible({ timeout: 60_000 });
  told('two presses later it plays', began, 30);
});

test('a file that falls on the page of a backing takes its place; three bars are set in six presses', async ({
  openApp,
}) => {
  const first = await backingFile('first.wav', ['Gm7', 'C7', 'Gm7', 'D7'], 2);
  const second = await backingFile('second.wav');
  const { page } = await openApp({ microphone: 'beeps' });
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Bring your own backing' }).click(),
  ]);
  await chooser.setFiles(first);
  await expect(bars(page).first()).toBeVisible({ timeout: 60_000 });
  const began = Date.now();
  await letFall(page, second);
  await expect(page.getByText('Open second.wav in place of this backing?')).toBeVisible();
  await page.getByRole('button', { name: 'Throw it away' }).click();
  await expect(bars(page)).toHaveCount(12, { timeout: 60_000 });
  // Three bars are not as the player has them: two presses each.
  for (const bar of [4, 8, 12]) {
    await page.getByRole('button', { name: new RegExp(`^Bar ${bar}: `) }).click();
    const instead = page.getByRole('group', { name: `Bar ${bar} instead:` });
    const wanted = instead.getByRole('button').first();
    const symbol = (await wanted.textContent())!.trim();
    await wanted.click();
    await expect(instead).toBeHidden();
    // What was set is kept while the others are decoded around it.
    await expect(page.getByRole('button', { name: new RegExp(`^Bar ${bar}: `) })).toContainText(symbol);
  }
  await page.getByRole('button', { name: 'Right, play to it' }).click();
  await expect(stopButton(page)).toBeVisible({ timeout: 60_000 });
  told('three bars set, it plays', began, 90);
});
