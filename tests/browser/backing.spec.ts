/** A recording of the player's own: its beats are found, a chart is put on it, it plays, and the take is graded by it. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from '@playwright/test';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';
import { renderTrack, wanderingSeconds, type RenderedTrack } from '../core/beats/rendered-track.ts';
import { kitSynth } from '../core/sound/kit-file.ts';
import { expect, test } from './app.ts';
import { KNOWN_MIDI, knownLine } from './known-line.ts';
import { expectAccessible, startButton, stopButton, untilReview } from './screens.ts';

const RATE = 44_100;
let folder: string;
test.beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'landfall-backing-'));
});
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Two choruses of four bars whose tempo drifts. */
const driftingTrack = async (): Promise<RenderedTrack> =>
  renderTrack(await kitSynth(RATE), {
    chart: '| Gm7 | C7 | Gm7 | D7 |',
    feel: 'straight',
    bpm: 126,
    seed: 5100,
    choruses: 2,
    secondsAt: wanderingSeconds(126, 0.08, 24),
  });

async function bring(page: Page, path: string) {
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Bring your own backing' }).click(),
  ]);
  await chooser.setFiles(path);
}

/** What is recorded beside the microphone, to be taken out of it: its loudest sample so far. */
async function listenToTheBus(page: Page) {
  await page.addInitScript(() => {
    const own = Object.assign(window, { busPeak: 0 });
    const connect = AudioNode.prototype.connect as (...given: unknown[]) => unknown;
    AudioNode.prototype.connect = function (this: AudioNode, ...given: unknown[]) {
      if (given[2] === 1) {
        const ear = new AnalyserNode(this.context);
        connect.call(this, ear);
        const samples = new Float32Array(ear.fftSize);
        setInterval(() => {
          ear.getFloatTimeDomainData(samples);
          own.busPeak = samples.reduce((peak, sample) => Math.max(peak, Math.abs(sample)), own.busPeak);
        }, 40);
      }
      return connect.call(this, ...given);
    } as AudioNode['connect'];
  });
}

const wave = (page: Page) => page.getByRole('slider', { name: /Beats of the backing/ });

test('its drifting beats are found, corrected, kept, played and graded by', async ({ openApp }) => {
  const file = join(folder, 'drifting groove.wav');
  const track = await driftingTrack();
  writeFileSync(file, writeWav(toPcm16(track.mono), RATE));
  // Long enough for a machine that takes its time to render.
  const line = await knownLine([...KNOWN_MIDI, ...KNOWN_MIDI, ...KNOWN_MIDI]);
  const { page } = await openApp({ microphone: { file: line.file }, before: listenToTheBus });
  await bring(page, file);
  await expect(page.getByText(/1\d\d(\.\d)? beats a minute in the middle/)).toBeVisible();
  // The chosen beat is the first one that was found: bar 1.
  const first = /at 0:(\d\d\.\d\d)/.exec((await wave(page).getAttribute('aria-valuetext')) ?? '')?.[1];
  expect(Math.abs(Number(first) - track.beats[0]!)).toBeLessThan(0.02);
  await expectAccessible(page);

  // By the keyboard: the next bar's beat goes 20 ms later, is told, and comes back.
  await wave(page).focus();
  await page.keyboard.press('PageDown');
  const before = await wave(page).getAttribute('aria-valuetext');
  expect(before).toMatch(/^Bar 2, beat 1/);
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('ArrowRight');
  expect(await wave(page).getAttribute('aria-valuetext')).toMatch(/set by hand/);
  for (let i = 0; i < 2; i++) await page.getByRole('button', { name: 'Undo' }).click();
  expect(await wave(page).getAttribute('aria-valuetext')).toBe(before);

  await page.getByLabel('Your chart, bar by bar').fill('| Gm7 | C7 | Gm7 | D7 |');
  await page.getByRole('button', { name: 'Use this backing' }).click();
  await expect(page.getByRole('heading', { name: 'drifting groove' })).toBeVisible();
  await page.getByLabel('Speed').selectOption('90 %');
  await page.getByLabel('To bar').selectOption('4');

  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
  // The count-in is on the bus too: what is measured comes after it.
  await page.waitForTimeout(2400);
  await page.evaluate(() => Object.assign(window, { busPeak: 0 }));
  await page.waitForTimeout(2000);
  expect(await page.evaluate(() => (window as unknown as { busPeak: number }).busPeak)).toBeGreaterThan(0.01);
  await stopButton(page).click();
  await untilReview(page);
  await expect(page.getByText(/\b[1-9]\d*\snotes\b/).first()).toBeVisible();
  // It is there again on the next visit, on the stand.
  await page.reload();
  await expect(page.getByRole('heading', { name: 'drifting groove' })).toBeVisible();
});

