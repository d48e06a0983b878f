/** A take over a band that comes back through the microphone: heard past it live, later, cut off, and elsewhere. */
import { en } from '../../src/core/words/en.ts';
import { describe as describeMessage, type Message } from '../../src/core/words/problem.ts';
import { describe, expect, it } from 'vitest';
import { onTheBeat, pluckLine } from '../analysis/pluck.ts';
import { bandInARoom } from '../../fixtures/room/band-in-a-room.ts';
import type { Report } from '../../src/core/take/schema.ts';
import { roomPathOf, type RoomPath } from '../../src/core/room/cancel/band-remover.ts';
import type { MeasuredPath } from '../../src/core/room/path/measure-path.ts';
import { noteScore } from '../bench/note-metrics.ts';
import { gradedByCommand, makeReview } from './by-command.ts';
import { usualPractice } from '../../src/state/practice-settings.ts';
import type { Settings } from '../../src/state/settings.ts';
import { world } from './world.ts';

/** What the session tells, in English. */
const toldOf = (w: { readonly session: { readonly notices: readonly Message[] } }): string =>
  w.session.notices.map((told) => describeMessage(told, en)).join();

/** What the browser gives is 44.1 kHz or more; this is quicker, and holds all that the listener hears. */
const RATE = 16_000;

const heard = await bandInARoom({
  instrument: 'clean',
  sampleRate: RATE,
  seconds: 10,
  seed: 752,
  delaySeconds: 0.06,
  bandDb: 0,
});
const path: RoomPath = roomPathOf({
  taps: heard.path,
  sampleRate: RATE,
  delaySeconds: 0.06,
} as MeasuredPath);
const half = (x: number) => x / 2;
const microphone = heard.microphone.map(half);
const band = heard.band.map(half);

const throughSpeakers = (settings: NonNullable<Parameters<typeof world>[0]>['settings'] = {}) =>
  world({
    sampleRate: RATE,
    settings: { bpm: 100, reference: 440, ...settings },
    known: {
      input: 'fake',
      output: 'speakers',
      measuredAt: '2026-03-01T09:00:00.000Z',
      delaySeconds: 0.06,
      spreadSeconds: 0,
      leakDb: 0,
      removedDb: 20,
      path,
      delayFrom: 'sweep' as const,
      strokes: 0,
      isSwept: true,
      setSeconds: null,
    },
  });
type World = Awaited<ReturnType<typeof throughSpeakers>>;

const f1 = (report: Report) => noteScore(heard.truth, report.notes).f1;
/** As if a later version had written it. */
const spoilReport = (w: World, id: string, report: Report) =>
  w.takes.saveReport(id, 'of a version to come' as never, report.summary);

