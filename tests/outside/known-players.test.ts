/**
 * Players whose skill is known because they were made: one who lands on every third, the same one over the wrong
 * chords, and two hundred who wander. The random numbers are Mulberry32 (public domain, T. Ettinger), seeded.
 */
import { headlineOf } from '../../src/core/report/sentences.ts';
import { en } from '../../src/core/words/en.ts';
import { describe, expect, it } from 'vitest';
import { MINOR_PENTATONIC } from '../../src/core/grade/assign/scales.ts';
import { parseChord } from '../../src/core/music/parse-chord.ts';
import type { Report } from '../../src/core/take/schema.ts';
import { gradeLine, TWELVE_BARS, type Played } from '../core/grade/line.ts';

const A_WHOLE_STEP_UP = '| D7 | G7 | D7 | D7 | G7 | G7 | D7 | D7 | A7 | A7 | D7 | D7 |';
const CHORUSES = 4;
const BARS = 12;

function mulberry32(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

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
  const RUNS = player === wanderer ? 200 : 100;
  const LEAST_CALLED_CHANCE = 0.93 * RUNS;
  const reports = Array.from({ length: RUNS }, (_, seed) => gradeLine(TWELVE_BARS, player(seed + 1)));
  const calledChance = (share: (report: Report) => { readonly verdict: string }) =>
    reports.filter((report) => share(report).verdict === 'at chance').length;

  it('are called chance in at least 93 % of the runs, landings and all notes', () => {
    expect(calledChance(({ shares }) => shares.landings.chordTones)).toBeGreaterThanOrEqual(
      LEAST_CALLED_CHANCE,
    );
    expect(calledChance(({ shares }) => shares.landings.thirds)).toBeGreaterThanOrEqual(LEAST_CALLED_CHANCE);
    expect(calledChance(({ shares }) => shares.allNotes.chordTones)).toBeGreaterThanOrEqual(
      LEAST_CALLED_CHANCE,
    );
    expect(calledChance(({ shares }) => shares.strongBeats.chordTones)).toBeGreaterThanOrEqual(
      LEAST_CALLED_CHANCE,
    );
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

  it('reach no aim that must beat luck, but for the odd one', () => {
    const third = reports.filter(
      (report) => report.aims.find((aim) => aim.id === 'third-on-arrival')!.verdict === 'reached',
    );
    expect(third).toHaveLength(0);
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
