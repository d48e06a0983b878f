import type { Attack } from './attacks.ts';
import { isHarmonic } from './contour.ts';
import * as S from './settings.ts';

/**
 * Over ringing strings the path hears the old note, a common subharmonic of both, or nothing. Then what the attack
 * added decides; null where the path needs no help.
 *
 * `heard` is what the path hears after the attack (NaN: nothing), `before` the pitch of the note that sounds, or null.
 */
export function addedPitch(attack: Attack, heard: number, before: number | null): number | null {
  const { added } = attack;
  if (!added || attack.energyRatio > S.RINGING_ENERGY) return null;
  const apart = added.midi - heard;
  // An octave or twelfth under what the path hears is a subharmonic, not news.
  if (Math.abs(apart) < S.PLATEAU_STEP || (apart < 0 && isHarmonic(-apart))) return null;
  // An octave over a low pitch is its own second harmonic, out of tune where the window holds few periods.
  if (heard < S.ADDED_OCTAVE_FROM && Math.abs(apart - 12) < S.ADDED_OCTAVE_REACH) return null;
  // A pitch that stands through a weak flux is a low string's own pulse.
  const stands = before !== null && Math.abs(heard - before) < S.PLATEAU_STEP;
  if (stands && attack.flux < S.STRONG_FLUX) return null;
  const lost = Number.isNaN(heard) || (apart > 23 && isHarmonic(apart));
  const sure = added.clarity >= S.ADDED_SURE && added.midi >= S.ADDED_SURE_FROM;
  return sure || (lost && added.clarity >= S.ADDED_CLARITY) ? added.midi : null;
}
