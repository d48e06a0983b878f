/**
 * A walking bass: a note a beat, roots where chords arrive, and a half or whole step into every change.
 * The line is the cheapest path through the keys of the bass (Viterbi), with seeded random parts in the costs, so that
 * choruses differ and the rules hold in all of them. Common practice.
 */
import { keyAt } from '../chart/keys-through.ts';
import type { BandForm } from './form.ts';
import type { Chance } from '../base/random.ts';
import { bassPitchClass, inKey } from './voicing.ts';

/** E1 to G3: the double bass up to where it would meet the chords. */
export const bassRange = { lowest: 28, highest: 50 } as const;
const restingKey = 37;

const never = 1e6;
const cost = {
  /** A note on a strong beat that is no chord tone. */
  weakToneOnStrongBeat: 3,
  scaleTone: 0.8,
  chromaticTone: 2.2,
  repeated: 3,
  /** By size of the move in semitones; a bass walks by step and leaps by consonances. */
  move: [0, 0, 0, 0.6, 0.7, 0.9, 4, 1, 3.5, 3, 4.5, 6, 2.2],
  widerThanOctave: 8,
  drift: 0.06,
  taste: 1.6,
} as const;

interface Stop {
  /** What a key costs here; `never` forbids it. */
  readonly keyCost: (midi: number) => number;
  /** The next stop is a change of chord, to be reached by step. */
  readonly approaches: boolean;
}

/** One MIDI key a beat of the chorus; null over N.C. */
export function walkingLine(form: BandForm, chance: Chance): readonly (number | null)[] {
  const stops = stopsOf(form);
  const keys = Array.from(
    { length: bassRange.highest - bassRange.lowest + 1 },
    (_, i) => bassRange.lowest + i,
  );
  const taste = () => keys.map(() => chance.next() * cost.taste);
  // The first root is the same in every chorus, so the last note of one can step into the next.
  const first = stops[0] ? keys.filter((key) => stops[0]!.keyCost(key) < never) : [];
  const home = first.toSorted((a, b) => Math.abs(a - restingKey) - Math.abs(b - restingKey))[0];

  let totals = keys.map((key): number => (home === undefined || key === home ? 0 : never));
  const back: number[][] = [];
  for (let beat = 1; beat <= stops.length; beat++) {
    const before = stops[beat - 1] ?? null;
    const now = beat < stops.length ? (stops[beat] ?? null) : null;
    const preferences = taste();
    const from: number[] = [];
    totals = keys.map((key, i) => {
      const seam = beat === stops.length && home !== undefined && key !== home ? never : 0;
      const own = (now?.keyCost(key) ?? 0) + seam + preferences[i]! + cost.drift * Math.abs(key - restingKey);
      let best = Infinity;
      let bestFrom = i;
      keys.forEach((previous, j) => {
        const sum = totals[j]! + (before ? moveCost(previous, key, before.approaches) : 0);
        if (sum < best) [best, bestFrom] = [sum, j];
      });
      from.push(bestFrom);
      return best + own;
    });
    back.push(from);
  }
  let at = totals.indexOf(Math.min(...totals));
  const line: (number | null)[] = [];
  for (let beat = stops.length; beat > 0; beat--) {
    at = back[beat - 1]![at]!;
    line.unshift(stops[beat - 1] ? keys[at]! : null);
  }
  return line;
}

function moveCost(from: number, to: number, approaches: boolean): number {
  const size = Math.abs(to - from);
  if (approaches) return size === 1 || size === 2 ? 0 : never;
  return size === 0 ? cost.repeated : (cost.move[size] ?? cost.widerThanOctave);
}

function stopsOf(form: BandForm): readonly (Stop | null)[] {
  const beats = Math.round(form.bars * form.beatsPerBar);
  return Array.from({ length: beats }, (_, beat) => {
    const index = form.spans.findIndex((span) => span.startBeat <= beat && beat < span.endBeat);
    const span = form.spans[index];
    if (!span?.chord) return null;
    const chord = span.chord;
    const key = keyAt(form, span.startBeat);
    const before = form.spans[index - 1] ?? form.spans.at(-1);
    const after = form.spans[index + 1] ?? form.spans[0];
    const arrives = beat - span.startBeat < 1;
    const repeats = index > 0 && before?.chord?.symbol === chord.symbol;
    const leaves = beat + 1 >= span.endBeat;
    const changes = after?.chord ? after.chord.symbol !== chord.symbol : false;
    // A span of one beat is too short for a step: it has its root only.
    const approaches = leaves && changes && !(arrives && span.endBeat - span.startBeat <= 1);
    const tones = new Set(chord.tones.map((tone) => tone.pitchClass));
    const root = bassPitchClass(chord);
    const strong = (beat - span.bar * form.beatsPerBar) % 2 === 0;
    return {
      approaches,
      keyCost: (midi: number) => {
        const pitchClass = midi % 12;
        if (arrives && !repeats) return pitchClass === root ? 0 : never;
        if (tones.has(pitchClass)) return pitchClass === root && !arrives ? 0.5 : 0;
        if (approaches) return inKey(pitchClass, key) ? 0.3 : 0.5;
        const weak = strong ? cost.weakToneOnStrongBeat : 0;
        return weak + (inKey(pitchClass, key) ? cost.scaleTone : cost.chromaticTone);
      },
    };
  });
}
