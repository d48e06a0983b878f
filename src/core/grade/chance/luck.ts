/**
 * Luck, fairly reckoned. The rule of the anticipation looks at pitch: an early note is given to the new chord only if
 * it fits it. So luck has two goes where a note was early enough, and a player who wanders would seem to follow the
 * chords (measured on 1,500 made players who wander with human timing: 24 % called better than luck at a level
 * of 5 %; reckoned as here, see tests/outside/known-players.test.ts). Verdicts and printed p values use these chances;
 * the plain ones of the definition stand beside them.
 */
import type { Chord } from '../../music/chord.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { isInLandingWindow, notesAround, type ChordChange } from '../landings/landings.ts';
import { shareInside, toneMask } from '../assign/tone-sets.ts';

/** The tones that count over a chord, as a mask. */
export type Wanted = (chord: Chord) => number;

/** Chance that a note drawn at random in this note's place counts: against the new chord if it fits, else the old. */
export function noteLuck(note: GradedNote, wanted: Wanted, own: readonly number[]): number {
  if (note.early === null) return note.chord === null ? 0 : shareInside(own, wanted(note.chord));
  const fits = toneMask(note.early.chord, 'chordTones');
  const ifNew = wanted(note.early.chord) & fits;
  const ifOld = note.early.from === null ? 0 : wanted(note.early.from) & ~fits;
  return shareInside(own, ifNew | ifOld);
}

/**
 * Chance that notes drawn at random in the places of these would land on a wanted tone: each early note is the
 * landing if it fits the new chord; if none does, the first note after the change is; if there is none, the last
 * early note is held across although it does not fit.
 */
export function landingLuck(
  change: ChordChange,
  notes: readonly GradedNote[],
  wanted: Wanted,
  own: readonly number[],
): number {
  const mask = wanted(change.chord);
  const fits = toneMask(change.chord, 'chordTones');
  const fit = shareInside(own, fits);
  const near = notesAround(change, notes);
  const early = near.filter((note) => note.early?.beat === change.span.startBeat).length;
  if (early === 0) return shareInside(own, mask);
  let chance = 0;
  for (let i = 0; i < early; i++) chance += (1 - fit) ** i * shareInside(own, mask & fits);
  const followed = near.some((note) => isInLandingWindow(note, change));
  const otherwise = followed
    ? (1 - fit) ** early * shareInside(own, mask)
    : (1 - fit) ** (early - 1) * shareInside(own, mask & ~fits);
  return Math.min(1, chance + otherwise);
}
