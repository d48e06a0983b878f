import { addedPitch } from './added.ts';
import { evenEnergy, isStrong, type Attack } from './attacks.ts';
import { isClick, isPulse } from './no-stroke.ts';
import { breathes } from './breath.ts';
import { measure } from './measure.ts';
import type { HeardNote } from './note.ts';
import { clearest, frameAt, isHarmonic, moveInto, plateau, standing } from './contour.ts';
import { hearPair, type PartialsAt } from './second.ts';
import { rises } from './octave.ts';
import * as S from './settings.ts';
import { SpeechGuard } from './steady.ts';
import type { Track } from './track.ts';

interface Open {
  onsetSeconds: number;
  attack: 'struck' | 'legato';
  /** First frame that belongs to it. */
  from: number;
  /** Last frame with its pitch. */
  last: number;
  /** Centre of the plateau that it stands on, and the plateau's first frame. */
  pitch: number;
  plateauFrom: number;
  peakDb: number;
  /** Flux of its attack, 0 without. */
  flux: number;
  /** Its pitch comes from what its attack added, not from the path. */
  sure: boolean;
  /** Already handed out live, before its end. */
  told: boolean;
  /** Frames in a row an octave or twelfth away. */
  other: number;
}

/** Settled frames and attacks → notes, one frame at a time, each decided with LOOK_AHEAD frames in sight. */
export class NoteMaker {
  readonly #track: Track;
  readonly #partialsAt: PartialsAt;
  readonly #notes: HeardNote[] = [];
  readonly #attacks: Attack[] = [];
  #open: Open | null = null;
  readonly #guard = new SpeechGuard();
  #recentDb = -120;
  #floorDb = S.FIRST_FLOOR_DB;
  #frame = 0;
  /** Notes handed out so far. */
  #taken = 0;
  #pendingAttack: Attack | null = null;
  #lastAttack: Attack | null = null;
  /** The newest attack that was not taken for a note. */
  #refused: Attack | null = null;

  constructor(track: Track, partialsAt: PartialsAt) {
    this.#track = track;
    this.#partialsAt = partialsAt;
  }

  get notes(): readonly HeardNote[] {
    return this.#notes;
  }

