/**
 * A student's file graded for a teacher: a take file, a recording or a list of notes becomes a row of the class. The desk
 * and the command line both call this, so that their rows are equal.
 */
import { bad, failure, good, type Outcome } from '../base/outcome.ts';
import { hasMark, type ByteSource } from '../files/bytes/bytes.ts';
import { tooMuchToGrade } from '../grade-bounds.ts';
import { gradeForSheet } from '../grade-for-sheet.ts';
import type { GradeSettings } from '../grade-settings.ts';
import { hearFile } from '../hear-file.ts';
import { returnedTake, type ReturnedTake } from '../lesson/returned-take.ts';
import { readSheetFile, timelineOfSheet, type LessonSheet, type SheetFile } from '../lesson/sheet.ts';
import { studentOfPath, tryOfPath } from '../lesson/student-of-path.ts';
import { TAKE_FILE_ENDING } from './schema.ts';
import { gradeTakeFile } from './grade-take-file.ts';
import { isTakeFile, readTakeFile } from './read-take-file.ts';
import { correctionsOf } from '../take/correction.ts';
import type { TakeDetails } from '../take/details-schema.ts';
import type { HeardNote } from '../take/note.ts';
import { notices } from '../words/en/notices.ts';
import type { Message, Notice } from '../words/problem.ts';

/** Endings of what students send: takes, recordings and lists of notes; what a file holds is still told by its content. */
const ENDINGS: readonly string[] = [
  ...['.wav', '.flac', '.mp3', '.ogg', '.oga', '.mid', '.midi', '.csv'],
  TAKE_FILE_ENDING,
];

/**
 * What students send as well, and what is then refused with its reason: a voice memo that was passed over without a word
 * would be a student missing in the table.
 */
const SENT_ALL_THE_SAME: readonly string[] = [
  ...['.m4a', '.aac', '.aif', '.aiff', '.aifc', '.caf', '.wma', '.opus', '.amr', '.ape', '.wv', '.au'],
  ...['.mp4', '.m4v', '.mov', '.3gp', '.webm', '.mkv', '.avi', '.zip', '.rar', '.7z'],
];

/** Whether a file of a folder is meant to be graded: by its ending, and not hidden by a dot. */
export const isReturnedName = (path: string): boolean =>
  [...ENDINGS, ...SENT_ALL_THE_SAME].some((ending) => path.toLowerCase().endsWith(ending)) &&
  !path.split(/[/\\]/).some((part) => part.startsWith('.') && part !== '.' && part !== '..');

/** What the teacher says of the files. */
interface ForClass {
  /** The sheets at hand. A take that names none of them is graded by its own, else by the first. */
  readonly sheets: readonly LessonSheet[];
  /** Where the first downbeat lies in a plain recording, in seconds. */
  readonly firstBeatSeconds: number;
  /** The share that is listened to, 0 to 1. */
  progress(share: number): void;
}

export interface GradedReturn {
  readonly row: ReturnedTake;
  /** The sheet that it was graded by. */
  readonly sheet: SheetFile;
  /** `id` of a take file; null for other files. */
  readonly takeId: string | null;
  /** Every note that was heard, and where they come from: with these it is graded again without listening. */
  readonly heard: readonly HeardNote[];
  readonly source: GradeSettings['source'];
  readonly firstBeatSeconds: number;
  readonly referenceHz: number | 'auto';
  /** What was odd in the file and mended. */
  readonly warnings: readonly Notice[];
}

/**
 * Hears the file anew and grades it; a report that it carries is not looked at.
 * @param path of the file, by which a recording tells its student
 */
