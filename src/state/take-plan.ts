/** The plan of a take, made before it begins, and the events that it sends while it is played. */
import type { Heard } from '../analysis/messages.ts';
import type { BandSettings } from '../core/band/settings.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import type { BackingRun, BandLevels } from './ports.ts';
import type { Message, Problem } from '../core/words/problem.ts';
import type { Opening } from './phase.ts';
import type { TakeDetails } from './take.ts';

export interface TakePlan {
  readonly timeline: Timeline;
  readonly band: BandSettings;
  readonly levels: BandLevels;
  /** A recording that plays in the band's place. */
  readonly backing?: BackingRun;
  /** Without the sample rate, which the microphone decides, and the first downbeat, which is known when the band starts. */
  readonly details: Omit<TakeDetails, 'sampleRate' | 'firstBeatSeconds'>;
}

export interface TakeEvents {
  opening(what: Opening): void;
  /** The player is to know it, and the take goes on. */
  notice(message: Message): void;
  /** A problem that was sent no longer holds. */
  withdraw(problem: Problem): void;
  /** The microphone is gone. */
  lost(problem: Problem): void;
  heard(heard: Heard): void;
}
