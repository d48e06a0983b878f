/** A take whose notes fit another key, or another first beat: it is graded there by one action, and stays so. */
import { describe, expect, it } from 'vitest';
import type { Chart } from '../../src/core/chart/chart.ts';
import { playedBars } from '../../src/core/chart/play-order.ts';
import type { Settings } from '../../src/state/settings.ts';
import type { Review } from '../../src/state/phase.ts';
import { chartChange } from '../../src/state/take-chart.ts';
import { makeReview } from './by-command.ts';
import { RATE, world } from './world.ts';

type World = Awaited<ReturnType<typeof world>>;
type Note = readonly [onsetSeconds: number, midi: number];
const BEAT_SECONDS = 0.5;

const BLUES = { form: '12-bar blues', key: 'C' };
/** Other chords in each bar, so that a bar late fits hardly anywhere. */
const FOURTHS = { form: null, ownChart: 'key: C\n| Cmaj7 | Fmaj7 | Bm7b5 | E7 | Am7 | D7 | Dm7 | G7 |' };

/** The first chord of each bar. */
const chordsOfBars = (chart: Chart) => playedBars(chart).map(({ bar }) => bar.chords[0]!.chord!);

/** Two choruses of the chart, moved: third, root, fifth and seventh of each bar's first chord, a note a beat. */
function overChart({ setup }: World, semitones: number, lateBeats = 0): readonly Note[] {
  if (!setup.chart.ok) throw new Error(setup.chart.problem.code);
  const bars = chordsOfBars(setup.chart.value);
  return [...bars, ...bars].flatMap(({ tones }, bar) =>
    (['third', 'root', 'fifth', 'seventh'] as const).map((role, beat): Note => {
      const { pitchClass } = tones.find((tone) => tone.role === role)!;
      return [(4 * bar + beat + lateBeats) * BEAT_SECONDS, 60 + pitchClass + semitones];
    }),
  );
}

async function opened(settings: Partial<Settings>, semitones: number, lateBeats = 0): Promise<World> {
  const w = await world({ settings });
  const rows = overChart(w, semitones, lateBeats).map(([onset, midi]) => `${onset},0.4,${midi}`);
  const line = new File([['onset,duration,pitch', ...rows].join('\n')], 'line.csv');
  await w.openRecording({ line, backing: null });
  await w.until('review');
  return w;
}

const thirdsOf = ({ report }: Review) => report.landings.filter(({ role }) => role === 'third').length;

describe('a take that fits another key', () => {
  it('is graded in it, and the setup moves along', async () => {
    const w = await opened(BLUES, 2);
    const before = await makeReview(w);
    expect(before.report.suspected).toMatchObject({ what: 'key', semitones: 2, tonic: 'D' });
    expect(thirdsOf(before)).toBe(0);
    await w.session.takeSuspected('chart');
    const after = await makeReview(w);
    expect(after.details.key).toBe('D');
    expect(after.report.timeline.key).toEqual({ tonic: 'D', mode: 'major' });
    expect(after.report.suspected).toBeNull();
    expect(after.heard).toEqual(before.heard);
    // All but where a bar has two chords.
    expect(thirdsOf(after)).toBeGreaterThanOrEqual(10);
    // What is opened or played next is in that key too.
    expect(w.setup.settings.key).toBe('D');
    expect(w.setup.title).toBe('12-bar blues in D');
  });

  it('is kept in it with its title, though the setup has another chart by now', async () => {
    const w = await world({ settings: { ...BLUES, input: 'midi', choruses: 2 } });
    await w.session.start();
    const silence = (seconds: number) => new Float32Array(Math.round(seconds * RATE));
    await w.play(silence(2));
    for (const [, midi] of overChart(w, 2)) {
      w.send(0x90, midi, 100);
      await w.play(silence(0.4));
      w.send(0x80, midi, 0);
      await w.play(silence(0.1));
    }
    await w.session.stop();
    const { id } = await makeReview(w);
    await w.settle();
    w.setup.writeChart('| Am7 | D7 |');
    await w.session.takeSuspected('chart');
    await w.settle();
    expect(w.setup.settings.ownChart).toBe('| Am7 | D7 |');
    w.session.close();
    await w.session.openTake(id!);
    const kept = await makeReview(w);
    expect(kept.details).toMatchObject({ key: 'D', title: '12-bar blues in D' });
    expect(kept.report.suspected).toBeNull();
    expect(w.library.takes).toMatchObject([{ id, key: 'D', title: '12-bar blues in D' }]);
  });
});

describe('a take that fits another first beat', () => {
  it('is graded from there', async () => {
    const w = await opened(FOURTHS, 0, 4);
    const before = await makeReview(w);
    expect(before.report.suspected).toMatchObject({ what: 'place', beats: 4 });
    await w.session.takeSuspected('chart');
    const after = await makeReview(w);
    expect(after.details.firstBeatSeconds).toBeCloseTo(4 * BEAT_SECONDS, 9);
    expect(after.report.suspected).toBeNull();
    expect(thirdsOf(after)).toBe(after.report.landings.length);
  });

  it('is left where the chart would begin before the sound', async () => {
    const w = await opened(FOURTHS, 0, 4);
    const { details, report, timeline } = await makeReview(w);
    const suspected = { ...report.suspected!, beats: -1 };
    expect(chartChange({ details, timeline, report: { ...report, suspected } })).toBeNull();
  });
});

describe('a take that fits its chart', () => {
  it('stays as it is', async () => {
    const w = await opened(BLUES, 0);
    const before = await makeReview(w);
    expect(before.report.suspected).toBeNull();
    await w.session.takeSuspected('chart');
    expect(await makeReview(w)).toBe(before);
  });
});
