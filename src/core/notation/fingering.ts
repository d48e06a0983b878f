/**
 * Where a line lies on a neck: string and fret of every note by least motion of the hand, found over the whole line at
 * once (dynamic programming). A hand in a position covers four frets, a finger each, and stretches by one more; the first
 * finger names the position (common practice of method books).
 */
import type { Instrument } from '../music/instruments.ts';
import { positionsOf, type NeckPosition } from '../music/where-it-lies.ts';

/** A note to be fingered. */
export interface FrettedNote {
  readonly onsetSeconds: number;
  /** Sounding whole MIDI number where it is fretted: a bend starts below what it reaches. */
  readonly midi: number;
  /** A second note that sounds with it, else null. */
  readonly second: number | null;
  /** Reached from the note before without a new attack: hammered, pulled or slid on the same string. */
  readonly legato: boolean;
}

/** The places of a note, and of its second note behind it; empty where the neck has none. */
export type Fingered = readonly NeckPosition[];

/** Costs in units of moving the hand by one fret; set so that scales lie as method books have them. */
const COSTS = {
  /** A shift at all, besides its length. */
  shift: 1,
  fret: 0.5,
  stretch: 0.8,
  /** An open string can't be bent or shaken, and rings on. */
  open: 0.6,
  /** Each string skipped. */
  skip: 0.1,
  /** A legato note on another string can't be. */
  legatoAcross: 3,
  /** Of equal ways the lower one. */
  height: 0.01,
} as const;
/** A shift in a pause of so many seconds costs half as much. */
const UNHURRIED_SECONDS = 0.6;
/** Frets under the fingers, without a stretch. */
const SPAN = 4;

interface Way {
  readonly places: Fingered;
  /** Fret of the first finger. */
  readonly hand: number;
  readonly cost: number;
  readonly before: Way | null;
}

/**
 * Fingers a line.
 * @throws RangeError for an instrument without a neck
 * @example fingerLine(oneOctaveFrom(48), guitar) // C major in second position: fifth string fret 3, 5; fourth 2, 3, 5; …
 */
export function fingerLine(notes: readonly FrettedNote[], instrument: Instrument): readonly Fingered[] {
  const { neck } = instrument;
  if (!neck) throw new RangeError(`${instrument.name} has no strings and frets`);
  const hands = Array.from({ length: neck.frets - neck.capo }, (_, i) => neck.capo + 1 + i);
  let ways: readonly Way[] = hands.map((hand) => ({
    places: [],
    hand,
    cost: COSTS.height * hand,
    before: null,
  }));
  notes.forEach((note, i) => {
    const gap = i === 0 ? Infinity : note.onsetSeconds - notes[i - 1]!.onsetSeconds;
    const places = placesOf(note, instrument);
    ways = (places.length === 0 ? [[]] : places).flatMap((at) =>
      hands.flatMap((hand) => {
        const reach = reachCost(at, hand, neck.capo);
        if (reach === null) return [];
        const best = cheapest(ways, (way) => way.cost + moveCost(way, at, hand, gap, note.legato));
        return [{ places: at, hand, cost: best.cost + reach, before: best.way }];
      }),
    );
  });
  const fingered: Fingered[] = [];
  for (let way: Way | null = cheapest(ways, ({ cost }) => cost).way; way?.before; way = way.before)
    fingered.push(way.places);
  return fingered.reverse();
}

function cheapest(ways: readonly Way[], costOf: (way: Way) => number): { way: Way; cost: number } {
  return ways.reduce<{ way: Way; cost: number }>(
    (best, way) => {
      const cost = costOf(way);
      return cost < best.cost - 1e-9 ? { way, cost } : best;
    },
    { way: ways[0]!, cost: costOf(ways[0]!) },
  );
}

/** Every place of a note; of two notes every pair on two strings, or the first alone where the hand can't hold both. */
function placesOf({ midi, second }: FrettedNote, instrument: Instrument): readonly Fingered[] {
  const first = positionsOf(midi, instrument);
  const pairs =
    second === null
      ? []
      : first.flatMap((one) =>
          positionsOf(second, instrument)
            .filter(({ string, fret }) => string !== one.string && Math.abs(fret - one.fret) < SPAN)
            .map((other) => [one, other]),
        );
  return pairs.length > 0 ? pairs : first.map((one) => [one]);
}

/** What it costs to hold places with the first finger at a fret; null where it can't be done. */
function reachCost(places: Fingered, hand: number, capo: number): number | null {
  let cost = COSTS.height * hand;
  for (const { fret } of places) {
    if (fret === capo) cost += COSTS.open;
    else if (fret === hand - 1 || fret === hand + SPAN) cost += COSTS.stretch;
    else if (fret < hand || fret > hand + SPAN) return null;
  }
  return cost;
}

function moveCost(from: Way, to: Fingered, hand: number, gapSeconds: number, legato: boolean): number {
  const frets = Math.abs(hand - from.hand);
  const hurry = 1 / (1 + gapSeconds / UNHURRIED_SECONDS);
  const shift = frets === 0 || from.before === null ? 0 : (COSTS.shift + COSTS.fret * frets) * hurry * 2;
  const string = from.places[0]?.string;
  const strings = string === undefined || to.length === 0 ? 0 : Math.abs(string - to[0]!.string);
  return (
    shift +
    COSTS.skip * Math.max(0, strings - 1) +
    (legato && strings > 0 && gapSeconds < UNHURRIED_SECONDS ? COSTS.legatoAcross : 0)
  );
}
