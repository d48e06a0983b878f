/**
 * A slip: the browser's output and input lose or gain samples against each other, and from then on the band comes later
 * or earlier. It shows in the lags of the take's segments, which lie on two lines of the same slope.
 */

/** A segment of the take and the lag of the backing there, samples. */
export interface LagPoint {
  readonly at: number;
  readonly lag: number;
}
export interface Slip {
  /** Position in the take, samples; accurate to half the distance between two segments. */
  readonly at: number;
  /** By how many samples the band comes later from there on. */
  readonly by: number;
}

/** A smaller change may be a reflection that is louder than the direct sound for some bars, seconds. */
const LEAST_SECONDS = 0.008;
/** This many segments in a row must agree on the new delay, to within the tolerance below. */
const AGREEING = 3;
const AGREEMENT_SECONDS = 0.001;

/** @param points in order of `at` @returns slips in order */
export function slipsIn(points: readonly LagPoint[], sampleRate: number): readonly Slip[] {
  const steps = points.slice(1).map((p, i) => (p.lag - points[i]!.lag) / (p.at - points[i]!.at || 1));
  // Most neighbours lie on the same side of a slip, so that their slope is the drift of the clocks.
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

/** By how many samples the band comes later at a moment than at the start. */
export const slippedBy = (slips: readonly Slip[], at: number): number =>
  slips.reduce((sum, slip) => (slip.at <= at ? sum + slip.by : sum), 0);
