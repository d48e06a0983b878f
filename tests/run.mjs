/**
 * Everything CI runs, in one command. Each step prints its own output; every check counts once in the last
 * line, `N passed, N failed`. A step that has no count of its own (types, lint) counts as one check.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';

const RESULTS = 'test-results';
rmSync(RESULTS, { recursive: true, force: true });
mkdirSync(RESULTS, { recursive: true });

const total = { passed: 0, failed: 0, skipped: 0 };

function run(title, command) {
  console.log(`\n── ${title}`);
  const started = Date.now();
  const { status } = spawnSync(command, { shell: true, stdio: 'inherit' });
  console.log(
    `── ${title}: ${status === 0 ? 'good' : 'FAILED'} (${Math.round((Date.now() - started) / 1000)} s)`,
  );
  return status === 0;
}

function add({ passed, failed, skipped }) {
  total.passed += passed;
  total.failed += failed;
  total.skipped += skipped;
}

/** One check that passes or fails as a whole. */
function step(title, command) {
  const good = run(title, command);
  add({ passed: good ? 1 : 0, failed: good ? 0 : 1, skipped: 0 });
}

/** A runner that leaves its counts in a file; a runner that fell over before counting is one failure. */
function suite(title, command, file, counts) {
  const good = run(title, command);
  const found = existsSync(file)
    ? counts(JSON.parse(readFileSync(file, 'utf8')))
    : { passed: 0, failed: 0, skipped: 0 };
  if (found.passed + found.failed === 0 || (!good && found.failed === 0)) found.failed += 1;
  add(found);
}

step('types', 'npm run --silent check');
step('lint and format', 'npm run --silent lint');
step('build', 'npm run --silent build');
suite(
  'unit, layers and outside checks',
  `npx vitest run --reporter=default --reporter=json --outputFile.json=${RESULTS}/unit.json`,
  `${RESULTS}/unit.json`,
  (r) => ({ passed: r.numPassedTests, failed: r.numFailedTests, skipped: r.numPendingTests }),
);
suite(
  'real browser, built site',
  'npx playwright test -c tests/browser/playwright.config.ts',
  `${RESULTS}/browser.json`,
  (r) => ({ passed: r.stats.expected + r.stats.flaky, failed: r.stats.unexpected, skipped: r.stats.skipped }),
);

const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
console.log(`\n${total.passed} passed, ${total.failed} failed${skipped}`);
process.exitCode = total.failed === 0 && total.passed > 0 ? 0 : 1;
