import * as S from './settings.ts';
import kernel from './spectra-kernel.json' with { type: 'json' };
import { bandRows, lagRows, type Rows } from './spectra-rows.ts';
import { instanceOf } from './wasm.ts';

/** Built from fixtures/network/spectra.as; tables lie as it says there, places are in bytes. */
interface Kernel {
  readonly memory: { readonly buffer: ArrayBuffer };
  tablesAt(short: number): number;
  windowAt(): number;
  ownAt(): number;
  realCosAt(): number;
  realSinAt(): number;
  cosAt(): number;
  sinAt(): number;
  firstTurnsAt(): number;
  bandFromAt(): number;
  bandBeginAt(): number;
  bandWeightAt(): number;
  lagFromAt(): number;
  lagWeightAt(): number;
  inputAt(): number;
  inputLength(): number;
  outputAt(): number;
  correlationAt(): number;
  frame(end: number, referenceDb: number): void;
}

/** Samples of the Hann window, each in its middle. */
const hann = (size: number): Float64Array =>
  Float64Array.from({ length: size }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * (i + 0.5)) / size));

/** A window's autocorrelation by lag, 1 at lag 0: what that of a windowed sound is divided by (Boersma 1993). */
function ownCorrelation(window: Float64Array, lags: number): Float64Array {
  const own = new Float64Array(lags);
  for (let lag = 0; lag < lags; lag++)
    for (let i = 0; i + lag < window.length; i++) own[lag]! += window[i]! * window[i + lag]!;
  return own.map((value) => value / own[0]!);
}

/**
 * The two windows of a frame, by WebAssembly: their powers in bins of a third of a semitone, in decibels about a reference and
 * brought to about −1.5 to 3, and their autocorrelations at the bins' periods.
 */
export class Spectra {
  /** Room for the sound at the inner rate; frames are looked at where they lie. */
  readonly samples: Float32Array;
  /** Four padded rows: power of the long window and of the short one, and their autocorrelations. The next frame overwrites them. */
  readonly bins: Float32Array;
  /** The long window's autocorrelation by lag, 1 at lag 0 for a sound that is loud enough. */
  readonly correlation: Float32Array;
  readonly #kernel: Kernel;

  constructor() {
    this.#kernel = instanceOf<Kernel>(kernel);
    const { buffer } = this.#kernel.memory;
    this.samples = new Float32Array(buffer, this.#kernel.inputAt(), this.#kernel.inputLength());
    this.bins = new Float32Array(buffer, this.#kernel.outputAt(), 4 * S.ROW);
    this.correlation = new Float32Array(buffer, this.#kernel.correlationAt(), S.LONG_LAGS);
    this.#fill(this.#kernel.tablesAt(0), S.LONG, S.LONG_LAGS);
    this.#fill(this.#kernel.tablesAt(1), S.SHORT, S.SHORT_LAGS);
  }

  /** Looks at the windows that end before sample `end`; `referenceDb` in dBFS. */
  look(end: number, referenceDb: number): void {
    this.#kernel.frame(end, referenceDb);
  }

  /** The tables of the window of `size` samples, padded to twice its length; `lags` are kept of its autocorrelation. */
  #fill(tables: number, size: number, lags: number): void {
    const kernel = this.#kernel;
    const { buffer } = kernel.memory;
    const floats = (at: number, length: number) => new Float32Array(buffer, tables + at, length);
    const window = hann(size);
    floats(kernel.windowAt(), size).set(window);
    floats(kernel.ownAt(), lags).set(ownCorrelation(window, lags).map((own) => 1 / own));
    // The kernel keeps room for the long window; the shorter one's tables begin at the same places.
    const turns = (cosAt: number, sinAt: number, count: number, angle: number) => {
      floats(cosAt, count).set(Float64Array.from({ length: count }, (_, k) => Math.cos(k * angle)));
      floats(sinAt, count).set(Float64Array.from({ length: count }, (_, k) => -Math.sin(k * angle)));
    };
    turns(kernel.realCosAt(), kernel.realSinAt(), size, Math.PI / size);
    turns(kernel.cosAt(), kernel.sinAt(), size, (2 * Math.PI) / size);
    for (let times = 1; times <= 3; times++) {
      const at = kernel.firstTurnsAt() + 2 * (times - 1) * size;
      turns(at, at + size, size / 4, (2 * Math.PI * times) / size);
    }
    this.#lay(bandRows(2 * size), tables);
    const lagging = lagRows(lags);
    new Int32Array(buffer, tables + kernel.lagFromAt(), S.BINS).set(lagging.from);
    for (let i = 0; i < S.BINS; i++)
      floats(kernel.lagWeightAt() + 16 * i, 4).set(
        lagging.weight.subarray(lagging.begin[i]!, lagging.begin[i + 1]!),
      );
  }

  #lay(rows: Rows, tables: number): void {
    const kernel = this.#kernel;
    const { buffer } = kernel.memory;
    new Int32Array(buffer, tables + kernel.bandFromAt(), S.BINS).set(rows.from);
    new Int32Array(buffer, tables + kernel.bandBeginAt(), S.BINS + 1).set(rows.begin);
    new Float32Array(buffer, tables + kernel.bandWeightAt(), rows.weight.length).set(rows.weight);
  }
}
