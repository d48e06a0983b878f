/** The chords that are found in a recording on the desk: proposed, corrected bar by bar, cancelled, taken. */
import { beforeEach, describe, expect, test } from 'vitest';
import { bad, good, type Outcome } from '../../src/core/base/outcome.ts';
import type { DetectedBeats } from '../../src/core/beats/detect-beats.ts';
import { secondsOf } from '../../src/core/beats/track.ts';
import type { FoundChart } from '../../src/core/harmony/chart-of-recording.ts';
import { proposeChart } from '../../src/core/harmony/propose.ts';
import { BackingDesk } from '../../src/state/backing-desk.svelte.ts';
import { Backings, emptyStand } from '../../src/state/backings.svelte.ts';
import type { BackingRecord } from '../../src/state/chosen-backing.ts';
import { noBackings } from '../../src/storage/nothing-kept.ts';
import { beatsOf, heardAs } from '../core/harmony/heard.ts';
import { world } from './world.ts';

// Common practice: the twelve-bar blues, three times, heard with slips.
const symbols = Array.from({ length: 3 }, () => beatsOf('A7|A7|A7|A7|D7|D7|A7|A7|E7|D7|A7|E7')).flat();
const beats = symbols.map((_, b) => 1 + 0.5 * b);
const logs = heardAs(symbols, 0.15, 8);
const heard = { logs, beats: beats.length, tuningCents: 0 };
const found: FoundChart = {
  proposal: proposeChart(heard)!,
  heard,
  beats,
  bpm: 120,
  attacks: beats,
  hasBand: true,
};
const BLUES = 'key: A\n| A7 | A7 | A7 | A7 |\n| D7 | D7 | A7 | A7 |\n| E7 | D7 | A7 | E7 |';

/** A recording whose search for chords is answered when the test says so. */
async function room() {
  const all = await world();
  const search: {
    answer: (outcome: Outcome<FoundChart>) => void;
    reach: (share: number) => void;
    stopped: number;
  } = {
    answer: () => undefined,
    reach: () => undefined,
    stopped: 0,
  };
  const asked: (readonly number[] | null)[] = [];
  const sound = {
    facts: {
      durationSeconds: 74,
      sampleRate: 8000,
      peaks: new Float32Array(9),
      peaksPerSecond: 200,
      warnings: [],
    },
    findBeats: (): Promise<Outcome<DetectedBeats>> =>
      Promise.resolve(good({ beats, bpm: 120, attacks: beats })),
    findChords: (over: readonly number[] | null, reach: (share: number) => void) => {
      asked.push(over);
      search.reach = reach;
      return new Promise<Outcome<FoundChart>>((resolve) => (search.answer = resolve));
    },
    stopFinding: () => void search.stopped++,
    play: () => undefined,
    pause: () => undefined,
    setMarks: () => undefined,
    positionSeconds: () => 0,
    onEnded: () => undefined,
    dispose: () => undefined,
  };
  const saved: BackingRecord[] = [];
  const backings = new Backings({
    backings: {
      ...noBackings({ code: 'backing.gone' }),
      save: (record) => {
        saved.push(record);
        return Promise.resolve(good(undefined));
      },
      keepFile: () => Promise.resolve(good(undefined)),
    },
    setup: all.setup,
    stand: { load: () => Promise.resolve({ value: emptyStand, messages: [] }), save: () => undefined },
    prepare: () => undefined,
  });
  const desk = new BackingDesk({
    audio: { ...all.audio, openBacking: () => Promise.resolve(good(Object.create(sound) as typeof sound)) },
    frames: { each: () => () => undefined },
    files: { save: () => undefined },
    backings,
    newId: () => 'new',
  });
  const opening = desk.openFile(new File(['sound'], 'groove.wav'));
  await expect.poll(() => asked.length).toBe(1);
  return { desk, search, opening, asked, saved, sound };
}
let stage: Awaited<ReturnType<typeof room>>;
beforeEach(async () => {
  stage = await room();
});
async function answered(outcome: Outcome<FoundChart> = good(found)) {
  stage.search.answer(outcome);
  await stage.opening;
  return stage.desk;
}

