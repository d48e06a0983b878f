/** A timeline's beats as the table that `readBeatsCsv` reads, so that the command line grades by the same beats. */
import type { Timeline } from '../../chart/timeline.ts';
import { BEAT_COLUMNS } from './beats-csv.ts';

/** Microseconds: far under a sample. */
const DIGITS = 6;
/** A chord that starts between two beats is written at the beat that is nearest: a row is a beat. */
const atBeat = (beat: number): number => Math.round(beat);

/**
 * @param fromBeat first beat that is written; chords stand from there on
 * @param toBeat behind the last beat
 * @example writeBeatsCsv(timeline, 0, 48) // "time,chord\n0.812000,A7\n1.437000,\n…"
 */
export function writeBeatsCsv(timeline: Timeline, fromBeat: number, toBeat: number): string {
  const chords = new Map<number, string>();
  for (const { startBeat, chord } of timeline.spansBetween(fromBeat, toBeat))
    chords.set(Math.max(fromBeat, atBeat(startBeat)), chord?.symbol ?? 'N.C.');
  const rows = [BEAT_COLUMNS.join(',')];
  for (let beat = fromBeat; beat < toBeat; beat++)
    rows.push(`${timeline.beatMap.secondsAt(beat).toFixed(DIGITS)},${chords.get(beat) ?? ''}`);
  return `${rows.join('\n')}\n`;
}
