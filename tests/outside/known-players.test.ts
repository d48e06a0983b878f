/**
 * Players whose skill is known because they were made: one who lands on every third, the same one over the wrong
 * chords, and many who wander. The random numbers are Mulberry32 (public domain, T. Ettinger), seeded.
 */
import { headlineOf } from '../../src/core/report/sentences.ts';
import { en } from '../../src/core/words/en.ts';
import { describe, expect, it } from 'vitest';
import { MINOR_PENTATONIC } from '../../src/core/grade/assign/scales.ts';
import { parseChord } from '../../src/core/music/parse-chord.ts';
import type { Report } from '../../src/core/take/schema.ts';
import { grade } from '../../src/core/grade.ts';
import {
  CHROMATIC,
  MAJOR_PENTATONIC,
  MIXOLYDIAN,
  chartTimeline,
  mulberry32,
  riff,
  thirdPlayer,
} from '../bench/made-players.ts';
import { gradeLine, line, SETTINGS, TWELVE_BARS, type Played } from '../core/grade/line.ts';

const A_WHOLE_STEP_UP = '| D7 | G7 | D7 | D7 | G7 | G7 | D7 | D7 | A7 | A7 | D7 | D7 |';
const CHORUSES = 4;
const BARS = 12;

/** The third of each bar's chord on its first beat; then root, fifth and seventh, so that thirds are no matter of luck. */
function thirdsPlayer(): readonly Played[] {
  const symbols = TWELVE_BARS.split('|')
    .map((symbol) => symbol.trim())
    .filter((symbol) => symbol !== '');
  return Array.from({ length: CHORUSES * BARS }, (_, bar) => {
    const chord = parseChord(symbols[bar % BARS]!)!;
    const tone = (role: string) => 60 + chord.tones.find((candidate) => candidate.role === role)!.pitchClass;
    return (['third', 'root', 'fifth', 'seventh'] as const).map((role, i): Played => [
      4 * bar + i,
      0.9,
      tone(role),
    ]);
  }).flat();
}

describe('a player who lands on every third of four choruses', () => {
  const { summary, shares, aims } = gradeLine(TWELVE_BARS, thirdsPlayer());

  it('has landed on all of them', () => {
    expect(summary.landings.thirds).toBe(summary.landings.count);
    expect(summary.landings.open).toBe(0);
    expect(summary.landings.count).toBeGreaterThanOrEqual(20);
  });

  it('is told that this is more than luck', () => {
    expect(shares.landings.thirds.tail).toBeLessThan(0.001);
    expect(shares.landings.thirds.verdict).toBe('above chance');
    expect(headlineOf({ summary, shares }, en)).toContain('more than luck');
  });

  it('has reached the aim', () => {
    expect(aims.find((aim) => aim.id === 'third-on-arrival')!.verdict).toBe('reached');
  });
});

describe('the same line over the chart a whole step higher', () => {
  const { summary, shares, aims } = gradeLine(A_WHOLE_STEP_UP, thirdsPlayer());

  it('has landed on none, at or below chance', () => {
    expect(summary.landings.thirds).toBe(0);
    expect(shares.landings.thirds.tail).toBe(1);
    expect(['at chance', 'below chance']).toContain(shares.landings.thirds.verdict);
    expect(aims.find((aim) => aim.id === 'third-on-arrival')!.verdict).toBe('not yet');
  });
});

/** Three ways to ignore the chords: eighths with rests, the same with human time and ragged lengths, a walk by steps. */
const wanderers: readonly (readonly [string, (seed: number) => readonly Played[]])[] = [
  ['in eighths', wanderer],
  ['with human time', ragged],
  ['walking by step', walker],
];

