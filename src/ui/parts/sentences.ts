/** Small sentences that several screens say, in the trade's words. */
import { speakSigns, spokenChord, withSigns } from './engrave.ts';
import { OPEN_MARK, ROLE_MARKS } from './roles.ts';
import { clockWords as wholeClockWords } from '../../core/base/clock-words.ts';
import { parseKey, writeKey } from '../../core/music/keys.ts';
import { keyAsRead, type Reading } from '../../core/music/reading.ts';
import type { Landing } from '../../core/take/schema.ts';

/** "A7: third, flat 3, 20 ms late." for a screen reader and the live region. */
export function landingSentence(landing: Landing): string {
  const chord = spokenChord(landing.chord);
  if (landing.note === null || landing.role === null) return `${chord}: ${OPEN_MARK.name}.`;
  const degree = landing.degree === null ? '' : `, ${speakSigns(landing.degree)}`;
  return `${chord}: ${ROLE_MARKS[landing.role].name}${degree}${spokenOffset(landing.offsetMs)}.`;
}

function spokenOffset(offsetMs: number | null): string {
  const timing = timingWords(offsetMs);
  return timing === null ? '' : `, ${timing}`;
}

/** "20 ms late", "on the beat", or null where it is not known. Under 10 ms nobody hears a difference. */
export function timingWords(offsetMs: number | null): string | null {
  if (offsetMs === null) return null;
  const rounded = Math.round(Math.abs(offsetMs));
  if (rounded < 10) return 'on the beat';
  return `${rounded} ms ${offsetMs < 0 ? 'early' : 'late'}`;
}

/** "+6 cents", "−12 cents", "in tune": with a true minus sign. */
export function centsWords(cents: number): string {
  const rounded = Math.round(cents);
  if (rounded === 0) return 'in tune';
  return `${rounded < 0 ? '−' : '+'}${Math.abs(rounded)} cents`;
}

/** "7 of 12". */
export const ofAll = (count: number, all: number): string => `${count} of ${all}`;

/** A share from 0 to 1 as whole per cent: "58 %", never parted by a line's end. */
export const perCent = (share: number): string => `${Math.round(share * 100)}\u00a0%`;

/** 96.4 seconds as "1:36", to the nearest second. */
export const clockWords = (seconds: number): string => wholeClockWords(Math.max(0, Math.round(seconds)));

/** "F#4" as "F♯4". */
export const noteWords = (name: string): string => withSigns(name);

/** A title that ends in its key, in the key that the player reads: "12-bar blues in A" is one in B for a tenor. */
export const titleAsRead = (title: string, reading: Reading): string =>
  title.replace(/(?<= in )[A-G][b#]?(?: minor)?$/u, (key) => {
    const parsed = parseKey(key);
    return parsed === null ? key : writeKey(keyAsRead(parsed, reading));
  });
