/**
 * A small room around the band: the kit's samples were recorded close and dry, and without a room they sound like
 * a machine. A feedback delay network (Jot & Chaigne, AES 90, 1991): eight delay lines, a Hadamard mixer that
 * loses no energy, a damping low-pass and a gain in each line that sets the decay.
 */
import type { Stereo } from './render-events.ts';

/** Seconds until the room is 60 dB down: a rehearsal room with carpets. */
const decaySeconds = 0.5;
/** Highs die first: one-pole coefficient, 0 for none. */
const damping = 0.35;
/** Lengths in milliseconds, with no common divisor worth hearing; the shortest sets the first reflection. */
const delaysMs = [11.3, 13.9, 17.2, 19.7, 23.6, 27.1, 31.9, 36.7] as const;
const lines = delaysMs.length;
const hadamardScale = 1 / Math.sqrt(lines);

/** Adds the room to a stem in place; `wet` is its level against the dry sound, as a factor. */
export function addRoom([left, right]: Stereo, wet: number, sampleRate: number): void {
  if (wet === 0) return;
  const buffers = delaysMs.map((ms) => new Float32Array(Math.round((ms / 1000) * sampleRate)));
  const gains = buffers.map((buffer) => 10 ** ((-3 * buffer.length) / (decaySeconds * sampleRate)));
  const places = new Int32Array(lines);
  const lows = new Float64Array(lines);
  const out = new Float64Array(lines);
  for (let frame = 0; frame < left.length; frame++) {
    const [dryLeft, dryRight] = [left[frame]!, right[frame]!];
    let wetLeft = 0;
    let wetRight = 0;
    for (let line = 0; line < lines; line++) {
      const heard = buffers[line]![places[line]!]!;
      lows[line]! += (1 - damping) * (heard - lows[line]!);
      out[line] = lows[line]! * gains[line]!;
      if (line % 2 === 0) wetLeft += heard;
      else wetRight += heard;
    }
    mixHadamard(out);
    for (let line = 0; line < lines; line++) {
      const buffer = buffers[line]!;
      buffer[places[line]!] = out[line]! + (line % 2 === 0 ? dryLeft : dryRight);
      places[line] = places[line]! + 1 === buffer.length ? 0 : places[line]! + 1;
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
        const [a, b] = [values[i]!, values[i + half]!];
        values[i] = a + b;
        values[i + half] = a - b;
      }
    }
  }
  for (let i = 0; i < lines; i++) values[i]! *= hadamardScale;
}
