import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { HeardNote } from '../../../src/core/take/note.ts';
import { PlayedSignal } from '../../../src/core/take/played-signal.ts';

/** E2, the lowest string of a guitar. */
const LOWEST = 40;
const note = (onsetSeconds: number, midi: number, change: Partial<HeardNote> = {}): HeardNote => ({
  onsetSeconds,
  offsetSeconds: onsetSeconds + 0.2,
  midi,
  confidence: 1,
  levelDb: -20,
  attack: 'struck',
  bendSemitones: 0,
  vibrato: null,
  second: null,
  ...change,
});
const heard = (...notes: readonly HeardNote[]) => new PlayedSignal(LOWEST).hears(notes);
const knocks = (from: number, gap: number, midi = LOWEST) => [0, 1, 2].map((i) => note(from + i * gap, midi));

describe('the played signal', () => {
  it('is three low notes of one pitch within two seconds', () => {
    expect(heard(...knocks(1, 0.5))).toBe(true);
    expect(heard(...knocks(1, 0.98))).toBe(true);
    expect(heard(...knocks(1, 0.5, 45))).toBe(true);
    expect(heard(note(1, 39.8), note(1.5, 40.1), note(2, 40.2))).toBe(true);
  });

  it('is nothing else: high, slow, hurried, uneven, of two pitches, slurred, or two notes only', () => {
    expect(heard(...knocks(1, 0.5, 52))).toBe(false);
    expect(heard(...knocks(1, 1.1))).toBe(false);
    expect(heard(...knocks(1, 0.08))).toBe(false);
    expect(heard(note(1, 40), note(1.3, 40), note(2.3, 40))).toBe(false);
    expect(heard(note(1, 40), note(1.5, 43), note(2, 40))).toBe(false);
    expect(heard(note(1, 40), note(1.5, 40, { attack: 'legato' }), note(2, 40))).toBe(false);
    expect(heard(note(1, 40), note(1.5, 40))).toBe(false);
  });

  it('needs a rest before it: a line that goes on does not give it', () => {
    expect(heard(note(0.6, 47), ...knocks(1, 0.5))).toBe(false);
    expect(heard(note(0, 47), ...knocks(1, 0.5))).toBe(true);
    // A pedal point in quarters at 120: only the first three, after the rest, could be one; then never again.
    const signal = new PlayedSignal(LOWEST);
    const pedal = [note(0, 47), ...Array.from({ length: 16 }, (_, i) => note(0.5 + i * 0.5, 40))];
    expect(signal.hears(pedal)).toBe(false);
  });

  it('comes once, however the notes are cut into pieces', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 1, max: 3 }), { minLength: 1, maxLength: 6 }), (cuts) => {
        const notes = [note(0, 60), ...knocks(2, 0.4), note(4.5, 60)];
        const signal = new PlayedSignal(LOWEST);
        let given = 0;
        let from = 0;
        for (const cut of [...cuts, notes.length]) {
          if (signal.hears(notes.slice(from, from + cut))) given++;
          from += cut;
        }
        expect(given).toBe(1);
      }),
    );
  });
});
