import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';

const results = (name: string) => fileURLToPath(new URL(`../../test-results/${name}`, import.meta.url));

/** Tests of the built site in a real browser. `set-up.ts` builds, serves and finds the browser. */
export default defineConfig({
  testDir: '.',
  testMatch: '*.spec.ts',
  globalSetup: './set-up.ts',
  outputDir: results('browser'),
  reporter: [['list'], ['json', { outputFile: results('browser.json') }]],
  // Fake microphones run in real time: two at once, so that neither is starved of a core.
  workers: 2,
  fullyParallel: true,
  retries: 0,
  timeout: 60_000,
  expect: { timeout: 10_000 },
});
