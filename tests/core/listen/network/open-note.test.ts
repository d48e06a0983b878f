/** From a note that was followed to a note as heard. A frame lasts 16 ms; frame 3 is the recording's beginning; E1 is 0. */
import { describe, expect, it } from 'vitest';
import { heardNote, isScoop, type OpenNote } from '../../../../src/core/listen/network/open-note.ts';

interface Made {
  readonly at?: number;
  readonly semitone?: number;
  readonly sure?: number;
  readonly body?: number;
  /** Its pitch by frame, from the one after the onset on. */
  readonly path?: readonly number[];
  readonly fine?: readonly number[];
}
function open(
  { at = 20, semitone = 30, sure = 1, body = 1, path = still(30, 20), fine = path }: Made,
  more: Partial<OpenNote> = {},
): OpenNote {
  const frame = Math.round(at);
  const onset = { frame, pitch: Math.round(semitone), at, semitone, onset: sure, body };
  return {
    ...{ onset, struck: true, peakDb: -20, path: [...path], fine: [...fine], quiet: 0, current: 30 },
    ...{ frames: path.map((_, i) => frame + 1 + i), end: frame + path.length, limit: Infinity },
    ...{ closed: true, handed: false },
    ...more,
  };
}
const still = (semitone: number, frames: number) => new Array<number>(frames).fill(semitone);

describe('a note as heard', () => {
  it('has its times, pitch, level and attack', () => {
    expect(heardNote(open({}))).toMatchObject({
      ...{
        onsetSeconds: expect.closeTo(17 * 0.016, 9) as number,
        offsetSeconds: expect.closeTo(37 * 0.016, 9) as number,
      },
      ...{ midi: 58, levelDb: -20, attack: 'struck', bendSemitones: 0, vibrato: null, second: null },
    });
    expect(heardNote(open({}, { struck: false })).attack).toBe('legato');
  });

  it('begins no earlier than the recording, and lasts for a frame at least', () => {
    expect(heardNote(open({ at: 2 })).onsetSeconds).toBe(0);
    const short = heardNote(open({ path: [] }));
    expect(short.offsetSeconds - short.onsetSeconds).toBeCloseTo(0.016, 9);
    expect(heardNote(open({ at: 1, path: [] })).offsetSeconds).toBe(0);
  });

  it('is as sure as onset, body and length make it', () => {
    // Odds of -3.489 + 3.993 onset + 1.573 body + 0.433 for 0.2 s or more, in nepers.
    const odds = (made: Made) => Math.log(1 / (1 / heardNote(open(made)).confidence - 1));
    expect(odds({})).toBeCloseTo(2.51, 9);
    expect(odds({ sure: 0.5 })).toBeCloseTo(2.51 - 3.993 / 2, 9);
    expect(odds({ body: 0.5 })).toBeCloseTo(2.51 - 1.573 / 2, 9);
    expect(odds({ path: still(30, 50) })).toBeCloseTo(2.51, 9);
    // Five frames are 0.08 s.
    expect(odds({ path: still(30, 5) })).toBeCloseTo(2.51 - 0.433 * 0.6, 9);
  });

  it('takes the fine pitch where it lies within 0.4 of the network’s', () => {
    expect(heardNote(open({ fine: still(30.39, 20) })).midi).toBeCloseTo(58.39, 9);
    expect(heardNote(open({ fine: still(30.41, 20) })).midi).toBe(58);
  });

  it('is bent by what lies between its onset and its rest, from 0.35 of a semitone on', () => {
    expect(heardNote(open({ semitone: 29.5 })).bendSemitones).toBeCloseTo(0.5, 9);
    expect(heardNote(open({ semitone: 30.5 })).bendSemitones).toBeCloseTo(-0.5, 9);
    expect(heardNote(open({ semitone: 29.7 })).bendSemitones).toBe(0);
    expect(heardNote(open({ semitone: 29.65 })).bendSemitones).toBeCloseTo(0.35, 9);
  });

  it('with vibrato is not bent', () => {
    const fine = Array.from({ length: 50 }, (_, i) => 30 + 0.3 * Math.sin((2 * Math.PI * 5.5 * i) / 62.5));
    const { vibrato, bendSemitones } = heardNote(open({ semitone: 29.5, path: still(30, 50), fine }));
    expect(vibrato!.rateHz).toBeCloseTo(5.5, 0);
    expect(bendSemitones).toBe(0);
  });

  it('that leaps to where it rests begins there, if it leaps soon', () => {
    // Two frames at the pitch of its onset, then a leap of two semitones.
    const begins = (path: readonly number[], semitone = 28) =>
      heardNote(open({ semitone, path })).onsetSeconds / 0.016 + 3;
    expect(begins([28, 28, ...still(30, 20)])).toBeCloseTo(22.5, 9);
    // Too late: eight frames after the onset.
    expect(begins([...still(28, 8), ...still(30, 30)])).toBeCloseTo(20, 9);
    // Six frames after the onset is soon enough, seven are not.
    expect(begins([...still(28, 5), ...still(30, 30)])).toBeCloseTo(25.5, 9);
    expect(begins([...still(28, 6), ...still(30, 30)])).toBeCloseTo(20, 9);
    // Half a semitone in a frame is a leap, and it is there from half a semitone away.
    expect(begins([28, 28.5, 29, 29.5, ...still(30, 20)])).toBeCloseTo(23.5, 9);
    expect(begins([28, 30, 30, 30, 30])).toBeCloseTo(21.5, 9);
    // In small steps it is bent there, and begins where it was struck.
    expect(begins([28, 28.4, 28.8, 29.2, 29.6, ...still(30, 20)])).toBeCloseTo(20, 9);
    // It rests where it began.
    expect(begins([28, 28, ...still(30, 20)], 29.5)).toBeCloseTo(20, 9);
    // It does not leap while it is followed.
    expect(begins(still(30, 20))).toBeCloseTo(20, 9);
    // Too short to tell.
    expect(begins([28, 30, 30, 30])).toBeCloseTo(20, 9);
  });

  it('that rose from the octave below begins at the octave above', () => {
    expect(heardNote(open({ semitone: 18, path: still(30, 20) }))).toMatchObject({
      midi: 58,
      bendSemitones: 0,
    });
    expect(heardNote(open({ semitone: 22, path: still(30, 20) })).bendSemitones).toBeCloseTo(8, 9);
  });
});

