/** Problems of lesson sheets, answers, aims and stored reports. */
import { type FoundValue, type WantedValue, joinWith } from '../entries/entry.ts';
import { trimmed } from './grammar.ts';
import { quoted } from './phrases.ts';
import type { problemsOfLessons as english } from '../en/problems-lessons.ts';
import type { Facts, Translated } from '../entries/translated.ts';

type AimForm = Facts<(typeof english)['aim.form']>['form'];
const AIM_FORMS: Readonly<Record<AimForm, string>> = {
  words: 'ein paar Wörter',
  id: 'kleine Buchstaben, Ziffern und Bindestriche',
  'degree of the key': 'eine Stufe wie "I", "IV" oder "bVII"',
  tone: 'eine Rolle wie "third", eine Stufe wie "b3" oder eine der Tonart wie "key 3"',
  tones: 'mindestens einen Ton',
};

/** Was ein Feld einer Datei enthalten muss, hinter „schreib“. */
const WANTED: Readonly<
  Record<Exclude<WantedValue, { readonly values: unknown } | { readonly limit: number }>['kind'], string>
> = {
  text: 'einen Text',
  number: 'eine Zahl',
  integer: 'eine ganze Zahl',
  boolean: 'true oder false',
  list: 'eine Liste',
  object: 'ein Objekt mit benannten Feldern',
  other: 'einen anderen Wert',
};

function wantedWords(wanted: WantedValue): string {
  if (wanted.kind === 'one of') return joinWith(wanted.values, 'oder');
  if (wanted.kind === 'at least') return `mindestens ${trimmed(wanted.limit)}`;
  if (wanted.kind === 'characters') return `höchstens ${trimmed(wanted.limit)} Zeichen`;
  if (wanted.kind === 'entries') return `höchstens ${trimmed(wanted.limit)} Einträge`;
  return wanted.kind === 'at most' ? `höchstens ${trimmed(wanted.limit)}` : WANTED[wanted.kind];
}

const FOUND = {
  null: 'ein leerer Wert (null)',
  nothing: 'nichts',
  list: 'eine Liste',
  object: 'ein Objekt mit benannten Feldern',
  unbounded: 'eine Zahl außerhalb des Bereichs',
} as const;

const foundWords = (found: FoundValue): string => (found.kind === 'value' ? found.json : FOUND[found.kind]);

export const problemsOfLessons: Translated<typeof english> = {
  // ── aims and reports ──
  'sheetLink.tooLong': ({ characters, most }) =>
    `Mit ${characters} Zeichen ist der Link zu lang: ${most} dürfen es sein. Speichere das Aufgabenblatt stattdessen als Datei, oder kürze seinen Text, seine Akkorde oder sein Beispiel.`,
  'sheetLink.damaged':
    'Der Link enthält kein ganzes Aufgabenblatt: Er wurde unterwegs abgeschnitten oder verändert. Kopiere ihn noch einmal, oder lass dir das Blatt als Datei schicken.',
  'sheet.example': ({ most }) =>
    `Dieser Take kann kein Beispiel sein: Er hat keine Töne, die zählen, oder mehr als ${most}.`,
  'answer.noTake': ({ title, student }) =>
    `Die Antwort gilt „${title}“${student === '' ? '' : ` von ${student}`}, und dieser Take ist hier nicht aufbewahrt. Öffne die Antwort auf dem Gerät, auf dem er gespielt wurde, oder öffne zuerst die Datei des Takes.`,
  'sheet.tooLong': ({ name, most }) => `${name} ist länger als ${most} Zeichen: das ist kein Aufgabenblatt.`,
  'sheet.notJson': ({ name }) =>
    `${name} ist kein Aufgabenblatt: es ist kein JSON. Speichere das Blatt dort noch einmal, wo es geschrieben wurde.`,
  'sheet.notSheet': ({ name }) => `${name} ist kein Aufgabenblatt: sein "format" ist nicht "landfall-sheet".`,
  'sheet.version': ({ name, found }) =>
    `${name} ist ein Aufgabenblatt der Version ${found}, und dieses Landfall liest Version 1: Nimm ein neueres Landfall.`,
  'sheet.field': ({ name, field }) =>
    `${name}: „${field}“ fehlt oder ist nicht lesbar. landfall schema sheet zeigt, was dort stehen darf.`,
  'class.noSheet': ({ name }) =>
    `Zu ${name} fehlt ein Aufgabenblatt: Gib das Blatt dazu, nach dem bewertet werden soll.`,
  'answer.tooLong': ({ name, most }) =>
    `${name} ist länger als ${most} Zeichen: das ist keine Antwort einer Lehrkraft.`,
  'answer.notJson': ({ name }) =>
    `${name} ist keine Antwort einer Lehrkraft: es ist kein JSON. Lass sie dir noch einmal als Datei schicken.`,
  'answer.notAnswer': ({ name }) =>
    `${name} ist keine Antwort einer Lehrkraft: ihr "format" ist nicht "landfall-answer".`,
  'answer.version': ({ name, found }) =>
    `${name} ist eine Antwort der Version ${found}, und dieses Landfall liest Version 1: Nimm ein neueres Landfall.`,
  'answer.field': ({ name, field }) =>
    `${name}: „${field}“ fehlt oder ist nicht lesbar. landfall schema answer zeigt, was dort stehen darf.`,
  'aim.field': ({ field, found, wanted }) =>
    found.kind === 'nothing' && field !== null
      ? `Dem Ziel fehlt das Feld „${field}“; ein Beispiel steht in src/pages/aims.md.`
      : `${field === null ? 'Das Ziel' : `Das Feld „${field}“ des Ziels`} ist nicht lesbar: Gefunden wurde ${foundWords(found)}, schreib ${wantedWords(wanted)}.`,
  'aim.form': ({ field, found, form }) =>
    `Das Feld „${field}“ des Ziels ist nicht lesbar: Gefunden wurde ${foundWords(found)}, schreib ${AIM_FORMS[form]}.`,
  'aim.test': ({ test, events, tests }) =>
    `Das Ziel ist nicht lesbar: Sein Test „${test}“ passt nicht zu „${events}“; schreib ${joinWith(quoted(tests), 'oder')}.`,
  'report.unreadable': ({ field, wanted, found }) =>
    `${field === null ? 'Das' : `Sein Feld „${field}“`} passt nicht zu einem Bericht von Landfall (gefunden wurde ${foundWords(found)}, ein Bericht hat dort ${wantedWords(wanted)}). ` +
    'Bewerte den Take noch einmal, dann gibt es einen neuen Bericht.',
};
