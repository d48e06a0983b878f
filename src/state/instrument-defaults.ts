/** What an instrument brings with it: the view that shows it best, the clef its players read. */
import { instrumentOf } from '../core/music/instruments.ts';
import type { PlayingSettings } from './playing-settings.ts';

/** Written notes mostly below middle C are read in the bass clef. */
const MIDDLE_C = 60;
/** A keyboard instrument is shown on its own keys. */
const KEYED = ['piano'];

/** The settings that go with an instrument when it is chosen; each can be changed afterwards. Throws on no known id. */
export function instrumentDefaults(
  id: string,
): Pick<PlayingSettings, 'instrument' | 'view' | 'clef' | 'capo'> {
  const instrument = instrumentOf(id);
  if (instrument === null) throw new RangeError(`there is no instrument "${id}"`);
  const { neck, lowestMidi, highestMidi, soundingFromWritten } = instrument;
  const writtenMiddle = (lowestMidi + highestMidi) / 2 - soundingFromWritten;
  return {
    instrument: id,
    view: neck !== null ? 'neck' : KEYED.includes(id) ? 'keyboard' : 'staff',
    clef: writtenMiddle < MIDDLE_C ? 'bass' : 'treble',
    capo: 0,
  };
}
