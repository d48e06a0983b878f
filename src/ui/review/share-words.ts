/** A share told as counts out of counts, then its doubt and its chance level. */
import type { Share, Verdict } from '../../core/take/schema.ts';
import { ofAll, perCent } from '../parts/sentences.ts';

export interface ShareWords {
  /** "7 of 12", or "31 of 52 s" by length. */
  readonly counts: string;
  /** "58 %, give or take 32 to 81 %; chance gives 33 %. More than luck." */
  readonly told: string;
}

const VERDICTS: Readonly<Record<Verdict, string>> = {
  'above chance': 'More than luck.',
  'at chance': 'No more than luck.',
  'below chance': 'Less than luck would give.',
  'too short to tell': 'Too short to tell.',
};

/** Of fewer events one more or less would move the share by ten points: the counts alone are told. */
const LEAST_FOR_PER_CENT = 10;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

export function shareWords(share: Share, seconds: boolean): ShareWords {
  if (share.share === null || share.of === 0)
    return { counts: 'none', told: 'Nothing to count in this take.' };
  const counts = seconds
    ? `${share.hits.toFixed(1)} of ${share.of.toFixed(1)} s`
    : ofAll(Math.round(share.hits), Math.round(share.of));
  const portion = share.of < LEAST_FOR_PER_CENT && !seconds ? '' : `${perCent(share.share)}, `;
  const doubt =
    share.low === null || share.high === null
      ? perCent(share.share)
      : `${portion}somewhere from ${perCent(share.low)} to ${perCent(share.high)}`;
  const chance = share.chance === null ? '' : `; chance gives ${perCent(share.chance)}`;
  return { counts, told: `${capital(doubt)}${chance}. ${VERDICTS[share.verdict]}` };
}
