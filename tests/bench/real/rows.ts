/** Adds judgements up and writes them as rows of text. */
import { percentile, scoreOf, type Score } from '../note-metrics.ts';
import type { Judgement } from './judge.ts';

export interface Sum extends Judgement {
  readonly recordings: number;
  /** Of those that give a sequence. */
  readonly sequences: number;
  readonly exact: number;
}

export function sumOf(judgements: readonly Judgement[]): Sum {
  const total = (of: (one: Judgement) => number): number => judgements.reduce((sum, one) => sum + of(one), 0);
  return {
    right: total((one) => one.right),
    played: total((one) => one.played),
    heard: total((one) => one.heard),
    extras: judgements.flatMap((one) => one.extras),
    misses: judgements.flatMap((one) => one.misses),
    onsetErrorsMs: judgements.flatMap((one) => one.onsetErrorsMs),
    confidences: judgements.flatMap((one) => one.confidences),
    isExact: null,
    recordings: judgements.length,
    sequences: total((one) => (one.isExact === null ? 0 : 1)),
    exact: total((one) => (one.isExact === true ? 1 : 0)),
  };
}

export const scoreOfSum = (sum: Judgement): Score => scoreOf(sum.right, sum.played, sum.heard);

/** How many of each kind, most first: "damping 34, swell 5". */
export function counted(kinds: readonly string[]): string {
  const counts = new Map<string, number>();
  for (const kind of kinds) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  return [...counts]
    .sort(([, a], [, b]) => b - a)
    .map(([kind, count]) => `${kind} ${count}`)
    .join(', ');
}

/** F1, precision, recall; for sequences how many are exact. A dash where nothing was heard by this listener. */
export function cellOf(sum: Sum | null): string {
  if (!sum) return '–';
  const { f1, precision, recall } = scoreOfSum(sum);
  const score = `${f1.toFixed(3)} (${precision.toFixed(2)}, ${recall.toFixed(2)})`;
  return sum.sequences === 0 ? score : `${sum.exact} of ${sum.sequences} exact`;
}

/** How far right onsets lie from the annotation: median and nine in ten, without sign. */
export function onsetsOf(sum: Sum): string {
  const sizes = sum.onsetErrorsMs.map(Math.abs);
  return sizes.length === 0
    ? ''
    : `onsets off by ${percentile(sizes, 0.5).toFixed(0)} ms, nine in ten within ${percentile(sizes, 0.9).toFixed(0)} ms`;
}

export interface ConfidenceBand {
  readonly from: number;
  readonly notes: number;
  /** Share of them that is right. */
  readonly right: number;
}

/** Share of right notes in each tenth of confidence that has any; the last holds 1, too. */
export function confidenceBands(sum: Judgement): readonly ConfidenceBand[] {
  return Array.from({ length: 10 }, (_, tenth) => {
    const inside = sum.confidences.filter(([value]) => Math.min(9, Math.floor(value * 10 + 1e-9)) === tenth);
    const right = inside.filter(([, isRight]) => isRight).length;
    return { from: tenth / 10, notes: inside.length, right: right / Math.max(1, inside.length) };
  }).filter(({ notes }) => notes > 0);
}
