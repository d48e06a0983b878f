/** The delay through headphones: muted strokes from a file as the microphone, struck with the clicks of the sound check. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';
import { chance } from '../../src/core/base/random.ts';
import { expect, test } from './app.ts';

/** What the fake microphone plays without a resampler in between. */
const RATE = 44_100;
const SECONDS = 60;
/** As the clicks of the sound check. */
const GAP_SECONDS = 0.75;
/** A hand comes now early, now late; it is never as exact as a click that comes back through the microphone. */
const SCATTER_SECONDS = 0.02;

const folder = mkdtempSync(join(tmpdir(), 'landfall-strokes-'));
const file = join(folder, 'strokes.wav');
test.beforeAll(() => {
  const { next } = chance(3);
  const samples = Float32Array.from({ length: SECONDS * RATE }, () => 0.0005 * (2 * next() - 1));
  for (let stroke = 1; stroke * GAP_SECONDS < SECONDS - 1; stroke++) {
    const late = stroke % 2 === 0 ? SCATTER_SECONDS : -SCATTER_SECONDS;
    const from = Math.round((stroke * GAP_SECONDS + late) * RATE);
    for (let i = 0; i < 0.06 * RATE; i++)
      samples[from + i]! += 0.2 * Math.exp(-i / (0.012 * RATE)) * (2 * next() - 1);
  }
  writeFileSync(file, writeWav(toPcm16(samples), RATE));
});
test.afterAll(() => rmSync(folder, { recursive: true, force: true }));

test('eight muted strokes give the delay, and a number replaces it', async ({ openApp }) => {
  const { page } = await openApp({ microphone: { file } });
  await page.getByRole('button', { name: 'Sound check' }).click();
  const strike = page.getByRole('button', { name: 'Strike with the click' });
  const measured = page.getByText(/^Measured by strokes: [678] strokes came \d+ ms after their clicks/);
  const refused = page.getByRole('alert').filter({ hasText: 'were not together' });
  // The file runs on by itself: where it happens to lie more than 0.55 s behind the clicks, the press is refused.
  await expect(async () => {
    await strike.click();
    await expect(measured.or(refused)).toBeVisible();
    await expect(measured).toBeVisible({ timeout: 100 });
  }).toPass({ timeout: 200_000 });
  const field = page.getByLabel('The delay in ms');
  const found = Number(await field.inputValue());
  expect(found).toBeGreaterThanOrEqual(0);
  // Where the file stands when the clicks begin is chance; a stroke never lies a whole gap behind its click.
  expect(found).toBeLessThan(1000 * GAP_SECONDS);
  await field.fill('250');
  await field.press('Enter');
  await expect(page.getByText('Set by hand: 250 ms.')).toBeVisible();
  await field.fill('900');
  await field.press('Enter');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText('Set by hand: 250 ms.')).toBeVisible();
  await page.getByRole('button', { name: 'Use the measured delay' }).click();
  await expect(measured).toBeVisible();
  await expect(field).toHaveValue(String(found));
});
