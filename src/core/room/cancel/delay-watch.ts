/**
 * Measures, while the band plays, by how much later it comes back than by the path that a sweep has measured: by the
 * whitened correlation (Knapp & Carter 1976) of the microphone and the band as it comes through that path. In it all
 * reflections of the path lie on one peak, so that none is taken for the direct sound. The clicks of a count-in are enough.
 */
import { powerOfTwoFrom, RealFft } from '../../base/real-fft.ts';
import { ROOM_HZ } from '../align/room-rate.ts';
import { peakOf, topNear } from '../align/whitened.ts';
import { LEAST_HELD_BACK } from './follow.ts';

/**
 * Length of a window: a second holds at least one click of a count-in, whose peak was 40 and more through a real loop.
 */
const WINDOW = ROOM_HZ;
/** Longest delay that is searched for, samples: a sound check finds none that is longer, either. */
export const REACH = 0.6 * ROOM_HZ;
/** Least height of the peak in standard deviations; the highest of 7,200 values of noise is 4 to 6. */
const CERTAIN = 12;
/**
 * Until the delay is known, this share of the correlation of earlier windows is added to that of the last one: a band that is
 * much quieter than the player shows in several windows together.
 */
const KEPT = 0.8;
/** A delay is known by the correlation this near to it, samples. */
const NEAR = 2;
/**
 * Clicks that are alike match at several delays, one click apart: of peaks that are nearly this equal, the one nearest to the
 * delay that was expected counts.
 */
const ALIKE = 0.8;
/** Where the correlation at a delay is less than this share of its highest peak, the band does not come at that delay. */
const ABSENT = 0.5;
const TINY = 1e-9;

/** How the band comes back: after so many samples at ROOM_HZ through these taps. */
interface Path {
  readonly heldBackSamples: number;
  readonly taps: Float32Array;
}

export interface WatchedDelay {
  /** Samples by which the band comes later than by the path, to a fraction of one. */
  readonly laterSamples: number;
  /** Whether it comes no more at the delay that was expected. */
  readonly isElsewhere: boolean;
  /** Height of the peak: lower where a part of the path is another. */
  readonly height: number;
}

export class DelayWatch {
  readonly #fft = new RealFft(powerOfTwoFrom(2 * WINDOW + REACH));
  readonly #heldBack: number;
  /** Spectrum of the path's taps, of which only the phases count. */
  readonly #path = this.#fft.spectrum();
  /** Microphone and band on the same times: of the band what came before the window too, since it may come back in it. */
  readonly #heard = new Float64Array(this.#fft.size);
  readonly #played = new Float64Array(this.#fft.size);
  /** The correlation of the windows so far, those long ago with little weight; null once the delay is known. */
  #pooled: Float64Array | null = new Float64Array(REACH - LEAST_HELD_BACK);
  #filled = 0;

  constructor({ heldBackSamples, taps }: Path) {
    this.#heldBack = heldBackSamples;
    this.#heard.set(taps);
    this.#fft.forward(this.#heard, this.#path);
    this.#heard.fill(0);
  }

  /**
   * Takes microphone and band at ROOM_HZ; answers when a window is full and the band was heard.
   * @param expected samples by which the band is taken to come later than by the path
   */
  push(microphone: Float32Array, band: Float32Array, expected: number): WatchedDelay | null {
    let found: WatchedDelay | null = null;
    for (let i = 0; i < microphone.length; i++) {
      this.#heard[REACH + this.#filled] = microphone[i]!;
      this.#played[REACH + this.#filled] = band[i]!;
      if (++this.#filled < WINDOW) continue;
      found = this.#measure(expected) ?? found;
      this.#filled = 0;
      this.#played.copyWithin(0, WINDOW, WINDOW + REACH);
    }
    return found;
  }

  #measure(expected: number): WatchedDelay | null {
    const all = this.#correlation();
    const first = LEAST_HELD_BACK - this.#heldBack;
    const now = all.subarray(LEAST_HELD_BACK, REACH);
    const pooled = this.#pooled?.map((before, i) => KEPT * before + now[i]!) ?? null;
    const clear = [now, pooled].find((correlation) => correlation !== null && isClear(correlation));
    this.#pooled = clear ? null : pooled;
    if (!clear) return null;
    const at = placeOfPeak(clear, expected - first);
    const height = Math.abs(clear[at]!);
    const isElsewhere = heightNear(clear, expected - first) < ABSENT * height;
    return { laterSamples: first + topNear(clear, at), isElsewhere, height };
  }

  /** Whitened; value i belongs to a delay of i samples before the path's first tap. */
  #correlation(): Float64Array {
    const [heard, played] = [this.#fft.spectrum(), this.#fft.spectrum()];
    const path = this.#path;
    this.#fft.forward(this.#heard, heard);
    this.#fft.forward(this.#played, played);
    for (let i = 0; i < heard.length; i += 2) {
      const br = played[i]! * path[i]! - played[i + 1]! * path[i + 1]!;
      const bi = played[i]! * path[i + 1]! + played[i + 1]! * path[i]!;
      const re = heard[i]! * br + heard[i + 1]! * bi;
      const im = heard[i + 1]! * br - heard[i]! * bi;
      const size = Math.hypot(re, im) + TINY;
      heard[i] = re / size;
      heard[i + 1] = im / size;
    }
    const correlation = new Float64Array(this.#fft.size);
    this.#fft.inverse(heard, correlation);
    return correlation;
  }
}

const isClear = (correlation: Float64Array): boolean => (peakOf(correlation, 0)?.prominence ?? 0) >= CERTAIN;

/** Of the peaks that are nearly as high as the highest the one nearest to where it is expected. */
function placeOfPeak(correlation: Float64Array, expected: number): number {
  const least = ALIKE * correlation.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  let nearest = Infinity;
  for (let i = 0; i < correlation.length; i++) {
    const height = Math.abs(correlation[i]!);
    if (height < least || height < heightNear(correlation, i)) continue;
    if (Math.abs(i - expected) < Math.abs(nearest - expected)) nearest = i;
  }
  return nearest;
}

function heightNear(correlation: Float64Array, place: number): number {
  const at = Math.round(place);
  let most = 0;
  for (let i = at - NEAR; i <= at + NEAR; i++) most = Math.max(most, Math.abs(correlation[i] ?? 0));
  return most;
}
