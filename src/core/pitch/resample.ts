/**
 * Any input rate to the listener's own rate, streaming: a polyphase windowed-sinc filter (Crochiere & Rabiner,
 * Multirate Digital Signal Processing, 1983; window: Kaiser 1974). Samples that are not finite become silence.
 */

/** Exact phases are kept up to this many; odd rates fall on the nearest of this many phases (error below −65 dB). */
const MOST_PHASES = 640;
/** Kaiser β for about 60 dB of stop band. */
const KAISER_BETA = 5.65;

function besselI0(x: number): number {
  let sum = 1;
  let term = 1;
  for (let k = 1; k < 30; k++) {
    term *= (x / (2 * k)) ** 2;
    sum += term;
  }
  return sum;
}

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

export class Resampler {
  readonly #taps: number;
  readonly #phases: number;
  readonly #kernel: Float64Array;
  readonly #history: Float64Array;
  readonly #step: number;
  readonly #wholeStep: number;
  readonly #stepTicks: number;
  readonly #ticksPerSample: number;
  #filled: number;
  #position: number;
  #ticks = 0;

  /**
   * From `inputRate` to `outputRate` Hz (both whole numbers after rounding). Flat to `passHz`, closed from
   * `stopHz`: energy between half the output rate and `stopHz` folds back above `outputRate − stopHz` only.
   */
  constructor(inputRate: number, outputRate: number, passHz: number, stopHz: number) {
    const from = Math.round(inputRate);
    const divisor = gcd(from, outputRate);
    this.#ticksPerSample = outputRate / divisor;
    this.#stepTicks = from / divisor;
    this.#step = from / outputRate;
    this.#wholeStep = Math.ceil(this.#step);
    this.#phases = Math.min(this.#ticksPerSample, MOST_PHASES);
    const nyquist = inputRate / 2;
    const stop = Math.min(stopHz, nyquist * 1.1);
    const pass = Math.min(passHz, nyquist * 0.85);
    const cutoff = (pass + stop) / 2 / inputRate;
    // Kaiser's length formula for 60 dB.
    const length = Math.ceil(52 / (2.285 * 2 * Math.PI * ((stop - pass) / inputRate)));
    this.#taps = 4 * Math.ceil(length / 4);
    const taps = this.#taps;
    this.#kernel = new Float64Array(this.#phases * taps);
    for (let phase = 0; phase < this.#phases; phase++) {
      let sum = 0;
      for (let k = 0; k < taps; k++) {
        const x = k - (taps / 2 - 1) - phase / this.#phases;
        const edge = x / (taps / 2);
        const window = Math.abs(edge) >= 1 ? 0 : besselI0(KAISER_BETA * Math.sqrt(1 - edge * edge));
        const sinc = x === 0 ? 2 * cutoff : Math.sin(2 * Math.PI * cutoff * x) / (Math.PI * x);
        this.#kernel[phase * taps + k] = sinc * window;
        sum += sinc * window;
      }
      for (let k = 0; k < taps; k++) this.#kernel[phase * taps + k]! /= sum;
    }
    // Half a kernel of silence before the first sample, so that output sample n lies at n / outputRate exactly.
    this.#history = new Float64Array(taps + 4096);
    this.#filled = taps / 2 - 1;
    this.#position = 0;
  }

  /** Input samples that one call of `process` takes at most. */
  get largestInput(): number {
    return 4096 - this.#wholeStep;
  }

  /** Output samples that wait for input still to come, in input samples: half the kernel. */
  get delaySamples(): number {
    return this.#taps / 2;
  }

  /** Feeds `input[from..to)`; writes to `output` from `at` and returns how many were written. */
  process(input: Float32Array, from: number, to: number, output: Float32Array, at: number): number {
    const taps = this.#taps;
    const history = this.#history;
    const kernel = this.#kernel;
    let filled = this.#filled;
    for (let i = from; i < to; i++) {
      const x = input[i]!;
      // x − x is 0 for every finite number and NaN for the rest.
      history[filled++] = x - x === 0 ? x : 0;
    }
    let position = this.#position;
    let written = 0;
    while (position + taps <= filled) {
      const phase =
        this.#phases === this.#ticksPerSample
          ? this.#ticks
          : Math.min(this.#phases - 1, Math.round((this.#ticks / this.#ticksPerSample) * this.#phases));
      const base = phase * taps;
      // Four sums side by side, so that no addition waits for the one before.
      let a = 0;
      let b = 0;
      let c = 0;
      let d = 0;
      for (let k = 0; k < taps; k += 4) {
        a += history[position + k]! * kernel[base + k]!;
        b += history[position + k + 1]! * kernel[base + k + 1]!;
        c += history[position + k + 2]! * kernel[base + k + 2]!;
        d += history[position + k + 3]! * kernel[base + k + 3]!;
      }
      output[at + written++] = a + b + (c + d);
      this.#ticks += this.#stepTicks;
      const whole = Math.floor(this.#ticks / this.#ticksPerSample);
      this.#ticks -= whole * this.#ticksPerSample;
      position += whole;
    }
    const drop = Math.min(position, filled);
    history.copyWithin(0, drop, filled);
    this.#filled = filled - drop;
    this.#position = position - drop;
    return written;
  }
}
