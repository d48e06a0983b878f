/** A recording with a band in it that is opened to be graded: its chords are proposed, corrected, refused, taken. */
import { expect, test } from 'vitest';
import { bad, good, type Outcome } from '../../src/core/base/outcome.ts';
import type { FoundChart } from '../../src/core/harmony/chart-of-recording.ts';
import { proposeChart } from '../../src/core/harmony/propose.ts';
import { RecordingChords } from '../../src/state/recording-chords.svelte.ts';
import { RecordingDraft } from '../../src/state/recording-draft.svelte.ts';
import { usualSettings } from '../../src/state/settings.ts';
import { beatsOf, heardAs } from '../core/harmony/heard.ts';

// Common practice: the twelve-bar blues, three times, at 120 from the first second on.
const BLUES = 'key: A\n| A7 | A7 | A7 | A7 |\n| D7 | D7 | A7 | A7 |\n| E7 | D7 | A7 | E7 |';
const symbols = Array.from({ length: 3 }, () => beatsOf('A7|A7|A7|A7|D7|D7|A7|A7|E7|D7|A7|E7')).flat();
const beats = symbols.map((_, b) => 1 + 0.5 * b);
const heard = { logs: heardAs(symbols, 0.15, 8), beats: beats.length, tuningCents: 0 };
const found: FoundChart = {
  proposal: proposeChart(heard)!,
  heard,
  beats,
  bpm: 120,
  attacks: beats,
  hasBand: true,
};

/** A form of 32 bars at another tempo lies on the stand. */
function desk() {
  const draft = RecordingDraft.of({ ...usualSettings, form: null, ownChart: '| C |', bpm: 90 }, 0);
  let answer: (outcome: Outcome<FoundChart>) => void = () => undefined;
  const asked: (readonly number[] | null)[] = [];
  let stopped = 0;
  const search = {
    findChords: (over: readonly number[] | null) => {
      asked.push(over);
      return new Promise<Outcome<FoundChart>>((resolve) => (answer = resolve));
    },
    stopFinding: () => void stopped++,
  };
  const chords = new RecordingChords(draft, search, 75);
  const searched = chords.findChart(null);
  return {
    draft,
    chords,
    asked,
    stopped: () => stopped,
    answered: (outcome: Outcome<FoundChart>) => {
      answer(outcome);
      return searched;
    },
  };
}

test('chart, tempo and first bar that are found are what it is graded by', async () => {
  const { draft, chords, answered } = desk();
  expect(chords.busy).not.toBeNull();
  await answered(good(found));
  expect(chords.result).toBe('found');
  expect(draft.setup.chartText).toBe(BLUES);
  expect(draft.setup.settings).toMatchObject({ form: null, key: 'A', bpm: 120 });
  expect(draft.firstBeatSeconds).toBeCloseTo(1, 3);
  expect(chords.tempo?.wanderSeconds).toBeLessThan(0.001);
  expect(chords.bars).toBe(37);
  const details = draft.plan(new Date('2026-03-01T10:15:00Z'));
  expect(details).toMatchObject({ chartText: BLUES, bpm: 120, key: 'A' });

  chords.finding.setBar(1, 'D7');
  expect(draft.setup.chartText).toBe(BLUES.replace('| A7 | A7 |', '| A7 | D7 |'));
  expect(chords.finding.standing?.form?.name).toBe('quick-change blues');
  chords.finding.setLength(24);
  expect(chords.finding.standing?.bars).toHaveLength(24);
});

test('a line alone leaves the chart on the stand, however sure its chords look', async () => {
  const { draft, chords, answered } = desk();
  await answered(good({ ...found, hasBand: false }));
  expect(chords.result).toBe('alone');
  expect(chords.finding.proposal).toBeNull();
  expect(draft.setup.settings).toMatchObject({ ownChart: '| C |', bpm: 90 });
});

test('so does a recording in which no chord, or no beat, is heard', async () => {
  const { draft, chords, answered } = desk();
  await answered(bad('harmony.noChords'));
  expect(chords.result).toEqual({ code: 'harmony.noChords' });
  expect(draft.setup.chartText).toBe('| C |');
});

test('what the player sets while it is looked for stays; what was found is offered', async () => {
  const { draft, chords, answered } = desk();
  draft.setup.setBpm(60);
  await answered(good(found));
  expect(draft.setup.settings).toMatchObject({ ownChart: '| C |', bpm: 60 });
  expect(chords.finding.standing).toBeNull();
  chords.takeFound();
  expect(draft.setup.settings).toMatchObject({ ownChart: BLUES, bpm: 120 });
  draft.setup.writeChart('| C |');
  expect(chords.finding.standing).toBeNull();
});

test('a search that is stopped ends at once, and its answer is not taken', async () => {
  const { draft, chords, answered, stopped } = desk();
  chords.stop();
  expect(stopped()).toBe(1);
  expect(chords.busy).toBeNull();
  await answered(good(found));
  expect(chords.result).toBe('stopped');
  expect(draft.setup.chartText).toBe('| C |');
});

test('another first bar is the first of the chart, where it lies on a beat that was heard', async () => {
  const { draft, chords, answered } = desk();
  await answered(good(found));
  draft.firstBeatSeconds = 1 + 0.5 * 16 + 0.04;
  chords.firstBeatMoved();
  expect(chords.finding.standing?.downbeat).toBe(16);
  expect(draft.setup.chartText.split('\n')[1]).toBe('| D7 | D7 | A7 | A7 |');
  draft.firstBeatSeconds = 1.25;
  chords.firstBeatMoved();
  expect(chords.finding.standing?.downbeat).toBe(16);
});

test('a tempo that is no whole number is written so that the last beat still fits', async () => {
  const { draft, answered } = desk();
  const slow = symbols.map((_, b) => 1 + 0.507 * b);
  await answered(good({ ...found, beats: slow }));
  const off = Math.abs(60 / draft.setup.settings.bpm - 0.507) * symbols.length;
  expect(off).toBeLessThan(0.02);
});
