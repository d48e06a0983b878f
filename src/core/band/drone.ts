/** Root and fifth of the key, held: a drone to play over. *Common practice.* */
import type { BandEvent } from './events.ts';
import type { BandForm } from './form.ts';
import type { Drone } from './settings.ts';

/** C3 to B3: below the player's range, high enough to stay clear. */
const lowestRoot = 48;
const fifth = 7;
/** The drone is struck again after this many bars, so that a take that begins later soon hears it. */
const bowBars = 4;
const velocity = 72;

/** The drone of one chorus, counted from 0, as its chords. In a short chorus the tones are held into the next. */
export function playDrone(form: BandForm, { tones, semitones }: Drone, chorus: number): readonly BandEvent[] {
  const round = semitones.length > 1 ? 1 : Math.max(1, Math.floor(bowBars / form.bars));
  if (chorus % round !== 0) return [];
  const roundBars = round * form.bars;
  const partBars = roundBars / Math.max(1, semitones.length);
  return (semitones.length === 0 ? [0] : semitones).flatMap((up, part) => {
    const root = lowestRoot + ((form.key.tonicPitchClass + up) % 12);
    const keys = tones === 'root' ? [root] : [root, root + fifth];
    const [from, to] = [part * partBars, (part + 1) * partBars];
    return Array.from({ length: Math.ceil((to - from) / bowBars) }, (_, i) => from + i * bowBars).flatMap(
      (bar) =>
        keys.map((midi) => ({
          beat: bar * form.beatsPerBar,
          durationBeats: (Math.min(to, bar + bowBars) - bar) * form.beatsPerBar,
          part: 'chords' as const,
          midi,
          velocity,
        })),
    );
  });
}
