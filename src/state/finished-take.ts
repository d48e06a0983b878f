/** A take that is over, however it came about: played, opened from a file, or rendered as the demo. */
import { STANDARD_A4_HZ } from '../core/tuning/temperament.ts';
import type { DemoTake, TakeAudio } from './ports.ts';
import type { TakeDetails, TakeId } from './take.ts';

export interface FinishedTake {
  /** null when it is not kept on this machine. */
  readonly id: TakeId | null;
  readonly details: TakeDetails;
  readonly audio: TakeAudio;
}

/** A file against the setup's chart. The player's file stays where it is: no copy is kept. */
export function takeFromFile(
  name: string,
  audio: TakeAudio,
  details: Omit<TakeDetails, 'sampleRate' | 'firstBeatSeconds'>,
  firstBeatSeconds: number,
): FinishedTake {
  const { sampleRate } = audio;
  return {
    id: null,
    details: { ...details, title: name, source: 'recording', sampleRate, firstBeatSeconds },
    audio,
  };
}

/** The demo against the chart it was written for. The kit is tuned to the standard. */
export function takeFromDemo({ audio, ...written }: DemoTake, now: Date): FinishedTake {
  const details: TakeDetails = {
    ...written,
    startedAt: now.toISOString(),
    source: 'demo',
    sampleRate: audio.sampleRate,
    reference: STANDARD_A4_HZ,
    instrument: 'guitar',
  };
  return { id: null, details, audio };
}
