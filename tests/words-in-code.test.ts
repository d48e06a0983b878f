/**
 * What a player reads stands in the catalogue (src/core/words) and nowhere else: no letters in the markup of a
 * component, and no sentence in a string of the code.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parse } from 'svelte/compiler';
import ts from 'typescript';
import { describe, expect, it } from 'vitest';
import { NOT_FOR_PLAYERS } from './words-not-for-players.ts';

const SRC = fileURLToPath(new URL('../src', import.meta.url));

/** Attributes that are read out or shown. */
const TOLD_ATTRIBUTES: ReadonlySet<string> = new Set([
  'aria-label',
  'aria-description',
  'title',
  'placeholder',
  'alt',
  'label',
]);

/** Letters that are not those of any language: signs, and the name of the program. */
const isWord = (text: string): boolean => /\p{L}{2}/u.test(text.replaceAll('Landfall', ''));

/** Three words in a row, or a capital and a second word. Chart text and lists of class names have no such rows. */
const isSentence = (text: string): boolean =>
  /(?:^|[\s(“"])\p{L}{2,}[,;:]? \p{Ll}{2,}[,;:]? \p{Ll}{2,}/u.test(text) ||
  /^\p{Lu}\p{Ll}+[,:]? \p{Ll}{2,}/u.test(text);

/** Codes that look like words: values of the report ("too short to tell"), and these. */
const CODES: ReadonlySet<string> = new Set([
  // Tests of an aim, as a teacher's file has them, and the form of a field.
  ...['is one of', 'is none of', 'has one of', 'has all of', 'degree of the key'],
  // Tones of a drone, groups of forms, what follows an attack.
  ...['root and fifth', 'one or two chords', 'pitch to come'],
  ...['note', 'landing', 'share', 'teaching'].flatMap((kind) => {
    const text = readFileSync(join(SRC, `core/take/${kind}-schema.ts`), 'utf8');
    return [...text.matchAll(/'([a-z0-9 ]+)'/gu)].map((match) => match[1]!);
  }),
]);

/** The strings of a piece of TypeScript, without those that tell a caller of a fault: `new RangeError(…)`. */
function sentencesIn(code: string): readonly string[] {
  const found: string[] = [];
  const visit = (node: ts.Node): void => {
    if (ts.isNewExpression(node) && node.expression.getText().endsWith('Error')) return;
    if (ts.isStringLiteral(node) || ts.isNoSubstitutionTemplateLiteral(node)) found.push(node.text);
    else if (ts.isTemplateExpression(node))
      found.push([node.head.text, ...node.templateSpans.map(({ literal }) => literal.text)].join('…'));
    ts.forEachChild(node, visit);
  };
  visit(ts.createSourceFile('code.ts', code, ts.ScriptTarget.Latest, true));
  return found.filter((text) => isSentence(text) && !CODES.has(text));
}

interface MarkupNode {
  readonly type: string;
  readonly name?: string;
  readonly data?: string;
  readonly value?: unknown;
}

/** The texts of the markup and of the attributes that are shown or read out, and sentences in its expressions. */
function wordsInMarkup(component: string): readonly string[] {
  const found: string[] = [];
  const visit = (node: unknown, inAttribute: string | null): void => {
    if (Array.isArray(node)) return node.forEach((inner) => visit(inner, inAttribute));
    if (typeof node !== 'object' || node === null) return;
    const { type, name, data, value } = node as MarkupNode;
    if (type === 'Attribute' || type === 'StyleDirective') return visit(value, name ?? '');
    if (type === 'Text' && (inAttribute === null || TOLD_ATTRIBUTES.has(inAttribute)) && isWord(data ?? ''))
      found.push(data!.trim());
    if (type === 'Literal' && typeof value === 'string' && isSentence(value)) found.push(value);
    if (type === 'TemplateElement') {
      const { raw } = value as { raw: string };
      if (isSentence(raw)) found.push(raw);
    }
    for (const inner of Object.values(node)) visit(inner, inAttribute);
  };
  visit(parse(component, { modern: true }).fragment, null);
  return found;
}

function wordsIn(path: string): readonly string[] {
  const text = readFileSync(join(SRC, path), 'utf8');
  if (!path.endsWith('.svelte')) return sentencesIn(text);
  const script = /<script[^>]*>([\s\S]*?)<\/script>/u.exec(text)?.[1] ?? '';
  return [...sentencesIn(script), ...wordsInMarkup(text)];
}

const sources = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .map((path) => path.split(sep).join('/'))
  .filter(
    (path) => /\.(ts|svelte)$/.test(path) && !path.endsWith('.d.ts') && !path.startsWith('core/words/'),
  );

describe('words in the code', () => {
  it('finds a sentence and lets chart text alone', () => {
    expect(sentencesIn("const a = 'There is no such bar.';")).toHaveLength(1);
    expect(sentencesIn('const a = `Bar ${n} holds no chord`;')).toHaveLength(1);
    expect(sentencesIn("throw new RangeError('a meter is one of these');")).toEqual([]);
    expect(sentencesIn("const a = '| G7 | C7 |'; const b = 'phrase end';")).toEqual([]);
    expect(wordsInMarkup('<p title="Play it">{note}</p>')).toEqual(['Play it']);
    expect(wordsInMarkup('<p class="two words">{a ? "Note before this" : b}</p>')).toEqual([
      'Note before this',
    ]);
  });

  const spoken = sources
    .map((path) => ({ path, words: wordsIn(path) }))
    .filter(({ words }) => words.length > 0);

  it('stand in the catalogue alone', () => {
    const wrong = spoken.filter(({ path }) => !(path in NOT_FOR_PLAYERS));
    expect(
      wrong,
      'Make an entry of the catalogue of each (src/core/words/README.md says how). Where no player reads it, ' +
        'give the file and the reason in tests/words-not-for-players.ts.',
    ).toEqual([]);
  });

  it('excuses only files that need it', () => {
    const needed = new Set(spoken.map(({ path }) => path));
    expect(
      Object.keys(NOT_FOR_PLAYERS).filter((path) => !needed.has(path)),
      'Take these off the list.',
    ).toEqual([]);
  });
});
