/** The level of a fader, in words and in figures. */
import type { OpenPageWords } from '../../core/words/words.ts';

/** The end of the fader, in dB: silence. */
export const SILENT_DB = -60;

export const levelWords = (levelDb: number, { ready: { sound } }: OpenPageWords) => ({
  spoken: levelDb <= SILENT_DB ? sound.silent : sound.decibels({ level: levelDb }),
  shown: `${String(levelDb).replace('-', '−')} dB`,
});
