/** The screen that is played by. */
import { several } from './grammar.ts';

export const playing = {
  title: 'Playing',
  beatsInBar: ({ beats }: { beats: number }) => `${beats} beats in the bar`,
  you: 'you',
  theBand: 'band',
  /** Between whose turn it is and how many bars it still lasts. */
  turnFor: 'for',
  countIn: 'count-in',
  /** Before and behind the number of the chorus. */
  chorus: 'chorus',
  keyOf: ({ key, of }: { key: number; of: number }) => `, key ${key} of ${of}`,
  ofChoruses: ({ choruses }: { choruses: number }) => ` of ${choruses}`,
  inKey: 'in',
  tempo: 'tempo',
  stop: 'Stop',
  stopKey: 'space',
  toReview: 'To the review',
  demo: 'demo take',
  microphoneLevel: 'Level of the microphone',
  microphone: 'mic',
  listening: 'listening',
  next: 'Next:',
  /** Before and behind the number of beats until the next chord. */
  inBeats: 'in',
  beats: ({ beats }: { beats: number }) => (beats === 1 ? 'beat' : 'beats'),
  /** The aim in hand at the head of the stage, by its id, as short as it can be said. */
  aims: {
    'guide-tones': 'thirds and sevenths',
    'chord-tones': 'chord tones as they arrive',
    'third-over-one': 'the third over the I',
    'flat-third-into-third': 'the b3 into the 3',
    'add-the-sixth': 'the sixth over the I',
    'add-the-ninth': 'the ninth over the I',
    'third-sixth-ninth': 'third, sixth and ninth in one chorus',
    'third-on-arrival': 'thirds as they arrive',
    'guide-tones-by-step': 'guide tones by step',
    'phrases-end-on-chord-tones': 'phrase ends on chord tones',
    'off-the-third-over-four': 'off the key’s major third over the IV',
  },
  aimInHand: 'The aim in hand',
  aimSoFar: ({ hits, of }: { hits: number; of: number }) => `${hits} of ${of} so far`,
  /** Before the tones that the aim asks for while the chord lasts. */
  aimNow: 'now',
  // One line on the first take.
  legend: {
    name: 'What the marks mean',
    landHere: 'land here next',
    inChordNow: 'in the chord now',
    fits: 'fits as well',
    heavyLine: 'your line, in the chord',
    lightLine: 'not in the chord',
  },
  tonesToLandOn: 'Tones to land on',
  stays: 'stays',
  chords: 'Chords',
  form: 'The form',
  yourTurn: 'Your turn.',
  bandsTurn: 'The band’s turn: listen.',
  youIn: 'you in',
  getReady: 'get ready',
  listen: 'listen',

  // Band, tempo, swing and count-in while playing. The keys that choose them are in every language b, t, s and c.
  dials: {
    name: 'Band and time',
    names: { band: 'band', tempo: 'tempo', swing: 'swing', 'count-in': 'count-in' },
    less: {
      band: 'band quieter',
      tempo: 'tempo slower',
      swing: 'swing straighter',
      'count-in': 'count-in shorter',
    },
    more: {
      band: 'band louder',
      tempo: 'tempo faster',
      swing: 'swing more',
      'count-in': 'count-in longer',
    },
    silent: 'silent',
    straight: 'straight',
    bars: ({ bars }: { bars: number }) => several(bars, 'bar'),
    bandCare: ({ level }: { level: string }) =>
      `Band ${level}. Keep it low enough to talk over: loud sound harms hearing.`,
    tempoSet: ({ value, countingIn }: { value: string; countingIn: boolean }) =>
      `Tempo ${value}: ${countingIn ? 'it counts in again' : 'from the next take on'}.`,
    swingSet: ({ value, countingIn }: { value: string; countingIn: boolean }) =>
      `Swing ${value}: ${countingIn ? 'it counts in again' : 'from the next take on'}.`,
    countInSet: ({ value, countingIn }: { value: string; countingIn: boolean }) =>
      `Count-in ${value}: ${countingIn ? 'it counts in again' : 'from the next take on'}.`,
  },
};
