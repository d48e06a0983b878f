/** What the open page says in parts that are fetched once it stands: what is folded, a chart or a backing of the player's own, lessons. */
import { decimal, several } from './grammar.ts';

export const folded = {
  // What the playing screen shows.
  display: {
    tonesBy: 'Tones by',
    byDegree: 'degree',
    byName: 'name',
    frets: 'Frets',
    allFrets: 'all',
    fretsAtHand: 'where my hand is',
    fiveFrom: ({ fret }: { fret: number }) => `five from ${fret}`,
    capo: 'Capo',
    noCapo: 'none',
    capoAt: ({ fret }: { fret: number }) => `fret ${fret}`,
    clef: 'Clef',
    treble: 'treble',
    bassClef: 'bass',
    leftHanded: 'Left-handed',
    leftHandedWhy: 'the neck is mirrored',
    quiet: 'Quiet page',
    quietWhy: 'shows landings only, no live note: you listen instead of looking',
    speak: 'Say landings',
    speakWhy: 'for a screen reader',
  },

  // The screen is run with both hands on the instrument.
  handsFree: {
    learnedFoot: ({
      kind,
      number,
      channel,
      how,
    }: {
      kind: 'controller' | 'program' | 'note';
      number: number;
      channel: number;
      how: 'plain' | 'inverted' | 'presses only';
    }) => {
      const note = {
        plain: '',
        inverted: ', its low value is down',
        'presses only': ', it sends presses only',
      }[how];
      return `${kind} ${number} on channel ${channel}${note}`;
    },
    pedal: 'Foot switch sends',
    pedals: { space: 'space', pages: 'page down, page up', arrows: 'arrows', enter: 'enter' },
    repeat: 'Repeat automatically',
    repeatWhy: 'after the last chorus you see the result, then the next take is counted in',
    midiPedal: 'A MIDI pedal controls the screen',
    midiPedalWhy: 'start, stop, play again; hold it down after a take for the next aim',
    playedSignal: 'Three low notes start and stop',
    playedSignalWhy:
      'after a rest, play the same low note three times, evenly, within two seconds; for that this page listens all the time',
    pressSwitch: 'Press the switch and let it go.',
    letGo: 'Let it go.',
    switchIs: ({ foot }: { foot: string }) => `The switch is ${foot}.`,
    anyPedal: 'The switch is any damper, sostenuto or soft pedal, on any channel.',
    neverMind: 'Cancel',
    learn: 'Learn another switch',
    forget: 'Forget this switch',
    /** Stands before, between and behind the keys of the dials. */
    keysBefore: 'While playing,',
    keysBetween: 'choose band, tempo, swing and count-in;',
    keysAnd: 'and',
    keysAfter: 'change them.',
    /** A switch that was learned: "control 64 on channel 1". */
    foot: ({ kind, number, channel, how }: { kind: string; number: number; channel: number; how: string }) =>
      `${kind} ${number} on channel ${channel}${how}`,
  },

  // The ways to practise a part of the form.
  practiceWays: {
    fromBar: 'From bar',
    toBar: 'To bar',
    keys: 'Keys',
    oneKey: 'this one',
    cycles: {
      fourths: 'up a fourth each chorus',
      'half steps': 'up a half step each chorus',
      random: 'at random',
    },
    keyCount: 'How many keys',
    faster: 'Faster by, bpm',
    every: 'every',
    turns: 'Turns',
    noTurns: 'none, I play throughout',
    turnsOf: ({ bars }: { bars: number }) => `${several(bars, 'bar')} each, I begin`,
    over: 'Over',
    band: 'bass and chords',
    drones: { root: 'a drone on the root', 'root and fifth': 'a drone on root and fifth' },
    chordsRest: 'The chords rest every second chorus',
    click: 'A click on 2 and 4',
    turnsNote:
      'When it is the band’s turn, it plays an example of the tones you want to land on. Only your turns are graded.',
    sameBars: 'Your turns fall on the same bars each time: loop other bars to play the rest.',
    droneNote:
      'The chords of the chart are silent, but you are still graded by them. To practise over a single chord, write a chart with one chord.',
    chorusCount: ({ count }: { count: number }) => (count === 1 ? 'chorus' : `${count} choruses`),
  },

  // The levels of the parts, swing, count-in, tuning.
  levels: {
    parts: { drums: 'Drums', bass: 'Bass', chords: 'Chords', line: 'Its solos', click: 'Click' },
    swing: 'Swing',
    straight: 'straight',
    swingShare: ({ percent }: { percent: number }) => `${percent} per cent`,
    countIn: 'Count-in',
    bars: ({ bars }: { bars: number }) => several(bars, 'bar'),
    tunedTo: 'Tuned to',
    asPlayed: 'what I play',
    reference: ({ hz }: { hz: number }) => `A = ${hz} Hz`,
  },

  // A chart of the player's own.
  chart: {
    label: 'Your chart, bar by bar',
    example: '| A7 | D7 | A7 | % |',
    /** Two pieces of chart text stand before and behind each of the next. */
    twoChords: 'Two chords share a bar:',
    repeat: 'repeats a bar,',
    noChord: 'is no chord,',
    bass: 'puts E in the bass.',
    title: 'Title',
    keep: 'Keep it',
    keepOver: 'Keep it in place of the old one',
    rename: 'Rename',
    remove: 'Remove',
    stopReading: 'Stop reading the file',
    removeNamed: ({ title }: { title: string }) => `Remove ${title} from your own charts`,
    open: 'Open a chart',
    save: 'Save as MusicXML',
    file: 'A chart as text, MusicXML or MIDI',
  },

  // A backing in place of the band.
  backingOnStand: {
    yours: 'Your backing',
    soundsAt: ({ bpm, hz }: { bpm: number; hz: number }) =>
      `Your own backing, ${bpm} beats a minute as it is played. It sounds at A = ${decimal(hz, 1).replace('.0', '')} Hz.`,
    speed: 'Speed',
    asRecorded: 'as recorded',
    cents: 'Higher or lower, in cents',
    fromBar: 'From bar',
    toBar: 'To bar',
    choruses: 'Choruses',
    untilStopped: 'until I stop',
    allBars: 'All bars',
    edit: 'Beats and chart',
    backToBand: 'Back to the band',
    remove: 'Remove',
    removeNamed: ({ title }: { title: string }) => `Remove ${title}`,
    removeForGood: 'Remove for good',
    keepIt: 'Keep it',
  },

  lessons: {
    heading: 'Lessons',
    why: 'A lesson sheet is a small file or a link: a chart, a tempo, what to land on. The student plays it and gives the take back.',
    open: 'Open a sheet or an answer',
    write: 'Write a lesson sheet',
  },
};
