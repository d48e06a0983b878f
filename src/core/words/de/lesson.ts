/** The teacher’s desk, and the table of a class. */
import { percent, decimal } from './grammar.ts';
import type { lesson as english } from '../en/lesson.ts';
import type { Translated } from '../entries/translated.ts';

export const lesson: Translated<typeof english> = {
  attention: {
    doubtful: 'zuerst ansehen',
    'not reached': 'nicht erreicht',
    'too short': 'zu kurz für ein Urteil',
    reached: 'erreicht',
  },
  doubts: {
    'another sheet': 'für ein anderes Aufgabenblatt gespielt',
    'moved key': ({ tonic }) => `passt viel besser zu ${tonic}: in anderer Tonart gespielt?`,
    'moved time': ({ beats }) =>
      `passt viel besser, wenn der Chart ${Math.abs(beats) === 1 ? 'einen Schlag' : `${Math.abs(beats)} Schläge`} ${beats > 0 ? 'später' : 'früher'} beginnt: verschoben?`,
    band: 'die Band kam durch das Mikrofon und wurde herausgenommen',
    delay: 'der ganze Take liegt zu früh oder zu spät',
    'lost sound': 'Klang ging verloren',
    corrected: 'von Hand berichtigt, bewertet wie gehört',
    'few notes': 'kaum Töne',
  },
  columns: {
    student: 'Schüler',
    attention: 'Stand',
    aim: 'Ziel',
    thirds: 'Landungen auf Terzen',
    weakest: 'Schwächster Wechsel',
    tries: 'Versuche',
    doubts: 'Zweifel',
    sheet: 'Aufgabenblatt',
    file: 'Datei',
  },
  noAim: 'kein Ziel',
  noWeakest: 'keiner verfehlt',
  counted: ({ hits, of, low, high }) =>
    of === 0
      ? 'keine gespielt'
      : `${hits} von ${of}` +
        (low === null || high === null ? '' : ` (${Math.round(100 * low)} bis ${percent(high)})`),
  besideLuck: ({ hits, of, expected }) =>
    of === 0
      ? 'keine gespielt'
      : `${hits} von ${of}` + (expected === null ? '' : `, Zufall ergibt ${decimal(expected, 1)}`),
  change: ({ from, to, bar }) => `${from === null ? to : `${from} nach ${to}`} (Takt ${bar})`,
  weakest: ({ change, hits, of }) => `${change}, ${hits} von ${of}`,
  tries: ({ takes, tryNumber }) =>
    tryNumber === null ? String(takes) : `${takes}; hier Versuch ${tryNumber}`,
  desk: {
    title: 'Das Lehrerpult',
    back: 'Zurück',
    lead: 'Zieh einen Ordner hierher: Takes, die zurückgekommen sind, Aufnahmen und das Aufgabenblatt. Jeder Take wird auf diesem Rechner aus seinem Klang neu bewertet: Eine Bewertung, die eine Datei mitbringt, zählt nicht. Nichts verlässt diesen Rechner, und nichts wird aufgehoben.',
    chooseFolder: 'Ordner wählen',
    chooseFiles: 'Dateien wählen',
    clear: 'Pult leeren',
    sheets: 'Aufgabenblätter',
    noSheet:
      'Noch kein Aufgabenblatt: Takes mit eigenem Blatt werden nach diesem bewertet; Aufnahmen brauchen eines.',
    firstBeat: ({ recordings }) =>
      `In ${recordings === 1 ? 'der einfachen Aufnahme' : `allen ${recordings} einfachen Aufnahmen`} beginnt der erste Takt des Charts bei`,
    progress: ({ done, of }) => `${done} von ${of} bewertet`,
    cancel: 'Hier aufhören',
    table: 'Wer dich zuerst braucht',
    counted: ({ rows, takes }) =>
      `${rows === 1 ? 'Eine Zeile' : `${rows} Zeilen`}, ${takes === 1 ? 'ein Take' : `${takes} Takes`}. In Klammern steht, was der Anteil in Wahrheit sein kann (95 %).`,
    length: 'Dauer',
    review: ({ student }) => `Take von ${student} öffnen`,
    written: 'Antwort begonnen',
    map: 'Welcher Wechsel bei wem misslingt',
    mapOf: ({ sheet }) => `Welcher Wechsel bei wem misslingt: ${sheet}`,
    change: 'Wechsel',
    landed: 'Terz oder Septime',
    missedBy: 'Weniger als die Hälfte',
    nobody: 'niemand',
    failed: ({ files }) =>
      files === 1 ? 'Eine Datei war nicht zu bewerten' : `${files} Dateien waren nicht zu bewerten`,
    saveCsv: 'Tabelle speichern (CSV)',
    savePage: 'Seite zum Drucken speichern',
    backToDesk: 'Zurück zum Pult',
    answer: ({ student }) => `Deine Antwort an ${student}`,
    gradedHere:
      'Diese Bewertung wurde hier aus dem Klang berechnet. Der Take steht nicht unter deinen eigenen.',
    note: 'Zum ganzen Take',
    comments: 'Kommentare zu Takten',
    chorus: 'Chorus',
    bar: 'Takt',
    comment: 'Kommentar',
    add: 'Kommentar hinzufügen',
    remove: ({ place }) => `Kommentar zu ${place} entfernen`,
    place: ({ chorus, bar }) => `Chorus ${chorus}, Takt ${bar}`,
    give: 'Antwort als Datei speichern',
    howToGive: 'Schick die Datei deinem Schüler: Sie öffnet sich in Landfall neben dem Take.',
  },
  page: {
    title: ({ sheet }) => `Klasse: ${sheet}`,
    students: ({ students, takes }) => `${students} Schüler, ${takes === 1 ? 'ein Take' : `${takes} Takes`}`,
    changes: 'Die Wechsel der Form, über die ganze Klasse',
    changesOf: ({ sheet }) => `Die Wechsel von „${sheet}“, über die ganze Klasse`,
    changeLine: ({ hits, of, missedBy }) =>
      `${hits} von ${of} auf Terz oder Septime` +
      (missedBy.length === 0 ? '' : `; weniger als die Hälfte bei ${missedBy.join(', ')}`),
    failed: 'Nicht bewertet',
    gradedBy: ({ version }) =>
      `Aus dem Klang bewertet von Landfall ${version}. Ein Bereich in Klammern ist, was der Anteil in Wahrheit sein kann (95 %).`,
  },
};
