/** The review as a practice tool: hearing the take again by the keys of a player, slower, in a loop, note by note. */
import type { Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { demoButton, expectAccessibleInBothLights, stopButton, untilReview } from './screens.ts';

const place = (page: Page) => page.getByRole('slider', { name: 'Place in the take' });
const secondsOf = async (page: Page) => Number(await place(page).inputValue());

async function openDemo(page: Page) {
  await demoButton(page).click();
  await untilReview(page);
}

test('space plays and pauses and never starts a take; arrows jump by bars', async ({ openApp }) => {
  const { page } = await openApp();
  await openDemo(page);
  await page.keyboard.press('Space');
  await expect.poll(() => secondsOf(page), { timeout: 15_000 }).toBeGreaterThan(0.5);
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

test('half speed takes twice the time', async ({ openApp }) => {
  const { page } = await openApp();
  await openDemo(page);
  await page.getByRole('radio', { name: 'half' }).check();
  await page.keyboard.press('Space');
  await expect.poll(() => secondsOf(page), { timeout: 20_000 }).toBeGreaterThan(0.3);
  const [from, began] = [await secondsOf(page), Date.now()];
  await page.waitForTimeout(4000);
  const [to, ended] = [await secondsOf(page), Date.now()];
  const pace = (to - from) / ((ended - began) / 1000);
  expect(pace).toBeGreaterThan(0.4);
  expect(pace).toBeLessThan(0.6);
});

test('the bars of a phrase go round', async ({ openApp }) => {
  const { page } = await openApp();
  await openDemo(page);
  await page.keyboard.press('Home');
  await page.keyboard.press('ArrowRight');
  await page.keyboard.press('[');
  await page.keyboard.press(']');
  const loop = page.getByRole('button', { name: 'Looping bar 1', exact: true });
  await expect(loop).toHaveAttribute('aria-pressed', 'true');
  await page.keyboard.press('Space');
  await expect.poll(() => secondsOf(page), { timeout: 15_000 }).toBeGreaterThan(1.6);
  // A bar is 2.5 s: after 4 s it has gone round, and it has not left the bar.
  const seen: number[] = [];
  for (let i = 0; i < 16; i++) {
    await page.waitForTimeout(250);
    seen.push(await secondsOf(page));
  }
  expect(Math.min(...seen)).toBeGreaterThanOrEqual(1.2);
  expect(Math.max(...seen)).toBeLessThanOrEqual(3.8);
  expect(seen.some((seconds, i) => i > 0 && seconds < seen[i - 1]!)).toBe(true);
  await page.keyboard.press('l');
  await expect(page.getByRole('button', { name: 'Loop these bars' })).toBeVisible();
});

test('“Hear it” ends where its note ends', async ({ openApp }) => {
  const { page } = await openApp();
  await openDemo(page);
  await page.getByRole('button', { name: 'Hear it', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Stop it', exact: true })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Hear it', exact: true })).toBeVisible({ timeout: 15_000 });
  await expect(page.getByRole('button', { name: 'Hear the take' })).toBeVisible();
});

test('the keys are shown on a question mark', async ({ openApp }) => {
  const { page } = await openApp();
  await openDemo(page);
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog', { name: 'Keys' })).toBeVisible();
  await expectAccessibleInBothLights(page);
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Hear the take' })).toBeVisible();
});

test('advice is heard, heard resolved, and its bars are tried again beside the first take', async ({
  openApp,
}) => {
  test.slow();
  const { page } = await openApp({ microphone: 'beeps' });
  await openDemo(page);
  const advice = page.getByRole('region', { name: 'Next time' }).getByRole('listitem').first();
  for (const how of ['Hear yours', 'Hear it resolved']) {
    await advice.getByRole('button', { name: how }).click();
    await expect(advice.getByRole('button', { name: 'Stop it' })).toBeVisible({ timeout: 20_000 });
    // Two or three bars of 2.5 s; then it stops by itself.
    await expect(advice.getByRole('button', { name: how })).toBeVisible({ timeout: 30_000 });
  }
  await advice.getByRole('button', { name: /^Loop bars? .* and try again$/ }).click();
  await expect(stopButton(page)).toBeVisible({ timeout: 20_000 });
  await expect(page.getByText('chorus', { exact: false })).toBeVisible({ timeout: 15_000 });
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
