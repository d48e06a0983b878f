/** Which sound of the kit stands for an instrument. */

export interface Voice {
  /** General MIDI, counted from 0. */
  readonly program: number;
  /** The keys it is kept with (src/audio/kit/kit-plan.json), as MIDI numbers. */
  readonly lowest: number;
  readonly highest: number;
}

/** Clean electric guitar: of the kit's instruments it has the widest compass. */
const GUITAR: Voice = { program: 27, lowest: 40, highest: 88 };
const BASS: Voice = { program: 33, lowest: 28, highest: 55 };
const PIANO: Voice = { program: 4, lowest: 45, highest: 79 };
/** Holds its notes as wind, bow and voice do, of which the kit has none. */
const ORGAN: Voice = { program: 17, lowest: 48, highest: 74 };

const SUSTAINED: readonly string[] = [
  'violin',
  'flute',
  'clarinet',
  'trumpet',
  'soprano-sax',
  'alto-sax',
  'tenor-sax',
  'baritone-sax',
  'trombone',
  'voice',
];

const voiceOf = (instrument: string): Voice => {
  if (instrument.startsWith('bass')) return BASS;
  if (instrument === 'piano') return PIANO;
  return SUSTAINED.includes(instrument) ? ORGAN : GUITAR;
};

/**
 * The sound that comes nearest to an instrument and has all of the notes; the guitar where none has.
 * @param instrument its id; one that is not known sounds as a guitar
 * @param midis sounding pitches
 * @example voiceFor('bass', [40, 43]).program // 33
 */
export function voiceFor(instrument: string, midis: readonly number[]): Voice {
  const voice = voiceOf(instrument);
  return midis.every((midi) => midi >= voice.lowest && midi <= voice.highest) ? voice : GUITAR;
}
