/** The page over days: what is due, a take of yesterday practised again by one button, two takes compared. */
import { expect, test } from './app.ts';
import { keepTakes, keptTake } from './kept-takes.ts';
import { expectAccessibleInBothLights, stopButton } from './screens.ts';

test('says what to practise today, and plays it at one press', async ({ openApp }) => {
  const { page } = await openApp({ microphone: 'beeps' });
  const open = page.getByRole('button', { name: 'What to practise today' });
  await open.click();
  await expect(page.getByText('Play a take: the next day')).toBeVisible();
  await page.keyboard.press('Escape');
  await keepTakes(page, [keptTake({ daysAgo: 3 }), keptTake({ daysAgo: 2 }), keptTake({ daysAgo: 1 })]);

  // By the keyboard alone.
  await open.focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: 'From day to day' })).toBeVisible();
  await expect(page.getByText('3 takes on 3 days.')).toBeVisible();
  await expect(page.getByText('Third or seventh 3 of 18 times. Played yesterday.')).toBeVisible();
  await expect(page.getByRole('table', { name: 'Chords' }).getByRole('row')).toHaveCount(3);
  await expect(
    page.getByText('They differ no more than two takes on the same day usually do.'),
  ).toBeVisible();
  await expectAccessibleInBothLights(page);
  await page.setViewportSize({ width: 320, height: 640 });
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(320);
  await page.setViewportSize({ width: 1280, height: 800 });

  const practise = page.getByRole('button', { name: 'Practise it: A 7 to D 7' });
  await practise.focus();
  await page.keyboard.press('Enter');
  await expect(stopButton(page)).toBeVisible();
  await expect(page.getByText('thirds and sevenths')).toBeVisible();
});
