/** Meter, first downbeat and length of the form, from how well each explains the chords that were heard. */
import { decodeChords, STATES, type DecodeOrder } from './decode.ts';
import { NO_CHORD } from './chord-types.ts';

export interface FoundForm {
  readonly beatsPerBar: number;
  /** Index of the beat that is the first of bar 1. */
  readonly downbeat: number;
  /** Bars of one chorus; of the whole recording where nothing comes back. */
  readonly bars: number;
  /** How often it goes round, the last time perhaps not to its end. */
  readonly choruses: number;
  /** Logarithms of one chorus: what was heard at each of its beats in all choruses, together. */
  readonly folded: Float32Array;
}

const METERS = [4, 3] as const;
/** Forms that are looked for, in bars. Whoever plays a backing plays one of these lengths (*common practice*). */
const LENGTHS = [4, 6, 8, 10, 11, 12, 14, 16, 18, 20, 22, 24, 28, 30, 32, 36, 40, 48, 56, 64] as const;
/** Each chord that a chorus writes costs so much, in nepers a beat-chorus: else two choruses would always explain more than one. */
const COST_OF_CHANGE = 7;
/** A form as long as players know is believed a little more. */
const USUAL = new Set([8, 12, 16, 32]);
const COST_OF_UNUSUAL = 10;

/**
 * @param logs what the network gave, STATES numbers a beat
 * @returns null where no chord is heard at all
 */
export function findForm(logs: Float32Array, beats: number, follow: Float64Array): FoundForm | null {
  const first = firstChord(logs, beats);
  if (first < 0) return null;
  const meter = findMeter(logs, beats, first, follow);
  const { beatsPerBar } = meter;
  let downbeat = meter.downbeat;
  while (downbeat - beatsPerBar >= Math.max(0, first - 1)) downbeat -= beatsPerBar;
  const heard = lastChord(logs, beats) + 1 - downbeat;
  const all = Math.max(1, Math.ceil((heard - 1) / beatsPerBar));
  let best: FoundForm | null = null;
  let least = Infinity;
  for (const bars of [...LENGTHS.filter((length) => length * 2 <= all + 1), all]) {
    const size = bars * beatsPerBar;
    const choruses = Math.max(1, Math.round(heard / size));
    const folded = foldedLogs(logs, beats, downbeat, size);
    const { chords } = decodeChords({ logs: folded, beats: size, beatsPerBar, firstBeatOfBar: 0, follow });
    let cost = 0;
    for (let b = 0; b < heard && downbeat + b < beats; b++)
      cost -= logs[(downbeat + b) * STATES + chords[b % size]!]!;
    let written = 0;
    chords.forEach((chord, b) => {
      if (b === 0 || chord !== chords[b - 1]) written++;
    });
    cost += COST_OF_CHANGE * written + (USUAL.has(bars) || bars === all ? 0 : COST_OF_UNUSUAL);
    if (cost >= least) continue;
    least = cost;
    best = { beatsPerBar, downbeat, bars, choruses, folded };
  }
  return best;
}

/** The likelihoods of a beat of the form in every chorus, added. */
export function foldedLogs(logs: Float32Array, beats: number, downbeat: number, size: number): Float32Array {
  const folded = new Float32Array(size * STATES);
  const counts = new Float32Array(size);
  for (let b = downbeat; b < beats; b++) {
    if (b < 0) continue;
    const at = (b - downbeat) % size;
    counts[at]!++;
    for (let s = 0; s < STATES; s++) folded[at * STATES + s]! += logs[b * STATES + s]!;
  }
  return folded;
}

/** Meter and first downbeat, and the logarithm of the likelihood of the chords under them. @param first the first beat with a chord */
function findMeter(
  logs: Float32Array,
  beats: number,
  first: number,
  follow: Float64Array,
): { readonly beatsPerBar: number; readonly downbeat: number; readonly log: number } {
  let best = { beatsPerBar: 4, downbeat: first, log: -Infinity };
  for (const beatsPerBar of METERS)
    for (let place = 0; place < beatsPerBar; place++) {
      // `place` is where in the bar the first chord stands.
      const order: DecodeOrder = {
        logs: logs.subarray(first * STATES),
        beats: beats - first,
        beatsPerBar,
        firstBeatOfBar: place,
        follow,
      };
      const score =
        decodeChords(order).log - (place === 0 ? 0 : LATE_START) - (beatsPerBar === 4 ? 0 : RARE_METER);
      if (score > best.log)
        best = { beatsPerBar, downbeat: first + ((beatsPerBar - place) % beatsPerBar), log: score };
    }
  return best;
}

/** A backing starts on a downbeat more often than elsewhere, and in four more often than in three; nepers. */
const LATE_START = 3;
const RARE_METER = 3;

const isChord = (logs: Float32Array, beat: number): boolean =>
  logs[beat * STATES + NO_CHORD]! < Math.log(0.5);

/** The first beat that holds a chord; -1 where none does. */
function firstChord(logs: Float32Array, beats: number): number {
  for (let b = 0; b < beats; b++) if (isChord(logs, b)) return b;
  return -1;
}

function lastChord(logs: Float32Array, beats: number): number {
  for (let b = beats - 1; b >= 0; b--) if (isChord(logs, b)) return b;
  return -1;
}
