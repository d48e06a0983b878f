/** What is known about a take besides its sound. The screens may not reach into storage: they find it here. */
export type {
  StoredTake,
  TakeCard,
  TakeDetails,
  TakeId,
  TakeSummary,
  UnfinishedTake,
} from '../storage/records.ts';
