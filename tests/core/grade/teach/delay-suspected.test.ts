/**
 * Lines with a known shift against the beats. Players are made with the scatter of skilled soloists (SD 34 ms, mean
 * +16 ms: 64,141 on-beat notes of the Weimar Jazz Database, measured for the project).
 */
import { describe, expect, it } from 'vitest';
import { chance } from '../../../../src/core/base/random.ts';
import { grade } from '../../../../src/core/grade.ts';
import { delaySentence, timingSentence } from '../../../../src/core/report/sentences.ts';
import { de } from '../../../../src/core/words/de.ts';
import { en } from '../../../../src/core/words/en.ts';
import { chart, line, SETTINGS, type Played } from '../line.ts';

interface Player {
  readonly bpm?: number;
  /** Share of the beat that the first eighth takes, as it is played. */
  readonly swing?: number;
  readonly shiftMs: number;
  readonly spreadMs?: number;
  readonly beats?: number;
  readonly seed?: number;
}

/** Eighths of C major with rests, as a player of these hands plays them. */
function suspectedOf({ bpm = 100, swing = 0.5, shiftMs, spreadMs = 0, beats = 48, seed = 1 }: Player) {
  const { next } = chance(seed);
  const normal = () => Math.sqrt(-2 * Math.log(1 - next())) * Math.cos(2 * Math.PI * next());
  const played: Played[] = [];
  for (let beat = 1; beat < beats; beat++) {
    for (const place of [0, swing]) {
      if (next() < 0.25) continue;
      const off = ((shiftMs + spreadMs * normal()) / 60_000) * bpm;
      played.push([beat + place + off, 0.3, [60, 62, 64, 65, 67][Math.floor(5 * next())]!]);
    }
  }
  return grade(line(played, bpm), chart('| C | F | G7 | C |', { bpm }), SETTINGS);
}

const seeds = Array.from({ length: 40 }, (_, i) => i + 1);
const told = (player: Omit<Player, 'seed'>) =>
  seeds.filter((seed) => suspectedOf({ ...player, seed }).suspectedDelay !== null).length;

