import { writeChart } from '../../src/core/chart/write-chart.ts';
import { english } from '../english.ts';
import { describe, expect, it } from 'vitest';
import { AnalysisClient } from '../../src/analysis/client.ts';
import { LandingsSoFar } from '../../src/analysis/landings-so-far.ts';
import type { Heard } from '../../src/analysis/messages.ts';
import { timelineOf } from '../../src/core/timeline-of-order.ts';
import type { GradeOrder } from '../../src/core/grade-order.ts';
import { toPcm16, fromPcm16 } from '../../src/core/base/pcm16.ts';
import { writeWav } from '../../src/core/files/sound/write-wav.ts';
import { grade } from '../../src/core/grade.ts';
import { listen } from '../../src/core/listen.ts';
import type { Outcome } from '../../src/core/base/outcome.ts';
import type { HeardNote } from '../../src/core/take/note.ts';
import { InProcessWorker } from './in-process.ts';
import type { Problem } from '../../src/core/words/problem.ts';
import { onTheBeat, pluckLine } from './pluck.ts';

const RATE = 44_100;
const order: GradeOrder = {
  chartText: '| A7 | D7 | A7 | E7 |',
  bpm: 120,
  swing: 0.5,
  firstBeatSeconds: 0.5,
  reference: 440,
  source: 'microphone',
};
/** Thirds as each chord arrives, and scale in between; two choruses. */
const melody = [73, 71, 69, 64, 66, 69, 72, 69, 61, 64, 67, 69, 68, 71, 74, 71];
const twice = [...melody, ...melody];
const sound = pluckLine(onTheBeat(twice, 120, 0.5), RATE, 18);

const value = <T>(outcome: Outcome<T>): T => {
  if (!outcome.ok) throw new Error(english(outcome.problem));
  return outcome.value;
};

const recorded = (samples: Int16Array | Float32Array) => ({
  name: 'take.wav',
  samples,
  sampleRate: RATE,
  backing: null,
});

function clientWith() {
  const workers: InProcessWorker[] = [];
  const client = new AnalysisClient(() => {
    const worker = new InProcessWorker();
    workers.push(worker);
    return InProcessWorker.asWorker(worker);
  });
  return { client, workers };
}

async function listenLive(hop: number, follow: boolean) {
  const { client, workers } = clientWith();
  const told: Heard[] = [];
  const listening = value(
    await client.listen(RATE, null, { heard: (heard) => told.push(heard), failed: () => undefined }),
  );
  if (follow) value(await listening.follow(order));
  for (let from = 0; from < sound.length; from += hop) listening.hop(sound.slice(from, from + hop), null);
  const notes = value(await listening.finish());
  return { told, notes, worker: workers[0]! };
}

describe('listening live', () => {
  it('gives the notes of the whole recording, whatever the hops', async () => {
    const whole = listen(sound, RATE);
    expect(whole.map((note) => Math.round(note.midi))).toEqual(twice);
    for (const hop of [128, 2048, 5000]) expect((await listenLive(hop, false)).notes).toEqual(whole);
  });

  it('tells what is heard at most 120 times a second, each committed note once', async () => {
    const { told } = await listenLive(128, false);
    expect(told.length).toBeGreaterThan(18 * 40);
    expect(told.length).toBeLessThanOrEqual(18 * 120);
    const onsets = told.flatMap((heard) => heard.notes.map((note) => note.onsetSeconds));
    expect(new Set(onsets).size).toBe(onsets.length);
    expect(onsets.length).toBeGreaterThanOrEqual(twice.length - 1);
    expect(told.some((heard) => heard.reading.midi !== null)).toBe(true);
  });

  it('tells landings as they happen: the same that the report has', async () => {
    const { told, notes } = await listenLive(2048, true);
    const report = grade(notes, value(timelineOf(order)), {
      source: { kind: 'microphone', durationSeconds: 18, sampleRate: RATE },
      referenceHz: 440,
    });
    const last = told.findLast((heard) => heard.landings !== null)!;
    /** As the page puts them together. */
    const landings = told.reduce<typeof report.landings>(
      (all, heard) =>
        heard.landings === null ? all : [...all.slice(0, heard.landings.from), ...heard.landings.landings],
      [],
    );
    expect(report.landings.map((landing) => landing.role)).toContain('third');
    // A note is told while it still sounds, its pitch measured on what has been heard of it.
    const settled = (landings: typeof report.landings) => landings.map(({ cents: _, ...landing }) => landing);
    expect(settled(landings)).toEqual(settled(report.landings));
    expect(last.referenceHz).toBe(440);
  });
});

