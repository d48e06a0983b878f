import { FINE_REACH } from './decoding.ts';
import { PITCHES } from './settings.ts';

/** Frames remembered; a power of two. */
const KEPT = 64;

/** The network's answers for the last second, and their sums over neighbouring frames and semitones. */
export class Outputs {
  /** Frames taken in so far. */
  count = 0;
  readonly #onset = new Float32Array(KEPT * PITCHES);
  readonly #sounding = new Float32Array(KEPT * PITCHES);
  /** Sums of onset over three semitones, and over three frames and semitones. */
  readonly #across = new Float32Array(KEPT * PITCHES);
  readonly #about = new Float32Array(KEPT * PITCHES);
  readonly #soundAbout = new Float32Array(KEPT * PITCHES);
  readonly #fine = new Float32Array(KEPT * PITCHES);

  /** Takes the next frame in; sums of the frame before it are complete then. */
  push(onset: Float32Array, sounding: Float32Array): void {
    const at = this.#at(this.count);
    this.#onset.set(onset, at);
    this.#fine.fill(NaN, at, at + PITCHES);
    this.#sounding.set(sounding, at);
    sumThree(onset, this.#across, at);
    sumThree(sounding, this.#soundAbout, at);
    const before = this.#at(this.count - 1);
    const two = this.#at(this.count - 2);
    const hasTwo = this.count >= 2;
    for (let p = 0; p < PITCHES; p++) {
      this.#about[before + p] =
        this.#across[at + p]! + this.#across[before + p]! + (hasTwo ? this.#across[two + p]! : 0);
    }
    this.count++;
  }

  /** Pitch of the newest frame near the semitone `pitch`, in semitones above the lowest: `fine`, or NaN where it is not known. */
  setFine(pitch: number, fine: number): void {
    this.#fine[this.#at(this.count - 1) + pitch] = fine;
  }

  /** The mean pitch of a semitone and its neighbours, by how surely each sounds. In semitones above the lowest. */
  pitchOver(frame: number, pitch: number): number {
    let height = 0;
    for (let p = Math.max(0, pitch - 1); p <= Math.min(PITCHES - 1, pitch + 1); p++)
      height += this.sounding(frame, p) * p;
    return height / this.soundAbout(frame, pitch);
  }

  /** The fine pitch where it lies near the mean one, else the mean one. */
  finePitchOver(frame: number, pitch: number): number {
    const mean = this.pitchOver(frame, pitch);
    const fine = this.#fine[this.#at(frame) + pitch]!;
    return Math.abs(fine - mean) < FINE_REACH ? fine : mean;
  }

  onset(frame: number, pitch: number): number {
    return this.#onset[this.#at(frame) + pitch]!;
  }

  sounding(frame: number, pitch: number): number {
    return this.#sounding[this.#at(frame) + pitch]!;
  }

  /** Sum over three frames and three semitones: about the probability of an onset there. */
  onsetAbout(frame: number, pitch: number): number {
    return this.#about[this.#at(frame) + pitch]!;
  }

  /** Sum over three semitones: about the probability that a pitch near there sounds. */
  soundAbout(frame: number, pitch: number): number {
    return this.#soundAbout[this.#at(frame) + pitch]!;
  }

  #at(frame: number): number {
    return (frame & (KEPT - 1)) * PITCHES;
  }
}

function sumThree(from: Float32Array, to: Float32Array, at: number): void {
  for (let p = 0; p < PITCHES; p++)
    to[at + p] = from[p]! + (p > 0 ? from[p - 1]! : 0) + (p < PITCHES - 1 ? from[p + 1]! : 0);
}
