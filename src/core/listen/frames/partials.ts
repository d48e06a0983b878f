import { Fft, magnitude } from '../../base/fft.ts';
import { INNER_RATE, PASS_HZ } from '../frames-tuning.ts';

/** One sinusoid of a spectrum. */
export interface Partial {
  readonly hz: number;
  readonly amplitude: number;
}

/** The partials of a stretch of sound, upwards, and how far apart two must lie to be told apart. */
export interface Partials {
  readonly list: readonly Partial[];
  /** One bin of the window, 1 / its length. */
  readonly binHz: number;
}

/** Longest and shortest stretch: 171 and 85 ms. */
export const LONGEST_STRETCH = 2048;
export const SHORTEST_STRETCH = 1024;
/** Zero-padded twice at least, so that three points about a peak lie on one lobe. */
const SIZE = 4096;
const LEAST_HZ = 36;
/** A partial is no more than this under the strongest one (40 dB) and this far above both its valleys (6 dB). */
const LEAST_SHARE = 0.01;
const PROMINENCE = 2;
/** So near a stronger one, in bins, it is no more than this under it (24 dB): below lies the window's first side lobe. */
const LOBE_BINS = 3.5;
const LOBE_SHARE = 0.06;

/** Sinusoids of a Hann-windowed stretch: peaks of its spectrum, interpolated by a parabola through their logarithms. */
export class PartialFinder {
  readonly #fft = new Fft(SIZE);
  readonly #re = new Float64Array(SIZE);
  readonly #im = new Float64Array(SIZE);
  readonly #magnitude = new Float64Array(SIZE / 2);

  /** `sampleAt(i)` gives the stretch's sample i, 0 ≤ i < length; `length` from SHORTEST_ to LONGEST_STRETCH. */
  find(sampleAt: (i: number) => number, length: number): Partials {
    const re = this.#re.fill(0);
    const im = this.#im.fill(0);
    for (let i = 0; i < length; i++)
      re[i] = sampleAt(i) * (0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / length));
    this.#fft.transform(re, im);
    const sizes = this.#magnitude;
    const last = Math.floor((PASS_HZ * SIZE) / INNER_RATE);
    const first = Math.ceil((LEAST_HZ * SIZE) / INNER_RATE);
    let strongest = 0;
    for (let k = first - 1; k <= last + 1; k++) {
      sizes[k] = magnitude(re[k]!, im[k]!);
      strongest = Math.max(strongest, sizes[k]!);
    }
    const list: Partial[] = [];
    const reach = Math.ceil((2.5 * SIZE) / length);
    for (let k = first; k <= last; k++) {
      const here = sizes[k]!;
      if (here < LEAST_SHARE * strongest || here <= sizes[k - 1]! || here < sizes[k + 1]!) continue;
      if (!this.#stands(k, -1, reach) || !this.#stands(k, 1, reach)) continue;
      const [a, b, c] = [Math.log(sizes[k - 1]!), Math.log(here), Math.log(sizes[k + 1]!)];
      const shift = (a - c) / (2 * (a - 2 * b + c));
      list.push({ hz: ((k + shift) * INNER_RATE) / SIZE, amplitude: Math.exp(b - ((a - c) * shift) / 4) });
    }
    const binHz = INNER_RATE / length;
    const isLobe = ({ hz, amplitude }: Partial) =>
      list.some(
        (other) => Math.abs(other.hz - hz) < LOBE_BINS * binHz && amplitude < LOBE_SHARE * other.amplitude,
      );
    return { list: list.filter((partial) => !isLobe(partial)), binHz };
  }

  /** Does the spectrum fall by PROMINENCE on this side before it rises above the peak? */
  #stands(peak: number, step: -1 | 1, reach: number): boolean {
    const here = this.#magnitude[peak]!;
    for (let i = 1; i <= reach; i++) {
      const there = this.#magnitude[peak + step * i] ?? 0;
      if (there > here) return false;
      if (there * PROMINENCE < here) return true;
    }
    return false;
  }
}
