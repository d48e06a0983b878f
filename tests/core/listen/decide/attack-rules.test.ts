/** Each rule about attacks on evidence made by hand, on both sides of each of its limits. */
import { describe, expect, test } from 'vitest';
import type { Attack } from '../../../../src/core/listen/attacks/attacks.ts';
import type { AttackEvidence } from '../../../../src/core/listen/decide/attack-evidence.ts';
import {
  attackRules,
  clickOnNote,
  decideAttack,
  isSoft,
  newNote,
  noiseOfSameStroke,
  pulseOfLowString,
  softInSilence,
  softOverNote,
  stringLetGo,
  strokeWithoutPitch,
  tooSoonAfterOnset,
  weakerSoonAfterOnset,
} from '../../../../src/core/listen/decide/attack-rules.ts';
import type { StrokePitch } from '../../../../src/core/listen/decide/stroke-pitch.ts';
import { pitches, times, trackOf } from './made-track.ts';

const attackOf = (values: Partial<Attack> = {}): Attack => ({
  seconds: 1,
  flux: 0.5,
  ratio: 30,
  energyRatio: 3,
  ...values,
});
/** Neither strong nor clear, and as loud as before. */
const soft = (values: Partial<Attack> = {}) => attackOf({ flux: 0.1, ratio: 5, energyRatio: 1, ...values });
const pitchOf = (values: Partial<StrokePitch> = {}): StrokePitch => ({
  midi: 64,
  added: 0.9,
  share: 0.8,
  differsFromPath: false,
  ...values,
});

/** A strong stroke on MIDI 64, half a second after a note on MIDI 60 began. */
function evidenceOf(values: Partial<AttackEvidence> = {}): AttackEvidence {
  return {
    attack: attackOf(),
    previous: null,
    next: null,
    open: { onsetSeconds: 0.5, pitch: 60, flux: 0.5 },
    secondsSinceOnset: 0.5,
    track: trackOf(times(40, {})),
    from: 20,
    path: { midi: 64, clarity: 0.98 },
    spectra: null,
    strokePitch: null,
    midi: 64,
    semitonesApart: 4,
    ...values,
  };
}
const silence = { open: null, secondsSinceOnset: Infinity, semitonesApart: Infinity } as const;
const samePitch = { midi: 60, semitonesApart: 0 } as const;
const noStroke = { is: 'no stroke' };

describe('the list of rules', () => {
  test('always decides, and a plain stroke is a note', () => {
    expect(decideAttack(evidenceOf()).is).toBe('note');
    expect(attackRules.at(-1)!(evidenceOf())).not.toBeNull();
  });

  test('the first rule that has an answer decides', () => {
    expect(decideAttack(evidenceOf({ secondsSinceOnset: 0.01 }))).toEqual(noStroke);
  });
});

describe('an attack soon after the onset of the note that sounds', () => {
  test('is the same stroke within 35 ms', () => {
    expect(tooSoonAfterOnset(evidenceOf({ secondsSinceOnset: 0.033 }))).toEqual(noStroke);
    expect(tooSoonAfterOnset(evidenceOf({ secondsSinceOnset: 0.037 }))).toBeNull();
  });

  test.each([
    [0.24, 0.066, noStroke],
    [0.26, 0.066, null],
    [0.24, 0.074, null],
  ])('with a flux of %d against 0.5, %d s later', (flux, secondsSinceOnset, answer) => {
    const evidence = evidenceOf({ attack: attackOf({ flux }), secondsSinceOnset });
    expect(weakerSoonAfterOnset(evidence)).toEqual(answer);
  });

  test.each([
    [0.085, 1.2, 0.57, noStroke],
    [0.095, 1.2, 0.57, null],
    [0.085, 1.3, 0.57, null],
    [0.085, 1.2, 0.63, null],
  ])(
    '%d s after it, %d times as loud, %d semitones away',
    (secondsSinceOnset, energyRatio, apart, answer) => {
      const attack = attackOf({ energyRatio });
      const evidence = evidenceOf({ attack, secondsSinceOnset, midi: 60 + apart, semitonesApart: apart });
      expect(noiseOfSameStroke(evidence)).toEqual(answer);
    },
  );
});

