import { english } from '../../../english.ts';
import { aimWords } from '../../../../src/core/report/aim-words.ts';
import { aimEvidence } from '../../../../src/core/report/aim-sentences.ts';
import { de } from '../../../../src/core/words/de.ts';
import { en } from '../../../../src/core/words/en.ts';
import { describeProblem } from '../../../../src/core/words/problem.ts';
import { describe, expect, it } from 'vitest';
import { readAim, type Aim } from '../../../../src/core/grade/aims/aim.ts';
import { chooseNextAim } from '../../../../src/core/grade/aims/aim-results.ts';
import { mulberry32 } from '../../../bench/made-players.ts';
import { AIM_LADDER } from '../../../../src/core/grade/aims/aims.ts';
import { gradeLine, TWELVE_BARS, type Played } from '../line.ts';

const rung = (id: string): Aim => AIM_LADDER.find((aim) => aim.id === id)!;
const resultOf = (id: string, played: readonly Played[], text = TWELVE_BARS) =>
  gradeLine(text, played, {}, 'C').aims.find((aim) => aim.id === id)!;

/** One bar of a line again and again, from bar 0 on. */
const everyBar = (bars: number, bar: readonly Played[]): readonly Played[] =>
  Array.from({ length: bars }, (_, i) =>
    bar.map(([beat, beats, midi, extra]): Played => [4 * i + beat, beats, midi, extra]),
  ).flat();

describe('the ladder', () => {
  it('is written in the form that a teacher’s aim is read in, each rung with an id of its own', () => {
    for (const aim of AIM_LADDER) {
      const own = aimWords(aim, en);
      const file = { format: 'landfall-aim', version: 1, ...aim, ...own };
      expect(readAim(JSON.parse(JSON.stringify(file)))).toEqual({ ok: true, value: { ...aim, own } });
    }
    expect(new Set(AIM_LADDER.map(({ id }) => id)).size).toBe(AIM_LADDER.length);
  });
});

describe('readAim', () => {
  const aim = {
    format: 'landfall-aim',
    version: 1,
    id: 'seventh-over-five',
    name: 'The seventh over the V',
    task: 'Land on the seventh of the V.',
    events: 'landings',
    over: ['V'],
    test: 'is one of',
    tones: ['seventh'],
    shareToReach: 0.5,
    leastEvents: 8,
    againstLuck: true,
  };
  const sentence = (changed: object) => {
    const read = readAim({ ...aim, ...changed });
    return read.ok ? 'ok' : english(read.problem);
  };

  it('refuses texts and lists without end', () => {
    expect(sentence({ name: 'x'.repeat(201) })).toMatch(/"name".*at most 200 characters/);
    expect(sentence({ task: 'x'.repeat(2001) })).toMatch(/"task".*at most 2000 characters/);
    expect(sentence({ id: 'x'.repeat(201) })).toMatch(/"id".*at most 200 characters/);
    expect(sentence({ tones: new Array(101).fill('third') })).toMatch(/"tones".*at most 100 entries/);
    expect(sentence({ over: new Array(101).fill('V') })).toMatch(/"over".*at most 100 entries/);
  });

  it('takes a teacher’s aim, and a take tries for it', () => {
    const read = readAim(aim);
    expect(read.ok).toBe(true);
    const { aims, nextAim } = gradeLine(
      '| C7 | G7 |',
      [
        [0, 1, 60],
        [4, 1, 65],
      ],
      { aims: [read.ok ? read.value : rung('')] },
      'C',
    );
    expect(aims[0]).toMatchObject({ id: 'seventh-over-five', tried: true, verdict: 'too short to tell' });
    expect(aimWords(aims[0]!, en)).toEqual({ name: aim.name, task: aim.task });
    expect(aimEvidence(aims[0]!, en)).toBe('1 of 1 landing over the V; it takes at least 8 to tell.');
    expect(nextAim!.id).toBe('seventh-over-five');
  });

  it('names what can’t be read and what would be', () => {
    expect(sentence({ tones: ['blueish'] })).toContain('"tones.0"');
    expect(sentence({ over: ['4'] })).toContain('a degree like "I", "IV" or "bVII"');
    expect(sentence({ shareToReach: 50 })).toContain('"shareToReach"');
    expect(sentence({ events: 'solos' })).toContain('"events"');
    expect(sentence({ name: undefined })).toContain('"name"');
    expect(sentence({ test: 'moves to' })).toBe(
      'The aim can’t be read: its test "moves to" does not go with "landings"; write "is one of" or "is none of".',
    );
    expect(sentence({ name: undefined })).toBe(
      'The aim has no field "name"; the page src/pages/aims.md has an example.',
    );
    expect(sentence({ leastEvents: 2.5 })).toBe(
      'The field "leastEvents" of the aim can’t be read: found 2.5, write a whole number.',
    );
    expect(readAim('aim').ok).toBe(false);
  });

  it('names it in German with no English word of the validation', () => {
    const german = (changed: object) => {
      const read = readAim({ ...aim, ...changed });
      return read.ok ? 'ok' : describeProblem(read.problem, de);
    };
    expect(german({ shareToReach: 50 })).toBe(
      'Das Feld „shareToReach“ des Ziels ist nicht lesbar: Gefunden wurde 50, schreib höchstens 1.',
    );
    expect(german({ tones: 'third' })).toBe(
      'Das Feld „tones“ des Ziels ist nicht lesbar: Gefunden wurde "third", schreib eine Liste.',
    );
    expect(german({ againstLuck: 'yes' })).toContain('Gefunden wurde "yes", schreib true oder false.');
    expect(german({ events: 'solos' })).toContain('"bars" oder "choruses"');
    expect(german({ tones: [] })).toContain('Gefunden wurde eine Liste, schreib mindestens einen Ton.');
    expect(german({ name: ' ' })).toContain('schreib ein paar Wörter.');
    expect(german({ over: ['4'] })).toContain('Gefunden wurde "4", schreib eine Stufe');
    expect(german({ task: undefined })).toBe(
      'Dem Ziel fehlt das Feld „task“; ein Beispiel steht in src/pages/aims.md.',
    );
  });
});

