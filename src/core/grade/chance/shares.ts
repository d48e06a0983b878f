/** Shares of thirds, guide tones and chord tones over landings and phrase ends, with their doubt and their chance. */
import { momentsOf, tailFrom, tailTo, wilsonInterval } from '../../base/statistics.ts';
import type { Share } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { maskReader, type ToneSet } from '../assign/tone-sets.ts';
import { pitchClassShares } from './chance.ts';
import { luckOf, type LuckEvent } from './draws.ts';
import type { ToneEvent, Wanted } from './tone-events.ts';
import { powerOfEvents } from './power.ts';
import { answer, type Question } from './verdict.ts';

/** The share that a player who follows the chords is taken to reach, for each set of tones. */
export type SharesToReach = Readonly<Record<ToneSet, number>>;

/**
 * One share, its question as asked alone, and what is needed to ask it again beside others.
 * The lower tail is no part of the report.
 */
export interface AskedShare {
  readonly share: Share;
  readonly question: Question | null;
  readonly lower: number | null;
}

/** Shares over events whose chance comes from the player's own notes. */
export function eventShares(
  events: readonly ToneEvent[],
  notes: readonly GradedNote[],
  toReach: SharesToReach,
  choruses: number | null,
): Readonly<Record<ToneSet, AskedShare>> {
  const own = pitchClassShares(notes);
  const masks = maskReader();
  return eachSet((set) => {
    const wanted: Wanted = (chord) => masks(chord)[set];
    // A chord that has no such tone (a sus chord has no third) stands outside the share.
    const asked = events.filter(({ chord }) => wanted(chord) !== 0);
    return askShare(
      asked.map((event) => event.eventFor(wanted)),
      own,
      toReach[set],
      choruses,
    );
  });
}

/** One share over events that luck draws for, its question asked alone. */
export function askShare(
  events: readonly LuckEvent[],
  own: readonly number[],
  shareToReach: number,
  choruses: number | null,
): AskedShare {
  const of = events.length;
  if (of === 0) return NOTHING_ASKED;
  const hits = events.filter((event) => event.hit).length;
  const luck = luckOf(events, own);
  const { mean } = momentsOf(luck.total);
  const question: Question = {
    events: of,
    chance: Math.min(1, mean / of),
    choruses,
    power: powerOfEvents(of, luck, mean, shareToReach),
  };
  const upper = tailFrom(luck.total, hits);
  const lower = tailTo(luck.total, hits);
  const interval = wilsonInterval(hits, of)!;
  return {
    question,
    lower,
    share: {
      hits,
      of,
      share: hits / of,
      low: interval.low,
      high: interval.high,
      chance: question.chance,
      expected: mean,
      tail: upper,
      fairTail: upper,
      fairExpected: mean,
      correctedTail: upper,
      chanceBy: 'own notes',
      ...answer(question, upper, lower),
    },
  };
}

/** One value for each set of tones. */
export const eachSet = <T>(value: (set: ToneSet) => T): Readonly<Record<ToneSet, T>> => ({
  thirds: value('thirds'),
  guideTones: value('guideTones'),
  chordTones: value('chordTones'),
});

/** No event at all: nothing is asked. */
export const NOTHING: Share = {
  hits: 0,
  of: 0,
  share: null,
  low: null,
  high: null,
  chance: null,
  expected: null,
  tail: null,
  fairTail: null,
  fairExpected: null,
  correctedTail: null,
  chanceBy: null,
  verdict: 'too short to tell',
  moreChoruses: null,
};

export const NOTHING_ASKED: AskedShare = { share: NOTHING, question: null, lower: null };
