/** Rhythms of known notation, played with the scatter of skilled soloists, written down again (see made-players.ts). */
import { describe, expect, it } from 'vitest';
import { quantise } from '../../../src/core/notation/quantise.ts';
import { madeLine } from './made-players.ts';
import { timeOf } from './rhythm-text.ts';

const seeds = Array.from({ length: 8 }, (_, i) => 5000 + i);
const lines = seeds.map((seed) => madeLine(seed, 'reporting', 32));

/** Share of the notes that stand where they were written before they were played. */
function shareRight(placesOf: (line: (typeof lines)[number]) => readonly number[]): number {
  const right = lines.map((line) => {
    const places = placesOf(line);
    return line.written.filter((beat, i) => Math.abs(beat - places[i]!) < 1e-6).length;
  });
  const all = lines.reduce((sum, { written }) => sum + written.length, 0);
  return right.reduce((sum, count) => sum + count, 0) / all;
}

describe('rhythms that were played from notation', () => {
  it('are written as they were', () => {
    const share = shareRight(({ notes, bpm, swing }) =>
      quantise(notes, timeOf(4, { bpm, swing })).onsetTicks.map((ticks) => ticks / 120),
    );
    expect(share).toBeGreaterThan(0.92);
  });

  it('would not be by the nearest sixteenth, or the nearest twelfth of a beat', () => {
    const nearest = (parts: number) =>
      shareRight(({ notes }) => notes.map(({ beat }) => Math.round(beat * parts) / parts));
    expect(nearest(4)).toBeLessThan(0.75);
    expect(nearest(12)).toBeLessThan(0.5);
  });
});
