/** A recording as it is drawn: its loudest sample in each short stretch. */
import type { BeatTrack } from '../core/beats/track.ts';

export const PEAKS_PER_SECOND = 200;

/** @param samples mono, at full scale ±1 */
export function peaksOf(samples: Float32Array, sampleRate: number): Float32Array {
  const peaks = new Float32Array(Math.ceil((samples.length / sampleRate) * PEAKS_PER_SECOND));
  for (let i = 0; i < samples.length; i++) {
    const at = Math.floor((i / sampleRate) * PEAKS_PER_SECOND);
    peaks[at] = Math.max(peaks[at]!, Math.abs(samples[i]!));
  }
  return peaks;
}

/** The beats of a tempo through a whole recording; the first bar begins on one of them. */
export function evenTrack(bpm: number, firstBeatSeconds: number, durationSeconds: number): BeatTrack {
  const step = 60 / bpm;
  const before = Math.floor(firstBeatSeconds / step);
  const after = Math.max(1, Math.floor((durationSeconds - firstBeatSeconds) / step));
  const marks = Array.from({ length: before + after + 1 }, (_, i) => ({
    seconds: firstBeatSeconds + (i - before) * step,
    pinned: false,
  }));
  return { marks, downbeat: before };
}
