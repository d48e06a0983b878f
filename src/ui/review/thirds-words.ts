/** What was done with the two thirds over chords with a major third, in a few sentences. */
import type { Thirds } from '../../core/take/schema.ts';

export function thirdsWords({ flatThirds, thirds, leans, falls, leftHanging, blueNotes }: Thirds): string {
  const sentences = [
    `Over chords with a major third: the 3 ${times(thirds)}, the ♭3 ${times(flatThirds)}.`,
    leans.length === 0
      ? 'No ♭3 leaned into the 3.'
      : `The ♭3 leaned into the 3 ${times(leans.length)}${how(leans)}.`,
  ];
  if (falls.length > 0) sentences.push(`The 3 fell back to the ♭3 ${times(falls.length)}.`);
  if (leftHanging.length > 0) sentences.push(`A ♭3 was left hanging ${times(leftHanging.length)}.`);
  if (blueNotes.length > 0)
    sentences.push(`A blue note between the two thirds sounded ${times(blueNotes.length)}.`);
  return sentences.join(' ');
}

function how(leans: Thirds['leans']): string {
  const ways = ['slid', 'hammered', 'bent', 'picked'] as const;
  const told = ways
    .map((way) => ({ way, count: leans.filter((lean) => lean.how === way).length }))
    .filter(({ count }) => count > 0)
    .map(({ way, count }) => (leans.length === count ? way : `${count} ${way}`));
  return told.length === 0 ? '' : ` (${told.join(', ')})`;
}

const times = (count: number): string =>
  count === 0 ? 'never' : count === 1 ? 'once' : count === 2 ? 'twice' : `${count} times`;
