/**
 * Shares over all notes, over those on strong beats, and by length: their chance is the mean over the rotations of
 * the chart by whole bars (of a long chart, an even choice of them). Bars with the same notes are one draw: each different
 * bar is rotated independently, and all its copies with it, so that a riff that comes back is no more evidence than the
 * riff played once.
 */
import { chordOfNote, type Anticipation } from '../assign/attribute.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { Chord } from '../../music/chord.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { splitAtChanges } from '../assign/length-parts.ts';
import { differentBars } from './figures.ts';
import { holds, maskReader, toneSets, type ToneSet } from '../assign/tone-sets.ts';
import { effectiveCount, wilsonInterval } from '../../base/statistics.ts';
import { eachSet, NOTHING_ASKED, type AskedShare } from './shares.ts';
import { SHARES_TO_REACH } from './page.ts';
import { NO_CHORD, rotatedChart } from './rotated-chart.ts';
import { emptyTally, sumOf, RotatedTallies, type Tally } from './rotated-tallies.ts';
import { rotationsAsked } from './rotations-asked.ts';
import { answer, type Question } from './verdict.ts';
import { powerOfRotations } from './power.ts';

export type RotatedKind = 'allNotes' | 'strongBeats' | 'byLength';

/** How the notes were graded, so that they can be graded again over a rotated chart. */
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
  const barOf = differentBars(notes, timeline, rules.toleranceSeconds);
  const barCount = barOf.reduce((most, bar) => Math.max(most, bar + 1), 0);

  // The chart as played has chords before its first downbeat too; the rotated ones have none there.
  const played = tallies(barCount);
  const weights = eachKind((): Record<ToneSet, number[]> => ({ thirds: [], guideTones: [], chordTones: [] }));
  const countPlayed = (kind: RotatedKind, note: number, chord: Chord, weight: number) => {
    for (const set of toneSets) {
      const mask = masks(chord)[set];
      if (mask === 0) continue;
      weights[kind][set].push(weight);
      count(played[kind][set], barOf[note]!, holds(mask, notes[note]!.pitchClass), weight);
    }
  };
  notes.forEach(({ heard }, note) => {
    const { chord } = chordOfNote(
      heard,
      timeline,
      rules.anticipation,
      rules.referenceHz,
      rules.toleranceSeconds,
    );
    if (chord === null) return;
    countPlayed('allNotes', note, chord, 1);
    if (strong[note]) countPlayed('strongBeats', note, chord, 1);
  });
  for (const { note, chord, seconds } of splitAtChanges(notes, timeline))
    countPlayed('byLength', note, chord, seconds);

  const chart = rotatedChart(notes, timeline, rules);
  const chordMasks = chart.chords.map(masks);
  const rotated = eachKind(() => eachSet(() => new RotatedTallies(barCount)));
  const rotation = tallies(barCount);
  const countRotated = (kind: RotatedKind, note: number, chord: number, weight: number) => {
    const pitchClass = notes[note]!.pitchClass;
    for (const set of toneSets) {
      const mask = chordMasks[chord]![set];
      if (mask !== 0) count(rotation[kind][set], barOf[note]!, holds(mask, pitchClass), weight);
    }
  };
  for (const bars of rotationsAsked(timeline.bars)) {
    if (bars > 0) {
      clear(rotation);
      chart.chordsOfNotes(bars).forEach((chord, note) => {
        if (chord === NO_CHORD) return;
        countRotated('allNotes', note, chord, 1);
        if (strong[note]) countRotated('strongBeats', note, chord, 1);
      });
      chart.eachPart(bars, (note, chord, seconds) => {
        countRotated('byLength', note, chord, seconds);
      });
    }
    for (const kind of rotatedKinds)
      for (const set of toneSets) rotated[kind][set].add((bars === 0 ? played : rotation)[kind][set]);
  }

  return eachKind((kind) =>
    eachSet((set) =>
      askRotated(
        played[kind][set],
        rotated[kind][set],
        effectiveCount(weights[kind][set]),
        SHARES_TO_REACH[kind][set],
        rules.choruses,
      ),
    ),
  );
}

const rotatedKinds: readonly RotatedKind[] = ['allNotes', 'strongBeats', 'byLength'];

/** One value for each kind of share. */
const eachKind = <T>(value: (kind: RotatedKind) => T): Readonly<Record<RotatedKind, T>> => ({
  allNotes: value('allNotes'),
  strongBeats: value('strongBeats'),
  byLength: value('byLength'),
});

type Tallies = Readonly<Record<RotatedKind, Readonly<Record<ToneSet, Tally>>>>;

const tallies = (barCount: number): Tallies => eachKind(() => eachSet(() => emptyTally(barCount)));

function clear(all: Tallies): void {
  for (const kind of rotatedKinds)
    for (const set of toneSets) {
      all[kind][set].hits.fill(0);
      all[kind][set].of.fill(0);
    }
}

function count({ hits, of }: Tally, bar: number, isHit: boolean, weight: number): void {
  of[bar] = of[bar]! + weight;
  if (isHit) hits[bar] = hits[bar]! + weight;
}

/**
 * @param worth how many equal events the weights are worth
 */
function askRotated(
  played: Tally,
  rotated: RotatedTallies,
  worth: number,
  shareToReach: number,
  choruses: number | null,
): AskedShare {
  const of = sumOf(played.of);
  const chance = rotated.chance();
  if (of === 0 || chance === null) return NOTHING_ASKED;
  const hits = sumOf(played.hits);
  const share = Math.min(1, hits / of);
  const sum = rotated.sum(played, chance);
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
