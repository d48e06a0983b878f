import { pitchOfFrame } from './listen/live/frame-pitch.ts';
import { Hearing } from './listen/network/hear.ts';
import { LIVE_LOW_MIDI } from './listen/tuning/live.ts';
import type { HeardNote, LiveReading } from './take/note.ts';

export interface ListenOptions {
  /** Of the samples pushed, 8000 to 192000 Hz. */
  readonly sampleRate: number;
}

/** Silence pushed at the end, so that every window reaches past the last sample and every note ends. */
const TAIL_SECONDS = 0.5;

/**
 * Samples → notes, streaming: pieces of any length give the same notes as the whole at once. Deterministic, no
 * clock. All buffers are made in the constructor.
 */
export class Listener {
  readonly #hearing: Hearing;
  readonly #sampleRate: number;
  #finished = false;

  /** Throws RangeError for a sample rate outside 8000 to 192000 Hz. */
  constructor(options: ListenOptions) {
    const { sampleRate } = options;
    if (!(sampleRate >= 8000 && sampleRate <= 192000)) {
      throw new RangeError(`sampleRate must be from 8000 to 192000 Hz, not ${sampleRate}`);
    }
    this.#sampleRate = sampleRate;
    this.#hearing = new Hearing(sampleRate);
  }

  /** Mono samples, full scale ±1. Values that are not finite count as silence. */
  push(samples: Float32Array): void {
    if (this.#finished) throw new Error('push after finish: make a new Listener for the next take');
    this.#hearing.push(samples);
  }

  /**
   * Notes committed since the last call, in order of onset. A note that still sounds comes once its pitch has come
   * to rest; its end is then the moment heard so far.
   */
  takeNotes(): HeardNote[] {
    return this.#hearing.decoder.takeFresh();
  }

  /** Notes that have ended so far, in order of onset: the first part of what `finish` will give. */
  get ended(): readonly HeardNote[] {
    return this.#hearing.decoder.ended;
  }

  /** What is heard now: the newest answer, not yet settled. Each call looks at the sound anew (0.1 ms). */
  get reading(): LiveReading {
    const latest = this.#hearing.newest.look();
    const sounding = this.#hearing.decoder.sounding;
    const low = sounding !== null && sounding < LIVE_LOW_MIDI ? sounding : null;
    return { timeSeconds: latest.seconds, midi: pitchOfFrame(latest) ?? low, levelDb: latest.levelDb };
  }

  /** All notes of the take, ends corrected. The listener takes no more sound afterwards. */
  finish(): HeardNote[] {
    if (!this.#finished) {
      this.#hearing.push(new Float32Array(Math.ceil(TAIL_SECONDS * this.#sampleRate)));
      this.#hearing.decoder.finish();
      this.#finished = true;
    }
    return this.#hearing.decoder.ended.slice();
  }
}

/**
 * All notes of a recording: one push and finish.
 * @example listen(samples, 48000).map((note) => note.midi)
 */
export function listen(samples: Float32Array, sampleRate: number): HeardNote[] {
  const listener = new Listener({ sampleRate });
  listener.push(samples);
  return listener.finish();
}
