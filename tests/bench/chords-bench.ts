/**
 * How well the chords of backings are found, on what fixtures/chords/make-data.ts rendered with `--detect`:
 *
 *   npx tsx tests/bench/chords-bench.ts FOLDER [--kind band] [--true-beats] [--list] [--bars FILE]
 *
 * Chords are measured as mir_eval does, beats and downbeats by their F within ±70 ms. A form counts as right where its
 * length is the chart's, or the part that the chart repeats. `--bars` writes how sure each bar was and whether it was right.
 */
import { writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { chorusOf, readBackings, type KeptBacking } from '../../fixtures/chords/data-folder.ts';
import { numberOfSymbol } from '../../src/core/harmony/chord-names.ts';
import { NO_CHORD } from '../../src/core/harmony/chord-types.ts';
import { onChordsLevel } from '../../src/core/harmony/beat-level.ts';
import { countedBeats } from '../../src/core/harmony/counted-beats.ts';
import type { ChartProposal, ProposedBar } from '../../src/core/harmony/proposal.ts';
import { proposeChart } from '../../src/core/harmony/propose.ts';
import { SURE } from '../../src/core/harmony/settings.ts';
import { chordWeights } from '../../src/core/harmony/weights.ts';
import { beatFMeasure } from '../core/beats/rendered-track.ts';
import { majmin, root, secondsRight, sevenths, type Stretches } from './chord-measures.ts';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    kind: { type: 'string', default: '' },
    bars: { type: 'string' },
    'true-beats': { type: 'boolean', default: false },
    list: { type: 'boolean', default: false },
  },
});

/** The chord of each beat of a bar. */
const beatsOf = ({ chords }: ProposedBar): readonly number[] =>
  chords.flatMap(({ symbol, beats }) => new Array<number>(beats).fill(numberOfSymbol(symbol) ?? NO_CHORD));

const stretches = (beats: readonly number[], chorus: readonly number[]): Stretches =>
  beats.slice(0, -1).map((from, b) => ({ from, to: beats[b + 1]!, chord: chorus[b % chorus.length]! }));

/** The shortest part that the chart is a repetition of, in bars. */
function repeatedBars(chorus: readonly number[], beatsPerBar: number): number {
  const all = chorus.length / beatsPerBar;
  for (let bars = 1; bars < all; bars++)
    if (all % bars === 0 && chorus.every((chord, b) => chord === chorus[b % (bars * beatsPerBar)]))
      return bars;
  return all;
}

interface Scored {
  readonly measures: readonly (readonly [right: number, all: number])[];
  readonly length: boolean;
  readonly beatF: number;
  readonly downF: number;
}

const bars: { backing: string; sure: number; right: boolean; choruses: number }[] = [];

function scored(one: KeptBacking, proposal: ChartProposal | null, beats: readonly number[]): Scored {
  const chorus = chorusOf(one.chart);
  const { beatsPerBar } = one.chart;
  const truth = stretches(one.beats, chorus);
  const played = one.beats.slice(0, -1);
  const heard = beats.slice(proposal?.downbeat ?? 0);
  const found =
    proposal === null
      ? []
      : stretches([...heard, 2 * heard.at(-1)! - heard.at(-2)!], proposal.bars.flatMap(beatsOf));
  const downs = (list: readonly number[], every: number) => list.filter((_, i) => i % every === 0);
  const downF =
    proposal === null ? 0 : beatFMeasure(downs(heard, proposal.beatsPerBar), downs(played, beatsPerBar));
  const repeated = repeatedBars(chorus, beatsPerBar);
  const found_ = proposal?.bars.length ?? 0;
  // A bar is right where every beat of it has its chord in every chorus.
  proposal?.bars.forEach((bar, i) => {
    const own = beatsOf(bar);
    const size = proposal.bars.length * proposal.beatsPerBar;
    let right = true;
    for (let chorusAt = 0; chorusAt * size < heard.length; chorusAt++)
      own.forEach((chord, b) => {
        const at = heard[chorusAt * size + i * proposal.beatsPerBar + b];
        if (at === undefined) return;
        const middle = at + 0.25 * (60 / 120);
        const there = truth.find(({ from, to }) => middle >= from && middle < to);
        if (there !== undefined && there.chord !== chord) right = false;
      });
    bars.push({ backing: `${one.name} ${one.seconds}`, sure: bar.sure, right, choruses: proposal.choruses });
  });
  return {
    measures: [root, majmin, sevenths].map((reduce) => secondsRight(truth, found, reduce)),
    length:
      proposal?.beatsPerBar === beatsPerBar &&
      found_ % repeated === 0 &&
      (one.chart.bars.length % found_ === 0 || found_ === one.chart.bars.length),
    beatF: beatFMeasure(
      beats.filter((beat) => beat > played[0]! - 0.1),
      played,
    ),
    downF,
  };
}

const all = new Map<string, Scored[]>();
for (const one of readBackings(positionals[0]!, values.kind)) {
  const beats = values['true-beats'] ? one.beats.slice(0, -1) : (one.detected ?? []);
  const began = performance.now();
  const onLevel =
    beats.length < 2 || values['true-beats'] ? beats : onChordsLevel(one.spectrum, beats, chordWeights());
  const counted = onLevel.length < 2 ? null : countedBeats(one.spectrum, onLevel, chordWeights());
  const proposal =
    counted && proposeChart({ logs: counted.logs, beats: counted.tones.beats, tuningCents: 0 });
  const seconds = (performance.now() - began) / 1000;
  const score = scored(one, proposal, counted?.beats ?? []);
  const kind = one.name.split(' ')[0]!;
  all.set(kind, [...(all.get(kind) ?? []), score]);
  console.log(
    one.name.padEnd(26),
    ...score.measures.map(([right, of]) => (right / of).toFixed(2)),
    `bars ${proposal?.bars.length ?? 0}/${one.chart.bars.length}${score.length ? '' : '!'}`,
    `meter ${proposal?.beatsPerBar ?? 0}/${one.chart.beatsPerBar}`,
    `down ${score.downF.toFixed(2)} beat ${score.beatF.toFixed(2)} ${seconds.toFixed(1)} s`,
    proposal?.form?.name ?? '',
  );
  if (values.list) console.log(one.chart.text, '\n', proposal?.chart);
}
const mean = (list: readonly number[]) => list.reduce((sum, x) => sum + x, 0) / Math.max(1, list.length);
for (const [kind, scores] of all) {
  const shares = ['root', 'majmin', 'sevenths'].map((name, m) => {
    const [right, of] = [0, 1].map((i) => scores.reduce((sum, { measures }) => sum + measures[m]![i]!, 0));
    return `${name} ${(right! / of!).toFixed(3)}`;
  });
  console.log(
    `${kind}: ${scores.length} tracks, ${shares.join(', ')}, form length right ${scores.filter(({ length }) => length).length},`,
    `beat F ${mean(scores.map(({ beatF }) => beatF)).toFixed(3)}, downbeat F ${mean(scores.map(({ downF }) => downF)).toFixed(3)}`,
  );
}
for (const level of [0.5, 0.8, 0.9, 0.95, 0.98, 0.99, SURE]) {
  const some = bars.filter(({ sure }) => sure >= level);
  const right = some.filter((bar) => bar.right).length;
  console.log(
    `bars sure from ${level}: ${some.length} of ${bars.length}, right ${(right / Math.max(1, some.length)).toFixed(3)}`,
  );
}
if (values.bars !== undefined) writeFileSync(values.bars, JSON.stringify(bars));
