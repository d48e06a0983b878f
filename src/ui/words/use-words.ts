/** The catalogue in the player's language, handed down the tree of components. */
import { createContext } from 'svelte';
import type { Words } from '../../core/words/words.ts';

const [words, setWords] = createContext<Words>();

/**
 * The words of the language that holds now: `const words = useWords();`, then `words.ready.language` in the markup or
 * in a `$derived`. Reading an entry there follows a change of language at once.
 */
export const useWords = words;

/**
 * Set once by the root.
 * @param catalogue read anew at each entry, so that it may be reactive
 */
export function provideWords(catalogue: () => Words): Words {
  const sections = Object.keys(catalogue()) as readonly (keyof Words)[];
  const reactive = Object.defineProperties(
    {},
    Object.fromEntries(
      sections.map((section) => [section, { enumerable: true, get: () => catalogue()[section] }]),
    ),
  ) as Words;
  return setWords(reactive);
}
