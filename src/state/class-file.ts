/** What a teacher drops: sheets, takes, archives of takes, recordings; sorted before anything is graded. */
import { readSheet, type LessonSheet } from '../core/lesson/sheet.ts';
import { isReturnedName } from '../core/take-file/grade-returned.ts';
import { takesInLibrary } from '../core/take-file/library-file.ts';
import { isTakeFile } from '../core/take-file/read-take-file.ts';
import type { ReturnedFile } from '../analysis/returned-file.ts';
import { problem, type Problem } from '../core/words/problem.ts';
import { blobBytes, isArchive, isUnreadable } from './blob-bytes.ts';

/** A file with the folders that it lay in. */
export interface DroppedFile {
  readonly path: string;
  readonly file: File;
}

export interface FailedFile {
  readonly path: string;
  readonly problem: Problem;
}

export interface SortedFiles {
  readonly sheets: readonly { readonly sheet: LessonSheet; readonly text: string; readonly name: string }[];
  readonly takes: readonly ReturnedFile[];
  readonly failed: readonly FailedFile[];
}

const byCodeUnits = (a: DroppedFile, b: DroppedFile) => (a.path < b.path ? -1 : a.path > b.path ? 1 : 0);

/** In the order of their paths, as the command line grades them. What is no take, no archive and no sheet is left out. */
export async function sortFiles(dropped: readonly DroppedFile[]): Promise<SortedFiles> {
  const sheets: SortedFiles['sheets'][number][] = [];
  const takes: ReturnedFile[] = [];
  const failed: FailedFile[] = [];
  for (const one of [...dropped].sort(byCodeUnits)) {
    try {
      await sort(one);
    } catch (error) {
      if (!isUnreadable(error)) throw error;
      failed.push({ path: one.path, problem: problem('file.gone', { name: one.path }) });
    }
  }
  return { sheets, takes, failed };

  async function sort({ path, file }: DroppedFile): Promise<void> {
    const name = path.toLowerCase();
    if (name.endsWith('.json')) {
      const text = await file.text();
      const sheet = readSheet(text, path);
      if (sheet.ok) sheets.push({ sheet: sheet.value, text, name: path });
      else failed.push({ path, problem: sheet.problem });
    } else if (name.endsWith('.zip') && (await isArchive(file))) {
      const source = blobBytes(file, file.name);
      if (await isTakeFile(source)) takes.push({ path, file, member: null });
      else {
        const library = await takesInLibrary(source);
        if (!library.ok) failed.push({ path, problem: library.problem });
        else
          library.value.forEach((take, member) => takes.push({ path: `${path}/${take.name}`, file, member }));
      }
    } else if (isReturnedName(path)) takes.push({ path, file, member: null });
  }
}
