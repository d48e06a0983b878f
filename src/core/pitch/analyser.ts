import { Autocorrelator } from 'pitchy';
import { normalise, PairCorrelator } from './correlate.ts';
import { Flux } from './flux.ts';
import { emptyFrame, type Frame } from './frame.ts';
import { emptyPeaks, findPeaks, refineLag } from './peaks.ts';
import { Resampler } from './resample.ts';
import * as S from './settings.ts';

/** Rings that outlive frames; index modulo the length, which is a power of two. */
export const TICKS_KEPT = 8192;
export const BLOCKS_KEPT = 4 * TICKS_KEPT;

/** Sound as time series beside the frames: where attacks are looked for. */
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

const BUFFER = 16384;
const KEEP = 2048;
/** Below this the window is called empty and costs nothing (−90 dBFS RMS). */
const EMPTY_POWER = 1e-9;
/** A clear pitch above this clarity and 150 Hz makes the low window needless. */
const CLEAR = 0.92;
/** From this clarity the short window answers alone. */
const ANSWERS = 0.75;
/** Hops by which the low window's centre trails the middle one's. */
const LOW_TRAIL = 3;

/**
 * Samples at any rate → frames every 8 ms and the traces, streaming. All buffers are made here; `onFrame` sees one
 * frame that is written over afterwards.
 */
export class Analyser {
  readonly traces: Traces;
  /** The newest short-window answer, for the live screen: not yet settled by the path. */
  readonly latest: Frame = emptyFrame();
  readonly #resampler: Resampler;
  readonly #samples = new Float32Array(BUFFER);
  readonly #halved = new Float32Array(BUFFER / S.LOW_FACTOR);
  /** Inner samples that have left the front of the buffer; a multiple of the hop. */
  #dropped = 0;
  #filled = 0;
  #done = 0;
  readonly #flux = new Flux();
  readonly #pair = new PairCorrelator(1024);
  readonly #low = Autocorrelator.forFloat32Array(S.LOW_WINDOW);
  readonly #lowInput = new Float32Array(S.LOW_WINDOW);
  readonly #lowOutput = new Float32Array(S.LOW_WINDOW);
  readonly #middleCurve = new Float32Array(S.LONGEST_LAG + 4);
  readonly #shortCurve = new Float32Array(S.SHORT_LONGEST_LAG + 2);
  readonly #shortBefore = new Float32Array(S.SHORT_LONGEST_LAG + 2);
  readonly #joint = new Float32Array(S.LONGEST_LAG + 4);
  readonly #lowCurve = new Float32Array(S.LONGEST_LAG / S.LOW_FACTOR + 4);
  readonly #peaks = emptyPeaks();
  readonly #waiting: Frame[] = [];
  #hop = 0;
  #lastIn = 0;
  #lastOut = 0;
  #previousSample = 0;

  constructor(sampleRate: number) {
    this.#resampler = new Resampler(sampleRate, S.INNER_RATE, S.PASS_HZ, S.STOP_HZ);
    for (let i = 0; i <= LOW_TRAIL; i++) this.#waiting.push(emptyFrame());
    this.traces = {
      ticks: 0,
      flux: new Float32Array(TICKS_KEPT),
      blocks: 0,
      energy: new Float32Array(BLOCKS_KEPT),
      bright: new Float32Array(BLOCKS_KEPT),
    };
    // The first windows reach back before the first sample.
    this.#filled = KEEP;
    this.#done = KEEP;
    this.#dropped = -KEEP;
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

  /** DC removed (one pole at 20 Hz), block energies, and the halved copy for the bass. */
  #takeIn(count: number): void {
    const samples = this.#samples;
    const end = this.#filled + count;
    let lastIn = this.#lastIn;
    let lastOut = this.#lastOut;
    for (let i = this.#filled; i < end; i++) {
      const x = samples[i]!;
      lastOut = x - lastIn + 0.9896 * lastOut;
      lastIn = x;
      samples[i] = lastOut;
    }
    this.#lastIn = lastIn;
    this.#lastOut = lastOut;
    this.#filled = end;
  }

  #makeRoom(): void {
    if (this.#filled < BUFFER / 2) return;
    const drop = this.#done - KEEP;
    this.#samples.copyWithin(0, drop, this.#filled);
    this.#halved.copyWithin(0, drop / 2, Math.ceil(this.#filled / 2));
    this.#filled -= drop;
    this.#done -= drop;
    this.#dropped += drop;
  }

  /** One hop whose windows end at `end` of the buffer. */
  #analyse(end: number, onFrame: (frame: Frame) => void): void {
    const samples = this.#samples;
    this.#trace(end);
    this.#halve(end);
    const middle = end - S.MIDDLE_WINDOW;
    const short = end - S.SHORT_WINDOW;
    const frame = this.#waiting[this.#hop % this.#waiting.length]!;
    frame.index = this.#hop;
    frame.count = 0;
    frame.seconds = (this.#dropped + end - S.MIDDLE_WINDOW / 2) / S.INNER_RATE;
    frame.levelDb = levelDb(power(samples, short - S.FRAME_HOP, S.SHORT_WINDOW));
    const latestPower = power(samples, short, S.SHORT_WINDOW);
    this.latest.index = this.#hop;
    this.latest.count = 0;
    this.latest.seconds = (this.#dropped + end - S.SHORT_WINDOW / 2) / S.INNER_RATE;
    this.latest.levelDb = levelDb(latestPower);
    this.#shortBefore.set(this.#shortCurve);
    if (power(samples, middle, S.MIDDLE_WINDOW) > EMPTY_POWER) {
      this.#pair.correlate(
        samples,
        middle,
        S.MIDDLE_WINDOW,
        this.#middleCurve,
        short,
        S.SHORT_WINDOW,
        this.#shortCurve,
      );
      this.#candidates(frame);
      this.#quickCandidates();
      if (!hasClear(this.latest)) this.#answerFrom(frame);
    } else this.#shortCurve.fill(0);
    this.#hop++;
    if (this.#hop > LOW_TRAIL) {
      const settled = this.#waiting[this.#hop % this.#waiting.length]!;
      this.#addLow(settled, end);
      onFrame(settled);
    }
  }

