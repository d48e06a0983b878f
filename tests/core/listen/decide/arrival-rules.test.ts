/** Each rule about a pitch that has come to rest elsewhere, on both sides of each of its limits. */
import { describe, expect, test } from 'vitest';
import {
  attackOnItsWay,
  decideArrival,
  diedAway,
  farAway,
  isQuick,
  isSeparate,
  isSlide,
  separateNote,
  softOnset,
  stringThatRingsOn,
  type ArrivalEvidence,
} from '../../../../src/core/listen/decide/arrival-rules.ts';
import type { OpenNote } from '../../../../src/core/listen/decide/open-note.ts';
import type { Ringing } from '../../../../src/core/listen/decide/ringing.ts';
import type { Move } from '../../../../src/core/listen/path/contour.ts';
import { pitches, times, trackOf } from './made-track.ts';

const openOf = (values: Partial<OpenNote> = {}): OpenNote => ({
  onsetSeconds: 0.04,
  attack: 'struck',
  from: 5,
  last: 29,
  pitch: 60,
  plateauFrom: 5,
  peakDb: -20,
  flux: 0.5,
  pitchFromAttack: false,
  ringing: null,
  handedOut: false,
  framesAway: 0,
  ...values,
});
/** Stands on MIDI 60 from frame 5 to 29, then at once on MIDI 62. */
const evidenceOf = (values: Partial<ArrivalEvidence> = {}): ArrivalEvidence => ({
  track: trackOf([...times(30, {}), ...times(30, { midi: 62 })]),
  frame: 30,
  pitch: 62,
  open: openOf(),
  later: [],
  softAttack: null,
  partialsAt: () => null,
  ...values,
});
const ringing = (values: Partial<Record<'sounds' | 'passes', boolean>>) =>
  ({ sounds: values.sounds ?? false, passesFor: () => values.passes ?? false }) as unknown as Ringing;

describe('an attack on its way', () => {
  const near = (seconds: number, flux: number) =>
    attackOnItsWay(evidenceOf({ later: [{ seconds, flux, ratio: 5, energyRatio: 1 }] }));

  test('decides for itself within 45 ms', () => {
    expect(near(0.24 + 0.043, 0.125)).toEqual({ is: 'undecided' });
    expect(near(0.24 + 0.047, 0.125)).toBeNull();
    expect(near(0.24 + 0.043, 0.115)).toBeNull();
  });
});

describe('a pitch far away without an attack', () => {
  test('is further than a hand reaches, or a harmonic', () => {
    const at = (pitch: number) => farAway(evidenceOf({ pitch }))?.is ?? null;
    expect(at(60 + 7.9)).toBeNull();
    expect(at(60 + 8.1)).toBe('misread now');
    expect(at(60 - 8.1)).toBe('misread now');
    expect(at(60 + 12)).toBe('misread now');
  });

  test('was misread before once it has stood for most of the note, and six frames at least', () => {
    const away = (framesAway: number, frames: number, values: Partial<OpenNote> = {}) =>
      farAway(evidenceOf({ pitch: 69, open: openOf({ framesAway, last: 5 + frames, ...values }) }))?.is;
    expect(away(5, 6)).toBe('misread before');
    expect(away(4, 6)).toBe('misread now');
    expect(away(9, 19)).toBe('misread before');
    expect(away(9, 20)).toBe('misread now');
    expect(away(9, 19, { pitchFromAttack: true })).toBe('misread now');
  });

  test('is no misreading where it is the fundamental that the note has in common with a string that rings on', () => {
    const below = (semitones: number, sounds: boolean) => {
      const open = openOf({ framesAway: 9, last: 12, ringing: ringing({ sounds }) });
      return farAway(evidenceOf({ pitch: 60 - semitones, open }))?.is;
    };
    expect(below(13.4, true)).toBe('misread now');
    expect(below(12.6, true)).toBe('misread before');
    expect(below(13.4, false)).toBe('misread before');
  });
});

describe('a note that has died away', () => {
  const at = (levelDb: number, frame: number) => {
    const frames = times(60, {});
    frames[frame] = { levelDb };
    return diedAway(evidenceOf({ track: trackOf(frames) }));
  };

  test('gives no legato note: 20 dB under its peak, 16 ms later', () => {
    expect(at(-40.5, 32)).toEqual({ is: 'undecided' });
    expect(at(-39.5, 32)).toBeNull();
    expect(at(-60, 31)).toBeNull();
  });
});

