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
const hadamardScale = 1 / Math.sqrt(delaysMs.length);
/** Far below hearing, far above the numbers with which a processor slows down (denormals). */
const keepAwake = 1e-20;

/**
 * Adds the room to a stem in place; `wet` is its level against the dry sound, as a factor. The four lines stand side
 * by side as plain variables on purpose: this loop runs for every frame of every stem, and a loop over lines cost
 * three times as much.
 */
export function addRoom([left, right]: Stereo, wet: number, sampleRate: number): void {
  if (wet === 0) return;
  const lengthOf = (ms: number) => Math.round((ms / 1000) * sampleRate);
  const gainOf = (length: number) => hadamardScale * 10 ** ((-3 * length) / (decaySeconds * sampleRate));
  const [length0, length1, length2, length3] = delaysMs.map(lengthOf) as [number, number, number, number];
  const [gain0, gain1, gain2, gain3] = [gainOf(length0), gainOf(length1), gainOf(length2), gainOf(length3)];
  const memory0 = new Float32Array(length0);
  const memory1 = new Float32Array(length1);
  const memory2 = new Float32Array(length2);
  const memory3 = new Float32Array(length3);
  let [place0, place1, place2, place3] = [0, 0, 0, 0];
  let [low0, low1, low2, low3] = [0, 0, 0, 0];
  const bright = 1 - damping;
  for (let frame = 0; frame < left.length; frame++) {
    const dryLeft = left[frame]!;
    const dryRight = right[frame]!;
    const heard0 = memory0[place0]!;
    const heard1 = memory1[place1]!;
    const heard2 = memory2[place2]!;
    const heard3 = memory3[place3]!;
    low0 += bright * (heard0 - low0) + keepAwake;
    low1 += bright * (heard1 - low1) + keepAwake;
    low2 += bright * (heard2 - low2) + keepAwake;
    low3 += bright * (heard3 - low3) + keepAwake;
    const sent0 = low0 * gain0;
    const sent1 = low1 * gain1;
    const sent2 = low2 * gain2;
    const sent3 = low3 * gain3;
    // The orthogonal Hadamard matrix by butterflies; its scale is in the gains.
    const sumA = sent0 + sent1;
    const differenceA = sent0 - sent1;
    const sumB = sent2 + sent3;
    const differenceB = sent2 - sent3;
    memory0[place0] = sumA + sumB + dryLeft;
    memory1[place1] = differenceA + differenceB + dryRight;
    memory2[place2] = sumA - sumB + dryLeft;
    memory3[place3] = differenceA - differenceB + dryRight;
    if (++place0 === length0) place0 = 0;
    if (++place1 === length1) place1 = 0;
    if (++place2 === length2) place2 = 0;
    if (++place3 === length3) place3 = 0;
    left[frame] = dryLeft + wet * (heard0 + heard2);
    right[frame] = dryRight + wet * (heard1 + heard3);
  }
}
