/** Shares of thirds, guide tones and chord tones, each with its doubt and its chance level. */
import type { Timeline } from '../chart/timeline.ts';
import { chordOfNote } from '../chart/attribute.ts';
import type { Chord } from '../music/chord.ts';
import type { Share, Shares, Verdict } from '../report/schema.ts';
import { eventChance, pitchClassShares } from './chance.ts';
import type { GradedNote } from './graded-note.ts';
import { splitAtChanges, type LengthPart } from './length-parts.ts';
import { rotateTimeline } from './rotate.ts';
import { effectiveCount, wilsonInterval } from './statistics.ts';
import { holds, maskReader, shareInside, toneSets, type ToneSet } from './tone-sets.ts';

/**
 * Fewer events than this say nothing, either way: a learner who lands on thirds three times in ten against a chance
 * of one in twelve needs about fifteen landings to be told from luck (80 % power, one-sided 5 %).
 */
export const LEAST_EVENTS = 15;

/** Luck that is rarer than this is called more than luck. */
export const LUCK = 0.05;

/** A pitch class against a chord: one event to be counted. */
export interface ToneEvent {
  readonly pitchClass: number;
  readonly chord: Chord;
}

/** Shares over events whose chance comes from the player's own notes: landings and phrase ends. */
export function eventShares(events: readonly ToneEvent[], notes: readonly GradedNote[]): Shares {
  const own = pitchClassShares(notes);
  const masks = maskReader();
  return eachSet((set) => {
    const hits = events.filter(({ pitchClass, chord }) => holds(masks(chord)[set], pitchClass)).length;
    return eventShare(
      hits,
      events.map(({ chord }) => shareInside(own, masks(chord)[set])),
    );
  });
}

/**
 * One share over events of known chances, with its exact tail.
 * @param chances one a event, 0 to 1
 * @param least fewer events than this are too few for a verdict
 */
export function eventShare(hits: number, chances: readonly number[], least = LEAST_EVENTS): Share {
  const of = chances.length;
  const interval = wilsonInterval(hits, of);
  const luck = eventChance(chances, hits);
  return {
    hits,
    of,
    share: of === 0 ? null : hits / of,
    low: interval?.low ?? null,
    high: interval?.high ?? null,
    chance: luck?.level ?? null,
    expected: luck?.expected ?? null,
    tail: luck?.tail ?? null,
    chanceBy: luck === null ? null : 'own notes',
    verdict:
      of < least || luck === null
        ? 'too short to tell'
        : verdictByTail(luck.tail, luck.level, interval!.high),
  };
}

/** More than luck when the tail says so; under it when even the top of the interval lies below the chance level. */
function verdictByTail(tail: number, chance: number, high: number): Verdict {
  if (tail < LUCK) return 'above chance';
  return high < chance ? 'below chance' : 'at chance';
}

/** All notes, those on strong beats, and lengths: their chance is the mean over all rotations of the chart. */
export function rotatedShares(
  notes: readonly GradedNote[],
  strong: readonly boolean[],
  timeline: Timeline,
  anticipationBeats: number,
  referenceHz: number,
): { readonly allNotes: Shares; readonly strongBeats: Shares; readonly byLength: Shares } {
  const masks = maskReader();
  const count = (at: Timeline): Tallies => {
    const chords = notes.map((note) => chordOfNote(note.heard, at, anticipationBeats, referenceHz).chord);
    return {
      allNotes: tallyNotes(notes, chords, masks),
      strongBeats: tallyNotes(
        notes.filter((_, i) => strong[i]),
        chords.filter((_, i) => strong[i]),
        masks,
      ),
      byLength: tallyLengths(splitAtChanges(notes, at), masks),
    };
  };
  const played = count(timeline);
  const rotations = Array.from({ length: timeline.bars }, (_, bars) => count(rotateTimeline(timeline, bars)));
  const lengths = splitAtChanges(notes, timeline).map((part) => part.seconds);
  const share = (kind: keyof Tallies, worth: number) =>
    rotatedShare(
      played[kind],
      rotations.map((tallies) => tallies[kind]),
      worth,
    );
  return {
    allNotes: share('allNotes', played.allNotes.of),
    strongBeats: share('strongBeats', played.strongBeats.of),
    byLength: share('byLength', effectiveCount(lengths)),
  };
}

type Tally = Readonly<Record<ToneSet | 'of', number>>;
interface Tallies {
  readonly allNotes: Tally;
  readonly strongBeats: Tally;
  readonly byLength: Tally;
}
type Masks = ReturnType<typeof maskReader>;

function tallyNotes(notes: readonly GradedNote[], chords: readonly (Chord | null)[], masks: Masks): Tally {
  return tally(
    notes.flatMap(({ pitchClass }, i) => {
      const chord = chords[i] ?? null;
      return chord === null ? [] : [{ pitchClass, chord, weight: 1 }];
    }),
    masks,
  );
}

const tallyLengths = (parts: readonly LengthPart[], masks: Masks): Tally =>
  tally(
    parts.map(({ pitchClass, chord, seconds }) => ({ pitchClass, chord, weight: seconds })),
    masks,
  );

function tally(events: readonly (ToneEvent & { readonly weight: number })[], masks: Masks): Tally {
  const sums = { of: 0, thirds: 0, guideTones: 0, chordTones: 0 };
  for (const { pitchClass, chord, weight } of events) {
    sums.of += weight;
    for (const set of toneSets) if (holds(masks(chord)[set], pitchClass)) sums[set] += weight;
  }
  return sums;
}

/** @param worth how many events of equal weight the whole is worth, for the interval (Kish) */
function rotatedShare(played: Tally, rotations: readonly Tally[], worth: number): Shares {
  const heard = rotations.filter((rotation) => rotation.of > 0);
  return eachSet((set) => {
    const { of } = played;
    const share = of === 0 ? null : Math.min(1, played[set] / of);
    const levels = heard.map((rotation) => rotation[set] / rotation.of);
    const chance =
      share === null || levels.length === 0
        ? null
        : levels.reduce((sum, level) => sum + level, 0) / levels.length;
    const interval = share === null ? null : wilsonInterval(share * worth, worth);
    return {
      hits: played[set],
      of,
      share,
      low: interval?.low ?? null,
      high: interval?.high ?? null,
      chance,
      expected: chance === null ? null : chance * of,
      tail: null,
      chanceBy: chance === null ? null : 'rotations',
      verdict:
        worth < LEAST_EVENTS || chance === null || interval === null
          ? 'too short to tell'
          : verdictByInterval(chance, interval.low, interval.high),
    };
  });
}

function verdictByInterval(chance: number, low: number, high: number): Verdict {
  if (chance < low) return 'above chance';
  return chance > high ? 'below chance' : 'at chance';
}

const eachSet = (share: (set: ToneSet) => Share): Shares => ({
  thirds: share('thirds'),
  guideTones: share('guideTones'),
  chordTones: share('chordTones'),
});
