/** The open page: start, set list, sheet, the ways to other pages. */
import { percent } from './grammar.ts';
import type { ready as english } from '../en/ready.ts';
import type { Translated } from '../entries/translated.ts';

export const ready: Translated<typeof english> = {
  opening: {
    microphone: 'Mikrofon wird geöffnet …',
    band: 'Band wird geladen …',
    backing: 'Aufnahme wird geöffnet …',
    sound: 'Klang wird gestartet …',
    midi: 'MIDI wird geöffnet …',
    take: 'Take wird geöffnet …',
    demo: 'Beispiel-Take wird geladen …',
    program: 'Der Rest von Landfall wird geladen …',
    rendering: ({ share }) => `Aufnahme wird berechnet: ${percent(share)} …`,
    file: ({ name }) => `${name} wird geöffnet …`,
  },
  language: 'Sprache',
  headline: 'Lande auf dem Akkord, wenn er kommt.',
  about:
    'Du improvisierst über die Form. Landfall benennt jeden Ton nach seinem Akkord und zeigt dir, wo deine Linie bei ' +
    'jedem Wechsel landet.',
  start: 'Spielen',
  demo: 'Beispiel-Take anhören',
  soundCheck: 'Soundcheck',
  startWithMidi: '„Spielen“ hört deine Töne über MIDI.',
  startWithMicrophone: '„Spielen“ fragt nach dem Mikrofon, um deine Töne zu hören.',
  howItGoes:
    'Nichts verlässt diesen Rechner. Ein Takt wird eingezählt. „Stopp“ oder die Leertaste beendet den Take, und du ' +
    'siehst, wo du gelandet bist. Spielst du über Lautsprecher, mach einmal den Soundcheck.',

  // Das Licht der Seite.
  light: 'Licht',
  lights: { auto: 'Auto', day: 'Tag', night: 'Nacht' },

  // Dateien zum Öffnen.
  openRecording: 'Aufnahme öffnen',
  undo: 'Letzte Änderung zurücknehmen',
  hearBand: { band: 'Band anhören', backing: 'Begleitung anhören' },
  stopBand: 'Nicht mehr anhören',
  halfStepDown: 'Einen Halbton tiefer',
  halfStepUp: 'Einen Halbton höher',
  tooManyFiles:
    'Öffne eine Aufnahme oder zwei Dateien: die Aufnahme und die Begleitung, die darin zu hören ist.',
  whichIsYou: 'In welcher der beiden spielst du?',
  otherIsBacking:
    'Die andere Datei gilt als Begleitung. Sie wird aus deiner Aufnahme entfernt, bevor deine Linie gehört wird.',
  neither: 'Keine: schließen',

  // Drei tiefe Töne starten die Band.
  startByNotes: {
    listening: 'Hört zu: Spiel nach einer Pause dreimal denselben tiefen Ton, und die Band beginnt.',
    closed: ({ input }) =>
      `Drei tiefe Töne starten die Band, sobald der Browser ${input === 'midi' ? 'MIDI' : 'das Mikrofon'} erlaubt: Drück dieses erste Mal auf „Spielen“.`,
    asleep: 'Berühre die Seite oder drück eine Taste, dann hört sie auf drei tiefe Töne.',
    stop: 'Nicht mehr zuhören',
  },

  // Die Setlist und das Blatt.
  setList: 'Setlist',
  ownCharts: 'Eigene',
  ownBacking: ({ length }) => `eigene Begleitung, ${length}`,
  inKey: ({ key }) => `in ${key}`,
  writeChart: 'Eigenen Chart schreiben',
  ownChanges: 'deine eigenen Akkorde, Takt für Takt',
  sheet: 'Das Blatt',
  ownChart: 'Dein Chart',
  form: 'Form',
  bars: 'Takte der Form',
  concertPitchChart: ({ pitch }) => `Schreib klingend. Die Seite zeigt es notiert in ${pitch}.`,
  feel: 'Feel',
  tempo: 'Tempo',
  key: 'Tonart',
  choruses: 'Chorusse',
  untilStopped: 'bis ich aufhöre',
  feels: {
    shuffle: 'Shuffle',
    swing: 'Swing',
    straight: 'gerade',
    'slow-blues': 'langsamer Blues',
    funk: 'Funk',
    bossa: 'Bossa',
    rock: 'Rock',
    ballad: 'Ballade',
  },

  pages: {
    progress: 'Was heute üben?',
    classDesk: 'Das Lehrerpult',
    help: 'Was es bedeutet',
  },
  backing: {
    open: 'Eigene Begleitung öffnen',
  },
};
