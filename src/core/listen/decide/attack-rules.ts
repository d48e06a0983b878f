import { hasEvenEnergy, isStrong, type Attack } from '../attacks/attacks.ts';
import type { AttackSpectra } from '../frames/attack-spectra.ts';
import { midiToHz } from '../../music/temperament.ts';
import { isHarmonic } from '../path/contour.ts';
import type { Track } from '../path/track.ts';
import { PLATEAU_STEP, WIDEST_LEGATO } from '../tuning/notes.ts';
import * as S from '../tuning/strokes.ts';
import type { AttackEvidence } from './attack-evidence.ts';

/** What an attack turned out to be. Pitches are fractional MIDI numbers. */
export type AttackDecision =
  /** Noise of a stroke that was there already, a pulse or a click of a note that goes on, or a string let go. */
  | { readonly is: 'no stroke' }
  /** A stroke whose pitch is still to come. */
  | { readonly is: 'pitch to come' }
  /** Too soft to be sure of; `midi` is what it would have brought. */
  | { readonly is: 'too soft'; readonly midi: number }
  | {
      readonly is: 'note';
      readonly attack: 'struck' | 'legato';
      readonly midi: number;
      /** First frame that belongs to it. */
      readonly from: number;
      /** The path hears another pitch. */
      readonly pitchFromAttack: boolean;
      readonly spectra: AttackSpectra | null;
    };

/** A rule decides, or leaves the attack to the next rule (null). */
export type AttackRule = (evidence: AttackEvidence) => AttackDecision | null;

const NO_STROKE: AttackDecision = { is: 'no stroke' };

/** In this order; the last one always decides. */
export const attackRules: readonly AttackRule[] = [
  tooSoonAfterOnset,
  pulseOfLowString,
  weakerSoonAfterOnset,
  clickOnNote,
  noiseOfSameStroke,
  strokeWithoutPitch,
  softInSilence,
  softOverNote,
  stringLetGo,
  newNote,
];

/** What the attack is: the answer of the first rule that has one. */
export function decideAttack(evidence: AttackEvidence): AttackDecision {
  for (const rule of attackRules) {
    const decision = rule(evidence);
    if (decision) return decision;
  }
  throw new Error('the last rule about attacks always decides');
}

/** A pick touches the string and leaves it, a reed chirps: two attacks, one stroke. */
export function tooSoonAfterOnset({ secondsSinceOnset }: AttackEvidence): AttackDecision | null {
  return secondsSinceOnset < S.REFRACTORY_SECONDS ? NO_STROKE : null;
}

/** A little later an attack must not be much weaker than the one that began the note. */
export function weakerSoonAfterOnset(evidence: AttackEvidence): AttackDecision | null {
  const { attack, open, secondsSinceOnset } = evidence;
  const soon = secondsSinceOnset < 2 * S.REFRACTORY_SECONDS;
  return open && soon && attack.flux < S.WEAKER_SHARE * open.flux ? NO_STROKE : null;
}

/**
 * Each period of a low string is a pulse of its own and may pass for an attack. A stroke breaks the period: where it goes
 * on unbroken, or where attacks follow each other by whole periods and do not grow, nothing was struck.
 */
export function pulseOfLowString(evidence: AttackEvidence): AttackDecision | null {
  const { attack, previous, open, path, track, from } = evidence;
  if (!open || !(path.midi < S.PULSE_MIDI) || Math.abs(path.midi - open.pitch) > PLATEAU_STEP) return null;
  if (previous && followsByPeriods(attack, previous, path.midi)) return NO_STROKE;
  return standsUnbroken(track, from, open.pitch, S.PULSE_CLARITY) ? NO_STROKE : null;
}

/** A click on a note that goes on: its pitch stands unbroken, it is no louder, and next to nothing was added. */
export function clickOnNote(evidence: AttackEvidence): AttackDecision | null {
  const { attack, open, strokePitch, track, from } = evidence;
  if (!open || !strokePitch) return null;
  if (attack.energyRatio > S.RESTRIKE_ENERGY || strokePitch.share > S.CLICK_SHARE) return null;
  return standsUnbroken(track, from, open.pitch, S.CLICK_CLARITY) ? NO_STROKE : null;
}

/** The same pitch again so soon is the noise of one stroke, unless it is louder. */
export function noiseOfSameStroke(evidence: AttackEvidence): AttackDecision | null {
  const soon = evidence.secondsSinceOnset < S.RESTRIKE_SECONDS;
  return isSamePitch(evidence) && soon && evidence.attack.energyRatio < S.RESTRIKE_ENERGY ? NO_STROKE : null;
}

