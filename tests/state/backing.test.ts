/** A recording in the band's place: set on the desk, kept, played, graded by its own beats, and graded the same again. */
import { english } from '../english.ts';
import { describe, expect, test } from 'vitest';
import { roundBeatMap } from '../../src/core/chart/beat-maps.ts';
import { readBeatsCsv } from '../../src/core/files/charts/beats-csv.ts';
import { bad, good } from '../../src/core/base/outcome.ts';
import { BackingDesk } from '../../src/state/backing-desk.svelte.ts';
import { Backings, emptyStand } from '../../src/state/backings.svelte.ts';
import type { BackingRecord } from '../../src/state/chosen-backing.ts';
import type { BackingRun, BackingsPort, OpenBacking } from '../../src/state/ports.ts';
import { wanderingSeconds } from '../core/beats/rendered-track.ts';
import { pluckLine } from '../analysis/pluck.ts';
import { world } from './world.ts';

const secondsAt = wanderingSeconds(120, 0.08, 32);
/** Two beats before bar 1, twelve bars, a beat. */
const beats = Array.from({ length: 51 }, (_, i) => 1 + secondsAt(i));

function memoryStore(): BackingsPort & { readonly records: Map<string, BackingRecord>; full: boolean } {
  const records = new Map<string, BackingRecord>();
  const files = new Map<string, Blob>();
  const store = {
    records,
    full: false,
    list: () => Promise.resolve({ backings: [...records.values()], messages: [] }),
    save: (record: BackingRecord) => {
      records.set(record.id, record);
      return Promise.resolve(good(undefined));
    },
    keepFile: (id: string, file: Blob) => {
      if (store.full) return Promise.resolve(bad('backing.noSpace'));
      files.set(id, file);
      return Promise.resolve(good(undefined));
    },
    file: (id: string) => Promise.resolve(files.has(id) ? good(files.get(id)!) : bad('backing.gone')),
    remove: (id: string) => {
      records.delete(id);
      files.delete(id);
      return Promise.resolve(good(undefined));
    },
  };
  return store;
}

/** A recording of which the beats are known; where it is does as the test says. */
function fakeSound(): OpenBacking & { at: number; clicks: readonly { seconds: number; accent: boolean }[] } {
  const sound: ReturnType<typeof fakeSound> = {
    at: 0,
    clicks: [],
    facts: {
      durationSeconds: 30,
      sampleRate: 8000,
      peaks: new Float32Array(6000),
      peaksPerSecond: 200,
      warnings: [],
    },
    findBeats: () => Promise.resolve(good({ beats, bpm: 120, attacks: beats })),
    findChords: () => Promise.resolve(bad('harmony.noChords')),
    stopFinding: () => undefined,
    play: (from: number) => void (sound.at = from),
    pause: () => undefined,
    setMarks: (marks) => void (sound.clicks = marks),
    positionSeconds: () => sound.at,
    onEnded: () => undefined,
    dispose: () => undefined,
  };
  return sound;
}

/** @param reads whether a recording is read to its end */
async function room({ reads } = { reads: true }) {
  const all = await world();
  let reading: AbortSignal | null = null;
  const store = memoryStore();
  const sound = fakeSound();
  const remembered: (string | null)[] = [];
  const prepared: BackingRun[] = [];
  const backings = new Backings({
    backings: store,
    setup: all.setup,
    stand: {
      load: () => Promise.resolve({ value: emptyStand, messages: [] }),
      save: ({ backing }) => void remembered.push(backing),
    },
    prepare: (run) => void prepared.push(run),
  });
  await backings.load();
  const desk = new BackingDesk({
    audio: {
      ...all.audio,
      openBacking: (_, signal) => {
        reading = signal ?? null;
        return reads ? Promise.resolve(good(sound)) : new Promise(() => undefined);
      },
    },
    frames: { each: () => () => undefined },
    files: { save: (blob, fileName) => void all.saved.push({ blob, fileName }) },
    backings,
    newId: () => 'new',
  });
  return { ...all, store, sound, backings, desk, prepared, stopped: () => reading?.aborted };
}
const file = new File(['sound'], 'evening groove.wav');

/** A recording without chords that are heard: the chart is written by hand. */
async function openWith(desk: BackingDesk, chartText: string): Promise<void> {
  await desk.openFile(file);
  desk.write({ chartText });
}