  /** Notes not handed out before: those that have ended, and the one that stands, its end still to come. */
  takeFresh(): HeardNote[] {
    const fresh = this.#notes.slice(this.#taken);
    this.#taken = this.#notes.length;
    const open = this.#open;
    if (open && !open.told && !this.#guard.hearsSpeech && this.#stands(open)) {
      open.told = true;
      // The frames that are in sight stand on its pitch too.
      fresh.push(this.#measured(open, this.#track.seconds(this.#track.count - 1)));
    }
    return fresh;
  }

  /** Has the open note sounded long enough, and does its pitch rest as far as can be seen? */
  #stands(open: Open): boolean {
    const track = this.#track;
    if (track.seconds(this.#frame) - open.onsetSeconds < S.LIVE_COMMIT_SECONDS) return false;
    for (let f = open.last - 4; f < track.count; f++)
      if (Math.abs(track.midi(f) - open.pitch) > S.LIVE_REST) return false;
    return true;
  }

  attack(attack: Attack): void {
    this.#attacks.push(attack);
  }

  /** Decides every frame that has its look-ahead; at the end of the sound, all of them. */
  advance(atEnd: boolean): void {
    const limit = this.#track.count - (atEnd ? 0 : S.LOOK_AHEAD);
    for (; this.#frame < limit; this.#frame++) this.#decide(this.#frame);
    if (atEnd) this.#close(this.#track.seconds(this.#track.count - 1));
  }

  #decide(frame: number): void {
    const track = this.#track;
    const level = track.level(frame);
    this.#recentDb = Math.max(level, this.#recentDb - 0.08);
    // The quietest of late: falls in 50 ms, rises 3 dB a second.
    this.#floorDb += level < this.#floorDb ? 0.3 * (level - this.#floorDb) : 0.024;
    const seconds = track.seconds(frame);
    while (this.#attacks.length > 0 && this.#attacks[0]!.seconds <= seconds)
      this.#take(this.#attacks.shift()!, frame);
    const open = this.#open;
    const midi = track.midi(frame);
    if (!open) this.#begin(frame, midi);
    else if (frame >= open.from) this.#follow(open, frame, midi, level);
  }

  /** Is this attack a new note? Decided from what sounds after it, up to the next attack. */
  #take(attack: Attack, frame: number): void {
    const open = this.#open;
    const previous = this.#lastAttack;
    this.#lastAttack = attack;
    const from = frameAt(this.#track, attack.seconds + S.SETTLE_SECONDS, frame);
    const next = this.#attacks.find((a) => a.flux > 0.5 * attack.flux);
    const until = Math.min(attack.seconds + S.JUDGE_SECONDS, next ? next.seconds - 0.004 : Infinity);
    const to = frameAt(this.#track, until, from + 2);
    let heard = standing(this.#track, from, to);
    if (Number.isNaN(heard)) heard = standing(this.#track, from, from + S.JUDGE_FRAMES);
    const strong = isStrong(attack);
    const clarity = clearest(this.#track, from, Math.max(to, from + S.JUDGE_FRAMES));
    const added = addedPitch(attack, { midi: heard, clarity }, open?.pitch ?? null);
    const after = added ?? heard;
    if (open) {
      const since = attack.seconds - open.onsetSeconds;
      if (since < S.REFRACTORY_SECONDS) return;
      if (isPulse(this.#track, attack, previous, from, heard, open.pitch)) return;
      if (isClick(this.#track, attack, from, open.pitch)) return;
      if (since < 2 * S.REFRACTORY_SECONDS && attack.flux < 0.5 * open.flux) return;
      // The same pitch again so soon is one stroke's own noise unless it is louder.
      const same = Math.abs(after - open.pitch) < S.PLATEAU_STEP;
      if (same && since < S.RESTRIKE_SECONDS && attack.energyRatio < S.RESTRIKE_ENERGY) return;
    }
    if (Number.isNaN(after)) {
      if (strong || (!open && attack.energyRatio >= 1.5)) this.#pendingAttack = attack;
      return;
    }
    let kind: Open['attack'] = 'struck';
    const joins =
      added !== null && attack.added!.share > S.JOINS_SHARE && attack.added!.clarity > S.JOINS_CLARITY;
    if (open) {
      const apart = Math.abs(after - open.pitch);
      const louder =
        attack.energyRatio > 2.5 ||
        (attack.ratio > S.RESTRIKE_RATIO && attack.energyRatio > S.RESTRIKE_ENERGY && attack.flux > 0.12);
      const fresh =
        apart < S.PLATEAU_STEP || isHarmonic(apart) ? louder : attack.flux > 0.12 || attack.energyRatio > 2;
      if (!strong && !fresh && !joins) {
        this.#refused = attack;
        return;
      }
      // Letting go of a string clicks too, but then the sound dies at once.
      const dies = this.#track.level(from + 6) < this.#track.level(from) - S.RELEASE_DROP_DB;
      if (attack.energyRatio < 1 && apart < S.PLATEAU_STEP && dies && !next) return;
      if (apart >= S.PLATEAU_STEP && apart <= S.WIDEST_LEGATO && evenEnergy(attack)) kind = 'legato';
      this.#close(attack.seconds);
    } else if (this.#tooQuiet(from) || (!strong && !joins && attack.energyRatio < 1.5)) return;
    this.#start(attack.seconds, kind, from, after, attack.flux);
    if (added !== null && this.#open) this.#open.sure = true;
  }

  #tooQuiet(frame: number): boolean {
    const level = Math.max(this.#track.level(frame), this.#track.level(frame + 2));
    return level < this.#recentDb - S.START_DROP_DB || level < this.#floorDb + S.ABOVE_FLOOR_DB;
  }

  #begin(frame: number, midi: number): void {
    if (Number.isNaN(midi)) return;
    const track = this.#track;
    if (this.#tooQuiet(frame)) return;
    const pitch = plateau(this.#track, frame, S.PLATEAU_FRAMES, 1);
    if (Number.isNaN(pitch)) return;
    const attack = this.#pendingAttack;
    this.#pendingAttack = null;
    if (attack && track.seconds(frame) - attack.seconds < 0.1) {
      this.#start(attack.seconds, 'struck', frame, pitch, attack.flux);
      return;
    }
    // No attack: the level must have risen.
    let lowest = Infinity;
    for (let f = frame - 10; f < frame; f++) lowest = Math.min(lowest, track.level(f));
    if (track.level(frame + 3) - lowest < 6) return;
    this.#start(track.seconds(frame), 'struck', frame, pitch, 0);
  }

  #follow(open: Open, frame: number, midi: number, level: number): void {
    const track = this.#track;
    open.peakDb = Math.max(open.peakDb, level);
    if (level < open.peakDb - S.END_DROP_DB) {
      this.#close(track.seconds(open.last));
      return;
    }
    if (open.sure && frame - open.from < S.SURE_FRAMES && !(Math.abs(midi - open.pitch) < S.PLATEAU_REACH)) {
      open.last = frame;
      return;
    }
    if (Number.isNaN(midi)) {
      if (frame - open.last > S.GAP_FRAMES) this.#close(track.seconds(open.last));
      return;
    }
    if (frame - open.from > 4 && this.#breath(open, frame)) return;
    if (Math.abs(midi - open.pitch) < S.PLATEAU_REACH) {
      // The centre follows slowly: an intonation that drifts, not a bend.
      open.pitch += (midi - open.pitch) / Math.min(12, 2 + frame - open.plateauFrom);
      open.last = frame;
      return;
    }
    const arrival = plateau(this.#track, frame, S.PLATEAU_FRAMES, S.PLATEAU_WIDTH);
    if (Number.isNaN(arrival)) return;
    this.#arrive(open, frame, arrival);
  }

  /** The same pitch breathed or bowed again: the level dips and comes back, with no attack to speak of. */
  #breath(open: Open, frame: number): boolean {
    if (open.pitch < S.DIP_MIDI || !breathes(this.#track, open.from, frame)) return false;
    const seconds = this.#track.seconds(frame);
    if (this.#attacks.some((a) => isStrong(a) && a.seconds < seconds + 0.045)) return false;
    const pitch = standing(this.#track, frame + 2, frame + S.LOOK_AHEAD);
    if (!(Math.abs(pitch - open.pitch) < S.PLATEAU_STEP)) return false;
    this.#close(seconds);
    this.#start(seconds, 'struck', frame + 1, pitch, 0);
    return true;
  }

  /** The pitch has come to rest elsewhere: another note, a bend, a vibrato's turn, or an overtone left over. */
  #arrive(open: Open, frame: number, pitch: number): void {
    const track = this.#track;
    const step = pitch - open.pitch;
    // An attack on its way decides for itself.
    if (this.#attacks.some((a) => a.flux > 0.12 && a.seconds < track.seconds(frame) + 0.045)) return;
    if (isHarmonic(Math.abs(step)) || Math.abs(step) > S.WIDEST_MOVE) {
      // No hand jumps so far without an attack: it is the same note, misread before or now.
      open.other++;
      const most = open.other > Math.max(5, open.last - open.from - open.other);
      if (!open.sure && (most || rises(track, open, frame, pitch, open.other))) {
        open.pitch = pitch;
        open.plateauFrom = frame;
        open.other = 0;
      }
      open.last = frame;
      return;
    }
    if (track.level(frame + 2) < open.peakDb - S.LEGATO_DROP_DB) return;
    const move = moveInto(this.#track, open, frame, pitch);
    if (move.split) {
      const stroke = this.#softStroke(open, frame, pitch);
      if (!stroke) open.last = move.left;
      this.#close(stroke?.seconds ?? move.seconds);
      this.#start(stroke?.seconds ?? move.seconds, stroke ? 'struck' : 'legato', move.there, pitch, 0);
      return;
    }
    open.pitch = pitch;
    open.plateauFrom = frame;
    open.last = frame;
  }

  /** A stroke too soft to be sure of, if it brought just the pitch that now stands alone: the note began there. */
  #softStroke(open: Open, frame: number, pitch: number): Attack | null {
    const stroke = this.#refused;
    if (!stroke?.added || Math.abs(stroke.added.midi - pitch) > S.PLATEAU_STEP) return null;
    const age = this.#track.seconds(frame) - stroke.seconds;
    return age > S.SOFT_SECONDS || stroke.seconds - open.onsetSeconds < S.SHORTEST_NOTE ? null : stroke;
  }

  #start(onset: number, attack: Open['attack'], from: number, pitch: number, flux: number): void {
    this.#open = {
      // The first frame's middle lies before the first sample.
      onsetSeconds: Math.max(0, onset),
      attack,
      from,
      last: from,
      pitch,
      plateauFrom: from,
      peakDb: this.#track.level(from),
      flux,
      sure: false,
      told: false,
      other: 0,
    };
  }

  #measured(open: Open, offsetSeconds: number): HeardNote {
    const note = measure(this.#track, open, offsetSeconds);
    return { ...note, ...hearPair(this.#partialsAt, note, this.#track.seconds(open.plateauFrom)) };
  }

  #close(offsetSeconds: number): void {
    const open = this.#open;
    this.#open = null;
    if (!open) return;
    if (offsetSeconds - open.onsetSeconds < S.SHORTEST_NOTE) return;
    const note = this.#measured(open, offsetSeconds);
    if (!this.#guard.admits(this.#track, open, note, open.sure)) return;
    this.#notes.push(note);
    if (open.told) this.#taken++;
  }
}
