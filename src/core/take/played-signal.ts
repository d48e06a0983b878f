/**
 * A signal played on the instrument: three struck notes of the same low pitch, evenly, with no other note between. It
 * starts and stops a take when both hands are busy. So that it is seldom played by chance, a rest must come before it.
 */
import type { HeardNote } from './note.ts';

/**
 * Our own figures. Inside a line without rests the signal can't be given. A riff that begins after a rest with three
 * even notes on a low string does give it, which is why the player has to switch it on first.
 */
export const SIGNAL = {
  notes: 3,
  /** From the first onset to the last. */
  withinSeconds: 2,
  /** Faster than this it is a tremolo, or one note heard twice. */
  leastGapSeconds: 0.12,
  /** The longer gap against the shorter: three knocks, not a rhythm. */
  mostUneven: 1.6,
  /** Silence before the first. */
  restBeforeSeconds: 0.75,
  /** Pitches of one signal lie so close, in semitones. */
  samePitch: 0.6,
  /** How far above the instrument's lowest note a note still is low, in semitones: a fourth. */
  lowSemitones: 5,
} as const;

/** Feed it the notes as they are committed; it remembers the last few. */
export class PlayedSignal {
  readonly #highestMidi: number;
  #recent: readonly HeardNote[] = [];

  /** @param lowestMidi lowest sounding note of the instrument */
  constructor(lowestMidi: number) {
    this.#highestMidi = lowestMidi + SIGNAL.lowSemitones;
  }

  /**
   * @param notes in order of onset, each told once
   * @returns whether the signal was given by the last of them
   */
  hears(notes: readonly HeardNote[]): boolean {
    let given = false;
    for (const note of notes) {
      this.#recent = [...this.#recent, note].slice(-(SIGNAL.notes + 1));
      if (!this.#isSignal()) continue;
      given = true;
      this.#recent = [];
    }
    return given;
  }

  #isSignal(): boolean {
    const knocks = this.#recent.slice(-SIGNAL.notes);
    const [first] = knocks;
    if (first === undefined || knocks.length < SIGNAL.notes) return false;
    const before = this.#recent.length > SIGNAL.notes ? this.#recent[0]! : null;
    const gaps = knocks.slice(1).map((note, i) => note.onsetSeconds - knocks[i]!.onsetSeconds);
    const [shortest, longest] = [Math.min(...gaps), Math.max(...gaps)];
    return (
      knocks.every(
        ({ midi, attack }) =>
          midi <= this.#highestMidi + 0.5 &&
          Math.abs(midi - first.midi) <= SIGNAL.samePitch &&
          attack === 'struck',
      ) &&
      gaps.reduce((sum, gap) => sum + gap, 0) <= SIGNAL.withinSeconds &&
      shortest >= SIGNAL.leastGapSeconds &&
      longest <= shortest * SIGNAL.mostUneven &&
      (before === null || first.onsetSeconds - before.offsetSeconds >= SIGNAL.restBeforeSeconds)
    );
  }
}
