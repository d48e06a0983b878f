import { Resampler } from '../../base/resample.ts';
import { floats, type MonoSamples } from '../../base/pcm16.ts';

/** Sample rate of all that is done in this folder, Hz: the listener's own, which searches no pitch above 5 kHz. */
export const ROOM_HZ = 12_000;
export const BLOCK_SIZE = 128;
/**
 * Modelled length of the path, seconds: after it the reverberation of a room with an RT60 of 0.4 s has decayed by 60
 * dB, with one of 0.8 s by 30 dB.
 */
const PATH_SECONDS = 0.42;
export const PARTITIONS = Math.ceil((PATH_SECONDS * ROOM_HZ) / BLOCK_SIZE);
/** The filter is flat up to where the listener's filter begins to attenuate; what folds back lies above 5.4 kHz. */
const PASS_HZ = 4800;
const STOP_HZ = 6600;

/** A stream of mono samples at any rate → ROOM_HZ; output sample n is the signal at n / ROOM_HZ seconds. */
export class ToRoomRate {
  readonly #resampler: Resampler;
  readonly #room: Float32Array;
  readonly #perInput: number;

  constructor(sampleRate: number) {
    this.#resampler = new Resampler(sampleRate, ROOM_HZ, PASS_HZ, STOP_HZ);
    this.#perInput = ROOM_HZ / sampleRate;
    this.#room = new Float32Array(Math.ceil(this.#resampler.largestInput * this.#perInput) + 4);
  }

  /** The output that these samples complete; the rest follows with later samples. */
  push(samples: Float32Array): Float32Array<ArrayBuffer> {
    const out = new Float32Array(Math.ceil(samples.length * this.#perInput) + 4);
    let written = 0;
    const piece = this.#resampler.largestInput;
    for (let from = 0; from < samples.length; from += piece) {
      const to = Math.min(samples.length, from + piece);
      const count = this.#resampler.process(samples, from, to, this.#room, 0);
      out.set(this.#room.subarray(0, count), written);
      written += count;
    }
    return out.subarray(0, written);
  }

  /** The rest of the output, as if silence followed. */
  finish(): Float32Array<ArrayBuffer> {
    return this.push(new Float32Array(Math.ceil(this.#resampler.delaySamples) + 1));
  }
}

/** So many samples are read as floating point at once: an hour at 44.1 kHz would be 636 MB. */
const PIECE = 65_536;

/** A sound of known length at any rate, 16-bit or floating point, that arrives in pieces → the whole at ROOM_HZ. */
export class RoomRateSound {
  readonly #whole: Float32Array;
  /** null where the sound has that rate already. */
  readonly #stream: ToRoomRate | null;
  #written = 0;

  /** @param frames of all pieces together */
  constructor(frames: number, sampleRate: number) {
    const same = Math.round(sampleRate) === ROOM_HZ;
    this.#whole = new Float32Array(same ? frames : Math.round((frames * ROOM_HZ) / sampleRate));
    this.#stream = same ? null : new ToRoomRate(sampleRate);
  }

  push(samples: MonoSamples): void {
    for (let from = 0; from < samples.length; from += PIECE) {
      const piece = floats(samples.subarray(from, from + PIECE));
      this.#write(this.#stream?.push(piece) ?? piece);
    }
  }

  finish(): Float32Array {
    if (this.#stream) this.#write(this.#stream.finish());
    return this.#whole;
  }

  #write(piece: Float32Array): void {
    const fitting = piece.subarray(0, this.#whole.length - this.#written);
    this.#whole.set(fitting, this.#written);
    this.#written += fitting.length;
  }
}

/** Mono samples at any rate, 16-bit or floating point at full scale ±1 → ROOM_HZ. */
export function toRoomRate(samples: MonoSamples, sampleRate: number): Float32Array {
  if (Math.round(sampleRate) === ROOM_HZ) return floats(samples);
  const sound = new RoomRateSound(samples.length, sampleRate);
  sound.push(samples);
  return sound.finish();
}