describe('a pulse of a low string', () => {
  const pitch = 40;
  const open = { onsetSeconds: 0.5, pitch, flux: 0.5 };
  const path = { midi: pitch, clarity: 0.9 };
  /** Frames 15 to 25 stand about frame 20. */
  const unbroken = (clarity: number, count = 11) =>
    trackOf([
      ...times(15, { midi: 70 }),
      ...times(count, { midi: pitch, clarity }),
      ...times(15, { midi: 70 }),
    ]);
  const low = (values: Partial<AttackEvidence>) =>
    pulseOfLowString(evidenceOf({ open, path, track: unbroken(0.86), ...values }));

  test('is one where the period stands unbroken for 40 ms on both sides', () => {
    expect(low({})).toEqual(noStroke);
    expect(low({ track: unbroken(0.84) })).toBeNull();
    expect(low({ track: unbroken(0.86, 10) })).toBeNull();
    expect(pulseOfLowString(evidenceOf({ open, path, track: trackOf(times(40, { midi: 40.58 })) }))).toEqual(
      noStroke,
    );
  });

  test('is none above B♭2, on another pitch or in silence', () => {
    const at = (midi: number, semitones: number) =>
      low({
        open: { ...open, pitch: midi },
        path: { midi: midi + semitones, clarity: 0.9 },
        track: trackOf(times(40, { midi })),
      });
    expect(at(45.5, 0)).toEqual(noStroke);
    expect(at(46.5, 0)).toBeNull();
    expect(at(40, 0.57)).toEqual(noStroke);
    expect(at(40, 0.63)).toBeNull();
    expect(low(silence)).toBeNull();
  });

  test('is one where attacks follow by whole periods and do not grow', () => {
    // The period of MIDI 40 (E2, 82.41 Hz) is 12.13 ms.
    const after = (milliseconds: number, flux: number) =>
      low({
        attack: attackOf({ seconds: 1, flux }),
        previous: attackOf({ seconds: 1 - milliseconds / 1000, flux: 1 }),
        track: unbroken(0.5),
      });
    expect(after(24.27 + 2.8, 1.4)).toEqual(noStroke);
    expect(after(24.27 + 3.2, 1.4)).toBeNull();
    expect(after(36.4, 1.4)).toEqual(noStroke);
    expect(after(48.5, 1.4)).toBeNull();
    expect(after(24.27, 1.6)).toBeNull();
    // Just under and over three and a half periods, at a pitch whose half period is within the tolerance.
    const high = { open: { ...open, pitch: 45.9 }, path: { midi: 45.9, clarity: 0.9 }, track: unbroken(0.5) };
    const pulse = (periods: number) =>
      low({
        ...high,
        attack: attackOf({ flux: 1 }),
        previous: attackOf({ seconds: 1 - periods / 116.2, flux: 1 }),
      });
    expect(pulse(3.3)).toEqual(noStroke);
    expect(pulse(3.8)).toBeNull();
  });
});

describe('a click on a note that goes on', () => {
  const click = (values: { energyRatio?: number; share?: number; clarity?: number; frames?: number }) => {
    const { energyRatio = 1, share = 0.1, clarity = 0.95, frames = 11 } = values;
    const track = trackOf([
      ...pitches(...new Array<number>(15).fill(70)),
      ...times(frames, { clarity }),
      ...times(9, { midi: 70 }),
    ]);
    return clickOnNote(
      evidenceOf({ attack: attackOf({ energyRatio }), strokePitch: pitchOf({ share }), track }),
    );
  };

  test('adds next to nothing, is no louder and leaves the pitch clear', () => {
    expect(click({})).toEqual(noStroke);
    expect(click({ energyRatio: 1.2 })).toEqual(noStroke);
    expect(click({ energyRatio: 1.3 })).toBeNull();
    expect(click({ share: 0.29 })).toEqual(noStroke);
    expect(click({ share: 0.31 })).toBeNull();
    expect(click({ clarity: 0.935 })).toEqual(noStroke);
    expect(click({ clarity: 0.925 })).toBeNull();
    expect(click({ frames: 10 })).toBeNull();
  });
});

describe('a stroke without pitch', () => {
  const nothing = { midi: NaN, semitonesApart: NaN } as const;

  test('waits for its pitch where it is strong, or raises the energy out of silence', () => {
    expect(strokeWithoutPitch(evidenceOf(nothing))).toEqual({ is: 'pitch to come' });
    expect(strokeWithoutPitch(evidenceOf({ ...nothing, attack: soft() }))).toEqual(noStroke);
    const out = (energyRatio: number) =>
      strokeWithoutPitch(evidenceOf({ ...silence, midi: NaN, attack: soft({ energyRatio }) }));
    expect(out(1.55)).toEqual({ is: 'pitch to come' });
    expect(out(1.45)).toEqual(noStroke);
    expect(strokeWithoutPitch(evidenceOf())).toBeNull();
  });
});

