/** Key and time signatures as MusicXML counts them. */
import { FASTEST_BPM, meterOf, SLOWEST_BPM, type Meter } from '../../chart/chart.ts';
import { numberOf } from '../bytes/xml.ts';

/** A meter of ours, or the one in quarters that is as long (2/2 is four quarters). */
export function meterFrom(beats: string | null, beatType: string | null): Meter | null {
  const written = meterOf(`${beats ?? ''}/${beatType ?? ''}`);
  const quarters = ((numberOf(beats) ?? NaN) * 4) / (numberOf(beatType) ?? NaN);
  return written ?? meterOf(`${quarters}/4`);
}

/** A tempo as charts have them, or null: a file that says another says nothing that can be played. */
export const usableBpm = (bpm: number): number | null =>
  bpm >= SLOWEST_BPM && bpm <= FASTEST_BPM ? bpm : null;
