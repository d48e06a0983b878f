/** What is known about a take besides its sound. The screens may not reach into storage: they find it here. */
import type { BandSettings } from '../core/band/settings.ts';
import type { TakeDetails } from '../core/take/details-schema.ts';

export type { TakeDetails } from '../core/take/details-schema.ts';
export type { StoredTake, TakeCard, TakeId, TakeSummary, UnfinishedTake } from '../storage/records.ts';

/** What is said of a take: its name, empty for none, whether it is starred, and what a teacher answered. */
export type TakeMark = Pick<TakeDetails, 'name' | 'starred' | 'answer'>;

/** How the band plays along with a take: the same notes as when it was played, and no count-in. */
export const bandSettings = ({
  feel,
  bpm,
  swing,
  startedAt,
  chordsRest = false,
  backbeatClick = false,
  rise,
  trade,
  drone,
}: TakeDetails): BandSettings => ({
  feel,
  bpm,
  swing,
  seed: bandSeed(startedAt),
  countInBars: 0,
  chordsRest,
  backbeatClick,
  ...(rise && { rise }),
  ...(trade && { trade }),
  ...(drone && { drone }),
});

/** Each take has a band of its own, and the same one whenever it is heard again. */
export const bandSeed = (startedAt: string): number => Date.parse(startedAt) % 2 ** 31;
