import type { Attack } from './attacks.ts';
import { measure } from './measure.ts';
import type { HeardNote } from './note.ts';
import * as S from './settings.ts';
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
  /** How far it has been bent so far. */
  bend: number;
  /** Flux of its attack, 0 without. */
  flux: number;
  /** Frames in a row an octave or twelfth away. */
  other: number;
}

interface Move {
  readonly split: boolean;
  /** Last frame on the old plateau, first on the new one, and the moment between. */
  readonly left: number;
  readonly there: number;
  readonly seconds: number;
}

/** Settled frames and attacks → notes, one frame at a time, each decided with LOOK_AHEAD frames in sight. */
export class NoteMaker {
  readonly #track: Track;
  readonly #notes: HeardNote[] = [];
  readonly #attacks: Attack[] = [];
  #open: Open | null = null;
  #recentDb = -120;
  #floorDb = 0;
  #frame = 0;
  #pendingAttack: Attack | null = null;

  constructor(track: Track) {
    this.#track = track;
  }

  get notes(): readonly HeardNote[] {
    return this.#notes;
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
    const from = this.#frameAt(attack.seconds + S.SETTLE_SECONDS, frame);
    const next = this.#attacks.find((a) => a.flux > 0.5 * attack.flux);
    const until = Math.min(attack.seconds + S.JUDGE_SECONDS, next ? next.seconds - 0.004 : Infinity);
    const after = this.#standing(from, this.#frameAt(until, from + 2));
    const strong = isStrong(attack);
    if (open) {
      const since = attack.seconds - open.onsetSeconds;
      if (since < S.REFRACTORY_SECONDS) return;
      if (since < 2 * S.REFRACTORY_SECONDS && attack.flux < 0.5 * open.flux) return;
    }
    if (Number.isNaN(after)) {
      if (strong || !open) this.#pendingAttack = attack;
      return;
    }
    if (open) {
      const apart = Math.abs(after - open.pitch);
      const louder =
        attack.energyRatio > 2.5 ||
        (attack.ratio > S.RESTRIKE_RATIO && attack.energyRatio > S.RESTRIKE_ENERGY && attack.flux > 0.12);
      const fresh =
        apart < S.PLATEAU_STEP || isHarmonic(apart) ? louder : attack.flux > 0.12 || attack.energyRatio > 2;
      if (!strong && !fresh) return;
      // Letting go of a string clicks too, but then the sound dies at once.
      const dies = this.#track.level(from + 6) < this.#track.level(from) - S.RELEASE_DROP_DB;
      if (attack.energyRatio < 1 && apart < S.PLATEAU_STEP && dies && !next) return;
      this.#close(attack.seconds);
    } else if (this.#tooQuiet(from) || (!strong && attack.energyRatio < 1.5)) return;
    this.#start(attack.seconds, 'struck', from, after, attack.flux);
  }

  /** How the pitch came from the open note's plateau to the one at `frame`: two notes, or a bend or vibrato. */
  #moveInto(open: Open, frame: number, pitch: number): Move {
    const track = this.#track;
    const step = pitch - open.pitch;
    const near = Math.max(0.15, S.TRAVEL_EDGE * Math.abs(step));
    let there = frame;
    while (there < frame + S.PLATEAU_FRAMES && !(Math.abs(track.midi(there) - pitch) < near)) there++;
    while (there > open.from + 1 && Math.abs(track.midi(there - 1) - pitch) < near) there--;
    let left = there - 1;
    while (left > open.from && !(Math.abs(track.midi(left) - open.pitch) < near)) left--;
    const since = open.plateauFrom === open.from ? open.onsetSeconds : track.seconds(open.plateauFrom);
    const stood = track.seconds(left) - since;
    const whole = Math.min(this.#extremes(left - 6, there + 5), Math.abs(step) + 1);
    const ratio = this.#fastest(left - 3, there) / whole;
    const flat = this.#extremes(Math.max(open.from, left - 9), left - 1) <= S.FLAT;
    const slid = ratio >= S.SLIDE_SHARE && flat && stood >= S.SLIDE_STOOD && whole >= 0.85;
    let half = there;
    while (half > left + 1 && Math.abs(track.midi(half - 1) - pitch) < 0.35) half--;
    let gap = half - 1;
    while (gap > left && Number.isNaN(track.midi(gap))) gap--;
    const seconds = (track.seconds(half) + track.seconds(gap)) / 2;
    const split =
      Math.abs(step) >= S.PLATEAU_STEP && (ratio >= S.HAMMER_SHARE || slid) && stood >= S.SHORTEST_NOTE;
    return { split, left, there, seconds };
  }

  /** Largest change of pitch within three frames, or over a gap without pitch, that starts in [from, to]. */
  #fastest(from: number, to: number): number {
    const track = this.#track;
    let fastest = 0;
    for (let f = from; f <= to; f++) {
      let g = f + 3;
      while (g < f + 8 && Number.isNaN(track.midi(g))) g++;
      const change = Math.abs(track.midi(g) - track.midi(f));
      if (change > fastest) fastest = change;
    }
    return fastest;
  }

