/** Takes of earlier days, as the app keeps them: their sound is not needed for what is told over days. */
import type { Page } from '@playwright/test';

const CHORUSES = 2;
const CHANGES_IN_CHORUS = 6;

/** @param hits of the twelve landings of a take */
export const keptTake = ({ daysAgo, hits = 6 }: { readonly daysAgo: number; readonly hits?: number }) => ({
  id: `take-${daysAgo}`,
  details: {
    title: '12-bar blues in A',
    startedAt: new Date(Date.now() - daysAgo * 86_400_000).toISOString(),
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
      aim: { id: 'guide-tones', hits, of: CHORUSES * CHANGES_IN_CHORUS, goal: 0.6 },
      changes: [
        { from: 'A7', to: 'D7', bar: 4, hits: Math.max(0, hits - 5), of: CHANGES_IN_CHORUS },
        { from: 'D7', to: 'A7', bar: 6, hits: Math.min(5, hits), of: CHANGES_IN_CHORUS },
      ],
      choruses: [
        { hits: Math.floor(hits / 3), of: CHANGES_IN_CHORUS },
        { hits: hits - Math.floor(hits / 3), of: CHANGES_IN_CHORUS },
      ],
    },
  },
});

/** Puts takes into the database of the page and loads it again. */
export async function keepTakes(page: Page, takes: readonly ReturnType<typeof keptTake>[]): Promise<void> {
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
