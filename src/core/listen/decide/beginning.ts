import type { Attack } from '../attacks/attacks.ts';
import { plateau } from '../path/contour.ts';
import type { Track } from '../path/track.ts';
import * as S from '../tuning/notes.ts';
import { PLATEAU_FRAMES } from '../tuning/path.ts';
import type { RecentLevels } from './recent-levels.ts';

/** All that the rules about a note that begins in silence, without a stroke of a known pitch, may look at. */
export interface BeginningEvidence {
  readonly track: Track;
  readonly frame: number;
  readonly levels: RecentLevels;
  /** A stroke whose pitch was still to come. */
  readonly pending: Attack | null;
}

/** A note that begins: its pitch as a fractional MIDI number, and the flux of its attack, 0 without. */
export interface Beginning {
  readonly onsetSeconds: number;
  readonly pitch: number;
  readonly flux: number;
}

/** The pitch that stands from this frame on and is loud enough, as a fractional MIDI number, else NaN. */
export function pitchThatStands({ track, frame, levels }: Omit<BeginningEvidence, 'pending'>): number {
  if (Number.isNaN(track.midi(frame)) || levels.isTooQuiet(track, frame)) return NaN;
  return plateau(track, frame, PLATEAU_FRAMES, S.FIRST_PLATEAU_WIDTH);
}

/** The note that begins with this pitch: with the stroke just before, or where the level has risen; else null. */
export function beginningOf(pitch: number, evidence: Omit<BeginningEvidence, 'levels'>): Beginning | null {
  const { track, frame, pending } = evidence;
  const seconds = track.seconds(frame);
  if (pending && seconds - pending.seconds < S.PENDING_SECONDS)
    return { onsetSeconds: pending.seconds, pitch, flux: pending.flux };
  return levelHasRisen(track, frame) ? { onsetSeconds: seconds, pitch, flux: 0 } : null;
}

/** Without an attack a note swells: from the lowest level just before. */
export function levelHasRisen(track: Track, frame: number): boolean {
  let lowest = Infinity;
  for (let f = frame - S.SWELL_BEFORE_FRAMES; f < frame; f++) lowest = Math.min(lowest, track.level(f));
  return track.level(frame + S.SWELL_AFTER_FRAMES) - lowest >= S.SWELL_DB;
}
