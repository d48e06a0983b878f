/** Where a backing lay in the take, and how much of it was taken out. */
export interface BackingFacts {
  /** Take time at which the backing's first sample is heard; negative where its start was cut off. */
  readonly offsetSeconds: number;
  /** How much faster the backing ran in the take than in its file, parts per million. */
  readonly driftPpm: number;
  /** How far the level fell where the player rests, dB (ITU-T G.168's echo return loss enhancement). */
  readonly removedDb: number;
}
