import { describe, expect, test } from 'vitest';
import { noNotes } from '../../../../fixtures/lines/no-notes.ts';
import { listen } from '../../../../src/core/listen.ts';
import { hzOf, plucked, seededNoise, sum } from '../sounds.ts';

const RATE = 48_000;

describe('playing and speaking', () => {
  test('notes scooped into, each from a quarter tone below, are playing', () => {
    const pitches = [62, 65, 67, 69, 67, 65, 62, 60, 62, 65, 67, 69];
    const parts = pitches.map((midi, i) => ({
      at: 0.3 + 0.2 * i,
      sound: plucked((t) => hzOf(midi - 0.5 * Math.exp(-t / 0.04)), 0.17, RATE),
    }));
    const notes = listen(sum(3.2, RATE, parts, seededNoise(3.2, RATE, 0.0005)), RATE);
    expect(notes.map((note) => Math.round(note.midi))).toEqual(pitches);
  });

  test('twenty seconds of speech-like sound (a tuning seed) are not', () => {
    expect(listen(noNotes('speech', 3, 20), RATE).length).toBeLessThanOrEqual(5);
  });
});
