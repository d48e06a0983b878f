/**
 * In-place FFT of split complex data, radix 4 with one radix-2 stage where the size asks for it (Cooley & Tukey
 * 1965). Tables are built once, one run of twiddles a stage, so that the inner loop reads memory in order. Split
 * arrays let two real signals share one transform: one in `re`, the other in `im`.
 */
export class Fft {
  readonly size: number;
  readonly #twiddles: Float64Array;
  readonly #swaps: Uint32Array;

  /** `size` is a power of two from 16 to 2²⁰, else RangeError. */
  constructor(size: number) {
    const bits = Math.log2(size);
    if (!Number.isInteger(bits) || bits < 4 || bits > 20) {
      throw new RangeError(`FFT size must be a power of two from 16 to 2^20, not ${size}`);
    }
    this.size = size;
    const twiddles: number[] = [];
    for (let quarter = bits % 2 === 0 ? 4 : 8; quarter < size; quarter *= 4) {
      for (let k = 0; k < quarter; k++) {
        for (const power of [1, 2, 3]) {
          const angle = (-2 * Math.PI * k * power) / (4 * quarter);
          twiddles.push(Math.cos(angle), Math.sin(angle));
        }
      }
    }
    this.#twiddles = Float64Array.from(twiddles);
    const swaps: number[] = [];
    for (let i = 0; i < size; i++) {
      let reversed = 0;
      for (let b = 0; b < bits; b++) reversed |= ((i >> b) & 1) << (bits - 1 - b);
      if (reversed > i) swaps.push(i, reversed);
    }
    this.#swaps = Uint32Array.from(swaps);
  }

  /** Forward transform of `re + i·im`, both of length `size`, in place and unscaled. */
  transform(re: Float64Array, im: Float64Array): void {
    const { size } = this;
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
    const odd = Math.log2(size) % 2 === 1;
    if (odd) firstEight(re, im, size);
    else firstFour(re, im, size);
    this.#rest(re, im, odd ? 8 : 4);
  }

  /** Four sub-transforms of `quarter` points become one of 4 · quarter, until one is left. */
  #rest(re: Float64Array, im: Float64Array, first: number): void {
    const { size } = this;
    const w = this.#twiddles;
    let stage = 0;
    for (let quarter = first; quarter < size; quarter *= 4) {
      for (let base = 0; base < size; base += 4 * quarter) {
        let t = stage;
        const end = base + quarter;
        for (let a = base; a < end; a++, t += 6) {
          // Bit-reversed order: the second sub-transform holds x[4n+2], the third x[4n+1].
          const c = a + quarter;
          const b = c + quarter;
          const d = b + quarter;
          const br = re[b]! * w[t]! - im[b]! * w[t + 1]!;
          const bi = re[b]! * w[t + 1]! + im[b]! * w[t]!;
          const cr = re[c]! * w[t + 2]! - im[c]! * w[t + 3]!;
          const ci = re[c]! * w[t + 3]! + im[c]! * w[t + 2]!;
          const dr = re[d]! * w[t + 4]! - im[d]! * w[t + 5]!;
          const di = re[d]! * w[t + 5]! + im[d]! * w[t + 4]!;
          const evenR = re[a]! + cr;
          const evenI = im[a]! + ci;
          const crossR = re[a]! - cr;
          const crossI = im[a]! - ci;
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
      stage += 6 * quarter;
    }
  }
}

/** Transforms of four points: no multiplications. */
function firstFour(re: Float64Array, im: Float64Array, size: number): void {
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
    re[i + 1] = br + di;
    im[i + 1] = bi - dr;
    re[i + 2] = ar - cr;
    im[i + 2] = ai - ci;
    re[i + 3] = br - di;
    im[i + 3] = bi + dr;
  }
}

/** Transforms of eight points: two of four, joined by one radix-2 stage. */
function firstEight(re: Float64Array, im: Float64Array, size: number): void {
  firstFour(re, im, size);
  const h = Math.SQRT1_2;
  for (let i = 0; i < size; i += 8) {
    join(re, im, i, 1, 0);
    join(re, im, i + 1, h, -h);
    join(re, im, i + 2, 0, -1);
    join(re, im, i + 3, -h, -h);
  }
}

function join(re: Float64Array, im: Float64Array, i: number, wr: number, wi: number): void {
  const xr = re[i + 4]! * wr - im[i + 4]! * wi;
  const xi = re[i + 4]! * wi + im[i + 4]! * wr;
  re[i + 4] = re[i]! - xr;
  im[i + 4] = im[i]! - xi;
  re[i] = re[i]! + xr;
  im[i] = im[i]! + xi;
}

/** Of one bin. Plain, where Math.hypot takes several times as long. */
export function magnitude(re: number, im: number): number {
  return Math.sqrt(re * re + im * im);
}
