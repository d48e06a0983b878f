/** The page of a recording that is opened to be graded. */
import { decimal, several } from './grammar.ts';
import { trimmed } from './phrases.ts';

export const recording = {
  title: 'What did you play over?',
  reading: 'Reading the recording and looking for its tempo…',
  fromPulse: ({ bpm, seconds }: { bpm: number; seconds: number }) =>
    `The recording has ${trimmed(bpm, 1)} beats a minute, and its first beat is at ${decimal(seconds, 2)} s. Listen and look whether the bars fit.`,
  wanders: ({ bpm, seconds }: { bpm: number; seconds: number }) =>
    `The recording has about ${trimmed(bpm, 1)} beats a minute from ${decimal(seconds, 2)} s on, but its tempo changes: the bars can’t fit from beginning to end.`,
  fromLine: ({ bpm, seconds }: { bpm: number; seconds: number }) =>
    `The tempo was found from your line alone: probably ${trimmed(bpm, 1)}, from ${decimal(seconds, 2)} s on. Tap it if that is wrong.`,
  noTempo:
    'No steady tempo was found. Type it, or tap it while you listen, and say where the first bar begins.',
  chords: 'Chords of the recording',
  gradeByThis: 'Right, grade by this',
  /** The file that was opened is only a backing. */
  playToIt: 'It is a backing: play to it',
  noChords: {
    alone: 'No chords were found: one line sounds alone.',
    stopped: 'The search for chords was stopped.',
  },
  /** Stands behind why no chords were found. */
  chartStays: ({ chart, bars }: { chart: string; bars: number }) =>
    `It is graded by the chart on the stand: ${chart}, ${several(bars, 'bar')}.`,
  anotherChart: ({ chart, bars }: { chart: string; bars: number }) =>
    `It is graded by ${chart}, ${several(bars, 'bar')}, not by the chords that were found.`,
  chart: 'Chart',
  /** For a player of a transposing instrument, to whom all other screens show written pitch. */
  concertPitch: 'Key and chords stand here at concert pitch.',
  begins: 'Where the first bar begins',
  beatEarlier: 'A beat earlier',
  beatLater: 'A beat later',
  listen: 'Listen',
  pause: 'Pause',
  place: 'Place in the recording',
  placeAt: ({ seconds }: { seconds: number }) => `${decimal(seconds, 2)} seconds`,
  grade: 'Grade it',
  later: 'You can change all of this afterwards. A copy is kept among your takes, on this machine.',
  gradedBy: ({ chart, bpm, seconds }: { chart: string; bpm: number; seconds: number }) =>
    `Graded over ${chart} at ${trimmed(bpm, 1)} bpm, the first bar at ${decimal(seconds, 2)} s.`,
  change: 'Change that',
  leave: 'Leave it as it is',
};
