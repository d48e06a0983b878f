/** The page over days: what is due, a take of yesterday practised again by one button, two takes compared. */
import type { Page } from '@playwright/test';
import { expect, test } from './app.ts';
import { expectAccessibleInBothLights, stopButton } from './screens.ts';

/** Takes of earlier days, as this app keeps them: their sound is not needed here. */
async function keepTakes(page: Page, days: readonly number[]): Promise<void> {
  const takes = days.map((daysAgo, i) => ({
    id: `take-${i}`,
    details: {
      title: '12-bar blues in A',
      startedAt: new Date(Date.now() - daysAgo * 86_400_000 + i).toISOString(),
      source: 'microphone',
      chartText: 'title: 12-bar blues\nkey: A\n| A7 | A7 | A7 | A7 | D7 | D7 | A7 | A7 | E7 | D7 | A7 | E7 |',
      key: 'A',
      bpm: 96,
      feel: 'shuffle',
      swing: 0.66,
      reference: 'auto',
      sampleRate: 44_100,
      firstBeatSeconds: 0.5,
    },
    finished: true,
    frames: 44_100 * 60,
    summary: {
      notes: 80,
      chordToneShare: 0.5,
      thirdShare: 0.2,
      landings: { count: 12, open: 0, chordTones: 8, thirds: 4 },
      counts: {
        aim: { id: 'guide-tones', hits: 6, of: 12, goal: 0.6 },
        changes: [
          { from: 'A7', to: 'D7', bar: 4, hits: 1, of: 6 },
          { from: 'D7', to: 'A7', bar: 6, hits: 5, of: 6 },
        ],
        choruses: [
          { hits: 2, of: 6 },
          { hits: 4, of: 6 },
        ],
      },
    },
  }));
  await page.evaluate(
    (records) =>
      new Promise<void>((resolve, reject) => {
        const opening = indexedDB.open('landfall');
        opening.onerror = () => reject(new Error('no database'));
        opening.onsuccess = () => {
          const writing = opening.result.transaction('takes', 'readwrite');
          for (const record of records) writing.objectStore('takes').put(record, record.id);
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    takes,
  );
  await page.reload();
}

test('says what to practise today, and plays it at one press', async ({ openApp }) => {
  const { page } = await openApp({ microphone: 'beeps' });
  const open = page.getByRole('button', { name: 'What to practise today' });
  await open.click();
  await expect(page.getByText('Play a take: the next day')).toBeVisible();
  await page.keyboard.press('Escape');
  await keepTakes(page, [3, 2, 1]);

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
