import { Fft } from '../../base/fft.ts';

/**
 * Normalised square difference (McLeod & Wyvill 2005, eq. 9) of two windows at once. Both are real, so they share one
 * complex transform forward; their power spectra, real and even, need cosines alone, which is a transform of half the
 * size back (Cooley, Lewis & Welch 1970), again for both at once.
 */
export class PairCorrelator {
  readonly #window: Float64Array;
  readonly #fft: Fft;
  readonly #half: Fft;
  readonly #re: Float64Array;
  readonly #im: Float64Array;
  readonly #halfRe: Float64Array;
  readonly #halfIm: Float64Array;
  readonly #sin: Float64Array;
  readonly #cos: Float64Array;
  readonly #a: Float64Array;
  readonly #b: Float64Array;

  /** Windows of `length` samples; `size` holds a window and the longest lag. */
  constructor(size: number, length: number) {
    this.#window = new Float64Array(length).fill(1);
    const half = size / 2;
    this.#fft = new Fft(size);
    this.#half = new Fft(half);
    this.#re = new Float64Array(size);
    this.#im = new Float64Array(size);
    this.#halfRe = new Float64Array(half);
    this.#halfIm = new Float64Array(half);
    this.#sin = Float64Array.from({ length: half }, (_, k) => 2 * Math.sin((Math.PI * k) / half));
    this.#cos = Float64Array.from({ length: half }, (_, k) => 2 * Math.cos((Math.PI * k) / half));
    this.#a = new Float64Array(half + 1);
    this.#b = new Float64Array(half + 1);
  }

  /**
   * The window that starts at `startA` of `samples` gives `outA` (one value a lag, lag 0 to its last
   * index, at most half the size); b likewise.
   */
  correlate(
    samples: Float32Array,
    startA: number,
    outA: Float32Array,
    startB: number,
    outB: Float32Array,
  ): void {
    const re = this.#re;
    const im = this.#im;
    this.#fft.transformPair(samples, startA, startB, this.#window, re, im);
    this.#cosines(outA.length);
    const { length } = this.#window;
    normalise(samples, startA, length, this.#a, 8 * this.#fft.size, outA);
    normalise(samples, startB, length, this.#b, 8 * this.#fft.size, outB);
  }

  /**
   * The spectrum X = A + iB of two real windows → their correlations #a and #b up to `lags`, times 8 · size.
   */
  #cosines(lags: number): void {
    const re = this.#re;
    const im = this.#im;
    const y = this.#halfRe;
    const z = this.#halfIm;
    const { size, places } = this.#half;
    const whole = 2 * size;
    // A and B are Hermitian: 4|A|² and 4|B|² come from X[k] and X[−k]. Here of the two ends, then of the middle.
    const firstA = 4 * re[0]! * re[0]!;
    const firstB = 4 * im[0]! * im[0]!;
    const lastA = 4 * re[size]! * re[size]!;
    const lastB = 4 * im[size]! * im[size]!;
    const middle = size / 2;
    let oddA = firstA - lastA;
    let oddB = firstB - lastB;
    y[0] = firstA + lastA;
    z[0] = firstB + lastB;
    const place = places[middle]!;
    y[place] = 2 * square(re[middle]! + re[whole - middle]!, im[middle]! - im[whole - middle]!);
    z[place] = 2 * square(im[middle]! + im[whole - middle]!, re[whole - middle]! - re[middle]!);
    for (let k = 1; k < middle; k++) {
      // Bins k and size − k, each with its mirror.
      const kr = re[k]!;
      const ki = im[k]!;
      const lr = re[whole - k]!;
      const li = im[whole - k]!;
      const a = square(kr + lr, ki - li);
      const b = square(ki + li, lr - kr);
      const n = size - k;
      const nr = re[n]!;
      const ni = im[n]!;
      const or = re[size + k]!;
      const oi = im[size + k]!;
      const c = square(nr + or, ni - oi);
      const d = square(ni + oi, or - nr);
      const cos = this.#cos[k]!;
      const sin = this.#sin[k]!;
      const riseA = a - c;
      const riseB = b - d;
      oddA += cos * riseA;
      oddB += cos * riseB;
      const near = places[k]!;
      const far = places[n]!;
      y[near] = a + c - sin * riseA;
      z[near] = b + d - sin * riseB;
      y[far] = a + c + sin * riseA;
      z[far] = b + d + sin * riseB;
    }
    this.#half.transformLaid(y, z);
    // Its real parts are the even lags, its imaginary ones the steps from one odd lag to the next.
    const outA = this.#a;
    const outB = this.#b;
    outA[0] = 2 * y[0]!;
    outB[0] = 2 * z[0]!;
    oddA *= 2;
    oddB *= 2;
    outA[1] = oddA;
    outB[1] = oddB;
    for (let j = 1; 2 * j < lags; j++) {
      const yj = y[j]!;
      const zj = z[j]!;
      const yn = y[size - j]!;
      const zn = z[size - j]!;
      oddA += zn - zj;
      oddB += yj - yn;
      outA[2 * j] = yj + yn;
      outB[2 * j] = zj + zn;
      outA[2 * j + 1] = oddA;
      outB[2 * j + 1] = oddB;
    }
  }
}

/**
 * The same of one long window. Its even and odd samples pass for the two parts of a complex signal half as long, and its
 * power spectrum goes back by cosines (see above), which are real, through a transform of a quarter of the size.
 */
export class LongCorrelator {
  readonly #length: number;
  readonly #fft: Fft;
  readonly #quarter: Fft;
  readonly #re: Float64Array;
  readonly #im: Float64Array;
  readonly #backRe: Float64Array;
  readonly #backIm: Float64Array;
  readonly #cos: Float64Array;
  readonly #sin: Float64Array;
  readonly #out: Float64Array;

