import { midiToHz } from '../../music/temperament.ts';
import type { Attack } from '../attacks/attacks.ts';
import * as S from '../tuning.ts';
import type { Track } from '../path/track.ts';

/**
 * Is this attack one of a low string's own pulses? A stroke breaks the period: where it goes on unbroken, or where the attack
 * follows the one before by whole periods and is no stronger, nothing was struck. `heard` after it and `pitch` before it as
 * fractional MIDI numbers, `from` the first frame after it.
 */
export function isPulse(
  track: Track,
  attack: Attack,
  previous: Attack | null,
  from: number,
  heard: number,
  pitch: number,
): boolean {
  if (!(heard < S.PULSE_MIDI) || Math.abs(heard - pitch) > S.PLATEAU_STEP) return false;
  if (previous && attack.flux < S.PULSE_FLUX * previous.flux) {
    const hz = midiToHz(heard);
    const periods = (attack.seconds - previous.seconds) * hz;
    const away = Math.abs(periods - Math.round(periods)) / hz;
    if (periods < S.PULSE_PERIODS && away < S.PULSE_SECONDS) return true;
  }
  return stands(track, from, pitch, S.PULSE_CLARITY);
}

/** A click on a note that goes on: its pitch stands unbroken, it is no louder, and nothing was added to it (`share` of the power). */
export function isClick(track: Track, attack: Attack, share: number, from: number, pitch: number): boolean {
  if (attack.energyRatio > S.RESTRIKE_ENERGY || share > S.CLICK_SHARE) return false;
  return stands(track, from, pitch, S.CLICK_CLARITY);
}

/** Is `pitch` heard, and so clearly, in all frames about `frame`? */
function stands(track: Track, frame: number, pitch: number, clarity: number): boolean {
  for (let f = frame - S.STANDS_FRAMES; f <= frame + S.STANDS_FRAMES; f++)
    if (!(Math.abs(track.midi(f) - pitch) < S.PLATEAU_STEP) || track.clarity(f) < clarity) return false;
  return true;
}
