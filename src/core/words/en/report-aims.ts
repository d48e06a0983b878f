/** How a take did by an aim. */
import { joinWith } from '../entries/entry.ts';
import { percent } from './grammar.ts';
import { capital, moreTells, luck } from './phrases.ts';

interface AimEvents {
  readonly events:
    'landings' | 'phrase ends' | 'strong beats' | 'notes' | 'flat thirds' | 'changes' | 'bars' | 'choruses';
  /** Degrees of the key; empty where every chord counts. */
  readonly over: readonly string[];
}

const AIM_EVENTS: Readonly<Record<AimEvents['events'], readonly [one: string, several: string]>> = {
  landings: ['landing', 'landings'],
  'phrase ends': ['phrase end', 'phrase ends'],
  'strong beats': ['strong beat', 'strong beats'],
  notes: ['note', 'notes'],
  'flat thirds': ['flat third', 'flat thirds'],
  changes: ['change', 'changes'],
  bars: ['bar', 'bars'],
  choruses: ['chorus', 'choruses'],
};

const aimEvents = (events: AimEvents['events'], count: number, over: readonly string[]): string =>
  `${AIM_EVENTS[events][count === 1 ? 0 : 1]}${over.length === 0 ? '' : ` over the ${joinWith(over, 'and')}`}`;

export const reportAims = {
  verdicts: {
    reached: 'reached',
    'not yet': 'not yet',
    'too short to tell': 'too short to tell',
    'not in this chart': 'not in this chart',
  },
  /** What a take answers to the aim in hand: a headline. The numbers are in `evidence`. */
  answer: {
    reached: ({ hits, of, events, over }: AimEvents & { hits: number; of: number }) =>
      `You did it: ${hits} of ${of} ${aimEvents(events, of, over)}.`,
    share: ({ hits, of, needed, events, over }: AimEvents & { hits: number; of: number; needed: number }) =>
      `Not yet: ${hits} of ${of} ${aimEvents(events, of, over)}; ${needed} would be enough.`,
    luck: ({ hits, of, events, over }: AimEvents & { hits: number; of: number }) =>
      `${hits} of ${of} ${aimEvents(events, of, over)}, but luck may give as many.`,
    tooShort: ({
      hits,
      of,
      more,
      events,
      over,
    }: AimEvents & {
      hits: number;
      of: number;
      /** Choruses that would tell. */
      more: number | 'many';
    }) => `${hits} of ${of} ${aimEvents(events, of, over)} so far. ${capital(moreTells(more))}.`,
  },
  /** How a take did by an aim. */
  evidence: {
    notInChart: ({ over }: { over: readonly string[] }) =>
      over.length === 0 ? 'The chart has no such chord.' : `The chart has no ${joinWith(over, 'or')}.`,
    none: ({ events, over }: AimEvents) => `No ${aimEvents(events, 0, over)} in this take.`,
    few: ({ hits, of, least, events, over }: AimEvents & { hits: number; of: number; least: number }) =>
      `${hits} of ${of} ${aimEvents(events, of, over)}; it takes at least ${least} to tell.`,
    /** Nothing is shown by a tone to avoid that the player never plays anyway. */
    notUsed: ({ hits, of, events, over }: AimEvents & { hits: number; of: number }) =>
      `${hits} of ${of} ${aimEvents(events, of, over)}, but you hardly play that tone elsewhere either: nothing shows yet that you avoid it.`,
    counted: ({
      hits,
      of,
      toReach,
      expected,
      onlyLuck,
      moreChoruses,
      events,
      over,
    }: AimEvents & {
      hits: number;
      of: number;
      toReach: number;
      /** What luck gives; undefined where the aim does not ask. */
      expected?: number | null | undefined;
      /** Whether the share is reached, but luck may reach it too. */
      onlyLuck: boolean;
      /** How many choruses more would tell, or null. */
      moreChoruses: number | 'many' | null;
    }) =>
      `${hits} of ${of} ${aimEvents(events, of, over)}; the aim is ${percent(toReach)}` +
      `${expected === undefined ? '' : `, ${luck(expected)}`}${onlyLuck ? ': enough, but no more than luck may give' : ''}` +
      `${moreChoruses === null ? '' : `; ${moreTells(moreChoruses)}`}.`,
  },
};
