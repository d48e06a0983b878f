/** Listeners to compare ours with: plain runs of general-purpose pitch libraries. */
import { YIN } from 'pitchfinder';
import { PitchDetector } from 'pitchy';
import type { MetricNote } from './note-metrics.ts';

/** Hop of the plain runs. */
const plainHopSeconds = 0.01;
const plainWindow = 2048;
/** The clarity the plain pitchy run asks for. */
const plainClarity = 0.9;
/** A run shorter than this is no note: 3 frames. */
const shortestRunSeconds = 0.03;

/**
 * Runs of one rounded note, as a first program would write it. `pitchAt` gives Hz or null per frame; `datedAt` is
 * where in its window a frame is dated: 1 its end, when a live program knows it; 0.5 its middle; 0 its start.
 */
function runsOf(
  samples: Float32Array,
  sampleRate: number,
  datedAt: number,
  pitchAt: (frame: Float32Array) => number | null,
): readonly MetricNote[] {
  const notes: MetricNote[] = [];
  const plainHop = Math.round(plainHopSeconds * sampleRate);
  let runKey: number | null = null;
  let runStart = 0;
  let runPitches: number[] = [];
  const close = (seconds: number): void => {
    if (runKey !== null && seconds - runStart >= shortestRunSeconds)
      notes.push({
        onsetSeconds: runStart,
        offsetSeconds: seconds,
        midi: runPitches.reduce((sum, value) => sum + value, 0) / runPitches.length,
      });
  };
  for (let start = 0; start + plainWindow <= samples.length; start += plainHop) {
    const seconds = (start + datedAt * plainWindow) / sampleRate;
    const hz = pitchAt(samples.subarray(start, start + plainWindow));
    const midi = hz === null ? null : 69 + 12 * Math.log2(hz / 440);
    const key = midi === null ? null : Math.round(midi);
    if (key !== runKey) {
      close(seconds);
      runKey = key;
      runStart = seconds;
      runPitches = [];
    }
    if (midi !== null) runPitches.push(midi);
  }
  close(samples.length / sampleRate);
  return notes;
}

/** pitchy, 2048 samples, clarity 0.9, dated anywhere in the window. */
export const pitchyDatedAt =
  (datedAt: number) =>
  (samples: Float32Array, sampleRate: number): readonly MetricNote[] => {
    const detector = PitchDetector.forFloat32Array(plainWindow);
    return runsOf(samples, sampleRate, datedAt, (frame) => {
      const [hz, clarity] = detector.findPitch(frame, sampleRate);
      return clarity >= plainClarity && hz > 25 && hz < 4000 ? hz : null;
    });
  };

/** The plain run: a frame is known when its window is full. */
export const plainPitchy = pitchyDatedAt(1);

/** pitchfinder's YIN with its own defaults, dated as the plain run. */
export function plainYin(samples: Float32Array, sampleRate: number): readonly MetricNote[] {
  const detect = YIN({ sampleRate });
  return runsOf(samples, sampleRate, 1, (frame) => {
    const hz = detect(frame);
    return hz !== null && hz > 25 && hz < 4000 ? hz : null;
  });
}
