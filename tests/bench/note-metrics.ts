/**
 * How well a list of notes was heard.
 *
 * A note is heard when an estimate starts within the onset tolerance and lies within the pitch tolerance; each
 * note counts once, by the largest one-to-one matching. This is the MIR community's transcription metric
 * (Bay, Ehmann, Downie, ISMIR 2009; mir_eval.transcription with offset_ratio None), checked against mir_eval in
 * tests/outside/mir-eval.test.ts.
 *
 * Conventions: the reference comes first. Times in seconds, pitches as fractional MIDI numbers. Onset distances
 * are rounded to 0.1 ms before they are compared, and the comparison is `<=`.
 */

/** The part of a note that the metric looks at. */
export interface MetricNote {
  readonly onsetSeconds: number;
  readonly offsetSeconds: number;
  readonly midi: number;
}

export interface Tolerances {
  readonly onsetToleranceSeconds: number;
  /** Infinity: onsets alone. */
  readonly pitchToleranceCents: number;
}

/** mir_eval's defaults. */
export const defaultTolerances: Tolerances = { onsetToleranceSeconds: 0.05, pitchToleranceCents: 50 };

/** [index in the reference, index in the estimate]. */
export type Match = readonly [reference: number, estimate: number];

export interface Score {
  readonly precision: number;
  readonly recall: number;
  readonly f1: number;
}

/** Rounds half to even, as NumPy's `around` does. */
function roundedToTenthMs(seconds: number): number {
  const scaled = seconds * 10_000;
  const floor = Math.floor(scaled);
  const rest = scaled - floor;
  const up = rest > 0.5 || (rest === 0.5 && floor % 2 !== 0);
  return (up ? floor + 1 : floor) / 10_000;
}

/**
 * The largest one-to-one matching between reference and estimate (Hopcroft and Karp, SIAM J. Comput. 1973).
 * Sorted by reference index. Which of several largest matchings comes back is not specified; its size is.
 */
export function matchNotes(
  reference: readonly MetricNote[],
  estimate: readonly MetricNote[],
  tolerances: Tolerances = defaultTolerances,
): readonly Match[] {
  const { onsetToleranceSeconds, pitchToleranceCents } = tolerances;
  const edges = reference.map((r) =>
    estimate.flatMap((e, index) =>
      roundedToTenthMs(Math.abs(r.onsetSeconds - e.onsetSeconds)) <= onsetToleranceSeconds &&
      100 * Math.abs(r.midi - e.midi) <= pitchToleranceCents
        ? [index]
        : [],
    ),
  );
  const partnerOfReference = new Int32Array(reference.length).fill(-1);
  const partnerOfEstimate = new Int32Array(estimate.length).fill(-1);
  const depth = new Int32Array(reference.length);

  /** Layers the references by alternating path length from the free ones; false when no free estimate is reachable. */
  const layer = (): boolean => {
    const queue: number[] = [];
    depth.fill(-1);
    partnerOfReference.forEach((partner, r) => {
      if (partner !== -1) return;
      depth[r] = 0;
      queue.push(r);
    });
    let reachable = false;
    for (const r of queue) {
      for (const e of edges[r] ?? []) {
        const next = partnerOfEstimate[e] as number;
        if (next === -1) reachable = true;
        else if (depth[next] === -1) {
          depth[next] = (depth[r] as number) + 1;
          queue.push(next);
        }
      }
    }
    return reachable;
  };
  const augment = (r: number): boolean => {
    for (const e of edges[r] ?? []) {
      const next = partnerOfEstimate[e] as number;
      if (next === -1 || (depth[next] === (depth[r] as number) + 1 && augment(next))) {
        partnerOfReference[r] = e;
        partnerOfEstimate[e] = r;
        return true;
      }
    }
    depth[r] = -1;
    return false;
  };
  while (layer()) partnerOfReference.forEach((partner, r) => partner === -1 && augment(r));

  const matches: Match[] = [];
  partnerOfReference.forEach((e, r) => e !== -1 && matches.push([r, e]));
  return matches;
}

/** Precision, recall and F1 from counts; all 0 where either list is empty, as in mir_eval. */
export function scoreOf(matched: number, references: number, estimates: number): Score {
  if (matched === 0 || references === 0 || estimates === 0) return { precision: 0, recall: 0, f1: 0 };
  const precision = matched / estimates;
  const recall = matched / references;
  return { precision, recall, f1: (2 * precision * recall) / (precision + recall) };
}

/** Note score: onset and pitch. */
export function noteScore(
  reference: readonly MetricNote[],
  estimate: readonly MetricNote[],
  tolerances: Tolerances = defaultTolerances,
): Score {
  return scoreOf(matchNotes(reference, estimate, tolerances).length, reference.length, estimate.length);
}

/** Onset score: pitch does not matter. */
export function onsetScore(
  reference: readonly MetricNote[],
  estimate: readonly MetricNote[],
  onsetToleranceSeconds = defaultTolerances.onsetToleranceSeconds,
): Score {
  return noteScore(reference, estimate, { onsetToleranceSeconds, pitchToleranceCents: Infinity });
}

/** Value below which the given share of the list lies (nearest rank); NaN of an empty list. */
export function percentile(values: readonly number[], share: number): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.max(0, Math.ceil(share * sorted.length) - 1))] ?? NaN;
}
