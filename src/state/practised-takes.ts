/** The kept takes as the page over days counts them. Their sound is not read, nor their reports. */
import { parseKey } from '../core/music/keys.ts';
import type { PractisedTake } from '../core/practice/progress.ts';
import type { TakeCard } from './take.ts';

const DAY_MS = 86_400_000;
const MINUTE_MS = 60_000;

/** The calendar day of a moment where the player is, as a whole number. */
export const dayOf = (moment: Date): number =>
  Math.floor((moment.getTime() - moment.getTimezoneOffset() * MINUTE_MS) / DAY_MS);

/** The form without its key: "12-bar blues in A" is the "12-bar blues". */
export function formOf({ title, key }: Pick<TakeCard, 'title' | 'key'>): string {
  const [, form] = /^(.*) in ([A-G][b#]?(?: minor)?)$/u.exec(title) ?? [];
  return form !== undefined && parseKey(key) !== null ? form : title;
}

/** Those takes that were graded and counted. */
export const practisedTakes = (takes: readonly TakeCard[]): readonly PractisedTake[] =>
  takes.flatMap((take) => {
    const counts = take.summary?.counts;
    if (counts === undefined) return [];
    const { id, key, startedAt } = take;
    return [{ id, key, form: formOf(take), day: dayOf(new Date(startedAt)), counts }];
  });
