/** Which pitch a stroke brought: features, candidates and what is believed, each limit on both sides. */
import { describe, expect, test } from 'vitest';
import type { Attack } from '../../../../src/core/listen/attacks/attacks.ts';
import {
  CollectedEvidence,
  isBelieved,
  type AttackCase,
} from '../../../../src/core/listen/decide/attack-evidence.ts';
import {
  chooseStrokePitch,
  strokeCandidates,
  strokePitchFeatures,
  type StrokePitch,
} from '../../../../src/core/listen/decide/stroke-pitch.ts';
import type { AttackSpectra, PitchEvidence } from '../../../../src/core/listen/frames/attack-spectra.ts';
import { pitches, times, trackOf } from './made-track.ts';

const clear: PitchEvidence = { after: 0.9, added: 0.8, gained: 0.95, fundamental: 0 };
const poor: PitchEvidence = { after: 0.4, added: 0.2, gained: 0.3, fundamental: -2 };
/** Spectra that know these candidates, of which the first is clear and the others are poor. */
const spectraOf = (...midis: readonly number[]) =>
  ({
    share: 0.7,
    pitches: (each: (midi: number) => void) => {
      midis.forEach(each);
    },
    evidence: (midi: number) => (midi === midis[0] ? clear : poor),
  }) as unknown as AttackSpectra;
const none = { midi: NaN, clarity: 0 };

describe('the candidates of a stroke', () => {
  test('are one where they are nearer than 0.35 semitones, the path first', () => {
    const path = { midi: 60, clarity: 0.9 };
    expect(strokeCandidates(spectraOf(60.33, 60.37), path, null)).toEqual([60, 60.37]);
    expect(strokeCandidates(spectraOf(64), none, 52)).toEqual([64, 52]);
  });

  test('come from the spectra only up to E6', () => {
    expect(strokeCandidates(spectraOf(88.8, 89.2), none, null)).toEqual([88.8]);
  });
});

describe('what speaks for a candidate', () => {
  const features = (midi: number, evidence = clear, path = none, before: number | null = null) =>
    strokePitchFeatures(midi, evidence, path, before);

  test('what it leaves unexplained, no less than a hundredth', () => {
    expect(features(60, { ...clear, gained: 1.2 }).unexplained).toBeCloseTo(Math.log(0.01), 9);
    expect(features(60, { ...clear, gained: 0.5 }).unexplained).toBeCloseTo(Math.log(0.51), 9);
  });

  test('the leap from the note before, up to two octaves', () => {
    expect(features(66, clear, none, 60).far).toBeCloseTo(0.5, 9);
    expect(features(96, clear, none, 60).far).toBe(2);
    expect(features(60).far).toBe(0);
  });

  test('its height, which counts again above D5', () => {
    expect(features(80).up).toBeCloseTo(80 / 12, 9);
    expect(features(80).high).toBeCloseTo(0.5, 9);
    expect(features(73).high).toBe(0);
  });

  test('the path, where it hears this pitch', () => {
    expect(features(60.57, clear, { midi: 60, clarity: 0.8 }).heard).toBeCloseTo(0.72, 9);
    expect(features(60.63, clear, { midi: 60, clarity: 0.8 }).heard).toBe(0);
  });
});

describe('the struck pitch', () => {
  test('is the one that explains what was added', () => {
    const struck = chooseStrokePitch(spectraOf(64, 52), { midi: 52, clarity: 0.8 }, 52);
    expect(struck).toEqual({ midi: 64, added: 0.8, share: 0.7, differsFromPath: true });
    expect(chooseStrokePitch(spectraOf(64, 52), { midi: 64, clarity: 0.8 }, 52)?.differsFromPath).toBe(false);
    expect(chooseStrokePitch(spectraOf(), none, null)).toBeNull();
  });

  test.each([
    [{}, 5.9, true],
    [{ added: 0.54 }, 5.9, false],
    [{ share: 0.049 }, 5.9, false],
    [{ midi: 42.9 }, 5.9, false],
    [{}, 6.1, false],
  ])('is believed where the path hears nothing: %j, %d times as loud', (values, energyRatio, answer) => {
    const chosen: StrokePitch = { midi: 43.1, added: 0.56, share: 0.051, differsFromPath: true, ...values };
    const attack: Attack = { seconds: 0, flux: 1, ratio: 9, energyRatio };
    expect(isBelieved(chosen, none, attack)).toBe(answer);
    expect(isBelieved(chosen, { midi: 60, clarity: 0.9 }, attack)).toBe(true);
  });
});

