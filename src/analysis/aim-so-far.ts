/** How the aim in hand goes while the take goes on: counted by the rules of the report over the notes so far. */
import type { Timeline } from '../core/chart/timeline.ts';
import type { Aim } from '../core/grade/aims/aim.ts';
import { findAimEvents } from '../core/grade/aims/aim-events.ts';
import { onStrongBeats } from '../core/grade/assign/beats.ts';
import { isSure } from '../core/grade/assign/doubtful.ts';
import { gradeNotes } from '../core/grade/assign/grade-notes.ts';
import { findPhrases } from '../core/grade/assign/phrases.ts';
import { isFlatThird } from '../core/grade/assign/roles.ts';
import { paletteOver } from '../core/grade/assign/scales.ts';
import { PHRASE_GAP_BEATS } from '../core/grade/assign/settings.ts';
import { playersNotes } from '../core/grade/assign/turns.ts';
import { pitchClassShares } from '../core/grade/chance/chance.ts';
import { findFunctions } from '../core/grade/landings/functions.ts';
import { findChanges, judgeChanges } from '../core/grade/landings/landings.ts';
import { findThirds } from '../core/grade/landings/thirds.ts';
import type { HeardNote } from '../core/take/note.ts';

/** So many of so many events that the aim counts. */
export interface AimCount {
  readonly hits: number;
  readonly of: number;
}

/**
 * Up to so many notes the whole take is counted again with every note; from there on once a bar, because the work grows
 * with the take (3,000 notes: a tenth of a second).
 */
const NOTES_COUNTED_AT_ONCE = 150;
/**
 * For every so many notes it is counted one bar later: the work of a minute stays the same, and what it leaves behind in
 * memory. After an hour of eighths, when one note more changes little, the count is a few bars late.
 */
const NOTES_A_BAR_LATER = 1000;

export class AimSoFar {
  readonly #aim: Aim;
  readonly #timeline: Timeline;
  #count: AimCount = { hits: 0, of: 0 };
  #bar = -1;

  constructor(aim: Aim, timeline: Timeline) {
    this.#aim = aim;
    this.#timeline = timeline;
  }

  get count(): AimCount {
    return this.#count;
  }

  /**
   * Counts the take as it is now.
   * @param ended all notes that have ended, in order of onset
   * @param standing the note that still sounds
   */
  update(ended: readonly HeardNote[], standing: HeardNote | null, referenceHz: number): void {
    const last = standing ?? ended.at(-1);
    if (last === undefined) return;
    const { beatMap, beatsPerBar } = this.#timeline;
    const bar = Math.floor(beatMap.beatAt(last.onsetSeconds) / beatsPerBar);
    const barsBetween = 1 + Math.floor(ended.length / NOTES_A_BAR_LATER);
    if (ended.length >= NOTES_COUNTED_AT_ONCE && bar < this.#bar + barsBetween) return;
    this.#bar = bar;
    const heard = standing === null ? ended : [...ended, standing];
    this.#count = countAim(heard, this.#timeline, this.#aim, referenceHz);
  }
}

/** How often an aim is met in the notes of a take, as its report will say. */
export function countAim(
  heard: readonly HeardNote[],
  timeline: Timeline,
  aim: Aim,
  referenceHz: number,
): AimCount {
  const palette = paletteOver('both pentatonics', timeline);
  const played = playersNotes(heard.filter(isSure), timeline, 'an eighth');
  const notes = gradeNotes(played, timeline, { referenceHz, anticipation: 'an eighth', palette });
  const phrases = findPhrases(notes, PHRASE_GAP_BEATS);
  const { leans } = findThirds(notes, phrases);
  const changes = findChanges(timeline, notes);
  const events = findAimEvents(aim, {
    ...{ notes, changes, leans, timeline, palette },
    functions: findFunctions(notes, phrases),
    landings: judgeChanges(changes, { notes, phrases, leans, timeline, palette }),
    phraseEnds: phrases.map((phrase) => notes[phrase.lastNote]!),
    strong: onStrongBeats(
      notes.map((note) => note.onsetBeat),
      timeline.beatsPerBar,
    ),
    flatThirds: notes.filter((note) => note.chord !== null && isFlatThird(note.pitchClass, note.chord)),
    own: pitchClassShares(notes),
    choruses: null,
  });
  return { hits: events.filter(({ hit }) => hit).length, of: events.length };
}
