/** The page that says what to practise today. */
import { several } from './grammar.ts';
import type { progress as english } from '../en/progress.ts';
import type { Translated } from '../entries/translated.ts';

export const progress: Translated<typeof english> = {
  title: 'Von Tag zu Tag',
  back: 'Zurück',
  nothingYet:
    'Spiel einen Take: Am nächsten Tag stehen hier die Wechsel, die am schlechtesten gingen. Komm wieder, wenn du gespielt hast.',
  counted: ({ takes, days }) =>
    `${several(takes, 'Take', 'Takes')} an ${several(days, 'Tag', 'Tagen')}. Es zählt, wenn du beim Wechsel auf der Terz oder der Septime des Akkords landest; bei einem Ziel das, was das Ziel verlangt.`,
  today: 'Für heute',
  why: 'Die schwächsten Wechsel, die dran sind. Was gut geht, kommt nach längerer Zeit wieder, was nicht gut geht, morgen.',
  nothingDue: 'Heute ist nichts dran: Spiel, was du magst.',
  change: ({ from, to }) => `${from} nach ${to}`,
  met: ({ hits, of }) => `Terz oder Septime: ${hits} von ${several(of, 'Mal', 'Malen')}.`,
  lastPlayed: ({ days }) =>
    days <= 0 ? 'Heute gespielt.' : days === 1 ? 'Gestern gespielt.' : `Vor ${days} Tagen gespielt.`,
  practise: 'Jetzt üben',
  practiseNamed: ({ change }) => `Jetzt üben: ${change}`,
  byAim: 'Ziele',
  byForm: 'Formen',
  byChord: 'Akkorde',
  byKey: 'Tonarten',
  columns: { what: 'Was', course: 'Tag für Tag', counts: 'Insgesamt, und der Trend' },
  directions: {
    rising: 'wird besser',
    falling: 'geht zurück',
    steady: 'kein Trend zu erkennen',
    'too few': 'zu wenige Takes',
  },
  twoTakes: 'Zwei Takes nebeneinander',
  takeChoice: { first: 'Erster Take', second: 'Zweiter Take' },
  openTake: 'Öffnen',
  chorus: ({ chorus }) => `Chorus ${chorus}`,
  wholeTake: 'Insgesamt',
  differences: {
    better: 'Der zweite Take landet besser als der erste, und das ist mehr als Zufall.',
    worse: 'Der zweite Take landet schlechter als der erste, und das ist mehr als Zufall.',
    'no difference': 'Sie unterscheiden sich nicht mehr, als es zwei Takes vom selben Tag meistens tun.',
    'too few': 'In einem der beiden sind zu wenige Landungen, um etwas zu sagen.',
  },
};
