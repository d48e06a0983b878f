/** The screen that is played by. */
import { several } from './grammar.ts';
import type { playing as english } from '../en/playing.ts';
import type { Translated } from '../entries/translated.ts';

export const playing: Translated<typeof english> = {
  title: 'Beim Spielen',
  beatsInBar: ({ beats }) => `${beats} Schläge im Takt`,
  you: 'du',
  theBand: 'Band',
  turnFor: 'noch',
  countIn: 'Einzähler',
  chorus: 'Chorus',
  keyOf: ({ key, of }) => `, Tonart ${key} von ${of}`,
  ofChoruses: ({ choruses }) => ` von ${choruses}`,
  inKey: 'in',
  tempo: 'Tempo',
  stop: 'Stopp',
  stopKey: 'Leertaste',
  toReview: 'Zur Auswertung',
  demo: 'Beispiel-Take',
  microphoneLevel: 'Pegel des Mikrofons',
  microphone: 'Mikro',
  listening: 'hört zu',
  next: 'Danach:',
  inBeats: 'in',
  beats: ({ beats }) => (beats === 1 ? 'Schlag' : 'Schlägen'),
  aims: {
    'guide-tones': 'Terzen und Septimen',
    'chord-tones': 'Akkordtöne beim Wechsel',
    'third-over-one': 'die Terz über der I',
    'flat-third-into-third': 'die b3 in die 3',
    'add-the-sixth': 'die Sexte über der I',
    'add-the-ninth': 'die None über der I',
    'third-sixth-ninth': 'Terz, Sexte und None in einem Chorus',
    'third-on-arrival': 'Terzen beim Wechsel',
    'guide-tones-by-step': 'Guide Tones im Schritt',
    'phrases-end-on-chord-tones': 'Phrasenenden auf Akkordtönen',
    'off-the-third-over-four': 'ohne die große Terz der Tonart über der IV',
  },
  aimInHand: 'Das Ziel dieses Takes',
  aimSoFar: ({ hits, of }) => `bisher ${hits} von ${of}`,
  aimNow: 'jetzt',
  legend: {
    name: 'Was die Zeichen heißen',
    landHere: 'hier landest du als Nächstes',
    inChordNow: 'im Akkord von jetzt',
    fits: 'passt auch',
    heavyLine: 'deine Linie, im Akkord',
    lightLine: 'nicht im Akkord',
  },
  tonesToLandOn: 'Töne zum Landen',
  stays: 'bleibt',
  chords: 'Akkorde',
  form: 'Die Form',
  yourTurn: 'Du bist dran.',
  bandsTurn: 'Die Band ist dran: Hör zu.',
  youIn: 'du in',
  getReady: 'gleich du',
  listen: 'hör zu',

  // Band, Tempo, Swing und Einzähler beim Spielen.
  dials: {
    name: 'Band und Zeit',
    names: { band: 'Band', tempo: 'Tempo', swing: 'Swing', 'count-in': 'Einzähler' },
    less: {
      band: 'Band leiser',
      tempo: 'Tempo langsamer',
      swing: 'Swing gerader',
      'count-in': 'Einzähler kürzer',
    },
    more: {
      band: 'Band lauter',
      tempo: 'Tempo schneller',
      swing: 'mehr Swing',
      'count-in': 'Einzähler länger',
    },
    silent: 'stumm',
    straight: 'gerade',
    bars: ({ bars }) => several(bars, 'Takt', 'Takte'),
    bandCare: ({ level }) =>
      `Band ${level}. Lass sie so leise, dass du darüber reden kannst: Laute Musik schadet dem Gehör.`,
    tempoSet: ({ value, countingIn }) =>
      `Tempo ${value}: ${countingIn ? 'Es wird neu eingezählt' : 'gilt ab dem nächsten Take'}.`,
    swingSet: ({ value, countingIn }) =>
      `Swing ${value}: ${countingIn ? 'Es wird neu eingezählt' : 'gilt ab dem nächsten Take'}.`,
    countInSet: ({ value, countingIn }) =>
      `Einzähler ${value}: ${countingIn ? 'Es wird neu eingezählt' : 'gilt ab dem nächsten Take'}.`,
  },
};
