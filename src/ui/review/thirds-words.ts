/** What was done with the two thirds over chords with a major third, in a few sentences. */
import type { Thirds } from '../../core/take/schema.ts';
import type { Words } from '../../core/words/words.ts';

export function thirdsWords(played: Thirds, { review }: Words): string {
  const { flatThirds, thirds, leans, falls, leftHanging, blueNotes } = played;
  return [
    review.thirds({ thirds, flatThirds }),
    leans.length === 0
      ? review.noLeans
      : review.leans({ count: leans.length, ways: leanWays(leans, review) }),
    ...(falls.length > 0 ? [review.falls({ count: falls.length })] : []),
    ...(leftHanging.length > 0 ? [review.leftHanging({ count: leftHanging.length })] : []),
    ...(blueNotes.length > 0 ? [review.blueNotes({ count: blueNotes.length })] : []),
  ].join(' ');
}

/** "slid" where all were, else "2 slid", "1 picked". */
function leanWays(leans: Thirds['leans'], review: Words['review']): readonly string[] {
  return (['slid', 'hammered', 'bent', 'picked'] as const).flatMap((how) => {
    const count = leans.filter((lean) => lean.how === how).length;
    const way = review.leanWays[how];
    if (count === 0) return [];
    return [count === leans.length ? way : review.leanWay({ count, way })];
  });
}
