/** Every language says everything, and says it in its own words. */
import { AIM_CHOICES } from '../../../src/core/grade/aims/aim-choices.ts';
import { describe, expect, it } from 'vitest';
import { en } from '../../../src/core/words/en.ts';
import { languages, wordsOf } from '../../../src/core/words/catalogues.ts';
import { closestLanguage, languageCodes } from '../../../src/core/words/languages.ts';

interface Entry {
  readonly path: string;
  readonly kind: 'text' | 'function';
  /** The text, or the function as it is written. */
  readonly says: string;
  readonly takes: number;
}

function entriesOf(value: unknown, path = ''): readonly Entry[] {
  if (typeof value === 'string') return [{ path, kind: 'text', says: value, takes: 0 }];
  if (typeof value === 'function')
    return [{ path, kind: 'function', says: String(value), takes: value.length }];
  return Object.entries(value as object).flatMap(([key, inner]) =>
    entriesOf(inner, path === '' ? key : `${path}.${key}`),
  );
}

/** Words that are the same in both languages, or are no words. */
const SAME_IN_GERMAN: ReadonlySet<string> = new Set([
  // A unit.
  'ready.takes.size',
  'page.title',
  'parts.title',
  // International words, and pieces that only join what is filled in.
  'ready.lights.auto',
  'ready.inKey',
  'progress.chorus',
  'notation.chorus',
  'lesson.desk.chorus',
  'ready.form',
  'ready.feel',
  'ready.tempo',
  'ready.player.instrument',
  'ready.player.midi',
  'ready.player.midiFrom',
  'ready.sound.band',
  'ready.levels.parts.bass',
  'ready.levels.swing',
  'ready.levels.reference',
  'ready.formGroups.blues',
  'ready.forms.turnaround.title',
  'playing.inKey',
  'playing.inBeats',
  'backing.name',
  'backing.reference',
  'parts.earlierLanding',
  'parts.titleInKey',
  'report.explain.tuning',
  'page.headings.backing',
]);

/** Whether an entry holds a word: two letters in a row inside a text, outside what is filled in. */
function holdsWord({ kind, says }: Entry): boolean {
  if (kind === 'text') return /\p{L}{2}/u.test(says);
  const texts = [...says.matchAll(/(['"`])((?:\\.|(?!\1)[^\\])*)\1/gu)].map((match) => match[2] ?? '');
  return texts.some((text) => /\p{L}{2}/u.test(text.replaceAll(/\$\{[^}]*\}/gu, '')));
}

const english = entriesOf(en);

describe.each(languageCodes.filter((code) => code !== 'en'))('the catalogue in %s', (code) => {
  const other = entriesOf(languages[code]);

  it('has every entry of the English one and no other', () => {
    const shape = (entries: readonly Entry[]) =>
      entries.map(({ path, kind, takes }) => `${path}: ${kind} of ${takes}`).sort();
    expect(
      shape(other),
      `Add the missing entries to src/core/words/${code}.ts, or take out what English does not have.`,
    ).toEqual(shape(english));
  });

  it('says nothing in English', () => {
    const says = new Map(english.map((entry) => [entry.path, entry.says]));
    const same = other
      .filter((entry) => holdsWord(entry) && says.get(entry.path) === entry.says)
      .map(({ path }) => path)
      .filter((path) => !SAME_IN_GERMAN.has(path));
    expect(same, 'Translate these, or add them to SAME_IN_GERMAN with a reason.').toEqual([]);
  });
});

describe('entries', () => {
  it.each(languageCodes)('are never empty in %s', (code) => {
    expect(entriesOf(wordsOf(code)).filter(({ says }) => says.trim() === '')).toEqual([]);
  });

  it('has words for every aim that can be chosen', () => {
    for (const { id } of AIM_CHOICES) expect(Object.keys(en.aims)).toContain(id);
  });

  it('tells a code of a problem from a code of a notice', () => {
    const both = Object.keys(en.problems).filter((code) => code in en.notices);
    expect(both).toEqual([]);
  });

  it('writes its apostrophes as printers do', () => {
    const straight = english.filter(({ kind, says }) => kind === 'text' && /\p{L}'\p{L}/u.test(says));
    expect(straight.map(({ path }) => path)).toEqual([]);
  });

  it('allows only names that the catalogue has', () => {
    const known = new Set(english.map(({ path }) => path));
    expect([...SAME_IN_GERMAN].filter((path) => !known.has(path))).toEqual([]);
  });
});

describe('closestLanguage', () => {
  it('takes the first wish that is spoken, whatever its region', () => {
    expect(closestLanguage(['fr-FR', 'de-AT', 'en'])).toBe('de');
    expect(closestLanguage(['EN-us'])).toBe('en');
  });
  it('falls back to English', () => {
    expect(closestLanguage([])).toBe('en');
    expect(closestLanguage(['ja'])).toBe('en');
  });
});

describe('a number that rounds to nothing', () => {
  it.each([
    ['en', '0.00 seconds', '-0.06 seconds'],
    ['de', '0,0 Sekunden', '-0,1 Sekunden'],
  ] as const)('has no minus sign: %s', (code, nothing, little) => {
    const { placeAt } = wordsOf(code).recording;
    expect(placeAt({ seconds: -0.004 })).toBe(nothing);
    expect(placeAt({ seconds: -0.06 })).toBe(little);
  });
});
