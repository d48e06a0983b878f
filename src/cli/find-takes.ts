/** The files of folders that may be takes, in an order that is the same on every machine. */
import { readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { bad, failure, good, type Outcome } from '../core/base/outcome.ts';
import { isReturnedName } from '../core/take-file/grade-returned.ts';
import { diskProblem } from './file-source.ts';

/** More files than this in one call are surely not meant. */
export const MOST_TAKES = 10_000;

const byCodeUnits = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/**
 * Files that were named themselves are taken whatever their ending; of a folder, all with an ending of a take, its
 * folders with it. What begins with a dot is left out.
 */
export function findTakes(paths: readonly string[]): Outcome<readonly string[]> {
  const found: string[] = [];
  for (const path of paths) {
    try {
      if (!statSync(path).isDirectory()) found.push(path);
      else
        for (const entry of readdirSync(path, { recursive: true, withFileTypes: true })) {
          const whole = join(entry.parentPath, entry.name);
          if (entry.isFile() && isReturnedName(whole.slice(path.length))) found.push(whole);
        }
    } catch (error) {
      const told = diskProblem(path, error);
      if (told === null) throw error;
      return failure(told);
    }
  }
  const sorted = [...new Set(found)].sort(byCodeUnits);
  if (sorted.length === 0) return bad('cli.noTakes', { folders: paths });
  return sorted.length > MOST_TAKES
    ? bad('cli.tooManyTakes', { found: sorted.length, most: MOST_TAKES })
    : good(sorted);
}
