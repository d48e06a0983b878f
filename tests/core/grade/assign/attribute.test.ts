import { english } from '../../../english.ts';
import { describe, expect, it } from 'vitest';
import { chordOfNote, defaultAnticipationBeats } from '../../../../src/core/grade/assign/attribute.ts';
import { timelineFromBeats, timelineFromTempo } from '../../../../src/core/chart/build-timeline.ts';
import { chartOf } from '../../chart/charts.ts';

// One beat a second, so that beats and seconds are the same.
const timeline = timelineFromTempo(chartOf('| C7 | F7 | N.C. | Gm7 |'), { bpm: 60 });
const E4 = 64;
const A4 = 69;

const attributed = (
  onsetSeconds: number,
  offsetSeconds: number,
  midi: number,
  anticipation = 0.5,
  referenceHz = 440,
) => {
  const { chord, rule } = chordOfNote(
    { onsetSeconds, offsetSeconds, midi },
    timeline,
    anticipation,
    referenceHz,
  );
  return `${chord?.symbol ?? 'none'} by ${rule}`;
};

describe('the chord of a note', () => {
  it('is the chord at its onset', () => {
    expect(attributed(0, 1, E4)).toBe('C7 by onset');
    expect(attributed(4, 5, E4)).toBe('F7 by onset');
    expect(attributed(9, 9.5, E4)).toBe('none by onset');
    expect(attributed(-0.2, -0.1, E4)).toBe('none by onset');
    expect(attributed(-0.2, 1, E4, 0)).toBe('none by onset');
  });

  it('is the new chord when a tone of it comes early and sounds on', () => {
    expect(attributed(3.6, 4.5, A4)).toBe('F7 by anticipation');
    expect(attributed(3.5, 4.5, A4)).toBe('F7 by anticipation');
    expect(attributed(3.46, 4.5, A4)).toBe('F7 by anticipation');
    expect(attributed(3.44, 4.5, A4)).toBe('C7 by onset');
    expect(attributed(3.6, 3.96, A4)).toBe('F7 by anticipation');
    expect(attributed(3.6, 3.94, A4)).toBe('C7 by onset');
    expect(attributed(3.6, 4.5, E4)).toBe('C7 by onset');
    expect(attributed(3.6, 4.5, A4, 0)).toBe('C7 by onset');
    expect(attributed(3.4, 4.5, A4, 1)).toBe('F7 by anticipation');
  });

  it('is the new chord, whatever the pitch, within the tolerance before it, but never N.C.', () => {
    expect(attributed(3.96, 4.5, E4 - 3)).toBe('F7 by at change');
    expect(attributed(3.96, 3.99, E4 - 3)).toBe('F7 by at change');
    expect(attributed(3.94, 4.5, E4 - 3)).toBe('C7 by onset');
    expect(attributed(3.96, 4.5, E4 - 3, 0)).toBe('C7 by onset');
    expect(attributed(7.99, 8.5, A4)).toBe('F7 by onset');
    expect(attributed(11.99, 12.5, A4)).toBe('Gm7 by at change');
  });

  it('holds at exactly the anticipation, whatever the rounding', () => {
    for (const bpm of [97, 140, 183.3]) {
      const laid = timelineFromTempo(chartOf('| C7 | F7 |'), { bpm, firstBeatSeconds: 0.123 });
      for (let chorus = 0; chorus < 20; chorus++) {
        const onsetSeconds = 0.123 + ((chorus * 8 + 3.5) * 60) / bpm;
        const note = { onsetSeconds, offsetSeconds: onsetSeconds + 1, midi: A4 };
        expect(chordOfNote(note, laid, 0.5).rule).toBe('anticipation');
      }
    }
  });

  it('reaches a chord out of none, and the chart going round', () => {
    expect(attributed(11.6, 12.5, 67)).toBe('Gm7 by anticipation');
    expect(attributed(15.6, 16.5, E4)).toBe('C7 by anticipation');
    expect(attributed(7.6, 8.5, A4)).toBe('F7 by onset');
    expect(attributed(-0.2, 1, E4)).toBe('C7 by anticipation');
    expect(attributed(-0.2, 1, A4)).toBe('none by onset');
    expect(
      chordOfNote({ onsetSeconds: 11.6, offsetSeconds: 12.5, midi: 67 }, timeline, 0.5).change?.startBeat,
    ).toBe(12);
  });

  it('takes the pitch at the reference', () => {
    // 60 cents under A: G# at the standard, and A to a player whose A is 427 Hz.
    expect(attributed(3.6, 4.5, 68.4)).toBe('C7 by onset');
    expect(attributed(3.6, 4.5, 68.4, 0.5, 427)).toBe('F7 by anticipation');
  });

  it('throws on a negative anticipation or tolerance', () => {
    expect(() => attributed(0, 1, E4, -0.1)).toThrow('an anticipation is 0 beats or more, not -0.1');
    const note = { onsetSeconds: 0, offsetSeconds: 1, midi: E4 };
    expect(() => chordOfNote(note, timeline, 0.5, 440, -0.01)).toThrow(
      'a tolerance is 0 s or more, not -0.01',
    );
    expect(chordOfNote(note, timeline, 0.5, 440, 0).rule).toBe('onset');
  });
});

