import type { Frame } from '../frames/frame.ts';
import * as S from '../tuning/live.ts';

/** The pitch of the newest frame on its own, as a fractional MIDI number, or null. */
export function pitchOfFrame(frame: Frame): number | null {
  if (frame.levelDb < S.LIVE_LEAST_DB) return null;
  let best = 0;
  for (let i = 0; i < frame.count; i++) best = Math.max(best, frame.clarity[i]!);
  if (best < S.LIVE_LEAST_CLARITY) return null;
  let pitch: number | null = null;
  for (let i = 0; i < frame.count; i++) {
    if (frame.clarity[i]! >= S.LIVE_SHARE * best && (pitch === null || frame.midi[i]! > pitch))
      pitch = frame.midi[i]!;
  }
  return pitch;
}
