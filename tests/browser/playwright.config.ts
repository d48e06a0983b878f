import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';

const results = (name: string) => fileURLToPath(new URL(`../../test-results/${name}`, import.meta.url));

/** Each takes about half a gigabyte. */
const MOST_BROWSERS = 8;

const LOOPS = 'loop*.spec.ts';

/** Tests of the built site in a real browser. `set-up.ts` builds, serves and finds the browser. */
export default defineConfig({
  testDir: '.',
  testMatch: '*.spec.ts',
  globalSetup: './set-up.ts',
  outputDir: results('browser'),
  reporter: [['list'], ['json', { outputFile: results('browser.json') }]],
  // Much of a test is waiting for sound, which goes by in real time: two tests share a core.
  workers: Math.min(2 * availableParallelism(), MOST_BROWSERS),
  fullyParallel: true,
  projects: [
    { name: 'site', testIgnore: LOOPS },
    // The sound goes round through a sound server that slips where the machine is busy: `npm test` runs these alone.
    { name: 'loop', testMatch: LOOPS },
  ],
  retries: 0,
  // Patience for a machine that does other work beside it: what is asked is that a thing comes, not when.
  timeout: 600_000,
  expect: { timeout: 60_000 },
});
