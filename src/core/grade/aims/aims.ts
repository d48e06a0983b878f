/**
 * The ladder of aims, lowest rung first: the order in which players learn to follow the chords of a blues.
 * *Common practice.* Their names and tasks stand in the catalogue of words, by their ids. Shares to reach are the
 * house's own. Every rung must beat luck, and the events themselves say whether they do: five are enough where they are
 * clear (see chance/verdict.ts).
 */
import type { Aim } from './aim.ts';

export const AIM_LADDER: readonly Aim[] = [
  {
    id: 'third-over-one',
    events: 'bars',
    over: ['I'],
    test: 'has one of',
    tones: ['third'],
    shareToReach: 0.5,
    leastEvents: 5,
    againstLuck: true,
  },
  {
    id: 'flat-third-into-third',
    events: 'flat thirds',
    test: 'moves to',
    tones: ['third'],
    shareToReach: 0.5,
    leastEvents: 5,
    againstLuck: true,
  },
  {
    id: 'add-the-sixth',
    events: 'bars',
    over: ['I'],
    test: 'has one of',
    tones: ['6'],
    shareToReach: 0.33,
    leastEvents: 5,
    againstLuck: true,
  },
  {
    id: 'add-the-ninth',
    events: 'bars',
    over: ['I'],
    test: 'has one of',
    tones: ['9'],
    shareToReach: 0.33,
    leastEvents: 5,
    againstLuck: true,
  },
  {
    id: 'third-sixth-ninth',
    events: 'choruses',
    over: ['I'],
    test: 'has all of',
    tones: ['3', '6', '9'],
    shareToReach: 0.5,
    leastEvents: 2,
    againstLuck: true,
  },
  {
    id: 'third-on-arrival',
    events: 'landings',
    test: 'is one of',
    tones: ['third'],
    shareToReach: 0.5,
    leastEvents: 5,
    againstLuck: true,
  },
  {
    id: 'guide-tones-by-step',
    events: 'changes',
    test: 'steps between',
    tones: ['guide tone'],
    shareToReach: 0.33,
    leastEvents: 5,
    againstLuck: true,
  },
  {
    id: 'phrases-end-on-chord-tones',
    events: 'phrase ends',
    test: 'is one of',
    tones: ['chord tone'],
    shareToReach: 0.75,
    leastEvents: 5,
    againstLuck: true,
  },
  {
    id: 'off-the-third-over-four',
    events: 'notes',
    over: ['IV7'],
    test: 'is none of',
    tones: ['key 3'],
    shareToReach: 0.95,
    leastEvents: 5,
    againstLuck: true,
  },
];

/**
 * Aims that are no rung of the ladder, and can be chosen all the same. Their shares to reach are those that the page
 * asks of landings (chance/page.ts).
 */
export const PLAIN_AIMS: readonly Aim[] = [
  {
    id: 'guide-tones',
    events: 'landings',
    test: 'is one of',
    tones: ['guide tone'],
    shareToReach: 0.6,
    leastEvents: 5,
    againstLuck: true,
  },
  {
    id: 'chord-tones',
    events: 'landings',
    test: 'is one of',
    tones: ['chord tone'],
    shareToReach: 0.9,
    leastEvents: 5,
    againstLuck: true,
  },
];

/**
 * The easier aims that a harder one shows by itself: who lands on the third of every chord as it arrives has let the
 * third be heard over the I.
 */
export const COVERS: ReadonlyMap<string, readonly string[]> = new Map(
  Object.entries({
    'third-sixth-ninth': ['third-over-one', 'add-the-sixth', 'add-the-ninth'],
    'third-on-arrival': ['third-over-one'],
  }),
);
