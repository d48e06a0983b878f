import type { HeardNote } from '../../take/note.ts';
import type { Attack } from '../attacks/attacks.ts';
import { measure } from '../measure/measure.ts';
import { hearPair, type PartialsAt } from '../measure/second.ts';
import { plateau } from '../path/contour.ts';
import type { Track } from '../path/track.ts';
import * as S from '../tuning/notes.ts';
import { PLATEAU_FRAMES } from '../tuning/path.ts';
import { DRAWN_REACH, MEASURED_REACH } from '../tuning/strokes.ts';
import { decideArrival, type SoftAttack } from './arrival-rules.ts';
import { CollectedEvidence, type SpectraAt } from './attack-evidence.ts';
import { decideAttack } from './attack-rules.ts';
import { beginningOf, pitchThatStands } from './beginning.ts';
import { isNewBreath, pitchAfterDip } from './breath.ts';
import type { OpenNote } from './open-note.ts';
import { RecentLevels } from './recent-levels.ts';
import { Ringing } from './ringing.ts';
import { SpeechGuard } from './speech.ts';

/** The sound of the last seconds, for where frames do not say enough. */
export interface RecentSound {
  readonly partialsAt: PartialsAt;
  readonly spectraAt: SpectraAt;
}

/** How a note begins. */
type Start = Pick<OpenNote, 'onsetSeconds' | 'attack' | 'from' | 'pitch'> &
  Partial<Pick<OpenNote, 'flux' | 'pitchFromAttack' | 'ringing'>>;

/**
 * Settled frames and attacks → notes, one frame at a time, each decided with LOOK_AHEAD frames in sight. The decisions are
 * made by the rules of this folder; here is what follows from them.
 */
export class NoteMaker {
  readonly #track: Track;
  readonly #sound: RecentSound;
  readonly #notes: HeardNote[] = [];
  /** Attacks that have not been decided, in order. */
  readonly #later: Attack[] = [];
  readonly #levels = new RecentLevels();
  readonly #guard = new SpeechGuard();
  #open: OpenNote | null = null;
  #frame = 0;
  /** Notes handed out so far. */
  #taken = 0;
  #previousAttack: Attack | null = null;
  /** A stroke whose pitch is still to come. */
  #pending: Attack | null = null;
  #softAttack: SoftAttack | null = null;

  constructor(track: Track, sound: RecentSound) {
    this.#track = track;
    this.#sound = sound;
  }

  get notes(): readonly HeardNote[] {
    return this.#notes;
  }

