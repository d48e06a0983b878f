import { Autocorrelator } from 'pitchy';
import { hzToMidi } from '../../music/temperament.ts';
import { LongCorrelator, normalise, PairCorrelator } from './correlate.ts';
import { Flux } from './flux.ts';
import { emptyFrame, type Frame } from './frame.ts';
import { levelDb } from './level.ts';
import { emptyPeaks, findPeaks, refineLag } from './peaks.ts';
import { Resampler } from '../../base/resample.ts';
import { PartialFinder, type Partials } from './partials.ts';
import { AttackSpectra, type AttackWindow } from './attack-spectra.ts';
import * as S from '../tuning/frames.ts';

/** Sound as time series beside the frames: where attacks are looked for. Rings: an index is taken modulo the length. */
export interface Traces {
  /** Ticks written so far. Tick i covers the 21 ms that end at (i + 1) · TICK_HOP inner samples. */
  ticks: number;
  readonly flux: Float32Array;
  /** Blocks written so far; block i begins at i · BLOCK inner samples. */
  blocks: number;
  /** Mean square of the sound and of its first difference (the bright part) in each block. */
  readonly energy: Float32Array;
  readonly bright: Float32Array;
}

const LOW_LONGEST = S.LONGEST_LAG / S.LOW_FACTOR;

/**
 * Samples at any rate → frames every 8 ms and the traces, streaming. All buffers are made here; `onFrame` sees one
 * frame that is written over afterwards.
 */
export class Analyser {
  readonly traces: Traces;
  readonly #resampler: Resampler;
  readonly #samples = new Float32Array(S.BUFFER);
  readonly #memory = new Float32Array(S.MEMORY);
  readonly #partials = new PartialFinder();
  readonly #halved = new Float32Array(S.BUFFER / S.LOW_FACTOR);
  /** Inner samples that have left the front of the buffer; a multiple of the hop. */
  #dropped = 0;
  #filled = 0;
  #done = 0;
  readonly #flux = new Flux();
  readonly #spectra = new AttackSpectra();
  readonly #about = new Float32Array(2 * (S.LONG_ATTACK_WINDOW + S.ATTACK_GAP));
  readonly #pair = new PairCorrelator(S.PAIR_SIZE, S.WINDOW);
  readonly #low = new LongCorrelator(2 * S.LOW_WINDOW, S.LOW_WINDOW);
  readonly #curveBefore = new Float32Array(S.WINDOW_LONGEST_LAG + 2);
  readonly #curve = new Float32Array(S.WINDOW_LONGEST_LAG + 2);
  readonly #lowCurve = new Float32Array(S.LONGEST_LAG / S.LOW_FACTOR + 4);
  readonly #peaks = emptyPeaks();
  readonly #lowPeaks = emptyPeaks();
  /** The frame whose low peaks these are, −2 when they are used up. */
  #lowIndex = -2;
  readonly #waiting: Frame[] = [];
  readonly #peeked = emptyFrame();
  readonly #single = Autocorrelator.forNumberArray(S.WINDOW);
  readonly #correlation: number[] = new Array<number>(S.WINDOW).fill(0);
  #hop = 0;
  #lastIn = 0;
  #lastOut = 0;
  #previousSample = 0;

  constructor(sampleRate: number) {
    this.#resampler = new Resampler(sampleRate, S.INNER_RATE, S.PASS_HZ, S.STOP_HZ);
    for (let i = 0; i <= S.LOW_TRAIL + 1; i++) this.#waiting.push(emptyFrame());
    this.traces = {
      ticks: 0,
      flux: new Float32Array(S.TICKS_KEPT),
      blocks: 0,
      energy: new Float32Array(S.BLOCKS_KEPT),
      bright: new Float32Array(S.BLOCKS_KEPT),
    };
    // The first windows reach back before the first sample.
    this.#filled = S.KEEP;
    this.#done = S.KEEP;
    this.#dropped = -S.KEEP;
  }

  push(samples: Float32Array, onFrame: (frame: Frame) => void): void {
    const largest = this.#resampler.largestInput;
    for (let from = 0; from < samples.length; from += largest) {
      const to = Math.min(samples.length, from + largest);
      const written = this.#resampler.process(samples, from, to, this.#samples, this.#filled);
      this.#takeIn(written);
      while (this.#done + S.FRAME_HOP <= this.#filled) {
        this.#done += S.FRAME_HOP;
        this.#analyse(this.#done, onFrame);
      }
      this.#makeRoom();
    }
  }

