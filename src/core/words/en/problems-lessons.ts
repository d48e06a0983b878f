/** Problems of lesson sheets, answers, aims and stored reports. */
import { type FoundValue, type WantedValue, joinWith } from '../entries/entry.ts';
import { type Named, quoted } from './phrases.ts';

/** What a field of an aim has to look like. */
type AimForm = 'words' | 'id' | 'degree of the key' | 'tone' | 'tones';
const AIM_FORMS: Readonly<Record<AimForm, string>> = {
  words: 'some words',
  id: 'small letters, digits and hyphens',
  'degree of the key': 'a degree like "I", "IV" or "bVII"',
  tone: 'a role like "third", a degree like "b3", or one of the key like "key 3"',
  tones: 'at least one tone',
};

/** What a field of a file has to hold, after "write". */
const WANTED: Readonly<
  Record<Exclude<WantedValue, { readonly values: unknown } | { readonly limit: number }>['kind'], string>
> = {
  text: 'a text',
  number: 'a number',
  integer: 'a whole number',
  boolean: 'true or false',
  list: 'a list',
  object: 'an object with named fields',
  other: 'another value',
};

function wantedWords(wanted: WantedValue): string {
  if (wanted.kind === 'one of') return joinWith(wanted.values, 'or');
  if (wanted.kind === 'at least') return `${wanted.limit} or more`;
  if (wanted.kind === 'characters') return `at most ${wanted.limit} characters`;
  if (wanted.kind === 'entries') return `at most ${wanted.limit} entries`;
  return wanted.kind === 'at most' ? `${wanted.limit} or less` : WANTED[wanted.kind];
}

const FOUND = {
  null: 'an empty value (null)',
  nothing: 'nothing',
  list: 'a list',
  object: 'an object with named fields',
  unbounded: 'a number out of range',
} as const;

const foundWords = (found: FoundValue): string => (found.kind === 'value' ? found.json : FOUND[found.kind]);

export const problemsOfLessons = {
  // ── aims and reports ──
  // ── lesson sheets ──
  'sheetLink.tooLong': ({ characters, most }: { characters: number; most: number }) =>
    `With ${characters} characters the link is too long: it may have ${most}. Save the sheet as a file instead, or shorten its note, its chart or its example.`,
  'sheetLink.damaged':
    'The link holds no whole lesson sheet: it was cut or changed on its way. Copy it again, or ask for the sheet as a file.',
  'sheet.example': ({ most }: { most: number }) =>
    `This take can’t be the example: it has no notes that count, or more than ${most}.`,
  'answer.noTake': ({ title, student }: { title: string; student: string }) =>
    `The answer is about “${title}”${student === '' ? '' : ` by ${student}`}, and that take is not kept here. Open the answer on the machine where it was played, or first open the take’s file.`,
  'sheet.tooLong': ({ name, most }: Named & { most: number }) =>
    `${name} is longer than ${most} characters: that is no lesson sheet.`,
  'sheet.notJson': ({ name }: Named) =>
    `${name} is no lesson sheet: it is not JSON. Save the sheet again where it was written.`,
  'sheet.notSheet': ({ name }: Named) => `${name} is no lesson sheet: its "format" is not "landfall-sheet".`,
  'sheet.version': ({ name, found }: Named & { found: string }) =>
    `${name} is a lesson sheet of version ${found}, and this Landfall reads version 1: use a newer Landfall.`,
  'sheet.field': ({ name, field }: Named & { field: string }) =>
    `${name}: "${field}" is missing or can’t be read. landfall schema sheet prints what it may be.`,
  'class.noSheet': ({ name }: Named) =>
    `${name} comes without a lesson sheet: add the sheet that it is to be graded by.`,
  'answer.tooLong': ({ name, most }: Named & { most: number }) =>
    `${name} is longer than ${most} characters: that is no teacher’s answer.`,
  'answer.notJson': ({ name }: Named) =>
    `${name} is no teacher’s answer: it is not JSON. Ask for it to be sent again, as a file.`,
  'answer.notAnswer': ({ name }: Named) =>
    `${name} is no teacher’s answer: its "format" is not "landfall-answer".`,
  'answer.version': ({ name, found }: Named & { found: string }) =>
    `${name} is an answer of version ${found}, and this Landfall reads version 1: use a newer Landfall.`,
  'answer.field': ({ name, field }: Named & { field: string }) =>
    `${name}: "${field}" is missing or can’t be read. landfall schema answer prints what it may be.`,
  'aim.field': ({
    field,
    found,
    wanted,
  }: {
    field: string | null;
    found: FoundValue;
    wanted: WantedValue;
  }) =>
    found.kind === 'nothing' && field !== null
      ? `The aim has no field "${field}"; the page src/pages/aims.md has an example.`
      : `${field === null ? 'The aim' : `The field "${field}" of the aim`} can’t be read: found ${foundWords(found)}, write ${wantedWords(wanted)}.`,
  'aim.form': ({ field, found, form }: { field: string; found: FoundValue; form: AimForm }) =>
    `The field "${field}" of the aim can’t be read: found ${foundWords(found)}, write ${AIM_FORMS[form]}.`,
  'aim.test': ({ test, events, tests }: { test: string; events: string; tests: readonly string[] }) =>
    `The aim can’t be read: its test "${test}" does not go with "${events}"; write ${joinWith(quoted(tests), 'or')}.`,
  'report.unreadable': ({
    field,
    wanted,
    found,
  }: {
    field: string | null;
    wanted: WantedValue;
    found: FoundValue;
  }) =>
    `${field === null ? 'This' : `Its field "${field}"`} is not what a Landfall report holds (expected ${wantedWords(wanted)}, found ${foundWords(found)}). ` +
    'Grade the take again to get a fresh report.',
};
