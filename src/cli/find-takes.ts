/** The files of folders that may be takes, in an order that is the same on every machine. */
import { readdirSync, statSync, type Dirent } from 'node:fs';
import { join } from 'node:path';
import { bad, failure, good, type Outcome } from '../core/base/outcome.ts';
import { isReturnedName } from '../core/take-file/grade-returned.ts';
import { diskProblem } from './file-source.ts';

/** More files than this in one call are surely not meant. */
export const MOST_TAKES = 10_000;

const byCodeUnits = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);

/**
 * Files that were named themselves are taken whatever their ending; of a folder, all with an ending of a take, its
 * folders with it. What begins with a dot is left out. A folder in it that may not be read stands among the files, so
 * that it is told and the others are graded.
 */
export function findTakes(paths: readonly string[]): Outcome<readonly string[]> {
  const found: string[] = [];
  for (const path of paths) {
    try {
      if (statSync(path).isDirectory()) found.push(...takesIn(path, path, readdirSync(path, DETAILS)));
      else found.push(path);
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

const DETAILS = { withFileTypes: true } as const;

function takesIn(top: string, folder: string, entries: readonly Dirent[]): string[] {
  return entries.flatMap((entry) => {
    const path = join(folder, entry.name);
    const isTake = isReturnedName(path.slice(top.length));
    if (entry.isDirectory()) return takesInFolder(top, path);
    // A link to a folder is not followed: it may lead round in a circle.
    if (entry.isSymbolicLink()) return isTake && !isFolder(path) ? [path] : [];
    return isTake && entry.isFile() ? [path] : [];
  });
}

function takesInFolder(top: string, path: string): string[] {
  try {
    return takesIn(top, path, readdirSync(path, DETAILS));
  } catch (error) {
    if (diskProblem(path, error) === null) throw error;
    return [path];
  }
}

/** Whether it is a folder, or a link to one. */
export function isFolder(path: string): boolean {
  try {
    return statSync(path, { throwIfNoEntry: false })?.isDirectory() ?? false;
  } catch {
    // Reading it will say why not.
    return false;
  }
}