describe('a delay that is suspected', () => {
  it.each([
    ['exactly on the beat', { shiftMs: 0 }],
    ['swung as triplets over a straight chart, 20 ms late', { swing: 2 / 3, shiftMs: 20 }],
    ['swung lightly, 20 ms late, with the scatter of players', { swing: 0.6, shiftMs: 20, spreadMs: 34 }],
    ['laid back by 50 ms', { swing: 0.6, shiftMs: 50, spreadMs: 20 }],
    ['25 ms early', { shiftMs: -25, spreadMs: 20 }],
  ])('is not told of a line that is %s', (_, player) => {
    expect(suspectedOf(player).suspectedDelay).toBeNull();
  });

  it.each([60, 100, 160, 220])('is told of no more than one good player in forty at %i bpm', (bpm) => {
    for (const swing of [0.5, 0.6, 0.67])
      expect(told({ bpm, swing, shiftMs: 16, spreadMs: 34 })).toBeLessThanOrEqual(1);
  });

  // The 3 comes a fifth of a second after its b3; two notes of three lie on the beats.
  it('is not told of a rhythm: a b3 on the beat, its 3 a little later, the fifth on beat 3', () => {
    const played = Array.from({ length: 24 }, (_, bar): Played[] => [
      [4 * bar, 0.4, 63],
      [4 * bar + 0.4, 1, 64],
      [4 * bar + 2, 1, 67],
    ]).flat();
    expect(grade(line(played, 120), chart('| C7 |', { bpm: 120 }), SETTINGS).suspectedDelay).toBeNull();
  });

  it('is not told of notes that follow no beat, nor of a few', () => {
    const { next } = chance(4);
    const free = Array.from({ length: 60 }, (): Played => [48 * next(), 0.2, 60]).sort((a, b) => a[0] - b[0]);
    expect(grade(line(free), chart('| C |'), SETTINGS).suspectedDelay).toBeNull();
    expect(suspectedOf({ shiftMs: 100, beats: 12 }).suspectedDelay).toBeNull();
  });

  it.each([
    { shiftMs: 80, bpm: 60 },
    { shiftMs: 80, bpm: 100 },
    { shiftMs: 80, bpm: 120 },
    { shiftMs: 150, bpm: 80 },
    { shiftMs: 110, swing: 0.62, bpm: 120 },
    { shiftMs: 96, swing: 0.62, spreadMs: 34, bpm: 100 },
    { shiftMs: -80, swing: 0.66, spreadMs: 20, bpm: 70 },
  ])('is told, with its size, of a take moved by $shiftMs ms at $bpm bpm', (player: Player) => {
    const suspected = suspectedOf(player).suspectedDelay!;
    // Of 36 notes with an SD of 34 ms the median has a standard error of 7 ms (1.253 SD / √n).
    expect(Math.abs(suspected.ms - player.shiftMs)).toBeLessThan(5 + (player.spreadMs ?? 0) / 2);
    expect(suspected.isOnlyOne).toBe(true);
    expect(suspected.notes).toBeGreaterThan(20);
  });

  it('is told of nearly every player whose take is moved by 80 ms, up to 120 bpm', () => {
    for (const bpm of [70, 100, 120])
      expect(told({ bpm, swing: 0.6, shiftMs: 96, spreadMs: 34 })).toBeGreaterThanOrEqual(36);
  });

  it('has no size where straight eighths fit a shift to the other side as well', () => {
    // 180 ms late and 95 ms early are the same place between straight eighths 273 ms apart.
    const suspected = suspectedOf({ bpm: 110, shiftMs: 180 }).suspectedDelay!;
    expect(suspected.isOnlyOne).toBe(false);
  });

  it('is a sentence in each language, in place of the one on the hands', () => {
    const report = suspectedOf({ shiftMs: 80 });
    expect(delaySentence(report.suspectedDelay, en)).toMatch(
      /^Your notes lie about 80 ms behind the beat \(\d+ notes, give or take 0 ms\)\..*about 80 ms too short\.$/,
    );
    expect(delaySentence(report.suspectedDelay, de)).toMatch(
      /^Deine Töne liegen etwa 80 ms hinter dem Schlag/,
    );
    expect(timingSentence(report, en)).toBeNull();
    expect(delaySentence(suspectedOf({ shiftMs: 0 }).suspectedDelay, en)).toBeNull();
  });

  /** So many notes on beats and twice as many second eighths at 0.62 of the beat, all of them 90 ms late at 100 bpm. */
  const mostlySecond = (onBeats: number) => {
    const late = 0.15;
    const played = Array.from({ length: 2 * onBeats }, (_, beat): Played[] => [
      ...(beat % 2 === 0 ? [[beat + late, 0.3, 60] as const] : []),
      [beat + 0.62 + late, 0.2, 64],
    ]).flat();
    return grade(line(played, 100), chart('| C | F | G7 | C |', { bpm: 100 }), SETTINGS).suspectedDelay!;
  };

  it('is measured on the beats, from twelve notes on; with fewer, on all eighths', () => {
    expect(mostlySecond(12)).toMatchObject({ notes: 12 });
    expect(mostlySecond(12).ms).toBeCloseTo(90, 0);
    expect(mostlySecond(11).notes).toBe(33);
  });

  it('is told in compound time, whose beat has three eighths', () => {
    const late = 0.09;
    const played = Array.from({ length: 16 }, (_, beat): Played[] =>
      [0, 1 / 3, 2 / 3].map((place): Played => [beat + place + late, 0.25, 60 + ((beat * 3) % 5)]),
    ).flat();
    const suspected = (text: string) =>
      grade(line(played, 60), chart(text, { bpm: 60 }), SETTINGS).suspectedDelay;
    const told = suspected('meter: 12/8\n| C | F |')!;
    expect(told.ms).toBeCloseTo(90, 0);
    expect(told.notes).toBe(16);
  });
});
