/**
 * In-place radix-2 FFT of split complex data (Cooley & Tukey 1965), tables built once. Split arrays let two
 * real signals share one transform: put one in `re`, the other in `im`.
 */
export class Fft {
  readonly size: number;
  readonly #cos: Float64Array;
  readonly #sin: Float64Array;
  readonly #swaps: Uint16Array;

  /** `size` is a power of two from 4 to 65536, else RangeError. */
  constructor(size: number) {
    if (!Number.isInteger(Math.log2(size)) || size < 4 || size > 65536) {
      throw new RangeError(`FFT size must be a power of two from 4 to 65536, not ${size}`);
    }
    this.size = size;
    this.#cos = new Float64Array(size / 2);
    this.#sin = new Float64Array(size / 2);
    for (let k = 0; k < size / 2; k++) {
      this.#cos[k] = Math.cos((2 * Math.PI * k) / size);
      this.#sin[k] = -Math.sin((2 * Math.PI * k) / size);
    }
    const swaps: number[] = [];
    const bits = Math.log2(size);
    for (let i = 0; i < size; i++) {
      let reversed = 0;
      for (let b = 0; b < bits; b++) reversed |= ((i >> b) & 1) << (bits - 1 - b);
      if (reversed > i) swaps.push(i, reversed);
    }
    this.#swaps = Uint16Array.from(swaps);
  }

  /** Forward transform of `re + i·im`, both of length `size`, in place and unscaled. */
  transform(re: Float64Array, im: Float64Array): void {
    const { size } = this;
    const cos = this.#cos;
    const sin = this.#sin;
    const swaps = this.#swaps;
    for (let s = 0; s < swaps.length; s += 2) {
      const i = swaps[s]!;
      const j = swaps[s + 1]!;
      const r = re[i]!;
      re[i] = re[j]!;
      re[j] = r;
      const q = im[i]!;
      im[i] = im[j]!;
      im[j] = q;
    }
    // The first two stages have twiddles 1 and −i only: no multiplications.
    for (let i = 0; i < size; i += 4) {
      const ar = re[i]! + re[i + 1]!;
      const ai = im[i]! + im[i + 1]!;
      const br = re[i]! - re[i + 1]!;
      const bi = im[i]! - im[i + 1]!;
      const cr = re[i + 2]! + re[i + 3]!;
      const ci = im[i + 2]! + im[i + 3]!;
      const dr = re[i + 2]! - re[i + 3]!;
      const di = im[i + 2]! - im[i + 3]!;
      re[i] = ar + cr;
      im[i] = ai + ci;
      re[i + 2] = ar - cr;
      im[i + 2] = ai - ci;
      re[i + 1] = br + di;
      im[i + 1] = bi - dr;
      re[i + 3] = br - di;
      im[i + 3] = bi + dr;
    }
    for (let half = 4; half < size; half *= 2) {
      const step = size / (2 * half);
      for (let k = 0, t = 0; k < half; k++, t += step) {
        const wr = cos[t]!;
        const wi = sin[t]!;
        for (let i = k; i < size; i += 2 * half) {
          const j = i + half;
          const xr = re[j]! * wr - im[j]! * wi;
          const xi = re[j]! * wi + im[j]! * wr;
          re[j] = re[i]! - xr;
          im[j] = im[i]! - xi;
          re[i] = re[i]! + xr;
          im[i] = im[i]! + xi;
        }
      }
    }
  }
}
