/** Where a tone lies on an instrument, in a player's words. */
import type { Instrument } from '../../music/instruments.ts';
import { writtenMidi } from '../../music/instruments.ts';
import { noteName } from '../../music/pitch-names.ts';
import { nearestPosition, positionsOf } from '../../music/where-it-lies.ts';

const ORDINALS = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
];

/**
 * On a neck: string and fret, near the lowest place of the note it is reached from. On an instrument that is written
 * at another pitch than it sounds: the written note. Else, and off the compass, null.
 * @param midi whole sounding MIDI number of the tone
 * @param fromMidi the note it is reached from
 * @example whereItLies(67, 69, instrumentOf('guitar')!) // 'first string, fret 3'
 */
export function whereItLies(midi: number, fromMidi: number, instrument: Instrument): string | null {
  if (instrument.neck === null) {
    return instrument.soundingFromWritten === 0 ? null : `written ${noteName(writtenMidi(midi, instrument))}`;
  }
  const hand = positionsOf(fromMidi, instrument)[0];
  const place =
    hand === undefined ? positionsOf(midi, instrument)[0] : nearestPosition(midi, instrument, hand);
  if (place === undefined || place === null) return null;
  const string = `${ORDINALS[place.string - 1] ?? `${place.string}th`} string`;
  return place.fret === instrument.neck.capo ? `open ${string}` : `${string}, fret ${place.fret}`;
}
