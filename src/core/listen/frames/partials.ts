import { Fft, magnitude } from '../../base/fft.ts';
import * as S from '../tuning/frames.ts';

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

/** Sinusoids of a Hann-windowed stretch: peaks of its spectrum, interpolated by a parabola through their logarithms. */
export class PartialFinder {
  readonly #fft = new Fft(S.PARTIAL_SIZE);
  readonly #re = new Float64Array(S.PARTIAL_SIZE);
  readonly #im = new Float64Array(S.PARTIAL_SIZE);
  readonly #magnitude = new Float64Array(S.PARTIAL_SIZE / 2);

  /** `sampleAt(i)` gives the stretch's sample i, 0 ≤ i < length; `length` is from SHORTEST_STRETCH to LONGEST_STRETCH. */
  find(sampleAt: (i: number) => number, length: number): Partials {
    const re = this.#re.fill(0);
    const im = this.#im.fill(0);
    for (let i = 0; i < length; i++)
      re[i] = sampleAt(i) * (0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / length));
    this.#fft.transform(re, im);
    const sizes = this.#magnitude;
    const last = Math.floor((S.PASS_HZ * S.PARTIAL_SIZE) / S.INNER_RATE);
    const first = Math.ceil((S.PARTIAL_LEAST_HZ * S.PARTIAL_SIZE) / S.INNER_RATE);
    let strongest = 0;
    for (let k = first - 1; k <= last + 1; k++) {
      sizes[k] = magnitude(re[k]!, im[k]!);
      strongest = Math.max(strongest, sizes[k]!);
    }
    const list: Partial[] = [];
    const reach = Math.ceil((S.PARTIAL_VALLEY_BINS * S.PARTIAL_SIZE) / length);
    for (let k = first; k <= last; k++) {
      const here = sizes[k]!;
      if (here < S.PARTIAL_LEAST_SHARE * strongest || here <= sizes[k - 1]! || here < sizes[k + 1]!) continue;
      if (!this.#stands(k, -1, reach) || !this.#stands(k, 1, reach)) continue;
      const [a, b, c] = [Math.log(sizes[k - 1]!), Math.log(here), Math.log(sizes[k + 1]!)];
      const shift = (a - c) / (2 * (a - 2 * b + c));
      list.push({
        hz: ((k + shift) * S.INNER_RATE) / S.PARTIAL_SIZE,
        amplitude: Math.exp(b - ((a - c) * shift) / 4),
      });
    }
    const binHz = S.INNER_RATE / length;
    const isLobe = ({ hz, amplitude }: Partial) =>
      list.some(
        (other) =>
          Math.abs(other.hz - hz) < S.LOBE_BINS * binHz && amplitude < S.LOBE_SHARE * other.amplitude,
      );
    return { list: list.filter((partial) => !isLobe(partial)), binHz };
  }

  /** Does the spectrum fall by PARTIAL_PROMINENCE on this side before it rises above the peak? */
  #stands(peak: number, step: -1 | 1, reach: number): boolean {
    const here = this.#magnitude[peak]!;
    for (let i = 1; i <= reach; i++) {
      const there = this.#magnitude[peak + step * i] ?? 0;
      if (there > here) return false;
      if (there * S.PARTIAL_PROMINENCE < here) return true;
    }
    return false;
  }
}