describe('landings so far', () => {
  it('tell as little late in a long take as early in it, and together they are all of them', () => {
    const timeline = value(timelineOf(order));
    const so = new LandingsSoFar(timeline, 440);
    const beat = 60 / order.bpm;
    const notes: HeardNote[] = [];
    let told: typeof so.landings = [];
    let most = 0;
    for (let i = 0; i < 2000; i++) {
      const onsetSeconds = order.firstBeatSeconds + i * beat;
      const midi = [69, 73, 66, 72][i % 4]!;
      const note: HeardNote = {
        ...{ onsetSeconds, offsetSeconds: onsetSeconds + 0.9 * beat, midi, confidence: 1 },
        ...{ levelDb: -20, attack: 'struck', bendSemitones: 0, vibrato: null, second: null },
      };
      notes.push(note);
      so.update(notes, null);
      const { from, landings } = so.changed;
      told = [...told.slice(0, from), ...landings];
      most = Math.max(most, landings.length);
      if (i % 100 === 0) expect(told).toEqual(so.landings);
    }
    expect(told).toEqual(so.landings);
    expect(so.landings.length).toBeGreaterThan(300);
    // Eight beats and what lies before them.
    expect(most).toBeLessThanOrEqual(12);
  });

  it('know a note that is held over a change while it still sounds, and when it has ended', () => {
    const timeline = value(timelineOf(order));
    const [held] = listen(pluckLine([{ atSeconds: 1.5, midi: 69, seconds: 2 }], RATE, 4), RATE);
    const so = new LandingsSoFar(timeline, 440);
    // A7 gives way to D7 at 2.5 s.
    so.update([], { ...held!, offsetSeconds: 1.8 });
    expect(so.landings.map(({ chord, kind }) => [chord, kind])).toEqual([['A7', 'open']]);
    so.update([], { ...held!, offsetSeconds: 3.2 });
    const over = so.landings.at(-1);
    expect(over).toMatchObject({ chord: 'D7', kind: 'held', degree: '5', note: 0 });
    so.update([{ ...held!, offsetSeconds: 3.4 }], null);
    expect(so.landings.at(-1)).toMatchObject({ chord: 'D7', kind: 'held' });
  });

  it('leave out a note that the listener is not sure of, as the report does', () => {
    const timeline = value(timelineOf(order));
    const [first, second] = listen(pluckLine(onTheBeat([73, 69], 120, 0.5), RATE, 2), RATE);
    const unsure = [{ ...first!, confidence: 0.4 }, second!];
    const so = new LandingsSoFar(timeline, 440);
    so.update(unsure, null);
    const { landings } = grade(unsure, timeline, {
      source: { kind: 'microphone', durationSeconds: 2, sampleRate: null },
      referenceHz: 440,
    });
    expect(so.landings.map(({ kind, degree }) => [kind, degree])).toEqual(
      landings.map(({ kind, degree }) => [kind, degree]),
    );
    so.update([first!, second!], null);
    expect(so.landings[0]).toMatchObject({ chord: 'A7', degree: '3' });
  });

  it('are those of grading everything anew, and cost no more as the take grows', () => {
    const timeline = value(timelineOf(order));
    const base = listen(sound, RATE);
    const rounds = 12;
    const notes = Array.from({ length: rounds }, (_, round) =>
      base.map((note) => ({
        ...note,
        onsetSeconds: note.onsetSeconds + round * 16,
        offsetSeconds: note.offsetSeconds + round * 16,
      })),
    ).flat();
    const so = new LandingsSoFar(timeline, 440);
    const costs: number[] = [];
    for (let count = 1; count <= notes.length; count++) {
      const ended = notes.slice(0, count);
      const before = performance.now();
      so.update(ended, null);
      costs.push(performance.now() - before);
    }
    const report = grade(notes, timeline, {
      source: { kind: 'microphone', durationSeconds: rounds * 16, sampleRate: null },
      referenceHz: 440,
    });
    expect(so.landings).toEqual(report.landings);
    // The median of fifty: what else the machine does slows early notes and late ones alike.
    const median = (from: number) => costs.slice(from, from + 50).sort((a, b) => a - b)[25]!;
    expect(median(notes.length - 50)).toBeLessThan(3 * median(50));
  });
});

