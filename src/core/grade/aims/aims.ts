/**
 * The ladder of aims, lowest rung first: the order in which players learn to follow the chords of a blues.
 * *Common practice.* Their names and tasks stand in the catalogue of words, by their ids.
 * Shares and numbers of events are the house's own: an aim that must beat luck needs enough
 * events for a learner to be told from it (fifteen; see shares.ts), one that only asks for a habit needs eight.
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
    leastEvents: 8,
    againstLuck: true,
  },
  {
    id: 'flat-third-into-third',
    events: 'flat thirds',
    test: 'moves to',
    tones: ['third'],
    shareToReach: 0.5,
    leastEvents: 8,
    againstLuck: true,
  },
  {
    id: 'add-the-sixth',
    events: 'bars',
    over: ['I'],
    test: 'has one of',
    tones: ['6'],
    shareToReach: 0.33,
    leastEvents: 8,
    againstLuck: false,
  },
  {
    id: 'add-the-ninth',
    events: 'bars',
    over: ['I'],
    test: 'has one of',
    tones: ['9'],
    shareToReach: 0.33,
    leastEvents: 8,
    againstLuck: false,
  },
  {
    id: 'third-sixth-ninth',
    events: 'choruses',
    over: ['I'],
    test: 'has all of',
    tones: ['3', '6', '9'],
    shareToReach: 0.5,
    leastEvents: 2,
    againstLuck: false,
  },
  {
    id: 'third-on-arrival',
    events: 'landings',
    test: 'is one of',
    tones: ['third'],
    shareToReach: 0.5,
    leastEvents: 15,
    againstLuck: true,
  },
  {
    id: 'guide-tones-by-step',
    events: 'changes',
    test: 'steps between',
    tones: ['guide tone'],
    shareToReach: 0.33,
    leastEvents: 15,
    againstLuck: true,
  },
  {
    id: 'phrases-end-on-chord-tones',
    events: 'phrase ends',
    test: 'is one of',
    tones: ['chord tone'],
    shareToReach: 0.75,
    leastEvents: 15,
    againstLuck: true,
  },
  {
    id: 'off-the-third-over-four',
    events: 'notes',
    over: ['IV'],
    test: 'is none of',
    tones: ['key 3'],
    shareToReach: 0.95,
    leastEvents: 15,
    againstLuck: false,
  },
];
