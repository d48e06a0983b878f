/**
 * Six backings that the fit has not heard: other players on another sound bank, and a guitar of another library
 * (fixtures/chords/keep-tones.ts). What is found in them may get better, and not worse.
 */
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { BeatTones } from '../../../src/core/harmony/beat-tones.ts';
import { isBarSure } from '../../../src/core/harmony/chart-of-recording.ts';
import { numberOfSymbol } from '../../../src/core/harmony/chord-names.ts';
import { chordLikelihoods } from '../../../src/core/harmony/chord-network.ts';
import { NO_CHORD } from '../../../src/core/harmony/chord-types.ts';
import { proposeChart } from '../../../src/core/harmony/propose.ts';
import { chordWeights } from '../../../src/core/harmony/weights.ts';
import { majmin, sevenths } from '../../bench/chord-measures.ts';

interface Kept {
  readonly name: string;
  readonly bars: number;
  readonly labels: readonly number[];
  readonly levelsDb: readonly number[];
  readonly folded: string;
}
const kept = JSON.parse(
  readFileSync(new URL('../../../fixtures/chords/unheard-tones.json', import.meta.url), 'utf8'),
) as readonly Kept[];

test('chords, and the bars that are shown as sure, stay as right as they were measured', () => {
  const counts = { major: [0, 0], seventh: [0, 0], sure: [0, 0], bars: 0, lengths: 0 };
  for (const { bars, labels, levelsDb, folded } of kept) {
    const tones: BeatTones = {
      folded: Float32Array.from(Buffer.from(folded, 'base64'), (x) => x / 255),
      beats: levelsDb.length,
      levelsDb: Float32Array.from(levelsDb),
    };
    const logs = chordLikelihoods(tones, chordWeights());
    const proposal = proposeChart({ logs, beats: tones.beats, tuningCents: 0 })!;
    const chorus = proposal.bars.flatMap(({ chords }) =>
      chords.flatMap(({ symbol, beats }) =>
        new Array<number>(beats).fill(numberOfSymbol(symbol) ?? NO_CHORD),
      ),
    );
    const found = (beat: number) =>
      beat < proposal.downbeat ? NO_CHORD : chorus[(beat - proposal.downbeat) % chorus.length]!;
    labels.forEach((truth, beat) => {
      if (truth === NO_CHORD) return;
      for (const [reduce, count] of [
        [majmin, counts.major],
        [sevenths, counts.seventh],
      ] as const) {
        if (reduce(truth) === null) continue;
        count[1]!++;
        if (reduce(found(beat)) === reduce(truth)) count[0]!++;
      }
    });
    proposal.bars.forEach((bar, i) => {
      counts.bars++;
      if (!isBarSure(bar)) return;
      const from = proposal.downbeat + i * proposal.beatsPerBar;
      counts.sure[1]!++;
      const beats = Array.from({ length: proposal.beatsPerBar }, (_, b) => from + b);
      if (beats.every((beat) => labels[beat] === undefined || labels[beat] === found(beat)))
        counts.sure[0]!++;
    });
    if (proposal.bars.length === bars) counts.lengths++;
  }
  const share = ([right, all]: readonly number[]) => right! / all!;
  expect(kept).toHaveLength(6);
  expect(share(counts.major)).toBeGreaterThan(0.93);
  expect(share(counts.seventh)).toBeGreaterThan(0.86);
  expect(share(counts.sure)).toBeGreaterThan(0.96);
  expect(counts.sure[1]).toBeGreaterThan(0.45 * counts.bars);
  expect(counts.lengths).toBeGreaterThanOrEqual(5);
});
