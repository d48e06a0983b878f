import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { nameNote } from '../../../src/core/music/name-note.ts';
import { hzToMidi, midiToHz } from '../../../src/core/music/temperament.ts';

describe('naming a note', () => {
  it('puts cents between -50 and 50 and the parts add up', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 10, max: 120, noNaN: true }),
        fc.double({ min: 400, max: 480, noNaN: true }),
        (midi, hz) => {
          const named = nameNote(midi, hz);
          expect(named.cents).toBeGreaterThanOrEqual(-50);
          expect(named.cents).toBeLessThan(50);
          expect(midiToHz(named.nearestMidi + named.cents / 100, hz)).toBeCloseTo(midiToHz(midi), 6);
        },
      ),
    );
  });

  it('names a player who is 32 cents flat at the reference the player is tuned to', () => {
    const flat = 440 * 2 ** (-32 / 1200);
    for (let midi = 40; midi < 88; midi++) {
      const named = nameNote(midi - 0.32, flat);
      expect(named.nearestMidi).toBe(midi);
      expect(named.cents).toBeCloseTo(0, 6);
    }
  });

  it('gives name, octave and cents (scientific pitch notation: C4 is MIDI 60)', () => {
    expect(nameNote(60, 440)).toEqual({ name: 'C', octave: 4, nearestMidi: 60, cents: 0 });
    expect(nameNote(21, 440)).toMatchObject({ name: 'A', octave: 0 });
    const low = nameNote(65.6, 440);
    expect(low).toMatchObject({ name: 'F#', octave: 4, nearestMidi: 66 });
    expect(low.cents).toBeCloseTo(-40, 6);
  });

  it('throws for values that are no pitch', () => {
    expect(() => nameNote(Number.NaN, 440)).toThrow('a MIDI number is finite, not NaN');
    expect(() => nameNote(60, 0)).toThrow(RangeError);
    expect(() => hzToMidi(-1)).toThrow(RangeError);
  });
});