  /**
   * The sound about an attack at `seconds`, looked at over `length` inner samples on each side; null where it has not come in
   * or is forgotten. Written over by the next call.
   */
  spectraAt(seconds: number, length: AttackWindow): AttackSpectra | null {
    const from = Math.round(seconds * S.INNER_RATE) - length - S.ATTACK_GAP;
    const count = 2 * (length + S.ATTACK_GAP);
    const now = this.#dropped + this.#done;
    if (from < now - S.MEMORY + S.BUFFER || from + count > now) return null;
    for (let i = 0; i < count; i++)
      this.#about[i] = from + i < 0 ? 0 : this.#memory[(from + i) & (S.MEMORY - 1)]!;
    this.#spectra.look(this.#about, length);
    return this.#spectra;
  }

  /** Partials of `length` inner samples from `seconds` on; null where they have not come in or are forgotten. */
  partialsAt(seconds: number, length: number): Partials | null {
    const from = Math.round(seconds * S.INNER_RATE);
    const now = this.#dropped + this.#done;
    if (from < Math.max(0, now - S.MEMORY + S.BUFFER) || from + length > now) return null;
    return this.#partials.find((i) => this.#memory[(from + i) % S.MEMORY]!, length);
  }

  /**
   * The window that ends at the newest sample, for the live screen: frames come two at a time, so this is up to 16 ms
   * newer. Neither settled by the path nor helped by the low window; written over by the next call.
   */
  peek(): Frame {
    const { WINDOW } = S;
    const start = this.#filled - WINDOW;
    const frame = this.#peeked;
    frame.seconds = (this.#dropped + this.#filled - WINDOW / 2) / S.INNER_RATE;
    frame.levelDb = levelDb(this.#samples, start + S.LEVEL_MARGIN, WINDOW - 2 * S.LEVEL_MARGIN);
    frame.count = 0;
    if (frame.levelDb > S.EMPTY_DB) {
      this.#single.autocorrelate(this.#samples.subarray(start, start + WINDOW), this.#correlation);
      normalise(this.#samples, start, WINDOW, this.#correlation, 1, this.#curve);
      this.#candidates(frame, this.#curve);
    }
    return frame;
  }

  /** DC removed (one pole at 20 Hz), block energies, and the halved copy for the bass. */
  #takeIn(count: number): void {
    const samples = this.#samples;
    const end = this.#filled + count;
    let lastIn = this.#lastIn;
    let lastOut = this.#lastOut;
    for (let i = this.#filled; i < end; i++) {
      const x = samples[i]!;
      lastOut = x - lastIn + S.DC_POLE * lastOut;
      lastIn = x;
      samples[i] = lastOut;
    }
    this.#remember(count);
    this.#lastIn = lastIn;
    this.#lastOut = lastOut;
    this.#filled = end;
  }

  /** A ring; one piece may reach over its end. */
  #remember(count: number): void {
    const from = (this.#dropped + this.#filled) & (S.MEMORY - 1);
    const fits = Math.min(count, S.MEMORY - from);
    const end = this.#filled + count;
    this.#memory.set(this.#samples.subarray(this.#filled, this.#filled + fits), from);
    this.#memory.set(this.#samples.subarray(this.#filled + fits, end), 0);
  }

  #makeRoom(): void {
    if (this.#filled < S.BUFFER / 2) return;
    const drop = this.#done - S.KEEP;
    this.#samples.copyWithin(0, drop, this.#filled);
    this.#halved.copyWithin(0, drop / 2, Math.ceil(this.#filled / 2));
    this.#filled -= drop;
    this.#done -= drop;
    this.#dropped += drop;
  }

  /** One hop whose windows end at `end` of the buffer; every second hop answers for two frames at once. */
  #analyse(end: number, onFrame: (frame: Frame) => void): void {
    this.#trace(end);
    this.#halve(end);
    const start = end - S.WINDOW;
    const frame = this.#waiting[this.#hop % this.#waiting.length]!;
    frame.index = this.#hop;
    frame.count = 0;
    frame.seconds = (this.#dropped + end - S.WINDOW / 2) / S.INNER_RATE;
    frame.levelDb = levelDb(this.#samples, start + S.LEVEL_MARGIN, S.WINDOW - 2 * S.LEVEL_MARGIN);
    this.#hop++;
    if (this.#hop % 2 === 1) return;
    const before = this.#waiting[(this.#hop - 2) % this.#waiting.length]!;
    if (frame.levelDb > S.EMPTY_DB || before.levelDb > S.EMPTY_DB) {
      const early = start - S.FRAME_HOP;
      this.#pair.correlate(this.#samples, early, this.#curveBefore, start, this.#curve);
      this.#candidates(before, this.#curveBefore);
      this.#candidates(frame, this.#curve);
    }
    this.#settle(this.#hop - 2 - S.LOW_TRAIL, end - S.FRAME_HOP, onFrame);
    this.#settle(this.#hop - 1 - S.LOW_TRAIL, end, onFrame);
  }

  /** Hands over the frame about whose centre the low window that ends at `end` lies. */
  #settle(index: number, end: number, onFrame: (frame: Frame) => void): void {
    if (index < 0) return;
    const settled = this.#waiting[index % this.#waiting.length]!;
    this.#addLow(settled, end);
    onFrame(settled);
  }

  #candidates(frame: Frame, curve: Float32Array): void {
    findPeaks(curve, S.SHORTEST_LAG, S.WINDOW_LONGEST_LAG, this.#peaks);
    const peaks = this.#peaks;
    for (let i = 0; i < peaks.count; i++) {
      frame.midi[i] = hzToMidi(S.INNER_RATE / refineLag(curve, peaks.lag[i]!, S.WINDOW_LONGEST_LAG));
      frame.clarity[i] = peaks.height[i]!;
    }
    frame.count = peaks.count;
  }

  /** Candidates under 150 Hz come from the long window about the same centre. */
  #addLow(frame: Frame, end: number): void {
    if (frame.levelDb < S.EMPTY_DB) return;
    const limit = hzToMidi(S.INNER_RATE / S.LOW_SHORTEST_LAG);
    for (let i = 0; i < frame.count; i++) if (frame.midi[i]! > limit && frame.clarity[i]! > S.CLEAR) return;
    if (frame.index === this.#lowIndex + 1) this.#lowIndex = -2;
    else this.#lowPeaksAt(end, frame.index);
    let kept = 0;
    for (let i = 0; i < frame.count; i++) {
      if (frame.midi[i]! <= limit) continue;
      frame.midi[kept] = frame.midi[i]!;
      frame.clarity[kept++] = frame.clarity[i]!;
    }
    for (let i = 0; i < this.#lowPeaks.count && kept < S.CANDIDATES; i++) {
      const lag = refineLag(this.#lowCurve, this.#lowPeaks.lag[i]!, LOW_LONGEST);
      frame.midi[kept] = hzToMidi(S.INNER_RATE / S.LOW_FACTOR / lag);
      frame.clarity[kept++] = this.#lowPeaks.height[i]!;
    }
    frame.count = kept;
  }

  /** The low window about the frame's centre; it is so long that the next frame may use it too. */
  #lowPeaksAt(end: number, index: number): void {
    this.#lowIndex = index;
    this.#low.correlate(this.#halved, end / 2 - S.LOW_WINDOW, this.#lowCurve);
    findPeaks(this.#lowCurve, S.LOW_SHORTEST_LAG / S.LOW_FACTOR, LOW_LONGEST, this.#lowPeaks);
  }

  #trace(end: number): void {
    const { traces } = this;
    const samples = this.#samples;
    const size = this.#flux.size;
    this.#flux.pair(samples, end - S.TICK_HOP - size, end - size, traces.flux, traces.ticks % S.TICKS_KEPT);
    traces.ticks += 2;
    let previous = this.#previousSample;
    for (let block = end - S.FRAME_HOP; block < end; block += S.BLOCK) {
      let energy = 0;
      let bright = 0;
      for (let i = block; i < block + S.BLOCK; i++) {
        const x = samples[i]!;
        energy += x * x;
        bright += (x - previous) * (x - previous);
        previous = x;
      }
      const at = traces.blocks++ % S.BLOCKS_KEPT;
      traces.energy[at] = energy / S.BLOCK;
      traces.bright[at] = bright / S.BLOCK;
    }
    this.#previousSample = previous;
  }

  /** Half-band, 7 taps: the bass window only looks for periods, and what folds back is 30 dB down. */
  #halve(end: number): void {
    const x = this.#samples;
    for (let i = end - S.FRAME_HOP; i < end; i += 2) {
      this.#halved[i / 2] =
        S.HALF_BAND_MIDDLE * x[i - 3]! +
        S.HALF_BAND_NEAR * (x[i - 4]! + x[i - 2]!) +
        S.HALF_BAND_FAR * (x[i - 6]! + x[i]!);
    }
  }
}
