/** The stage: the aim in hand leads, Stop keeps its place on every screen, the marks are explained on the first take. */
import type { Page } from '@playwright/test';
import { asOnAFirstVisit, expect, oneVisit, test } from './app.ts';
import { knownLine } from './known-line.ts';
import { demoButton, expectAccessible, startButton, stopButton, untilReview } from './screens.ts';

const app = oneVisit(async () => ({ microphone: { file: (await knownLine()).file } }));

const SIZES = [
  [1280, 800],
  // The same at 200 % zoom.
  [640, 400],
  [844, 390],
  [390, 844],
  [320, 640],
] as const;

async function expectStopInSight(page: Page): Promise<void> {
  for (const [width, height] of SIZES) {
    await page.setViewportSize({ width, height });
    const box = (await stopButton(page).boundingBox())!;
    expect(box.x, `${width} × ${height}`).toBeGreaterThanOrEqual(0);
    expect(box.x + box.width, `${width} × ${height}`).toBeLessThanOrEqual(width);
    expect(box.y + box.height, `${width} × ${height}`).toBeLessThanOrEqual(height);
    // Nothing lies over it: its middle is its own.
    const own = await stopButton(page).evaluate((button) => {
      const { left, top, width: wide, height: high } = button.getBoundingClientRect();
      return button.contains(document.elementFromPoint(left + wide / 2, top + high / 2));
    });
    expect(own, `${width} × ${height}`).toBe(true);
  }
}

test('the aim in hand is named and counted while the line is played, and the marks are explained once', async () => {
  const { page } = app();
  await page.getByLabel('Land on').selectOption('third-on-arrival');
  await startButton(page).click();
  await expect(page.getByText('chorus 1')).toBeVisible();
  await expect(page.getByText('thirds as they arrive')).toBeVisible();
  await expect(page.getByRole('list', { name: 'What the marks mean' })).toBeVisible();
  await expect(page.getByText(/^\d+ of \d+ so far$/)).toBeAttached();
  await expectAccessible(page);
  await expectStopInSight(page);
  await page.keyboard.press('Space');
  await untilReview(page);
  await page.keyboard.press('Escape');
  await startButton(page).click();
  await expect(page.getByText('chorus 1')).toBeVisible();
  await expect(page.getByRole('list', { name: 'What the marks mean' })).toBeHidden();
  await asOnAFirstVisit(app());
});

test('with turns, keys and a rising tempo Stop keeps its place', async () => {
  const { page } = app();
  await page.getByText('Practise a part of it').click();
  await page.getByLabel(/^Turns/).selectOption('4');
  await page.getByLabel(/^Keys/).selectOption('fourths');
  await page.getByLabel(/^Faster by/).fill('4');
  await startButton(page).click();
  await expect(page.getByText('chorus 1')).toBeVisible();
  await expectStopInSight(page);
  // Without room for all dials the one in hand stands there; a touch of it takes the next.
  await page.setViewportSize({ width: 640, height: 400 });
  const dials = page.getByRole('group', { name: 'Band and time' });
  await dials.getByRole('button', { name: /^band −/ }).click();
  await expect(dials.getByRole('button', { name: /^tempo \d/ })).toBeVisible();
});

test('the demo is heard with its stage, and leads on to its review', async () => {
  const { page } = app();
  await asOnAFirstVisit(app());
  await demoButton(page).click();
  const on = page.getByRole('button', { name: 'To the review' });
  await expect(on).toBeVisible();
  // The line is heard note by note: landings come and are counted.
  await expect(page.getByText(/^\d+ of \d+ so far$/)).toBeAttached();
  await expect(page.getByRole('list', { name: 'What the marks mean' })).toBeVisible();
  await expectAccessible(page);
  await page.keyboard.press('Space');
  await expect(page.getByRole('button', { name: 'Hear the take' })).toBeVisible();
  // Once only: what is said of a note in its review does not bring the stage back.
  await expect(on).toBeHidden();
});
