import type { Frame } from '../frames/frame.ts';
import { CANDIDATES } from '../tuning/frames.ts';
import * as S from '../tuning/path.ts';

const STATES = CANDIDATES + 1;
/** By the multiple; the last stands for all higher ones. */
const SUBHARMONIC_SHARE: readonly number[] = [
  1,
  1,
  S.SUBHARMONIC_SHARE_2,
  S.SUBHARMONIC_SHARE_3,
  S.SUBHARMONIC_SHARE_4,
];

/** What the path settled on for one frame; written over at the next. `midi` is NaN for no pitch. */
export interface Settled {
  index: number;
  seconds: number;
  midi: number;
  clarity: number;
  /** Clarity of the octave above and of that below, as shares of its own; 0 where they are no candidates. */
  above: number;
  below: number;
  levelDb: number;
}

/**
 * The cheapest path through the candidates (Viterbi 1967), answered a fixed number of frames late so that live and
 * offline are one. State 0 is "no pitch".
 */
export class Path {
  readonly #midi = new Float32Array(S.PATH_ROWS * STATES);
  readonly #clarity = new Float32Array(S.PATH_ROWS * STATES);
  readonly #back = new Int8Array(S.PATH_ROWS * STATES);
  readonly #count = new Int8Array(S.PATH_ROWS);
  readonly #level = new Float32Array(S.PATH_ROWS);
  readonly #seconds = new Float64Array(S.PATH_ROWS);
  #cost = new Float64Array(STATES);
  #next = new Float64Array(STATES);
  readonly #settled: Settled = {
    index: 0,
    seconds: 0,
    midi: NaN,
    clarity: 0,
    above: 0,
    below: 0,
    levelDb: -120,
  };
  #frames = 0;

  /**
   * Takes a frame, and whether a strong attack is near it (ATTACK_EASE_SECONDS). Gives the settled frame PATH_LAG earlier,
   * or null while there is none.
   */
  step(frame: Frame, afterAttack: boolean): Settled | null {
    const ease = afterAttack ? S.ATTACK_EASE : 1;
    const row = (this.#frames % S.PATH_ROWS) * STATES;
    const previousRow = ((this.#frames + S.PATH_ROWS - 1) % S.PATH_ROWS) * STATES;
    const previousCount =
      this.#frames === 0 ? 0 : this.#count[(this.#frames + S.PATH_ROWS - 1) % S.PATH_ROWS]!;
    const cost = this.#cost;
    const next = this.#next;
    this.#count[this.#frames % S.PATH_ROWS] = frame.count;
    this.#level[this.#frames % S.PATH_ROWS] = frame.levelDb;
    this.#seconds[this.#frames % S.PATH_ROWS] = frame.seconds;
    let least = Infinity;
    for (let state = 0; state <= frame.count; state++) {
      const midi = state === 0 ? NaN : frame.midi[state - 1]!;
      const clarity = state === 0 ? 0 : frame.clarity[state - 1]!;
      this.#midi[row + state] = midi;
      this.#clarity[row + state] = clarity;
      const observed =
        state === 0
          ? S.OBSERVATION_COST * (1 - S.UNVOICED_CLARITY)
          : S.OBSERVATION_COST * (1 - clarity) +
            registerCost(midi) +
            (isSubharmonic(frame, state - 1) ? S.SUBHARMONIC_COST : 0);
      let best = Infinity;
      let from = 0;
      for (let before = 0; before <= previousCount; before++) {
        let step = cost[before]!;
        if ((before === 0) !== (state === 0)) step += ease * S.VOICING_COST;
        else if (state !== 0) step += ease * jumpCost(Math.abs(midi - this.#midi[previousRow + before]!));
        if (step < best) {
          best = step;
          from = before;
        }
      }
      next[state] = best + observed;
      this.#back[row + state] = from;
      if (next[state]! < least) least = next[state]!;
    }
    for (let state = 0; state <= frame.count; state++) next[state]! -= least;
    this.#cost = next;
    this.#next = cost;
    this.#frames++;
    return this.#frames > S.PATH_LAG ? this.#trace(frame.count) : null;
  }

  #trace(count: number): Settled {
    let state = 0;
    for (let s = 1; s <= count; s++) if (this.#cost[s]! < this.#cost[state]!) state = s;
    let at = this.#frames - 1;
    for (let k = 0; k < S.PATH_LAG; k++, at--) state = this.#back[(at % S.PATH_ROWS) * STATES + state]!;
    const row = at % S.PATH_ROWS;
    const settled = this.#settled;
    settled.index = at;
    settled.seconds = this.#seconds[row]!;
    settled.midi = state === 0 ? NaN : this.#midi[row * STATES + state]!;
    settled.clarity = this.#clarity[row * STATES + state]!;
    settled.above = this.#share(row, state, 12);
    settled.below = this.#share(row, state, -12);
    settled.levelDb = this.#level[row]!;
    return settled;
  }

  /** Clarity of the candidate so many semitones from the state's, as a share of the state's; 0 without. */
  #share(row: number, state: number, semitones: number): number {
    if (state === 0) return 0;
    const sought = this.#midi[row * STATES + state]! + semitones;
    for (let s = row * STATES + 1; s <= row * STATES + this.#count[row]!; s++)
      if (Math.abs(this.#midi[s]! - sought) < S.OCTAVE_REACH)
        return this.#clarity[s]! / this.#clarity[row * STATES + state]!;
    return 0;
  }
}

function jumpCost(semitones: number): number {
  if (semitones < S.SMALL_STEP) return S.SMALL_STEP_COST * semitones;
  return Math.min(S.JUMP_MOST, S.JUMP_COST + S.JUMP_SEMITONE_COST * semitones);
}

/** Is the candidate's period a multiple of a shorter one that is nearly as good? */
function isSubharmonic(frame: Frame, candidate: number): boolean {
  for (let other = 0; other < frame.count; other++) {
    const apart = frame.midi[other]! - frame.midi[candidate]!;
    if (apart < S.SUBHARMONIC_LEAST) continue;
    const ratio = 2 ** (apart / 12);
    const multiple = Math.round(ratio);
    if (multiple > S.HIGHEST_MULTIPLE) continue;
    if (Math.abs(12 * Math.log2(ratio / multiple)) > S.SUBHARMONIC_REACH) continue;
    const low = SUBHARMONIC_SHARE[Math.min(multiple, SUBHARMONIC_SHARE.length - 1)]!;
    const height = Math.min(1, Math.max(0, 1 - (S.HIGH_MIDI - frame.midi[candidate]!) / S.HIGH_RAMP));
    const share = low + height * Math.max(0, S.HIGH_SUBHARMONIC_SHARE - low);
    if (frame.clarity[other]! >= share * frame.clarity[candidate]!) return true;
  }
  return false;
}

function registerCost(midi: number): number {
  const low =
    (S.OCTAVE_DOWN_COST *
      (S.OCTAVE_COST_ZERO - Math.max(S.OCTAVE_COST_FROM, Math.min(S.OCTAVE_COST_TO, midi)))) /
    12;
  return low + S.CEILING_COST * Math.max(0, midi - S.CEILING_MIDI);
}
