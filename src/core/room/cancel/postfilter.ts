/**
 * Attenuates what the canceller could not remove: distortion of the loudspeaker, reverberation after the end of the
 * modelled path, and what is not learned yet. It follows the spectrum of the band: each bin is attenuated only where the
 * band was loud a moment before, and only by as much as was left there before. The postfilter of an acoustic echo canceller (G. Enzner and P.
 * Vary, "Frequency-domain adaptive Kalman filter for acoustic echo control in hands-free telephones", Signal Processing
 * 86, 2006; power subtraction as in S. Boll, IEEE Trans. ASSP 27, 1979).
 */
import { RealFft } from '../../base/real-fft.ts';

/** Quantile of the ratio of what is left to what was predicted that is taken for the band: there the player rests. */
const QUANTILE = 0.2;
/** Step a block, dB, by which the quantile is followed. */
const STEP_DB = 1;
/** The ratio at the start, and the largest that is accepted. */
const FIRST_DB = -26;
const MOST_DB = -22;
const LEAST_DB = -45;
/** Factor by which the quantile is over-subtracted. */
const OVER = 4;
/** Largest attenuation of a bin. */
const LEAST_GAIN = 0.35;
/** Share of the band's power that a room keeps from one block to the next. */
const RINGS_ON = 0.75;
/** The ratio is measured where the band is within 13 dB of its peak in the bin; the peak decays within 2 s. */
const LOUD = 0.05;
const FORGET = 0.995;
const TINY = 1e-12;

export class Postfilter {
  readonly #size: number;
  readonly #fft: RealFft;
  readonly #window: Float64Array;
  readonly #left: Float64Array;
  readonly #foretold: Float64Array;
  readonly #windowed: Float64Array;
  readonly #e: Float64Array;
  readonly #f: Float64Array;
  readonly #ringing: Float64Array;
  readonly #loudest: Float64Array;
  readonly #ratioDb: Float64Array;
  readonly #tail: Float64Array;

  constructor(blockSize: number) {
    this.#size = blockSize;
    const fft = (this.#fft = new RealFft(2 * blockSize));
    this.#window = Float64Array.from({ length: fft.size }, (_, i) =>
      Math.sin((Math.PI * (i + 0.5)) / fft.size),
    );
    this.#left = new Float64Array(fft.size);
    this.#foretold = new Float64Array(fft.size);
    this.#windowed = new Float64Array(fft.size);
    this.#e = fft.spectrum();
    this.#f = fft.spectrum();
    this.#ringing = new Float64Array(fft.bins);
    this.#loudest = new Float64Array(fft.bins);
    this.#ratioDb = new Float64Array(fft.bins).fill(FIRST_DB);
    this.#tail = new Float64Array(blockSize);
  }

  /**
   * @param left a block of the canceller's output @param foretold the predicted band that was subtracted from it
   * @param out receives the block before this one, attenuated
   */
  process(left: Float32Array, foretold: Float32Array, out: Float32Array): void {
    const size = this.#size;
    const fft = this.#fft;
    this.#transform(this.#left, left, this.#e);
    this.#transform(this.#foretold, foretold, this.#f);
    const [e, f] = [this.#e, this.#f];
    for (let k = 0; k < fft.bins; k++) {
      const power = f[2 * k]! * f[2 * k]! + f[2 * k + 1]! * f[2 * k + 1]!;
      const heard = e[2 * k]! * e[2 * k]! + e[2 * k + 1]! * e[2 * k + 1]!;
      const band = (this.#ringing[k] = Math.max(power, RINGS_ON * this.#ringing[k]!));
      const loudest = (this.#loudest[k] = Math.max(power, FORGET * this.#loudest[k]!));
      if (band < TINY) continue;
      let db = this.#ratioDb[k]!;
      if (power > LOUD * loudest) {
        const ratio = 10 * Math.log10((heard + TINY) / band);
        db += ratio > db ? QUANTILE * STEP_DB : -(1 - QUANTILE) * STEP_DB;
        this.#ratioDb[k] = db = Math.max(LEAST_DB, Math.min(MOST_DB, db));
      }
      const rest = OVER * band * 10 ** (db / 10);
      const gain = Math.sqrt(Math.max(LEAST_GAIN * LEAST_GAIN, 1 - rest / (heard + TINY)));
      e[2 * k]! *= gain;
      e[2 * k + 1]! *= gain;
    }
    fft.inverse(e, this.#windowed);
    for (let i = 0; i < size; i++) {
      out[i] = this.#tail[i]! + this.#window[i]! * this.#windowed[i]!;
      this.#tail[i] = this.#window[size + i]! * this.#windowed[size + i]!;
    }
  }

  #transform(line: Float64Array, block: Float32Array, spectrum: Float64Array): void {
    line.copyWithin(0, this.#size);
    for (let i = 0; i < this.#size; i++) line[this.#size + i] = block[i]!;
    for (let i = 0; i < line.length; i++) this.#windowed[i] = line[i]! * this.#window[i]!;
    this.#fft.forward(this.#windowed, spectrum);
  }
}
