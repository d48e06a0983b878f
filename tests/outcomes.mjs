/**
 * The result files of the two test runners, brought to one form: how many tests passed and failed, which were skipped and
 * why (`reason` null where none is given), which passed at the second try only, and how long each test took.
 */
import { relative } from 'node:path';

/** Of Vitest's JSON. The reason comes from `needs` of tests/needs.ts. */
export function outcomeOfUnitTests({ numPassedTests, numFailedTests, numFailedTestSuites, testResults }) {
  const tests = testResults.flatMap(({ name, assertionResults }) =>
    assertionResults.map(({ fullName, duration, status, meta }) => ({
      name: `${relative('tests', name)}: ${fullName}`,
      seconds: (duration ?? 0) / 1000,
      isSkipped: status !== 'passed' && status !== 'failed',
      reason: meta?.skippedBecause ?? null,
    })),
  );
  return {
    passed: numPassedTests,
    // A file that can't be loaded has no tests that could fail.
    failed: numFailedTests > 0 ? numFailedTests : numFailedTestSuites,
    ...skippedAndTimed(tests),
  };
}

/** Of Playwright's JSON. The reason is the one that the test gave to `test.skip`. */
export function outcomeOfBrowserTests({ stats, suites }) {
  const tests = suites.flatMap(specsOf).flatMap(({ file, title, tests: runs }) =>
    runs.map(({ status, annotations, results }) => ({
      name: `browser/${file}: ${title}`,
      seconds: results.reduce((sum, { duration }) => sum + duration, 0) / 1000,
      isSkipped: status === 'skipped',
      isSecondTry: status === 'flaky',
      reason: annotations.find(({ type }) => type === 'skip')?.description ?? null,
    })),
  );
  return { passed: stats.expected + stats.flaky, failed: stats.unexpected, ...skippedAndTimed(tests) };
}

const specsOf = ({ specs = [], suites = [] }) => [...specs, ...suites.flatMap(specsOf)];

const skippedAndTimed = (tests) => ({
  secondTries: tests.filter(({ isSecondTry }) => isSecondTry).map(({ name }) => name),
  skipped: tests.filter(({ isSkipped }) => isSkipped).map(({ name, reason }) => ({ name, reason })),
  tests: tests.map(({ name, seconds }) => ({ name, seconds })),
});
