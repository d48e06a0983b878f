/** The beats of a recording while they are corrected: one is chosen, every step can be taken back. */
import { bpmOf } from '../core/beats/intervals.ts';
import { atLevel, type Level } from '../core/beats/levels.ts';
import {
  evenOut,
  fillOut,
  goOnFrom,
  insertBeat,
  moveBeat,
  nearestMark,
  pinBeat,
  removeBeat,
  secondsOf,
  trackOf,
  type BeatTrack,
} from '../core/beats/track.ts';

const MOST_STEPS = 200;
const NO_TRACK: BeatTrack = { marks: [], downbeat: 0 };

export class BeatEditor {
  #track = $state.raw<BeatTrack>(NO_TRACK);
  #chosen = $state.raw<number | null>(null);
  #past = $state.raw<readonly BeatTrack[]>([]);
  #durationSeconds = 0;

  get track(): BeatTrack {
    return this.#track;
  }

  /** Tempo of the beats, in beats a minute; null for fewer than two. */
  get bpm(): number | null {
    return this.#track.marks.length < 2 ? null : bpmOf(secondsOf(this.#track));
  }

  /** Index of the chosen beat, or null. */
  get chosen(): number | null {
    return this.#chosen;
  }

  get canUndo(): boolean {
    return this.#past.length > 0;
  }

  /** A recording is put on the desk, with the beats that it has already. */
  open(track: BeatTrack, durationSeconds: number): void {
    this.#track = track;
    this.#durationSeconds = durationSeconds;
    this.#past = [];
    this.#chosen = null;
  }

  /** Beats that were found or tapped take the place of all; they go out to both ends of the recording. */
  lay(beats: readonly number[], downbeat = 0): void {
    this.#step(fillOut(trackOf(beats, downbeat), this.#durationSeconds));
    this.choose(this.#track.downbeat);
  }

  /** Tapped beats take the place of those between the first and the last tap; the rest stays. */
  layWithin(beats: readonly number[]): void {
    const [first, last] = [beats[0], beats.at(-1)];
    if (first === undefined || last === undefined) return;
    if (this.#track.marks.length < 2) return this.lay(beats);
    const half = (last - first) / (beats.length - 1) / 2;
    const bar1 = this.#track.marks[this.#track.downbeat]!.seconds;
    const outside = this.#track.marks.filter(
      ({ seconds }) => seconds < first - half || seconds > last + half,
    );
    const marks = [...outside, ...beats.map((seconds) => ({ seconds, pinned: true }))].toSorted(
      (a, b) => a.seconds - b.seconds,
    );
    const laid = { marks, downbeat: 0 };
    this.#step({ ...laid, downbeat: Math.max(0, nearestMark(laid, bar1)) });
    this.#chosen = null;
  }

  choose(index: number | null): void {
    const last = this.#track.marks.length - 1;
    this.#chosen = index === null || last < 0 ? null : Math.min(last, Math.max(0, index));
  }

  /** @param seconds where in the recording */
  chooseNear(seconds: number): void {
    const near = nearestMark(this.#track, seconds);
    this.choose(near < 0 ? null : near);
  }

  /** Moves the chosen beat by so much. */
  nudge(bySeconds: number): void {
    const mark = this.#mark;
    if (mark) this.move(this.#chosen!, mark.seconds + bySeconds);
  }

  move(index: number, seconds: number): void {
    this.#step(moveBeat(this.#track, index, seconds));
    this.#chosen = index;
  }

  /** One more beat, which is chosen then. */
  insert(seconds: number): void {
    this.#step(insertBeat(this.#track, seconds));
    this.chooseNear(seconds);
  }

  /** One more half way to the beat behind the chosen one. */
  insertBehind(): void {
    const mark = this.#mark;
    const next = this.#chosen === null ? undefined : this.#track.marks[this.#chosen + 1];
    if (mark && next) this.insert((mark.seconds + next.seconds) / 2);
  }

  remove(): void {
    if (!this.#mark) return;
    const at = this.#chosen!;
    this.#step(removeBeat(this.#track, at));
    this.choose(Math.min(at, this.#track.marks.length - 1));
  }

  togglePin(): void {
    const mark = this.#mark;
    if (mark) this.#step(pinBeat(this.#track, this.#chosen!, !mark.pinned));
  }

  /** The chosen beat becomes the first beat of bar 1. */
  setDownbeat(): void {
    if (this.#mark) this.#step({ ...this.#track, downbeat: this.#chosen! });
  }

  evenOut(): void {
    if (this.#mark) this.#step(evenOut(this.#track, this.#chosen!));
  }

  goOn(): void {
    if (this.#mark) this.#step(goOnFrom(this.#track, this.#chosen!, this.#durationSeconds));
  }

  /** The same pulse, counted slower or faster; bar 1 stays where it is. */
  count(level: Level): void {
    const { downbeat, marks } = this.#track;
    const bar1 = marks[downbeat]?.seconds ?? 0;
    const counted = trackOf(atLevel(secondsOf(this.#track), level, downbeat));
    this.#step({ ...counted, downbeat: Math.max(0, nearestMark(counted, bar1)) });
    this.#chosen = null;
  }

  undo(): void {
    const before = this.#past.at(-1);
    if (!before) return;
    this.#past = this.#past.slice(0, -1);
    this.#track = before;
    this.choose(this.#chosen);
  }

  get #mark() {
    return this.#chosen === null ? undefined : this.#track.marks[this.#chosen];
  }

  #step(next: BeatTrack): void {
    if (next === this.#track) return;
    if (this.#track.marks.length > 0) this.#past = [...this.#past, this.#track].slice(-MOST_STEPS);
    this.#track = next;
  }
}
