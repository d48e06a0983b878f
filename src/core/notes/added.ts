import type { Attack } from './attacks.ts';
import { isHarmonic } from './contour.ts';
import * as S from './settings.ts';

/**
 * Odds in nepers that what an attack added is the note, and not what the path hears: a logistic regression on 360 attacks
 * of tuning lines (plucked strings that ring on, and twelve instruments clean, three banks) where just one of the two
 * was right. It decides 86 % of them; always to believe one would decide half.
 */
const ODDS = {
  always: -1.11,
  /** Clarity of what was added, 0 to 1, and of the path's pitch. */
  addedClarity: 8.23,
  heardClarity: -5.25,
  /** Natural logarithm of its part of the power, and of the rise in energy. */
  share: 0.74,
  energy: -0.86,
  /** Of the path's pitch in octaves from MIDI 0, up to G3: low pitches are often common fundamentals. */
  heardOctaves: -0.43,
  /** What was added lies an octave over it; on a higher harmonic; within a tone; higher otherwise. */
  octave: 2.18,
  harmonic: 2.75,
  near: 2.35,
  higher: 1.67,
} as const;
const SHARE_FLOOR = 0.02;
const HEARD_MOST = 55;
const ENERGY_RANGE: readonly [number, number] = [0.5, 20];
const NEAR_SEMITONES = 2.6;

/** What the path hears after an attack: pitch as a fractional MIDI number (NaN: nothing) and its highest clarity. */
export interface Heard {
  readonly midi: number;
  readonly clarity: number;
}

/**
 * Over ringing strings the path hears the old note, a common subharmonic of both, or nothing. Then what the attack
 * added decides: its pitch, or null where the path is to be believed.
 */
export function addedPitch(attack: Attack, heard: Heard, before: number | null): number | null {
  const { added } = attack;
  if (!added || added.midi < S.ADDED_FROM) return null;
  if (Number.isNaN(heard.midi))
    return added.clarity >= S.ADDED_CLARITY && attack.energyRatio <= S.RINGING_ENERGY ? added.midi : null;
  // Two periods of so low a pitch fill the windows before and after: what changed between them is no pitch.
  // Unless it is the common fundamental of the note that sounded and the one that came.
  const apart = added.midi - heard.midi;
  const common = before !== null && isHarmonic(before - heard.midi) && isHarmonic(apart);
  if (heard.midi < S.ADDED_HEARD_FROM && heard.clarity > S.ADDED_HEARD_CLARITY && !common) return null;
  // An octave or twelfth under what the path hears is a subharmonic, not news.
  if (Math.abs(apart) < S.PLATEAU_STEP || (apart < 0 && isHarmonic(-apart))) return null;
  const octave = Math.abs(apart - 12) < S.ADDED_OCTAVE_REACH;
  // A low string's own overtones come late and out of tune.
  if (heard.midi < S.ADDED_OVERTONES_TO && !common && (octave || isHarmonic(apart))) return null;
  // Where the old note rings on, an octave of what was added fits nearly as well: only a clear one is believed.
  if (octave && added.clarity < S.ADDED_OCTAVE_CLARITY) return null;
  const harmonic = !octave && apart > 0 && isHarmonic(apart);
  const near = Math.abs(apart) < NEAR_SEMITONES;
  const odds =
    ODDS.always +
    ODDS.addedClarity * added.clarity +
    ODDS.heardClarity * heard.clarity +
    ODDS.share * Math.log(added.share + SHARE_FLOOR) +
    ODDS.energy * Math.log(Math.min(Math.max(attack.energyRatio, ENERGY_RANGE[0]), ENERGY_RANGE[1])) +
    (ODDS.heardOctaves * Math.min(heard.midi, HEARD_MOST)) / 12 +
    (octave ? ODDS.octave : harmonic ? ODDS.harmonic : near ? ODDS.near : apart > 0 ? ODDS.higher : 0);
  return odds > S.ADDED_ODDS ? added.midi : null;
}
