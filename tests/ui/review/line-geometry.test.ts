import { describe, expect, it } from 'vitest';
import { parseChord } from '../../../src/core/music/parse-chord.ts';
import type { ReportNote } from '../../../src/core/take/schema.ts';
import {
  barsBetween,
  beatOf,
  lostStretchesOn,
  notesBetween,
  penPaths,
  chordToneLines,
  heightOf,
  stripFor,
  tilesIn,
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

  it('drawn piece by piece draws the same as at once', () => {
    const whole = penPaths(strip, notes);
    const [one, two] = [penPaths(strip, notes.slice(0, 2), notes[2]), penPaths(strip, notes.slice(2))];
    expect(one.thin + two.thin).toBe(whole.thin);
    expect(one.thick + two.thick).toBe(whole.thick);
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

describe('tilesIn', () => {
  const strip = stripFor(notes, 400, 4, 64, 300);

  it('covers the window wherever it stands, in whole bars, without a gap, and nothing beyond the strip', () => {
    for (let leftPx = 0; leftPx < widthOf(strip) - 1200; leftPx += 97) {
      const tiles = tilesIn(strip, 4, { leftPx, windowPx: 1200 });
      expect(xOf(strip, tiles[0]!.fromBeat)).toBeLessThanOrEqual(
        Math.max(leftPx, xOf(strip, strip.firstBeat)),
      );
      expect(xOf(strip, tiles.at(-1)!.toBeat)).toBeGreaterThanOrEqual(
        Math.min(leftPx + 1200, widthOf(strip)),
      );
      expect(tiles.at(-1)!.toBeat).toBeLessThanOrEqual(strip.lastBeat);
      for (const [i, { fromBeat, toBeat }] of tiles.entries()) {
        expect(fromBeat % 4 === 0).toBe(true);
        if (i > 0) expect(fromBeat).toBe(tiles[i - 1]!.toBeat);
        expect(toBeat).toBeGreaterThan(fromBeat);
      }
      // A window's worth and three tiles of 256 px at most, however long the take is.
      expect(tiles.length).toBeLessThanOrEqual(Math.ceil(1200 / 256) + 3);
    }
  });

  it('keeps its tiles while the window moves: each is drawn once', () => {
    const one = tilesIn(strip, 4, { leftPx: 3000, windowPx: 1200 });
    const other = tilesIn(strip, 4, { leftPx: 3200, windowPx: 1200 });
    const same = other.filter(({ index }) => one.some((tile) => tile.index === index));
    expect(same.length).toBeGreaterThanOrEqual(other.length - 1);
    for (const tile of same) expect(one).toContainEqual(tile);
  });

  it('goes back to where a long note begins that still sounds', () => {
    const tiles = tilesIn(strip, 4, { leftPx: 9000, windowPx: 1200 }, 40);
    expect(tiles[0]!.fromBeat).toBeLessThanOrEqual(40);
    expect(tiles[0]!.toBeat).toBeGreaterThan(40);
  });
});