  /** Notes not handed out before: those that have ended, and the one that stands, its end still to come. */
  takeFresh(): HeardNote[] {
    const fresh = this.#notes.slice(this.#taken);
    this.#taken = this.#notes.length;
    const open = this.#open;
    if (open && !open.handedOut && !this.#guard.hearsSpeech && isAtRest(this.#track, this.#frame, open)) {
      open.handedOut = true;
      // The frames that are in sight stand on its pitch too.
      fresh.push(this.#measured(open, this.#track.seconds(this.#track.count - 1)));
    }
    return fresh;
  }

  /** Takes an attack, in order of time. */
  attack(attack: Attack): void {
    this.#later.push(attack);
  }

  /** Decides every frame that has its look-ahead; at the end of the sound, all of them. */
  advance(atEnd: boolean): void {
    const limit = this.#track.count - (atEnd ? 0 : S.LOOK_AHEAD);
    for (; this.#frame < limit; this.#frame++) this.#decide(this.#frame);
    if (atEnd) this.#close(this.#track.seconds(this.#track.count - 1));
  }

  #decide(frame: number): void {
    const track = this.#track;
    this.#levels.take(track.level(frame));
    const seconds = track.seconds(frame);
    while (this.#later.length > 0 && this.#later[0]!.seconds <= seconds)
      this.#takeAttack(this.#later.shift()!, frame);
    if (!this.#open) this.#begin(frame);
    else if (frame >= this.#open.from) this.#follow(this.#open, frame);
  }

  #takeAttack(attack: Attack, frame: number): void {
    const open = this.#open;
    const evidence = new CollectedEvidence(
      { track: this.#track, attack, previous: this.#previousAttack, open, later: this.#later, frame },
      this.#sound.spectraAt,
    );
    this.#previousAttack = attack;
    const decision = decideAttack(evidence);
    if (decision.is === 'pitch to come') this.#pending = attack;
    if (decision.is === 'too soft') this.#softAttack = { seconds: attack.seconds, midi: decision.midi };
    if (decision.is !== 'note') return;
    if (open) this.#close(attack.seconds);
    else if (this.#levels.isTooQuiet(this.#track, decision.from)) return;
    const { spectra, midi, from, pitchFromAttack } = decision;
    const ringing =
      decision.attack === 'struck' && spectra
        ? new Ringing(this.#notes, spectra, attack.seconds, midi)
        : null;
    const { seconds: onsetSeconds, flux } = attack;
    this.#start({ onsetSeconds, attack: decision.attack, from, pitch: midi, flux, pitchFromAttack, ringing });
  }

  #begin(frame: number): void {
    const track = this.#track;
    const pitch = pitchThatStands({ track, frame, levels: this.#levels });
    if (Number.isNaN(pitch)) return;
    const beginning = beginningOf(pitch, { track, frame, pending: this.#pending });
    this.#pending = null;
    if (beginning) this.#start({ ...beginning, attack: 'struck', from: frame });
  }

  #follow(open: OpenNote, frame: number): void {
    const track = this.#track;
    const midi = track.midi(frame);
    const level = track.level(frame);
    const near = Math.abs(midi - open.pitch) < S.PLATEAU_REACH;
    open.peakDb = Math.max(open.peakDb, level);
    if (level < open.peakDb - S.END_DROP_DB) this.#close(track.seconds(open.last));
    else if (open.pitchFromAttack && frame - open.from < S.SURE_FRAMES && !near) open.last = frame;
    else if (Number.isNaN(midi)) {
      if (frame - open.last > S.GAP_FRAMES) this.#close(track.seconds(open.last));
    } else if (isNewBreath({ track, frame, open, later: this.#later })) this.#breathe(frame);
    else if (near) standOn(open, frame, midi);
    else this.#arrive(open, frame);
  }

  #breathe(frame: number): void {
    const onsetSeconds = this.#track.seconds(frame);
    this.#close(onsetSeconds);
    const pitch = pitchAfterDip(this.#track, frame);
    this.#start({ onsetSeconds, attack: 'struck', from: frame + 1, pitch });
  }

  /** The pitch has left the plateau: once it rests elsewhere, the rules say what that is. */
  #arrive(open: OpenNote, frame: number): void {
    const track = this.#track;
    const pitch = plateau(track, frame, PLATEAU_FRAMES, S.PLATEAU_WIDTH);
    if (Number.isNaN(pitch)) return;
    const decision = decideArrival({
      track,
      frame,
      pitch,
      open,
      later: this.#later,
      softAttack: this.#softAttack,
      partialsAt: this.#sound.partialsAt,
    });
    if (decision.is === 'undecided') return;
    if (decision.is === 'note') {
      open.last = decision.last ?? open.last;
      this.#close(decision.onsetSeconds);
      this.#start({ ...decision, pitch });
      return;
    }
    open.last = frame;
    if (decision.is === 'misread now') open.framesAway++;
    if (decision.is === 'misread before') open.framesAway = 0;
    if (decision.is === 'misread before' || decision.is === 'bend') {
      open.pitch = pitch;
      open.plateauFrom = frame;
    }
  }

  #start({
    onsetSeconds,
    attack,
    from,
    pitch,
    flux = 0,
    pitchFromAttack = false,
    ringing = null,
  }: Start): void {
    this.#open = {
      // The first frame's middle lies before the first sample.
      onsetSeconds: Math.max(0, onsetSeconds),
      attack,
      from,
      last: from,
      pitch,
      plateauFrom: from,
      peakDb: this.#track.level(from),
      flux,
      pitchFromAttack,
      ringing,
      handedOut: false,
      framesAway: 0,
    };
  }

  #measured(open: OpenNote, offsetSeconds: number): HeardNote {
    const reach = open.ringing?.draws(open.pitch) ? DRAWN_REACH : MEASURED_REACH;
    const note = measure(this.#track, open, offsetSeconds, reach);
    return { ...note, ...hearPair(this.#sound.partialsAt, note, this.#track.seconds(open.plateauFrom)) };
  }

  #close(offsetSeconds: number): void {
    const open = this.#open;
    this.#open = null;
    if (!open) return;
    if (offsetSeconds - open.onsetSeconds < S.SHORTEST_NOTE) return;
    const note = this.#measured(open, offsetSeconds);
    if (!this.#guard.admits(this.#track, open, note, open.pitchFromAttack)) return;
    this.#notes.push(note);
    if (open.handedOut) this.#taken++;
  }
}

/** Has the note sounded long enough to be handed out live, and does its pitch rest as far as can be seen? */
export function isAtRest(track: Track, frame: number, open: OpenNote): boolean {
  if (track.seconds(frame) - open.onsetSeconds < S.LIVE_COMMIT_SECONDS) return false;
  for (let f = open.last - S.LIVE_REST_FRAMES; f < track.count; f++)
    if (Math.abs(track.midi(f) - open.pitch) > S.LIVE_REST) return false;
  return true;
}

/** The pitch stands on the plateau, whose centre follows slowly: an intonation that drifts, not a bend. */
export function standOn(open: OpenNote, frame: number, midi: number): void {
  open.last = frame;
  if (open.ringing?.draws(open.pitch, midi)) return;
  const frames = Math.min(S.CENTRE_FRAMES, S.CENTRE_FIRST_FRAMES + frame - open.plateauFrom);
  open.pitch += (midi - open.pitch) / frames;
}
