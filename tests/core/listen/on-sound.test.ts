/** The decisions on made sound, from samples to notes. */
import { describe, expect, test } from 'vitest';
import { noNotes } from '../../../fixtures/lines/no-notes.ts';
import { listen } from '../../../src/core/listen.ts';
import { hzOf, plucked, seededNoise, sum, tone } from './sounds.ts';

const RATE = 48_000;
const room = seededNoise(3, RATE, 0.0005);

/** A low string that speaks in pulses: thirty harmonics, all of one phase. */
function pulses(midi: number, seconds: number): Float32Array {
  const samples = new Float32Array(Math.round(seconds * RATE));
  for (let i = 0; i < samples.length; i++)
    for (let k = 1; k <= 30; k++)
      samples[i]! += (0.02 / Math.sqrt(k)) * Math.cos((2 * Math.PI * k * hzOf(midi) * i) / RATE);
  return samples;
}

describe('attacks that are no strokes', () => {
  test.each([31, 36])('the pulses of MIDI %i are one note', (midi) => {
    const notes = listen(sum(2, RATE, [{ at: 0.4, sound: pulses(midi, 1) }], room), RATE);
    expect(notes.map((note) => Math.round(note.midi))).toEqual([midi]);
  });

  // The lowest pitch that the network answers for: such pulses were one note for the rules before, and are none for it.
  test('the pulses of MIDI 28 are at most one note', () => {
    const notes = listen(sum(2, RATE, [{ at: 0.4, sound: pulses(28, 1) }], room), RATE);
    expect([[], [28]]).toContainEqual(notes.map((note) => Math.round(note.midi)));
  });

  test('and two where the string is struck again', () => {
    const parts = [
      { at: 0.4, sound: pulses(31, 0.51) },
      { at: 0.92, sound: pulses(31, 0.6) },
    ];
    const notes = listen(sum(2, RATE, parts, room), RATE);
    expect(notes.map((note) => Math.round(note.midi))).toEqual([31, 31]);
    expect(Math.abs(notes[1]!.onsetSeconds - 0.92)).toBeLessThan(0.03);
  });

  test('a click on a note that goes on', () => {
    const click = seededNoise(0.003, RATE, 0.03);
    const parts = [
      { at: 0.4, sound: tone(hzOf(71), 1.2, RATE, [1, 0.6, 0.3, 0.2]) },
      { at: 1, sound: click },
    ];
    expect(listen(sum(2, RATE, parts, room), RATE)).toHaveLength(1);
  });
});

describe('strings that ring on', () => {
  test('a note struck over another is heard, though both have a common fundamental', () => {
    const parts = [
      { at: 0.4, sound: plucked(hzOf(60), 1.6, RATE) },
      { at: 0.9, sound: plucked(hzOf(64), 1.1, RATE) },
    ];
    const notes = listen(sum(2.5, RATE, parts, room), RATE);
    expect(notes.map((note) => Math.round(note.midi))).toEqual([60, 64]);
  });
});

/** Notes struck 0.3 s apart, each ringing for `ring` seconds. */
function played(pitches: readonly number[], ring: number): Float32Array {
  const parts = pitches.map((midi, i) => ({ at: 0.4 + 0.3 * i, sound: plucked(hzOf(midi), ring, RATE) }));
  return sum(3, RATE, parts, room);
}
const rounded = (samples: Float32Array) => listen(samples, RATE).map((note) => Math.round(note.midi));

describe('strings that ring on under the next', () => {
  test.each([
    // Fourths and a third, as open strings lie.
    [[52, 57, 62, 64]],
    // Neighbours, which beat.
    [[64, 65, 67, 64]],
    [[57, 58, 60, 53]],
    // Ninth, eighth and sixth harmonic of one low fundamental.
    [[69, 62, 67, 60]],
  ])('each stroke has its own pitch: %j', (pitches) => {
    expect(rounded(played(pitches, 1.2))).toEqual(pitches);
  });

  test('and so it has where each is damped', () => {
    expect(rounded(played([64, 65, 67, 64], 0.3))).toEqual([64, 65, 67, 64]);
  });

  test('a string struck again while another rings is two notes', () => {
    expect(rounded(played([52, 59, 59], 1.2))).toEqual([52, 59, 59]);
  });
});

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
