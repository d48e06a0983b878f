import { Fft } from './fft.ts';

/**
 * Transforms of real signals of one length, a power of two, by a complex transform of half the length (Sorensen et
 * al., "Real-valued fast Fourier transform algorithms", IEEE Trans. ASSP 35, 1987). Spectra are interleaved re, im
 * of bins 0 to size / 2, so `size + 2` numbers. Forward is unscaled, inverse undoes it. Buffers are allocated once.
 */
export class RealFft {
  readonly size: number;
  readonly bins: number;
  readonly #fft: Fft;
  readonly #re: Float64Array;
  readonly #im: Float64Array;
  readonly #cos: Float64Array;
  readonly #sin: Float64Array;

  /** @throws RangeError unless size is a power of two from 32 to 2²¹. */
  constructor(size: number) {
    if (size < 32 || size > 2 ** 21 || !Number.isInteger(Math.log2(size))) {
      throw new RangeError(`the size of a real FFT is a power of two from 32 to 2^21, not ${size}`);
    }
    const half = size / 2;
    this.size = size;
    this.bins = half + 1;
    this.#fft = new Fft(half);
    this.#re = new Float64Array(half);
    this.#im = new Float64Array(half);
    this.#cos = Float64Array.from({ length: half }, (_, k) => Math.cos((2 * Math.PI * k) / size));
    this.#sin = Float64Array.from({ length: half }, (_, k) => Math.sin((2 * Math.PI * k) / size));
  }

  /** A spectrum of the right length, all zero. */
  spectrum(): Float64Array {
    return new Float64Array(2 * this.bins);
  }

  /** @param signal size real samples @param out 2 × bins numbers */
  forward(signal: Float64Array, out: Float64Array): void {
    const re = this.#re;
    const im = this.#im;
    const half = this.size / 2;
    for (let n = 0; n < half; n++) {
      re[n] = signal[2 * n]!;
      im[n] = signal[2 * n + 1]!;
    }
    this.#fft.transform(re, im);
    out[0] = re[0]! + im[0]!;
    out[1] = 0;
    out[2 * half] = re[0]! - im[0]!;
    out[2 * half + 1] = 0;
    for (let k = 1; k < half; k++) {
      const m = half - k;
      const evenRe = 0.5 * (re[k]! + re[m]!);
      const evenIm = 0.5 * (im[k]! - im[m]!);
      const oddRe = 0.5 * (im[k]! + im[m]!);
      const oddIm = 0.5 * (re[m]! - re[k]!);
      const c = this.#cos[k]!;
      const s = this.#sin[k]!;
      out[2 * k] = evenRe + c * oddRe + s * oddIm;
      out[2 * k + 1] = evenIm + c * oddIm - s * oddRe;
    }
  }

  /** @param spectrum 2 × bins numbers @param out size real samples */
  inverse(spectrum: Float64Array, out: Float64Array): void {
    const re = this.#re;
    const im = this.#im;
    const half = this.size / 2;
    for (let k = 0; k < half; k++) {
      const a = 2 * k;
      const b = 2 * (half - k);
      const evenRe = spectrum[a]! + spectrum[b]!;
      const evenIm = spectrum[a + 1]! - spectrum[b + 1]!;
      const turnRe = spectrum[a]! - spectrum[b]!;
      const turnIm = spectrum[a + 1]! + spectrum[b + 1]!;
      const c = this.#cos[k]!;
      const s = this.#sin[k]!;
      const oddRe = c * turnRe - s * turnIm;
      const oddIm = c * turnIm + s * turnRe;
      re[k] = evenRe - oddIm;
      im[k] = evenIm + oddRe;
    }
    // Exchanged parts turn a forward transform into an inverse one.
    this.#fft.transform(im, re);
    const scale = 1 / this.size;
    for (let n = 0; n < half; n++) {
      out[2 * n] = re[n]! * scale;
      out[2 * n + 1] = im[n]! * scale;
    }
  }
}

/** The smallest power of two that is at least n and that RealFft accepts. */
export const powerOfTwoFrom = (n: number): number => 2 ** Math.ceil(Math.log2(Math.max(32, n)));
