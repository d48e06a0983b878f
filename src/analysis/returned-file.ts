/** A student's file that the teacher opened, graded as the command line grades it. */
import { bad, type Outcome } from '../core/base/outcome.ts';
import type { ByteSource } from '../core/files/bytes/bytes.ts';
import { readSheet, type LessonSheet } from '../core/lesson/sheet.ts';
import { gradeReturned, type GradedReturn } from '../core/take-file/grade-returned.ts';
import { takesInLibrary } from '../core/take-file/library-file.ts';
import { blobBytes } from './blob-source.ts';

/** A file, or a take file in an archive of them. */
export interface ReturnedFile {
  /** With its folders, as the student is known by. */
  readonly path: string;
  readonly file: Blob;
  /** Where it stands in the archive; null where the file is the take itself. */
  readonly member: number | null;
}

/** What a class is graded by, as plain text that crosses into a worker. */
export interface ByTheseSheets {
  readonly sheets: readonly { readonly text: string; readonly name: string }[];
  readonly firstBeatSeconds: number;
}

export async function gradeReturnedFile(
  returned: ReturnedFile,
  by: ByTheseSheets,
  progress: (share: number) => void,
): Promise<Outcome<GradedReturn>> {
  const sheets: LessonSheet[] = [];
  for (const { text, name } of by.sheets) {
    const sheet = readSheet(text, name);
    if (!sheet.ok) return sheet;
    sheets.push(sheet.value);
  }
  const source = await sourceOf(returned);
  if (!source.ok) return source;
  const { firstBeatSeconds } = by;
  return gradeReturned(source.value, returned.path, { sheets, firstBeatSeconds, progress });
}

/** The bytes of one student's take. */
async function sourceOf({ path, file, member }: ReturnedFile): Promise<Outcome<ByteSource>> {
  const name = path.split('/').at(-1) ?? path;
  const bytes = blobBytes(file, name);
  if (member === null) return { ok: true, value: bytes };
  const library = await takesInLibrary(bytes);
  if (!library.ok) return library;
  const take = library.value[member];
  return take === undefined ? bad('takeFile.none', { name }) : take.open();
}
