/**
 * Fingering against the positions that method books give. Sources, from memory: W. Leavitt, A Modern Method for Guitar,
 * vol. 1 (1966), for the scales in second position; the five boxes of the minor pentatonic and one finger a fret on the
 * bass are common practice.
 */
import { describe, expect, it } from 'vitest';
import { instrumentOf, withCapo } from '../../../src/core/music/instruments.ts';
import { fingerLine, type FrettedNote } from '../../../src/core/notation/fingering.ts';

const guitar = instrumentOf('guitar')!;
const bass = instrumentOf('bass')!;
const MAJOR = [0, 2, 4, 5, 7, 9, 11, 12, 14, 16, 17, 19, 21, 23, 24];
const PENTATONIC = [0, 3, 5, 7, 10, 12, 15, 17, 19, 22, 24, 27];

const line = (midis: readonly number[], seconds = 0.25): FrettedNote[] =>
  midis.map((midi, i) => ({ onsetSeconds: i * seconds, midi, second: null, legato: false }));
/** "5:3" is the third fret of the fifth string. */
const lies = (midis: readonly number[], instrument = guitar) =>
  fingerLine(line(midis), instrument).map((places) =>
    places.map(({ string, fret }) => `${string}:${fret}`).join('+'),
  );
const scale = (tonic: number, steps: readonly number[], notes = steps.length) =>
  steps.slice(0, notes).map((step) => tonic + step);

describe('guitar', () => {
  it('C major, an octave, lies in second position', () => {
    expect(lies(scale(48, MAJOR, 8)).join(' ')).toBe('5:3 5:5 4:2 4:3 4:5 3:2 3:4 3:5');
  });

  it('G major, two octaves, lies in second position', () => {
    expect(lies(scale(43, MAJOR)).join(' ')).toBe(
      '6:3 6:5 5:2 5:3 5:5 4:2 4:4 4:5 3:2 3:4 3:5 2:3 2:5 1:2 1:3',
    );
  });

  it('D major, an octave, lies in second position, and comes down the same way', () => {
    const up = scale(50, MAJOR, 8);
    const places = lies(up);
    expect(places.join(' ')).toBe('5:5 4:2 4:4 4:5 3:2 3:4 2:2 2:3');
    expect(lies([...up].reverse())).toEqual([...places].reverse());
  });

  it('F major from the lowest F lies in first position, with open strings', () => {
    expect(lies(scale(41, MAJOR, 8)).join(' ')).toBe('6:1 6:3 5:0 5:1 5:3 4:0 4:2 4:3');
  });

  it('A minor pentatonic over two octaves and a third is the box in fifth position', () => {
    expect(lies(scale(45, PENTATONIC)).join(' ')).toBe('6:5 6:8 5:5 5:7 4:5 4:7 3:5 3:7 2:5 2:8 1:5 1:8');
  });

  it('Bb major, two octaves, lies in fifth position', () => {
    // Bb2 on the sixth string's fret 6, second finger on it: position of the first finger at fret 5.
    expect(lies(scale(46, MAJOR)).join(' ')).toBe(
      '6:6 6:8 5:5 5:6 5:8 4:5 4:7 4:8 3:5 3:7 3:8 2:6 2:8 1:5 1:6',
    );
  });

  it('a line is laid where its later notes lie, without a move', () => {
    expect(lies([48, 50, 52, 53, 72]).join(' ')).toBe('6:8 5:5 5:7 5:8 1:8');
  });

  it('a line that no position holds moves in its rest', () => {
    const low = line([40, 41, 43]);
    const high = line([76, 77, 79]).map((note) => ({ ...note, onsetSeconds: note.onsetSeconds + 3 }));
    const frets = fingerLine([...low, ...high], guitar).map(([at]) => at!.fret);
    expect(frets.slice(0, 3)).toEqual([0, 1, 3]);
    expect(Math.max(...frets.slice(3)) - Math.min(...frets.slice(3))).toBeLessThanOrEqual(4);
  });

  it('a legato note stays on its string', () => {
    const struck = { onsetSeconds: 0, midi: 64, second: null, legato: false };
    for (const midi of [65, 66, 67, 68]) {
      const [from, to] = fingerLine([struck, { ...struck, onsetSeconds: 0.1, midi, legato: true }], guitar);
      expect(to![0]!.string).toBe(from![0]!.string);
    }
  });

  it('two notes at once lie on two strings under one hand', () => {
    const [places] = fingerLine([{ onsetSeconds: 0, midi: 60, second: 64, legato: false }], guitar);
    expect(places).toHaveLength(2);
    expect(places![0]!.string).not.toBe(places![1]!.string);
  });

  it('a note that the neck has not has no place, and the others keep theirs', () => {
    expect(lies([48, 20, 52])).toEqual(['5:3', '', '4:2']);
  });
});

describe('other necks', () => {
  it('bass: C major lies in second position, a finger a fret', () => {
    expect(lies(scale(36, MAJOR, 8), bass).join(' ')).toBe('3:3 3:5 2:2 2:3 2:5 1:2 1:4 1:5');
  });

  it('under a capo the same shape stands so many frets higher', () => {
    const moved = lies(scale(50, MAJOR, 8), withCapo(guitar, 2));
    expect(moved).toEqual(
      lies(scale(48, MAJOR, 8)).map((at) => at.replace(/:(\d+)/, (_, fret) => `:${Number(fret) + 2}`)),
    );
  });

  it('every place sounds the note, on every fretted instrument', () => {
    for (const id of ['guitar', 'guitar-drop-d', 'guitar-dadgad', 'guitar-7', 'guitar-8', 'bass', 'bass-5']) {
      const instrument = instrumentOf(id)!;
      const open = instrument.neck!.openStrings;
      const notes = scale(open[0]! + 5, MAJOR);
      fingerLine(line(notes), instrument).forEach(([at], i) => {
        expect(open[open.length - at!.string]! + at!.fret).toBe(notes[i]);
      });
    }
  });

  it('an instrument without a neck is refused', () => {
    expect(() => fingerLine([], instrumentOf('flute')!)).toThrow(/Flute/);
  });
});
