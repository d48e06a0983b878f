import { Halver } from './halve.ts';
import { kaiser, kaiserBeta, kaiserTaps } from './kaiser.ts';

/** Phases of the filter that are stored; ratios that need more use the nearest of this many (error below −65 dB). */
const MOST_PHASES = 640;
/** Stop-band attenuation of the polyphase filter, dB. */
const CLOSED_DB = 60;
/** Input samples that are processed at a time. */
const PIECE = 4096;

function gcd(a: number, b: number): number {
  return b === 0 ? a : gcd(b, a % b);
}

/**
 * A stream at any sample rate → the listener's rate. High rates are halved first, as often as possible, because short
 * filters suffice where pass band and stop band are far apart (Crochiere & Rabiner, "Optimum FIR digital filter
 * implementations for decimation", 1975). A polyphase windowed-sinc filter does the rest. Samples that are not finite
 * become 0.
 */
export class Resampler {
  readonly #halvers: readonly Halver[];
  readonly #taps: number;
  readonly #phases: number;
  readonly #kernel: Float64Array;
  readonly #history: Float64Array;
  readonly #wholeStep: number;
  readonly #stepTicks: number;
  readonly #ticksPerSample: number;
  readonly #delay: number;
  #filled: number;
  #position: number;
  #ticks = 0;

  /**
   * From `inputRate` to `outputRate`, both in Hz and rounded to whole numbers. The filter is flat up to `passHz` and
   * attenuates from `stopHz` on: energy between half the output rate and `stopHz` folds back above
   * `outputRate − stopHz` only.
   */
  constructor(inputRate: number, outputRate: number, passHz: number, stopHz: number) {
    // While the rate is halved, nothing may fold back below this share of the rate.
    const edge = Math.max(passHz, outputRate - stopHz);
    const halvers: Halver[] = [];
    let rate = inputRate;
    let delay = 0;
    const worth = () =>
      rate / 2 - 2 * edge >= stopHz - passHz && (rate >= 3 * outputRate || rate === 2 * outputRate);
    for (; worth(); rate /= 2) {
      const halver = new Halver(edge / rate, PIECE);
      delay += (halver.reach * inputRate) / rate;
      halvers.push(halver);
    }
    this.#halvers = halvers;
    const from = Math.round(inputRate);
    const to = outputRate * 2 ** halvers.length;
    const divisor = gcd(from, to);
    this.#ticksPerSample = to / divisor;
    this.#stepTicks = from / divisor;
    this.#wholeStep = Math.ceil(from / outputRate);
    // After halving, the rate may already be the output rate.
    const done = halvers.length > 0 && from === to;
    this.#phases = done ? 0 : Math.min(this.#ticksPerSample, MOST_PHASES);
    const nyquist = rate / 2;
    const stop = Math.min(stopHz, nyquist * 1.1);
    const pass = Math.min(passHz, nyquist * 0.85);
    const cutoff = (pass + stop) / 2 / rate;
    const taps = done ? 0 : 4 * Math.ceil(kaiserTaps(CLOSED_DB, (stop - pass) / rate) / 4);
    const beta = kaiserBeta(CLOSED_DB);
    this.#taps = taps;
    this.#delay = delay + (taps * inputRate) / rate / 2;
    this.#kernel = new Float64Array(this.#phases * taps);
    for (let phase = 0; phase < this.#phases; phase++) {
      let sum = 0;
      for (let k = 0; k < taps; k++) {
        const x = k - (taps / 2 - 1) - phase / this.#phases;
        const sinc = x === 0 ? 2 * cutoff : Math.sin(2 * Math.PI * cutoff * x) / (Math.PI * x);
        const tap = sinc * kaiser(beta, x / (taps / 2));
        this.#kernel[phase * taps + k] = tap;
        sum += tap;
      }
      for (let k = 0; k < taps; k++) this.#kernel[phase * taps + k]! /= sum;
    }
    // Half a kernel of silence before the first sample, so that output sample n lies at n / outputRate exactly.
    this.#history = new Float64Array(taps + PIECE);
    this.#filled = Math.max(0, taps / 2 - 1);
    this.#position = 0;
  }

  /** The largest number of input samples for one call of `process`. */
  get largestInput(): number {
    return PIECE - this.#wholeStep;
  }

  /** Input samples after the moment of an output sample that are needed to compute it. */
  get delaySamples(): number {
    return this.#delay;
  }

  /** Feeds `input[from..to)`; writes to `output` from `at` and returns how many were written. */
  process(input: Float32Array, from: number, to: number, output: Float32Array, at: number): number {
    const halvers = this.#halvers;
    const first = halvers[0];
    if (first) {
      lay(input.subarray(from, to), first.samples, first.filled);
      first.filled += to - from;
    } else {
      lay(input.subarray(from, to), this.#history, this.#filled);
      this.#filled += to - from;
    }
    for (let i = 0; i < halvers.length; i++) {
      const next = halvers[i + 1];
      if (next) next.filled += halvers[i]!.halve(next.samples, next.filled);
      // Halving may have reached the output rate.
      else if (this.#phases === 0) return halvers[i]!.halve(output, at);
      else this.#filled += halvers[i]!.halve(this.#history, this.#filled);
    }
    return this.#interpolate(output, at);
  }

  #interpolate(output: Float32Array, at: number): number {
    const taps = this.#taps;
    const history = this.#history;
    const kernel = this.#kernel;
    const filled = this.#filled;
    const perSample = this.#ticksPerSample;
    let position = this.#position;
    let ticks = this.#ticks;
    let written = at;
    while (position + taps <= filled) {
      const phase =
        this.#phases === perSample
          ? ticks
          : Math.min(this.#phases - 1, Math.round((ticks / perSample) * this.#phases));
      const base = phase * taps;
      // Four independent sums, so that no addition has to wait for the one before it.
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
      output[written++] = a + b + (c + d);
      ticks += this.#stepTicks;
      const whole = Math.floor(ticks / perSample);
      ticks -= whole * perSample;
      position += whole;
    }
    const drop = Math.min(position, filled);
    history.copyWithin(0, drop, filled);
    this.#filled = filled - drop;
    this.#position = position - drop;
    this.#ticks = ticks;
    return written - at;
  }
}

/**
 * Copies `input`; values that are not finite become 0. The sum shows whether there are any; mostly there are none, and
 * a block copy suffices.
 */
function lay(input: Float32Array, out: Float32Array | Float64Array, at: number): void {
  const { length } = input;
  let a = 0;
  let b = 0;
  let c = 0;
  let d = 0;
  let i = 0;
  for (; i + 3 < length; i += 4) {
    a += input[i]!;
    b += input[i + 1]!;
    c += input[i + 2]!;
    d += input[i + 3]!;
  }
  for (; i < length; i++) a += input[i]!;
  out.set(input, at);
  if (Number.isFinite(a + b + c + d)) return;
  for (i = 0; i < length; i++) if (!Number.isFinite(input[i])) out[at + i] = 0;
}
