/** A take is never lost: cut off, on a full disk, opened again, removed only when it is asked for. */
import type { CDPSession } from '@playwright/test';
import { expect, test } from './app.ts';
import { knownLine, type KnownLine } from './known-line.ts';
import { keepTakes, keptTake } from './kept-takes.ts';
import { startButton, stopButton, untilReview } from './screens.ts';

let line: KnownLine;
test.beforeAll(async () => {
  line = await knownLine();
});

test('a tab closed in mid-take: the take is found again and graded', async ({ openApp }) => {
  const { page, context, url } = await openApp({ microphone: { file: line.file } });
  await startButton(page).click();
  await expect(stopButton(page)).toBeVisible();
  // By the clock of the sound, which a busy machine holds up: a bar of four beats at 96 a minute takes 2.5 s.
  await expect(page.locator('[data-bar="1"][aria-current]')).toBeVisible();
  await page.waitForTimeout(2500);
  await page.close({ runBeforeUnload: false });

  const next = await context.newPage();
  await next.goto(url);
  await expect(next.getByText('A take was cut off')).toBeVisible();
  const kept = Number(/0:(\d\d)/.exec(await next.getByText('of it is kept').innerText())?.[1]);
  // Half a second may be lost at the end, and the take began a moment after the click.
  expect(kept).toBeGreaterThanOrEqual(4);
  await next.getByRole('button', { name: 'Grade it' }).click();
  await untilReview(next);
  await expect(next.getByText(/\b[1-9]\d*\snotes\b/).first()).toBeVisible();
  await next.getByRole('button', { name: 'Back', exact: true }).click();
  await expect(next.getByText('A take was cut off')).toHaveCount(0);

  // The take and its report are there after a reload too.
  await next.reload();
  await next.getByRole('region', { name: 'Earlier takes' }).getByRole('button').first().click();
  await untilReview(next);
});

test('a disk that fills up in mid-take: told, graded from memory all the same', async ({ openApp }) => {
  const { page, context, url } = await openApp({ microphone: { file: line.file } });
  const devtools: CDPSession = await context.newCDPSession(page);
  // About two seconds of sound, beside what the page has stored already.
  const { usage } = await devtools.send('Storage.getUsageAndQuota', { origin: new URL(url).origin });
  await devtools.send('Storage.overrideQuotaForOrigin', {
    origin: new URL(url).origin,
    quotaSize: usage + 200_000,
  });
  await startButton(page).click();
  await expect(page.getByRole('status').getByText(/disk is full/)).toBeVisible();
  await page.waitForTimeout(3000);
  await stopButton(page).click();
  await untilReview(page);
  await expect(page.getByText(/\b[1-9]\d*\snotes\b/).first()).toBeVisible();
  await expect(page.getByRole('status').getByText(/disk is full/)).toBeVisible();

  // A reload would lose it: the browser asks first. Who stays can save it as a file, and is asked no more.
  const questions: string[] = [];
  page.on('dialog', (dialog) => {
    questions.push(dialog.type());
    void dialog.dismiss();
  });
  await page.evaluate(() => location.reload());
  await expect.poll(() => questions).toEqual(['beforeunload']);

  // So does the page before it goes back: whoever stays has lost nothing.
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  const asked = page.getByRole('dialog', { name: 'This take is kept nowhere' });
  await expect(asked).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(asked).toHaveCount(0);
  await expect(page.getByText(/\b[1-9]\d*\snotes\b/).first()).toBeVisible();

  const saved = page.waitForEvent('download');
  await page.getByRole('button', { name: 'The whole take' }).click();
  expect((await saved).suggestedFilename()).toMatch(/\.landfall$/);
  await page.getByRole('button', { name: 'Back', exact: true }).click();
  await expect(startButton(page)).toBeVisible();
  await page.reload();
  await expect(startButton(page)).toBeVisible();
  expect(questions).toEqual(['beforeunload']);
});

test('takes are removed by the keyboard alone, and the focus goes on to the next one', async ({
  openApp,
}) => {
  const { page } = await openApp({ microphone: 'none' });
  await keepTakes(page, [keptTake({ daysAgo: 1 }), keptTake({ daysAgo: 2 })]);
  const takes = page.getByRole('region', { name: 'Earlier takes' }).getByRole('listitem');
  await expect(takes).toHaveCount(2);
  const inFocus = page.locator(':focus');

  await takes
    .first()
    .getByRole('button', { name: /^Remove/ })
    .focus();
  await page.keyboard.press('Enter');
  await expect(inFocus).toHaveText('Keep');
  await page.keyboard.press('Enter');
  await expect(inFocus).toHaveText('Remove');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Shift+Tab');
  await expect(inFocus).toHaveText('Remove for good');
  await page.keyboard.press('Enter');
  await expect(takes).toHaveCount(1);
  await expect(inFocus).toContainText('12-bar blues in A');

  await takes
    .first()
    .getByRole('button', { name: /^Remove/ })
    .press('Enter');
  await page.getByRole('button', { name: 'Remove for good' }).press('Enter');
  await expect(takes).toHaveCount(0);
  // With no take left, at the page's own beginning.
  await expect(page.locator('main')).toBeFocused();
});