/** No pitch yet: a strong attack, or one that raises the energy out of silence, may still bring one. */
export function strokeWithoutPitch({ attack, open, midi }: AttackEvidence): AttackDecision | null {
  if (!Number.isNaN(midi)) return null;
  const stands = isStrong(attack) || (!open && attack.energyRatio >= S.FIRST_ENERGY);
  return stands ? { is: 'pitch to come' } : NO_STROKE;
}

/** Out of silence a soft attack must raise the energy. */
export function softInSilence(evidence: AttackEvidence): AttackDecision | null {
  if (evidence.open || !isSoft(evidence)) return null;
  return evidence.attack.energyRatio < S.FIRST_ENERGY ? NO_STROKE : null;
}

/** Over a note a soft attack must bring another pitch, or the same one clearly struck again. */
export function softOverNote(evidence: AttackEvidence): AttackDecision | null {
  if (!evidence.open || !isSoft(evidence)) return null;
  if (bringsAnotherPitch(evidence) ? isPlain(evidence.attack) : isRestruck(evidence.attack)) return null;
  return evidence.strokePitch ? { is: 'too soft', midi: evidence.midi } : NO_STROKE;
}

/** Letting go of a string clicks too, but then the sound dies at once and nothing follows. */
export function stringLetGo(evidence: AttackEvidence): AttackDecision | null {
  const { attack, next, strokePitch, track, from } = evidence;
  if (!isSamePitch(evidence) && strokePitch?.differsFromPath !== true) return null;
  const dies = track.level(from + S.RELEASE_FRAMES) < track.level(from) - S.RELEASE_DROP_DB;
  return attack.energyRatio < S.RELEASE_ENERGY && dies && !next ? NO_STROKE : null;
}

/** Everything else is a note: legato where the pitch changes within a hand's reach at even energy. */
export function newNote(evidence: AttackEvidence): AttackDecision {
  const { attack, semitonesApart, strokePitch, midi, from, spectra } = evidence;
  const slurred = !isSamePitch(evidence) && semitonesApart <= WIDEST_LEGATO && hasEvenEnergy(attack);
  return {
    is: 'note',
    attack: slurred ? 'legato' : 'struck',
    midi,
    from,
    pitchFromAttack: strokePitch?.differsFromPath ?? false,
    spectra,
  };
}

const isSamePitch = ({ semitonesApart }: AttackEvidence): boolean => semitonesApart < PLATEAU_STEP;

const bringsAnotherPitch = ({ semitonesApart }: AttackEvidence): boolean =>
  semitonesApart >= PLATEAU_STEP && !isHarmonic(semitonesApart);

/** Neither strong by itself, nor surely another pitch over notes that ring on. */
export function isSoft({ attack, strokePitch }: AttackEvidence): boolean {
  const joins =
    strokePitch?.differsFromPath === true &&
    strokePitch.share > S.JOINS_SHARE &&
    strokePitch.added > S.JOINS_CLARITY;
  return !isStrong(attack) && !joins;
}

/** Enough of an attack, where the pitch is another one. */
const isPlain = ({ flux, energyRatio }: Attack): boolean => flux > S.SOFT_FLUX || energyRatio > S.SOFT_ENERGY;

/** Enough of an attack, where the pitch or one of its harmonics goes on. */
const isRestruck = ({ flux, ratio, energyRatio }: Attack): boolean =>
  energyRatio > S.LOUD_RESTRIKE_ENERGY ||
  (ratio > S.RESTRIKE_RATIO && energyRatio > S.RESTRIKE_ENERGY && flux > S.SOFT_FLUX);

/** Does an attack follow another by one, two or three periods of `midi`, without being stronger? */
function followsByPeriods(attack: Attack, previous: Attack, midi: number): boolean {
  const hz = midiToHz(midi);
  const periods = (attack.seconds - previous.seconds) * hz;
  const secondsOff = Math.abs(periods - Math.round(periods)) / hz;
  const stronger = attack.flux >= S.PULSE_FLUX * previous.flux;
  return !stronger && periods < S.PULSE_PERIODS && secondsOff < S.PULSE_SECONDS;
}

/** Is `pitch` heard, and at least so clearly, in all frames about `frame`? */
function standsUnbroken(track: Track, frame: number, pitch: number, clarity: number): boolean {
  for (let f = frame - S.STANDS_FRAMES; f <= frame + S.STANDS_FRAMES; f++)
    if (!(Math.abs(track.midi(f) - pitch) < PLATEAU_STEP) || track.clarity(f) < clarity) return false;
  return true;
}
