import { median as middleOf } from '../../base/statistics.ts';
import * as D from './decoding.ts';

/** NaN of no values. */
const median = (values: readonly number[]): number => middleOf(values) ?? NaN;

/** Where the pitch has gone by the end if it goes one way in small steps and stays there; else null. */
function arrivalOf(path: readonly number[]): number | null {
  const x = path.slice(0, -1);
  const smooth: number[] = [];
  for (let i = 0; i + 2 < x.length; i++) smooth.push((x[i]! + x[i + 1]! + x[i + 2]!) / 3);
  const way = Math.abs(smooth.at(-1)! - smooth[0]!);
  if (way <= D.BEND_SEMITONES) return null;
  let walked = 0;
  let longest = 0;
  for (let i = 1; i < smooth.length; i++) {
    const step = Math.abs(smooth[i]! - smooth[i - 1]!);
    walked += step;
    longest = Math.max(longest, step);
  }
  if (walked >= D.BEND_DETOUR * way || longest >= D.BEND_STEP) return null;
  const end = median(path.slice(-4, -1));
  const stays = x.filter((v) => Math.abs(v - end) < 0.5).length;
  return stays >= Math.max(D.BEND_STAY_FRAMES, D.BEND_STAY_SHARE * x.length) ? end : null;
}

/** The frames of a note without the last ones, which lean towards what follows. */
export const settledPart = (path: readonly number[]): readonly number[] =>
  path.length > 6 ? path.slice(0, -D.LAST_FRAMES) : path;

/** Where a note's pitch comes to rest: the median of its later part, or of its end where it is bent there. */
export function restOf(path: readonly number[], start: number): number {
  const part = settledPart(path);
  if (part.length < 3) return start;
  const arrival = part.length >= 6 ? arrivalOf(path) : null;
  return arrival ?? median(part.slice(Math.trunc(part.length * D.REST_SHARE)));
}
