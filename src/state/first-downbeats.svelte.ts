/** Where the chart begins in plain recordings, as the teacher says it: in all of them, or in one of its own. */
import { withFirstBeat, type GradedReturn } from '../core/take-file/grade-returned.ts';

/** Nobody says where a recording begins that is longer than a day. */
const MOST_SECONDS = 86_400;

const withinADay = (seconds: number): number => Math.min(MOST_SECONDS, Math.max(-MOST_SECONDS, seconds));

/** A take file says itself where its chart begins. */
export const isRecording = ({ takeId }: GradedReturn): boolean => takeId === null;

export class FirstDownbeats {
  #ofAll = $state.raw(0);
  /** By path: those that begin elsewhere than the others. */
  #own: Readonly<Record<string, number>> = {};

  /** In seconds from the first sample, for recordings without their own. */
  get ofAll(): number {
    return this.#ofAll;
  }
  of(path: string): number {
    return this.#own[path] ?? this.#ofAll;
  }

  setAll(seconds: number): void {
    this.#ofAll = withinADay(seconds);
    this.#own = {};
  }
  setOne(path: string, seconds: number): void {
    this.#own = { ...this.#own, [path]: withinADay(seconds) };
  }

  /** Back to where the recordings begin with the chart. */
  clear(): void {
    this.setAll(0);
  }

  /** A graded file by where it begins now: graded again from its notes, without listening, where that has changed. */
  place(path: string, graded: GradedReturn): GradedReturn {
    const seconds = this.of(path);
    return !isRecording(graded) || graded.firstBeatSeconds === seconds
      ? graded
      : withFirstBeat(graded, seconds);
  }
}
