/** The page on which the beats of a backing are set. */
import { several } from './grammar.ts';

export const backing = {
  title: 'Set the beats of your backing.',
  back: 'Back',
  throwAway: 'Throw it away',
  goOn: 'Continue editing',
  fallen: ({ name }: { name: string }) => `Open ${name} in place of this backing?`,
  keep: 'Use this backing',
  saveBeats: 'Save the beats as a table',
  busy: {
    reading: 'Now reading the backing …',
    listening: 'Now listening for its beats …',
    'finding chords': 'Now listening for its beats and chords …',
  },
  /** The chart that is found in the recording and proposed. */
  found: {
    heading: 'Chords of your backing',
    /** Stands behind the first chord. */
    ask: ({ bars, bpm, choruses }: { bars: number; bpm: number; choruses: number }) =>
      `${several(bars, 'bar')}, ${bpm} bpm, ${several(choruses, 'chorus', 'choruses')}: right?`,
    right: 'Right, play to it',
    nothing: 'No chords were found: write the chart below.',
    allSure: 'Every bar is sure.',
    unsure: ({ bars, of }: { bars: number; of: number }) =>
      `${bars} of ${several(of, 'bar')} ${bars === 1 ? 'is' : 'are'} not sure: look at the ones with a question mark.`,
    bar: ({ bar, chords, sure }: { bar: number; chords: string; sure: boolean }) =>
      `Bar ${bar}: ${chords}${sure ? '' : ', not sure'}`,
    instead: ({ bar }: { bar: number }) => `Bar ${bar} instead:`,
    press: 'Press a bar to change it.',
    length: 'Bars of the form',
    form: ({ title, key, alike }: { title: string; key: string; alike: number }) =>
      alike > 0.995 ? `This is “${title}” in ${key}.` : `This is nearly “${title}” in ${key}.`,
    takeForm: 'Take this form',
    takeFound: 'Take the chords that were found',
    again: 'Find the chords again',
    overBeats: 'Find the chords over these beats',
    stop: 'Stop searching',
    done: 'Share of the search that is done',
  },
  help:
    'Space plays and taps. Drag a beat, or move it with the arrow keys; its neighbours follow. Press twice between ' +
    'two beats to add one.',
  beats: 'Beats',
  facts: 'Name, meter, tuning and chart',

  // The beats over the sound.
  noBeatChosen: 'No beat is chosen',
  beatBefore: ({ beats, time }: { beats: number; time: string }) =>
    `${several(beats, 'beat')} before bar 1, at ${time}`,
  beatAt: ({ bar, beat, time }: { bar: number; beat: number; time: string }) =>
    `Bar ${bar}, beat ${beat}, at ${time}`,
  setByHand: ({ beat }: { beat: string }) => `${beat}, set by hand`,
  wave: 'Beats of the backing. Up and down choose a beat, left and right move it by 10 milliseconds',
  inSight: 'Part of the backing that is shown',
  inSightFrom: ({ seconds }: { seconds: number }) => `from ${several(seconds, 'second')}`,

  // Playing and tapping.
  pause: 'Pause',
  tap: 'Tap a beat',
  play: 'Play with clicks',
  taps: ({ taps, bpm }: { taps: number; bpm: number | null }) =>
    `${several(taps, 'tap')}${bpm === null ? '' : `, ${bpm} a minute`}`,
  useTaps: 'Use the taps as beats',
  forgetTaps: 'Delete the taps',
  findAgain: 'Find the beats again',
  wide: 'Length shown',
  seconds: ({ seconds }: { seconds: number }) => several(seconds, 'second'),

  // What can be done with the beats.
  noBeats: 'No beats yet.',
  /** Stands behind the tempo. */
  tempoAndBars: ({ bars }: { bars: number }) => `beats a minute in the middle, ${several(bars, 'bar')}.`,
  otherTempos: 'Count it in another way:',
  countOther: ({ level, bpm }: { level: 'a third' | 'half' | 'twice' | 'three times'; bpm: number }) =>
    `Count ${level}: ${bpm} beats a minute`,
  chosenBeat: 'The chosen beat',
  chooseBeat: 'Choose a beat: press it, or use the arrow keys.',
  barOne: 'Bar 1 begins here',
  playFrom: 'Play from here',
  earlier: '10 ms earlier',
  later: '10 ms later',
  release: 'Do not fix it',
  hold: 'Fix it here',
  addBehind: 'Add one behind it',
  takeOut: 'Remove it',
  evenOut: 'Even out between fixed beats',
  continueTempo: 'Continue at this tempo',
  undo: 'Undo',

  // Name, meter, swing, tuning.
  name: 'Name',
  meter: 'Meter',
  eighths: 'Eighths',
  swings: { straight: 'straight', little: 'a little swung', swung: 'swung', shuffled: 'shuffled' },
  tunedTo: 'Tuned to',
  reference: ({ hz }: { hz: number }) => `A = ${hz} Hz`,
};
