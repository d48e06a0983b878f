/** `landfall chords`: a recording in, the chart that is proposed for it out. */
import { bad, good } from '../core/base/outcome.ts';
import { openAudio, readWhole } from '../core/files/audio.ts';
import {
  chartOfRecording,
  firstBeatSeconds,
  isBarSure,
  type FoundChart,
} from '../core/harmony/chart-of-recording.ts';
import { writeKey } from '../core/music/keys.ts';
import type { Notice } from '../core/words/problem.ts';
import { spelledChord } from '../core/words/spelling.ts';
import type { Words } from '../core/words/words.ts';
import type { Answer } from './answer.ts';
import { openFile } from './file-source.ts';
import type { ChordsOrder } from './orders.ts';
import type { Progress } from './progress.ts';

/** What goes to standard output. */
export interface FoundPage {
  readonly page: string;
  readonly warnings: readonly Notice[];
}

const MILLI = 1000;
const inMilliseconds = (seconds: number) => Math.round(seconds * MILLI) / MILLI;

/** The proposal as one plain value, for other programs. Times in seconds, shares 0 to 1. */
const valueOf = (found: FoundChart) => jsonOf(found, firstBeatSeconds(found));

const jsonOf = ({ proposal, bpm, beats }: FoundChart, firstBeat: number) => ({
  format: 'landfall-chords',
  version: 1,
  chart: proposal.chart,
  key: writeKey(proposal.key),
  beatsPerBar: proposal.beatsPerBar,
  bpm: Math.round(bpm * 10) / 10,
  firstBeatSeconds: inMilliseconds(firstBeat),
  choruses: proposal.choruses,
  tuningCents: Math.round(proposal.tuningCents),
  form: proposal.form && {
    name: proposal.form.name,
    key: writeKey(proposal.form.key),
    alike: proposal.form.alike,
  },
  bars: proposal.bars.map((bar) => ({ ...bar, isSure: isBarSure(bar) })),
  beatSeconds: beats.map(inMilliseconds),
});

function pageOf(found: FoundChart, words: Words): string {
  const { proposal, bpm } = found;
  const { chords } = words.cli;
  const { form, bars } = proposal;
  const unsure = bars.flatMap((bar, i) =>
    isBarSure(bar)
      ? []
      : [
          chords.unsure({
            bar: i + 1,
            sure: bar.sure,
            chords: bar.chords.map(({ symbol }) => spelledChord(symbol, words)),
            others: bar.others.map((symbol) => spelledChord(symbol, words)),
          }),
        ],
  );
  return [
    chords.found({
      bars: bars.length,
      choruses: proposal.choruses,
      bpm: Math.round(bpm),
      firstBeatSeconds: firstBeatSeconds(found),
    }),
    ...(form === null ? [] : [chords.form({ name: form.name, key: writeKey(form.key), alike: form.alike })]),
    '',
    proposal.chart,
    '',
    ...(unsure.length === 0 ? [chords.allSure] : [chords.notSure, ...unsure]),
  ].join('\n');
}

/** Finds the chords of a recording. */
export async function findChords(
  order: ChordsOrder,
  progress: Progress,
  words: Words,
): Promise<Answer<FoundPage>> {
  const source = openFile(order.file);
  if (!source.ok) return source;
  try {
    const opened = await openAudio(source.value);
    if (!opened.ok) return opened;
    const recording = await readWhole(opened.value, order.file);
    if (!recording.ok) return recording;
    const { samples, sampleRate, warnings } = recording.value;
    const seconds = samples.length / sampleRate;
    const found = chartOfRecording(samples, sampleRate, (share) => {
      progress.at(share * seconds, share);
      return true;
    });
    if (found === null) throw new Error('The search for chords stopped and nobody asked it to');
    if (!found.ok) return bad('cli.inFile', { name: order.file, cause: found.problem });
    const page = order.json ? JSON.stringify(valueOf(found.value), null, 2) : pageOf(found.value, words);
    return good({ page, warnings });
  } finally {
    progress.dispose();
    source.value.dispose();
  }
}
