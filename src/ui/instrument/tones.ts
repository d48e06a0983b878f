/** What each of the twelve pitch classes is: in the chord now, among the tones to land on next, in the palette. */
import type { TargetTone } from '../../core/grade/aims/targets.ts';
import type { Chord } from '../../core/music/chord.ts';

export interface Twelve {
  /** By pitch class; null where the chord of the moment does not name it. */
  readonly now: readonly (TargetTone | null)[];
  /** By pitch class; null where it is no target. */
  readonly next: readonly (TargetTone | null)[];
  readonly palette: ReadonlySet<number>;
}

const byPitchClass = (tones: readonly TargetTone[]): readonly (TargetTone | null)[] =>
  Array.from({ length: 12 }, (_, pitchClass) => tones.find((tone) => tone.pitchClass === pitchClass) ?? null);

/** @param chord of the moment, null over none */
export const twelveOf = (
  chord: Chord | null,
  targets: readonly TargetTone[],
  palette: ReadonlySet<number>,
): Twelve => ({ now: byPitchClass(chord?.tones ?? []), next: byPitchClass(targets), palette });

/** Reads one of twelve for any whole MIDI number. */
export const at = <T>(twelve: readonly T[], midi: number): T | null =>
  twelve[((midi % 12) + 12) % 12] ?? null;

/** The nearest target from a note: the third before others, then the one below, of those equally near. */
export function nearestTarget(
  midi: number,
  targets: readonly TargetTone[],
): { readonly midi: number; readonly tone: TargetTone } | null {
  const from = Math.round(midi);
  const found = targets.map((tone) => {
    const up = (((tone.pitchClass - from) % 12) + 12) % 12;
    const step = up < 6 ? up : up - 12;
    return { midi: from + step, tone, distance: Math.abs(step), above: step > 0 };
  });
  found.sort(
    (a, b) =>
      a.distance - b.distance ||
      Number(b.tone.role === 'third') - Number(a.tone.role === 'third') ||
      Number(a.above) - Number(b.above),
  );
  const [best] = found;
  return best === undefined ? null : { midi: best.midi, tone: best.tone };
}
