/**
 * A small room around the band: the kit's samples were recorded close and dry, and without a room they sound like
 * a machine. A feedback delay network (Jot & Chaigne, AES 90, 1991): four delay lines, a Hadamard mixer that
 * loses no energy, a damping low-pass and a gain in each line that sets the decay.
 */
import type { Stereo } from './stereo.ts';

/** Seconds until the room is 60 dB down: a rehearsal room with carpets. */
const decaySeconds = 0.5;
/** Highs die first: one-pole coefficient, 0 for none. */
const damping = 0.35;
/** Lengths in milliseconds, with no common divisor worth hearing; the shortest sets the first reflection. */
const delaysMs = [13.9, 19.7, 27.1, 36.7] as const;
const lines = delaysMs.length;
const hadamardScale = 1 / Math.sqrt(lines);

/**
 * Adds the room to a stem in place; `wet` is its level against the dry sound, as a factor. The loops are plain on
 * purpose: they run for every frame of every stem.
 */
export function addRoom([left, right]: Stereo, wet: number, sampleRate: number): void {
  if (wet === 0) return;
  const lengths = Int32Array.from(delaysMs, (ms) => Math.round((ms / 1000) * sampleRate));
  const gains = Float64Array.from(lengths, (length) => 10 ** ((-3 * length) / (decaySeconds * sampleRate)));
  const longest = Math.max(...lengths);
  /** All delay lines, one after the other. */
  const memory = new Float32Array(longest * lines);
  const places = new Int32Array(lines);
  const lows = new Float64Array(lines);
  const mixed = new Float64Array(lines);
  for (let frame = 0; frame < left.length; frame++) {
    const dryLeft = left[frame]!;
    const dryRight = right[frame]!;
    let wetLeft = 0;
    let wetRight = 0;
    for (let line = 0; line < lines; line++) {
      const heard = memory[line * longest + places[line]!]!;
      const low = lows[line]! + (1 - damping) * (heard - lows[line]!);
      lows[line] = low;
      mixed[line] = low * gains[line]!;
      if ((line & 1) === 0) wetLeft += heard;
      else wetRight += heard;
    }
    mixHadamard(mixed);
    for (let line = 0; line < lines; line++) {
      const place = places[line]!;
      memory[line * longest + place] = mixed[line]! + ((line & 1) === 0 ? dryLeft : dryRight);
      places[line] = place + 1 === lengths[line] ? 0 : place + 1;
    }
    left[frame] = dryLeft + wet * wetLeft;
    right[frame] = dryRight + wet * wetRight;
  }
}

/** The orthogonal Hadamard matrix by butterflies, in place. */
function mixHadamard(values: Float64Array): void {
  for (let half = 1; half < lines; half *= 2) {
    for (let start = 0; start < lines; start += 2 * half) {
      for (let i = start; i < start + half; i++) {
        const a = values[i]!;
        const b = values[i + half]!;
        values[i] = a + b;
        values[i + half] = a - b;
      }
    }
  }
  for (let i = 0; i < lines; i++) values[i] = values[i]! * hadamardScale;
}
