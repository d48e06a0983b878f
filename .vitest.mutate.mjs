/** The unit tests that a mutation run asks: those of the folders that it breaks. */
import { configDefaults, defineConfig } from 'vitest/config';

const FOLDERS = ['chart', 'music', 'grade', 'listen/network'];
const asked = process.env.MUTATE_FOLDERS?.split(',') ?? FOLDERS;

/** A part of grading is asked by its own tests, and by those that grading has for all its parts together. */
const testsOf = (folder) => {
  const [parent] = folder.split('/');
  const together = parent !== folder && FOLDERS.includes(parent) ? [`tests/core/${parent}/*.test.ts`] : [];
  return [`tests/core/${folder}/**/*.test.ts`, ...together];
};

export default defineConfig({
  test: {
    include: asked.flatMap(testsOf),
    // These two ask the whole listener, which takes seconds for each mutant.
    exclude: [...configDefaults.exclude, 'tests/core/listen/network/{features,loudness}.test.ts'],
    // A busy machine must not fail the first run, in which nothing is broken.
    testTimeout: 60_000,
    // Without static mutants the modules need not be loaded anew for each mutant.
    isolate: process.env.MUTATE_STATIC !== 'no',
    setupFiles: ['tests/core/few-runs.ts'],
  },
});
