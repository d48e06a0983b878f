/** What is needed besides samples to grade a take, as plain data that crosses into a worker. */

export interface GradeOrder {
  /** The chart in our own text form, already in its key. */
  readonly chartText: string;
  /** "Bb", "A minor". */
  readonly key: string;
  readonly bpm: number;
  /** Share of the beat that the first eighth takes. */
  readonly swing: number;
  /** Where the first downbeat lies, in seconds from the first sample, round trip included. */
  readonly firstBeatSeconds: number;
  readonly reference: number | 'auto';
  readonly source: 'microphone' | 'audio';
}
