/** Intervals between beats, and beats without the variation of single strokes. */
import { upperMedian } from '../base/statistics.ts';

/** Beats a minute by the median interval; needs two beats or more. */
export const bpmOf = (beats: readonly number[]): number => 60 / (upperMedian(intervalsOf(beats)) ?? 0);

export const intervalsOf = (beats: readonly number[]): readonly number[] =>
  beats.slice(1).map((beat, i) => beat - beats[i]!);

/**
 * Beats that are smoothed over, two bars of four: enough to halve the variation of taps, few enough for a tempo that
 * drifts.
 */
const SMOOTHED_OVER = 9;

/**
 * Beats without the variation of single strokes: each is moved to the parabola through the nine around it (Savitzky & Golay
 * 1964), so that a tempo that drifts, or drifts ever faster, is followed without a lag. Fewer than five stay as they are.
 */
export function smoothed(beats: readonly number[]): readonly number[] {
  const width = Math.min(SMOOTHED_OVER, beats.length);
  if (width < 5) return beats;
  return beats.map((_, i) => {
    const from = Math.min(Math.max(0, i - (width >> 1)), beats.length - width);
    return onParabola(beats.slice(from, from + width), i - from);
  });
}

/** What the least-squares parabola through the values has at index `at`: orthogonal polynomials over equal steps. */
function onParabola(values: readonly number[], at: number): number {
  const n = values.length;
  const centre = (n - 1) / 2;
  const second = (n * n - 1) / 12;
  const shapes = [() => 1, (x: number) => x, (x: number) => x * x - second];
  return shapes.reduce((sum, shape) => {
    let along = 0;
    let size = 0;
    values.forEach((value, i) => {
      along += value * shape(i - centre);
      size += shape(i - centre) ** 2;
    });
    return sum + (along / size) * shape(at - centre);
  }, 0);
}
