/** What is known about a take besides its sound. The screens may not reach into storage: they find it here. */
import type { GradeOrder } from '../analysis/order.ts';
import type { BandSettings } from '../core/band/settings.ts';
import type { TakeDetails } from '../storage/records.ts';

export type {
  StoredTake,
  TakeCard,
  TakeDetails,
  TakeId,
  TakeSummary,
  UnfinishedTake,
} from '../storage/records.ts';

/** What the player says of a take: its name, empty for none, and whether it is starred. */
export type TakeMark = Pick<TakeDetails, 'name' | 'starred'>;

/** How a take is to be graded. Until its first downbeat is known it counts from the first sample. */
export const gradeOrder = (details: TakeDetails): GradeOrder => ({
  chartText: details.chartText,
  bpm: details.bpm,
  swing: details.swing,
  firstBeatSeconds: details.firstBeatSeconds ?? 0,
  ...(details.assumedRoundTripSeconds !== undefined && {
    assumedRoundTripSeconds: details.assumedRoundTripSeconds,
  }),
  reference: details.reference,
  source: details.source === 'microphone' ? 'microphone' : 'audio',
  ...(details.backing !== undefined && { beatSeconds: details.backing.beatSeconds }),
  feel: details.feel,
  ...(details.rise !== undefined && { rise: details.rise }),
  ...(details.trade !== undefined && { turnBars: details.trade.bars }),
  ...(details.lost !== undefined && { lost: details.lost }),
  ...(details.instrument !== undefined && { instrument: details.instrument }),
  ...(details.capo !== undefined && { capo: details.capo }),
  ...(details.aim !== undefined && { aim: details.aim }),
  ...(details.noteChoices !== undefined && { noteChoices: details.noteChoices }),
});

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
