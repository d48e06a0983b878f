/** Who plays what: the feel's instruments, the drone's organ, and one for the example line that stands out. */
import type { BandPart } from './events.ts';
import type { Instruments } from './feels/feel.ts';
import { feels } from './feels/table.ts';
import type { BandSettings } from './settings.ts';

/** MIDI programs, from 0: an organ holds a note as long as it is held. */
const drawbarOrgan = 17;
const electricPiano = 4;
const cleanGuitar = 27;
const guitars: readonly number[] = [24, cleanGuitar];
/** The count-in's wood blocks are in the standard kit, whatever kit the drummer plays. */
const standardKit = 0;

/** MIDI programs by part; those of drums and click are kits. */
export type Programs = Readonly<Record<BandPart, number>>;

/** The line is played by a guitar, or by a piano where a guitar plays the chords, so that both can be distinguished. */
export const programsOf = ({ drumKit, bass, chords }: Instruments): Programs => ({
  drums: drumKit,
  bass,
  chords,
  line: guitars.includes(chords) ? electricPiano : cleanGuitar,
  click: standardKit,
});

/** The feel's instruments as these settings have them. */
export function bandInstruments({ feel, drone }: Pick<BandSettings, 'feel' | 'drone'>): Instruments {
  const { instruments } = feels[feel];
  return drone === undefined ? instruments : { ...instruments, chords: drawbarOrgan };
}
