/** Where a tone lies on an instrument. */
import type { Instrument } from '../../music/instruments.ts';
import { writtenMidi } from '../../music/instruments.ts';
import { moveChord } from '../../chart/transpose-chart.ts';
import type { Chord } from '../../music/chord.ts';
import { parseChord } from '../../music/parse-chord.ts';
import { nameOverChord, noteName } from '../../music/pitch-names.ts';
import { readingOf } from '../../music/reading.ts';
import { wrapPitchClass } from '../../music/spelling.ts';
import { nearestPosition, positionsOf } from '../../music/where-it-lies.ts';
import type { Advice } from '../../take/schema.ts';

/**
 * On a neck: string and fret, near the lowest place of the note it is reached from. On an instrument that is written
 * at another pitch than it sounds: the written note, spelled over the written chord. Else, and off the compass, null.
 * @param midi whole sounding MIDI number of the tone
 * @param fromMidi the note it is reached from
 * @param chord at concert pitch
 * @example whereItLies(67, 69, c7, instrumentOf('guitar')!) // { kind: 'neck', string: 1, fret: 3, open: false }
 */
export function whereItLies(
  midi: number,
  fromMidi: number,
  chord: Chord,
  instrument: Instrument,
): Advice['where'] {
  if (instrument.neck === null) {
    if (instrument.soundingFromWritten === 0) return null;
    const written = writtenMidi(midi, instrument);
    const over = parseChord(moveChord(chord.symbol, readingOf(instrument, 'written').interval));
    const spelled = over === null ? undefined : nameOverChord(wrapPitchClass(written), over);
    return { kind: 'written', name: noteName(written, spelled) };
  }
  const hand = positionsOf(fromMidi, instrument)[0];
  const place =
    hand === undefined ? positionsOf(midi, instrument)[0] : nearestPosition(midi, instrument, hand);
  if (place === undefined || place === null) return null;
  return { kind: 'neck', ...place, open: place.fret === instrument.neck.capo };
}