describe('a take through speakers', () => {
  it('graded again from the disk it is the very same report: its band is kept beside it', async () => {
    const w = await throughSpeakers();
    await w.session.start();
    await w.play(microphone, band);
    await w.session.stop();
    const live = await makeReview(w);
    expect(live.report.source.backing?.removedDb).toBeGreaterThan(8);
    expect(f1(live.report)).toBeGreaterThan(0.85);
    await w.settle();
    await spoilReport(w, live.id!, live.report);
    await w.session.openTake(live.id!);
    const again = await makeReview(w);
    expect(again.report).toEqual(live.report);
    // It would not be without the band: heard as it is, notes of the band are told as the player's.
    w.session.save('line');
    const plain = await gradedByCommand(w, [], (words) => words.replace(/--backing '[^']*'/, ''));
    expect(plain.source.backing ?? null).toBeNull();
    expect(f1(plain)).toBeLessThan(f1(live.report));
  });

  it('cut off in the middle, its band is taken out as well', async () => {
    const w = await throughSpeakers();
    await w.session.start();
    const frames = 8 * RATE;
    await w.play(microphone.subarray(0, frames), band.subarray(0, frames));
    // The page dies here; half a second at most was not on the disk yet.
    await w.session.openTake('take-0');
    const { report } = await makeReview(w);
    expect(report.source.backing?.removedDb).toBeGreaterThan(8);
    const played = heard.truth.filter(({ offsetSeconds }) => offsetSeconds < 7.4);
    const told = report.notes.filter(({ offsetSeconds }) => offsetSeconds < 7.4);
    expect(noteScore(played, told).f1).toBeGreaterThan(0.85);
  });

  it('leaves with its band, and the command line takes that out', async () => {
    const w = await throughSpeakers();
    await w.session.start();
    await w.play(microphone, band);
    await w.session.stop();
    const live = await makeReview(w);
    w.session.save('line');
    w.session.save('band');
    expect(w.saved.map(({ fileName }) => fileName)).toEqual([
      'landfall 2026-03-01 10-15 A7 D7.wav',
      'landfall 2026-03-01 10-15 A7 D7 band.wav',
    ]);
    const elsewhere = await gradedByCommand(w);
    expect(elsewhere.source.backing?.offsetSeconds).toBeCloseTo(0.06, 2);
    expect(f1(elsewhere)).toBeGreaterThan(0.8);
    expect(noteScore(live.report.notes, elsewhere.notes).f1).toBeGreaterThan(0.85);
    expect(elsewhere.timeline.chart).toBe(live.report.timeline.chart);
  });

  it('thrown away in the count-in it leaves nothing behind', async () => {
    const w = await throughSpeakers();
    await w.session.start();
    await w.play(microphone.subarray(0, RATE), band.subarray(0, RATE));
    w.session.close();
    await w.settle();
    expect((await w.takes.open('take-0')).ok).toBe(false);
    expect(w.sounds.files.size).toBe(0);
  });
});

describe('a take whose devices were opened with another delay than at the sound check', () => {
  const movedBy = (ms: number) => {
    const by = Math.round((ms / 1000) * RATE);
    return heard.player.map((x, i) => (x + (heard.echo[i - by] ?? 0)) / 2);
  };
  /** The take, and that it stays the same when it is opened again and when it is graded anew. */
  const reviewOf = async (w: World, ms: number) => {
    await w.session.start();
    await w.play(movedBy(ms), band);
    await w.session.stop();
    const review = await makeReview(w);
    const told = toldOf(w);
    await w.settle();
    await w.session.openTake(review.id!);
    expect((await makeReview(w)).report).toEqual(review.report);
    await spoilReport(w, review.id!, review.report);
    await w.session.openTake(review.id!);
    expect((await makeReview(w)).report).toEqual(review.report);
    return { ...review, told };
  };

  it.each([
    [40, 'later'],
    [-20, 'earlier'],
    [150, 'later'],
  ])(
    'by %s ms: the band goes, the first downbeat is placed by the delay of now, and that is said',
    async (ms, how) => {
      const w = await throughSpeakers();
      const { report, details, told } = await reviewOf(w, ms);
      expect(f1(report)).toBeGreaterThan(0.85);
      expect(report.source.backing?.removedDb).toBeGreaterThan(8);
      expect(1000 * report.source.backing!.offsetSeconds).toBeCloseTo(ms, 0);
      // A bar of count-in at 100, and the delay.
      expect(details.firstBeatSeconds).toBeCloseTo(2.4 + 0.06 + ms / 1000, 3);
      expect(told).toContain(`The band came back ${Math.abs(ms)} ms ${how} than at your sound check`);
      expect(told).not.toMatch(/jumped/);
    },
  );

  it('known only after the first downbeat: the take is heard anew by the delay that was found', async () => {
    const w = await throughSpeakers({ countInBars: 0 });
    const { report, details, told } = await reviewOf(w, 40);
    expect(f1(report)).toBeGreaterThan(0.85);
    expect(details.firstBeatSeconds).toBeCloseTo(0.06 + 0.04, 3);
    expect(details.path?.heldBackSamples).toBe(path.heldBackSamples + 480);
    expect(told).toContain('The band came back 40 ms later than at your sound check');
  });

  it('at the delay of the sound check nothing is said', async () => {
    const w = await throughSpeakers();
    const { told } = await reviewOf(w, 0);
    expect(told).not.toMatch(/sound check/);
  });
});

describe('a take without a sound check', () => {
  /** The browser says 20 ms; the truth is 60. */
  const unchecked = () =>
    world({ sampleRate: RATE, roundTripSeconds: 0.02, settings: { bpm: 100, reference: 440 } });
  /** A bar of count-in at 100. */
  const COUNT_IN = 2.4;

  it('through speakers: the band is found and taken out, and the delay is the one that was measured', async () => {
    const w = await unchecked();
    await w.session.start();
    await w.play(microphone, band);
    await w.session.stop();
    const review = await makeReview(w);
    expect(f1(review.report)).toBeGreaterThan(0.85);
    expect(review.report.source.backing?.offsetSeconds).toBeCloseTo(0.06, 3);
    expect(review.details.firstBeatSeconds).toBeCloseTo(COUNT_IN + 0.06, 3);
    expect(review.timeline.beatMap.secondsAt(0)).toBeCloseTo(COUNT_IN + 0.06, 3);
    expect(toldOf(w)).toMatch(/The band came back through the microphone, 60 ms late/);
    // From the disk the same report stands, and graded anew it comes out the same.
    await w.settle();
    await w.session.openTake(review.id!);
    expect((await makeReview(w)).report).toEqual(review.report);
    await spoilReport(w, review.id!, review.report);
    await w.session.openTake(review.id!);
    const again = await makeReview(w);
    expect(again.report).toEqual(review.report);
    expect(again.details.firstBeatSeconds).toBeCloseTo(review.details.firstBeatSeconds!, 9);
    // And at the command line it is this very report.
    w.session.save('line');
    w.session.save('band');
    const { source, ...elsewhere } = await gradedByCommand(w);
    const { source: here, ...app } = review.report;
    expect(elsewhere).toEqual(app);
    expect(source.backing).toEqual(here.backing);
  });

  it('through headphones: what was heard live stands, and nothing is said or saved of the band', async () => {
    const w = await unchecked();
    await w.session.start();
    await w.play(heard.player.map(half), band);
    await w.session.stop();
    const review = await makeReview(w);
    expect(review.report.source).not.toHaveProperty('backing');
    expect(review.details.firstBeatSeconds).toBeCloseTo(COUNT_IN + 0.02, 6);
    expect(toldOf(w)).not.toMatch(/band/);
    w.session.save('band');
    expect(w.saved).toEqual([]);
    w.session.save('line');
    const { source: _, ...elsewhere } = await gradedByCommand(w);
    const { source: __, ...app } = review.report;
    expect(elsewhere).toEqual(app);
  });

  it('cut off: the band is looked for as well', async () => {
    const w = await unchecked();
    await w.session.start();
    const frames = 8 * RATE;
    await w.play(microphone.subarray(0, frames), band.subarray(0, frames));
    await w.session.openTake('take-0');
    const { report, details } = await makeReview(w);
    expect(report.source.backing?.offsetSeconds).toBeCloseTo(0.06, 3);
    expect(details.firstBeatSeconds).toBeCloseTo(COUNT_IN + 0.06, 3);
    const played = heard.truth.filter(({ offsetSeconds }) => offsetSeconds < 7.4);
    const told = report.notes.filter(({ offsetSeconds }) => offsetSeconds < 7.4);
    expect(noteScore(played, told).f1).toBeGreaterThan(0.85);
  });
});

describe('a take heard again', () => {
  it('has the band as it played: resting chords, click, feel, and the levels as they were left', async () => {
    const practice: Settings['practice'] = {
      ...usualPractice.practice,
      chordsRest: true,
      backbeatClick: true,
      rise: { byBpm: 5, everyChoruses: 2 },
      tradeBars: 2,
      drone: 'root',
    };
    const w = await throughSpeakers({ practice, feel: 'bossa' });
    await w.session.start();
    // A note: a take in which nothing is heard is not kept.
    await w.play(pluckLine(onTheBeat([69], 100, 4), RATE, 5));
    w.session.setLevel('drums', -12);
    await w.play(new Float32Array(RATE));
    await w.session.stop();
    const { id, details } = await makeReview(w);
    const live = w.accompaniments.at(-1)!;
    expect(live.settings).toMatchObject({ chordsRest: true, backbeatClick: true, feel: 'bossa', bpm: 100 });
    expect(live.settings).toMatchObject({
      rise: { byBpm: 5, everyBars: 4 },
      trade: { bars: 2, aim: w.setup.settings.aim },
      drone: { tones: 'root', semitones: [0] },
    });
    expect(live.levels).toMatchObject({ all: -18, drums: -12 });
    await w.settle();
    // What the player sets afterwards changes nothing of what was played.
    w.setup.setPractice({ chordsRest: false, backbeatClick: false });
    w.setup.setLevel('drums', 3);
    await w.session.openTake(id!);
    await makeReview(w);
    expect(w.accompaniments.at(-1)).toMatchObject({ settings: live.settings, levels: live.levels });
    expect(live.settings.seed).toBe(Date.parse(details.startedAt) % 2 ** 31);
  });
});
