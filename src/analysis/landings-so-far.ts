/** Landings while the take goes on, graded by the rules of the report over the notes committed so far. */
import type { Timeline } from '../core/chart/timeline.ts';
import { isSure } from '../core/grade/assign/doubtful.ts';
import { gradeNotes } from '../core/grade/assign/grade-notes.ts';
import { findChanges, judgeChanges } from '../core/grade/landings/landings.ts';
import { findPhrases } from '../core/grade/assign/phrases.ts';
import { paletteOver, type PaletteOver } from '../core/grade/assign/scales.ts';
import { PHRASE_GAP_BEATS } from '../core/grade/assign/settings.ts';
import { findThirds } from '../core/grade/landings/thirds.ts';
import { playersNote } from '../core/grade/assign/turns.ts';
import type { HeardNote } from '../core/take/note.ts';
import type { Landing } from '../core/take/schema.ts';
import { tidyNumbers } from '../core/report/tidy.ts';
import { estimateReference } from '../core/grade/assign/estimate-reference.ts';
import type { LandingsFrom } from './messages.ts';
import { STANDARD_A4_HZ } from '../core/music/temperament.ts';

/**
 * Landings older than this are final; younger ones are graded again with every note. A landing can change until its
 * change is a beat old, and a b3 may be resolved half a beat later: two bars of four are more than enough.
 */
const SETTLED_BEATS = 8;
/** Notes before the oldest landing that is graded again: steps and guide tones depend on the note before. */
const NOTES_BEFORE = 8;
/** The reference is estimated from so many notes at most: a guitar drifts, and the work stays small. */
const NOTES_OF_REFERENCE = 200;

export class LandingsSoFar {
  readonly #timeline: Timeline;
  readonly #reference: number | 'auto';
  readonly #palette: PaletteOver;
  #landings: readonly Landing[] = [];
  /** How many of them the last update has left as they were. */
  #settled = 0;
  #referenceHz: number;

  /** @param reference A4 in Hz, or estimated from the notes as they come */
  constructor(timeline: Timeline, reference: number | 'auto') {
    this.#timeline = timeline;
    this.#reference = reference;
    this.#palette = paletteOver('both pentatonics', timeline);
    this.#referenceHz = reference === 'auto' ? STANDARD_A4_HZ : reference;
  }

  get landings(): readonly Landing[] {
    return this.#landings;
  }

  /** What the last update has changed of them. */
  get changed(): LandingsFrom {
    return { from: this.#settled, landings: this.#landings.slice(this.#settled) };
  }

  get referenceHz(): number {
    return this.#referenceHz;
  }

  /**
   * Grades the take as it is now.
   * @param ended all notes that have ended, in order of onset; only longer from one call to the next
   * @param standing the note that still sounds, its end being the moment heard so far
   */
  update(ended: readonly HeardNote[], standing: HeardNote | null): void {
    const last = standing ?? ended.at(-1);
    if (last === undefined) return;
    if (this.#reference === 'auto') {
      const estimate = estimateReference(ended.slice(-NOTES_OF_REFERENCE));
      this.#referenceHz = estimate.evidence === 'enough' ? estimate.referenceHz : STANDARD_A4_HZ;
    }
    const { beatMap } = this.#timeline;
    const settledBeat = beatMap.beatAt(last.onsetSeconds) - SETTLED_BEATS;
    const lastSettled = ended.findLastIndex((note) => beatMap.beatAt(note.onsetSeconds) < settledBeat);
    const from = Math.max(0, lastSettled + 1 - NOTES_BEFORE);
    const recent = [...ended.slice(from), ...(standing === null ? [] : [standing])];
    const own = recent.flatMap((heard, i) => {
      const note = playersNote(heard, this.#timeline, 'an eighth');
      // What the report leaves out is no landing here either; the player can't have spoken for a note yet.
      return note === null || !isSure(heard) ? [] : [{ note, index: i + from }];
    });
    const placed = (index: number) => own[index]!.index;
    const shifted = (index: number | null) => (index === null ? null : placed(index));
    const settled = this.#landings.filter((landing) => landing.beat < settledBeat);
    this.#settled = settled.length;
    this.#landings = [
      ...settled,
      ...this.#judge(
        own.map(({ note }) => note),
        settledBeat,
      ).map((landing) => ({
        ...landing,
        note: shifted(landing.note),
        leansInto: shifted(landing.leansInto),
        putRight: landing.putRight && { ...landing.putRight, note: placed(landing.putRight.note) },
      })),
    ];
  }

  /** The report's own rules, without the shares, aims and advice that a whole take needs. */
  #judge(heard: readonly HeardNote[], fromBeat: number): readonly Landing[] {
    const timeline = this.#timeline;
    const notes = gradeNotes(heard, timeline, {
      referenceHz: this.#referenceHz,
      anticipation: 'an eighth',
      palette: this.#palette,
    });
    const phrases = findPhrases(notes, PHRASE_GAP_BEATS);
    const { leans } = findThirds(notes, phrases);
    const changes = findChanges(timeline, notes).filter(({ span }) => span.startBeat >= fromBeat);
    return tidyNumbers(judgeChanges(changes, { notes, phrases, leans, timeline, palette: this.#palette }));
  }
}
