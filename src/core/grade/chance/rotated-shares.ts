/**
 * Shares over all notes, over those on strong beats, and by length: their chance is the mean over every rotation of the
 * chart by whole bars. Bars that hold the same notes are one draw: each is turned by itself, and all its copies with it, so
 * that a riff that comes back is no more evidence than the riff once.
 */
import { chordOfNote, type Anticipation } from '../assign/attribute.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { Chord } from '../../music/chord.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { splitAtChanges } from '../assign/length-parts.ts';
import { figureOfBars } from './figures.ts';
import { holds, maskReader, type ChordMasks, type ToneSet } from '../assign/tone-sets.ts';
import { effectiveCount, wilsonInterval } from '../../base/statistics.ts';
import { rotateTimeline } from './rotate.ts';
import { eachSet, NOTHING_ASKED, type AskedShare } from './shares.ts';
import { SHARES_TO_REACH } from './page.ts';
import { sumOfTurns } from './turned-sum.ts';
import { answer, type Question } from './verdict.ts';
import { powerOfRotations } from './power.ts';

/** A note, or a part of one, as it counts in a share. */
interface Counted {
  readonly pitchClass: number;
  readonly chord: Chord;
  /** 1 for a note, seconds for a length. */
  readonly weight: number;
  /** Which of the different bars it stands in. */
  readonly figure: number;
}

export type RotatedKind = 'allNotes' | 'strongBeats' | 'byLength';

/** How the notes were graded, so that they can be graded again over the turned chart. */
export interface RotationRules {
  readonly anticipation: Anticipation;
  readonly toleranceSeconds: number;
  readonly referenceHz: number;
  /** Choruses played; null where nothing goes round. */
  readonly choruses: number | null;
}

/** @param strong one flag a note: whether it stands on a strong beat */
export function rotatedShares(
  notes: readonly GradedNote[],
  strong: readonly boolean[],
  timeline: Timeline,
  rules: RotationRules,
): Readonly<Record<RotatedKind, Readonly<Record<ToneSet, AskedShare>>>> {
  const masks = maskReader();
  const figures = figureOfBars(notes, timeline, rules.toleranceSeconds);
  const countOver = (chart: Timeline): Readonly<Record<RotatedKind, readonly Counted[]>> => {
    const all = notes.map(({ heard, pitchClass }, i) => {
      const { chord } = chordOfNote(
        heard,
        chart,
        rules.anticipation,
        rules.referenceHz,
        rules.toleranceSeconds,
      );
      return { pitchClass, chord, weight: 1, figure: figures[i]! };
    });
    const parts = splitAtChanges(notes, chart);
    return {
      allNotes: all.filter(hasChord),
      strongBeats: all.filter((_, i) => strong[i]).filter(hasChord),
      byLength: parts.map(({ note, seconds, ...part }) => ({
        ...part,
        weight: seconds,
        figure: figures[note]!,
      })),
    };
  };
  const turned = Array.from({ length: timeline.bars }, (_, shift) =>
    countOver(shift === 0 ? timeline : rotateTimeline(timeline, shift)),
  );
  // The chart that was played over holds what stands before its first downbeat too; the turned ones do not.
  const asPlayed = countOver(timeline);
  const figureCount = 1 + Math.max(-1, ...figures);
  const share = (kind: RotatedKind) =>
    eachSet((set) =>
      askRotated(
        tallies(asPlayed[kind], set, masks, figureCount),
        turned.map((counted) => tallies(counted[kind], set, masks, figureCount)),
        effectiveCount(asPlayed[kind].filter(({ chord }) => masks(chord)[set] !== 0).map((e) => e.weight)),
        SHARES_TO_REACH[kind][set],
        rules.choruses,
      ),
    );
  return { allNotes: share('allNotes'), strongBeats: share('strongBeats'), byLength: share('byLength') };
}

const hasChord = <T extends { readonly chord: Chord | null }>(
  item: T,
): item is T & { readonly chord: Chord } => item.chord !== null;

/** Hits and weight of each figure. */
interface Tally {
  readonly hits: Float64Array;
  readonly of: Float64Array;
}

function tallies(
  events: readonly Counted[],
  set: ToneSet,
  masks: (chord: Chord) => ChordMasks,
  figureCount: number,
): Tally {
  const hits = new Float64Array(figureCount);
  const of = new Float64Array(figureCount);
  for (const { pitchClass, chord, weight, figure } of events) {
    const mask = masks(chord)[set];
    if (mask === 0) continue;
    of[figure] = of[figure]! + weight;
    if (holds(mask, pitchClass)) hits[figure] = hits[figure]! + weight;
  }
  return { hits, of };
}

const sumOf = (values: Float64Array): number => values.reduce((sum, value) => sum + value, 0);

/**
 * @param worth how many equal events the weights are worth
 */
function askRotated(
  played: Tally,
  turned: readonly Tally[],
  worth: number,
  shareToReach: number,
  choruses: number | null,
): AskedShare {
  const of = sumOf(played.of);
  const heard = turned.filter((turn) => sumOf(turn.of) > 0);
  if (of === 0 || heard.length === 0) return NOTHING_ASKED;
  const hits = sumOf(played.hits);
  const share = Math.min(1, hits / of);
  const chance = Math.min(
    1,
    heard.reduce((sum, turn) => sum + sumOf(turn.hits) / sumOf(turn.of), 0) / heard.length,
  );
  const excess = (turn: Tally) => turn.hits.map((hit, figure) => hit - chance * turn.of[figure]!);
  const sum = sumOfTurns(heard.map(excess), excess(played));
  const interval = wilsonInterval(share * worth, worth)!;
  const question: Question = {
    events: worth,
    chance,
    choruses,
    power: powerOfRotations({ of, worth, chance, variance: sum.variance }, shareToReach),
  };
  return {
    question,
    lower: sum.lower,
    share: {
      hits,
      of,
      share,
      low: interval.low,
      high: interval.high,
      chance,
      expected: chance * of,
      tail: sum.upper,
      fairTail: sum.upper,
      fairExpected: chance * of,
      correctedTail: sum.upper,
      chanceBy: 'rotations',
      ...answer(question, sum.upper, sum.lower),
    },
  };
}
