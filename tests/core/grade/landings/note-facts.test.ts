/** Every field of a note in the report. At 120 bpm a beat lasts half a second; the chart is two bars long. */
import { describe, expect, it } from 'vitest';
import { grade } from '../../../../src/core/grade.ts';
import { chart, gradeLine, line, SETTINGS, type Played } from '../line.ts';

const over = (played: readonly Played[]) => gradeLine('| C7 | F7 |', played, {}, 'C').notes;

describe('a note of the report', () => {
  it('says what was heard, and what it is over its chord', () => {
    const vibrato = { rateHz: 5.5, depthCents: 20 };
    const [note] = over([
      [1, 1, 63.2, { confidence: 0.8, bendSemitones: 0.1, vibrato, second: 67, attack: 'legato' }],
    ]);
    expect(note).toEqual({
      ...{ onsetSeconds: 0.5, offsetSeconds: 1, midi: 63.2, name: 'Eb4', cents: 20, spelling: 'Eb4' },
      ...{ beat: 1, endBeat: 2, bar: 0, chorus: 0, chord: 'C7', degree: 'b3', role: 'blue', keyDegree: 'b3' },
      ...{ rule: 'onset', aheadBeats: null, function: 'free', functionNotes: [], offGridMs: 0 },
      ...{ weight: expect.closeTo(0.3996, 4) as number, strongBeat: false, phrase: 0, phraseEnd: true },
      ...{ attack: 'legato', bendSemitones: 0.1, vibrato, second: 'G4', confidence: 0.8, chosen: false },
    });
  });

  it('stands in the bar where it is heard: on the change, if it is a hair early', () => {
    const places = over([
      [0, 1, 60],
      [3.95, 1, 57],
      [7, 1, 60],
      [8, 1, 64],
      [13, 1, 57],
    ]).map(({ bar, chorus, rule }) => [bar, chorus, rule]);
    expect(places).toEqual([
      [0, 0, 'onset'],
      [1, 0, 'at change'],
      [1, 0, 'onset'],
      [0, 1, 'onset'],
      [1, 1, 'onset'],
    ]);
    // One that runs ahead by an eighth stays in its own bar.
    expect(over([[3.5, 1, 57]])[0]).toMatchObject({
      bar: 0,
      chord: 'F7',
      aheadBeats: 0.5,
      rule: 'anticipation',
    });
  });

  it('has no bar before the first downbeat, and its name by the key', () => {
    expect(over([[-2, 1, 63]])[0]).toMatchObject({
      bar: null,
      chorus: null,
      chord: null,
      degree: null,
      spelling: 'Eb4',
    });
  });

  it('weighs by the time to the next note; the last by its own length', () => {
    const [first, second, third] = over([
      [0, 0.25, 60],
      [2, 0.25, 64],
      [2, 1, 67],
    ]);
    expect(first!.weight).toBeCloseTo(0.7476, 4); // a second: (1 - e^-2)^2
    expect(second!.weight).toBe(0);
    expect(third!.weight).toBeCloseTo(0.3996, 4);
  });

  it('ends its phrase, or not, and stands on a strong beat, or not', () => {
    const told = over([
      [0, 1, 60],
      [1, 1, 64],
      [4.1, 0.5, 67],
    ]).map(({ phrase, phraseEnd, strongBeat }) => [phrase, phraseEnd, strongBeat]);
    expect(told).toEqual([
      [0, false, true],
      [0, true, false],
      [1, true, true],
    ]);
  });

  it('lies so far from the nearest eighth, late being more than nought', () => {
    expect(
      over([
        [1.6, 0.2, 60],
        [2.9, 0.2, 60],
      ]).map(({ offGridMs }) => offGridMs),
    ).toEqual([50, -50]);
  });

  it('says what it does, and by which notes', () => {
    expect(
      over([
        [0, 1, 60],
        [1, 1, 62],
        [2, 1, 64],
      ])[1],
    ).toMatchObject({ function: 'passing', functionNotes: [0, 2] });
  });
});

describe('a note that does not count, in the report', () => {
  it('is named and set against its chord', () => {
    const played = line([
      [2, 1, 63.1, { confidence: 0.3 }],
      [0, 1, 64],
      [-2, 1, 66, { confidence: 0.2 }],
    ]);
    const { doubtful } = grade(played, chart('| C7 | F7 |', { key: 'C' }), {
      ...SETTINGS,
      corrections: [{ kind: 'count', of: { onsetSeconds: 0, midi: 64 }, counts: false }],
    });
    expect(doubtful.map(({ name, chord, takenOut }) => [name, chord, takenOut])).toEqual([
      ['F#4', null, false],
      ['E4', 'C7', true],
      ['D#4', 'C7', false],
    ]);
    expect(doubtful[2]).toEqual({
      ...{ onsetSeconds: 1, offsetSeconds: 1.5, midi: 63.1, name: 'D#4', cents: 10, spelling: 'Eb4' },
      ...{ beat: 2, endBeat: 3, chord: 'C7', degree: 'b3', role: 'blue', confidence: 0.3, takenOut: false },
    });
  });
});
