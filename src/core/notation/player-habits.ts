/** How a player lies against the beat over a whole take: constantly late or early, and how unevenly eighths are played. */
import { median } from '../base/statistics.ts';
import type { Placed } from './place-onsets.ts';

export interface Habits {
  /** Added to every place before onsets are compared with it; late is above 0. */
  readonly lateSeconds: number;
  /** Share of the beat that the first of two eighths takes. */
  readonly swing: number;
}

/** Fewer notes than this say little; the habit counts for as much of its size as there are. */
const ENOUGH_NOTES = 12;
/** No player is so late or early all through a take; beyond it the beats are wrong, which the review says elsewhere. */
const MOST_LATE_SECONDS = 0.06;
/** The second of two eighths lies between these shares of the beat; outside it is another rhythm. */
const SECOND_EIGHTH = { from: 0.42, to: 0.76 } as const;
const SWING = { least: 0.5, most: 0.72 } as const;

/**
 * What a first placing shows of the player.
 * @param onsets beats, one for each entry of `placed`
 * @param known the swing of the band, which stands where the player's can't be told
 */
export function habitsOf(
  onsets: readonly number[],
  placed: readonly Placed[],
  beatSecondsAt: (beat: number) => number,
  known: number,
): Habits {
  const late: number[] = [];
  const seconds: number[] = [];
  const main = placed.map((one, i) => ({ ...one, onset: onsets[i]! })).filter(({ grace }) => !grace);
  const byBeat = new Map<number, number[]>();
  for (const { beat, onset } of main) byBeat.set(beat, [...(byBeat.get(beat) ?? []), onset]);
  main.forEach(({ beat, grid, part, onset }, i) => {
    const place = beat + grid.places[part]!;
    // Only places on the beat: where the off-beat is expected depends on the swing.
    if (part === 0) late.push((onset - place) * beatSecondsAt(beat));
    const inBeat = byBeat.get(beat) ?? [];
    const isSecondOfTwo =
      grid.beats === 1 && inBeat.length === 2 && inBeat[1] === onset && main[i - 1]?.part === 0;
    const share = isSecondOfTwo ? onset - (inBeat[0] ?? onset) : 0;
    if (share > SECOND_EIGHTH.from && share < SECOND_EIGHTH.to) seconds.push(share);
  });
  const lateSeconds = clamp(median(late) ?? 0, -MOST_LATE_SECONDS, MOST_LATE_SECONDS);
  const trust = Math.min(1, late.length / ENOUGH_NOTES);
  const swing = clamp(median(seconds) ?? known, SWING.least, SWING.most);
  const swingTrust = Math.min(1, seconds.length / ENOUGH_NOTES);
  return { lateSeconds: lateSeconds * trust, swing: known + (swing - known) * swingTrust };
}

const clamp = (value: number, least: number, most: number) => Math.min(most, Math.max(least, value));
