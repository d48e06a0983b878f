import { isStrong, type Attack } from '../attacks/attacks.ts';
import { breathes } from './breath.ts';
import { isHarmonic, moveInto, plateau, standing } from '../path/contour.ts';
import { measure } from '../measure/measure.ts';
import type { HeardNote } from '../../take/note.ts';
import { rises } from '../measure/octave.ts';
import { Ringing } from './ringing.ts';
import { hearPair, type PartialsAt } from '../measure/second.ts';
import * as S from '../tuning.ts';
import { SpeechGuard } from './steady.ts';
import { StrokeJudge, type StrokeAt } from './strokes.ts';
import type { Track } from '../path/track.ts';

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
  /** Its pitch comes from the sound about its attack, not from the path. */
  sure: boolean;
  /** What may ring on beside it; null without a stroke of its own. */
  ringing: Ringing | null;
  /** Already handed out live, before its end. */
  told: boolean;
  /** Frames in a row an octave or twelfth away. */
  other: number;
}

/** The sound itself of the last seconds, where frames do not say enough. */
export interface Sound {
  readonly partialsAt: PartialsAt;
  readonly strokeAt: StrokeAt;
}

/** Settled frames and attacks → notes, one frame at a time, each decided with LOOK_AHEAD frames in sight. */
export class NoteMaker {
  readonly #track: Track;
  readonly #partialsAt: PartialsAt;
  readonly #judge: StrokeJudge;
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
  /** The newest stroke that was not sure, and what it would have brought. */
  #unsure: { readonly seconds: number; readonly midi: number } | null = null;

  constructor(track: Track, sound: Sound) {
    this.#track = track;
    this.#partialsAt = sound.partialsAt;
    this.#judge = new StrokeJudge(track, sound.strokeAt);
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

  /** An attack: a new note, or none. */
  #take(attack: Attack, frame: number): void {
    const open = this.#open;
    const verdict = this.#judge.judge(attack, frame, this.#attacks, open);
    if (verdict.is === 'unpitched') this.#pendingAttack = attack;
    if (verdict.is === 'unsure') this.#unsure = { seconds: attack.seconds, midi: verdict.midi };
    if (verdict.is !== 'note') return;
    if (open) this.#close(attack.seconds);
    else if (this.#tooQuiet(verdict.from)) return;
    const started = this.#start(attack.seconds, verdict.attack, verdict.from, verdict.midi, attack.flux);
    started.sure = verdict.sure;
    if (verdict.attack === 'struck' && verdict.stroke !== null)
      started.ringing = new Ringing(this.#notes, verdict.stroke, attack.seconds, verdict.midi);
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
      if (!open.ringing?.draws(open.pitch, midi))
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
    // Two strings near each other beat.
    if (open.ringing?.draws(open.pitch)) return false;
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
      // The fundamental that it has in common with a string that rings on is no note.
      const common = step < -S.COMMON_FROM && open.ringing?.sounds === true;
      if (!open.sure && !common && (most || rises(track, open, frame, pitch, open.other))) {
        open.pitch = pitch;
        open.plateauFrom = frame;
        open.other = 0;
      }
      open.last = frame;
      return;
    }
    if (track.level(frame + 2) < open.peakDb - S.LEGATO_DROP_DB) return;
    const seconds = track.seconds(frame);
    if (open.ringing?.passesFor(pitch, open.pitch, open.sure, seconds, this.#partialsAt)) {
      open.last = frame;
      return;
    }
    const move = moveInto(this.#track, open, frame, pitch);
    if (move.split) {
      const stroke = this.#softStroke(open, frame, pitch);
      if (stroke === null) open.last = move.left;
      this.#close(stroke ?? move.seconds);
      this.#start(stroke ?? move.seconds, stroke === null ? 'legato' : 'struck', move.there, pitch, 0);
      return;
    }
    open.pitch = pitch;
    open.plateauFrom = frame;
    open.last = frame;
  }

  /** When a stroke was too soft to be sure of, but brought just the pitch that now stands alone: the note began there. */
  #softStroke(open: Open, frame: number, pitch: number): number | null {
    const stroke = this.#unsure;
    if (!stroke || Math.abs(stroke.midi - pitch) > S.PLATEAU_STEP) return null;
    const age = this.#track.seconds(frame) - stroke.seconds;
    const tooSoon = stroke.seconds - open.onsetSeconds < S.SHORTEST_NOTE;
    return age > S.SOFT_SECONDS || tooSoon ? null : stroke.seconds;
  }

  #start(onset: number, attack: Open['attack'], from: number, pitch: number, flux: number): Open {
    const open: Open = {
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
      ringing: null,
      told: false,
      other: 0,
    };
    this.#open = open;
    return open;
  }

  #measured(open: Open, offsetSeconds: number): HeardNote {
    const reach = open.ringing?.draws(open.pitch) ? S.DRAWN_REACH : 1;
    const note = measure(this.#track, open, offsetSeconds, reach);
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
