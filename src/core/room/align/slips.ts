/**
 * Where a browser slipped between its output and its input: from there on all of the band comes so much later or
 * earlier. Told by the lags of the take's segments, which then lie on two lines of one slope.
 */

/** A segment of the take and where the backing lies against it, samples. */
export interface LagPoint {
  readonly at: number;
  readonly lag: number;
}
export interface Slip {
  /** Take position, samples; known to within half a step from segment to segment. */
  readonly at: number;
  /** By how much later the band comes from there on. */
  readonly by: number;
}

/** Less may be a reflection that is louder than the first sound for some bars. */
const LEAST_SECONDS = 0.008;
/** So many segments in a row agree on the new delay, to within so much. */
const AGREEING = 3;
const AGREEMENT_SECONDS = 0.001;

/** @param points in order of `at` @returns slips in order */
export function slipsIn(points: readonly LagPoint[], sampleRate: number): readonly Slip[] {
  const steps = points.slice(1).map((p, i) => (p.lag - points[i]!.lag) / (p.at - points[i]!.at || 1));
  // Neighbours mostly lie on the same side of any slip: their slope is the clocks'.
  const slope = steps.toSorted((a, b) => a - b)[steps.length >> 1] ?? 0;
  const flat = points.map(({ at, lag }) => lag - slope * at);
  const alike = (a: number, b: number) => Math.abs(a - b) < AGREEMENT_SECONDS * sampleRate;
  const agreed = (i: number) =>
    i + AGREEING <= flat.length && flat.slice(i, i + AGREEING).every((x) => alike(x, flat[i]!));
  const slips: Slip[] = [];
  let known: number | null = null;
  for (let i = 0; i < flat.length; i++) {
    if (known !== null && Math.abs(flat[i]! - known) < LEAST_SECONDS * sampleRate) {
      if (alike(flat[i]!, known)) known = flat[i]!;
      continue;
    }
    if (!agreed(i)) continue;
    if (known !== null) slips.push({ at: (points[i - 1]!.at + points[i]!.at) / 2, by: flat[i]! - known });
    known = flat[i]!;
  }
  return slips;
}

/** By how much later the band comes at a moment than at the start. */
export const slippedBy = (slips: readonly Slip[], at: number): number =>
  slips.reduce((sum, slip) => (slip.at <= at ? sum + slip.by : sum), 0);
