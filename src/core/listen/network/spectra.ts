import { RealFft } from '../../base/real-fft.ts';
import { BINS, EDGE, INNER_RATE, LOW_MIDI, PER_SEMITONE } from './settings.ts';

/** Weights of a sparse matrix, a row a bin: `weight[begin[i]..begin[i + 1])` meet the numbers from `from[i]` on. */
interface Rows {
  readonly from: Int32Array;
  readonly begin: Int32Array;
  readonly weight: Float64Array;
}

const hzOfBin = (bin: number): number => 440 * 2 ** ((LOW_MIDI + (bin - EDGE) / PER_SEMITONE - 69) / 12);

function rowsOf(each: (bin: number) => { from: number; weights: number[] }): Rows {
  const from = new Int32Array(BINS);
  const begin = new Int32Array(BINS + 1);
  const all: number[] = [];
  for (let i = 0; i < BINS; i++) {
    const row = each(i);
    from[i] = row.from;
    all.push(...row.weights);
    begin[i + 1] = all.length;
  }
  return { from, begin, weight: Float64Array.from(all) };
}

/** Triangles over the power spectrum, a sixth of a semitone to each side but at least one FFT bin, each of sum 1. */
function bandRows(fftSize: number): Rows {
  return rowsOf((bin) => {
    const centre = (hzOfBin(bin) * fftSize) / INNER_RATE;
    const half = Math.max(1, centre * (2 ** (1 / (12 * PER_SEMITONE)) - 1));
    const from = Math.max(0, Math.floor(centre - half) + 1);
    const to = Math.min(fftSize / 2, Math.ceil(centre + half) - 1);
    const weights: number[] = [];
    for (let k = from; k <= to; k++) weights.push(Math.max(0, 1 - Math.abs(k - centre) / half));
    const sum = weights.reduce((a, b) => a + b, 0);
    return { from, weights: weights.map((w) => w / sum) };
  });
}

/** Cubic interpolation (Catmull & Rom 1974) of an autocorrelation at each bin's period; nothing past the last lag. */
function lagRows(lags: number): Rows {
  return rowsOf((bin) => {
    const period = INNER_RATE / hzOfBin(bin);
    const j = Math.floor(period);
    const x = period - j;
    if (j + 2 >= lags) return { from: 0, weights: [] };
    return {
      from: j - 1,
      weights: [
        -0.5 * x + x * x - 0.5 * x ** 3,
        1 - 2.5 * x * x + 1.5 * x ** 3,
        0.5 * x + 2 * x * x - 1.5 * x ** 3,
        -0.5 * x * x + 0.5 * x ** 3,
      ],
    };
  });
}

function apply(rows: Rows, numbers: Float64Array, out: Float64Array): void {
  const { from, begin, weight } = rows;
  for (let i = 0; i < BINS; i++) {
    let sum = 0;
    const end = begin[i + 1]!;
    for (let w = begin[i]!, k = from[i]!; w < end; w++, k++) sum += weight[w]! * numbers[k]!;
    out[i] = sum;
  }
}

/** One window of sound: its power and its normalised autocorrelation in bins of a third of a semitone. */
export class WindowSpectra {
  readonly power = new Float64Array(BINS);
  readonly periodicity = new Float64Array(BINS);
  /** The autocorrelation by lag, 1 at lag 0 for a sound that is loud enough (Boersma 1993). */
  readonly correlation: Float64Array;
  readonly #size: number;
  readonly #fft: RealFft;
  readonly #window: Float64Array;
  readonly #own: Float64Array;
  readonly #bands: Rows;
  readonly #lags: Rows;
  readonly #gain: number;
  readonly #signal: Float64Array;
  readonly #spectrum: Float64Array;
  readonly #powers: Float64Array;

  /** A window of `size` samples, padded to twice its length; `lags` are kept of its autocorrelation. */
  constructor(size: number, lags: number) {
    const fftSize = 2 * size;
    this.#size = size;
    this.#fft = new RealFft(fftSize);
    this.#window = Float64Array.from(
      { length: size },
      (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / size),
    );
    this.#bands = bandRows(fftSize);
    this.#lags = lagRows(lags);
    this.#gain = 2 / (size * 0.375) / size;
    this.#signal = new Float64Array(fftSize);
    this.#spectrum = this.#fft.spectrum();
    this.#powers = new Float64Array(fftSize);
    this.correlation = new Float64Array(lags);
    this.#own = new Float64Array(lags).fill(1);
    this.#signal.set(this.#window);
    this.#correlate();
    const own = this.correlation.slice();
    for (let lag = 0; lag < lags; lag++) this.#own[lag] = own[lag]! / own[0]!;
  }

  /** The window that ends before sample `end` of `samples`. */
  look(samples: Float32Array, end: number): void {
    const signal = this.#signal;
    const start = end - this.#size;
    for (let i = 0; i < this.#size; i++) signal[i] = samples[start + i]! * this.#window[i]!;
    signal.fill(0, this.#size);
    this.#correlate();
    apply(this.#bands, this.#powers, this.power);
    for (let i = 0; i < BINS; i++) this.power[i]! *= this.#gain;
    const scale = 1 / (this.correlation[0]! + 1e-7 * this.#size);
    for (let lag = 0; lag < this.correlation.length; lag++)
      this.correlation[lag] = (this.correlation[lag]! * scale) / this.#own[lag]!;
    apply(this.#lags, this.correlation, this.periodicity);
  }

  /** Powers of the signal, and their transform: the autocorrelation, since they are real and even. */
  #correlate(): void {
    const { size, bins } = this.#fft;
    const spectrum = this.#spectrum;
    const powers = this.#powers;
    this.#fft.forward(this.#signal, spectrum);
    for (let k = 0; k < bins; k++) {
      const re = spectrum[2 * k]!;
      const im = spectrum[2 * k + 1]!;
      powers[k] = re * re + im * im;
    }
    for (let k = 1; k < bins - 1; k++) powers[size - k] = powers[k]!;
    this.#fft.forward(powers, spectrum);
    for (let lag = 0; lag < this.correlation.length; lag++) this.correlation[lag] = spectrum[2 * lag]! / size;
  }
}
