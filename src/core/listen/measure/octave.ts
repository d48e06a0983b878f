import { upperMedian } from '../../base/statistics.ts';
import * as S from '../tuning/measure.ts';
import { PLATEAU_STEP } from '../tuning/notes.ts';
import { HIGH_MIDI } from '../tuning/path.ts';
import type { Track } from '../path/track.ts';

/** A note as far as it has sounded. */
interface NoteSoFar {
  readonly onsetSeconds: number;
  readonly pitch: number;
  /** First and last frame. */
  readonly from: number;
  readonly last: number;
}

/**
 * A reed may speak an octave down: for its first 50 to 200 ms half the sound lies in odd harmonics of the octave below,
 * and then they die away. A note truly so low keeps them, and its lowest outlives the rest. So an octave that rises soon
 * after the attack and stays was there from the start.
 *
 * Has the pitch at `frame`, an octave above the note's, stood for `frames` frames, soon enough after the onset?
 */
export function rises(track: Track, note: NoteSoFar, frame: number, pitch: number, frames: number): boolean {
  if (Math.abs(pitch - note.pitch - 12) > PLATEAU_STEP || frames < S.OCTAVE_FRAMES) return false;
  if (track.seconds(frame) - note.onsetSeconds > S.OCTAVE_SECONDS) return false;
  return note.pitch < HIGH_MIDI || track.below(frame) < S.OCTAVE_BELOW;
}

/**
 * The same for a note that ended before the path went over: was the octave above no candidate in most of its frames, and
 * one in most of the last?
 */
export function wasRising(track: Track, note: NoteSoFar): boolean {
  if (note.pitch >= HIGH_MIDI) return false;
  const shares: number[] = [];
  let loudest = -120;
  for (let f = note.from; f <= note.last; f++) {
    loudest = Math.max(loudest, track.level(f));
    // A muted string dies away, and what is left of it may well be an overtone.
    if (track.level(f) < loudest - S.RISING_DROP_DB) break;
    if (Math.abs(track.midi(f) - note.pitch) < S.RISING_REACH) shares.push(track.above(f));
  }
  if (shares.length < S.RISING_FRAMES_LEAST || shares.length > S.RISING_FRAMES_MOST) return false;
  const late = shares.slice(-Math.max(S.RISING_LATE_LEAST, Math.floor(shares.length * S.RISING_LATE_SHARE)));
  return upperMedian(shares) === 0 && upperMedian(late)! > 0;
}