describe('an eighth before the beat', () => {
  it('is as long as the second eighth', () => {
    expect(defaultAnticipationBeats(0.5)).toBe(0.5);
    expect(defaultAnticipationBeats(2 / 3)).toBeCloseTo(1 / 3);
    expect(defaultAnticipationBeats(0.5, 3)).toBeCloseTo(1 / 3);
  });

  it('is never given before the first beat of a list of beats', () => {
    const listed = timelineFromBeats(
      [1, 2, 3, 4].map((timeSeconds) => ({ timeSeconds, chord: timeSeconds === 1 ? 'C7' : '' })),
    );
    if (!listed.ok) throw new Error(english(listed.problem));
    const early = chordOfNote({ onsetSeconds: 0.9, offsetSeconds: 2, midi: E4 }, listed.value, 0.5);
    expect(early.chord).toBe(null);
  });

  it('is given between the beats of a list', () => {
    const listed = timelineFromBeats([
      { timeSeconds: 1, chord: 'C7' },
      { timeSeconds: 2, chord: 'F7' },
      { timeSeconds: 3, chord: '' },
    ]);
    if (!listed.ok) throw new Error(english(listed.problem));
    const early = chordOfNote({ onsetSeconds: 1.6, offsetSeconds: 2.5, midi: A4 }, listed.value, 0.5);
    expect(early).toMatchObject({ rule: 'anticipation', chord: { symbol: 'F7' } });
  });

  it('is swung as the section before the change is swung, in any chorus', () => {
    const chart = chartOf('feel: shuffle\n[A]\n| C7 | F7 |\n[B]\nfeel: straight\n| C7 | F7 |');
    const mixed = timelineFromTempo(chart, { bpm: 60, swing: 2 / 3 });
    const from = (beat: number) =>
      chordOfNote({ onsetSeconds: beat, offsetSeconds: Math.ceil(beat) + 1, midi: A4 }, mixed, 'an eighth')
        .rule;
    for (const chorus of [0, 16, 160]) {
      // Into bar 2 of the shuffle a third of a beat, into bar 4 of the straight section half a beat.
      expect(from(chorus + 4 - 0.3)).toBe('anticipation');
      expect(from(chorus + 4 - 0.4)).toBe('onset');
      expect(from(chorus + 12 - 0.45)).toBe('anticipation');
      expect(from(chorus + 12 - 0.56)).toBe('onset');
    }
    // Into the straight section from the last bar of the shuffle: as the shuffle swings.
    const into = (beat: number) =>
      chordOfNote({ onsetSeconds: beat, offsetSeconds: 9, midi: E4 }, mixed, 'an eighth').rule;
    expect([into(8 - 0.3), into(8 - 0.45)]).toEqual(['anticipation', 'onset']);
    expect(mixed.barSwings).toEqual([2 / 3, 2 / 3, 0.5, 0.5]);
    // A section that asks for the feel that is played anyway swings with it.
    expect(timelineFromTempo(chart, { bpm: 60, swing: 0.6, feel: 'straight' }).barSwings).toBeUndefined();
  });
});
