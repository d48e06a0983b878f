/** Whether somebody accompanies: a recording of one line alone has no chords to be found, however sure they look. */
import type { BeatTones } from './beat-tones.ts';
import type { ChartProposal } from './proposal.ts';
import { FOLDED } from './settings.ts';

/** Beats this much softer than the loud ones are left out, dB. */
const SOFT_DB = -25;
/**
 * Tones that sound in a beat, in the mean of the energies: (Σx)² / Σx². In the middle beat it is 8.4 to 13 in bands and
 * strummed guitars, 3.8 to 7.7 in half of the lines alone, and as much as in bands where strings or a room ring on.
 */
const LEAST_TONES = 7;
/**
 * The bass register's share of a beat, as a length: 0.55 to 0.9 in bands, to 15 dB under the line; less in all lines alone but
 * one, of a cello (73 recordings of ten instruments that are long enough).
 */
const LEAST_BASS = 0.4;
/**
 * A guitar that accompanies without a bass goes round its form, and its chords are surer than this (17 of 19). Of the 73 lines
 * alone six are as sure, and none of these goes round.
 */
const LEAST_SURE = 0.9;
const LEAST_CHORUSES = 2;

/** How likely a bar is right in the mean, 0 to 1. */
export const meanSureness = ({ bars }: Pick<ChartProposal, 'bars'>): number =>
  bars.reduce((sum, { sure }) => sum + sure, 0) / bars.length;

/** @param proposal the chords that were found over these beats */
export function hasBand(
  { folded, beats, levelsDb }: BeatTones,
  proposal: Pick<ChartProposal, 'bars' | 'choruses'>,
): boolean {
  const tones: number[] = [];
  const bass: number[] = [];
  for (let b = 0; b < beats; b++) {
    if (levelsDb[b]! < SOFT_DB) continue;
    const row = folded.subarray(b * FOLDED, (b + 1) * FOLDED);
    const length = Math.hypot(...row);
    if (length === 0) continue;
    tones.push((row.reduce((sum, tone) => sum + tone, 0) / length) ** 2);
    bass.push(Math.hypot(...row.subarray(0, 12)) / length);
  }
  if (tones.length === 0 || middle(tones) < LEAST_TONES) return false;
  if (middle(bass) >= LEAST_BASS) return true;
  return proposal.choruses >= LEAST_CHORUSES && meanSureness(proposal) >= LEAST_SURE;
}

const middle = (list: readonly number[]): number =>
  list.toSorted((a, b) => a - b)[Math.floor(list.length / 2)]!;
