/** What was good is told in words, and only where it is surely good. */
import { describe, expect, it } from 'vitest';
import { goodSentences } from '../../../src/core/report/good-sentences.ts';
import { reportText } from '../../../src/core/report/text.ts';
import { de } from '../../../src/core/words/de.ts';
import { en } from '../../../src/core/words/en.ts';
import { MINOR_PENTATONIC, chartTimeline, wanderer } from '../../bench/made-players.ts';
import { gradeLine, TWELVE_BARS, type Played } from '../grade/line.ts';

const timeline = chartTimeline(TWELVE_BARS);
/** Two choruses, a tone of each bar's chord on its first beat, then some notes of the key. */
function bars(first: (bar: number, root: number) => readonly Played[]): readonly Played[] {
  return Array.from({ length: 24 }, (_, bar) => [
    ...first(bar, timeline.chordAt(4 * bar)!.rootPitchClass),
    [4 * bar + 2, 0.5, 62 + ((bar * bar) % 5)] as const,
    [4 * bar + 3, 0.5, 61 + ((bar * 3) % 7)] as const,
  ]).flat();
}

describe('what was good', () => {
  it('is landings on chord tones, where the thirds are not more than luck', () => {
    const report = gradeLine(
      TWELVE_BARS,
      bars((bar, root) => [[4 * bar, 0.9, 60 + root + (bar % 2 === 0 ? 0 : 7)]]),
    );
    expect(report.shares.landings.thirds.hits).toBe(0);
    expect(goodSentences(report, en)[0]).toBe('13 of 13 landings are on chord tones: more than luck.');
    expect(goodSentences(report, de)[0]).toBe('13 von 13 Landungen liegen auf Akkordtönen: mehr als Zufall.');
    expect(reportText(report, en)).toMatch(/^Good +13 of 13 landings are on chord tones/m);
  });

  it('is a landing outside the chord that a step puts right', () => {
    const report = gradeLine(
      TWELVE_BARS,
      bars((bar, root) => [
        [4 * bar, 0.5, 61 + root],
        [4 * bar + 0.5, 1, 60 + root],
      ]),
    );
    expect(goodSentences(report, en)).toContain(
      '13 of 13 landings outside the chord are resolved by step into a chord tone.',
    );
  });

  // A walk by steps of the scale puts about half of its landings right: no praise for that.
  it('is a landing put right only where more are than a walk by steps puts right', () => {
    const half = gradeLine(
      TWELVE_BARS,
      bars((bar, root) => [
        [4 * bar, 0.5, 61 + root],
        [4 * bar + 0.5, 1, (bar % 2 === 0 ? 60 : 66) + root],
      ]),
    );
    expect(goodSentences(half, en).join()).not.toContain('put right');
  });

  it('is nothing where the chart itself is in doubt', () => {
    const fine = gradeLine(
      TWELVE_BARS,
      bars((bar, root) => [[4 * bar, 0.9, 60 + root]]),
    );
    const suspected = {
      what: 'key',
      semitones: 2,
      beats: 0,
      tonic: 'D',
      shareHere: 0.3,
      shareThere: 0.8,
    } as const;
    expect(goodSentences(fine, en)).not.toEqual([]);
    expect(goodSentences({ ...fine, suspected }, en)).toEqual([]);
  });

  it('is nothing in a take that wanders', () => {
    for (let seed = 1; seed <= 10; seed++)
      expect(goodSentences(gradeLine(TWELVE_BARS, wanderer(seed, MINOR_PENTATONIC, 96)), en)).toEqual([]);
  });
});

describe('the first line of the page', () => {
  it('counts the choruses that were played', () => {
    const first = (beats: number) =>
      reportText(gradeLine(TWELVE_BARS, wanderer(1, MINOR_PENTATONIC, beats)), en).split('\n')[0];
    expect(first(96)).toMatch(/^\d+ notes over 2 choruses of 12 bars in C major/);
    expect(first(44)).toMatch(/^\d+ notes over 12 bars in C major/);
  });
});

describe('the short page', () => {
  it('keeps to a screen under a form of 24 bars with two habits to praise and three faults', () => {
    const form = `${TWELVE_BARS} ${TWELVE_BARS.slice(1)}`;
    const played = bars((bar, root) => [
      [4 * bar, 0.9, 60 + root + (bar % 2 === 0 ? 0 : 7)],
      [4 * bar + 1, 0.5, 61 + root],
    ]);
    const later = played.map(([beat, beats, midi]): Played => [beat + 96, beats, midi]);
    const page = reportText(gradeLine(form, [...played, ...later]), en);
    expect(page.split('\n').length).toBeLessThanOrEqual(24);
    expect(page).toMatch(/^Good +/m);
    expect(page).toMatch(/^Advice +1\. /m);
  });
});
