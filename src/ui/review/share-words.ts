/** A share as counts out of counts, then its uncertainty and its chance level. */
import type { Share } from '../../core/take/schema.ts';
import type { Words } from '../../core/words/words.ts';
import { ofAll } from '../parts/sentences.ts';

export interface ShareWords {
  /** "7 of 12", or "31 of 52 s" by length. */
  readonly counts: string;
  /** "58 %, somewhere from 32 to 81 %; chance gives 33 %. More than luck." */
  readonly told: string;
}

/** Of fewer events one more or less moves the share by ten points: only the counts are given. */
const LEAST_FOR_PER_CENT = 10;

/** @param seconds whether the share is by length: its hits are seconds */
export function shareWords(share: Share, seconds: boolean, words: Words): ShareWords {
  const { review } = words;
  if (share.share === null || share.of === 0) return { counts: review.none, told: review.nothingToCount };
  const { low, high, chance, verdict } = share;
  const counts = seconds
    ? review.secondsOf({ hits: share.hits, of: share.of })
    : ofAll(Math.round(share.hits), Math.round(share.of), words);
  const isFew = share.of < LEAST_FOR_PER_CENT && !seconds && low !== null && high !== null;
  const told = review.share({ share: isFew ? null : share.share, low, high, chance, verdict });
  // No line breaks before a per cent sign.
  return { counts, told: told.replaceAll(' %', '\u00a0%') };
}
