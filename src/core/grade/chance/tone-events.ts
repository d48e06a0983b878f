/** Landings and notes as events that luck draws pitch classes for. */
import type { Chord } from '../../music/chord.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { ALL_TONES, holds, toneMask } from '../assign/tone-sets.ts';
import { landingCandidates, type ChordChange } from '../landings/candidates.ts';
import type { PitchEvent } from './draws.ts';
import { figureAt } from './figures.ts';

/** The tones that count over a chord, as a mask. */
export type Wanted = (chord: Chord) => number;

/** Something that a share may count: the chord it is told over, and the event that it is for a set of tones. */
export interface ToneEvent {
  readonly chord: Chord;
  eventFor(wanted: Wanted): PitchEvent;
}

/**
 * The landing of a change. An early note is the landing only if it fits the new chord; if it does not, the next one is.
 * @param landing the note that became the landing, or is held across
 */
export function landingEvent(
  change: ChordChange,
  landing: GradedNote,
  notes: readonly GradedNote[],
): ToneEvent {
  const { chord } = change;
  const candidates = landingCandidates(change, notes);
  const earlierTakes = candidates.findLast(({ note }) => note.index < landing.index)?.takes ?? 0;
  const takes = candidates.find(({ note }) => note === landing)?.takes ?? ALL_TONES;
  const hasLater = takes !== ALL_TONES && candidates.some(({ note }) => note.index > landing.index);
  return {
    chord,
    eventFor(wanted) {
      const mask = wanted(chord);
      return {
        figure: figureAt(notes, landing.index),
        hit: holds(mask, landing.pitchClass),
        hasEarlier: earlierTakes !== 0,
        hasLater,
        counts: (drawn, later, earlier) => {
          if (earlierTakes !== 0 && holds(earlierTakes, earlier)) return holds(mask, earlier);
          if (hasLater && !holds(takes, drawn)) return holds(mask, later);
          return holds(mask, drawn);
        },
      };
    },
  };
}

/** A note against its chord; a drawn one goes to the new chord if it is early and fits, else to the old. */
export function noteEvent(
  note: GradedNote,
  chord: Chord,
  notes: readonly Pick<GradedNote, 'pitchClass'>[],
): ToneEvent {
  const { early } = note;
  return {
    chord,
    eventFor(wanted) {
      const mask = wanted(chord);
      const ifNew = early === null ? 0 : wanted(early.chord);
      const ifOld = early === null || early.from === null ? 0 : wanted(early.from);
      const fits = early === null ? 0 : toneMask(early.chord, 'chordTones');
      return {
        figure: figureAt(notes, note.index),
        hit: holds(mask, note.pitchClass),
        hasEarlier: false,
        hasLater: false,
        counts: (drawn) =>
          early === null ? holds(mask, drawn) : holds(holds(fits, drawn) ? ifNew : ifOld, drawn),
      };
    },
  };
}
