/** A chart of a thousand bars and more: of its form only what is in sight is drawn, so that the page is never held. */
import type { Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { paste } from './screens.ts';

const BARS = 1000;
/** Drawn at once at the most, of a window 720 pixels high: three windows full, eight bars in a row. */
const MOST_DRAWN = 480;

/** Bar after bar another chord, so that each is known by its name. */
const ROOTS = ['C', 'Eb', 'F', 'G', 'Bb'];
const chart = Array.from(
  { length: BARS / 4 },
  (_, row) => `| ${Array.from({ length: 4 }, (_, i) => `${ROOTS[(row + i) % 5]!}7`).join(' | ')} |`,
).join('\n');

const bars = (page: Page) => page.getByRole('list', { name: 'Bars of the form' }).locator('[data-bar]');

async function expectFew(page: Page): Promise<void> {
  const drawn = await bars(page).count();
  expect(drawn).toBeGreaterThan(8);
  expect(drawn).toBeLessThanOrEqual(MOST_DRAWN);
}

test('a remembered chart of a thousand bars: few are drawn, and each when it comes into sight', async ({
  openApp,
}) => {
  const { page } = await openApp({ microphone: 'beeps' });
  await page.getByRole('radio', { name: /Write a chart/ }).press('Space');
  await paste(page.getByLabel('Your chart, bar by bar'), chart);
  await expect(bars(page).first()).toBeVisible();
  await expectFew(page);

  await page.reload();
  await expect(bars(page).first()).toBeVisible();
  await expectFew(page);
  // The whole form has its height: what follows it stands where it stood before.
  for (const bar of [500, BARS - 1, 0]) {
    await test.step(`bar ${bar}`, async () => {
      const list = page.getByRole('list', { name: 'Bars of the form' });
      await list.evaluate((ol, share) => {
        const { top, height } = ol.getBoundingClientRect();
        scrollBy(0, top + share * height - innerHeight / 2);
      }, bar / BARS);
      await expect(bars(page).locator(`xpath=self::*[@data-bar="${bar}"]`)).toBeInViewport();
      await expectFew(page);
    });
  }

  // On the stage, too, the bar that is played is there.
  await page.getByRole('button', { name: 'Start playing' }).click();
  await expect(page.locator('[data-bar="0"][aria-current]')).toBeInViewport();
  await expectFew(page);
});
