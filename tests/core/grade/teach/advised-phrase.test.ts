/** What a piece of advice is about, as notes and bars. At 120 beats a minute a beat lasts half a second. */
import { describe, expect, it } from 'vitest';
import { advisedPhrase } from '../../../../src/core/grade/teach/advised-phrase.ts';
import { chart, gradeLine, type Played } from '../line.ts';

const FORM = '| C7 | F7 | C7 | G7 |';
const phraseOf = (played: readonly Played[], text = FORM, referenceHz = 440) => {
  const report = gradeLine(text, played, { referenceHz }, 'C');
  return { report, phrase: advisedPhrase(report, chart(text, { key: 'C' }), report.advice[0]!)! };
};

describe('advisedPhrase', () => {
  it('is the bar of the note and the one that leads there, with the nearest chord tone in its place', () => {
    const { report, phrase } = phraseOf([
      [1, 1, 64],
      [4, 2, 71],
      [7, 1, 60],
      [9, 1, 64],
    ]);
    expect(report.advice[0]).toMatchObject({ fault: 'landing', chord: 'F7', resolve: { midi: 72 } });
    expect(phrase).toMatchObject({ fromBeat: 0, toBeat: 8, bars: { fromBar: 1, toBar: 2 } });
    expect(
      phrase.resolved.map(({ onsetSeconds, offsetSeconds, midi }) => [onsetSeconds, offsetSeconds, midi]),
    ).toEqual([
      [0.5, 1, 64],
      [2, 3, 72],
      [3.5, 4, 60],
    ]);
  });

  it('holds a note as it was held, and moves it where the chord arrives', () => {
    // E is held from C7 over into F7, and its resolution there lies a half step off: F or Eb.
    const { report, phrase } = phraseOf([
      [2, 4, 64],
      [6.5, 1, 69],
    ]);
    expect(report.advice[0]).toMatchObject({ held: true });
    const { midi } = report.advice[0]!.resolve;
    expect(
      phrase.resolved.slice(0, 2).map((note) => [note.onsetSeconds, note.offsetSeconds, note.midi]),
    ).toEqual([
      [1, 2, 64],
      [2, 3, midi],
    ]);
  });

  it('sounds the resolution at the reference that was played to', () => {
    const up = 12 * Math.log2(442 / 440);
    const { report, phrase } = phraseOf(
      [
        [1, 1, 64 + up],
        [4, 2, 71 + up],
        [7, 1, 60 + up],
      ],
      FORM,
      442,
    );
    expect(phrase.resolved[1]!.midi).toBeCloseTo(report.advice[0]!.resolve.midi + up, 6);
  });

  it('counts the bars of the form in every chorus, and the first bar from itself', () => {
    const second = phraseOf([
      [17, 1, 64],
      [20, 2, 71],
      [23, 1, 60],
    ]);
    expect(second.phrase).toMatchObject({ fromBeat: 16, toBeat: 24, bars: { fromBar: 1, toBar: 2 } });
    const first = phraseOf([
      [14, 1, 67],
      [16, 2, 61],
      [19, 1, 60],
    ]);
    expect(first.report.advice[0]).toMatchObject({ bars: [0], chord: 'C7' });
    expect(first.phrase).toMatchObject({ fromBeat: 12, toBeat: 20, bars: { fromBar: 1, toBar: 2 } });
  });

  /** Onset, end and pitch of each note, in beats. */
  const inBeats = ({ phrase }: ReturnType<typeof phraseOf>) =>
    phrase.resolved.map(({ onsetSeconds, offsetSeconds, midi }) => [
      onsetSeconds * 2,
      offsetSeconds * 2,
      midi,
    ]);

  it('lets a b3 lean on the third for half of its length, half a beat at most', () => {
    const hanging = (beats: number) =>
      phraseOf([
        [0, 1, 60],
        [1, beats, 63],
        [1 + beats, 1, 67],
      ]);
    expect(hanging(2).report.advice[0]).toMatchObject({ fault: 'hanging b3', resolve: { midi: 64 } });
    expect(inBeats(hanging(2))).toEqual([
      [0, 1, 60],
      [1, 1.5, 63],
      [1.5, 3, 64],
      [3, 4, 67],
    ]);
    expect(inBeats(hanging(0.5)).slice(1, 3)).toEqual([
      [1, 1.25, 63],
      [1.25, 1.5, 64],
    ]);
    // The third is slurred to; the b3 is struck as it was.
    expect(hanging(2).phrase.resolved.map(({ attack }) => attack)).toEqual([
      'struck',
      'struck',
      'legato',
      'struck',
    ]);
  });

  it('begins with what runs ahead to its first bar by three quarters of a beat at most', () => {
    const phrase = phraseOf([
      [3.2, 0.05, 60],
      [3.3, 0.05, 64],
      [5, 1, 69],
      [8, 2, 66],
      [11, 1, 60],
    ]);
    expect(phrase.report.advice[0]).toMatchObject({ fault: 'landing', bars: [2] });
    expect(phrase.phrase).toMatchObject({ fromBeat: 4, toBeat: 12, bars: { fromBar: 2, toBar: 3 } });
    expect(inBeats(phrase).map(([beat]) => beat)).toEqual([expect.closeTo(3.3, 6), 5, 8, 11]);
  });

  it('ends with the bar of the note, or with the next where the note rings on into it', () => {
    const ends = (beats: number) =>
      phraseOf([
        [1, 1, 64],
        [4, beats, 66],
        [13, 1, 67],
      ]).phrase;
    expect(ends(4.4)).toMatchObject({ toBeat: 8, bars: { fromBar: 1, toBar: 2 } });
    expect(ends(4.6)).toMatchObject({ toBeat: 12, bars: { fromBar: 1, toBar: 3 } });
  });

  it('stays inside the form at its last bar', () => {
    const { phrase } = phraseOf([
      [9, 1, 64],
      [12, 4.8, 61],
      [18, 1, 64],
    ]);
    expect(phrase.bars).toEqual({ fromBar: 3, toBar: 4 });
  });

  it('is none for advice that speaks of no note', () => {
    const { report } = phraseOf([
      [1, 1, 64],
      [4, 2, 71],
      [7, 1, 60],
    ]);
    const timeline = chart(FORM, { key: 'C' });
    expect(advisedPhrase(report, timeline, { ...report.advice[0]!, notes: [] })).toBeNull();
    expect(advisedPhrase(report, timeline, { ...report.advice[0]!, notes: [9] })).toBeNull();
  });
});