export async function gradeReturned(
  source: ByteSource,
  path: string,
  order: ForClass,
): Promise<Outcome<GradedReturn>> {
  if ((await isTakeFile(source)) || (await isCutTakeFile(source, path)))
    return gradeReturnedTake(source, path, order);
  const [sheet] = order.sheets;
  if (sheet === undefined) return bad('class.noSheet', { name: source.name });
  const take = await hearFile(source, (_, share) => order.progress(share ?? 0));
  if (!take.ok) return take;
  const { firstBeatSeconds } = order;
  const heard = take.value.notes;
  const basis = { source: take.value.source, firstBeatSeconds, referenceHz: 'auto' } as const;
  const tooMuch = tooMuchToGrade(heard, timelineOfSheet(sheet, firstBeatSeconds));
  if (tooMuch !== null) return failure(tooMuch);
  const row = returnedTake(gradeForSheet(heard, sheet, basis), {
    student: studentOfPath(path),
    file: path,
    sheet: 'none',
    ...sheetFacts(sheet),
    tryNumber: tryOfPath(path),
    startedAt: null,
    corrections: 0,
  });
  return good({ row, sheet: sheet.file, takeId: null, heard, ...basis, warnings: take.value.warnings });
}

/** An archive by its first bytes, named as a take file, whose directory is lost: reading it says what is wrong. */
const isCutTakeFile = async (source: ByteSource, path: string): Promise<boolean> =>
  path.toLowerCase().endsWith(TAKE_FILE_ENDING) && hasMark(await source.read(0, 2), 'PK');

/**
 * A plain recording graded once more, from the notes that were heard: its first downbeat lies elsewhere.
 * @throws where it was graded by a sheet that can't be read, which never happens
 */
export function withFirstBeat(graded: GradedReturn, firstBeatSeconds: number): GradedReturn {
  const sheet = readSheetFile(graded.sheet, graded.row.title);
  if (!sheet.ok) throw new Error('a take was graded by a sheet that can not be read');
  const { heard, source, referenceHz, row } = graded;
  const report = gradeForSheet(heard, sheet.value, { source, firstBeatSeconds, referenceHz });
  return { ...graded, firstBeatSeconds, row: returnedTake(report, row) };
}

/**
 * It says who played it, for which sheet, and when. What the student has corrected by hand is told and not taken over.
 */
async function gradeReturnedTake(
  source: ByteSource,
  path: string,
  { sheets, progress }: ForClass,
): Promise<Outcome<GradedReturn>> {
  const file = await readTakeFile(source);
  if (!file.ok) return file;
  const { id, details } = file.value;
  const { lesson } = details;
  const own = ownSheet(details);
  const mark = own?.mark ?? lesson?.mark;
  const sheet = sheets.find((one) => one.mark === mark) ?? own ?? sheets[0];
  if (sheet === undefined) return bad('class.noSheet', { name: source.name });
  const warnings: Notice[] = [];
  const graded = await gradeTakeFile(file.value, source.name, {
    progress,
    message: (message) => {
      if (isNotice(message)) warnings.push(message);
    },
  });
  if (!graded.ok) return failure(graded.problem);
  const { heard, report } = graded.value;
  const basis = {
    source: report.source,
    firstBeatSeconds: details.firstBeatSeconds ?? 0,
    referenceHz: details.reference,
  };
  const tooMuch = tooMuchToGrade(heard, timelineOfSheet(sheet, basis.firstBeatSeconds));
  if (tooMuch !== null) return failure(tooMuch);
  const row = returnedTake(gradeForSheet(heard, sheet, basis), {
    student: lesson?.student ?? studentOfPath(path),
    file: path,
    sheet: mark === undefined ? 'none' : isAtHand(mark, sheets) ? 'this one' : 'another',
    ...sheetFacts(sheet),
    tryNumber: lesson?.tryNumber ?? tryOfPath(path),
    startedAt: details.startedAt,
    corrections: correctionsOf(details).length,
  });
  return good({ row, sheet: sheet.file, takeId: id, heard, ...basis, warnings });
}

/** The sheet that a take carries; null where it carries none that can be read. */
function ownSheet({ lesson }: TakeDetails): LessonSheet | null {
  if (lesson?.sheet === undefined) return null;
  const sheet = readSheetFile(lesson.sheet, lesson.title);
  return sheet.ok ? sheet.value : null;
}

/** Where the teacher gives no sheet, the takes say what was asked for. */
const isAtHand = (mark: string, sheets: readonly LessonSheet[]) =>
  sheets.length === 0 || sheets.some((one) => one.mark === mark);

const sheetFacts = ({ mark, file }: LessonSheet) => ({ mark, title: file.title });

const isNotice = (message: Message): message is Notice => message.code in notices;