/** Notes of a bar that differ from bar to bar, so that none comes back as a figure. */
function variedBars(bars: number, tones: readonly number[], seed = 1): readonly (readonly number[])[] {
  const random = mulberry32(seed);
  return Array.from({ length: bars }, () => [0, 1, 2].map(() => tones[Math.floor(random() * tones.length)]!));
}

describe('aims in a take', () => {
  it('third over the I: bars in which it sounds, against luck', () => {
    // E in every bar of C7, and never elsewhere; three other tones in each bar.
    const overOne = [0, 2, 3, 6, 7, 10, 11];
    const played = variedBars(24, [60, 67, 70, 65, 69]).flatMap((others, bar) =>
      [...others, overOne.includes(bar % 12) ? 64 : 72].map((midi, i): Played => [4 * bar + i, 1, midi]),
    );
    expect(resultOf('third-over-one', played)).toMatchObject({
      verdict: 'reached',
      missing: null,
      result: { hits: 14, of: 14 },
    });
  });

  it('a share that luck would give as well is not reached', () => {
    // E in every bar, whatever the chord.
    const result = resultOf(
      'third-over-one',
      everyBar(24, [
        [0, 1, 64],
        [1, 1, 64],
        [2, 1, 64],
        [3, 1, 64],
      ]),
    );
    expect(result.result.share).toBe(1);
    expect(result).toMatchObject({ verdict: 'not yet', missing: 'luck' });
    expect(aimEvidence(result, en)).toContain('enough, but no more than luck may give');
  });

  it('a bar that comes back is one draw: it shows no more than once', () => {
    const bar: readonly Played[] = [
      [0, 1, 64],
      [1, 1, 60],
      [2, 1, 67],
    ];
    const result = resultOf('third-over-one', everyBar(24, bar));
    expect(result).toMatchObject({ result: { hits: 14, of: 14 } });
    expect(result.verdict).not.toBe('reached');
  });

  it('b3 into 3: each b3 is an event, a bent 3 too', () => {
    const result = resultOf(
      'flat-third-into-third',
      [
        ...variedBars(6, [60, 67, 70, 65, 69]).flatMap(([first], bar): Played[] => [
          [4 * bar, 0.5, first!],
          [4 * bar + 1, 0.5, 63],
          [4 * bar + 1.5, 1, 64],
          [4 * bar + 3, 1, 55 + bar],
        ]),
        [24, 1, 64, { bendSemitones: 1 }],
        [26, 0.5, 63],
        [27, 1, 60],
      ],
      '| C7 |',
    );
    expect(result.result).toMatchObject({ hits: 7, of: 8 });
    expect(result.verdict).toBe('reached');
  });

  it('third, sixth and ninth: all three in one chorus', () => {
    const all: readonly Played[] = [
      [0, 1, 64],
      [1, 1, 69],
      [2, 1, 62],
    ];
    const chorus = (at: number, played: readonly Played[]) =>
      played.map(([b, l, m]): Played => [at + b, l, m]);
    const rest = (at: number): Played => [at + 6, 3, 60];
    const result = resultOf('third-sixth-ninth', [
      ...chorus(0, all),
      rest(0),
      ...chorus(
        48,
        [...all].reverse().map(([, l, m], i): Played => [i, l, m]),
      ),
      rest(48),
    ]);
    expect(result).toMatchObject({ verdict: 'reached', result: { hits: 2, of: 2 } });
  });

  it('guide tones by step need one at both ends', () => {
    // Bb (b7 of C7) to A (3 of F7), Eb (b7 of F7) to E (3 of C7): every change, with other notes before each.
    const played = variedBars(24, [60, 62, 65, 67, 72, 74, 77]).flatMap(([first], bar): Played[] =>
      bar % 2 === 0
        ? [
            [4 * bar, 1, 64],
            [4 * bar + 2, 0.5, first!],
            [4 * bar + 3, 1, 70],
          ]
        : [
            [4 * bar, 1, 69],
            [4 * bar + 2, 0.5, first!],
            [4 * bar + 3, 1, 63],
          ],
    );
    const result = resultOf('guide-tones-by-step', played, '| C7 | F7 |');
    expect(result).toMatchObject({ verdict: 'reached', result: { hits: 23, of: 23 } });
  });

  it('keeps off the key’s third over the IV, where the take uses it elsewhere', () => {
    const line = (overOne: readonly number[], overFour: readonly number[]) =>
      Array.from({ length: 24 }, (_, bar) => {
        const tones = bar % 2 === 0 ? overOne : overFour;
        return [0, 1, 2].map((i): Played => [4 * bar + i, 1, tones[(bar * (i + 2) + i) % tones.length]!]);
      }).flat();
    const off = 'off-the-third-over-four';
    const clean = resultOf(off, line([64, 60, 64, 67, 64], [60, 63, 65, 69, 67, 72]), '| C7 | F7 |');
    expect(clean).toMatchObject({ verdict: 'reached', result: { hits: 36, of: 36 } });
    const clashing = resultOf(off, line([64, 60, 67], [60, 64, 64]), '| C7 | F7 |');
    expect(clashing.verdict).toBe('not yet');
    const never = resultOf(off, line([60, 63, 67], [60, 63, 65]), '| C7 | F7 |');
    expect(never).toMatchObject({ verdict: 'too short to tell', missing: 'use elsewhere' });
    expect(aimEvidence(never, en)).toContain('nothing shows yet that you avoid it');
  });

  it('says when the chart has no such chord', () => {
    const result = resultOf('off-the-third-over-four', [[0, 1, 60]], '| C7 | G7 |');
    expect(result.verdict).toBe('not in this chart');
    expect(aimEvidence(result, en)).toBe('The chart has no IV7.');
    expect(resultOf('off-the-third-over-four', [[0, 1, 60]], '| C7 | F6 |').verdict).toBe(
      'not in this chart',
    );
  });

  it('takes the lowest rung that is not reached as the next', () => {
    const { aims, nextAim } = gradeLine(TWELVE_BARS, [[0, 1, 64]], {}, 'C');
    expect(nextAim).toEqual({ id: 'third-over-one' });
    const next = aims.find(({ id }) => id === nextAim?.id)!;
    expect(aimEvidence(next, en)).toBe('1 of 1 bar over the I; it takes at least 5 to tell.');
  });

  it('never one that a harder aim has shown', () => {
    const results = gradeLine(TWELVE_BARS, [[0, 1, 64]], {}, 'C').aims.map((aim) => ({
      ...aim,
      ...(aim.id === 'third-on-arrival' && { verdict: 'reached' as const }),
      ...(aim.id === 'third-over-one' && { coveredBy: 'third-on-arrival' }),
    }));
    expect(chooseNextAim(results)).toEqual({ id: 'flat-third-into-third' });
  });
});
