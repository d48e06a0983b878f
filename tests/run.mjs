/**
 * Everything CI runs, in one command. Some browser tests wait for sound in real time, which goes by while the processor has
 * little to do for them: beside them run the checks and the unit tests, at a lower priority, so that no sound is cut. The
 * checks use one core each, as many at a time as there are cores. What runs beside something else prints its output in one
 * piece, at its end. Every check counts once in the last line, `N passed, N failed`; one that has no count of its own
 * (types, lint) counts as one. Before it stand the slowest tests, and every test that was skipped, with its reason.
 */
import { spawn } from 'node:child_process';
import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { outcomeOfBrowserTests, outcomeOfUnitTests } from './outcomes.mjs';

const RESULTS = 'test-results';
const SLOWEST = 10;

/** First, since the browser tests need it. After `npm ci`, which builds too, there is nothing left to do. */
const BUILD = ['build', 'npm run --silent prepare'];

/** Longest first, so that no core is left with a long one at the end. */
const SINGLE_CORE_CHECKS = [
  ['lint', 'npm run --silent lint:code'],
  ['format', 'npm run --silent lint:format'],
  ['unused code', 'npm run --silent unused'],
  ['types of the tests', 'npm run --silent types:tests'],
  ['types of the components', 'npm run --silent types:svelte'],
  ['types of the core, the audio thread and the command line', 'npm run --silent types:core'],
];

const total = { passed: 0, failed: 0, skipped: [], secondTries: [], tests: [] };

function add({ passed, failed, skipped = [], secondTries = [], tests = [] }) {
  total.passed += passed;
  total.failed += failed;
  total.skipped.push(...skipped);
  total.secondTries.push(...secondTries);
  total.tests.push(...tests);
}

/** Runs a command of the shell. Its output is printed as it comes, or kept and given back in one piece. */
function run(command, { keepOutput, isLow = false, env = {} }) {
  const started = Date.now();
  return new Promise((resolve) => {
    // Set on a shell that has started, a priority would come too late for what the shell starts.
    const line = isLow && process.platform !== 'win32' ? `nice -n 19 ${command}` : command;
    const child = spawn(line, {
      shell: true,
      stdio: keepOutput ? ['ignore', 'pipe', 'pipe'] : 'inherit',
      env: { ...env, ...process.env },
    });
    const output = [];
    for (const stream of [child.stdout, child.stderr]) stream?.on('data', (data) => output.push(data));
    child.on('close', (status) =>
      resolve({ good: status === 0, seconds: (Date.now() - started) / 1000, output: Buffer.concat(output) }),
    );
  });
}

function printEnd(title, { good, seconds }) {
  console.log(`── ${title}: ${good ? 'good' : 'FAILED'} (${Math.round(seconds)} s)`);
}

/** Passes or fails as a whole. */
async function check([title, command], { isLow }) {
  const ended = await run(command, { keepOutput: true, isLow });
  console.log(`\n── ${title}`);
  process.stdout.write(ended.output);
  printEnd(title, ended);
  add({ passed: ended.good ? 1 : 0, failed: ended.good ? 0 : 1 });
}

/** As many at a time as the machine has cores, at a low priority. */
async function singleCoreChecks(checks) {
  const waiting = [...checks];
  const oneAfterAnother = async () => {
    for (let next = waiting.shift(); next !== undefined; next = waiting.shift())
      await check(next, { isLow: true });
  };
  await Promise.all(Array.from({ length: availableParallelism() }, oneAfterAnother));
}

/** A runner that leaves its outcome in a file; one that fell over before counting is one failure. */
async function suite(title, command, file, outcomeOf, { keepOutput = false, isLow = false, env = {} } = {}) {
  rmSync(file, { force: true });
  if (!keepOutput) console.log(`\n── ${title}`);
  const ended = await run(command, { keepOutput, isLow, env });
  if (keepOutput) console.log(`\n── ${title}`);
  process.stdout.write(ended.output);
  printEnd(title, ended);
  const found = existsSync(file)
    ? outcomeOf(JSON.parse(readFileSync(file, 'utf8')))
    : { passed: 0, failed: 0, skipped: [], tests: [] };
  if (found.passed + found.failed === 0 || (!ended.good && found.failed === 0)) found.failed += 1;
  add(found);
}

rmSync(RESULTS, { recursive: true, force: true });
mkdirSync(RESULTS, { recursive: true });
await check(BUILD, { isLow: false });

const browserTests = (title, project, how) =>
  suite(
    title,
    `npx playwright test -c tests/browser/playwright.config.ts ${project}`,
    `${RESULTS}/browser.json`,
    outcomeOfBrowserTests,
    how,
  );
await Promise.all([
  browserTests('real browser, the tests that wait for sound', '--project=waiting --workers=1', {
    keepOutput: true,
  }),
  (async () => {
    await singleCoreChecks(SINGLE_CORE_CHECKS);
    await suite(
      'unit, layers and outside checks',
      `npx vitest run --reporter=default --reporter=json --outputFile.json=${RESULTS}/unit.json`,
      `${RESULTS}/unit.json`,
      outcomeOfUnitTests,
      { isLow: true },
    );
  })(),
]);
// A headless Chromium without the rest of a desktop's browser takes a quarter less of the processor's time. The tests that
// wait for sound, and those that run alone, are tried in the browser that is installed.
await browserTests('real browser, built site', '--project=site', { env: { LANDFALL_BROWSER: 'lighter' } });
await browserTests('real browser, the tests that run alone', '--project=alone --workers=1');

const slowest = total.tests.toSorted((a, b) => b.seconds - a.seconds).slice(0, SLOWEST);
console.log(`\nThe ${slowest.length} slowest tests:`);
for (const { name, seconds } of slowest) console.log(`${seconds.toFixed(1).padStart(7)} s  ${name}`);

if (total.secondTries.length > 0) console.log('\nPassed at the second try only:');
for (const name of total.secondTries) console.log(`  ${name}`);

if (total.skipped.length > 0) console.log('\nSkipped:');
for (const { name, reason } of total.skipped) {
  console.log(`  ${name}\n    ${reason ?? 'NO REASON GIVEN, which counts as a failure'}`);
  if (reason === null) total.failed += 1;
}

const skipped = total.skipped.length > 0 ? `, ${total.skipped.length} skipped` : '';
console.log(`\n${total.passed} passed, ${total.failed} failed${skipped}`);
process.exitCode = total.failed === 0 && total.passed > 0 ? 0 : 1;