describe('grading a recording', () => {
  it('answers with the report, tells its progress, and leaves the samples where they are', async () => {
    const { client, workers } = clientWith();
    const samples = toPcm16(sound);
    const shares: number[] = [];
    const { report, heard } = value(
      await client.grade(recorded(samples), order, {
        progress: (share) => shares.push(share),
        message: () => undefined,
      }),
    );
    expect(samples.length).toBe(sound.length);
    expect(report.notes.map((note) => Math.round(note.midi))).toEqual(twice);
    expect(heard.map((note) => Math.round(note.midi))).toEqual(twice);
    expect(report.source).toEqual({ kind: 'microphone', durationSeconds: 18, sampleRate: RATE });
    expect(shares.length).toBeGreaterThan(10);
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares.at(-1)).toBe(1);
    expect(workers[0]!.terminated).toBe(true);
  });

  it('gives the same notes from 16-bit samples and from the floating-point ones they stand for', async () => {
    const { client } = clientWith();
    const samples = toPcm16(sound);
    const a = value(await client.grade(recorded(samples), order));
    const b = value(await client.grade(recorded(fromPcm16(samples)), order));
    expect(b.report.notes).toEqual(a.report.notes);
  });

  it('says what is wrong with a chart or a tempo', async () => {
    const { client } = clientWith();
    const audio = recorded(new Int16Array(RATE));
    const chart = await client.grade(audio, { ...order, chartText: '| A7 | Xq9 |' });
    expect(!chart.ok && english(chart.problem)).toMatch(/Xq9/);
    const tempo = await client.grade(audio, { ...order, bpm: 0 });
    expect(!tempo.ok && english(tempo.problem)).toMatch(/tempo is 0/);
  });
});

describe('reading a file', () => {
  it('gives the samples of a WAV, and a sentence with its name for a file that is not a recording', async () => {
    const { client } = clientWith();
    const samples = toPcm16(sound.subarray(0, RATE));
    const wav = value(await client.read(new Blob([writeWav(samples, RATE, 100)]), 'take.wav'));
    if (wav.kind !== 'sound') throw new Error('no sound');
    expect(wav.sampleRate).toBe(RATE);
    expect(toPcm16(wav.samples)).toEqual(samples);
    const text = await client.read(new Blob(['dear diary, no chords today']), 'diary.wav');
    expect(!text.ok && english(text.problem)).toMatch(/diary\.wav/);
    const empty = await client.read(new Blob([]), 'nothing.wav');
    expect(!empty.ok && english(empty.problem)).toMatch(/nothing\.wav/);
  });
});

describe('a client', () => {
  it('answers open requests with a problem when its worker fails', async () => {
    const { client, workers } = clientWith();
    const said: Problem[] = [];
    const listening = value(
      await client.listen(RATE, null, { heard: () => undefined, failed: (problem) => said.push(problem) }),
    );
    workers[0]!.crash();
    expect(said).toEqual([{ code: 'listener.stopped' }]);
    const finished = await listening.finish();
    expect(finished.ok).toBe(false);
  });

  it('refuses a rate that the listener does not take', async () => {
    const { client } = clientWith();
    const listening = await client.listen(4000, null, { heard: () => undefined, failed: () => undefined });
    expect(!listening.ok && english(listening.problem)).toMatch(/4000 Hz/);
  });

  it('ends every job when it is disposed', async () => {
    const { client, workers } = clientWith();
    value(await client.listen(RATE, null, { heard: () => undefined, failed: () => undefined }));
    const grading = client.grade(recorded(toPcm16(sound)), order);
    client.dispose();
    expect(workers.every((worker) => worker.terminated)).toBe(true);
    expect((await grading).ok).toBe(false);
  });
});

describe('work that is stopped', () => {
  it('ends its worker, and the next work has another', async () => {
    const { client, workers } = clientWith();
    const stop = new AbortController();
    const file = new File(['| Dm7 | G7 |'], 'chart.txt');
    const reading = client.readChart(file, file.name, stop.signal);
    stop.abort();
    expect(workers[0]!.terminated).toBe(true);
    expect(await reading).toMatchObject({ ok: false, problem: { code: 'listener.stopped' } });
    expect(writeChart(value(await client.readChart(file, file.name)).chart)).toContain('Dm7');
    expect(workers).toHaveLength(2);
  });

  it('so does grading notes, whose worker stays otherwise', async () => {
    const { client, workers } = clientWith();
    const grade = (signal?: AbortSignal) =>
      client.gradeNotes([], { kind: 'notes', durationSeconds: 1, sampleRate: null }, order, signal);
    value(await grade());
    value(await grade());
    expect(workers).toHaveLength(1);
    const stop = new AbortController();
    const stopped = grade(stop.signal);
    stop.abort();
    expect((await stopped).ok).toBe(false);
    value(await grade());
    expect(workers).toHaveLength(2);
  });
});