describe('the evidence about an attack', () => {
  const attackAt = (seconds: number, flux = 1): Attack => ({ seconds, flux, ratio: 20, energyRatio: 3 });
  const collected = (values: Partial<AttackCase> = {}, asked: number[] = []) =>
    new CollectedEvidence(
      {
        track: trackOf(times(60, {})),
        attack: attackAt(0.16),
        previous: null,
        open: null,
        later: [],
        frame: 20,
        ...values,
      },
      (_, length) => {
        asked.push(length);
        return null;
      },
    );

  test('begins 12 ms after it', () => {
    // Frame 22 is 16 ms after frame 20.
    expect(collected().from).toBe(22);
    expect(collected({ attack: attackAt(0.1635) }).from).toBe(22);
    expect(collected({ attack: attackAt(0.1645) }).from).toBe(23);
  });

  test('the next attack is at least half as strong', () => {
    expect(collected({ later: [attackAt(0.2, 0.48), attackAt(0.3, 0.52)] }).next?.seconds).toBe(0.3);
  });

  test('hears the path for 64 ms after it', () => {
    // Frames 22 to 27 belong to it: until 224 ms, frame 28.
    const late = (...midis: readonly number[]) =>
      collected({ track: trackOf([...times(22, {}), ...pitches(...midis), ...times(30, { midi: 70 })]) }).path
        .midi;
    expect(late(64, 64, 64, NaN, NaN, NaN)).toBeCloseTo(64, 6);
    expect(late(64, 64, NaN, NaN)).toBeCloseTo(64, 6);
    expect(late(NaN, NaN, NaN, NaN, 70, 70)).toBeCloseTo(70, 6);
    expect(late(NaN, NaN, NaN, NaN, NaN)).toBeNaN();
  });

  test('hears it up to 4 ms before the next attack, but no fewer than three frames', () => {
    const until = (seconds: number) => {
      const track = trackOf([
        ...times(22, {}),
        ...pitches(NaN, NaN, NaN, 64, 64),
        ...times(30, { midi: NaN }),
      ]);
      return collected({ track, later: [attackAt(seconds)] }).path.midi;
    };
    // Frame 27 (216 ms) is the first that counts no more where the next attack is from 212 + 4 ms on.
    expect(until(0.2125)).toBeCloseTo(64, 6);
    expect(until(0.2115)).toBeNaN();
    const three = trackOf([...times(22, {}), ...pitches(NaN, 64, 64), ...times(30, { midi: NaN })]);
    expect(collected({ track: three, later: [attackAt(0.17)] }).path.midi).toBeCloseTo(64, 6);
    const fourth = trackOf([...times(22, {}), ...pitches(64, NaN, NaN, 64), ...times(30, { midi: NaN })]);
    expect(collected({ track: fourth, later: [attackAt(0.17)] }).path.midi).toBeNaN();
  });

  test('looks at the short window where the next attack comes within 60 ms, and only when it is asked', () => {
    const windowBefore = (seconds: number) => {
      const asked: number[] = [];
      const evidence = collected({ later: [attackAt(seconds)] }, asked);
      expect(asked).toEqual([]);
      expect(evidence.strokePitch).toBeNull();
      expect(evidence.spectra).toBeNull();
      return asked;
    };
    expect(windowBefore(0.16 + 0.058)).toEqual([512]);
    expect(windowBefore(0.16 + 0.062)).toEqual([1024]);
  });

  test('tells how far the pitch is from the note that sounds', () => {
    expect(collected().semitonesApart).toBe(Infinity);
    const open = { onsetSeconds: 0.1, pitch: 57, flux: 1 };
    expect(collected({ open }).semitonesApart).toBeCloseTo(3, 6);
    expect(collected({ open }).secondsSinceOnset).toBeCloseTo(0.06, 9);
  });
});
