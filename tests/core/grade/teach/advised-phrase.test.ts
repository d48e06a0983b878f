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
});
