/** The unit tests that a mutation run asks: those of the folders that it breaks. */
import { defineConfig } from 'vitest/config';

const folders = process.env.MUTATE_FOLDERS?.split(',') ?? ['chart', 'music', 'grade', 'listen/network'];

/** A folder within a folder is asked by its own tests, and by those that its parent has for all its parts together. */
const testsOf = (folder) => [
  `tests/core/${folder}/**/*.test.ts`,
  ...(folder.includes('/') ? [`tests/core/${folder.slice(0, folder.lastIndexOf('/'))}/*.test.ts`] : []),
];

export default defineConfig({
  test: {
    include: folders.flatMap(testsOf),
    // A busy machine must not fail the first run, in which nothing is broken.
    testTimeout: 60_000,
    // Without static mutants the modules need not be loaded anew for each mutant.
    isolate: process.env.MUTATE_STATIC !== 'no',
    setupFiles: ['tests/core/few-runs.ts'],
  },
});
