import { describe, expect, it } from 'vitest';
import { parseChord } from '../../../src/core/music/parse-chord.ts';
import type { ReportNote } from '../../../src/core/take/schema.ts';
import {
  barsBetween,
  pageOf,
  beatOf,
  lostStretchesOn,
  notesBetween,
  penPaths,
  chordToneLines,
  heightOf,
  stripFor,
  widthOf,
  xOf,
  yOf,
} from '../../../src/ui/review/line-geometry.ts';

const note = (beat: number, endBeat: number, midi: number, role: ReportNote['role']): ReportNote =>
  ({ beat, endBeat, midi, role }) as unknown as ReportNote;
const notes = [
  note(-0.5, 0, 60, 'outside'),
  note(0, 1, 64, 'third'),
  note(1, 1.5, 62, 'colour'),
  note(4, 5, 67, 'fifth'),
];
const strip = stripFor(notes, 7, 4, 50, 280);

describe('lost sound on the strip', () => {
  it('is hatched where it was, and never too narrow to be seen', () => {
    const lost = [
      { atSeconds: 2, seconds: 0.01 },
      { atSeconds: 3, seconds: 0.5 },
    ];
    // At 120 a second is two beats of 50 px; the strip begins a bar before the first, 18 px from the edge.
    expect(lostStretchesOn(strip, lost, (seconds) => 2 * seconds)).toEqual([
      { x: 418, widthPx: 8 },
      { x: 518, widthPx: 50 },
    ]);
  });
});

describe('the strip', () => {
  it('holds whole bars, from the pickup to the end of the take', () => {
    expect([strip.firstBeat, strip.lastBeat]).toEqual([-4, 8]);
    expect(widthOf(strip)).toBe(618);
  });

  it('holds every note, the higher the higher', () => {
    for (const { midi } of notes) {
      expect(yOf(strip, midi)).toBeGreaterThan(0);
      expect(yOf(strip, midi)).toBeLessThan(280);
    }
    expect(yOf(strip, 67)).toBeLessThan(yOf(strip, 60));
  });

  it('is not squeezed by one far-off note, which stands at the edge', () => {
    const line = [62, 64, 65, 67, 69, 71, 72, 74, 71, 67, 64, 62].map((midi, i) =>
      note(i, i + 0.9, midi, 'third'),
    );
    const plain = stripFor(line, 12, 4, 50, 280);
    for (const [midi, edge] of [
      [100, 'above'],
      [28, 'below'],
    ] as const) {
      const ghost = note(5.5, 5.7, midi, 'outside');
      const fitted = stripFor([...line, ghost], 12, 4, 50, 280);
      expect(fitted).toEqual(plain);
      const { y, beyond } = heightOf(fitted, midi);
      expect(beyond).toBe(edge);
      expect(y).toBeGreaterThan(0);
      expect(y).toBeLessThan(280);
      expect(penPaths(fitted, [...line, ghost]).thin).not.toMatch(/ -\d/);
    }
    for (const { midi } of line) expect(heightOf(plain, midi)).toEqual({ y: yOf(plain, midi), beyond: null });
  });

  it('keeps the top of a line on the page, and every note of a short one', () => {
    const climb = [60, 62, 64, 65, 67, 69, 71, 72, 74, 84].map((midi, i) => note(i, i + 1, midi, null));
    const short = [40, 88].map((midi, i) => note(i, i + 1, midi, null));
    for (const notes of [climb, short]) {
      const fitted = stripFor(notes, 10, 4, 50, 280);
      for (const { midi } of notes) expect(heightOf(fitted, midi).beyond).toBeNull();
    }
  });

  it('goes from beats to pixels and back', () => {
    expect(beatOf(strip, xOf(strip, 3.25))).toBeCloseTo(3.25);
  });

  it('stands for a take without notes', () => {
    const empty = stripFor([], 0, 4, 50, 280);
    expect(widthOf(empty)).toBe(218);
    expect(Number.isFinite(yOf(empty, 60))).toBe(true);
  });
});

it('finds the notes that reach into a stretch', () => {
  const line = notes.map((one, index) => ({ counts: true, note: one, place: index, index }) as const);
  expect(notesBetween(line, 0.5, 4).map(({ index }) => index)).toEqual([1, 2]);
});

describe('the pen', () => {
  it('presses on chord tones, lifts at rests', () => {
    const { thin, thick } = penPaths(strip, notes);
    expect(thick.match(/M/g)).toHaveLength(2);
    // two tones outside the chord, two swings; none across the rest of two and a half beats
    expect(thin.match(/C/g)).toHaveLength(2);
    expect(thin.match(/H/g)).toHaveLength(2);
  });
});

describe('the lines of the chord tones', () => {
  it('lie at every octave of each chord tone', () => {
    const chord = parseChord('C7');
    if (chord === null) throw new Error('C7 is a chord');
    const lines = chordToneLines(strip, chord);
    // 54.0 to 73.0: B♭ and C twice (58 and 70, 60 and 72), E once (64), G twice (55 and 67)
    const found = lines.map(({ degree }) => degree).sort();
    const heights = new Set(lines.map(({ y }) => y));
    expect(heights.size).toBe(lines.length);
    for (const midi of [58, 60, 64, 67, 70]) {
      expect(lines.some(({ y }) => Math.abs(y - yOf(strip, midi)) < 1e-6)).toBe(true);
    }
    expect(lines.some(({ y }) => Math.abs(y - yOf(strip, 62)) < 1e-6)).toBe(false);
    expect(found).toContain('b7');
  });
});

describe('barsBetween', () => {
  it('takes every bar that a drag touches, to either side, and one at least', () => {
    expect(barsBetween(1, 2, 4)).toEqual([0, 4]);
    expect(barsBetween(9, 3, 4)).toEqual([0, 12]);
    expect(barsBetween(4, 4, 4)).toEqual([4, 8]);
    expect(barsBetween(-1, 3, 3)).toEqual([-3, 3]);
  });
});

describe('pageOf', () => {
  const strip = stripFor(notes, 400, 4, 64, 300);

  it('holds the window wherever it stands, half a window to either side, and nothing beyond the strip', () => {
    for (let left = 0; left < widthOf(strip) - 1200; left += 97) {
      const page = pageOf(strip, Math.floor(left / 600) * 600, 600);
      expect(page.fromPx).toBeLessThanOrEqual(left);
      expect(page.fromPx + page.widthPx).toBeGreaterThanOrEqual(Math.min(left + 1200, widthOf(strip)));
      expect(page.fromPx + page.widthPx).toBeLessThanOrEqual(widthOf(strip));
      expect(beatOf(strip, page.fromPx)).toBeCloseTo(page.fromBeat, 9);
    }
  });
});