describe('a scoop', () => {
  /** A short note below the next one. */
  const scoop = ({ at = 20, away = 2, sure = 0.6, frames = 5, next = 0.9 }) =>
    isScoop(
      open({ at, semitone: 30 - away, sure, path: still(30 - away, frames) }),
      open({ at: at + frames, semitone: 30, sure: next }),
    );

  it('runs into the next note within 96 ms', () => {
    expect(scoop({})).toBe(true);
    expect(scoop({ frames: 6 })).toBe(false);
  });

  it('comes from close by, from above or below', () => {
    expect([scoop({ away: 0.4 }), scoop({ away: 0.6 }), scoop({ away: 2.5 }), scoop({ away: 2.7 })]).toEqual([
      ...[false, true, true, false],
    ]);
    expect(scoop({ away: -2 })).toBe(true);
  });

  it('is unsure, or its next note is', () => {
    expect(scoop({ sure: 0.8, next: 0.9 })).toBe(false);
    expect(scoop({ sure: 0.8, next: 0.74 })).toBe(true);
    expect(scoop({ sure: 0.74, next: 0.9 })).toBe(true);
  });

  it('is hardly surer than its next note', () => {
    expect(scoop({ sure: 0.65, next: 0.5 })).toBe(true);
    expect(scoop({ sure: 0.75, next: 0.5 })).toBe(false);
  });
});
