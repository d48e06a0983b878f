import * as D from './decoding.ts';

/** The most frames in a row of a pitch path, in semitones, that lie within ±STILL_SEMITONES; it stops counting at `enough`. */
export function standsFor(path: readonly number[], enough: number): number {
  let longest = 0;
  for (let from = 0; from + longest < path.length && longest < enough; from++) {
    let low = path[from]!;
    let high = low;
    let to = from + 1;
    for (; to < path.length && to - from < enough; to++) {
      low = Math.min(low, path[to]!);
      high = Math.max(high, path[to]!);
      if (high - low > 2 * D.STILL_SEMITONES) break;
    }
    longest = Math.max(longest, to - from);
  }
  return longest;
}

/** How much a note looks like a syllable, 0 to 1. A note that another one cut off had no time to stand still, and says nothing. */
export function talkOf(path: readonly number[], isCutOff: boolean): number {
  const stands = standsFor(path, D.STILL_FRAMES);
  if (isCutOff || stands >= D.STILL_FRAMES) return 0;
  return path.length >= 3 && stands < Math.min(D.STILL_FRAMES, path.length) ? 1 : D.SHORT_TALK;
}

/**
 * Tells speech from notes: the pitch of a syllable glides or ends before it has stood still, note after note, where played and
 * sung notes stand still for a tenth of a second. Takes the notes in order.
 */
export class Talk {
  #share = D.TALK_AT_FIRST;

  /** Whether the next note is talk: a syllable, or an unsure note among syllables. */
  hears(talk: number, confidence: number): boolean {
    this.#share += D.TALK_STEP * (talk - this.#share);
    return this.#share > D.LEAST_TALK && (talk > 0 || confidence < D.SURE_IN_TALK);
  }
}
