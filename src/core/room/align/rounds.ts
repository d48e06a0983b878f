/**
 * Where a backing begins again: it is a loop, or one file is played twice; or it ends and the player goes on. Found by the
 * whitened correlation of the take after the end of a repeat (and before its beginning) with the backing.
 */
import { addWhitened, peakOf, topNear } from './whitened.ts';

/** Length of the take that is compared at once, seconds. */
const SEGMENT_SECONDS = 10;
/** A shorter stretch is too short to decide, seconds. */
const LEAST_SECONDS = 2;
/** The next repeat may begin by this much before or after the end of this one, seconds: a tail that is cut, a pause. */
const REACH_SECONDS = 10;
/** A repeat without a pause begins on time to within this, seconds. */
const ON_TIME_SECONDS = 0.05;
/**
 * Least height of a peak in standard deviations. A player without the band reached 9 in a wide search, and 6 in a
 * narrow one.
 */
const LEAST_PROMINENCE = 8;
const SAME_SECONDS = 0.005;
/**
 * Music that repeats itself matches at several places: of peaks that are nearly this equal the one nearest to the end
 * counts.
 */
const ALIKE = 0.85;

/**
 * @param backing at the speed at which it runs in the take @param last where a repeat begins in the take, samples
 * @returns where the repeats after it begin, in order
 */
export function roundsAfter(
  take: Float32Array,
  backing: Float32Array,
  last: number,
  sampleRate: number,
): readonly number[] {
  const least = LEAST_SECONDS * sampleRate;
  const rounds: number[] = [];
  let [begins, period] = [last, backing.length];
  for (;;) {
    const due = begins + period;
    if (take.length - due < least) return rounds;
    const from = Math.max(0, Math.round(due));
    const to = Math.min(take.length, from + SEGMENT_SECONDS * sampleRate);
    const next = beginning(take, from, to, backing, due, sampleRate);
    if (next === null || next - begins < least) return rounds;
    period = next - begins;
    begins = next;
    rounds.push(next);
  }
}

/** Where the repeats before the one at `first` begin. */
export function roundsBefore(
  take: Float32Array,
  backing: Float32Array,
  first: number,
  sampleRate: number,
): readonly number[] {
  const least = LEAST_SECONDS * sampleRate;
  const rounds: number[] = [];
  let [begins, period] = [first, backing.length];
  while (begins >= least) {
    const to = Math.min(take.length, Math.round(begins));
    const from = Math.max(0, to - SEGMENT_SECONDS * sampleRate);
    const before = beginning(take, from, to, backing, begins - period, sampleRate);
    if (before === null || begins - before < least) break;
    period = begins - before;
    begins = before;
    rounds.unshift(before);
  }
  return rounds;
}

/** Where the repeat that sounds in a stretch of the take begins; null where none sounds. */
function beginning(
  take: Float32Array,
  from: number,
  to: number,
  backing: Float32Array,
  due: number,
  sampleRate: number,
): number | null {
  const narrow = search(take, from, to, backing, due, ON_TIME_SECONDS * sampleRate);
  if (narrow !== null) return narrow;
  const reach = REACH_SECONDS * sampleRate;
  const wide = search(take, from, to, backing, due, reach);
  if (wide === null) return null;
  // A player who goes on alone keeps the band's pulse, so that both halves correlate with it, but at different places.
  const begin = Math.max(from, Math.round(wide));
  const end = Math.min(take.length, begin + (to - from), Math.round(wide) + backing.length);
  const middle = (begin + end) >> 1;
  const halves = [
    search(take, begin, middle, backing, due, reach),
    search(take, middle, end, backing, due, reach),
  ];
  const agreed = halves.every((half) => half !== null && Math.abs(half - wide) < SAME_SECONDS * sampleRate);
  return agreed ? wide : null;
}

function search(
  take: Float32Array,
  from: number,
  to: number,
  backing: Float32Array,
  due: number,
  reach: number,
): number | null {
  const firstLag = Math.round(due - reach);
  const correlation = new Float64Array(2 * Math.round(reach) + 1);
  addWhitened(correlation, take.subarray(from, to), backing, from, firstLag);
  const highest = peakOf(correlation, firstLag);
  if (highest === null || highest.prominence < LEAST_PROMINENCE) return null;
  let nearest = Math.round(highest.lagSamples) - firstLag;
  const height = Math.abs(correlation[nearest] ?? 0);
  for (let i = 0; i < correlation.length; i++) {
    if (Math.abs(correlation[i]!) < ALIKE * height) continue;
    if (Math.abs(firstLag + i - due) < Math.abs(firstLag + nearest - due) - 1) nearest = i;
  }
  return firstLag + topNear(correlation, nearest);
}
