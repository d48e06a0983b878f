/**
 * The order of the files of unit tests: the longest first, so that no core waits at the end for another one's last file. A
 * machine that never ran them knows only their sizes, and these few take long for their size: they start programs.
 */
import { statSync } from 'node:fs';
import type { TestSequencer, TestSpecification } from 'vitest/node';

const LONGEST = [
  'tests/pages-commands.test.ts',
  'tests/fuzz/stored.test.ts',
  'tests/cli/landfall.test.ts',
  'tests/cli/band.test.ts',
  'tests/state/band-kept.test.ts',
  'tests/fuzz/bytes.test.ts',
  'tests/cli/backing.test.ts',
  'tests/cli/machine.test.ts',
  'tests/cli/class.test.ts',
];

const rank = ({ moduleId }: TestSpecification): number => {
  const place = LONGEST.findIndex((file) => moduleId.endsWith(file));
  return place === -1 ? LONGEST.length : place;
};
const bytes = ({ moduleId }: TestSpecification): number => statSync(moduleId).size;

export class LongestFirst implements TestSequencer {
  shard(files: TestSpecification[]): TestSpecification[] {
    return files;
  }

  /** One project after another: files that share their process's modules must follow each other. */
  sort(files: TestSpecification[]): TestSpecification[] {
    return files.toSorted(
      (a, b) => a.project.name.localeCompare(b.project.name) || rank(a) - rank(b) || bytes(b) - bytes(a),
    );
  }
}
