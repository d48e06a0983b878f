/** Made answers of the network, so that each decision of the decoder can be tested by itself. */
import { Decoder } from '../../../../src/core/listen/network/decoder.ts';
import { DELAY_FRAMES, LONG_LAGS, LOW_MIDI, PITCHES } from '../../../../src/core/listen/network/settings.ts';

const FRAMES = 120;
const FRAME_SECONDS = 0.016;

/** What the decoder made of it: frame of the onset, semitone above the lowest, first frame after the end. */
export interface Told {
  readonly frame: number;
  readonly semitone: number;
  readonly end: number;
  readonly confidence: number;
}

/** Onsets and sounding pitches by frame and semitone above the lowest; the pitch may be a fraction. */
export class Answers {
  readonly #onset = Array.from({ length: FRAMES }, () => new Float32Array(PITCHES));
  readonly #sounding = Array.from({ length: FRAMES }, () => new Float32Array(PITCHES));
  /** −60 is too soft for a note whose onset nothing told. */
  readonly #levelDb: (frame: number) => number;

  constructor(levelDb: number | ((frame: number) => number) = -60) {
    this.#levelDb = typeof levelDb === 'number' ? () => levelDb : levelDb;
  }

  /** An onset of this probability, spread over three frames and semitones as the network does. */
  onset(frame: number, semitone: number, probability = 1): this {
    for (const [f, inTime] of [0.2, 0.6, 0.2].entries())
      for (const [p, inPitch] of [0.1, 0.8, 0.1].entries())
        this.#onset[frame + f - 1]![semitone + p - 1]! += probability * inTime * inPitch;
    return this;
  }

  /** Sounds from `from` on and before `to` at a pitch, or along a line of pitches by frame. */
  sounds(from: number, to: number, semitone: number | ((frame: number) => number), probability = 1): this {
    for (let frame = from; frame < to; frame++) {
      const pitch = typeof semitone === 'number' ? semitone : semitone(frame);
      const low = Math.floor(pitch);
      this.#sounding[frame]![low] = probability * (low + 1 - pitch);
      if (pitch > low) this.#sounding[frame]![low + 1] = probability * (pitch - low);
    }
    return this;
  }

  /** A note with its onset. */
  note(from: number, to: number, semitone: number | ((frame: number) => number), onset = 1): this {
    const first = Math.round(typeof semitone === 'number' ? semitone : semitone(from));
    return this.onset(from, first, onset).sounds(from, to, semitone);
  }

  /** A decoder that has taken the frames before `until`; `each` is told after each of them. */
  decoded(until = FRAMES, each?: (decoder: Decoder, frame: number) => void): Decoder {
    const decoder = new Decoder(() => null);
    for (let frame = 0; frame < until; frame++) {
      const levelDb = this.#levelDb(frame);
      decoder.levels.push(levelDb, new Float32Array(4).fill(levelDb));
      decoder.push(this.#onset[frame]!, this.#sounding[frame]!, new Float32Array(LONG_LAGS));
      each?.(decoder, frame);
    }
    return decoder;
  }

  notes(): readonly Told[] {
    const decoder = this.decoded();
    decoder.finish();
    return decoder.ended.map((note) => ({
      frame: note.onsetSeconds / FRAME_SECONDS + DELAY_FRAMES,
      semitone: note.midi - LOW_MIDI,
      end: note.offsetSeconds / FRAME_SECONDS + DELAY_FRAMES,
      confidence: note.confidence,
    }));
  }

  /** The whole semitones told, in order. */
  semitones(): readonly number[] {
    return this.notes().map(({ semitone }) => Math.round(semitone));
  }
}
