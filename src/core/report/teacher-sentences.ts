/** What else a teacher hears, a sentence each where there is something to say: rests, approaches, figures, time, range, accents. */
import type { Report } from '../take/schema.ts';
import { spelledNote } from '../words/spelling.ts';
import type { Words } from '../words/words.ts';

/** With fewer phrases, landings or notes nothing is called a habit. */
const LEAST_PHRASES = 3;
const LEAST_LANDINGS = 4;
const LEAST_NOTES = 12;
/** A smaller difference in level is not heard as an accent. */
const LEAST_DB = 2;
/** A swing that differs by less is counted as the feel's. */
const LEAST_SWING = 0.03;
/** Nobody hears that notes are early or late by less. */
const LEAST_HEARD_MS = 10;
/** Notes with a smaller spread were written and not played: nothing is said about their timing. */
const LEAST_SPREAD_MS = 2;
/** Of a longer figure only the first notes are named. */
const MOST_NAMED = 8;

/** The sentences by what they are about; empty where there is nothing to say. */
export interface TeacherSentences {
  readonly space: readonly string[];
  readonly approach: readonly string[];
  readonly figures: readonly string[];
  readonly time: readonly string[];
  readonly range: readonly string[];
  readonly accents: readonly string[];
}

export const teacherSentences = (report: Report, words: Words): TeacherSentences => ({
  space: spaceSentences(report, words),
  approach: approachSentences(report, words),
  figures: figureSentences(report, words),
  time: timeSentences(report, words),
  range: rangeSentences(report, words),
  accents: accentSentences(report, words),
});

function spaceSentences({ space }: Report, { report: { hears } }: Words): readonly string[] {
  const { restShare, medianPhraseBars, longestRunBars, phrases, starts } = space;
  if (restShare === null || medianPhraseBars === null || longestRunBars === null) return [];
  if (phrases < LEAST_PHRASES) return [];
  const isHabit = starts !== null && starts.count >= LEAST_PHRASES && starts.count * 2 >= phrases;
  return [
    hears.space({ rest: restShare, phraseBars: medianPhraseBars, runBars: longestRunBars }),
    ...(isHabit
      ? [hears.starts({ count: starts.count, of: phrases, beat: beatName(starts.beatOfBar) })]
      : []),
  ];
}

/** "1", "2½" */
const beatName = (beatOfBar: number): string =>
  `${Math.floor(beatOfBar) + 1}${Number.isInteger(beatOfBar) ? '' : '½'}`;

function approachSentences({ approach }: Report, { report: { hears } }: Words): readonly string[] {
  if (approach.landings < LEAST_LANDINGS) return [];
  const kinds = ['halfBelow', 'halfAbove', 'wholeStep', 'enclosure', 'leap', 'sameNote'] as const;
  const ways = kinds.filter((kind) => approach[kind] > 0);
  return [
    hears.approach({
      landings: approach.landings,
      ways: ways.map((kind) => hears.ways[kind]({ count: approach[kind] })),
    }),
  ];
}

function figureSentences({ figures, notes }: Report, words: Words): readonly string[] {
  const { hears } = words.report;
  return figures.map(({ length, starts, ...changed }) => {
    const first = starts[0]!;
    const kinds = ['movedInBar', 'otherOctave', 'otherChord', 'otherEnd'] as const;
    return hears.figure({
      notes: notes
        .slice(first, first + Math.min(length, MOST_NAMED))
        .map(({ spelling }) => spelledNote(spelling.replace(/-?\d+$/u, ''), words)),
      more: Math.max(0, length - MOST_NAMED),
      count: starts.length,
      bar: notes[first]!.bar === null ? null : notes[first]!.bar + 1,
      changes: kinds
        .filter((kind) => changed[kind] > 0)
        .map((kind) => hears.figureChanges[kind]({ count: changed[kind] })),
    });
  });
}

function timeSentences(
  { timing, swingPlayed, timeline }: Report,
  { report: { hears } }: Words,
): readonly string[] {
  const { medianMs, spreadMs, notes } = timing;
  const { share } = swingPlayed;
  return [
    ...(medianMs === null || spreadMs === null || notes < LEAST_NOTES || spreadMs < LEAST_SPREAD_MS
      ? []
      : [hears.beat({ medianMs: Math.abs(medianMs) < LEAST_HEARD_MS ? 0 : medianMs, spreadMs })]),
    ...(share === null || Math.abs(share - timeline.swing) < LEAST_SWING
      ? []
      : [hears.swing({ played: share, asked: timeline.swing })]),
  ];
}

function rangeSentences({ range, notes }: Report, words: Words): readonly string[] {
  const { hears } = words.report;
  const { lowestNote, highestNote, semitones } = range;
  if (lowestNote === null || highestNote === null || semitones === null || notes.length < LEAST_NOTES)
    return [];
  const kinds = (['rising', 'falling', 'arched', 'level'] as const).filter((kind) => range[kind] > 0);
  const shaped = kinds.reduce((sum, kind) => sum + range[kind], 0);
  return [
    hears.range({
      lowest: spelledNote(notes[lowestNote]!.spelling, words),
      highest: spelledNote(notes[highestNote]!.spelling, words),
      semitones,
    }),
    ...(shaped < LEAST_PHRASES
      ? []
      : [hears.shapes({ shapes: kinds.map((kind) => hears.shape[kind]({ count: range[kind] })) })]),
  ];
}

function accentSentences({ accents }: Report, { report: { hears } }: Words): readonly string[] {
  const { strongNotes, otherNotes, differenceDb } = accents;
  if (differenceDb === null || Math.min(strongNotes, otherNotes) < LEAST_NOTES) return [];
  return Math.abs(differenceDb) < LEAST_DB ? [] : [hears.accents({ db: differenceDb })];
}
