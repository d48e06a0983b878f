/** What a sound check plays, and how its recording is measured: sweeps for the room, clicks for muted strokes. */
import { bad, type Outcome } from '../core/base/outcome.ts';
import { fromPcm16 } from '../core/base/pcm16.ts';
import {
  checkSweeps,
  judgeSweeps,
  SWEEP_GAP_SECONDS,
  type SweepResult,
} from '../core/room/check/sound-check.ts';
import { strokeClicks } from '../core/room/check/stroke-clicks.ts';
import { CLICK_GAP_SECONDS, measureStrokes, type StrokeDelay } from '../core/room/check/stroke-delay.ts';
import type { Recording } from './recording.ts';

export interface CheckSounds<Measured> {
  readonly sounds: readonly Float32Array<ArrayBuffer>[];
  /** Silence between one sound and the next. */
  readonly silenceSeconds: number;
  /** How many frames are recorded from the start of the last sound on. */
  readonly framesFromLastStart: number;
  /** @param startFrames when each sound was played, on the audio clock */
  readonly measure: (recording: Recording, startFrames: readonly number[]) => Outcome<Measured>;
}

/** Three sweeps. They are measured with every sweep that was recorded without a gap; it fails where there is none. */
export function sweepsToPlay(sampleRate: number): CheckSounds<SweepResult> {
  const sweeps = checkSweeps(sampleRate);
  const tailFrames = Math.round(SWEEP_GAP_SECONDS * sampleRate);
  return {
    sounds: sweeps,
    silenceSeconds: SWEEP_GAP_SECONDS,
    framesFromLastStart: sweeps.at(-1)!.length + tailFrames,
    measure: (recording, startFrames) => {
      const whole = recording.whole();
      const firstFrame = Math.round((recording.startSeconds ?? 0) * sampleRate);
      const recorded = sweeps
        .map((sweep, i) => {
          const from = startFrames[i]! - firstFrame;
          return { sweep, from, to: from + sweep.length + tailFrames };
        })
        .filter(
          ({ from, to }) =>
            !recording.gaps.some(({ atFrame, frames }) => atFrame < to && atFrame + frames > from),
        );
      if (recorded.length === 0) return bad('soundCheck.soundLost');
      return judgeSweeps(
        recorded.map(({ from, to }) => fromPcm16(whole.subarray(from, to))),
        recorded.map(({ sweep }) => sweep),
        sampleRate,
      );
    },
  };
}

/** Lost sound of this length moves no stroke by more than the strokes scatter. */
const MOST_LOST_SECONDS = 0.005;

/** A count-in and clicks, with which the player strikes muted strings. */
export function clicksToPlay(sampleRate: number): CheckSounds<StrokeDelay> {
  const { sounds, silenceSeconds, countedIn } = strokeClicks(sampleRate);
  return {
    sounds,
    silenceSeconds,
    framesFromLastStart: Math.round(CLICK_GAP_SECONDS * sampleRate),
    measure: (recording, startFrames) => {
      const { lostFrames, startSeconds } = recording;
      if (startSeconds === null || lostFrames > MOST_LOST_SECONDS * sampleRate)
        return bad('soundCheck.strokesLost');
      const seconds = startFrames.map((frame) => frame / sampleRate - startSeconds);
      const [countIn, clicks] = [seconds.slice(0, countedIn), seconds.slice(countedIn)];
      return measureStrokes(fromPcm16(recording.whole()), sampleRate, countIn, clicks);
    },
  };
}
