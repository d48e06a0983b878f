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
  /** Where its pitch is now. */
  pitch: number;
  peakDb: number;
}

/** Settled frames and attacks → notes, one frame at a time, each decided with LOOK_AHEAD frames in sight. */
export class NoteMaker {
  readonly #track: Track;
  readonly #notes: HeardNote[] = [];
  readonly #attacks: Attack[] = [];
  #open: Open | null = null;
  #recentDb = -120;
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
    const seconds = track.seconds(frame);
    while (this.#attacks.length > 0 && this.#attacks[0]!.seconds <= seconds)
      this.#take(this.#attacks.shift()!, frame);
    const open = this.#open;
    const midi = track.midi(frame);
    if (open) this.#follow(open, frame, midi, level);
    else this.#begin(frame, midi);
  }

  #take(attack: Attack, frame: number): void {
    const open = this.#open;
    if (!open) {
      if (!this.#pendingAttack || attack.flux > this.#pendingAttack.flux) this.#pendingAttack = attack;
      return;
    }
    const after = this.#plateau(frame + 2, S.LOOK_AHEAD - 2);
    if (Number.isNaN(after)) {
      this.#pendingAttack = attack;
      return;
    }
    if (attack.seconds - open.onsetSeconds < 0.04) return;
    const same = Math.abs(after - open.pitch) < S.PLATEAU_STEP;
    const real = same ? attack.ratio > S.RESTRIKE_RATIO && attack.energyRatio > S.RESTRIKE_ENERGY : true;
    if (!real) return;
    this.#close(attack.seconds);
    this.#start(attack.seconds, 'struck', frame + 1, after);
  }

  #begin(frame: number, midi: number): void {
    if (Number.isNaN(midi)) return;
    const track = this.#track;
    if (track.level(frame) < this.#recentDb - S.START_DROP_DB) return;
    const pitch = this.#plateau(frame, S.PLATEAU_FRAMES);
    if (Number.isNaN(pitch)) return;
    const attack = this.#pendingAttack;
    this.#pendingAttack = null;
    if (attack && track.seconds(frame) - attack.seconds < 0.1) {
      this.#start(attack.seconds, 'struck', frame, pitch);
      return;
    }
    // No attack: the level must have risen.
    let lowest = Infinity;
    for (let f = frame - 10; f < frame; f++) lowest = Math.min(lowest, track.level(f));
    if (track.level(frame + 3) - lowest < 6) return;
    this.#start(track.seconds(frame), 'struck', frame, pitch);
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
    const step = midi - open.pitch;
    if (Math.abs(step) < S.PLATEAU_STEP) {
      open.pitch += 0.5 * step;
      open.last = frame;
      return;
    }
    const pitch = this.#plateau(frame, S.PLATEAU_FRAMES);
    if (Number.isNaN(pitch) || Math.abs(pitch - open.pitch) < S.PLATEAU_STEP) return;
    if (this.#ghost(open, frame, pitch)) return;
    if (frame - open.from < 3) {
      open.pitch = pitch;
      open.last = frame;
      return;
    }
    const at = track.seconds(frame);
    this.#close(at);
    this.#start(at, 'legato', frame, pitch);
  }

  /** An octave, twelfth or fifth that appears while the sound only decays is an overtone left over, no note. */
  #ghost(open: Open, frame: number, pitch: number): boolean {
    const apart = Math.abs(pitch - open.pitch);
    const harmonic = [12, 19, 24, 7, 28].some((h) => Math.abs(apart - h) < 0.6);
    const level = this.#track.level(frame + 2);
    return (harmonic && level < open.peakDb - 3) || level < open.peakDb - 20;
  }

  /** The pitch that stands from `frame` for `count` frames, else NaN. */
  #plateau(frame: number, count: number): number {
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
    return voiced >= Math.min(count, S.PLATEAU_FRAMES) - 1 && high - low < 1 ? sum / voiced : NaN;
  }

  #start(onsetSeconds: number, attack: Open['attack'], from: number, pitch: number): void {
    this.#open = { onsetSeconds, attack, from, last: from, pitch, peakDb: this.#track.level(from) };
  }

  #close(offsetSeconds: number): void {
    const open = this.#open;
    this.#open = null;
    if (!open) return;
    if (offsetSeconds - open.onsetSeconds < S.SHORTEST_NOTE) return;
    this.#notes.push(measure(this.#track, open, offsetSeconds));
  }
}
