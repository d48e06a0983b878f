/** The review as a practice tool: hearing the take again by the keys of a player, slower, in a loop, note by note. */
import type { Page } from '@playwright/test';
import { expect, oneVisit, test } from './app.ts';
import { demoButton, expectAccessibleInBothLights, stopButton, untilReview } from './screens.ts';

const place = (page: Page) => page.getByRole('slider', { name: 'Place in the take' });
const secondsOf = async (page: Page) => Number(await place(page).inputValue());

const app = oneVisit(
  () => ({ microphone: 'beeps', before: withAudioClock }),
  async ({ page }) => {
    await demoButton(page).click();
    await untilReview(page);
  },
);

/** Lets a test read the clock of the page's sound, which goes slower where the machine is busy. */
async function withAudioClock(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const Usual = AudioContext;
    globalThis.AudioContext = class extends Usual {
      constructor(options?: AudioContextOptions) {
        super(options);
        Object.assign(globalThis, { audioClock: this });
      }
    };
  });
}

/** Where the take is, just when that is shown anew, and the clock of the sound at that moment, seconds. */
const placeAndClock = (page: Page) =>
  place(page).evaluate(async (slider: HTMLInputElement) => {
    const { audioClock } = globalThis as unknown as { audioClock: AudioContext };
    const before = slider.value;
    while (slider.value === before) await new Promise((later) => setTimeout(later, 5));
    return [Number(slider.value), audioClock.currentTime] as const;
  });

test('space plays and pauses and never starts a take; arrows jump by bars', async () => {
  const { page } = app();
  await page.keyboard.press('Space');
  await expect.poll(() => secondsOf(page)).toBeGreaterThan(0.5);
  await page.keyboard.press('Space');
  await expect(page.getByRole('button', { name: 'Hear the take' })).toBeVisible();
  await expect(stopButton(page)).toHaveCount(0);
  const paused = await secondsOf(page);
  await page.waitForTimeout(500);
  expect(await secondsOf(page)).toBe(paused);

  // The demo: two beats before the first downbeat, bars of four, 96 beats a minute.
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowRight');
  expect(await secondsOf(page)).toBeCloseTo((2 * 60) / 96, 1);
  await page.keyboard.press('ArrowRight');
  expect(await secondsOf(page)).toBeCloseTo((6 * 60) / 96, 1);
  await page.keyboard.press('ArrowLeft');
  expect(await secondsOf(page)).toBeCloseTo((2 * 60) / 96, 1);
});

test('half speed takes twice the time', async () => {
  const { page } = app();
  await page.getByRole('radio', { name: 'half' }).check();
  await page.keyboard.press('Space');
  await expect.poll(() => secondsOf(page)).toBeGreaterThan(0.3);
  const [from, began] = await placeAndClock(page);
  await page.waitForTimeout(2500);
  const [to, ended] = await placeAndClock(page);
  expect(ended).toBeGreaterThan(began);
  const pace = (to - from) / (ended - began);
  // On a busy machine the place that is shown may still run behind a little.
  expect(pace).toBeGreaterThan(0.38);
  expect(pace).toBeLessThan(0.62);
  await page.keyboard.press('Space');
  const full = page.getByRole('radio', { name: 'full' });
  await full.check();
  // The arrows would go on choosing there.
  await full.blur();
});

test('the bars of a phrase go round', async () => {
  const { page } = app();
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('[');
  await page.keyboard.press(']');
  const loop = page.getByRole('button', { name: 'Looping bar 1', exact: true });
  await expect(loop).toHaveAttribute('aria-pressed', 'true');
  await page.keyboard.press('Space');
  await expect.poll(() => secondsOf(page)).toBeGreaterThan(1.6);
  // It goes round, and does not leave the bar of 2.5 s.
  const seen = [await secondsOf(page)];
  await expect
    .poll(
      async () => {
        seen.push(await secondsOf(page));
        return seen.at(-1)! < seen.at(-2)!;
      },
      { intervals: [100] },
    )
    .toBe(true);
  await page.waitForTimeout(500);
  seen.push(await secondsOf(page));
  expect(Math.min(...seen)).toBeGreaterThanOrEqual(1.2);
  expect(Math.max(...seen)).toBeLessThanOrEqual(3.8);
  await page.keyboard.press('l');
  await expect(page.getByRole('button', { name: 'Loop these bars' })).toBeVisible();
  await page.keyboard.press('Space');
});

test('“Hear it” ends where its note ends', async () => {
  const { page } = app();
  await page.getByRole('button', { name: 'Hear it', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Stop it', exact: true })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Hear it', exact: true })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Hear the take' })).toBeVisible();
});

test('the keys are shown on a question mark', async () => {
  const { page } = app();
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Keys' })).toBeVisible();
  await expectAccessibleInBothLights(page);
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Hear the take' })).toBeVisible();
});

test('advice is heard, heard resolved, and its bars are tried again beside the first take', async () => {
  const { page } = app();
  const advice = page.getByRole('region', { name: 'Next time' }).getByRole('listitem').first();
  for (const how of ['Hear yours', 'Hear it resolved']) {
    await advice.getByRole('button', { name: how }).click();
    await expect(advice.getByRole('button', { name: 'Stop it' })).toBeVisible();
    // Two or three bars of 2.5 s; then it stops by itself.
    await expect(advice.getByRole('button', { name: how })).toBeVisible();
  }
  await advice.getByRole('button', { name: /^Loop bars? .* and try again$/ }).click();
  await expect(stopButton(page)).toBeVisible();
  await expect(page.getByText('chorus', { exact: false })).toBeVisible();
  await page.waitForTimeout(6000);
  await stopButton(page).click();
  await untilReview(page);
  const beside = page.getByRole('region', { name: 'First time and now' });
  await expect(beside).toBeVisible();
  await expect(beside.getByRole('columnheader')).toHaveText(['First time', 'Now']);
  await expect(beside.getByRole('row').nth(1)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Try these bars again' })).toBeVisible();
  await expectAccessibleInBothLights(page);
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  // The set-up is the demo's again, whole.
  await expect(page.getByRole('button', { name: 'Start playing' })).toBeVisible();
  await expect(page.getByRole('list', { name: 'Bars of the form' }).getByRole('listitem')).toHaveCount(12);
});