describe('a string that rings on', () => {
  test('takes the path and not the note', () => {
    const passes = (value: boolean) =>
      stringThatRingsOn(evidenceOf({ open: openOf({ ringing: ringing({ passes: value }) }) }));
    expect(passes(true)).toEqual({ is: 'another string' });
    expect(passes(false)).toBeNull();
  });
});

describe('two notes or one whose pitch moves', () => {
  const moveOf = (values: Partial<Move>): Move => ({
    step: 2,
    left: 29,
    there: 30,
    seconds: 0.236,
    fastestShare: 1,
    whole: 2,
    unevenness: 0.05,
    stoodSeconds: 0.2,
    ...values,
  });

  test('a hammer-on, a pull-off or a slur is quick', () => {
    expect(isQuick(moveOf({ fastestShare: 0.63 }))).toBe(true);
    expect(isQuick(moveOf({ fastestShare: 0.61 }))).toBe(false);
  });

  test.each([
    [{ fastestShare: 0.51 }, true],
    [{ fastestShare: 0.49 }, false],
    [{ fastestShare: 0.41, step: -2 }, true],
    [{ fastestShare: 0.39, step: -2 }, false],
    [{ fastestShare: 0.55, unevenness: 0.19 }, true],
    [{ fastestShare: 0.55, unevenness: 0.21 }, false],
    [{ fastestShare: 0.55, stoodSeconds: 0.082 }, true],
    [{ fastestShare: 0.55, stoodSeconds: 0.078 }, false],
    [{ fastestShare: 0.55, whole: 0.87 }, true],
    [{ fastestShare: 0.55, whole: 0.83 }, false],
  ])('a slide leaves a flat plateau and goes a good way: %j', (values, answer) => {
    expect(isSlide(moveOf(values))).toBe(answer);
  });

  test('two notes are apart, and the first one stood', () => {
    expect(isSeparate(moveOf({ step: 0.62 }))).toBe(true);
    expect(isSeparate(moveOf({ step: 0.58 }))).toBe(false);
    expect(isSeparate(moveOf({ stoodSeconds: 0.042 }))).toBe(true);
    expect(isSeparate(moveOf({ stoodSeconds: 0.038 }))).toBe(false);
    expect(isSeparate(moveOf({ fastestShare: 0.3 }))).toBe(false);
  });

  test('a jump is a legato note, and neither plateau loses a frame', () => {
    expect(decideArrival(evidenceOf())).toEqual({
      is: 'note',
      attack: 'legato',
      onsetSeconds: 0.236,
      from: 30,
      last: 29,
    });
  });

  test('a slow bend is one note', () => {
    const way = Array.from({ length: 20 }, (_, i) => 60 + (2 * (i + 1)) / 20);
    const track = trackOf([...times(30, {}), ...pitches(...way), ...times(20, { midi: 62 })]);
    expect(decideArrival(evidenceOf({ track, frame: 50 }))).toEqual({ is: 'bend' });
  });
});

describe('a soft attack before the pitch stands alone', () => {
  const before = (seconds: number, midi: number, values: Partial<ArrivalEvidence> = {}) =>
    softOnset(evidenceOf({ softAttack: { seconds, midi }, ...values }));

  test('was the onset, if it brought just this pitch and is no older than a quarter of a second', () => {
    expect(before(0.15, 62.58)).toBe(0.15);
    expect(before(0.15, 62.62)).toBeNull();
    const late = { frame: 40 };
    expect(before(0.32 - 0.245, 62, { ...late, open: openOf({ onsetSeconds: 0 }) })).toBeCloseTo(0.075, 9);
    expect(before(0.32 - 0.255, 62, { ...late, open: openOf({ onsetSeconds: 0 }) })).toBeNull();
  });

  test('does not leave a note shorter than 40 ms before it', () => {
    expect(before(0.04 + 0.042, 62)).not.toBeNull();
    expect(before(0.04 + 0.038, 62)).toBeNull();
  });

  test('makes the note a struck one', () => {
    expect(separateNote(evidenceOf({ softAttack: { seconds: 0.15, midi: 62 } }))).toEqual({
      is: 'note',
      attack: 'struck',
      onsetSeconds: 0.15,
      from: 30,
      last: null,
    });
  });
});
