/** What rings on beside a stroke, from notes and spectra made by hand. */
import { describe, expect, test } from 'vitest';
import { Ringing } from '../../../../src/core/listen/decide/ringing.ts';
import type { AttackSpectra } from '../../../../src/core/listen/frames/attack-spectra.ts';
import type { HeardNote } from '../../../../src/core/take/note.ts';

describe('what rings on beside a stroke', () => {
  const noteOf = (midi: number, offsetSeconds = 9.9): HeardNote => ({
    onsetSeconds: offsetSeconds - 0.3,
    offsetSeconds,
    midi,
    confidence: 1,
    levelDb: -20,
    attack: 'struck',
    bendSemitones: 0,
    vibrato: null,
    second: null,
  });
  const spectra = (kept: number) => ({ keeps: () => kept }) as unknown as AttackSpectra;
  /** Struck at 10 s on MIDI 60. */
  const ringing = (before: readonly HeardNote[], kept = 0.9) => new Ringing(before, spectra(kept), 10, 60);

  test('is a note before of which a quarter of the power outlives the stroke', () => {
    expect(ringing([noteOf(64)], 0.26).sounds).toBe(true);
    expect(ringing([noteOf(64)], 0.24).sounds).toBe(false);
  });

  test('is one of the last five, no longer ago than 1.5 s, and of another pitch', () => {
    const others = [64, 65, 66, 67].map((midi) => noteOf(midi));
    const nearest = [noteOf(61), ...others];
    expect(ringing([noteOf(61), ...others]).draws(60)).toBe(true);
    expect(ringing([...nearest, noteOf(68)]).draws(60)).toBe(false);
    expect(ringing([noteOf(64, 8.53)]).sounds).toBe(true);
    expect(ringing([noteOf(64, 8.47)]).sounds).toBe(false);
    expect(ringing([noteOf(60.63)]).sounds).toBe(true);
    expect(ringing([noteOf(60.57)]).sounds).toBe(false);
  });

  test('draws the path from 2.6 semitones away, towards itself', () => {
    expect(ringing([noteOf(62.55)]).draws(60)).toBe(true);
    expect(ringing([noteOf(62.65)]).draws(60)).toBe(false);
    expect(ringing([noteOf(62)]).draws(60, 60.2)).toBe(true);
    expect(ringing([noteOf(62)]).draws(60, 59.8)).toBe(false);
  });

  test('takes the path where half of it outlives a stroke that the path never heard', () => {
    const passes = (kept: number, pitchFromAttack: boolean, arrival = 64) =>
      ringing([noteOf(64)], kept).passesFor(arrival, 60, pitchFromAttack, 10, () => null);
    expect(passes(0.52, true)).toBe(true);
    expect(passes(0.48, true)).toBe(false);
    expect(passes(0.52, false)).toBe(false);
    expect(passes(0.52, true, 64.57)).toBe(true);
    expect(passes(0.52, true, 64.63)).toBe(false);
  });
});
