/** Landings and notes as events that luck draws pitch classes for. */
import type { Chord } from '../../music/chord.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { holds, toneMask } from '../assign/tone-sets.ts';
import { landingCandidates, type ChordChange } from '../landings/landings.ts';
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
 * The landing of a change. An early note is the landing if it fits the new chord; if it does not, the next one is.
 * @param landing the note that became the landing, or is held across
 */
export function landingEvent(
  change: ChordChange,
  landing: GradedNote,
  notes: readonly GradedNote[],
): ToneEvent {
  const { chord, span } = change;
  const fits = toneMask(chord, 'chordTones');
  const isEarly = (note: GradedNote) => note.early?.beat === span.startBeat;
  const candidates = landingCandidates(change, notes);
  const hasEarlier = candidates.some((note) => note.index < landing.index);
  const hasLater = isEarly(landing) && candidates.some((note) => note.index > landing.index);
  return {
    chord,
    eventFor(wanted) {
      const mask = wanted(chord);
      return {
        figure: figureAt(notes, landing.index),
        hit: holds(mask, landing.pitchClass),
        hasEarlier,
        hasLater,
        counts: (drawn, later, earlier) => {
          if (hasEarlier && holds(fits, earlier)) return holds(mask, earlier);
          if (hasLater && !holds(fits, drawn)) return holds(mask, later);
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
      const ifOld = early?.from == null ? 0 : wanted(early.from);
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
