/** The same recording, whole and in blocks, in-process and through the built command line: one report. */
import { english } from '../english.ts';
import { execFileSync } from 'node:child_process';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { timelineFromTempo } from '../../src/core/chart/build-timeline.ts';
import { readChartArgument } from '../../src/core/chart/forms.ts';
import { openAudio, readWhole } from '../../src/core/files/audio.ts';
import { bytesInMemory } from '../../src/core/files/bytes/bytes.ts';
import { toPcm16 } from '../../src/core/base/pcm16.ts';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';
import { grade } from '../../src/core/grade.ts';
import { listen, Listener } from '../../src/core/listen.ts';
import type { HeardNote } from '../../src/core/take/note.ts';
import { build, LANDFALL, scratch } from './built.ts';

const SAMPLE_RATE = 44_100;
const CHART = 'form:12-bar blues in A';
const BPM = 132;

/** Plucked tones of rising and falling pitch, some cut off, some ringing on, over a little noise. */
function line(): Float32Array {
  const samples = new Float32Array(8 * SAMPLE_RATE);
  let seed = 7;
  const chance = () => (seed = (seed * 48_271) % 2_147_483_647) / 2_147_483_647;
  let at = 0.2;
  for (let k = 0; at < 7.2; k++) {
    const midi = [57, 60, 61, 64, 66, 69, 67, 72][(k * 3) % 8]!;
    const hz = 440 * 2 ** ((midi - 69) / 12);
    const length = 0.15 + 0.4 * chance();
    const start = Math.round(at * SAMPLE_RATE);
    for (let n = 0; n < length * SAMPLE_RATE; n++) {
      const t = n / SAMPLE_RATE;
      const tone = [1, 2, 3, 4].reduce((sum, h) => sum + Math.sin(2 * Math.PI * h * hz * t) / h ** 1.5, 0);
      samples[start + n]! += 0.25 * tone * Math.exp(-4 * t) * Math.min(1, (length - t) / 0.02);
    }
    at += length + 0.05 * chance();
  }
  return samples.map((sample) => sample + 0.001 * (chance() - 0.5));
}

const report = (notes: readonly HeardNote[], samples: number) => {
  const chart = readChartArgument(CHART);
  if (!chart.ok) throw new Error(english(chart.problem));
  return grade(notes, timelineFromTempo(chart.value, { bpm: BPM }), {
    source: { kind: 'audio', durationSeconds: samples / SAMPLE_RATE, sampleRate: SAMPLE_RATE },
    referenceHz: 440,
  });
};

describe('one report', () => {
  const files = scratch();
  const wav = writeWav(toPcm16(line()), SAMPLE_RATE);
  beforeAll(build);
  afterAll(files.dispose);

  const whole = async () => {
    const opened = await openAudio(bytesInMemory('line.wav', wav));
    if (!opened.ok) throw new Error(english(opened.problem));
    const recording = await readWhole(opened.value, 'line.wav');
    if (!recording.ok) throw new Error(english(recording.problem));
    return recording.value.samples;
  };

  it('whole and in blocks of every size', async () => {
    const samples = await whole();
    const notes = listen(samples, SAMPLE_RATE);
    expect(notes.length).toBeGreaterThan(8);
    for (const length of [128, 1000, 16_384]) {
      const listener = new Listener({ sampleRate: SAMPLE_RATE });
      for (let at = 0; at < samples.length; at += length) listener.push(samples.subarray(at, at + length));
      expect(listener.finish()).toEqual(notes);
    }
  });

  it('in-process and through the command line', async () => {
    const samples = await whole();
    const expected = report(listen(samples, SAMPLE_RATE), samples.length);
    const path = files.file('line.wav', wav);
    const options = ['--chart', CHART, '--tempo', `${BPM}`, '--json'];
    const stdout = execFileSync(process.execPath, [LANDFALL, 'grade', path, ...options], {
      encoding: 'utf8',
    });
    expect(JSON.parse(stdout)).toEqual(JSON.parse(JSON.stringify(expected)));
  });
});
