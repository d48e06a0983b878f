/**
 * The sound of a take, sample by sample on the audio clock: what was lost on the way becomes silence. Held in memory is
 * what is not safe on the disk: an hour of it would be 600 MB.
 */
import type { Hop } from '../audio/microphone/hop.ts';
import { toPcm16 } from '../core/base/pcm16.ts';
import type { LostStretch } from '../core/take/lost-sound.ts';
import { HeldSound } from './held-sound.ts';

/** Frames that the browser did not deliver. */
export interface Gap {
  /** From the first sample; a gap inside a hop counts from the hop's start. */
  readonly atFrame: number;
  readonly frames: number;
}

/**
 * Sound is held as 16-bit from the start: the live listener, the file on the disk, the exported WAV and the
 * grading all get the very same numbers.
 */
export class Recording {
  readonly sampleRate: number;
  readonly #held = new HeldSound();
  #firstFrame: number | null = null;
  #lostFrames = 0;
  readonly #gaps: Gap[] = [];

  constructor(sampleRate: number) {
    this.sampleRate = sampleRate;
  }

  /** Place of the first sample on the audio clock, in seconds; null before the first hop. */
  get startSeconds(): number | null {
    return this.#firstFrame === null ? null : this.#firstFrame / this.sampleRate;
  }

  get frames(): number {
    return this.#held.frames;
  }

  /** How much of it, from the first sample on, is no longer in memory. */
  get letGoFrames(): number {
    return this.#held.frames - this.#held.heldFrames;
  }

  /** Frames that the browser did not deliver, so far. */
  get lostFrames(): number {
    return this.#lostFrames;
  }

  /** Where they are missing, in order. */
  get gaps(): readonly Gap[] {
    return this.#gaps;
  }

  /** Takes a hop in and answers with what is new: silence for what was skipped, then the hop. */
  add(hop: Hop): Int16Array<ArrayBuffer> {
    this.#firstFrame ??= hop.startFrame;
    const place = hop.startFrame - this.#firstFrame;
    const skipped = Math.max(0, place - this.frames);
    // Frames that were delivered twice are taken once.
    const fresh = toPcm16(hop.samples.subarray(Math.max(0, this.frames - place)));
    const piece = new Int16Array(skipped + fresh.length);
    piece.set(fresh, skipped);
    const inside = hop.lostFrames ?? 0;
    if (skipped + inside > 0) this.#gaps.push({ atFrame: this.frames, frames: skipped + inside });
    this.#lostFrames += skipped + inside;
    this.#held.add(piece);
    return piece;
  }

  /** The same in seconds. */
  get lost(): LostStretch[] {
    return this.#gaps.map(({ atFrame, frames }) => ({
      atSeconds: atFrame / this.sampleRate,
      seconds: frames / this.sampleRate,
    }));
  }

  /** Lets go what is safe elsewhere. @param frames how much from the first sample on */
  letGo(frames: number): void {
    this.#held.letGo(frames);
  }

  /** All of it. @param safe what was let go and more, from the first sample on; left out where nothing was let go */
  whole(safe?: Int16Array): Int16Array {
    return this.#held.whole(safe);
  }
}

/** What the band played beside a recording, frame by frame: 16-bit too, so that live and later it is the same. */
export class BandRecording {
  readonly #held = new HeldSound();

  /** The band on the last `frames` of the recording, which a hop has just brought; silence where none was heard. */
  add({ samples, band }: Hop, frames: number): Int16Array<ArrayBuffer> {
    const piece = new Int16Array(frames);
    const fresh = Math.min(frames, samples.length);
    if (band !== null) piece.set(toPcm16(band.subarray(samples.length - fresh)), frames - fresh);
    this.#held.add(piece);
    return piece;
  }

  /** As `Recording.letGo`. */
  letGo(frames: number): void {
    this.#held.letGo(frames);
  }

  /** As `Recording.whole`. */
  whole(safe?: Int16Array): Int16Array {
    return this.#held.whole(safe);
  }
}
