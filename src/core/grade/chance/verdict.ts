/** What the numbers allow to be said: more than luck, no more than luck, or too short to tell. By evidence alone. */
import type { Verdict } from '../../take/schema.ts';

/** As many hits as this by luck in one take of twenty: rarer is called more than luck. */
export const LUCK = 0.05;

/** So few hits by luck in one take of two hundred: under chance is a rare thing to say, and no one trains for it. */
const BAD_LUCK = 0.005;

/** Fewer events than this say nothing, however they fall. */
export const LEAST_EVENTS = 5;

/** How surely the events must show a player who reaches the aim's share, before its absence says anything. */
const POWER = 0.8;

/** Luck alone gives nearly all: there is nothing that a longer take could tell. */
const ALL_BY_LUCK = 0.95;

/** Where luck alone comes near the share to reach, a player who follows the chords is taken to get this much of the rest. */
const OF_WHAT_LUCK_LEAVES = 0.25;

/** Sums of the same shares in another order (in another key) differ by less than this; it must not change an answer. */
const ROUNDING = 1e-9;

/** More choruses than this are no advice. */
const MOST_CHORUSES = 24;

/** What can be answered of one share, beside its p values. */
export interface Question {
  /** How many events, or, of unlike weights, how many equal ones they are worth. */
  readonly events: number;
  /** The share that luck gives, 0 to 1. */
  readonly chance: number;
  /** The chance that events like these, so many times over, would have shown a player who reaches the share. */
  power(times: number): number;
  /** Choruses that the events come from; null where nothing goes round. */
  readonly choruses: number | null;
}

/** An answer, and how many choruses more would give one. */
export interface Answer {
  readonly verdict: Verdict;
  /** null where the verdict is clear, where nothing goes round, and where two dozen would not do. */
  readonly moreChoruses: number | null;
}

/**
 * @param upper chance of as many hits or more, corrected for the number of questions where there are several
 * @param lower chance of as few hits or fewer, likewise
 */
export function answer(question: Question, upper: number, lower: number): Answer {
  const { events, chance, choruses } = question;
  const enough = events >= LEAST_EVENTS;
  if (enough && upper < LUCK - ROUNDING) return { verdict: 'above chance', moreChoruses: null };
  if (enough && lower < BAD_LUCK - ROUNDING) return { verdict: 'below chance', moreChoruses: null };
  const shows = (times: number) =>
    events * times >= LEAST_EVENTS - ROUNDING && question.power(times) >= POWER - ROUNDING;
  if ((enough && chance >= ALL_BY_LUCK - ROUNDING) || shows(1))
    return { verdict: 'at chance', moreChoruses: null };
  if (choruses === null || !(choruses > 0)) return { verdict: 'too short to tell', moreChoruses: null };
  for (let more = 1; more <= MOST_CHORUSES; more++) {
    if (shows((choruses + more) / choruses)) return { verdict: 'too short to tell', moreChoruses: more };
  }
  return { verdict: 'too short to tell', moreChoruses: null };
}

/** The share that a player who follows the chords is taken to reach. */
export const skilledShare = (shareToReach: number, chance: number): number =>
  Math.min(1, Math.max(shareToReach, chance + OF_WHAT_LUCK_LEAVES * (1 - chance)));
