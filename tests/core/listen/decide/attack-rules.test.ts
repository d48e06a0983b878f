import { describe, expect, test } from 'vitest';
import { listen } from '../../../../src/core/listen.ts';
import { hzOf, plucked, seededNoise, sum, tone } from '../sounds.ts';

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
  test.each([28, 31, 36])('the pulses of MIDI %i are one note', (midi) => {
    const notes = listen(sum(2, RATE, [{ at: 0.4, sound: pulses(midi, 1) }], room), RATE);
    expect(notes.map((note) => Math.round(note.midi))).toEqual([midi]);
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
