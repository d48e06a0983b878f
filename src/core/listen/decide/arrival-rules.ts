import type { Attack } from '../attacks/attacks.ts';
import { rises } from '../measure/octave.ts';
import type { PartialsAt } from '../measure/second.ts';
import { isHarmonic, moveInto, type Move } from '../path/contour.ts';
import type { Track } from '../path/track.ts';
import * as S from '../tuning/notes.ts';
import { SOFT_FLUX } from '../tuning/strokes.ts';
import type { OpenNote } from './open-note.ts';

/** An attack that was too soft to be a stroke, and the pitch that it would have brought (fractional MIDI number). */
export interface SoftAttack {
  readonly seconds: number;
  readonly midi: number;
}

/** All that the rules about a pitch that has come to rest elsewhere may look at. */
export interface ArrivalEvidence {
  readonly track: Track;
  /** First frame of the new plateau, and its pitch as a fractional MIDI number. */
  readonly frame: number;
  readonly pitch: number;
  readonly open: Readonly<OpenNote>;
  /** Attacks still to come, as far as they are known. */
  readonly later: readonly Attack[];
  /** The newest attack that was too soft to be a stroke. */
  readonly softAttack: SoftAttack | null;
  readonly partialsAt: PartialsAt;
}

/** What the arrival turned out to be. */
export type ArrivalDecision =
  /** Nothing yet. */
  | { readonly is: 'undecided' }
  /** The note goes on: the path hears something else for a while. */
  | { readonly is: 'another string' }
  /** The note goes on: the path misreads it now. */
  | { readonly is: 'misread now' }
  /** The note goes on: the path misread it before, the new pitch is right. */
  | { readonly is: 'misread before' }
  /** The note goes on at the new pitch: a bend, or a vibrato's turn. */
  | { readonly is: 'bend' }
  | {
      readonly is: 'note';
      readonly attack: 'struck' | 'legato';
      readonly onsetSeconds: number;
      /** First frame of the new note, and last one of the old note where the way between belongs to neither. */
      readonly from: number;
      readonly last: number | null;
    };

/** A rule decides, or leaves the arrival to the next rule (null). */
export type ArrivalRule = (evidence: ArrivalEvidence) => ArrivalDecision | null;

const UNDECIDED: ArrivalDecision = { is: 'undecided' };

/** In this order; the last one always decides. */
export const arrivalRules: readonly ArrivalRule[] = [
  attackOnItsWay,
  farAway,
  diedAway,
  stringThatRingsOn,
  separateNote,
  bend,
];

/** What the new plateau is: the answer of the first rule that has one. */
export function decideArrival(evidence: ArrivalEvidence): ArrivalDecision {
  for (const rule of arrivalRules) {
    const decision = rule(evidence);
    if (decision) return decision;
  }
  throw new Error('the last rule about arrivals always decides');
}

/** An attack on its way decides for itself. */
export function attackOnItsWay({ track, frame, later }: ArrivalEvidence): ArrivalDecision | null {
  const until = track.seconds(frame) + S.ATTACK_NEAR_SECONDS;
  return later.some((attack) => attack.flux > SOFT_FLUX && attack.seconds < until) ? UNDECIDED : null;
}

/** A harmonic, or further than a hand's reach: without an attack it is the same note, misread before or now. */
export function farAway({ track, frame, pitch, open }: ArrivalEvidence): ArrivalDecision | null {
  const step = pitch - open.pitch;
  if (!isHarmonic(Math.abs(step)) && Math.abs(step) <= S.WIDEST_MOVE) return null;
  const framesAway = open.framesAway + 1;
  const framesOn = open.last - open.from - framesAway;
  const most = framesAway > Math.max(S.MISREAD_FRAMES, framesOn);
  // The fundamental that the note has in common with a string that rings on is no note.
  const common = step < -S.COMMON_FROM && open.ringing?.sounds === true;
  const before = !open.pitchFromAttack && !common && (most || rises(track, open, frame, pitch, framesAway));
  return { is: before ? 'misread before' : 'misread now' };
}

/** What is left of a note that has died away is no legato note. */
export function diedAway({ track, frame, open }: ArrivalEvidence): ArrivalDecision | null {
  const level = track.level(frame + S.LEGATO_DROP_FRAMES);
  return level < open.peakDb - S.LEGATO_DROP_DB ? UNDECIDED : null;
}

/** The path has gone over to a string that rings on, while the struck note still sounds beside it. */
export function stringThatRingsOn(evidence: ArrivalEvidence): ArrivalDecision | null {
  const { track, frame, pitch, open, partialsAt } = evidence;
  const seconds = track.seconds(frame);
  const rings = open.ringing?.passesFor(pitch, open.pitch, open.pitchFromAttack, seconds, partialsAt);
  return rings ? { is: 'another string' } : null;
}

/** A hammer-on, a pull-off, a slur or a slide; or a soft attack that brought just this pitch, which now stands alone. */
export function separateNote(evidence: ArrivalEvidence): ArrivalDecision | null {
  const { track, frame, pitch, open } = evidence;
  const move = moveInto(track, open, frame, pitch);
  if (!isSeparate(move)) return null;
  const struck = softOnset(evidence);
  return struck === null
    ? { is: 'note', attack: 'legato', onsetSeconds: move.seconds, from: move.there, last: move.left }
    : { is: 'note', attack: 'struck', onsetSeconds: struck, from: move.there, last: null };
}

/** Everything else is one note whose pitch moves. */
export function bend(): ArrivalDecision {
  return { is: 'bend' };
}

/** Do the plateaus at both ends of a move belong to two notes? */
export function isSeparate(move: Move): boolean {
  if (Math.abs(move.step) < S.PLATEAU_STEP || move.stoodSeconds < S.SHORTEST_NOTE) return false;
  return isQuick(move) || isSlide(move);
}

/** As quick as a hammer-on, a pull-off or a slur; vibrato and bends take longer. */
export const isQuick = (move: Move): boolean => move.fastestShare >= S.HAMMER_SHARE;

/** A little slower, from a plateau that stood for a while and was flat. */
export function isSlide(move: Move): boolean {
  const share = move.step < 0 ? S.SLIDE_DOWN_SHARE : S.SLIDE_SHARE;
  return (
    move.fastestShare >= share &&
    move.unevenness <= S.FLAT &&
    move.stoodSeconds >= S.SLIDE_STOOD &&
    move.whole >= S.SLIDE_LEAST
  );
}

/** When the soft attack came that brought this pitch, in seconds; null without one. */
export function softOnset({ track, frame, pitch, open, softAttack }: ArrivalEvidence): number | null {
  if (!softAttack || Math.abs(softAttack.midi - pitch) > S.PLATEAU_STEP) return null;
  const age = track.seconds(frame) - softAttack.seconds;
  const tooSoon = softAttack.seconds - open.onsetSeconds < S.SHORTEST_NOTE;
  return age > S.SOFT_SECONDS || tooSoon ? null : softAttack.seconds;
}