describe.each(wanderers)('players who wander over the minor pentatonic %s', (_, player) => {
  const RUNS = 40;
  const reports = Array.from({ length: RUNS }, (_, seed) => gradeLine(TWELVE_BARS, player(seed + 1)));
  const called = (verdict: string, share: (report: Report) => { readonly verdict: string }) =>
    reports.filter((report) => share(report).verdict === verdict).length;

  it('are called more than luck in 5 % of the runs at most, and never less', () => {
    for (const share of [
      ({ shares }: Report) => shares.landings.thirds,
      ({ shares }: Report) => shares.landings.chordTones,
      ({ shares }: Report) => shares.allNotes.chordTones,
      ({ shares }: Report) => shares.strongBeats.chordTones,
    ]) {
      expect(called('above chance', share)).toBeLessThanOrEqual(0.05 * RUNS);
      expect(called('below chance', share)).toBe(0);
    }
    // Four choruses are enough to say so, of thirds.
    expect(called('at chance', ({ shares }) => shares.landings.thirds)).toBeGreaterThanOrEqual(0.93 * RUNS);
  });

  it('stand at their own level: the exact 56.67 % of this scale over this form', () => {
    const mean = (pick: (report: Report) => number) =>
      reports.reduce((sum, report) => sum + pick(report), 0) / RUNS;
    // Notes that anticipate a change by luck add a little to the 56.67 %, to share and chance alike.
    expect(mean((report) => report.shares.allNotes.chordTones.chance!)).toBeCloseTo(0.5667, 1);
    expect(
      mean((report) => report.shares.allNotes.chordTones.share! - report.shares.allNotes.chordTones.chance!),
    ).toBeCloseTo(0, 1);
  });

  it('reach an aim in 10 % of the takes at most', () => {
    const reached = reports.filter(({ aims }) => aims.some((aim) => aim.verdict === 'reached'));
    expect(reached.length).toBeLessThanOrEqual(0.1 * RUNS);
  });
});

/** The short form of tests/bench/luck-bench.ts, which takes two hundred seeds of each kind. */
describe('riffs without regard to the chords, and players who land on thirds', () => {
  const timeline = chartTimeline(TWELVE_BARS);
  const RIFFS = 40;
  const SCALES = [MINOR_PENTATONIC, MAJOR_PENTATONIC, MIXOLYDIAN, CHROMATIC];
  const verdicts = (runs: number, play: (seed: number, scale: readonly number[]) => readonly Played[]) =>
    Array.from({ length: runs }, (_, i) => {
      const played = play(i + 1, SCALES[i % SCALES.length]!);
      return grade(line(played), timeline, SETTINGS).shares.landings.thirds.verdict;
    });
  const count = (all: readonly string[], verdict: string) => all.filter((one) => one === verdict).length;

  it.each([1, 2, 4])(
    'a riff of %i bars over four choruses is lucky in 5 % at most, and never unlucky',
    (bars) => {
      const all = verdicts(RIFFS, (seed, scale) => riff(seed, scale, bars, CHORUSES * BARS));
      expect(count(all, 'above chance')).toBeLessThanOrEqual(0.05 * RIFFS);
      expect(count(all, 'below chance')).toBe(0);
    },
  );

  it('every third is found in one chorus in 95 % at least', () => {
    const all = verdicts(40, (seed, scale) => thirdPlayer(seed, timeline, 1, 1, scale));
    expect(count(all, 'above chance')).toBeGreaterThanOrEqual(38);
  });

  it('three thirds in ten are found in four choruses in 85 % at least', () => {
    const all = verdicts(40, (seed, scale) => thirdPlayer(seed, timeline, 4, 0.3, scale));
    expect(count(all, 'above chance')).toBeGreaterThanOrEqual(34);
  });
});

/** Eighths with rests over two octaves of C minor pentatonic, four choruses. */
function wanderer(seed: number): readonly Played[] {
  const random = mulberry32(seed);
  const played: Played[] = [];
  for (let beat = 0; beat < CHORUSES * BARS * 4; beat += 0.5) {
    if (random() < 0.25) continue;
    const step = MINOR_PENTATONIC[Math.floor(random() * MINOR_PENTATONIC.length)]!;
    played.push([beat, random() < 0.3 ? 0.9 : 0.5, 60 + step + (random() < 0.5 ? 12 : 0)]);
  }
  return played;
}

/** The same a little off the beat, some notes let ring into the next. */
function ragged(seed: number): readonly Played[] {
  const random = mulberry32(seed);
  const played: Played[] = [];
  for (let beat = 0.1; beat < CHORUSES * BARS * 4; beat += 0.5) {
    if (random() < 0.2) continue;
    const step = MINOR_PENTATONIC[Math.floor(random() * MINOR_PENTATONIC.length)]!;
    played.push([beat + (random() - 0.6) * 0.15, 0.45 + (random() - 0.5) * 0.3, 60 + step]);
  }
  return played;
}

/** One step of the scale up or down at a time, over two octaves. */
function walker(seed: number): readonly Played[] {
  const random = mulberry32(seed);
  const played: Played[] = [];
  let place = 5;
  for (let beat = 0; beat < CHORUSES * BARS * 4; beat += 0.5) {
    if (random() < 0.2) continue;
    place = Math.max(0, Math.min(9, place + (random() < 0.5 ? 1 : -1)));
    played.push([beat, 0.5, 60 + MINOR_PENTATONIC[place % 5]! + 12 * Math.floor(place / 5)]);
  }
  return played;
}
