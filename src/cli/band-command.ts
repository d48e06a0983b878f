/** `landfall band`: a chart played by the band, written as a recording or a MIDI file. */
import { existsSync, readFileSync, realpathSync, writeSync } from 'node:fs';
import { endianness } from 'node:os';
import { join } from 'node:path';
import { setImmediate } from 'node:timers/promises';
import { arrange } from '../core/band/arrange.ts';
import { feelOf } from '../core/chart/feel-words.ts';
import { bandForm, chorusBeats, pickupBeats, type BandForm } from '../core/band/form.ts';
import type { BandSettings } from '../core/band/settings.ts';
import type { FeelName } from '../core/chart/feel-names.ts';
import { writeBandMidi } from '../core/band/write-midi.ts';
import { timelineFromTempo } from '../core/chart/build-timeline.ts';
import { writtenBars, type Chart } from '../core/chart/chart.ts';
import { transposeChart } from '../core/chart/transpose-chart.ts';
import { toPcm16 } from '../core/base/pcm16.ts';
import { writeMusicXml } from '../core/files/charts/write-musicxml.ts';
import { MOST_TAKE_SECONDS } from '../core/base/limits.ts';
import { MOST_WAV_DATA_BYTES, wavHeader } from '../core/files/sound/write-wav.ts';
import { USUAL_AIM } from '../core/grade/aims/aim-choices.ts';
import { onOneLine } from '../core/words/one-line.ts';
import { bad, failure, good, type Outcome } from '../core/base/outcome.ts';
import { renderPerformance } from '../core/sound/render-performance.ts';
import type { Stereo } from '../core/sound/stereo.ts';
import { createSynth, loadKit } from '../core/sound/synth.ts';
import { wrongUsage, type Answer } from './answer.ts';
import type { BandOrder } from './orders.ts';
import { notice, type Notice } from '../core/words/problem.ts';
import type { Words } from '../core/words/words.ts';
import { diskProblem } from './file-source.ts';
import { BAND_TEMPO } from './options.ts';
import { readChartGiven, riseOver } from './read-timeline.ts';
import { writeWholeFile } from './whole-file.ts';

const SAMPLE_RATE = 48_000;
const BYTES_PER_FRAME = 4;
const KIT_FILE = 'landfall-kit.sf3';
const CHORUSES = 3;
const USUAL_FEEL: FeelName = 'shuffle';

export interface WrittenBand {
  /** What was written, for standard output. */
  readonly line: string;
  readonly warnings: readonly Notice[];
}

/** @param kitFolder where the sound bank lies */
export async function writeBand(
  order: BandOrder,
  kitFolder: string,
  words: Words,
): Promise<Answer<WrittenBand>> {
  const read = readChartGiven(order.chart, order.meter);
  if (!read.ok) return read;
  if (isSameFile(order.chart, order.out.file)) return bad('cli.bandOutIsChart', { file: order.out.file });
  const chart = order.key ? transposeChart(read.value.chart, order.key) : read.value.chart;
  if (order.out.kind === 'musicxml') return writeScore(order, chart, read.value.warnings, words);
  const bpm = order.bpm ?? chart.bpm;
  if (bpm === null) return wrongUsage('cli.noTempo');
  if (!(bpm >= BAND_TEMPO.lowest && bpm <= BAND_TEMPO.highest))
    return bad('cli.bandTempo', { ...BAND_TEMPO, bpm });
  const settings: BandSettings = {
    feel: order.feel ?? feelOf(chart.feel ?? '') ?? USUAL_FEEL,
    bpm,
    swing: order.swing ?? chart.swing,
    seed: order.seed ?? 1,
    countInBars: 1,
    ...(order.rise && { rise: riseOver(chart, order.rise) }),
    ...(order.turnBars !== null && { trade: { bars: order.turnBars, aim: order.aim ?? USUAL_AIM } }),
    ...(order.drone && { drone: { tones: order.drone, semitones: [0] } }),
  };
  const form = bandForm(timelineFromTempo(chart, { bpm }));
  const choruses = order.choruses ?? CHORUSES;
  const { file, kind } = order.out;
  // At the first tempo: a rise only makes it shorter.
  if ((chorusBeats(form) * choruses * 60) / bpm > MOST_TAKE_SECONDS)
    return bad('cli.bandTooLong', { file, hours: MOST_TAKE_SECONDS / 3600 });
  const written =
    kind === 'midi'
      ? await writeMidiFile(file, form, settings, choruses)
      : await writeSound(file, form, settings, choruses, kitFolder);
  if (!written.ok) return written;
  return good({
    line: words.cli.writtenBand({
      file: onOneLine(file),
      choruses,
      bars: form.bars,
      feel: settings.feel,
      bpm,
      seed: settings.seed,
    }),
    warnings: [...read.value.warnings, ...feelWarnings(chart, order.feel)],
  });
}

