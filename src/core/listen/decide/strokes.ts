import { LONG_STROKE, SHORT_STROKE, type Stroke } from '../frames/stroke.ts';
import { evenEnergy, isStrong, type Attack } from '../attacks/attacks.ts';
import { clearest, frameAt, isHarmonic, standing } from '../path/contour.ts';
import { isClick, isPulse } from './no-stroke.ts';
import * as S from '../tuning.ts';
import { strike, type Heard, type Struck } from './struck.ts';
import type { Track } from '../path/track.ts';

/** The sound about an attack, so many inner samples on each side; null where it has not come in or is forgotten. */
export type StrokeAt = (seconds: number, length: typeof LONG_STROKE | typeof SHORT_STROKE) => Stroke | null;

/** The note that sounds when an attack comes. */
export interface Sounding {
  readonly onsetSeconds: number;
  readonly pitch: number;
  /** Flux of its own attack, 0 without. */
  readonly flux: number;
}

/** What an attack turned out to be. Pitches are fractional MIDI numbers. */
export type Verdict =
  /** No stroke: noise of one that was there already, a string let go. */
  | { readonly is: 'nothing' }
  /** A stroke whose pitch is still to come. */
  | { readonly is: 'unpitched' }
  /** Too soft to be sure of; `midi` is what it would have brought. */
  | { readonly is: 'unsure'; readonly midi: number }
  | {
      readonly is: 'note';
      readonly attack: 'struck' | 'legato';
      readonly midi: number;
      /** First frame that belongs to it. */
      readonly from: number;
      /** The path hears something else. */
      readonly sure: boolean;
      readonly stroke: Stroke | null;
    };

const NOTHING: Verdict = { is: 'nothing' };

/** Tells which attacks are new notes, from what sounds after them up to the next attack. */
export class StrokeJudge {
  readonly #track: Track;
  readonly #strokeAt: StrokeAt;
  #previous: Attack | null = null;

  constructor(track: Track, strokeAt: StrokeAt) {
    this.#track = track;
    this.#strokeAt = strokeAt;
  }

  /**
   * @param frame the frame that is being decided, at the attack or just after it
   * @param later attacks still to come, as far as they are known
   * @param open the note that sounds, null in silence
   */
  judge(attack: Attack, frame: number, later: readonly Attack[], open: Sounding | null): Verdict {
    const previous = this.#previous;
    this.#previous = attack;
    const since = open ? attack.seconds - open.onsetSeconds : Infinity;
    if (since < S.REFRACTORY_SECONDS) return NOTHING;
    const next = later.find((a) => a.flux > 0.5 * attack.flux);
    const from = frameAt(this.#track, attack.seconds + S.SETTLE_SECONDS, frame);
    const heard = this.#heard(attack, next, from);
    if (open && isPulse(this.#track, attack, previous, from, heard.midi, open.pitch)) return NOTHING;
    if (open && since < 2 * S.REFRACTORY_SECONDS && attack.flux < 0.5 * open.flux) return NOTHING;
    const near = next && next.seconds - attack.seconds < S.STROKE_ROOM;
    const stroke = this.#strokeAt(attack.seconds, near ? SHORT_STROKE : LONG_STROKE);
    const struck = stroke && pitchOf(attack, stroke, heard, open?.pitch ?? null);
    const midi = struck?.midi ?? heard.midi;
    const apart = open ? Math.abs(midi - open.pitch) : Infinity;
    const same = apart < S.PLATEAU_STEP;
    if (open && struck && isClick(this.#track, attack, struck.share, from, open.pitch)) return NOTHING;
    // The same pitch again so soon is one stroke's own noise unless it is louder.
    if (same && since < S.RESTRIKE_SECONDS && attack.energyRatio < S.RESTRIKE_ENERGY) return NOTHING;
    const strong = isStrong(attack);
    if (Number.isNaN(midi)) {
      const stands = strong || (!open && attack.energyRatio >= S.FIRST_ENERGY);
      return stands ? { is: 'unpitched' } : NOTHING;
    }
    const joins = struck?.differs && struck.share > S.JOINS_SHARE && struck.added > S.JOINS_CLARITY;
    if (!strong && !joins) {
      if (!open && attack.energyRatio < S.FIRST_ENERGY) return NOTHING;
      if (open && !isFresh(attack, apart)) return struck ? { is: 'unsure', midi } : NOTHING;
    }
    // Letting go of a string clicks too, but then the sound dies at once.
    const dies = this.#track.level(from + 6) < this.#track.level(from) - S.RELEASE_DROP_DB;
    if ((same || struck?.differs) && attack.energyRatio < 1 && dies && !next) return NOTHING;
    const slurred = !same && apart <= S.WIDEST_LEGATO && evenEnergy(attack);
    return {
      is: 'note',
      attack: slurred ? 'legato' : 'struck',
      midi,
      from,
      sure: struck?.differs ?? false,
      stroke,
    };
  }

  /** What the path hears from here to the next attack. */
  #heard(attack: Attack, next: Attack | undefined, from: number): Heard {
    const until = Math.min(attack.seconds + S.JUDGE_SECONDS, next ? next.seconds - 0.004 : Infinity);
    const to = frameAt(this.#track, until, from + 2);
    let midi = standing(this.#track, from, to);
    if (Number.isNaN(midi)) midi = standing(this.#track, from, from + S.JUDGE_FRAMES);
    return { midi, clarity: clearest(this.#track, from, Math.max(to, from + S.JUDGE_FRAMES)) };
  }
}

/** Is an attack that is not strong by itself a stroke, so many semitones from the note that sounds? */
function isFresh(attack: Attack, apart: number): boolean {
  if (apart >= S.PLATEAU_STEP && !isHarmonic(apart)) return attack.flux > 0.12 || attack.energyRatio > 2;
  const { energyRatio, flux, ratio } = attack;
  return energyRatio > 2.5 || (ratio > S.RESTRIKE_RATIO && energyRatio > S.RESTRIKE_ENERGY && flux > 0.12);
}

/** The pitch that an attack brought, where the sound about it says one. */
function pitchOf(attack: Attack, stroke: Stroke, heard: Heard, before: number | null): Struck | null {
  const struck = strike(stroke, heard, before);
  if (!struck || !Number.isNaN(heard.midi)) return struck;
  const clear = struck.added >= S.ADDED_CLARITY && struck.share >= S.ADDED_SHARE;
  return clear && struck.midi >= S.ADDED_FROM && attack.energyRatio <= S.RINGING_ENERGY ? struck : null;
}
