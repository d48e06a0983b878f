/** Points of one block of work: 16 kB of numbers, which fit in the processor's first cache. */
const BLOCK = 1024;

/**
 * In-place FFT of split complex data, radix 4 with one radix-2 stage where the size asks for it (Cooley & Tukey
 * 1965). Tables are built once. Split arrays let two real signals share one transform: one in `re`, the other in `im`.
 */
export class Fft {
  readonly size: number;
  /** The index at which `transformLaid` expects sample i: i with its bits reversed. */
  readonly places: Int32Array;
  readonly #twiddles: Float64Array;
  readonly #swaps: Int32Array;
  /** Points of the first stage's transforms. */
  readonly #first: 4 | 8;

  /** `size` is a power of two from 16 to 2²⁰, else RangeError. */
  constructor(size: number) {
    const bits = Math.log2(size);
    if (!Number.isInteger(bits) || bits < 4 || bits > 20) {
      throw new RangeError(`FFT size must be a power of two from 16 to 2^20, not ${size}`);
    }
    this.size = size;
    this.#first = bits % 2 === 0 ? 4 : 8;
    // Stages of quarter points add up to (size − first) / 3, and a point takes three twiddles.
    const twiddles = new Float64Array(2 * (size - this.#first));
    let t = 0;
    for (let quarter = this.#first; quarter < size; quarter *= 4) {
      for (let k = 0; k < quarter; k++) {
        const angle = (-Math.PI * k) / (2 * quarter);
        twiddles[t++] = Math.cos(angle);
        twiddles[t++] = Math.sin(angle);
        twiddles[t++] = Math.cos(2 * angle);
        twiddles[t++] = Math.sin(2 * angle);
        twiddles[t++] = Math.cos(3 * angle);
        twiddles[t++] = Math.sin(3 * angle);
      }
    }
    this.#twiddles = twiddles;
    const places = new Int32Array(size);
    const swaps = new Int32Array(size);
    let swapped = 0;
    for (let i = 1; i < size; i++) {
      const place = (places[i >> 1]! >> 1) | ((i & 1) << (bits - 1));
      places[i] = place;
      if (place > i) {
        swaps[swapped++] = i;
        swaps[swapped++] = place;
      }
    }
    this.places = places;
    this.#swaps = swaps.subarray(0, swapped);
  }

  /** Forward transform of `re + i·im`, both of length `size`, in place and unscaled. */
  transform(re: Float64Array, im: Float64Array): void {
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
    this.transformLaid(re, im);
  }

  /** The same for input whose sample i stands at `places[i]` already, which saves the pass that swaps. */
  transformLaid(re: Float64Array, im: Float64Array): void {
    const { size } = this;
    firstFour(re, im, size);
    if (this.#first === 8) join(re, im, size);
    this.#rest(re, im);
  }

  /**
   * Transform of two real windows at once, from `startA` of `samples` on in `re` and from `startB` on in `im`, padded with
   * zeros. The first stage is done while the samples are read in bit-reversed order, so that no separate pass copies and
   * swaps them.
   */
  transformPair(
    samples: Float32Array,
    startA: number,
    startB: number,
    window: Float64Array,
    re: Float64Array,
    im: Float64Array,
  ): void {
    const { size, places } = this;
    const { length } = window;
    const quarter = size / 4;
    for (let i = 0; i < size; i += 4) {
      const first = places[i]!;
      const third = first + quarter;
      const second = third + quarter;
      const fourth = second + quarter;
      let r0 = 0;
      let i0 = 0;
      let r1 = 0;
      let i1 = 0;
      let r2 = 0;
      let i2 = 0;
      let r3 = 0;
      let i3 = 0;
      if (first < length) {
        const w = window[first]!;
        r0 = samples[startA + first]! * w;
        i0 = samples[startB + first]! * w;
      }
      if (second < length) {
        const w = window[second]!;
        r1 = samples[startA + second]! * w;
        i1 = samples[startB + second]! * w;
      }
      if (third < length) {
        const w = window[third]!;
        r2 = samples[startA + third]! * w;
        i2 = samples[startB + third]! * w;
      }
      if (fourth < length) {
        const w = window[fourth]!;
        r3 = samples[startA + fourth]! * w;
        i3 = samples[startB + fourth]! * w;
      }
      const ar = r0 + r1;
      const ai = i0 + i1;
      const br = r0 - r1;
      const bi = i0 - i1;
      const cr = r2 + r3;
      const ci = i2 + i3;
      const dr = r2 - r3;
      const di = i2 - i3;
      re[i] = ar + cr;
      im[i] = ai + ci;
      re[i + 1] = br + di;
      im[i + 1] = bi - dr;
      re[i + 2] = ar - cr;
      im[i + 2] = ai - ci;
      re[i + 3] = br - di;
      im[i + 3] = bi + dr;
    }
    if (this.#first === 8) join(re, im, size);
    this.#rest(re, im);
  }

  /** Four sub-transforms of `quarter` points become one of 4 · quarter, until one is left. */
  #rest(re: Float64Array, im: Float64Array): void {
    const { size } = this;
    const w = this.#twiddles;
    let t = 0;
    for (let quarter = this.#first; quarter < size; quarter *= 4) {
      const step = 4 * quarter;
      const block = Math.max(step, Math.min(size, BLOCK));
      const stage = t;
      for (let start = 0; start < size; start += block) {
        const end = start + block;
        t = stage;
        for (let k = start; k < start + quarter; k++, t += 6) {
          // One set of twiddle factors for all butterflies of the block that use it.
          const w1r = w[t]!;
          const w1i = w[t + 1]!;
          const w2r = w[t + 2]!;
          const w2i = w[t + 3]!;
          const w3r = w[t + 4]!;
          const w3i = w[t + 5]!;
          for (let a = k; a < end; a = (a + step) | 0) {
            // Bit-reversed order: the second sub-transform holds x[4n+2], the third x[4n+1].
            const c = (a + quarter) | 0;
            const b = (c + quarter) | 0;
            const d = (b + quarter) | 0;
            const ar = re[a]!;
            const ai = im[a]!;
            const xr = re[b]!;
            const xi = im[b]!;
            const yr = re[c]!;
            const yi = im[c]!;
            const zr = re[d]!;
            const zi = im[d]!;
            const br = xr * w1r - xi * w1i;
            const bi = xr * w1i + xi * w1r;
            const cr = yr * w2r - yi * w2i;
            const ci = yr * w2i + yi * w2r;
            const dr = zr * w3r - zi * w3i;
            const di = zr * w3i + zi * w3r;
            const evenR = ar + cr;
            const evenI = ai + ci;
            const crossR = ar - cr;
            const crossI = ai - ci;
            const oddR = br + dr;
            const oddI = bi + di;
            const turnR = bi - di;
            const turnI = dr - br;
            re[a] = evenR + oddR;
            im[a] = evenI + oddI;
            re[c] = crossR + turnR;
            im[c] = crossI + turnI;
            re[b] = evenR - oddR;
            im[b] = evenI - oddI;
            re[d] = crossR - turnR;
            im[d] = crossI - turnI;
          }
        }
      }
    }
  }
}

/** Transforms of four points: no multiplications. */
function firstFour(re: Float64Array, im: Float64Array, size: number): void {
  for (let i = 0; i < size; i += 4) {
    const r0 = re[i]!;
    const i0 = im[i]!;
    const r1 = re[i + 1]!;
    const i1 = im[i + 1]!;
    const r2 = re[i + 2]!;
    const i2 = im[i + 2]!;
    const r3 = re[i + 3]!;
    const i3 = im[i + 3]!;
    const ar = r0 + r1;
    const ai = i0 + i1;
    const br = r0 - r1;
    const bi = i0 - i1;
    const cr = r2 + r3;
    const ci = i2 + i3;
    const dr = r2 - r3;
    const di = i2 - i3;
    re[i] = ar + cr;
    im[i] = ai + ci;
    re[i + 1] = br + di;
    im[i + 1] = bi - dr;
    re[i + 2] = ar - cr;
    im[i + 2] = ai - ci;
    re[i + 3] = br - di;
    im[i + 3] = bi + dr;
  }
}

/** Two transforms of four points become one of eight: the radix-2 stage, with √½ as its only factor. */
function join(re: Float64Array, im: Float64Array, size: number): void {
  for (let i = 0; i < size; i += 8) {
    const r0 = re[i]!;
    const i0 = im[i]!;
    const r1 = re[i + 1]!;
    const i1 = im[i + 1]!;
    const r2 = re[i + 2]!;
    const i2 = im[i + 2]!;
    const r3 = re[i + 3]!;
    const i3 = im[i + 3]!;
    const r4 = re[i + 4]!;
    const i4 = im[i + 4]!;
    const r5 = re[i + 5]!;
    const i5 = im[i + 5]!;
    const r6 = re[i + 6]!;
    const i6 = im[i + 6]!;
    const r7 = re[i + 7]!;
    const i7 = im[i + 7]!;
    const one = Math.SQRT1_2 * (r5 + i5);
    const oneI = Math.SQRT1_2 * (i5 - r5);
    const three = Math.SQRT1_2 * (i7 - r7);
    const threeI = -Math.SQRT1_2 * (r7 + i7);
    re[i] = r0 + r4;
    im[i] = i0 + i4;
    re[i + 1] = r1 + one;
    im[i + 1] = i1 + oneI;
    re[i + 2] = r2 + i6;
    im[i + 2] = i2 - r6;
    re[i + 3] = r3 + three;
    im[i + 3] = i3 + threeI;
    re[i + 4] = r0 - r4;
    im[i + 4] = i0 - i4;
    re[i + 5] = r1 - one;
    im[i + 5] = i1 - oneI;
    re[i + 6] = r2 - i6;
    im[i + 6] = i2 + r6;
    re[i + 7] = r3 - three;
    im[i + 7] = i3 - threeI;
  }
}

/** Of one bin. Plain, where Math.hypot takes several times as long. */
export function magnitude(re: number, im: number): number {
  return Math.sqrt(re * re + im * im);
}
