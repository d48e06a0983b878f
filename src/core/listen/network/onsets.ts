import * as D from './decoding.ts';
import type { Outputs } from './outputs.ts';
import { PITCHES } from './settings.ts';

/** Where a note may begin. */
export interface Onset {
  /** Of the peak. */
  readonly frame: number;
  readonly pitch: number;
  /** To a part of a frame and of a semitone. */
  readonly at: number;
  readonly semitone: number;
  /** About the probability that a note begins here. */
  readonly onset: number;
  /** How surely it sounds afterwards. */
  readonly body: number;
}

/** The onset at a peak of `frame`, dated and pitched by the probabilities about it. */
function onsetAt(outputs: Outputs, frame: number, pitch: number): Onset | null {
  let sum = 0;
  let time = 0;
  let height = 0;
  for (let f = Math.max(0, frame - 2); f <= frame + 2; f++)
    for (let p = Math.max(0, pitch - 1); p <= Math.min(PITCHES - 1, pitch + 1); p++) {
      const o = outputs.onset(f, p);
      sum += o;
      time += o * f;
      height += o * p;
    }
  let body = 0;
  for (let f = frame + 1; f <= frame + D.BODY_FRAMES; f++) {
    let best = 0;
    for (let p = Math.max(0, pitch - 1); p <= Math.min(PITCHES - 1, pitch + 1); p++)
      best = Math.max(best, outputs.soundAbout(f, p));
    body += best / D.BODY_FRAMES;
  }
  const onset = Math.min(1, outputs.onsetAbout(frame, pitch));
  if (body < D.LEAST_BODY || onset + D.BODY_WEIGHT * body < D.LEAST_BOTH) return null;
  return { frame, pitch, at: time / sum, semitone: height / sum, onset, body };
}

/** Peaks of the frame that lies four before the newest, lowest pitch first. */
export function onsetsOf(outputs: Outputs, frame: number, found: Onset[]): void {
  for (let p = 0; p < PITCHES; p++) {
    const here = outputs.onsetAbout(frame, p);
    if (here < D.LEAST_ONSET) continue;
    let highest = true;
    for (let f = frame - D.PEAK_REACH; f <= frame + D.PEAK_REACH && highest; f++)
      for (let q = Math.max(0, p - 1); q <= Math.min(PITCHES - 1, p + 1); q++)
        if (f >= 0 && outputs.onsetAbout(f, q) > here) highest = false;
    const onset = highest ? onsetAt(outputs, frame, p) : null;
    if (onset) found.push(onset);
  }
}

const comesBefore = (a: Onset, b: Onset): boolean =>
  a.at < b.at || (a.at === b.at && a.semitone < b.semitone);

/** Whether two onsets are near enough in time to be one stroke. */
const isSameStroke = (a: Onset, b: Onset): boolean => Math.abs(a.at - b.at) <= D.STROKE_FRAMES;

/** Whether `other` takes `onset`'s place: a surer pitch of the same stroke, or the same note a moment away. */
export function isTakenBy(onset: Onset, other: Onset): boolean {
  const apart = Math.abs(other.at - onset.at);
  const surer = other.onset > onset.onset || (other.onset === onset.onset && comesBefore(other, onset));
  if (isSameStroke(onset, other) && surer) return true;
  if (apart > D.REPEAT_FRAMES || Math.abs(other.pitch - onset.pitch) > 1) return false;
  return other.at < onset.at
    ? other.onset >= D.REPEAT_SHARE * onset.onset
    : other.at > onset.at && other.onset > onset.onset / D.REPEAT_SHARE;
}
