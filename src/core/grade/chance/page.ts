/**
 * The shares of one page: fifteen questions asked at once. The headline's (thirds, or guide tones, over landings) is
 * asked alone; among the others p is corrected for their number before a mark is set, so that the page of a player
 * who ignores the chords has a false mark in one take of twenty at most.
 */
import { holm } from '../../base/statistics.ts';
import type { Report, Share } from '../../take/schema.ts';
import { toneSets, type ToneSet } from '../assign/tone-sets.ts';
import { eachSet, type AskedShare, type SharesToReach } from './shares.ts';
import { answer, LEAST_EVENTS } from './verdict.ts';

export type Kind = keyof Report['shares'];
export const KINDS: readonly Kind[] = ['landings', 'phraseEnds', 'strongBeats', 'allNotes', 'byLength'];

/**
 * What a player who follows the chords is taken to reach, by kind of event: the aims' own shares for landings on thirds
 * and for phrase ends, and the house's own for the rest, between chance and what the masters of trade figures do.
 */
export const SHARES_TO_REACH: Readonly<Record<Kind, SharesToReach>> = {
  landings: { thirds: 0.5, guideTones: 0.6, chordTones: 0.9 },
  phraseEnds: { thirds: 0.5, guideTones: 0.6, chordTones: 0.75 },
  strongBeats: { thirds: 0.4, guideTones: 0.5, chordTones: 0.8 },
  allNotes: { thirds: 0.3, guideTones: 0.45, chordTones: 0.75 },
  byLength: { thirds: 0.3, guideTones: 0.45, chordTones: 0.75 },
};

export type AskedPage = Readonly<Record<Kind, Readonly<Record<ToneSet, AskedShare>>>>;

/** The page's shares with their marks. @param alone the set of tones that the headline asks about over landings */
export function markPage(page: AskedPage, alone: ToneSet): Report['shares'] {
  const cells = KINDS.flatMap((kind) =>
    toneSets
      .filter((set) => !(kind === 'landings' && set === alone))
      .map((set) => page[kind][set])
      .filter(({ question }) => question !== null && question.events >= LEAST_EVENTS),
  );
  const upper = holm(cells.map(({ share }) => share.tail!));
  const lower = holm(cells.map((cell) => cell.lower!));
  const marked = new Map<AskedShare, Share>(
    cells.map((cell, i) => [cell, marking(cell, upper[i]!, lower[i]!)]),
  );
  const shares = (kind: Kind) => eachSet((set) => marked.get(page[kind][set]) ?? page[kind][set].share);
  return {
    landings: shares('landings'),
    phraseEnds: shares('phraseEnds'),
    strongBeats: shares('strongBeats'),
    allNotes: shares('allNotes'),
    byLength: shares('byLength'),
  };
}

function marking({ share, question }: AskedShare, upper: number, lower: number): Share {
  return { ...share, correctedTail: upper, ...answer(question!, upper, lower) };
}
