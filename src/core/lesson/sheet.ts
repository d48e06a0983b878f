/**
 * The lesson sheet: what a teacher asks for, as one small readable JSON file. It holds everything that a student needs
 * to play, so that no server and no account is needed.
 */
import * as v from 'valibot';
import { bad, failure, good, type Outcome } from '../base/outcome.ts';
import { timelineFromTempo } from '../chart/build-timeline.ts';
import { feelNames, fastestBpm, slowestBpm } from '../chart/feel-names.ts';
import { WIDEST_SWING, type Chart } from '../chart/chart.ts';
import { readChartArgument } from '../chart/forms.ts';
import { swingShare } from '../chart/swing.ts';
import type { Timeline } from '../chart/timeline.ts';
import { aimSchema, readAim, type Aim } from '../grade/aims/aim.ts';
import { HOUSE_AIMS } from '../grade/aims/aim-choices.ts';
import { INSTRUMENTS, instrumentOf, type Instrument } from '../music/instruments.ts';
import { exampleSchema } from './example.ts';
import { markOfText } from './sheet-mark.ts';

/** Written limits: a sheet is read by people, and must fit into a link. */
export const SHEET_LIMITS = {
  titleCharacters: 120,
  noteCharacters: 2000,
  chartCharacters: 8000,
  aims: 6,
  choruses: 99,
  /** Of the whole file, UTF-8. */
  bytes: 100_000,
} as const;

const line = (most: number) => v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(most));

/** An aim of the house, by its id, with the share that this lesson asks for. */
const houseAimSchema = v.strictObject({
  id: v.picklist(HOUSE_AIMS.map(({ id }) => id)),
  /** Of the events, 0 to 1; the aim's own where it is left out. */
  shareToReach: v.exactOptional(v.pipe(v.number(), v.minValue(0), v.maxValue(1))),
});

/** The file, as JSON. */
export const sheetSchema = v.strictObject({
  format: v.literal('landfall-sheet'),
  version: v.literal(1),
  title: line(SHEET_LIMITS.titleCharacters),
  /** What the teacher says about it; may be empty. */
  note: v.pipe(v.string(), v.maxLength(SHEET_LIMITS.noteCharacters)),
  /** Chart text, or "form:NAME in KEY". */
  chart: v.pipe(v.string(), v.minLength(1), v.maxLength(SHEET_LIMITS.chartCharacters)),
  /** Beats a minute. */
  tempo: v.pipe(v.number(), v.minValue(slowestBpm), v.maxValue(fastestBpm)),
  feel: v.picklist(feelNames),
  /** Times through the chart. */
  choruses: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(SHEET_LIMITS.choruses)),
  /** Id of the instrument; left out where each student plays their own. */
  instrument: v.exactOptional(v.picklist(INSTRUMENTS.map(({ id }) => id))),
  /** Aims of the house, or of the teacher's own; the first one leads. */
  aims: v.pipe(v.array(v.union([houseAimSchema, aimSchema])), v.minLength(1), v.maxLength(SHEET_LIMITS.aims)),
  /** What it may sound like; left out where the teacher gives no example. */
  example: v.exactOptional(exampleSchema),
});
export type SheetFile = v.InferOutput<typeof sheetSchema>;

/** A sheet that was read: the file, and what its texts mean. */
export interface LessonSheet {
  readonly file: Readonly<SheetFile>;
  /** Of the file's content; a take that was played for the sheet carries it. */
  readonly mark: string;
  readonly chart: Chart;
  readonly aims: readonly Aim[];
  readonly instrument: Instrument | null;
}

/** Three numbers of a list, each on a line of its own; texts of a file hold no line break, so that none is taken for it. */
const NOTE_ON_LINES = /\[\n\s+(-?[\d.e-]+),\n\s+(-?[\d.e-]+),\n\s+(-?[\d.e-]+)\n\s+\]/g;

/**
 * The text of a sheet as it is kept and sent: its fields in their order, so that the same sheet is always the same text; a
 * note of an example is one line.
 */
export function writeSheet(file: SheetFile): string {
  const inOrder = Object.fromEntries(
    Object.keys(sheetSchema.entries)
      .filter((name) => name in file)
      .map((name) => [name, file[name as keyof SheetFile]]),
  );
  return `${JSON.stringify(inOrder, null, 2).replace(NOTE_ON_LINES, '[$1, $2, $3]')}\n`;
}

/** The mark of a sheet: of its text as {@link writeSheet} writes it, so that white space and order don't matter. */
export const markOfSheet = (file: SheetFile): string => markOfText(writeSheet(file));

/**
 * Reads a lesson sheet.
 * @param text the file
 * @param name of the file, for the problem
 */
export function readSheet(text: string, name: string): Outcome<LessonSheet> {
  if (text.length > SHEET_LIMITS.bytes) return bad('sheet.tooLong', { name, most: SHEET_LIMITS.bytes });
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch {
    return bad('sheet.notJson', { name });
  }
  return readSheetFile(json, name);
}

/**
 * Reads a lesson sheet that is JSON already.
 * @param name of where it stands, for the problem
 */
export function readSheetFile(json: unknown, name: string): Outcome<LessonSheet> {
  const { format, version } = (json ?? {}) as { format?: unknown; version?: unknown };
  if (format !== 'landfall-sheet') return bad('sheet.notSheet', { name });
  if (typeof version !== 'number') return bad('sheet.field', { name, field: 'version' });
  if (version !== 1) return bad('sheet.version', { name, found: String(version) });
  const read = v.safeParse(sheetSchema, json);
  if (!read.success) return bad('sheet.field', { name, field: v.getDotPath(read.issues[0]) ?? '' });
  const file = read.output;
  const chart = readChartArgument(file.chart);
  if (!chart.ok) return bad('cli.inFile', { name, cause: chart.problem });
  const aims: Aim[] = [];
  for (const one of file.aims) {
    const aim = aimOfSheet(one);
    if (!aim.ok) return failure(aim.problem);
    aims.push(aim.value);
  }
  const instrument = file.instrument === undefined ? null : instrumentOf(file.instrument);
  return good({ file, mark: markOfSheet(file), chart: chart.value, aims, instrument });
}

function aimOfSheet(one: SheetFile['aims'][number]): Outcome<Aim> {
  if ('format' in one) return readAim(one);
  const aim = HOUSE_AIMS.find(({ id }) => id === one.id)!;
  return good({ ...aim, shareToReach: one.shareToReach ?? aim.shareToReach });
}

/**
 * The sheet's chords on time, swung as the band plays the feel at this tempo.
 * @param firstBeatSeconds where the first downbeat lies in the take
 */
export const timelineOfSheet = ({ chart, file }: LessonSheet, firstBeatSeconds: number): Timeline =>
  timelineFromTempo(chart, {
    bpm: file.tempo,
    firstBeatSeconds,
    feel: file.feel,
    swing: Math.min(WIDEST_SWING, swingShare(file.feel, file.tempo)),
  });
