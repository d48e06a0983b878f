/** What a test needs of the machine that it runs on. */
import { spawnSync } from 'node:child_process';

declare module '@vitest/runner' {
  interface TaskMeta {
    /** Printed at the end of `npm test`. */
    skippedBecause?: string;
  }
}

/**
 * Options of a test, or of a group of tests, that can't run everywhere: skipped where `present` is false, and listed at
 * the end of `npm test` with the reason.
 * @param missing a sentence of what is not there, as "SoX is not installed."
 */
export const needs = (present: boolean, missing: string) =>
  present ? {} : { skip: true, meta: { skippedBecause: missing } };

/** Whether a program is on the path and answers. */
export const isInstalled = (program: string, question = '--version') =>
  spawnSync(program, [question], { stdio: 'ignore' }).status === 0;

/** The first Python that has a module: the one that LANDFALL_PYTHON names, the one on the path, the system's own; or null. */
export function pythonWith(module: string): string | null {
  const candidates = [process.env.LANDFALL_PYTHON, 'python3', '/usr/bin/python3'];
  return (
    candidates.find(
      (python) => python !== undefined && spawnSync(python, ['-c', `import ${module}`]).status === 0,
    ) ?? null
  );
}

/** Another program of the same name comes with moreutils. */
export const isGnuParallelInstalled = () =>
  /GNU parallel/.test(spawnSync('parallel', ['--version'], { encoding: 'utf8' }).stdout ?? '');
