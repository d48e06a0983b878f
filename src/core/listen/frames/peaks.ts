import * as S from '../tuning/frames.ts';

/** Peaks of a normalised square difference as lags and heights; buffers reused from frame to frame. */
export interface Peaks {
  count: number;
  readonly lag: Float64Array;
  readonly height: Float64Array;
}

export function emptyPeaks(): Peaks {
  return { count: 0, lag: new Float64Array(S.PEAKS_SEEN), height: new Float64Array(S.PEAKS_SEEN) };
}

/**
 * The key maxima (highest point between two zero crossings, McLeod & Wyvill section 5) between two lags that
 * reach `share` of the highest of them. When there are more than fit, the shortest lags stay: subharmonics
 * of a true period are peaks too, its overtones are not.
 */
export function findPeaks(
  curve: Float32Array,
  shortest: number,
  longest: number,
  peaks: Peaks,
  share = S.CANDIDATE_SHARE,
): void {
  peaks.count = 0;
  // The lobe about lag 0 holds no period, only ripples of the overtones.
  const start = Math.max(endOfLobe(curve, 1, longest), shortest);
  let best = highest(curve, start, longest);
  if (best <= 0) return;
  // On the lags themselves a narrow peak may stand this much lower than it is.
  const least = best * share * S.ON_LAG_SHARE;
  best = 0;
  let lag = start;
  while (lag < longest && peaks.count < S.PEAKS_SEEN) {
    const y = curve[lag]!;
    if (y >= least && y > curve[lag - 1]! && y >= curve[lag + 1]!) {
      const next = endOfLobe(curve, lag + 1, longest);
      const top = topOf(curve, lag, next);
      const height = Math.min(1, peakHeight(curve, top));
      if (height > best) best = height;
      peaks.lag[peaks.count] = top + vertex(curve, top);
      peaks.height[peaks.count] = height;
      peaks.count++;
      lag = next;
    } else lag++;
  }
  let kept = 0;
  for (let i = 0; i < peaks.count && kept < S.CANDIDATES; i++) {
    if (peaks.height[i]! < best * share) continue;
    peaks.lag[kept] = peaks.lag[i]!;
    peaks.height[kept++] = peaks.height[i]!;
  }
  peaks.count = kept;
}

/** First lag from `from` on where the curve is not above zero, `to` at the latest. */
function endOfLobe(curve: Float32Array, from: number, to: number): number {
  let lag = from;
  while (lag < to && curve[lag]! > 0) lag++;
  return lag;
}

/** The highest peak of a lobe whose first peak is at `first`. */
function topOf(curve: Float32Array, first: number, end: number): number {
  let top = first;
  for (let lag = first + 1; lag < end; lag++)
    if (curve[lag]! > curve[top]! && curve[lag]! >= curve[lag + 1]!) top = lag;
  return top;
}

/** Highest peak between two lags, 0 without. */
function highest(curve: Float32Array, from: number, to: number): number {
  let best = 0;
  let before = curve[from - 1]!;
  let here = curve[from]!;
  for (let lag = from; lag < to; lag++) {
    const after = curve[lag + 1]!;
    if (here > best && here > before && here >= after) best = here;
    before = here;
    here = after;
  }
  return best;
}

/**
 * The period from the peak near its largest multiple inside `longest`: the error of the vertex is divided by that
 * multiple. Goes up by steps that stay within a quarter period of the peak sought.
 */
export function refineLag(curve: Float32Array, lag: number, longest: number): number {
  let period = lag;
  let multiple = 1;
  while ((multiple + 1) * period < longest - 1) {
    const next = Math.min(multiple * 2, Math.floor((longest - 1) / period));
    if (next === multiple) break;
    const guess = next * period;
    const reach = Math.max(1, Math.floor(period * S.REFINE_REACH));
    let top = Math.round(guess);
    for (let i = Math.round(guess) - reach; i <= guess + reach; i++) {
      if (i > 0 && i < longest && curve[i]! > curve[top]!) top = i;
    }
    if (top < 1 || top >= longest || curve[top]! < S.REFINE_LEAST) break;
    const refined = (top + vertex(curve, top)) / next;
    if (Math.abs(refined - period) > period * S.REFINE_MOST) break;
    period = refined;
    multiple = next;
  }
  return period;
}

/** Offset of the parabola's vertex through three points about `i`, −0.5 to 0.5. */
function vertex(curve: Float32Array, i: number): number {
  const a = curve[i - 1]!;
  const b = curve[i]!;
  const c = curve[i + 1]!;
  const bend = a - 2 * b + c;
  if (bend >= 0) return 0;
  return Math.max(-0.5, Math.min(0.5, (a - c) / (2 * bend)));
}

/** Row s: a Hann-windowed sinc, centred s / SINC_STEPS − ½ of a lag beside the middle. */
const KERNEL = Float64Array.from({ length: (S.SINC_STEPS + 1) * (2 * S.SINC_REACH + 1) }, (_, i) => {
  const offset = Math.floor(i / (2 * S.SINC_REACH + 1)) / S.SINC_STEPS - 0.5;
  const x = (i % (2 * S.SINC_REACH + 1)) - S.SINC_REACH - offset;
  if (Math.abs(x) < 1e-9) return 1;
  return (
    (Math.sin(Math.PI * x) / (Math.PI * x)) * (0.5 + 0.5 * Math.cos((Math.PI * x) / (S.SINC_REACH + 0.5)))
  );
});

/**
 * Height of the curve about `i` at its vertex. Where the top octave is strong, a parabola through three lags reads a
 * peak half way between two of them too low, and the longer period, if it falls on a lag, would win.
 */
function peakHeight(curve: Float32Array, i: number): number {
  if (i < S.SINC_REACH || i + S.SINC_REACH >= curve.length) return curve[i]!;
  const row = Math.round((vertex(curve, i) + 0.5) * S.SINC_STEPS) * (2 * S.SINC_REACH + 1);
  let sum = 0;
  for (let k = 0; k <= 2 * S.SINC_REACH; k++) sum += KERNEL[row + k]! * curve[i - S.SINC_REACH + k]!;
  return Math.max(sum, curve[i]!);
}
