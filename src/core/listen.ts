import { AttackPicker, type Attack } from './listen/attacks/attacks.ts';
import { NoteMaker } from './listen/decide/maker.ts';
import type { HeardNote, LiveReading } from './take/note.ts';
import { pitchOfFrame } from './listen/path/frame-pitch.ts';
import { Path } from './listen/path/path.ts';
import { STRONG_FLUX } from './listen/tuning/attacks.ts';
import { ATTACK_EASE_SECONDS, LIVE_LOW_MIDI } from './listen/tuning/path.ts';
import { Track } from './listen/path/track.ts';
import { Analyser } from './listen/frames/analyser.ts';
import type { Frame } from './listen/frames/frame.ts';

export interface ListenOptions {
  /** Of the samples pushed, 8000 to 192000 Hz. */
  readonly sampleRate: number;
}

/** Silence pushed at the end, so that every window reaches past the last sample. */
const TAIL_SECONDS = 0.4;

/**
 * Samples → notes, streaming: pieces of any length give the same notes as the whole at once. Deterministic, no
 * clock. All buffers are made in the constructor.
 */
export class Listener {
  readonly #analyser: Analyser;
  readonly #path = new Path();
  readonly #track = new Track();
  readonly #maker = new NoteMaker(this.#track, {
    partialsAt: (from, length) => this.#analyser.partialsAt(from, length),
    spectraAt: (seconds, length) => this.#analyser.spectraAt(seconds, length),
  });
  readonly #picker: AttackPicker;
  readonly #attacks: Attack[] = [];
  readonly #sampleRate: number;
  readonly #onFrame: (frame: Frame) => void;
  #lastAttack = -1;
  /** The pitch of the frame that the low window has reached, where it is too low for the newest frame alone. */
  #low: number | null = null;
  #finished = false;

  /** Throws RangeError for a sample rate outside 8000 to 192000 Hz. */
  constructor(options: ListenOptions) {
    const { sampleRate } = options;
    if (!(sampleRate >= 8000 && sampleRate <= 192000)) {
      throw new RangeError(`sampleRate must be from 8000 to 192000 Hz, not ${sampleRate}`);
    }
    this.#sampleRate = sampleRate;
    this.#analyser = new Analyser(sampleRate);
    this.#picker = new AttackPicker(this.#analyser.traces);
    this.#onFrame = (frame) => {
      this.#take(frame);
    };
  }

  /** Mono samples, full scale ±1. Values that are not finite count as silence. */
  push(samples: Float32Array): void {
    if (this.#finished) throw new Error('push after finish: make a new Listener for the next take');
    this.#analyser.push(samples, this.#onFrame);
  }

  /**
   * Notes committed since the last call, in order of onset. A note that still sounds comes once its pitch has come
   * to rest; its end is then the moment heard so far.
   */
  takeNotes(): HeardNote[] {
    return this.#maker.takeFresh();
  }

  /** Notes that have ended so far, in order of onset: the first part of what `finish` will give. */
  get ended(): readonly HeardNote[] {
    return this.#maker.notes;
  }

  /** What is heard now: the newest answer, not yet settled. Each call looks at the sound anew (0.1 ms). */
  get reading(): LiveReading {
    const latest = this.#analyser.peek();
    return { timeSeconds: latest.seconds, midi: pitchOfFrame(latest) ?? this.#low, levelDb: latest.levelDb };
  }

  /** All notes of the take, ends corrected. The listener takes no more sound afterwards. */
  finish(): HeardNote[] {
    if (!this.#finished) {
      this.#analyser.push(new Float32Array(Math.ceil(TAIL_SECONDS * this.#sampleRate)), this.#onFrame);
      this.#maker.advance(true);
      this.#finished = true;
    }
    return this.#maker.notes.slice();
  }

  #take(frame: Frame): void {
    // Its low window has come in by now; the newest frame's has not.
    const heard = pitchOfFrame(frame);
    this.#low = heard !== null && heard < LIVE_LOW_MIDI ? heard : null;
    this.#attacks.length = 0;
    this.#picker.pick(this.#attacks);
    for (const attack of this.#attacks) {
      this.#maker.attack(attack);
      if (attack.flux >= STRONG_FLUX) this.#lastAttack = attack.seconds;
    }
    const settled = this.#path.step(frame, Math.abs(frame.seconds - this.#lastAttack) < ATTACK_EASE_SECONDS);
    if (!settled) return;
    this.#track.add(settled);
    this.#maker.advance(false);
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
