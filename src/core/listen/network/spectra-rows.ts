import { BINS, EDGE, INNER_RATE, LOW_MIDI, PER_SEMITONE } from './settings.ts';

/** Weights of a sparse matrix, a row a bin: `weight[begin[i]..begin[i + 1])` meet the numbers from `from[i]` on. */
export interface Rows {
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
export function bandRows(fftSize: number): Rows {
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
export function lagRows(lags: number): Rows {
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