  /** Highest minus lowest pitch of the voiced frames [from, to). */
  #extremes(from: number, to: number): number {
    let low = Infinity;
    let high = -Infinity;
    for (let f = from; f < to; f++) {
      const midi = this.#track.midi(f);
      if (midi < low) low = midi;
      if (midi > high) high = midi;
    }
    return Math.max(0, high - low);
  }

  #tooQuiet(frame: number): boolean {
    const level = Math.max(this.#track.level(frame), this.#track.level(frame + 2));
    return level < this.#recentDb - S.START_DROP_DB || level < this.#floorDb + S.ABOVE_FLOOR_DB;
  }

  /** First frame at or after `seconds`, sought from `frame`. */
  #frameAt(seconds: number, frame: number): number {
    let f = Math.max(0, frame - 6);
    while (f < this.#track.count - 1 && this.#track.seconds(f) < seconds) f++;
    return f;
  }

  /** The pitch that most frames of [from, to) agree on within half a semitone, NaN when fewer than two do. */
  #standing(from: number, to: number): number {
    const track = this.#track;
    let best = 1;
    let pitch = NaN;
    for (let f = from; f < to; f++) {
      const midi = track.midi(f);
      let agree = 0;
      let sum = 0;
      for (let g = from; g < to; g++) {
        const other = track.midi(g);
        if (Math.abs(other - midi) < 0.5) {
          agree++;
          sum += other;
        }
      }
      if (agree > best) {
        best = agree;
        pitch = sum / agree;
      }
    }
    return pitch;
  }

  #begin(frame: number, midi: number): void {
    if (Number.isNaN(midi)) return;
    const track = this.#track;
    if (this.#tooQuiet(frame)) return;
    const pitch = this.#plateau(frame, S.PLATEAU_FRAMES, 1);
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
    const arrival = this.#plateau(frame, S.PLATEAU_FRAMES, S.PLATEAU_WIDTH);
    if (Number.isNaN(arrival)) return;
    this.#arrive(open, frame, arrival);
  }

  /** The same pitch breathed or bowed again: the level dips and comes back, with no attack to speak of. */
  #breath(open: Open, frame: number): boolean {
    const track = this.#track;
    const level = track.level(frame);
    if (level > track.level(frame - 1) || level >= track.level(frame + 1)) return false;
    let before = level;
    for (let f = Math.max(open.from, frame - S.DIP_FRAMES); f < frame; f++)
      before = Math.max(before, track.level(f));
    let after = level;
    for (let f = frame + 1; f <= frame + S.LOOK_AHEAD; f++) after = Math.max(after, track.level(f));
    if (before < level + S.DIP_DB || after < level + S.DIP_RISE_DB) return false;
    const seconds = track.seconds(frame);
    if (this.#attacks.some((a) => isStrong(a) && a.seconds < seconds + 0.045)) return false;
    const pitch = this.#standing(frame + 2, frame + S.LOOK_AHEAD);
    if (Number.isNaN(pitch)) return false;
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
    if (isHarmonic(Math.abs(step))) {
      // No hand jumps an octave without an attack: it is the same note, misread before or now.
      if (++open.other > Math.max(5, open.last - open.from - open.other)) {
        open.pitch = pitch;
        open.plateauFrom = frame;
        open.other = 0;
      }
      open.last = frame;
      return;
    }
    if (track.level(frame + 2) < open.peakDb - S.LEGATO_DROP_DB) return;
    const move = this.#moveInto(open, frame, pitch);
    if (move.split) {
      open.last = move.left;
      this.#close(move.seconds);
      this.#start(move.seconds, 'legato', move.there, pitch, 0);
      return;
    }
    open.bend += step;
    open.pitch = pitch;
    open.plateauFrom = frame;
    open.last = frame;
  }

  /** The pitch that stands from `frame` for `count` frames within `width` semitones, else NaN. */
  #plateau(frame: number, count: number, width: number): number {
    let sum = 0;
    let voiced = 0;
    let low = Infinity;
    let high = -Infinity;
    for (let f = frame; f < frame + count; f++) {
      const midi = this.#track.midi(f);
      if (Number.isNaN(midi)) continue;
      sum += midi;
      voiced++;
      low = Math.min(low, midi);
      high = Math.max(high, midi);
    }
    return voiced >= Math.min(count, S.PLATEAU_FRAMES) - 1 && high - low < width ? sum / voiced : NaN;
  }

  #start(onsetSeconds: number, attack: Open['attack'], from: number, pitch: number, flux: number): void {
    const peakDb = this.#track.level(from);
    this.#open = {
      onsetSeconds,
      attack,
      from,
      last: from,
      pitch,
      plateauFrom: from,
      peakDb,
      bend: 0,
      flux,
      other: 0,
    };
  }

  #close(offsetSeconds: number): void {
    const open = this.#open;
    this.#open = null;
    if (!open) return;
    if (offsetSeconds - open.onsetSeconds < S.SHORTEST_NOTE) return;
    this.#notes.push(measure(this.#track, open, offsetSeconds));
  }
}

function isStrong(attack: Attack): boolean {
  return (
    (attack.flux >= S.STRONG_FLUX && attack.ratio >= S.STRONG_RATIO) ||
    (attack.flux >= S.CLEAR_FLUX && attack.ratio >= S.CLEAR_RATIO && attack.energyRatio >= S.CLEAR_ENERGY)
  );
}

/** Two, three, four, five or six times the frequency, or that part of it. */
function isHarmonic(semitones: number): boolean {
  return [12, 19.02, 24, 27.86, 31.02].some((harmonic) => Math.abs(semitones - harmonic) < 0.6);
}
