/** The page on which the beats of a backing are set. */
import { several } from './grammar.ts';
import type { backing as english } from '../en/backing.ts';
import type { Translated } from '../entries/translated.ts';

export const backing: Translated<typeof english> = {
  title: 'Setz die Schläge deiner Begleitung.',
  back: 'Zurück',
  throwAway: 'Verwerfen',
  goOn: 'Weiter bearbeiten',
  fallen: ({ name }) => `${name} statt dieser Begleitung öffnen?`,
  keep: 'Diese Begleitung nehmen',
  saveBeats: 'Schläge als Tabelle speichern',
  busy: {
    reading: 'Die Begleitung wird gelesen …',
    listening: 'Ihre Schläge werden gesucht …',
    'finding chords': 'Ihre Schläge und Akkorde werden gesucht …',
  },
  found: {
    heading: 'Akkorde deiner Begleitung',
    ask: ({ bars, bpm, choruses }) =>
      `${several(bars, 'Takt', 'Takte')}, Tempo ${bpm}, ${several(choruses, 'Chorus', 'Chorusse')}: Stimmt das?`,
    right: 'Stimmt, spielen',
    nothing: 'Es wurden keine Akkorde gefunden: Schreib den Chart unten auf.',
    allSure: 'Jeder Takt ist sicher.',
    unsure: ({ bars, of }) =>
      `${bars} von ${several(of, 'Takt', 'Takten')} ${bars === 1 ? 'ist' : 'sind'} nicht sicher: Sieh dir die mit einem Fragezeichen an.`,
    bar: ({ bar, chords, sure }) => `Takt ${bar}: ${chords}${sure ? '' : ', nicht sicher'}`,
    instead: ({ bar }) => `Takt ${bar} stattdessen:`,
    press: 'Drück auf einen Takt, um ihn zu ändern.',
    length: 'Takte der Form',
    form: ({ title, key, alike }) =>
      alike > 0.995 ? `Das ist „${title}“ in ${key}.` : `Das ist fast „${title}“ in ${key}.`,
    takeForm: 'Diese Form nehmen',
    takeFound: 'Die gefundenen Akkorde nehmen',
    again: 'Akkorde noch einmal suchen',
    overBeats: 'Akkorde über diesen Schlägen suchen',
    stop: 'Suche beenden',
    done: 'Wie viel der Suche getan ist',
  },
  help:
    'Die Leertaste spielt ab und tippt Schläge. Zieh einen Schlag oder beweg ihn mit den Pfeiltasten; die Nachbarn folgen. ' +
    'Drück zweimal zwischen zwei Schläge, um einen einzufügen.',
  beats: 'Schläge',
  facts: 'Name, Taktart, Stimmung und Chart',

  // Die Schläge über dem Klang.
  noBeatChosen: 'Kein Schlag gewählt',
  beatBefore: ({ beats, time }) => `${several(beats, 'Schlag', 'Schläge')} vor Takt 1, bei ${time}`,
  beatAt: ({ bar, beat, time }) => `Takt ${bar}, Schlag ${beat}, bei ${time}`,
  setByHand: ({ beat }) => `${beat}, von Hand gesetzt`,
  wave: 'Schläge der Begleitung. Auf und ab wählen einen Schlag, links und rechts bewegen ihn um 10 Millisekunden',
  inSight: 'Sichtbarer Teil der Begleitung',
  inSightFrom: ({ seconds }) => `ab ${seconds === 1 ? '1 Sekunde' : `${seconds} Sekunden`}`,

  // Abspielen und tippen.
  pause: 'Anhalten',
  tap: 'Schlag tippen',
  play: 'Mit Klicks abspielen',
  taps: ({ taps, bpm }) =>
    `${taps} ${taps === 1 ? 'Schlag' : 'Schläge'} getippt${bpm === null ? '' : `, ${bpm} in der Minute`}`,
  useTaps: 'Getippte Schläge übernehmen',
  forgetTaps: 'Getippte Schläge löschen',
  findAgain: 'Schläge neu suchen',
  wide: 'Gezeigte Länge',
  seconds: ({ seconds }) => several(seconds, 'Sekunde', 'Sekunden'),

  // Was mit den Schlägen geschehen kann.
  noBeats: 'Noch keine Schläge.',
  tempoAndBars: ({ bars }) => `Schläge in der Minute im Mittel, ${several(bars, 'Takt', 'Takte')}.`,
  otherTempos: 'Anders gezählt:',
  countOther: ({ level, bpm }) =>
    `${{ 'a third': 'Ein Drittel', half: 'Halb', twice: 'Doppelt', 'three times': 'Dreifach' }[level]} zählen: ${bpm} Schläge in der Minute`,
  chosenBeat: 'Der gewählte Schlag',
  chooseBeat: 'Wähl einen Schlag: Drück darauf oder benutz die Pfeiltasten.',
  barOne: 'Takt 1 beginnt hier',
  playFrom: 'Ab hier abspielen',
  earlier: '10 ms früher',
  later: '10 ms später',
  release: 'Nicht festlegen',
  hold: 'Hier festlegen',
  addBehind: 'Einen dahinter einfügen',
  takeOut: 'Entfernen',
  evenOut: 'Zwischen festgelegten Schlägen ausgleichen',
  continueTempo: 'In diesem Tempo weiter',
  undo: 'Rückgängig',

  // Name, Taktart, Swing, Stimmung.
  name: 'Name',
  meter: 'Taktart',
  eighths: 'Achtel',
  swings: { straight: 'gerade', little: 'leicht geswingt', swung: 'geswingt', shuffled: 'Shuffle' },
  tunedTo: 'Gestimmt auf',
  reference: ({ hz }) => `A = ${hz} Hz`,
};
