/**
 * `npm run bench -- --real FOLDER`: every annotated recording of a folder, each listener in turn, by instrument or by
 * the collection they come from. What counts as right: README.md beside this.
 */
import { english } from '../../english.ts';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { listen } from '../../../src/core/listen.ts';
import { pitchyDatedAt } from '../listeners.ts';
import type { Listen } from '../measure.ts';
import { aubionotes, basicPitch } from '../outside-listeners.ts';
import { hasBurst } from './burst.ts';
import { readFolder, readSound, type AnnotatedRecording } from './folder.ts';
import { judge, type Judgement, type SureNote } from './judge.ts';
import { cellOf, confidenceBands, counted, onsetsOf, scoreOfSum, sumOf } from './rows.ts';
import { instrumentOf } from './truth.ts';

export interface RealBenchOptions {
  readonly folder: string;
  /** Rows: one for each instrument, or one for each collection of recordings. */
  readonly by: 'instrument' | 'source';
  /** Beginnings of names; empty for all recordings. */
  readonly only: readonly string[];
  /** Listeners to leave out. */
  readonly without: readonly string[];
  /** Notes of ours from this confidence up count in "ours, sure". */
  readonly sure: number;
  /** Instruments whose labels are trusted to 100 ms only, besides those that the catalogue marks. */
  readonly wide: readonly string[];
  /** A row for each recording, too. */
  readonly files: boolean;
  /** A folder to write the heard notes to, as LISTENER/NAME.json; null for none. */
  readonly write: string | null;
}

const OURS = 'ours';
const SURE = 'ours, sure';

async function listeners(without: readonly string[]): Promise<ReadonlyMap<string, Listen | null>> {
  const invited: readonly (readonly [string, () => Listen | null | Promise<Listen | null>])[] = [
    [OURS, () => listen],
    ['pitchy, window start', () => pitchyDatedAt(0)],
    ['pitchy, window middle', () => pitchyDatedAt(0.5)],
    ['aubionotes', aubionotes],
    ['Basic Pitch', basicPitch],
  ];
  const there = new Map<string, Listen | null>();
  for (const [name, make] of invited) if (!without.includes(name)) there.set(name, await make());
  return there;
}

type Judgements = Map<string, Map<string, Judgement>>;

/** Judgements by listener, then by recording; and how many times faster than real time each listener went. */
async function hearAll(
  recordings: readonly AnnotatedRecording[],
  entrants: ReadonlyMap<string, Listen | null>,
  options: RealBenchOptions,
): Promise<{ judgements: Judgements; speeds: ReadonlyMap<string, number> }> {
  const judgements: Judgements = new Map();
  const workSeconds = new Map<string, number>();
  let audioSeconds = 0;
  const put = (listener: string, recording: AnnotatedRecording, judgement: Judgement): void => {
    const row = judgements.get(listener) ?? new Map<string, Judgement>();
    judgements.set(listener, row.set(recording.name, judgement));
  };
  for (const recording of recordings) {
    const sound = await readSound(recording.audioPath);
    if (!sound.ok) throw new Error(english(sound.problem));
    const { samples, sampleRate } = sound.value;
    audioSeconds += samples.length / sampleRate;
    const burst = (seconds: number): boolean => hasBurst(samples, sampleRate, seconds);
    for (const [name, hear] of entrants) {
      if (!hear) continue;
      const begun = performance.now();
      const heard: readonly SureNote[] = await hear(samples, sampleRate);
      workSeconds.set(name, (workSeconds.get(name) ?? 0) + (performance.now() - begun) / 1000);
      if (options.write !== null) writeHeard(join(options.write, name), recording.name, heard);
      put(name, recording, judge(recording, heard, burst));
      if (name !== OURS) continue;
      const sure = heard.filter((note) => (note.confidence ?? 1) >= options.sure);
      put(SURE, recording, judge(recording, sure, burst));
    }
  }
  const speeds = new Map([...workSeconds].map(([name, work]) => [name, audioSeconds / work]));
  return { judgements, speeds };
}

function writeHeard(folder: string, name: string, heard: readonly SureNote[]): void {
  mkdirSync(folder, { recursive: true });
  const notes = heard.map(({ onsetSeconds, offsetSeconds, midi, confidence }) => ({
    on: onsetSeconds,
    off: offsetSeconds,
    midi,
    confidence: confidence ?? 1,
  }));
  writeFileSync(join(folder, `${name}.json`), JSON.stringify(notes));
}

/** Runs the bench and returns its table as lines of text. */
export async function benchReal(options: RealBenchOptions): Promise<readonly string[]> {
  const folder = readFolder(options.folder, options.wide);
  if (!folder.ok) return [folder.sentence];
  const recordings = folder.value.filter(
    ({ name }) => options.only.length === 0 || options.only.some((start) => name.startsWith(start)),
  );
  const entrants = await listeners(options.without);
  const { judgements, speeds } = await hearAll(recordings, entrants, options);
  const names = [...judgements.keys()];
  const chosen = (listener: string, of: readonly AnnotatedRecording[]): readonly Judgement[] =>
    of.flatMap(({ name }) => judgements.get(listener)?.get(name) ?? []);

  const rows = new Map<string, AnnotatedRecording[]>();
  for (const recording of recordings) {
    const key = options.by === 'source' ? recording.source : instrumentOf(recording.name);
    rows.set(key, [...(rows.get(key) ?? []), recording]);
  }
  const width = 24;
  const lines = [
    'F1 (precision, recall): onset within 50 ms (100 ms where it was annotated afterwards), pitch within 50 cents.',
    '',
    ''.padEnd(width) + names.map((name) => name.padEnd(width)).join(''),
  ];
  const row = (name: string, of: readonly AnnotatedRecording[]): string =>
    name.padEnd(width) + names.map((listener) => cellOf(sumOf(chosen(listener, of))).padEnd(width)).join('');
  for (const [name, of] of rows) {
    lines.push(row(name, of));
    if (options.files && of.length > 1) lines.push(...of.map((one) => row(`  ${one.name}`, [one])));
  }
  const means = names.map((listener) => {
    const scores = [...rows.values()].map((of) => scoreOfSum(sumOf(chosen(listener, of))).f1);
    return (scores.reduce((sum, f1) => sum + f1, 0) / Math.max(1, scores.length)).toFixed(3);
  });
  lines.push('mean F1 of the rows'.padEnd(width) + means.map((mean) => mean.padEnd(width)).join(''));
  const times = names.map((listener) => speeds.get(listener)?.toFixed(1) ?? '');
  lines.push('× real time'.padEnd(width) + times.map((speed) => speed.padEnd(width)).join(''), '');
  if (!judgements.has(SURE)) return lines;

  lines.push('What is wrong with ours, sure:');
  for (const [name, of] of rows) {
    const sum = sumOf(chosen(SURE, of));
    const onsets = onsetsOf(sum);
    lines.push(`${name.padEnd(width)}extra: ${counted(sum.extras) || 'none'}`);
    lines.push(`${''.padEnd(width)}missed: ${counted(sum.misses) || 'none'}`);
    if (onsets) lines.push(`${''.padEnd(width)}${onsets}`);
  }
  lines.push('', 'Share of right notes by confidence:');
  for (const { from, notes, right } of confidenceBands(sumOf(chosen(OURS, recordings))))
    lines.push(`  ${from.toFixed(1)} to ${(from + 0.1).toFixed(1)}  ${right.toFixed(2)} of ${notes}`);
  return lines;
}
