/** The settings of the open page: the player, what is practised in a few words, the sound of the band. What is folded stands in `folded.ts`. */
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

  // How the form is practised.
  practice: {
    closed: 'Practise a part of it',
    inUse: ({ parts }: { parts: readonly string[] }) => `Practising: ${parts.join(', ')}`,
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
    silent: 'silent',
    decibels: ({ level }: { level: number }) => `${level} decibels`,
    care:
      'It starts quiet: turn it up only until you hear the changes. Loud headphones harm hearing. Rest when a hand ' +
      'hurts or tingles; if it stays, see a clinician who knows musicians.',
    more: 'Levels of the parts, swing, count-in, tuning',
  },
};
