/** What a take is to be, before it begins, and what it tells while it is played. */
import type { Heard } from '../analysis/messages.ts';
import type { BandSettings } from '../core/band/settings.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import type { BackingRun, BandLevels } from './ports.ts';
import type { TakeDetails } from './take.ts';

export interface TakePlan {
  readonly timeline: Timeline;
  readonly band: BandSettings;
  readonly levels: BandLevels;
  /** A recording that plays in the band's place. */
  readonly backing?: BackingRun;
  /** All but the rate, which the microphone decides, and the first downbeat, which the clock tells. */
  readonly details: Omit<TakeDetails, 'sampleRate' | 'firstBeatSeconds'>;
}

export interface TakeEvents {
  /** What is being opened, to be read in a sentence. */
  opening(what: string): void;
  /** Worth telling, but the take goes on. */
  notice(sentence: string): void;
  /** What was told no longer holds. */
  withdraw(sentence: string): void;
  /** The microphone is gone. */
  lost(sentence: string): void;
  heard(heard: Heard): void;
}