  #candidates(frame: Frame): void {
    const joint = this.#joint;
    const middle = this.#middleCurve;
    const before = this.#shortBefore;
    // Mean of both windows where both can tell; fading to the middle one alone towards the short one's limit.
    for (let lag = 0; lag < joint.length; lag++) {
      const share =
        lag < 80 ? 0.5 : Math.max(0, (0.5 * (S.SHORT_LONGEST_LAG - lag)) / (S.SHORT_LONGEST_LAG - 80));
      joint[lag] = share > 0 ? middle[lag]! + share * (before[lag]! - middle[lag]!) : middle[lag]!;
    }
    findPeaks(joint, S.SHORTEST_LAG, S.MIDDLE_LONGEST_LAG, this.#peaks);
    this.#give(frame, middle, S.MIDDLE_LONGEST_LAG);
  }

  #quickCandidates(): void {
    findPeaks(this.#shortCurve, S.SHORTEST_LAG, S.SHORT_LONGEST_LAG, this.#peaks);
    this.#give(this.latest, this.#shortCurve, S.SHORT_LONGEST_LAG);
  }

  /** Too low for the short window, or not clear in it: the middle window's answer, 8 ms older. */
  #answerFrom(frame: Frame): void {
    if (!hasClear(frame)) return;
    this.latest.count = frame.count;
    this.latest.midi.set(frame.midi);
    this.latest.clarity.set(frame.clarity);
  }

  #give(frame: Frame, curve: Float32Array, longest: number): void {
    const peaks = this.#peaks;
    for (let i = 0; i < peaks.count; i++) {
      frame.midi[i] = lagToMidi(refineLag(curve, peaks.lag[i]!, longest), S.INNER_RATE);
      frame.clarity[i] = peaks.height[i]!;
    }
    frame.count = peaks.count;
  }

  /** Candidates under 150 Hz come from the long window about the same centre. */
  #addLow(frame: Frame, end: number): void {
    if (frame.levelDb < -90) return;
    const limit = lagToMidi(S.LOW_SHORTEST_LAG, S.INNER_RATE);
    for (let i = 0; i < frame.count; i++) if (frame.midi[i]! > limit && frame.clarity[i]! > CLEAR) return;
    const start = end / 2 - S.LOW_WINDOW;
    for (let i = 0; i < S.LOW_WINDOW; i++) this.#lowInput[i] = this.#halved[start + i]!;
    this.#low.autocorrelate(this.#lowInput, this.#lowOutput);
    normalise(this.#lowInput, 0, S.LOW_WINDOW, this.#lowOutput, 1, this.#lowCurve);
    const longest = S.LONGEST_LAG / S.LOW_FACTOR;
    findPeaks(this.#lowCurve, S.LOW_SHORTEST_LAG / S.LOW_FACTOR, longest, this.#peaks);
    let kept = 0;
    for (let i = 0; i < frame.count; i++) {
      if (frame.midi[i]! <= limit) continue;
      frame.midi[kept] = frame.midi[i]!;
      frame.clarity[kept++] = frame.clarity[i]!;
    }
    for (let i = 0; i < this.#peaks.count && kept < S.CANDIDATES; i++) {
      const lag = refineLag(this.#lowCurve, this.#peaks.lag[i]!, longest);
      frame.midi[kept] = lagToMidi(lag, S.INNER_RATE / S.LOW_FACTOR);
      frame.clarity[kept++] = this.#peaks.height[i]!;
    }
    frame.count = kept;
  }

  #trace(end: number): void {
    const { traces } = this;
    const samples = this.#samples;
    const size = this.#flux.size;
    this.#flux.pair(samples, end - S.TICK_HOP - size, end - size, traces.flux, traces.ticks % TICKS_KEPT);
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
      const at = traces.blocks++ % BLOCKS_KEPT;
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
        0.5 * x[i - 3]! + 0.28125 * (x[i - 4]! + x[i - 2]!) - 0.03125 * (x[i - 6]! + x[i]!);
    }
  }
}

function hasClear(frame: Frame): boolean {
  for (let i = 0; i < frame.count; i++) if (frame.clarity[i]! > ANSWERS) return true;
  return false;
}

export function lagToMidi(lag: number, rate: number): number {
  return 69 + 12 * Math.log2(rate / lag / 440);
}

function power(samples: Float32Array, start: number, length: number): number {
  let sum = 0;
  for (let i = start; i < start + length; i++) sum += samples[i]! * samples[i]!;
  return sum / length;
}

function levelDb(meanSquare: number): number {
  return Math.max(-120, 10 * Math.log10(meanSquare + 1e-12));
}
