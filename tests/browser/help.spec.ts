/** What a mark or a word means, asked where it stands, by the keyboard alone. */
import { expect, oneVisit, test } from './app.ts';
import { demoButton, expectAccessibleInBothLights, startButton, untilReview } from './screens.ts';

const app = oneVisit(() => ({}));

test('the open page leads to what everything means, and Escape leads back', async () => {
  const { page } = app();
  const help = page.getByRole('dialog', { name: 'What it means' });
  const way = page.getByRole('button', { name: 'What it means' });
  await way.focus();
  await page.keyboard.press('Enter');
  await expect(help).toBeVisible();
  await expect(help.getByText('guide tone', { exact: true })).toBeVisible();
  await expectAccessibleInBothLights(page);
  // The space bar starts no take under it.
  await page.keyboard.press('Space');
  await expect(help).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(help).toBeHidden();
  await expect(startButton(page)).toBeVisible();
  await expect(way).toBeFocused();
});

test('the help leads to the guide, in a window of its own', async () => {
  const { page, context } = app();
  await page.getByRole('button', { name: 'What it means' }).click();
  const [guide] = await Promise.all([
    context.waitForEvent('page'),
    page.getByRole('link', { name: 'A guide for the player' }).click(),
  ]);
  await expect(guide.getByRole('heading', { level: 1, name: 'A guide for the player' })).toBeVisible();
  await expectAccessibleInBothLights(guide);
  await guide.getByRole('link', { name: 'Take care' }).first().click();
  await expect(guide.getByRole('heading', { level: 1, name: 'Take care' })).toBeVisible();
  await guide.close();
  await page.keyboard.press('Escape');
  await expect(startButton(page)).toBeVisible();
});

test('a mark of the review leads to its meaning, and the review stays', async () => {
  const { page } = app();
  await demoButton(page).click();
  await untilReview(page);
  const marks = page.getByRole('list', { name: 'Key to the marks' });
  await marks.getByRole('button', { name: 'seventh' }).focus();
  await page.keyboard.press('Enter');
  const asked = page.locator('dialog [data-entry=seventh]');
  await expect(asked).toBeInViewport();
  await expect(asked).toBeFocused();
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toBeHidden();
  await expect(page.getByRole('button', { name: 'Hear the take' })).toBeVisible();
  // A heading leads to its word, too.
  await page.getByRole('heading', { name: 'Landings', exact: true }).getByRole('button').click();
  await expect(page.locator('dialog [data-entry=landing]')).toBeFocused();
});
