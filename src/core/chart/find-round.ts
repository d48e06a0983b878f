/**
 * Choruses in a list of beats: a form that is gone round shows by its chords, which come again after so many bars.
 */
import { largest } from '../base/extremes.ts';
import type { ChordSpan } from './timeline.ts';

/** Shorter rounds are a vamp rather than a form. */
const LEAST_BARS = 4;
/** A longer one is no form: a chorus of 32 bars through all twelve keys has 384. */
const MOST_BARS = 400;
/** Players write a turnaround otherwise now and then: so much of the beats must carry the same chord a round later. */
const SAME_SHARE = 0.9;
/** Of rounds that fit about as well, the shortest is meant: two choruses fit as one does. */
const ABOUT_AS_WELL = 0.02;

/**
 * The length of the round in bars, the shortest that fits best; null where the chords don't come again.
 * @param chords one a beat, null for no chord
 */
export function findRoundBars(chords: readonly (string | null)[], beatsPerBar: number): number | null {
  const mostBars = Math.min(MOST_BARS, Math.floor(chords.length / (2 * beatsPerBar)));
  const second = chords.findIndex((chord) => chord !== chords[0]);
  const tried: { readonly bars: number; readonly same: number }[] = [];
  for (let bars = LEAST_BARS; bars <= mostBars; bars++) {
    const beats = bars * beatsPerBar;
    if (second < 0 || second >= beats) continue;
    let same = 0;
    for (let beat = 0; beat + beats < chords.length; beat++)
      if (chords[beat] === chords[beat + beats]) same++;
    tried.push({ bars, same: same / (chords.length - beats) });
  }
  const best = largest(
    tried.map(({ same }) => same),
    0,
  );
  if (best < SAME_SHARE) return null;
  return tried.find(({ same }) => same >= best - ABOUT_AS_WELL)?.bars ?? null;
}

/**
 * Spans of a list of beats with their bars counted in choruses, where the chords come again; else as one long chorus.
 * @param beats how many are listed
 */
export function inRounds(
  spans: readonly ChordSpan[],
  beats: number,
  beatsPerBar: number,
): { readonly bars: number; readonly chorus: readonly ChordSpan[] } {
  const chords = new Array<string | null>(beats).fill(null);
  for (const { chord, startBeat, endBeat } of spans)
    chords.fill(chord?.symbol ?? null, startBeat, Math.min(beats, endBeat));
  const bars = findRoundBars(chords, beatsPerBar) ?? Math.ceil(beats / beatsPerBar);
  const chorus = spans.map((span) => ({
    ...span,
    bar: span.bar % bars,
    chorus: Math.floor(span.bar / bars),
  }));
  return { bars, chorus };
}
