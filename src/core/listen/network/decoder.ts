import type { HeardNote } from '../../take/note.ts';
import * as D from './decoding.ts';
import { Levels } from './levels.ts';
import { isSameStroke, isTakenBy, onsetsOf, type Onset } from './onsets.ts';
import { heardNote, isScoop, type OpenNote } from './open-note.ts';
import { Outputs } from './outputs.ts';
import { DELAY_FRAMES, LOW_MIDI, PITCHES } from './settings.ts';

/** A peak needs this many frames after it, the choice among peaks this many, and the pitch follows behind that. */
const PEAK_LAG = 4;
const CHOICE_LAG = 12;
const FOLLOW_LAG = 14;

/** Network outputs, frame by frame → notes in order of onset. A note ends up to 0.3 s after it has ended. */
export class Decoder {
  /** Notes that have ended, in order of onset. */
  readonly ended: HeardNote[] = [];
  readonly levels = new Levels();
  readonly #outputs = new Outputs();
  readonly #onsets: Onset[] = [];
  readonly #open: OpenNote[] = [];
  #fresh: HeardNote[] = [];
  #peaksTo = 0;
  #chosenTo = 0;
  #followedTo = 0;
  #begun = false;
  #anyChosen = false;

  /** The surest pitch of the newest frame as a fractional MIDI number, 64 ms back; null while none sounds. */
  get sounding(): number | null {
    const frame = this.#outputs.count - 1;
    if (frame < 0) return null;
    let best = 0;
    for (let p = 1; p < PITCHES; p++)
      if (this.#outputs.sounding(frame, p) > this.#outputs.sounding(frame, best)) best = p;
    if (this.#outputs.soundAbout(frame, best) < D.LEAST_SOUND) return null;
    return LOW_MIDI + this.#pitchOver(frame, best);
  }

  /** Takes one frame of the network's answers, by semitone, each 0 to 1. */
  push(onset: Float32Array, sounding: Float32Array): void {
    this.#outputs.push(onset, sounding);
    const { count } = this.#outputs;
    for (; this.#peaksTo + PEAK_LAG < count; this.#peaksTo++)
      onsetsOf(this.#outputs, this.#peaksTo, this.#onsets);
    if (!this.#begun && count > CHOICE_LAG + D.BEGUN_TO) this.#begin();
    for (; this.#chosenTo + CHOICE_LAG < count; this.#chosenTo++) this.#choose(this.#chosenTo);
    for (; this.#followedTo + FOLLOW_LAG < count; this.#followedTo++) this.#follow(this.#followedTo);
    this.#handOver();
  }

  /** Notes sure enough to be shown since the last call: ended, or sounding with their pitch at rest. */
  takeFresh(): HeardNote[] {
    const fresh = this.#fresh;
    this.#fresh = [];
    return fresh;
  }

  /** Ends what still sounds. */
  finish(): void {
    for (const note of this.#open) note.closed = true;
    this.#handOver(true);
  }

  /** Opens a note for each onset at `frame` that no other takes. */
  #choose(frame: number): void {
    for (const onset of this.#onsets) {
      if (onset.frame !== frame) continue;
      const taker = this.#onsets.find((other) => other !== onset && isTakenBy(onset, other));
      if (!taker) this.#start(onset, this.#secondOf(onset));
    }
    while (this.#onsets.length > 0 && this.#onsets[0]!.frame < frame - 2 * CHOICE_LAG) this.#onsets.shift();
  }

  /** A surely struck other pitch of the same stroke whose harmonics are not the first one's. */
  #secondOf(onset: Onset): number | null {
    for (const other of this.#onsets) {
      const interval = Math.abs(other.pitch - onset.pitch);
      if (other === onset || interval < 2 || [12, 19, 24, 28, 31, 36].includes(interval)) continue;
      if (isSameStroke(onset, other) && other.onset >= D.SECOND_ONSET && other.body >= D.SECOND_BODY)
        return other.semitone;
    }
    return null;
  }

  #start(onset: Onset, second: number | null): void {
    this.#anyChosen = true;
    for (const note of this.#open)
      if (onset.at > note.onset.at + 1.5) note.limit = Math.min(note.limit, Math.ceil(onset.at) + 1);
    this.#open.push({
      onset,
      second,
      struck: this.levels.isStruck(onset.frame),
      peakDb: this.levels.peakDb(onset.frame),
      path: [],
      frames: [],
      end: onset.frame,
      quiet: 0,
      current: onset.pitch,
      limit: Infinity,
      closed: false,
      handed: false,
    });
  }

  /** A recording that begins within a note: what sounds from its first frames on is one. */
  #begin(): void {
    this.#begun = true;
    if (this.#anyChosen || this.#onsets.some((o) => o.at <= D.BEGUN_CLEAR)) return;
    let best = 0;
    let pitch = 0;
    for (let p = 0; p < PITCHES; p++) {
      let sum = 0;
      for (let f = D.BEGUN_FROM; f < D.BEGUN_TO; f++) sum += this.#outputs.soundAbout(f, p);
      if (sum <= best) continue;
      best = sum;
      pitch = p;
    }
    if (best / (D.BEGUN_TO - D.BEGUN_FROM) <= D.BEGUN_SOUND) return;
    const frame = DELAY_FRAMES;
    this.#start({ frame, pitch, at: frame, semitone: pitch, onset: D.BEGUN_ONSET, body: 1 }, null);
  }

  /** The open notes go on through `frame`, from semitone to semitone. */
  #follow(frame: number): void {
    for (const note of this.#open) {
      if (note.closed || frame <= note.onset.frame) continue;
      if (frame >= note.limit) {
        note.closed = true;
        continue;
      }
      const best = this.#pitchAt(frame, note.current);
      const sum = this.#outputs.soundAbout(frame, best);
      if (sum < D.LEAST_SOUND) {
        if (++note.quiet > D.MOST_QUIET) note.closed = true;
        continue;
      }
      note.quiet = 0;
      note.current = best;
      note.end = frame;
      note.path.push(this.#pitchOver(frame, best));
      note.frames.push(frame);
    }
  }

  /** The mean pitch of a semitone and its neighbours, by how surely each sounds. In semitones above LOW_MIDI. */
  #pitchOver(frame: number, pitch: number): number {
    let height = 0;
    for (let p = Math.max(0, pitch - 1); p <= Math.min(PITCHES - 1, pitch + 1); p++)
      height += this.#outputs.sounding(frame, p) * p;
    return height / this.#outputs.soundAbout(frame, pitch);
  }

  /** The semitone at which a note goes on: its own while that sounds, else the surest within two. */
  #pitchAt(frame: number, current: number): number {
    if (this.#outputs.sounding(frame, current) >= D.STAY_SOUND) return current;
    let best = Math.max(0, current - 2);
    for (let p = best + 1; p <= Math.min(PITCHES - 1, current + 2); p++)
      if (this.#outputs.sounding(frame, p) > this.#outputs.sounding(frame, best)) best = p;
    return best;
  }

  /** Hands over the oldest notes that have ended and whose successor is known where that matters. */
  #handOver(last = false): void {
    while (this.#open.length > 0) {
      const note = this.#open[0]!;
      const next = this.#open[1];
      // The next stroke may still make it a scoop.
      const settled = next !== undefined || last || this.#chosenTo > note.onset.frame + D.SCOOP_FRAMES + 4;
      if (!settled) return;
      const heard = heardNote(note);
      if (next && isScoop(note, next)) {
        this.#open.shift();
        continue;
      }
      if (!note.handed && (note.closed || note.path.length >= D.FRESH_FRAMES)) {
        note.handed = true;
        this.#fresh.push(heard);
      }
      if (!note.closed) return;
      this.#open.shift();
      this.ended.push(heard);
    }
  }
}
