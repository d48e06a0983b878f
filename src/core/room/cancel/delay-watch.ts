/**
 * Measures the round trip repeatedly while the band plays, by the whitened correlation of microphone and band (Knapp &
 * Carter 1976). The clicks of a count-in are enough.
 */
import { powerOfTwoFrom, RealFft } from '../../base/real-fft.ts';
import { ROOM_HZ } from '../align/room-rate.ts';
import { peakOf } from '../align/whitened.ts';

/**
 * Length of a window: a second holds at least one click of a count-in, whose peak was 40 and more through a real loop.
 */
const WINDOW = ROOM_HZ;
/** Longest delay that is searched for. */
const REACH = 0.6 * ROOM_HZ;
/** Least height of the peak in standard deviations; the highest of 7,200 values of noise is 4 to 6. */
const CERTAIN = 12;

export class DelayWatch {
  readonly #fft = new RealFft(powerOfTwoFrom(WINDOW + REACH));
  readonly #heard = new Float64Array(this.#fft.size);
  readonly #played = new Float64Array(this.#fft.size);
  #filled = 0;

  /**
   * Takes microphone and band at ROOM_HZ; returns the delay in samples when a window is full and the band was heard.
   */
  push(microphone: Float32Array, band: Float32Array): number | null {
    let found: number | null = null;
    for (let i = 0; i < microphone.length; i++) {
      this.#heard[this.#filled] = microphone[i]!;
      this.#played[this.#filled] = band[i]!;
      if (++this.#filled < WINDOW) continue;
      found = this.#measure() ?? found;
      this.#filled = 0;
    }
    return found;
  }

  #measure(): number | null {
    const [heard, played] = [this.#fft.spectrum(), this.#fft.spectrum()];
    this.#fft.forward(this.#heard, heard);
    this.#fft.forward(this.#played, played);
    for (let i = 0; i < heard.length; i += 2) {
      const re = heard[i]! * played[i]! + heard[i + 1]! * played[i + 1]!;
      const im = heard[i + 1]! * played[i]! - heard[i]! * played[i + 1]!;
      const size = Math.hypot(re, im) + 1e-9;
      heard[i] = re / size;
      heard[i + 1] = im / size;
    }
    const correlation = new Float64Array(this.#fft.size);
    this.#fft.inverse(heard, correlation);
    const peak = peakOf(correlation.subarray(0, REACH), 0);
    return peak !== null && peak.prominence >= CERTAIN ? Math.round(peak.lagSamples) : null;
  }
}
