import type { HeardNote } from '../../take/note.ts';
import * as D from './decoding.ts';
import { hearPair, type PartialsAt } from '../measure/second.ts';
import { Levels } from './levels.ts';
import { isTakenBy, onsetsOf, type Onset } from './onsets.ts';
import { finePitch } from './fine-pitch.ts';
import { heardNote, isScoop, type OpenNote } from './open-note.ts';
import { Outputs } from './outputs.ts';
import { restOf } from './rest.ts';
import { slideIn } from './slide.ts';
import { standsFor, Talk, talkOf } from './talk.ts';
import { DELAY_FRAMES, LOW_MIDI, PITCHES } from './settings.ts';

/** Frames behind the newest one at which a peak of the onset probability is found, */
const PEAK_LAG = 4;
/** at which the surest of several peaks is chosen, */
const CHOICE_LAG = 12;
/** and at which the pitch of a note is followed. */
const FOLLOW_LAG = 14;

/** Network outputs, frame by frame → notes in order of onset. A note ends up to 0.3 s after it has ended. */
export class Decoder {
  /** Notes that have ended, in order of onset. */
  readonly ended: HeardNote[] = [];
  readonly levels = new Levels();
  readonly #outputs = new Outputs();
  readonly #partialsAt: PartialsAt;
  readonly #onsets: Onset[] = [];
  readonly #open: OpenNote[] = [];
  readonly #talk = new Talk();
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
    return LOW_MIDI + this.#outputs.pitchOver(frame, best);
  }

  /** Takes one frame of the network's answers, by semitone, each 0 to 1, and the long window's autocorrelation. */
  push(onset: Float32Array, sounding: Float32Array, correlation: Float32Array): void {
    this.#outputs.push(onset, sounding);
    for (let p = 0; p < PITCHES; p++) {
      if (sounding[p]! < D.STAY_SOUND) continue;
      const fine = finePitch(correlation, this.#outputs.pitchOver(this.#outputs.count - 1, p) + LOW_MIDI);
      if (fine !== null) this.#outputs.setFine(p, fine - LOW_MIDI);
    }
    const { count } = this.#outputs;
    for (; this.#peaksTo + PEAK_LAG < count; this.#peaksTo++)
      onsetsOf(this.#outputs, this.#peaksTo, this.#onsets);
    if (!this.#begun && count > CHOICE_LAG + D.BEGUN_TO) this.#begin();
    for (; this.#chosenTo + CHOICE_LAG < count; this.#chosenTo++) this.#choose(this.#chosenTo);
    for (; this.#followedTo + FOLLOW_LAG < count; this.#followedTo++) {
      this.#follow(this.#followedTo);
      this.#startSoft(this.#followedTo);
    }
    this.#handOver();
  }

  /** @param partialsAt the partials of the sound so far, for second notes */
  constructor(partialsAt: PartialsAt) {
    this.#partialsAt = partialsAt;
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
      if (!taker) this.#start(onset);
    }
    while (this.#onsets.length > 0 && this.#onsets[0]!.frame < frame - 2 * CHOICE_LAG) this.#onsets.shift();
  }

  #start(onset: Onset): void {
    this.#anyChosen = true;
    for (const note of this.#open)
      if (onset.at > note.onset.at + 1.5) note.limit = Math.min(note.limit, Math.ceil(onset.at) + 1);
    this.#open.push({
      onset,
      struck: this.levels.isStruck(onset.frame),
      peakDb: this.levels.peakDb(onset.frame),
      path: [],
      fine: [],
      frames: [],
      end: onset.frame,
      quiet: 0,
      current: onset.pitch,
      limit: Infinity,
      closed: false,
      handed: false,
    });
  }

  /** A tone that begins to sound while nothing else does, though nothing told its onset, is a note if it goes on. */
  #startSoft(frame: number): void {
    if (frame < D.BEGUN_TO || this.#open.some((note) => !note.closed && note.quiet === 0)) return;
    const outputs = this.#outputs;
    let pitch = 0;
    for (let p = 1; p < PITCHES; p++)
      if (outputs.soundAbout(frame, p) > outputs.soundAbout(frame, pitch)) pitch = p;
    if (
      outputs.soundAbout(frame, pitch) < D.LEAST_SOUND ||
      outputs.soundAbout(frame - 1, pitch) >= D.LEAST_SOUND
    )
      return;
    if (outputs.soundAbout(frame - 3, pitch) >= D.SOFT_BEFORE) return;
    if (this.#onsets.some((o) => Math.abs(o.at - frame) <= D.SOFT_FRAMES && Math.abs(o.pitch - pitch) <= 1))
      return;
    let body = 0;
    let onset = 0;
    for (let f = frame; f < frame + D.SOFT_FRAMES; f++) {
      let best = 0;
      for (let p = Math.max(0, pitch - 1); p <= Math.min(PITCHES - 1, pitch + 1); p++)
        best = Math.max(best, outputs.soundAbout(f, p));
      body += best / D.SOFT_FRAMES;
    }
    for (let f = frame - 3; f < frame + 3; f++) onset = Math.max(onset, outputs.onsetAbout(f, pitch));
    if (body < D.SOFT_BODY || !this.levels.isLoud(frame, D.SOFT_RANGE_DB)) return;
    if (this.levels.peakDb(frame) < D.BEGUN_DB) return;
    this.#start({
      frame,
      pitch,
      at: frame - D.SOFT_EARLIER,
      semitone: pitch,
      onset: Math.min(1, onset),
      body,
    });
    this.#open.sort((a, b) => a.onset.at - b.onset.at);
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
    if (this.levels.peakDb(DELAY_FRAMES) < D.BEGUN_DB) return;
    const frame = DELAY_FRAMES;
    this.#start({ frame, pitch, at: frame, semitone: pitch, onset: D.BEGUN_ONSET, body: 1 });
  }

  /** The open notes go on through `frame`, from semitone to semitone. */
  #follow(frame: number): void {
    for (const note of this.#open) {
      if (note.closed || frame <= note.onset.frame) continue;
      if (frame >= note.limit) {
        note.closed = true;
        continue;
      }
      let best = this.#pitchAt(frame, note.current);
      if (this.#outputs.soundAbout(frame, best) < D.LEAST_SOUND) {
        const risen = this.#octaveUp(frame, note);
        if (risen !== null) {
          best = risen;
          note.path.length = 0;
          note.fine.length = 0;
          note.frames.length = 0;
        }
      }
      if (this.#outputs.soundAbout(frame, best) < D.LEAST_SOUND) {
        if (++note.quiet > D.MOST_QUIET) note.closed = true;
        continue;
      }
      note.quiet = 0;
      note.current = best;
      note.end = frame;
      note.path.push(this.#outputs.pitchOver(frame, best));
      note.fine.push(this.#outputs.finePitchOver(frame, best));
      note.frames.push(frame);
    }
    for (const note of this.#open.filter((n) => !n.closed && n.end === frame)) this.#splitSlide(note);
  }

  /**
   * A note that has slid down and stands still there ends where it left, and another begins; not where a stroke is about to end it,
   * for its last frames lean towards what follows.
   */
  #splitSlide(note: OpenNote): void {
    const slide = note.limit === Infinity ? slideIn(note.path) : null;
    if (!slide) return;
    const { left, arrived } = slide;
    const at = (note.frames[left - 1]! + note.frames[arrived]!) / 2;
    const frame = Math.round(at);
    const path = note.path.splice(left).slice(arrived - left);
    const fine = note.fine.splice(left).slice(arrived - left);
    const frames = note.frames.splice(left).slice(arrived - left);
    note.end = note.frames.at(-1)!;
    note.closed = true;
    const semitone = restOf(path, path[0]!);
    const onset = { frame, pitch: note.current, at, semitone, onset: D.SLIDE_ONSET, body: 1 };
    const peakDb = this.levels.peakDb(frame);
    this.#open.push({
      ...note,
      onset,
      struck: false,
      peakDb,
      path,
      fine,
      frames,
      handed: false,
      closed: false,
      end: frames.at(-1)!,
    });
    this.#open.sort((x, y) => x.onset.at - y.onset.at);
  }

  /** The semitone at which a note goes on: its own while that sounds, else the surest within two. */
  #pitchAt(frame: number, current: number): number {
    if (this.#outputs.sounding(frame, current) >= D.STAY_SOUND) return current;
    let best = Math.max(0, current - 2);
    for (let p = best + 1; p <= Math.min(PITCHES - 1, current + 2); p++)
      if (this.#outputs.sounding(frame, p) > this.#outputs.sounding(frame, best)) best = p;
    return best;
  }

  /** The semitone an octave up where a note that began low goes on, else null. */
  #octaveUp(frame: number, note: OpenNote): number | null {
    const octave = note.current + 12;
    if (octave >= PITCHES || frame > note.onset.frame + D.RISE_FRAMES) return null;
    if (this.#outputs.soundAbout(frame, octave) < D.RISE_SOUND) return null;
    let best = octave - 1;
    for (let p = octave; p <= Math.min(PITCHES - 1, octave + 1); p++)
      if (this.#outputs.sounding(frame, p) > this.#outputs.sounding(frame, best)) best = p;
    return best;
  }

  /** Hands over the oldest notes that have ended and whose successor is known where that matters. */
  #handOver(last = false): void {
    while (this.#open.length > 0) {
      const note = this.#open[0]!;
      const next = this.#open[1];
      // The next stroke may still make it a scoop.
      const settled = next !== undefined || last || this.#chosenTo > note.onset.frame + D.SCOOP_FRAMES + 2;
      if (!settled) return;
      const heard = heardNote(note);
      if (next && isScoop(note, next)) {
        this.#open.shift();
        continue;
      }
      if (!note.handed && (note.closed || isAtRest(note))) {
        const isCutOff = next !== undefined && next.onset.at - note.end <= D.CUT_FRAMES;
        if (this.#talk.hears(talkOf(note.fine, isCutOff), heard.confidence)) {
          this.#open.shift();
          continue;
        }
        note.handed = true;
        this.#fresh.push(heard);
      }
      if (!note.closed) return;
      this.#open.shift();
      this.ended.push({ ...heard, ...hearPair(this.#partialsAt, heard, heard.onsetSeconds) });
    }
  }
}

/** Whether a note that still sounds has stood still, or has been followed for long enough without that. */
const isAtRest = ({ fine }: OpenNote): boolean =>
  fine.length >= D.WAIT_FRAMES || standsFor(fine, D.STILL_FRAMES) >= D.STILL_FRAMES;