  /** A window of `length` samples, an even number; `size` holds it and the longest lag, under half of it. */
  constructor(size: number, length: number) {
    const half = size / 2;
    this.#length = length;
    this.#fft = new Fft(half);
    this.#quarter = new Fft(half / 2);
    this.#re = new Float64Array(half);
    this.#im = new Float64Array(half);
    this.#backRe = new Float64Array(half / 2);
    this.#backIm = new Float64Array(half / 2);
    this.#cos = Float64Array.from({ length: half }, (_, k) => Math.cos((Math.PI * k) / half));
    this.#sin = Float64Array.from({ length: half }, (_, k) => Math.sin((Math.PI * k) / half));
    this.#out = new Float64Array(half + 2);
  }

  /** The window that starts at `start` of `samples` gives `out`, one value a lag. */
  correlate(samples: Float32Array, start: number, out: Float32Array): void {
    const re = this.#re.fill(0);
    const im = this.#im.fill(0);
    const { size, places } = this.#fft;
    for (let n = 0; 2 * n < this.#length; n++) {
      const place = places[n]!;
      re[place] = samples[start + 2 * n]!;
      im[place] = samples[start + 2 * n + 1]!;
    }
    this.#fft.transformLaid(re, im);
    this.#cosines(out.length);
    normalise(samples, start, this.#length, this.#out, 16 * size, out);
  }

  /** Spectra E of the even samples and O of the odd ones → #out, the correlation up to `lags` times 16 · size. */
  #cosines(lags: number): void {
    const re = this.#re;
    const im = this.#im;
    const { size } = this.#fft;
    const middle = size / 2;
    const { places } = this.#quarter;
    // Even bins are laid in y and odd ones in z.
    const y = this.#backRe;
    const z = this.#backIm;
    const first = 4 * (re[0]! + im[0]!) ** 2;
    const last = 4 * (re[0]! - im[0]!) ** 2;
    let odd = first - last;
    y[0] = first + last;
    y[places[middle >> 1]!] = 8 * square(re[middle]!, im[middle]!);
    for (let k = 1; k < middle; k++) {
      const kr = re[k]!;
      const ki = im[k]!;
      const nr = re[size - k]!;
      const ni = im[size - k]!;
      const evenR = kr + nr;
      const evenI = ki - ni;
      const oddR = ki + ni;
      const oddI = nr - kr;
      const cos = this.#cos[k]!;
      const sin = this.#sin[k]!;
      // |E + O·e^−iω/2|² at bin k and at size − k: their sum and their difference.
      const sum = 2 * (square(evenR, evenI) + square(oddR, oddI));
      const rise = 4 * ((evenR * oddR + evenI * oddI) * cos + (evenR * oddI - evenI * oddR) * sin);
      odd += 2 * cos * rise;
      const side = (k & 1) === 0 ? y : z;
      side[places[k >> 1]!] = sum - 2 * sin * rise;
      side[places[(size - k) >> 1]!] = sum + 2 * sin * rise;
    }
    this.#quarter.transformLaid(y, z);
    const out = this.#out;
    out[0] = 2 * (y[0]! + z[0]!);
    out[1] = 2 * odd;
    for (let j = 1; 2 * j < lags; j++) {
      const yj = y[j]!;
      const zj = z[j]!;
      const yn = y[middle - j]!;
      const zn = z[middle - j]!;
      const cos = this.#cos[2 * j]!;
      const sin = this.#sin[2 * j]!;
      out[2 * j] = yj + yn + cos * (zj + zn) - sin * (yj - yn);
      out[2 * j + 1] = out[2 * j - 1]! + zn - zj + cos * (yj - yn) + sin * (zj + zn);
    }
  }
}

function square(re: number, im: number): number {
  return re * re + im * im;
}

/** r(τ) → 2 r(τ) / m(τ), m by its recurrence (McLeod & Wyvill, end of section 6). */
export function normalise(
  samples: Float32Array,
  start: number,
  length: number,
  correlation: Float64Array | readonly number[],
  scale: number,
  out: Float32Array,
): void {
  const twice = 2 / scale;
  let energy = twice * correlation[0]!;
  const floor = energy * 1e-6 + 1e-12;
  for (let lag = 0; lag < out.length; lag++) {
    out[lag] = energy > floor ? (twice * correlation[lag]!) / energy : 0;
    const head = samples[start + lag]!;
    const tail = samples[start + length - 1 - lag]!;
    energy -= head * head + tail * tail;
  }
}
