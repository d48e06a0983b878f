/** The open page: start, set list, sheet, the ways to other pages. */
import { percent } from './grammar.ts';

export const ready = {
  // On the button, while a take is opened.
  opening: {
    microphone: 'Opening the microphone …',
    band: 'Opening the band …',
    backing: 'Opening the recording …',
    sound: 'Opening the sound …',
    midi: 'Opening MIDI …',
    take: 'Opening the take …',
    demo: 'Opening the demo take …',
    program: 'Fetching the rest of Landfall …',
    rendering: ({ share }: { share: number }) => `Rendering the recording: ${percent(share)} …`,
    file: ({ name }: { name: string }) => `Opening ${name} …`,
  },
  language: 'Language',
  headline: 'Land on the chord as it arrives.',
  about:
    'You improvise over the form. Landfall names every note against its chord and shows you where your line ' +
    'lands at each change.',
  start: 'Start playing',
  demo: 'Hear the demo take',
  soundCheck: 'Sound check',
  startWithMidi: 'Start listens to MIDI, to hear your notes.',
  startWithMicrophone: 'Start asks for the microphone, to hear your notes.',
  howItGoes:
    'Nothing leaves this machine. One bar is counted in. Stop or the space bar ends the take, and you see where you ' +
    'landed. If you play through speakers, do the sound check once.',

  // The light of the page.
  light: 'Light',
  lights: { auto: 'Auto', day: 'Day', night: 'Night' },

  // Files to open.
  openRecording: 'Open a recording',
  undo: 'Undo the last change',
  hearBand: { band: 'Listen to the band', backing: 'Listen to the backing' },
  stopBand: 'Stop listening',
  halfStepDown: 'A half step down',
  halfStepUp: 'A half step up',
  tooManyFiles: 'Open one recording, or two files: the recording and the backing that is in it.',
  whichIsYou: 'In which of the two do you play?',
  otherIsBacking:
    'The other file is used as the backing. It is removed from your recording before your line is heard.',
  neither: 'In neither: cancel',

  // Three low notes start the band.
  startByNotes: {
    listening: 'Listening: after a rest, play the same low note three times to start the band.',
    closed: ({ input }: { input: 'microphone' | 'midi' }) =>
      `Three low notes will start the band once the browser allows ${input === 'midi' ? 'MIDI' : 'the microphone'}: press Start playing this first time.`,
    asleep: 'Touch the page or press a key; then it listens for three low notes.',
    stop: 'Stop listening',
  },

  // The set list and the sheet.
  setList: 'Set list',
  ownCharts: 'Your own',
  ownBacking: ({ length }: { length: string }) => `your own backing, ${length}`,
  inKey: ({ key }: { key: string }) => `in ${key}`,
  writeChart: 'Write a chart',
  ownChanges: 'your own changes, written in bars',
  sheet: 'The sheet',
  ownChart: 'Your own chart',
  form: 'Form',
  bars: 'Bars of the form',
  concertPitchChart: ({ pitch }: { pitch: string }) =>
    `Write it at concert pitch. The page shows it as written for ${pitch}.`,
  feel: 'Feel',
  tempo: 'Tempo',
  key: 'Key',
  choruses: 'Choruses',
  untilStopped: 'until I stop',
  feels: {
    shuffle: 'shuffle',
    swing: 'swing',
    straight: 'straight',
    'slow-blues': 'slow blues',
    funk: 'funk',
    bossa: 'bossa',
    rock: 'rock',
    ballad: 'ballad',
  },

  pages: {
    progress: 'What to practise today',
    classDesk: 'The teacher’s desk',
    help: 'What it means',
  },
  backing: {
    open: 'Bring your own backing',
  },
};
