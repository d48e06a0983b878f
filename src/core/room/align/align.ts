/**
 * Where a backing lies in a take that was recorded over it, and how far the two clocks drift apart.
 *
 * Source: C. Knapp and G. Carter, "The generalized correlation method for estimation of time delay", IEEE
 * Trans. ASSP 24 (1976): the cross spectrum is whitened (PHAT), so that a repeated bass note alone does not
 * make a peak. The drift is the median of pairwise slopes (Theil 1950, Sen 1968), which tolerates segments where the
 * player is louder than the band.
 */
import { interpolated } from '../../base/interpolate.ts';
import { median } from '../../base/statistics.ts';
import { roundsAfter, roundsBefore } from './rounds.ts';
import { slippedBy, slipsIn, type LagPoint } from './slips.ts';
import { addWhitened, peakOf, topNear, type Peak } from './whitened.ts';

export interface Alignment {
  /** Take time at which the backing's first sample is heard, seconds; negative where its start was cut off. */
  readonly offsetSeconds: number;
  /** How much faster the backing runs in the take than in its file, parts per million. */
  readonly driftPpm: number;
  /** Height of the correlation peak over the rest, in standard deviations; under 8 nothing was found. */
  readonly prominence: number;
  /** Every repeat of the backing, and every part of a repeat after a slip of the browser, in order. */
  readonly runs: readonly Run[];
  /** Slips of the browser within a repeat. */
  readonly slips: readonly { readonly atSeconds: number; readonly bySeconds: number }[];
}

/** A stretch of the take in which the backing runs without a jump. */
export interface Run {
  readonly fromSeconds: number;
  /** Take time at which the backing's first sample lies, or would lie. */
  readonly offsetSeconds: number;
}

/** Length of a segment of the take, seconds: long enough for two bars, short enough that a drift of 200 ppm is 2 ms. */
const SEGMENT_SECONDS = 10;
const SHORTEST_SEGMENT_SECONDS = 3;
const COARSE_SEGMENTS = 16;
/** Sample rate of the coarse search, Hz: at higher rates, drift within a segment spreads the peak too far. */
const COARSE_HZ = 4000;
/** Peaks this close count as one in the coarse search, seconds: a drift of 200 ppm over a minute. */
const POOL_SECONDS = 0.006;
const FINE_SEGMENTS = 40;
/**
 * The direct sound is searched for within this time before the strongest arrival, and accepted from this share of its
 * height, where it stands out from the noise of the correlation (the highest of 500 values of noise is 3.1 standard
 * deviations). Of forty tuning rooms with reflections up to 10 dB above the direct sound one was wrong by more than 1 ms;
 * without this search the result was up to 28 ms late.
 */
const FIRST_SOUND_SECONDS = 0.04;
const FIRST_SOUND = 0.35;
const FIRST_SOUND_DEVIATIONS = 4.5;
/** Segments that measured the same arrival differ by no more than this, plus the drift of the clocks between them. */
const ONE_ARRIVAL_SECONDS = 0.0008;
const MOST_DRIFT = 3e-4;
/** Fewer segments than this may agree by accident, unless they are the majority. */
const LEAST_GROUP = 4;
const STRAIGHTENINGS = 2;
/** Reach of the fine search around the coarse result, seconds; 300 ppm over five minutes are 90 ms. */
const FINE_SECONDS = 0.12;
/**
 * If the band is in the take, the lags lie on one line to within this; otherwise they lie anywhere within FINE_SECONDS.
 */
const MOST_ASTRAY_SECONDS = 0.002;
/** A peak below this many standard deviations is taken for noise, which reaches 6 in a search this wide. */
const LEAST_PROMINENCE = 8;
/** A peak from this height on is certain, whatever the fine search gives: a player without the band reached 9. */
const CERTAIN_PROMINENCE = 12;
const SEARCH_SECONDS = 10;

/**
 * @param take what was recorded, mono @param backing what was played, mono @param sampleRate of both, Hz
 * @param searchSeconds largest offset that is searched, in both directions
 * @returns null where the backing is not to be found in the take
 */
