/** An aim in words: its name, and what is asked. */
import type { AimResult } from '../take/schema.ts';
import type { OpenPageWords } from '../words/words.ts';

type HouseId = keyof OpenPageWords['aims'];

/**
 * Name and task of an aim: those of the teacher's file, or the catalogue's for an aim of the house.
 * @throws RangeError for an id that is neither
 */
export function aimWords(
  { id, own }: { readonly id: string; readonly own?: AimResult['own'] | undefined },
  { aims }: OpenPageWords,
): { readonly name: string; readonly task: string } {
  if (own) return own;
  if (!(id in aims)) throw new RangeError(`"${id}" is no aim of the house`);
  return aims[id as HouseId];
}