/** Whether both name one file, also by different ways or over a link; a chart that is no file is none. */
const isSameFile = (one: string, other: string): boolean =>
  existsSync(one) && existsSync(other) && realpathSync(one) === realpathSync(other);

/** The chart itself, for a notation program. */
async function writeScore(
  { out: { file }, bpm }: BandOrder,
  chart: Chart,
  warnings: readonly Notice[],
  words: Words,
): Promise<Outcome<WrittenBand>> {
  const score = new TextEncoder().encode(writeMusicXml({ ...chart, bpm: bpm ?? chart.bpm }));
  const written = await writeAtOnce(file, score);
  const bars = writtenBars(chart).length;
  return written.ok
    ? good({ line: words.cli.writtenScore({ file: onOneLine(file), bars }), warnings })
    : written;
}

/** Names of feels that this band does not know. */
function feelWarnings(chart: Chart, given: FeelName | null): readonly Notice[] {
  const asked = [given === null ? chart.feel : null, ...chart.sections.map((section) => section.feel)];
  const unknown = asked.flatMap((feel) => (feel !== null && feelOf(feel) === null ? [feel] : []));
  return [...new Set(unknown)].map((feel) => notice('band.unknownFeel', { feel }));
}

const writeAtOnce = (file: string, bytes: Uint8Array): Promise<Outcome<void>> =>
  writeWholeFile(file, (descriptor) => {
    writeWhole(descriptor, bytes);
    return Promise.resolve(good(undefined));
  });

const writeMidiFile = (
  file: string,
  form: BandForm,
  settings: BandSettings,
  choruses: number,
): Promise<Outcome<void>> =>
  writeAtOnce(file, writeBandMidi(arrange(form, settings, choruses, true), form, settings));

async function writeSound(
  file: string,
  form: BandForm,
  settings: BandSettings,
  choruses: number,
  kitFolder: string,
): Promise<Outcome<void>> {
  const beats =
    chorusBeats(form) * choruses + pickupBeats(form) + (settings.countInBars + 1) * form.beatsPerBar;
  // At the first tempo: a rise only makes it shorter.
  if ((beats * 60 * SAMPLE_RATE * BYTES_PER_FRAME) / settings.bpm > MOST_WAV_DATA_BYTES)
    return bad('cli.wavTooLong', { file });
  const kit = readKit(join(kitFolder, KIT_FILE));
  if (!kit.ok) return kit;
  const synth = createSynth(await loadKit(kit.value), SAMPLE_RATE);
  return writeWholeFile(file, async (descriptor) => {
    let frames = 0;
    const header = () => wavHeader({ sampleRate: SAMPLE_RATE, channels: 2, frames });
    writeWhole(descriptor, header());
    for (const piece of renderPerformance(synth, form, settings, choruses).pieces) {
      writeWhole(descriptor, bytesOf(piece));
      frames += piece[0].length;
      // Lets a signal be noticed.
      await setImmediate();
    }
    writeSync(descriptor, header(), 0, undefined, 0);
    return good(undefined);
  });
}

function readKit(path: string): Outcome<ArrayBuffer> {
  try {
    return good(new Uint8Array(readFileSync(path)).buffer);
  } catch (error) {
    const told = diskProblem(path, error);
    if (told === null) throw error;
    return failure(told);
  }
}

/** The system may take a part, as the disk fills up, and say why only when it is given the rest. */
function writeWhole(descriptor: number, bytes: Uint8Array): void {
  for (let at = 0; at < bytes.length;) at += writeSync(descriptor, bytes, at);
}

/** Interleaved 16-bit samples, low byte first. */
function bytesOf([left, right]: Stereo): Uint8Array {
  const both = new Float32Array(2 * left.length);
  for (let frame = 0; frame < left.length; frame++) {
    both[2 * frame] = left[frame]!;
    both[2 * frame + 1] = right[frame]!;
  }
  const bytes = Buffer.from(toPcm16(both).buffer);
  return endianness() === 'LE' ? bytes : bytes.swap16();
}
