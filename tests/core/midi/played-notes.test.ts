/** Status bytes, controllers and their meaning: MIDI 1.0 detailed specification (4.2), tables I to III. */
import { describe, expect, it } from 'vitest';
import { PlayedNotes } from '../../../src/core/midi/played-notes.ts';

const bytes = (...message: number[]) => new Uint8Array(message);

describe('notes from MIDI messages', () => {
  it('begin with a note-on and end with a note-off, on any channel', () => {
    const notes = new PlayedNotes();
    expect(notes.message(bytes(0x93, 60, 127), 1)).toBe(true);
    expect(notes.reading(1.5)).toMatchObject({ midi: 60, levelDb: 0 });
    expect(notes.message(bytes(0x83, 60, 0), 2)).toBe(true);
    expect(notes.ended).toMatchObject([{ onsetSeconds: 1, offsetSeconds: 2, midi: 60, attack: 'struck' }]);
    expect(notes.reading(2.5).midi).toBeNull();
  });

  it('a note-on without velocity is a note-off; a note struck twice ends before it begins again', () => {
    const notes = new PlayedNotes();
    notes.message(bytes(0x90, 64, 64), 0);
    notes.message(bytes(0x90, 64, 0), 0.5);
    notes.message(bytes(0x90, 67, 64), 1);
    notes.message(bytes(0x90, 67, 80), 1.5);
    expect(notes.finish(2).map((n) => [n.midi, n.onsetSeconds, n.offsetSeconds])).toEqual([
      [64, 0, 0.5],
      [67, 1, 1.5],
      [67, 1.5, 2],
    ]);
  });

  it('overlapping notes come out by onset, and the last one struck is the one that stands', () => {
    const notes = new PlayedNotes();
    notes.message(bytes(0x90, 60, 64), 0);
    notes.message(bytes(0x90, 64, 64), 0.4);
    expect(notes.standing(0.5)?.midi).toBe(64);
    notes.message(bytes(0x80, 64, 0), 0.6);
    expect(notes.standing(0.7)?.midi).toBe(60);
    notes.message(bytes(0x80, 60, 0), 0.8);
    expect(notes.ended.map((n) => n.midi)).toEqual([60, 64]);
  });

  it('bend by two semitones either way (General MIDI)', () => {
    const notes = new PlayedNotes();
    notes.message(bytes(0xe0, 0x7f, 0x7f), 0);
    notes.message(bytes(0x90, 62, 64), 0.1);
    expect(notes.reading(0.2).midi).toBeCloseTo(64, 2);
  });

  it('what is no note is passed over: clock, pressure, an end that never began', () => {
    const notes = new PlayedNotes();
    for (const message of [bytes(0xf8), bytes(0xd0, 40), bytes(0x80, 60, 0), bytes(), bytes(0xb0, 64, 127)])
      expect(notes.message(message, 0)).toBe(false);
    expect(notes.finish(1)).toEqual([]);
  });
});
