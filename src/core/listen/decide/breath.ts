import { isStrong, type Attack } from '../attacks/attacks.ts';
import { standing } from '../path/contour.ts';
import type { Track } from '../path/track.ts';
import * as S from '../tuning/notes.ts';
import type { OpenNote } from './open-note.ts';

/** All that the rules about a new breath or bow may look at. */
export interface BreathEvidence {
  readonly track: Track;
  readonly frame: number;
  readonly open: Pick<OpenNote, 'from' | 'pitch' | 'ringing'>;
  /** Attacks still to come, as far as they are known. */
  readonly later: readonly Attack[];
}

/** A rule that speaks against a new breath. */
export type BreathRule = (evidence: BreathEvidence) => boolean;

/** If none of them speaks against it, the note is breathed or bowed again. */
export const rulesAgainstBreath: readonly BreathRule[] = [
  tooSoonForBreath,
  ripplesWithPeriod,
  levelDoesNotDip,
  stringsBeat,
  strongAttackNear,
  pitchDoesNotStay,
];

/** Is the same pitch breathed or bowed again at this frame, with no attack to speak of? */
export function isNewBreath(evidence: BreathEvidence): boolean {
  return !rulesAgainstBreath.some((speaksAgainst) => speaksAgainst(evidence));
}

/** The pitch after a dip in level, as a fractional MIDI number, NaN for none. */
export function pitchAfterDip(track: Track, frame: number): number {
  return standing(track, frame + S.BREATH_SETTLE_FRAMES, frame + S.LOOK_AHEAD);
}

export function tooSoonForBreath({ frame, open }: BreathEvidence): boolean {
  return frame - open.from <= S.BREATH_AFTER_FRAMES;
}

/** The level of a steady bass note rises and falls with its own period. */
export function ripplesWithPeriod({ open }: BreathEvidence): boolean {
  return open.pitch < S.DIP_MIDI;
}

/** Between two breaths or bows the level dips and comes back; the frame is the lowest one. */
export function levelDoesNotDip({ track, frame, open }: BreathEvidence): boolean {
  const level = track.level(frame);
  if (level > track.level(frame - 1) || level >= track.level(frame + 1)) return true;
  let before = level;
  for (let f = Math.max(open.from, frame - S.DIP_FRAMES); f < frame; f++)
    before = Math.max(before, track.level(f));
  let after = level;
  for (let f = frame + 1; f <= frame + S.LOOK_AHEAD; f++) after = Math.max(after, track.level(f));
  return before < level + S.DIP_DB || after < level + S.DIP_RISE_DB;
}

/** Two strings near each other beat: their level dips without a new stroke. */
export function stringsBeat({ open }: BreathEvidence): boolean {
  return open.ringing?.draws(open.pitch) === true;
}

/** A strong attack decides for itself. */
export function strongAttackNear({ track, frame, later }: BreathEvidence): boolean {
  const until = track.seconds(frame) + S.ATTACK_NEAR_SECONDS;
  return later.some((attack) => isStrong(attack) && attack.seconds < until);
}

/** Another pitch after the dip is for the rules about a change of pitch. */
export function pitchDoesNotStay({ track, frame, open }: BreathEvidence): boolean {
  return !(Math.abs(pitchAfterDip(track, frame) - open.pitch) < S.PLATEAU_STEP);
}
