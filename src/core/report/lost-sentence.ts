import type { LostSound } from '../take/lost-sound.ts';

/** At most so many bars are named. */
const MOST_BARS = 5;

/** "The browser lost 46 ms of sound, in bar 3 and bar 7 of chorus 2; …", or null where nothing was lost. */
export function lostSentence(lost: readonly LostSound[] | undefined): string | null {
  if (lost === undefined || lost.length === 0) return null;
  const ms = Math.max(1, Math.round(1000 * lost.reduce((sum, { seconds }) => sum + seconds, 0)));
  const places = [...new Set(lost.map(placeWords))];
  const named = places.slice(0, MOST_BARS);
  const more = places.length - named.length;
  if (more > 0) named.push(`${more} more ${more === 1 ? 'bar' : 'bars'}`);
  const where = named.length === 1 ? named[0]! : `${named.slice(0, -1).join(', ')} and ${named.at(-1)}`;
  return `The browser lost ${ms} ms of sound, in ${where}; what was played there is not in the report.`;
}

function placeWords({ bar, chorus }: LostSound): string {
  if (bar === null) return 'the count-in';
  return chorus === null || chorus === 0 ? `bar ${bar + 1}` : `bar ${bar + 1} of chorus ${chorus + 1}`;
}