export function align(
  take: Float32Array,
  backing: Float32Array,
  sampleRate: number,
  searchSeconds = SEARCH_SECONDS,
): Alignment | null {
  const coarse = coarseLag(take, backing, sampleRate, searchSeconds);
  if (!coarse || coarse.prominence < LEAST_PROMINENCE) return null;
  const round = take.subarray(0, Math.max(0, Math.ceil(coarse.lagSamples)) + backing.length);
  const first = fitted(round, backing, sampleRate, coarse.lagSamples);
  if (!first) return null;
  let { slope, start, slips } = first;
  // Drift widens the peaks that it is measured by: the search is repeated with most of the drift removed.
  for (let go = 0; go < STRAIGHTENINGS; go++) {
    const speed = 1 - slope;
    const straight = stretched(backing, speed);
    const rest = fitted(round, straight, sampleRate, start / speed);
    if (!rest) break;
    slope = 1 - speed * (1 - rest.slope);
    start = rest.start * speed;
    slips = rest.slips.map(({ at, by }) => ({ at, by: by * speed }));
  }
  const speed = 1 - slope;
  const straight = stretched(backing, speed);
  const steady = round.subarray(0, Math.ceil(slips[0]?.at ?? round.length));
  const begins = start / speed + firstSound(steady, straight, sampleRate, start / speed);
  const later = (at: number) => slippedBy(slips, at) / speed;
  const runs = [
    ...roundsBefore(take, straight, begins, sampleRate).map((at) => ({ from: at, offset: at })),
    { from: begins, offset: begins },
    ...slips.map(({ at }) => ({ from: at, offset: begins + later(at) })),
    ...roundsAfter(take, straight, begins + later(Infinity), sampleRate).map((at) => ({
      from: at,
      offset: at,
    })),
  ].map(({ from, offset }) => ({ fromSeconds: from / sampleRate, offsetSeconds: offset / sampleRate }));
  return {
    offsetSeconds: runs[0]!.offsetSeconds,
    driftPpm: -slope * 1e6,
    prominence: coarse.prominence,
    runs,
    slips: slips.map(({ at, by }) => ({ atSeconds: at / sampleRate, bySeconds: by / speed / sampleRate })),
  };
}

/**
 * By how many samples the direct sound precedes the strongest arrival, 0 or less: a reflection may be louder than the
 * direct sound. All segments are added, so that a direct sound half as strong stands far above the noise.
 */
function firstSound(take: Float32Array, straight: Float32Array, sampleRate: number, strongest: number) {
  const reach = Math.round(FIRST_SOUND_SECONDS * sampleRate);
  const first = Math.round(strongest) - reach;
  const sum = new Float64Array(reach + 1);
  const segment = fineSegment(take.length, sampleRate);
  for (const start of segmentStarts(take.length, segment, segment / 2, FINE_SEGMENTS)) {
    addWhitened(sum, take.subarray(start, start + segment), straight, start, first);
  }
  const accidents = median(Array.from(sum, Math.abs))! / 0.67;
  const least = Math.max(
    FIRST_SOUND * Math.max(Math.abs(sum[reach]!), Math.abs(sum[reach - 1]!)),
    FIRST_SOUND_DEVIATIONS * accidents,
  );
  const at = sum.findIndex((x, i) => Math.abs(x) >= least && Math.abs(x) >= Math.abs(sum[i + 1] ?? 0));
  return at < 0 || at >= reach - 1 ? 0 : first + topNear(sum, at) - strongest;
}

/** Whether the backing is in the take at all, even where its delay is not constant; false where that is uncertain. */
export function isSomewhere(take: Float32Array, backing: Float32Array, sampleRate: number): boolean {
  const coarse = coarseLag(take, backing, sampleRate, SEARCH_SECONDS);
  return coarse !== null && coarse.prominence >= CERTAIN_PROMINENCE;
}

/** The backing at the speed at which it runs in the take. */
const stretched = (backing: Float32Array, speed: number): Float32Array =>
  Float32Array.from({ length: Math.floor(backing.length / speed) }, (_, i) =>
    interpolated(backing, i * speed),
  );

/** The line through the lags of the take's segments; null where they lie on no line. */
function fitted(take: Float32Array, backing: Float32Array, sampleRate: number, around: number) {
  const segment = fineSegment(take.length, sampleRate);
  const points = fineLags(take, backing, sampleRate, around, segment);
  if (points.length === 0) return null;
  const slips = slipsIn(points, sampleRate);
  const steady = oneArrival(
    points.map(({ at, lag }) => ({ at, lag: lag - slippedBy(slips, at) })),
    sampleRate,
  );
  const slopes = pairwiseSlopes(steady, Math.min(2 * segment, (take.length - segment) / 2));
  const slope = median(slopes) ?? 0;
  const start = median(steady.map(({ at, lag }) => lag - slope * at))!;
  const astray = median(steady.map(({ at, lag }) => Math.abs(lag - slope * at - start)))!;
  return astray > MOST_ASTRAY_SECONDS * sampleRate ? null : { slope, start, slips };
}

/**
 * Where a reflection is as loud as the direct sound, some segments measure the one and some the other: the points of the
 * arrival that most segments measured. All points where they differ by more than reflections of a room do.
 */
