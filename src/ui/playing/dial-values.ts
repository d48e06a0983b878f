/** Where the dials stand, and what a turn of the tempo does to a recording. */
import type { Backings } from '../../state/backings.svelte.ts';
import type { Setup } from '../../state/setup.svelte.ts';
import type { DialValues } from './dials.ts';

/**
 * A recording swings and begins as it was played.
 * @param asked whether a lesson sheet says how fast it is played
 */
export const dialValues = ({ settings, backing, swing }: Setup, asked: boolean): DialValues => ({
  band: settings.levels.all,
  tempo: asked ? null : Math.round(backing?.bpm ?? settings.bpm),
  swing: backing === null && !asked ? swing : null,
  'count-in': backing === null ? settings.countInBars : null,
});

/** A recording is slowed down, as far as it can be. */
export function setTempo(bpm: number, setup: Setup, backings: Backings): void {
  if (setup.backing === null) return setup.setBpm(bpm);
  const { record, bpm: now } = setup.backing;
  const speed = Math.round(100 * Math.min(1, Math.max(0.5, (bpm / now) * record.speed))) / 100;
  void backings.play(record.id, { speed });
}