describe('a recording on the desk', () => {
  test('is read, its beats are found, and they click where they are', async () => {
    const { desk, sound } = await room();
    await openWith(desk, '| A7 | D7 |');
    expect(desk.record).toMatchObject({ title: 'evening groove', durationSeconds: 30 });
    expect(desk.editor.bpm).toBeGreaterThan(110);
    const accents = sound.clicks.filter(({ accent }) => accent);
    expect(accents[0]!.seconds).toBeCloseTo(1, 6);
    desk.edit((editor) => editor.chooseNear(2));
    desk.edit((editor) => editor.setDownbeat());
    expect(sound.clicks.find(({ accent }) => accent)!.seconds).toBeCloseTo(beats[2]!, 6);
    desk.edit((editor) => editor.undo());
    expect(sound.clicks.find(({ accent }) => accent)!.seconds).toBeCloseTo(1, 6);
  });

  test('taps lay beats where they were tapped, the others stay, and too few are told', async () => {
    const { desk, sound } = await room();
    await openWith(desk, '| A7 | D7 |');
    desk.tap();
    expect(desk.taps.seconds).toEqual([]);
    desk.play(5);
    for (const seconds of [5, 5.4, 5.8, 6.2, 6.6, 7]) {
      sound.at = seconds;
      desk.tap();
    }
    expect(desk.taps.bpm).toBeCloseTo(150, 6);
    const before = desk.editor.track.marks.length;
    desk.useTaps();
    expect(desk.editor.track.marks.filter(({ pinned }) => pinned).length).toBe(6);
    expect(desk.editor.track.marks.at(-1)!.seconds).toBeCloseTo(desk.sound!.facts.durationSeconds, 0);
    expect(Math.abs(desk.editor.track.marks.length - before)).toBeLessThan(3);
    desk.play(8);
    desk.tap();
    desk.useTaps();
    expect(desk.problem).toEqual({ code: 'backing.tooFewTaps', facts: { least: 4 } });
  });

  test('goes out as a table that the command line reads', async () => {
    const { desk, saved } = await room();
    await openWith(desk, '| A7 | D7 |');
    desk.saveBeats();
    const rows = readBeatsCsv(await saved[0]!.blob.text(), 'beats.csv');
    expect(rows.ok && rows.value.slice(0, 5).map(({ chord }) => chord)).toEqual(['A7', '', '', '', 'D7']);
    expect(rows.ok && rows.value[7]!.timeSeconds).toBeCloseTo(beats[7]!, 5);
  });

  test('another meter lays other bars', async () => {
    const { desk } = await room();
    await openWith(desk, '| A7 | D7 |');
    const bars = desk.bars;
    desk.setMeter('3/4');
    expect(desk.beatsPerBar).toBe(3);
    expect(desk.bars).toBeGreaterThan(bars);
    expect(desk.changed).toBe(true);
    desk.write({ chartText: '| H7 |' });
    expect(desk.canKeep).toBe(false);
  });
});

test('a recording that is being read is ended with the desk', async () => {
  const { desk, stopped } = await room({ reads: false });
  void desk.openFile(file);
  expect(desk.busy).toBe('reading');
  desk.close();
  expect(stopped()).toBe(true);
  expect([desk.busy, desk.record]).toEqual([null, null]);
});

describe('a recording that is kept', () => {
  test('stands in the band’s place, slower and shifted, and the take says which and how', async () => {
    const { desk, backings, setup, store, prepared } = await room();
    await openWith(desk, 'key: A\n| A7 | D7 | A7 | E7 |');
    await desk.keep();
    expect(desk.record).toBeNull();
    expect(store.records.size).toBe(1);
    expect(setup.title).toBe('evening groove');
    await backings.play('new', { speed: 0.5, cents: 30, bars: { fromBar: 2, toBar: 3 } });
    const timeline = setup.timeline;
    if (!timeline.ok) throw new Error(english(timeline.problem));
    expect(timeline.value.bars).toBe(2);
    // It is rendered ahead as it will be played.
    expect(prepared.at(-1)).toMatchObject({ order: { speed: 0.5, cents: 30 } });
    expect(timeline.value.chordAt(0)?.symbol).toBe('D7');
    expect(timeline.value.beatMap.secondsAt(8)).toBeCloseTo(2 * (beats[12]! - beats[4]!), 6);
    setup.setReference(440);
    const plan = setup.planTake(timeline.value, new Date('2026-03-01T10:00:00Z'));
    expect(plan.details.backing).toMatchObject({ id: 'new', speed: 0.5, cents: 30 });
    expect(plan.details.reference).toBeCloseTo(440 * 2 ** (30 / 1200), 6);
    expect(plan.backing?.order.fromSeconds).toBeCloseTo(beats[4]!, 6);
    setup.chooseForm('12-bar blues');
    expect(setup.planTake(timeline.value, new Date()).backing).toBeUndefined();
  });

  test('without room it is played all the same, and that is told', async () => {
    const { desk, backings, store, setup } = await room();
    store.full = true;
    await openWith(desk, '| A7 | D7 |');
    await desk.keep();
    expect(backings.notices).toEqual([{ code: 'backing.noSpace' }]);
    expect(store.records.size).toBe(0);
    expect((await setup.backing!.source.file()).ok).toBe(true);
  });

  test('a take played to it is graded by its beats, and the same again from the store', async () => {
    const { desk, setup, session, play, until, library, takes, audio } = await room();
    await openWith(desk, 'key: A\n| A7 | D7 |');
    await desk.keep();
    const standing = setup.backing!;
    // The clock of this world is the recording's own.
    const start = audio.openBand;
    audio.openBand = async (...asked) => {
      const band = await start(...asked);
      if (!band.ok || asked[3] === undefined) return band;
      const { beatSeconds } = asked[3];
      return good({
        ...band.value,
        start: () => {
          const first = audio.heardSeconds() + beatSeconds[4]!;
          const map = roundBeatMap(beatSeconds, first);
          return {
            firstBeatContextSeconds: first,
            beatAt: map.beatAt,
            contextSecondsAt: map.secondsAt,
          };
        },
      });
    };
    await session.start();
    const cSharps = Array.from({ length: 12 }, (_, i) => ({
      atSeconds: 2.6 + i / 2,
      midi: 61,
      seconds: 0.4,
    }));
    await play(pluckLine(cSharps, 8000, 9));
    await session.stop();
    await until('review');
    const { phase } = session;
    if (phase.kind !== 'review') throw new Error('no review');
    const { report, details } = phase.review;
    expect(details.backing?.beatSeconds).toEqual([...standing.round.beatSeconds]);
    const change = report.landings.find(({ beat }) => beat === 8)!;
    expect(change.seconds - details.firstBeatSeconds!).toBeCloseTo(standing.round.beatSeconds[8]!, 3);
    await library.load();
    const { id } = library.takes[0]!;
    const stored = await takes.open(id);
    if (!stored.ok) throw new Error(english(stored.problem));
    session.close();
    await session.openTake(id);
    await until('review');
    expect(session.phase.kind === 'review' && session.phase.review.report).toEqual(report);
  });
});