function oneArrival(points: readonly LagPoint[], sampleRate: number): readonly LagPoint[] {
  const sorted = points.map(({ lag }) => lag).sort((a, b) => a - b);
  const most = sorted[Math.floor(0.9 * sorted.length)]! - sorted[Math.floor(0.1 * sorted.length)]!;
  if (most > FIRST_SOUND_SECONDS * sampleRate) return points;
  const groups = points.map(({ at, lag }) =>
    points.filter(
      (p) => Math.abs(p.lag - lag) < ONE_ARRIVAL_SECONDS * sampleRate + MOST_DRIFT * Math.abs(p.at - at),
    ),
  );
  const largest = groups.reduce((best, group) => (group.length > best.length ? group : best));
  return 2 * largest.length < points.length && largest.length < LEAST_GROUP ? points : largest;
}

/** Ten seconds, and a quarter of a short take: a slope can be measured only between points that are far apart. */
function fineSegment(length: number, sampleRate: number): number {
  const seconds = Math.max(SHORTEST_SEGMENT_SECONDS, Math.min(SEGMENT_SECONDS, length / sampleRate / 4));
  return Math.min(length, Math.round(seconds * sampleRate));
}

/**
 * The coarse lag: whitened correlations of several segments at a low sample rate, each smoothed over a few milliseconds
 * before they are added, so that their peaks still overlap where the clocks drift.
 */
function coarseLag(
  take: Float32Array,
  backing: Float32Array,
  sampleRate: number,
  searchSeconds: number,
): Peak | null {
  const step = Math.max(1, Math.round(sampleRate / COARSE_HZ));
  const rate = sampleRate / step;
  // After its end nothing of one repeat can be heard.
  const reached = Math.min(take.length, backing.length + Math.round(searchSeconds * sampleRate));
  const [slowTake, slowBacking] = [thinned(take.subarray(0, reached), step), thinned(backing, step)];
  const segment = Math.min(slowTake.length, Math.round(SEGMENT_SECONDS * rate));
  const reach = Math.round(searchSeconds * rate);
  const pool = Math.round(POOL_SECONDS * rate);
  const sum = new Float64Array(2 * reach + 1);
  const one = new Float64Array(sum.length);
  for (const start of segmentStarts(slowTake.length, segment, segment, COARSE_SEGMENTS)) {
    one.fill(0);
    addWhitened(one, slowTake.subarray(start, start + segment), slowBacking, start, -reach);
    for (let i = 0; i < sum.length; i++) {
      let most = 0;
      for (let j = Math.max(0, i - pool); j <= Math.min(one.length - 1, i + pool); j++) {
        most = Math.max(most, Math.abs(one[j]!));
      }
      sum[i] = sum[i]! + most ** 2;
    }
  }
  const mean = sum.reduce((total, value) => total + value, 0) / sum.length;
  const peak = peakOf(
    sum.map((value) => value - mean),
    -reach,
  );
  return peak && { ...peak, lagSamples: peak.lagSamples * step };
}

/** Every `step`-th sample of a running mean over `step` samples: accurate enough for a lag to within milliseconds. */
function thinned(signal: Float32Array, step: number): Float32Array {
  return Float32Array.from({ length: Math.floor(signal.length / step) }, (_, n) => {
    let sum = 0;
    for (let i = 0; i < step; i++) sum += signal[n * step + i]!;
    return sum / step;
  });
}

function fineLags(
  take: Float32Array,
  backing: Float32Array,
  sampleRate: number,
  around: number,
  segment: number,
) {
  const reach = Math.round(FINE_SECONDS * sampleRate);
  const points: LagPoint[] = [];
  for (const start of segmentStarts(take.length, segment, segment / 4, FINE_SEGMENTS)) {
    const first = Math.round(around) - reach;
    const correlation = new Float64Array(2 * reach + 1);
    addWhitened(correlation, take.subarray(start, start + segment), backing, start, first);
    const peak = peakOf(correlation, first);
    if (peak && peak.prominence >= LEAST_PROMINENCE) {
      points.push({ at: start + segment / 2, lag: peak.lagSamples });
    }
  }
  return points;
}

/** Start positions about `step` apart, the first and last aligned with the ends of the take; at most `most`. */
function segmentStarts(length: number, segment: number, step: number, most: number): number[] {
  const room = length - segment;
  const count = Math.max(1, Math.min(most, 1 + Math.ceil(room / Math.max(1, step))));
  return Array.from({ length: count }, (_, i) => (count === 1 ? 0 : Math.round((i * room) / (count - 1))));
}

/** Slopes between pairs of points at least `apart` from each other: between neighbours the noise dominates. */
function pairwiseSlopes(points: readonly LagPoint[], apart: number): number[] {
  return points.flatMap((p, i) =>
    points
      .slice(i + 1)
      .filter((q) => q.at - p.at >= apart)
      .map((q) => (q.lag - p.lag) / (q.at - p.at)),
  );
}
