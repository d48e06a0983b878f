import { readdirSync, readFileSync } from 'node:fs';

/**
 * `npm run mutate` breaks the code in one small place after another and asks whether a unit test notices. One folder:
 * `MUTATE_FOLDERS=chart npm run mutate`, or a folder within it, `MUTATE_FOLDERS=grade/assign`. One window of 15 lines in
 * twelve, over all files: `MUTATE_ONE_IN=12`; `MUTATE_WINDOW=5` takes the fifth of each twelve rather than the first.
 * The scores are in DEVELOPERS.md. Not part of CI: a run takes from minutes to an hour.
 */
const FOLDERS = ['chart', 'music', 'grade', 'listen/network'];
const asked = process.env.MUTATE_FOLDERS?.split(',') ?? FOLDERS;

/** How many windows of lines there are for each one that is broken; 1 breaks them all. */
const oneIn = Number(process.env.MUTATE_ONE_IN ?? 1);
const window = Number(process.env.MUTATE_WINDOW ?? 1);
const WINDOW_LINES = 15;

/** The built-in forms are data, checked against published charts. */
const FORM_DATA = 'src/core/chart/form-data.ts';
/** What the network sees is arithmetic, checked against the training's own figures; its decisions are what is broken. */
const NETWORK_INPUT = /listen\/network\/(features|hear|network|spectra|spectra-rows|wasm)\.ts$/;

const filesOf = (folder) =>
  readdirSync(`src/core/${folder}`, { recursive: true })
    .filter((name) => name.endsWith('.ts'))
    .sort()
    .map((name) => `src/core/${folder}/${name}`)
    .filter((file) => file !== FORM_DATA && !NETWORK_INPUT.test(file));

/** Windows of lines, counted through all files of the folder, so that short files are taken as often as long ones. */
function windows(folder) {
  const all = filesOf(folder).flatMap((file) => {
    const lines = readFileSync(file, 'utf8').split('\n').length;
    return Array.from({ length: Math.ceil(lines / WINDOW_LINES) }, (_, i) => {
      const from = 1 + i * WINDOW_LINES;
      return `${file}:${from}-${Math.min(lines, from + WINDOW_LINES - 1)}`;
    });
  });
  return all.filter((_, i) => i % oneIn === window - 1);
}

export default {
  packageManager: 'npm',
  testRunner: 'vitest',
  plugins: ['@stryker-mutator/vitest-runner'],
  vitest: { configFile: '.vitest.mutate.mjs', related: false },
  coverageAnalysis: 'perTest',
  mutate: oneIn > 1 ? asked.flatMap(windows) : asked.flatMap(filesOf),
  // Not copied to the sandbox, because no unit test of the core reads it.
  ignorePatterns: [
    'dist',
    'test-results',
    '.bench',
    '.ci',
    'src/audio',
    'src/ui',
    'tests/browser',
    'tests/outside',
  ],
  tempDirName: '.stryker',
  concurrency: 1,
  // Long, because on a busy machine a slow mutant would otherwise count as one that never ends.
  timeoutMS: Number(process.env.MUTATE_TIMEOUT_MS ?? 10_000),
  // A mutant in a module's constants needs every test in a new process: MUTATE_STATIC=no leaves those out.
  ignoreStatic: process.env.MUTATE_STATIC === 'no',
  reporters: ['clear-text', 'json', 'progress-append-only'],
  clearTextReporter: { allowColor: false, logTests: false, reportTests: false, skipFull: true },
  jsonReporter: { fileName: `.stryker/${asked.map((folder) => folder.replaceAll('/', '-')).join('-')}.json` },
  thresholds: { high: 90, low: 80, break: 80 },
};