test('its chords are found: a bar is set, and one press plays to it', async ({ openApp }) => {
  const blues = join(folder, 'blues.wav');
  const chart = '| A7 | D7 | A7 | A7 | D7 | D7 | A7 | A7 | E7 | D7 | A7 | E7 |';
  const band = renderTrack(await kitSynth(RATE), {
    chart,
    feel: 'shuffle',
    bpm: 150,
    seed: 5101,
    choruses: 2,
  });
  writeFileSync(blues, writeWav(toPcm16(band.mono), RATE));
  const { page } = await openApp({ microphone: 'beeps' });
  await bring(page, blues);
  await expect(page.getByRole('heading', { name: /12 bars, 1\d\d bpm, 2 choruses: right\?/ })).toBeVisible({
    timeout: 60_000,
  });
  await expectAccessible(page);
  await expect(page.getByLabel('Your chart, bar by bar')).toHaveValue(/A7 \| D7 \| A7 \| A7/);

  // Two presses set a bar, and the chart follows.
  await page.getByRole('button', { name: /^Bar 12: / }).click();
  const instead = page.getByRole('group', { name: 'Bar 12 instead:' });
  await expect(instead).toBeVisible();
  await page.getByRole('button', { name: /^Bar 12: / }).click();
  await expect(instead).toBeHidden();

  await page.getByRole('button', { name: 'Right, play to it' }).click();
  await expect(stopButton(page)).toBeVisible({ timeout: 30_000 });
});

test('what is no recording is told, and taps lay beats where none were found', async ({ openApp }) => {
  const { page } = await openApp();
  writeFileSync(join(folder, 'words.wav'), 'this is no recording');
  await bring(page, join(folder, 'words.wav'));
  await expect(page.getByRole('status').first()).toContainText('words.wav');
  await page.getByRole('button', { name: 'Back', exact: true }).click();

  const noise = join(folder, 'noise.wav');
  let state = 7;
  const samples = Int16Array.from({ length: 20 * RATE }, () => {
    state = (state * 16_807) % 2_147_483_647;
    return (state % 8000) - 4000;
  });
  writeFileSync(noise, writeWav(samples, RATE));
  await bring(page, noise);
  await expect(page.getByText(/No steady beat was found/)).toBeVisible();
  await page.keyboard.press('Space');
  for (let tap = 0; tap < 6; tap++) {
    await page.waitForTimeout(400);
    await page.keyboard.press('Space');
  }
  // How fast they came depends on how busy the machine is; the beats go as fast as the taps did.
  const told = await page.getByText(/6 taps, \d+ a minute/).innerText();
  await page.getByRole('button', { name: 'Use the taps as beats' }).click();
  const laid = await page.getByText(/\d+(\.\d)? beats a minute in the middle/).innerText();
  const tapped = Number(/(\d+) a minute/.exec(told)![1]);
  expect(Number(/[\d.]+(?= beats a minute)/.exec(laid)![0]) / tapped).toBeCloseTo(1, 0);
});