describe('a soft attack', () => {
  test('is not soft over ringing notes where it surely added another pitch', () => {
    const added = (values: Partial<StrokePitch>) =>
      isSoft(
        evidenceOf({
          attack: soft(),
          strokePitch: pitchOf({ differsFromPath: true, share: 0.13, added: 0.86, ...values }),
        }),
      );
    expect(added({})).toBe(false);
    expect(added({ share: 0.11 })).toBe(true);
    expect(added({ added: 0.84 })).toBe(true);
    expect(added({ differsFromPath: false })).toBe(true);
  });

  test('must raise the energy out of silence', () => {
    const out = (energyRatio: number) =>
      softInSilence(evidenceOf({ ...silence, attack: soft({ energyRatio }) }));
    expect(out(1.45)).toEqual(noStroke);
    expect(out(1.55)).toBeNull();
    expect(softInSilence(evidenceOf({ ...silence, attack: attackOf({ energyRatio: 1 }) }))).toBeNull();
  });

  test.each([
    [0.125, 1, 4, null],
    [0.115, 1, 4, noStroke],
    [0.1, 2.05, 4, null],
    [0.1, 1.95, 4, noStroke],
    [0.125, 1, 0.63, null],
    [0.125, 1, 0.57, noStroke],
    // An octave, and just beside one.
    [0.125, 1, 12.57, noStroke],
    [0.125, 1, 12.63, null],
  ])(
    'with a flux of %d, %d times as loud, %d semitones away',
    (flux, energyRatio, semitonesApart, answer) => {
      const evidence = evidenceOf({
        attack: soft({ flux, energyRatio }),
        midi: 60 + semitonesApart,
        semitonesApart,
      });
      expect(softOverNote(evidence)).toEqual(answer);
    },
  );

  test.each([
    [{ energyRatio: 2.6 }, null],
    [{ energyRatio: 2.4, flux: 0.1 }, noStroke],
    [{ energyRatio: 1.3, ratio: 3.1, flux: 0.125 }, null],
    [{ energyRatio: 1.2, ratio: 3.1, flux: 0.125 }, noStroke],
    [{ energyRatio: 1.3, ratio: 2.9, flux: 0.125 }, noStroke],
    [{ energyRatio: 1.3, ratio: 3.1, flux: 0.115 }, noStroke],
  ])('on the same pitch is a stroke or not: %j', (values, answer) => {
    expect(softOverNote(evidenceOf({ ...samePitch, attack: soft(values) }))).toEqual(answer);
  });

  test('is remembered with its pitch where it has one', () => {
    const evidence = evidenceOf({ ...samePitch, attack: soft(), strokePitch: pitchOf({ midi: 60 }) });
    expect(softOverNote(evidence)).toEqual({ is: 'too soft', midi: 60 });
  });
});

describe('a string that is let go', () => {
  const letGo = (values: Partial<AttackEvidence>, dropDb = 8.4, frames = 6) =>
    stringLetGo(
      evidenceOf({
        ...samePitch,
        attack: attackOf({ energyRatio: 0.97 }),
        track: trackOf([...times(20 + frames, { levelDb: -20 }), ...times(10, { levelDb: -20 - dropDb })]),
        ...values,
      }),
    );

  test('dies within 48 ms, is no louder, and nothing follows', () => {
    expect(letGo({})).toEqual(noStroke);
    expect(letGo({}, 7.6)).toBeNull();
    expect(letGo({}, 8.4, 7)).toBeNull();
    expect(letGo({ attack: attackOf({ energyRatio: 1.03 }) })).toBeNull();
    expect(letGo({ next: attackOf() })).toBeNull();
    expect(letGo({ semitonesApart: 4 })).toBeNull();
    expect(letGo({ semitonesApart: 4, strokePitch: pitchOf({ differsFromPath: true }) })).toEqual(noStroke);
  });

  test('has died by the sixth frame after, not by the fifth', () => {
    const early = trackOf([...times(25, { levelDb: -20 }), { levelDb: -40 }, ...times(10, { levelDb: -20 })]);
    expect(letGo({ track: early })).toBeNull();
  });
});

describe('a new note', () => {
  test.each([
    [5.4, 1.25, 'legato'],
    [5.4, 1.35, 'struck'],
    [5.4, 0.79, 'legato'],
    [5.4, 0.75, 'struck'],
    [5.6, 1, 'struck'],
    [0.57, 1, 'struck'],
    [0.63, 1, 'legato'],
  ])('%d semitones away at %d times the energy is %s', (semitonesApart, energyRatio, attack) => {
    expect(newNote(evidenceOf({ attack: attackOf({ energyRatio }), semitonesApart }))).toMatchObject({
      is: 'note',
      attack,
      midi: 64,
      from: 20,
      pitchFromAttack: false,
    });
  });

  test('tells where its pitch is from', () => {
    const strokePitch = pitchOf({ differsFromPath: true });
    expect(newNote(evidenceOf({ strokePitch }))).toMatchObject({ pitchFromAttack: true });
  });
});
