/** What the kit plays of given notes. Pitches by pitchfinder's YIN (de Cheveigné & Kawahara 2002), which does not ship. */
import { YIN } from 'pitchfinder';
import { describe, expect, it } from 'vitest';
import type { HeardNote } from '../../../src/core/take/note.ts';
import { listedNote } from '../../../src/core/take/listed-note.ts';
import { renderNotes } from '../../../src/core/sound/render-notes.ts';
import { kitSynth } from './kit-file.ts';

const RATE = 48_000;
const synth = await kitSynth(RATE);
const detect = YIN({ sampleRate: RATE, threshold: 0.1 });
const notesAt = (midis: readonly number[]): HeardNote[] =>
  midis.map((midi, i) => listedNote(0.5 + i * 0.5, 0.4, midi));
/** MIDI number heard from a moment on, brought to full scale first: YIN goes astray on quiet sound. */
function heardMidi(sound: Float32Array, seconds: number): number {
  const window = sound.slice(Math.round(seconds * RATE), Math.round(seconds * RATE) + 4800);
  const peak = window.reduce((most, x) => Math.max(most, Math.abs(x)), 0);
  const hz = detect(window.map((x) => x / peak));
  return hz === null ? NaN : 69 + 12 * Math.log2(hz / 440);
}
const rms = (samples: Float32Array, from: number, to: number) => {
  const cut = samples.subarray(from * RATE, to * RATE);
  return Math.sqrt(cut.reduce((sum, x) => sum + x * x, 0) / cut.length);
};

describe('notes on the kit', () => {
  it('sound at their times and pitches, bent notes too', () => {
    // Equal temperament by ISO 16: a midi number is a pitch; half numbers lie between the keys.
    const midis = [45, 52.5, 57, 64, 69.3, 76];
    const samples = renderNotes(synth, notesAt(midis), 4);
    expect(samples.length).toBe(4 * RATE);
    midis.forEach((midi, i) => {
      expect(Math.abs(heardMidi(samples, 0.6 + i * 0.5) - midi)).toBeLessThan(0.1);
      // The attack stands within 5 ms of its place.
      const onset = 0.5 + i * 0.5;
      expect(rms(samples, onset, onset + 0.03)).toBeGreaterThan(3 * rms(samples, onset - 0.03, onset));
    });
    expect(rms(samples, 0, 0.49)).toBe(0);
  });

  it('are moved by octaves into the compass of the guitar where they are outside of it', () => {
    const samples = renderNotes(synth, notesAt([33, 57, 93]), 2.5);
    expect([0.6, 1.1, 1.6].map((seconds) => Math.round(heardMidi(samples, seconds)))).toEqual([45, 57, 81]);
  });

  it('sound together, each as hard as it was struck, and never clip', () => {
    const chord = [48, 52, 55, 60, 64].map((midi) => ({ ...listedNote(0.2, 1, midi), levelDb: 0 }));
    const loud = renderNotes(synth, chord, 1.5);
    expect(loud.every((x) => Math.abs(x) <= 1)).toBe(true);
    const soft = renderNotes(
      synth,
      chord.map((note) => ({ ...note, levelDb: -12 })),
      1.5,
    );
    expect(rms(loud, 0.3, 1)).toBeGreaterThan(2 * rms(soft, 0.3, 1));
    const one = renderNotes(synth, chord.slice(0, 1), 1.5);
    expect(rms(loud, 0.3, 1)).toBeGreaterThan(1.3 * rms(one, 0.3, 1));
  });

  it('a take in which nothing was played is silence of its own length', () => {
    expect(renderNotes(synth, [], 0.5)).toEqual(new Float32Array(0.5 * RATE));
    expect(renderNotes(synth, [], 0).length).toBe(1);
  });
});
