/** The settings of the open page: the player, the display, how the form is practised, the sound of the band. */
import { several } from './grammar.ts';

export const settings = {
  // The player.
  player: {
    name: 'The player',
    landOn: 'Land on',
    instrument: 'Instrument',
    pitch: 'Chords and names',
    written: ({ pitch }: { pitch: string }) => `written for ${pitch}`,
    concert: 'at concert pitch',
    input: 'Heard by',
    microphone: 'the microphone',
    midi: 'MIDI',
    view: 'Shown on',
    noView: 'no instrument',
    midiFrom: ({ names }: { names: readonly string[] }) => `MIDI: ${names.join(', ')}.`,
    midiNone: 'MIDI: nothing is plugged in yet. The browser may ask before a page can use MIDI.',
    more: 'Display and hands-free control',
  },
  views: { neck: 'the neck', keyboard: 'a keyboard', staff: 'a staff' },
  instruments: {
    guitar: 'Guitar',
    'guitar-24': 'Guitar, 24 frets',
    'guitar-drop-d': 'Guitar, drop D',
    'guitar-half-down': 'Guitar, a half step down',
    'guitar-open-g': 'Guitar, open G',
    'guitar-dadgad': 'Guitar, D A D G A D',
    'guitar-7': 'Guitar, 7 strings',
    'guitar-8': 'Guitar, 8 strings',
    bass: 'Bass',
    'bass-5': 'Bass, 5 strings',
    violin: 'Violin',
    flute: 'Flute',
    clarinet: 'B♭ clarinet',
    trumpet: 'B♭ trumpet',
    'soprano-sax': 'Soprano sax (B♭)',
    'alto-sax': 'Alto sax (E♭)',
    'tenor-sax': 'Tenor sax (B♭)',
    'baritone-sax': 'Baritone sax (E♭)',
    trombone: 'Trombone',
    piano: 'Piano',
    voice: 'Voice',
  },

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

  // How the form is practised.
  practice: {
    closed: 'Practise a part of it',
    inUse: ({ parts }: { parts: readonly string[] }) => `Practising: ${parts.join(', ')}`,
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
    // Pieces of the summary.
    bars: ({ from, to }: { from: number; to: number }) => `bars ${from} to ${to}`,
    throughKeys: 'through the keys',
    fasterEvery: ({ bpm, choruses }: { bpm: number; choruses: number }) =>
      `${bpm} bpm faster every ${choruses === 1 ? 'chorus' : `${choruses} choruses`}`,
    turnsEach: ({ bars }: { bars: number }) => `turns of ${several(bars, 'bar')}`,
    overDrone: 'over a drone',
    chordsEverySecond: 'chords every second chorus',
    clickOn: 'click on 2 and 4',
  },

  // The sound of the band.
  sound: {
    band: 'Band',
    parts: { drums: 'Drums', bass: 'Bass', chords: 'Chords', line: 'Its solos', click: 'Click' },
    silent: 'silent',
    decibels: ({ level }: { level: number }) => `${level} decibels`,
    care:
      'It starts quiet: turn it up only until you hear the changes. Loud headphones harm hearing. Rest when a hand ' +
      'hurts or tingles; if it stays, see a clinician who knows musicians.',
    more: 'Levels of the parts, swing, count-in, tuning',
    swing: 'Swing',
    straight: 'straight',
    swingShare: ({ percent }: { percent: number }) => `${percent} per cent`,
    countIn: 'Count-in',
    bars: ({ bars }: { bars: number }) => several(bars, 'bar'),
    tunedTo: 'Tuned to',
    asPlayed: 'what I play',
    reference: ({ hz }: { hz: number }) => `A = ${hz} Hz`,
  },
};