describe('what is found after another recording was opened', () => {
  test('says nothing of that one', async () => {
    let findBeats: (outcome: Outcome<never>) => void = () => undefined;
    stage.sound.findBeats = () => new Promise((resolve) => (findBeats = resolve));
    stage.search.answer(bad('harmony.noChords'));
    await expect.poll(() => stage.desk.busy).toBe('listening');
    stage.sound.findBeats = () => Promise.resolve(good({ beats, bpm: 120, attacks: beats }));
    const opening = stage.desk.openFile(new File(['sound'], 'other.wav'));
    await expect.poll(() => stage.asked.length).toBe(2);
    findBeats(bad('backing.workerGone'));
    await stage.opening;
    expect(stage.desk.problem).toBeNull();
    stage.search.answer(good(found));
    await opening;
    expect(stage.desk.problem).toBeNull();
  });
});

describe('what is found', () => {
  test('is told on the way, and laid out as chart, beats and first bar', async () => {
    stage.search.reach(0.4);
    expect(stage.desk.finding.share).toBe(0.4);
    expect(stage.desk.busy).toBe('finding chords');
    expect(stage.desk.record?.chartText).toBe('');
    const desk = await answered();
    expect(desk.busy).toBeNull();
    expect(desk.record?.chartText).toBe(BLUES);
    expect(desk.finding.standing?.bars).toHaveLength(12);
    expect(desk.bars).toBeGreaterThanOrEqual(36);
    expect(desk.editor.track.marks[desk.editor.track.downbeat]!.seconds).toBeCloseTo(1, 6);
    await desk.keep();
    expect(stage.saved[0]).toMatchObject({ title: 'groove', chartText: BLUES });
  });

  test('gives way to a bar that the player sets, and keeps it through the next', async () => {
    const desk = await answered();
    desk.finding.setBar(1, 'D7');
    desk.finding.setBar(11, 'A7');
    expect(desk.record?.chartText).toBe(
      BLUES.replace('| A7 | A7 |', '| A7 | D7 |').replace('A7 | E7 |', 'A7 | A7 |'),
    );
    expect(desk.finding.standing?.form?.name).toBe('quick-change blues');
  });

  test('takes another length, and another first bar from the beats', async () => {
    const desk = await answered();
    desk.finding.setLength(24);
    expect(desk.finding.standing?.bars).toHaveLength(24);
    desk.finding.setLength(12);
    desk.edit((editor) => editor.chooseNear(1 + 0.5 * 16));
    desk.edit((editor) => editor.setDownbeat());
    expect(desk.finding.standing?.downbeat).toBe(16);
    expect(desk.record?.chartText.split('\n')[1]).toBe('| D7 | D7 | A7 | A7 |');
  });

  test('is left alone once the player writes a chart', async () => {
    const desk = await answered();
    desk.write({ chartText: '| A7 |' });
    expect(desk.finding.standing).toBeNull();
    desk.edit((editor) => editor.chooseNear(5));
    desk.edit((editor) => editor.setDownbeat());
    expect(desk.record?.chartText).toBe('| A7 |');
  });

  test('may be looked for again over beats that were set', async () => {
    const desk = await answered();
    const again = desk.findChart(secondsOf(desk.editor.track));
    expect(stage.asked[1]).toHaveLength(desk.editor.track.marks.length);
    stage.search.answer(good(found));
    await again;
    expect(desk.finding.standing).not.toBeNull();
  });
});

test('a search that is stopped ends at once, and its answer is not taken', async () => {
  const { desk, search } = stage;
  desk.finding.forget();
  expect(search.stopped).toBe(1);
  expect(desk.busy).toBeNull();
  await answered();
  expect(desk.record?.chartText).toBe('');
  expect(desk.finding.standing).toBeNull();
});

test('where no chord is heard the beats are laid, and that is told', async () => {
  const desk = await answered(bad('harmony.noChords'));
  expect(desk.editor.track.marks.length).toBeGreaterThan(100);
  expect(desk.problem).toEqual({ code: 'harmony.noChords' });
  expect(desk.canKeep).toBe(false);
});

test('what was found is gone with the recording', async () => {
  const desk = await answered();
  desk.close();
  expect(desk.finding.proposal).toBeNull();
  expect(desk.finding.share).toBeNull();
});
