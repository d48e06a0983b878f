import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';

const results = (name: string) => fileURLToPath(new URL(`../../test-results/${name}`, import.meta.url));

/** Each takes about half a gigabyte. */
const MOST_BROWSERS = 8;

/** Their sound must not be cut: one at a time, and nothing beside it. */
const ALONE = ['loop*.spec.ts'];

/**
 * They wait for much sound in real time, or draw as many frames as a display: one at a time, beside work of a low priority.
 */
const WAITING = ['known-line.spec.ts', 'faults.spec.ts', 'review-long.spec.ts', '**/firefox.spec.ts'];

/** Tests of the built site in a real browser. `set-up.ts` builds, serves and finds the browser. */
export default defineConfig({
  testDir: '.',
  testMatch: '*.spec.ts',
  globalSetup: './set-up.ts',
  outputDir: results('browser'),
  reporter: [['list'], ['json', { outputFile: results('browser.json') }]],
  // Much of a test is waiting for sound, which goes by in real time: two tests run for each core.
  workers: Math.min(2 * availableParallelism(), MOST_BROWSERS),
  fullyParallel: true,
  projects: [
    { name: 'site', testIgnore: [...ALONE, ...WAITING] },
    // On a busy machine blocks of sound are left out and frames are late: `npm test` runs these one after the other.
    { name: 'waiting', testMatch: WAITING },
    { name: 'alone', testMatch: ALONE },
  ],
  // Headless Chromium at times stops drawing frames and then never again. Such a test has one more try in a browser of its
  // own; `npm test` names each test that needed it.
  retries: 1,
  // Patience for a machine that does other work beside it: what is asked is that a thing comes, not when.
  timeout: 300_000,
  expect: { timeout: 60_000 },
  use: { actionTimeout: 60_000 },
});
