/** `landfall grade`: the two inputs in, the core in the middle, a page or JSON out. */
import type { Notice } from '../core/words/problem.ts';
import { grade } from '../core/grade.ts';
import { tooMuchToGrade } from '../core/grade-bounds.ts';
import { readAim, type Aim } from '../core/grade/aims/aim.ts';
import { HOUSE_AIMS } from '../core/grade/aims/aim-choices.ts';
import type { GradeSettings } from '../core/grade-settings.ts';
import { onOneLine } from '../core/words/one-line.ts';
import { bad, failure, good, type Outcome } from '../core/base/outcome.ts';
import { explainBar } from '../core/report/explain.ts';
import { aimWords } from '../core/report/aim-words.ts';
import type { Words } from '../core/words/words.ts';
import type { Report } from '../core/take/schema.ts';
import { isTakeFile } from '../core/take-file/read-take-file.ts';
import { reportText } from '../core/report/text.ts';
import type { Answer } from './answer.ts';
import type { GradeOrder } from './orders.ts';
import { openFile } from './file-source.ts';
import type { Progress } from './progress.ts';
import type { HeardLine } from '../core/hear-file.ts';
import { readTake } from './read-take.ts';
import { gradedTakeFile } from './read-take-file.ts';
import { readTimeline, textOfFile, type ReadTimeline } from './read-timeline.ts';
import { foundTimeline } from './found-timeline.ts';

/** What goes to standard output, and what the player should know beside it. */
export interface Graded {
  readonly page: string;
  readonly warnings: readonly Notice[];
}

/** An aim of the house by its id or its name in the language of the page, or a file. */
function aimOf(name: string, words: Words): Outcome<Aim> {
  const wanted = name.toLowerCase();
  const known = HOUSE_AIMS.find(
    (aim) => aim.id === name || aimWords(aim, words).name.toLowerCase() === wanted,
  );
  if (known) return good(known);
  const text = textOfFile(name);
  if (!text.ok) return text;
  if (text.value === null) return bad('cli.unknownAim', { given: name });
  let json: unknown;
  try {
    json = JSON.parse(text.value);
  } catch {
    return bad('cli.aimNotJson', { name });
  }
  const aim = readAim(json);
  return aim.ok ? aim : bad('cli.inFile', { name, cause: aim.problem });
}

/** The page that was asked for. */
export function pageOf(report: Report, order: GradeOrder, words: Words): Outcome<string> {
  if (order.json) return good(JSON.stringify(report, null, 2));
  if (order.explainBar === null) return good(reportText(report, words, order.full ? 'full' : 'short'));
  const lines = explainBar(report, order.explainBar, order.explainChorus, words);
  return lines === null
    ? bad('cli.noSuchBar', { bars: report.timeline.bars, bar: order.explainBar })
    : good(lines.map(onOneLine).join('\n'));
}

/** A take file graded by its own chords. */
async function reportOfTakeFile(order: GradeOrder, progress: Progress): Promise<Answer<GradedTake>> {
  const source = openFile(order.file);
  if (!source.ok) return source;
  try {
    const graded = await gradedTakeFile(source.value, progress);
    return graded.ok ? good({ report: graded.value.report, warnings: graded.value.warnings }) : graded;
  } finally {
    progress.dispose();
    source.value.dispose();
  }
}

async function takeOf(order: GradeOrder, progress: Progress): Promise<Outcome<HeardLine>> {
  const source = openFile(order.file);
  if (!source.ok) return source;
  const backing = order.backing === null ? good(null) : openFile(order.backing);
  try {
    if (await isTakeFile(source.value)) return bad('cli.takeFileHasChords', { name: order.file });
    return backing.ok ? await readTake(source.value, order.part, progress, backing.value) : backing;
  } finally {
    progress.dispose();
    source.value.dispose();
    if (backing.ok) backing.value?.dispose();
  }
}

/** A take that was graded, before it becomes a page. */
interface GradedTake {
  readonly report: Report;
  readonly warnings: readonly Notice[];
}

/** null where they are found in a backing, whose place in the take is known once that was listened to. */
async function chordsGiven(order: GradeOrder): Promise<Answer<ReadTimeline> | null> {
  const { under } = order;
  if (under.kind === 'take file') return null;
  if (under.kind !== 'found') return readTimeline(order, under);
  return order.backing === null ? foundTimeline(order, null) : null;
}

/**
 * Grades as ordered. The chords are read before the sound, so that a slip there costs no waiting.
 * @param words for the names of aims; an id or a file name is known in every language
 */
export async function reportFor(
  order: GradeOrder,
  progress: Progress,
  words: Words,
): Promise<Answer<GradedTake>> {
  if (order.under.kind === 'take file') return reportOfTakeFile(order, progress);
  const given = await chordsGiven(order);
  if (given?.ok === false) return given;
  const aims: Aim[] = [];
  for (const name of order.aims) {
    const aim = aimOf(name, words);
    if (!aim.ok) return aim;
    aims.push(aim.value);
  }
  const take = await takeOf(order, progress);
  if (!take.ok) return take;
  const chords = given ?? (await foundTimeline(order, take.value.source));
  if (!chords.ok) return chords;
  const tooMuch = tooMuchToGrade(take.value.notes, chords.value.timeline);
  if (tooMuch !== null) return failure(tooMuch);
  const settings: GradeSettings = {
    source: take.value.source,
    referenceHz: order.referenceHz,
    ...(order.anticipationBeats === null ? {} : { anticipationBeats: order.anticipationBeats }),
    ...(order.toleranceMs === null ? {} : { toleranceSeconds: order.toleranceMs / 1000 }),
    ...(order.palette === null ? {} : { palette: order.palette }),
    ...(order.instrument === null ? {} : { instrument: order.instrument }),
    aims,
  };
  return good({
    report: grade(take.value.notes, chords.value.timeline, settings),
    warnings: [...chords.value.warnings, ...take.value.warnings],
  });
}

/** Grades one file, and makes the page that was asked for. */
export async function gradeFile(
  order: GradeOrder,
  progress: Progress,
  words: Words,
): Promise<Answer<Graded>> {
  const graded = await reportFor(order, progress, words);
  if (!graded.ok) return graded;
  const page = pageOf(graded.value.report, order, words);
  return page.ok ? good({ page: page.value, warnings: graded.value.warnings }) : page;
}
