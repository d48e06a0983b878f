/** Shares of thirds, guide tones and chord tones, each with its doubt and its chance level. */
import type { Chord } from '../../music/chord.ts';
import type { Share, Shares, Verdict } from '../../take/schema.ts';
import { eventChance, pitchClassShares } from './chance.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import type { Wanted } from './luck.ts';
import { lowerTail, upperTail, wilsonInterval } from '../../base/statistics.ts';
import { holds, maskReader, shareInside, type ToneSet } from '../assign/tone-sets.ts';

/**
 * Fewer events than this say nothing, either way: a learner who lands on thirds three times in ten against a chance
 * of one in twelve needs about fifteen landings to be told from luck (80 % power, one-sided 5 %).
 */
export const LEAST_EVENTS = 15;

/** As many hits as this by luck in one take of twenty: rarer is called more than luck. */
export const LUCK = 0.05;

/** So few hits by luck in one take of two hundred: under chance is a rare thing to say, and no one trains for it. */
const BAD_LUCK = 0.005;

/** A pitch class against a chord, one event to be counted; and how likely luck, fairly reckoned, is to count. */
export interface ToneEvent {
  readonly pitchClass: number;
  readonly chord: Chord;
  luck(wanted: Wanted, own: readonly number[]): number;
}

/** Shares over events whose chance comes from the player's own notes: landings and phrase ends. */
export function eventShares(events: readonly ToneEvent[], notes: readonly GradedNote[]): Shares {
  const own = pitchClassShares(notes);
  const masks = maskReader();
  return eachSet((set) => {
    const wanted: Wanted = (chord) => masks(chord)[set];
    return eventShare(
      events.map((event) => ({
        hit: holds(wanted(event.chord), event.pitchClass),
        chance: shareInside(own, wanted(event.chord)),
        fairChance: event.luck(wanted, own),
      })),
    );
  });
}

/** Something that counts or not, and how likely luck was to make it count: plainly, and fairly reckoned (luck.ts). */
export interface LuckEvent {
  readonly hit: boolean;
  readonly chance: number;
  readonly fairChance: number;
}

/** One share over events of known chances. Fewer than `least` are too few for a verdict. */
export function eventShare(events: readonly LuckEvent[], least = LEAST_EVENTS): Share {
  const of = events.length;
  const hits = events.filter((event) => event.hit).length;
  const interval = wilsonInterval(hits, of);
  const luck = eventChance(
    events.map((event) => event.chance),
    hits,
  );
  const fairChances = events.map((event) => event.fairChance);
  const fairTail = upperTail(fairChances, hits);
  return {
    hits,
    of,
    share: of === 0 ? null : hits / of,
    low: interval?.low ?? null,
    high: interval?.high ?? null,
    chance: luck?.level ?? null,
    expected: luck?.expected ?? null,
    tail: luck?.tail ?? null,
    fairTail: luck === null ? null : fairTail,
    fairExpected: luck === null ? null : fairChances.reduce((sum, chance) => sum + chance, 0),
    chanceBy: luck === null ? null : 'own notes',
    verdict: of < least ? 'too short to tell' : verdictByTails(fairTail, lowerTail(fairChances, hits)),
  };
}

function verdictByTails(upper: number, lower: number): Verdict {
  if (upper < LUCK) return 'above chance';
  return lower < BAD_LUCK ? 'below chance' : 'at chance';
}

/** One share for each set of tones. */
export const eachSet = (share: (set: ToneSet) => Share): Shares => ({
  thirds: share('thirds'),
  guideTones: share('guideTones'),
  chordTones: share('chordTones'),
});
