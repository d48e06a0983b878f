/** The sound of a take in memory, sample by sample on the audio clock: what was lost on the way becomes silence. */
import type { Hop } from '../audio/microphone/hop.ts';
import { toPcm16 } from '../core/files/sound/pcm16.ts';
import type { LostStretch } from '../core/take/lost-sound.ts';

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
  readonly #pieces: Int16Array<ArrayBuffer>[] = [];
  #firstFrame: number | null = null;
  #frames = 0;
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
    return this.#frames;
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
    const skipped = Math.max(0, place - this.#frames);
    // Frames that were delivered twice are taken once.
    const fresh = toPcm16(hop.samples.subarray(Math.max(0, this.#frames - place)));
    const piece = new Int16Array(skipped + fresh.length);
    piece.set(fresh, skipped);
    const inside = hop.lostFrames ?? 0;
    if (skipped + inside > 0) this.#gaps.push({ atFrame: this.#frames, frames: skipped + inside });
    this.#lostFrames += skipped + inside;
    this.#frames += piece.length;
    this.#pieces.push(piece);
    return piece;
  }

  /** The same in seconds. */
  get lost(): LostStretch[] {
    return this.#gaps.map(({ atFrame, frames }) => ({
      atSeconds: atFrame / this.sampleRate,
      seconds: frames / this.sampleRate,
    }));
  }

  whole(): Int16Array<ArrayBuffer> {
    return joined(this.#pieces, this.#frames);
  }
}

/** What the band played beside a recording, frame by frame: 16-bit too, so that live and later it is the same. */
export class BandRecording {
  readonly #pieces: Int16Array<ArrayBuffer>[] = [];
  #frames = 0;

  /** The band on the last `frames` of the recording, which a hop has just brought; silence where none was heard. */
  add({ samples, band }: Hop, frames: number): Int16Array<ArrayBuffer> {
    const piece = new Int16Array(frames);
    const fresh = Math.min(frames, samples.length);
    if (band !== null) piece.set(toPcm16(band.subarray(samples.length - fresh)), frames - fresh);
    this.#pieces.push(piece);
    this.#frames += frames;
    return piece;
  }

  whole(): Int16Array<ArrayBuffer> {
    return joined(this.#pieces, this.#frames);
  }
}

function joined(pieces: readonly Int16Array[], frames: number): Int16Array<ArrayBuffer> {
  const whole = new Int16Array(frames);
  let at = 0;
  for (const piece of pieces) {
    whole.set(piece, at);
    at += piece.length;
  }
  return whole;
}
