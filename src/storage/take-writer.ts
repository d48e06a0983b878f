/** Gathers what is played and appends it every half second; goes silent, once and with a sentence, when it can't. */
import type { SoundWriter } from './sounds.ts';

/** At most this much is lost when the page dies: each append costs a flush, so not every hop is one. */
export const SECONDS_BETWEEN_APPENDS = 0.5;

export class TakeWriter {
  readonly id: string;
  readonly #sound: SoundWriter;
  readonly #pending: Int16Array;
  readonly #release: () => void;
  readonly #onFull: (sentence: string) => void;
  readonly #onFinish: (frames: number) => Promise<void>;
  readonly #onFirstBeat: (seconds: number) => Promise<void>;
  #filled = 0;
  #frames = 0;
  #stopped: string | null = null;
  /** Appends go one after the other; the last one's end. */
  #tail: Promise<void> = Promise.resolve();

  constructor(ports: {
    readonly id: string;
    readonly sound: SoundWriter;
    readonly sampleRate: number;
    /** Called once when nothing more can be written. */
    readonly onFull: (sentence: string) => void;
    readonly onFirstBeat: (seconds: number) => Promise<void>;
    readonly onFinish: (frames: number) => Promise<void>;
    /** Lets other pages see the take. */
    readonly release: () => void;
  }) {
    this.id = ports.id;
    this.#sound = ports.sound;
    this.#pending = new Int16Array(Math.ceil(ports.sampleRate * SECONDS_BETWEEN_APPENDS));
    this.#release = ports.release;
    this.#onFull = ports.onFull;
    this.#onFinish = ports.onFinish;
    this.#onFirstBeat = ports.onFirstBeat;
  }

  /** Samples safe on the disk. */
  get frames(): number {
    return this.#frames;
  }

  append(samples: Int16Array): void {
    for (let from = 0; from < samples.length;) {
      const count = Math.min(samples.length - from, this.#pending.length - this.#filled);
      this.#pending.set(samples.subarray(from, from + count), this.#filled);
      this.#filled += count;
      from += count;
      if (this.#filled === this.#pending.length) this.#flush();
    }
  }

  /** Where the first downbeat lies, from the first sample; known once the band has started. */
  setFirstBeat(seconds: number): void {
    this.#tail = this.#tail.then(() => this.#onFirstBeat(seconds)).catch(() => undefined);
  }

  /**
   * Writes the rest and closes. Answers with the sentence of the first failure, or null when the whole take is
   * safe. After a failure what reached the disk stays there, to be offered as a take that was cut off.
   */
  async finish(): Promise<string | null> {
    this.#flush();
    await this.#tail;
    await this.#sound.close();
    if (this.#stopped === null) await this.#onFinish(this.#frames).catch(() => undefined);
    this.#release();
    return this.#stopped;
  }

  #flush(): void {
    const samples = this.#pending.slice(0, this.#filled);
    this.#filled = 0;
    if (samples.length === 0) return;
    this.#tail = this.#tail.then(async () => {
      if (this.#stopped !== null) return;
      const written = await this.#sound.append(samples);
      if (written.ok) this.#frames += samples.length;
      else {
        this.#stopped = written.sentence;
        this.#onFull(written.sentence);
      }
    });
  }
}
