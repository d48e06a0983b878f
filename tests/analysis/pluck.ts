/**
 * Plucked tones by arithmetic: the partials of an ideal string that is plucked at a fifth of its length and heard by
 * the speed with which it moves, sin(πh / 5) / h (textbook acoustics, from memory); the upper ones fade sooner.
 */
export interface Pluck {
  readonly atSeconds: number;
  readonly midi: number;
  readonly seconds?: number;
}

const PARTIALS = 30;
/** A peak of about -18 dB, as a guitar reaches a microphone. */
const LOUDNESS = 0.1;

export function pluckLine(
  plucks: readonly Pluck[],
  sampleRate: number,
  seconds: number,
): Float32Array<ArrayBuffer> {
  const out = new Float32Array(Math.round(seconds * sampleRate));
  for (const { atSeconds, midi, seconds: length = 0.4 } of plucks) {
    const hz = 440 * 2 ** ((midi - 69) / 12);
    const from = Math.round(atSeconds * sampleRate);
    const to = Math.min(out.length, from + Math.round(length * sampleRate));
    for (let i = from; i < to; i++) {
      const t = (i - from) / sampleRate;
      const edge = Math.min(1, t / 0.002, (to - i) / (0.01 * sampleRate));
      for (let h = 1; h <= PARTIALS && h * hz < sampleRate / 2.5; h++)
        out[i]! +=
          ((LOUDNESS * Math.sin((Math.PI * h) / 5)) / h) *
          edge *
          Math.exp(-t * (2 + 0.8 * h)) *
          Math.sin(2 * Math.PI * h * hz * t);
    }
  }
  return out;
}

/** One pluck a beat from the first downbeat on. */
export const onTheBeat = (midis: readonly number[], bpm: number, firstBeatSeconds: number): Pluck[] =>
  midis.map((midi, beat) => ({ atSeconds: firstBeatSeconds + (beat * 60) / bpm, midi }));
