/** What several screens have in common. */
import type { parts as english } from '../en/parts.ts';
import type { Translated } from '../entries/translated.ts';

export const parts: Translated<typeof english> = {
  title: 'Landfall',
  putAway: ({ sentence }) => `Diese Meldung schließen: ${sentence}`,
  newer: {
    waits:
      'Ein neueres Landfall liegt auf diesem Gerät bereit. Takes und Einstellungen bleiben, wie sie sind.',
    use: 'Jetzt verwenden',
  },
  bar: ({ bar }) => `Takt ${bar}:`,
  tap: 'Tippen',
  tapWhy: 'Tippe den Schlag mindestens viermal',
  name: 'Benennen',
  nameTake: ({ title }) => `${title} benennen`,
  takeName: 'Name des Takes',
  keepName: 'Namen behalten',
  hold: 'Mit Stern markieren',
  holdTake: ({ title }) => `${title} mit Stern markieren`,
  bandBar: ({ bar }) => `Takt ${bar}, die Band ist dran:`,
  cancel: 'Abbrechen',
  barsNotDrawn: ({ from, to }) => `Takte ${from} bis ${to}`,
  goesOn: 'geht weiter',
  demo: 'Beispiel-Take',
  earlierLanding: ({ chorus, landing }) => `Chorus ${chorus}. ${landing}`,
  landing: ({ chord, role, degree, timing }) =>
    `${chord}: ${[role, degree, timing].filter((part) => part !== '').join(', ')}.`,
  onTheBeat: 'auf dem Schlag',
  early: ({ ms }) => `${ms} ms zu früh`,
  late: ({ ms }) => `${ms} ms zu spät`,
  inTune: 'sauber',
  cents: ({ cents }) => `${cents < 0 ? '−' : '+'}${Math.abs(cents)} Cent`,
  ofAll: ({ count, all }) => `${count} von ${all}`,
  key: ({ tonic, mode }) =>
    mode === 'minor' ? `${tonic.charAt(0).toLowerCase()}${tonic.slice(1)}-Moll` : `${tonic}-Dur`,
  titleInKey: ({ title, key }) => `${title} in ${key}`,

  // Die Zeichen der Rollen.
  marks: 'Die Zeichen',
  open: 'Pause',
  meanings: {
    root: 'der Ton, nach dem der Akkord heißt',
    third: 'sagt, ob Dur oder Moll',
    fifth: 'ein Akkordton, der wenig über den Akkord sagt',
    seventh: 'führt zur Terz des nächsten Akkords; die Sexte eines 6-Akkords zählt als Septime',
    extension: 'eine 9, 11 oder 13, die im Symbol steht',
    colour: 'nicht im Akkord, aber in den Skalen, aus denen du spielst',
    blue: 'zwischen den beiden Terzen, oder die verminderte Quinte',
    outside: 'weder im Akkord noch in den Skalen',
    open: 'beim Wechsel nichts gespielt: extra gezählt, nie als Fehler',
  },

  // Was ein Screenreader für die Zeichen sagt.
  signs: {
    flat: 'b',
    sharp: 'Kreuz',
    doubleSharp: 'Doppelkreuz',
    majorSeventh: 'große Septime',
    halfDiminished: 'halbvermindert',
    diminished: 'vermindert',
    minor: 'Moll',
    over: 'über',
  },
};
