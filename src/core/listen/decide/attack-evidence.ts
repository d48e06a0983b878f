import type { Attack } from '../attacks/attacks.ts';
import type { AttackSpectra, AttackWindow } from '../frames/attack-spectra.ts';
import { clearest, frameAt, standing } from '../path/contour.ts';
import type { Track } from '../path/track.ts';
import { LONG_ATTACK_WINDOW, SHORT_ATTACK_WINDOW } from '../tuning/frames.ts';
import * as S from '../tuning/strokes.ts';
import type { OpenNote } from './open-note.ts';
import { chooseStrokePitch, type PathPitch, type StrokePitch } from './stroke-pitch.ts';

/** The sound before and after a moment, over so many inner samples on each side; null where it has not come in or is forgotten. */
export type SpectraAt = (seconds: number, length: AttackWindow) => AttackSpectra | null;

/** The note that sounds when an attack comes. */
export type SoundingNote = Pick<OpenNote, 'onsetSeconds' | 'pitch' | 'flux'>;

/** All that the rules about an attack may look at. */
export interface AttackEvidence {
  readonly attack: Attack;
  /** The attack before it, whatever it turned out to be. */
  readonly previous: Attack | null;
  /** The next attack that is not much weaker, as far as it is known. */
  readonly next: Attack | null;
  /** The note that sounds, null in silence. */
  readonly open: SoundingNote | null;
  /** Since the onset of that note; Infinity in silence. */
  readonly secondsSinceOnset: number;
  /** The settled frames, and the first of them that counts for the attack. */
  readonly track: Track;
  readonly from: number;
  /** What the path hears from there to the next attack. */
  readonly path: PathPitch;
  /** The sound before and after the attack, and the pitch that it says was struck. */
  readonly spectra: AttackSpectra | null;
  readonly strokePitch: StrokePitch | null;
  /** The pitch after the attack: the struck one, else what the path hears. Fractional MIDI number, NaN for none. */
  readonly midi: number;
  /** Semitones from the note that sounds to that pitch; Infinity in silence, NaN for no pitch. */
  readonly semitonesApart: number;
}

/** What is known when an attack comes. */
export interface AttackCase {
  readonly track: Track;
  readonly attack: Attack;
  readonly previous: Attack | null;
  readonly open: SoundingNote | null;
  /** Attacks still to come, as far as they are known. */
  readonly later: readonly Attack[];
  /** The frame that is being decided, at the attack or just after it. */
  readonly frame: number;
}

/**
 * Collects the evidence. What costs a transform is computed when a rule first asks for it: most attacks that are no strokes
 * are ruled out before.
 */
export class CollectedEvidence implements AttackEvidence {
  readonly track: Track;
  readonly attack: Attack;
  readonly previous: Attack | null;
  readonly open: SoundingNote | null;
  readonly next: Attack | null;
  readonly from: number;
  readonly path: PathPitch;
  readonly secondsSinceOnset: number;
  readonly #spectraAt: SpectraAt;
  #spectra: AttackSpectra | null | undefined;
  #strokePitch: StrokePitch | null | undefined;

  constructor({ track, attack, previous, open, later, frame }: AttackCase, spectraAt: SpectraAt) {
    this.track = track;
    this.attack = attack;
    this.previous = previous;
    this.open = open;
    this.next = later.find((other) => other.flux > S.WEAKER_SHARE * attack.flux) ?? null;
    this.from = frameAt(track, attack.seconds + S.SETTLE_SECONDS, frame);
    this.path = this.#pathPitch();
    this.secondsSinceOnset = open ? attack.seconds - open.onsetSeconds : Infinity;
    this.#spectraAt = spectraAt;
  }

  get spectra(): AttackSpectra | null {
    if (this.#spectra === undefined) {
      const near = this.next && this.next.seconds - this.attack.seconds < S.SHORT_WINDOW_SECONDS;
      this.#spectra = this.#spectraAt(this.attack.seconds, near ? SHORT_ATTACK_WINDOW : LONG_ATTACK_WINDOW);
    }
    return this.#spectra;
  }

  get strokePitch(): StrokePitch | null {
    if (this.#strokePitch === undefined) {
      const chosen = this.spectra && chooseStrokePitch(this.spectra, this.path, this.open?.pitch ?? null);
      this.#strokePitch = chosen && isBelieved(chosen, this.path, this.attack) ? chosen : null;
    }
    return this.#strokePitch;
  }

  get midi(): number {
    return this.strokePitch?.midi ?? this.path.midi;
  }

  get semitonesApart(): number {
    return this.open ? Math.abs(this.midi - this.open.pitch) : Infinity;
  }

  #pathPitch(): PathPitch {
    const { track, from, attack, next } = this;
    const end = next ? next.seconds - S.BEFORE_NEXT_SECONDS : Infinity;
    const to = frameAt(track, Math.min(attack.seconds + S.JUDGE_SECONDS, end), from + 2);
    let midi = standing(track, from, to);
    if (Number.isNaN(midi)) midi = standing(track, from, from + S.JUDGE_FRAMES);
    return { midi, clarity: clearest(track, from, Math.max(to, from + S.JUDGE_FRAMES)) };
  }
}

/** Where the path hears no pitch, what the attack added must be clear, large and high enough to be believed. */
export function isBelieved(chosen: StrokePitch, path: PathPitch, attack: Attack): boolean {
  if (!Number.isNaN(path.midi)) return true;
  return (
    chosen.added >= S.ADDED_CLARITY &&
    chosen.share >= S.ADDED_SHARE &&
    chosen.midi >= S.ADDED_FROM &&
    attack.energyRatio <= S.RINGING_ENERGY
  );
}
