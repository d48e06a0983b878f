import { describe, expect, test } from 'vitest';
import { AttackSpectra } from '../../../../src/core/listen/frames/attack-spectra.ts';
import {
  ATTACK_GAP,
  LONG_ATTACK_WINDOW,
  SHORT_ATTACK_WINDOW,
} from '../../../../src/core/listen/tuning/frames.ts';

const RATE = 12_000;
const hz = (midi: number): number => 440 * 2 ** ((midi - 69) / 12);

/** Six harmonics of one pitch from `from` on. */
function addTone(samples: Float32Array, midi: number, from: number, level: number): void {
  for (let i = from; i < samples.length; i++)
    for (let h = 1; h <= 6; h++)
      samples[i]! += (level / h) * Math.sin((2 * Math.PI * h * hz(midi) * i) / RATE + h);
}

/** A tone that rings on from the start and one that is struck in the middle. */
function about(
  length: typeof LONG_ATTACK_WINDOW | typeof SHORT_ATTACK_WINDOW,
  before: number | null,
  struck: number | null,
): Float32Array {
  const samples = new Float32Array(2 * (length + ATTACK_GAP));
  if (before !== null) addTone(samples, before, 0, 0.3);
  if (struck !== null) addTone(samples, struck, samples.length / 2, 0.2);
  return samples;
}

function candidates(spectra: AttackSpectra): number[] {
  const found: number[] = [];
  spectra.pitches((midi) => found.push(midi));
  return found;
}

describe('the sound about a spectra', () => {
  test.each([LONG_ATTACK_WINDOW, SHORT_ATTACK_WINDOW] as const)(
    'the new pitch over a louder one that rings on, %i samples',
    (length) => {
      const spectra = new AttackSpectra();
      spectra.look(about(length, 52, 59.3), length);
      expect(candidates(spectra).some((midi) => Math.abs(midi - 59.3) < 0.2)).toBe(true);
      const struck = spectra.evidence(59.3);
      expect(struck.gained).toBeGreaterThan(0.9);
      expect(struck.gained).toBeGreaterThan(spectra.evidence(52).gained);
      expect(struck.added).toBeGreaterThan(0.8);
      // Harmonics fall as 1/n: the fundamental is the strongest of them.
      expect(struck.fundamental).toBeCloseTo(0, 1);
    },
  );

  test('a pitch an octave under the struck one lacks its fundamental', () => {
    const spectra = new AttackSpectra();
    spectra.look(about(LONG_ATTACK_WINDOW, null, 64), LONG_ATTACK_WINDOW);
    expect(spectra.evidence(52).fundamental).toBeLessThan(-1);
    expect(spectra.share).toBeGreaterThan(0.99);
  });

  test('how much of the note before sounds on', () => {
    const spectra = new AttackSpectra();
    spectra.look(about(LONG_ATTACK_WINDOW, 52, 59.3), LONG_ATTACK_WINDOW);
    expect(spectra.keeps(52, 59.3)).toBeCloseTo(1, 1);
    const damped = about(LONG_ATTACK_WINDOW, 52, null);
    damped.fill(0, damped.length / 2);
    addTone(damped, 59.3, damped.length / 2, 0.2);
    spectra.look(damped, LONG_ATTACK_WINDOW);
    expect(spectra.keeps(52, 59.3)).toBeLessThan(0.05);
    // What never sounded keeps nothing.
    expect(spectra.keeps(70, 59.3)).toBe(0);
  });

  test('nothing in silence', () => {
    const spectra = new AttackSpectra();
    spectra.look(about(LONG_ATTACK_WINDOW, null, null), LONG_ATTACK_WINDOW);
    expect(candidates(spectra)).toEqual([]);
    expect(spectra.share).toBe(0);
    expect(spectra.evidence(60).gained).toBe(0);
  });
});
