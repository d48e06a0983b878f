/** The catalogue in the player's language, handed down the tree of components. */
import { createContext } from 'svelte';
import type { OpenPageWords, WholePageWords, Words } from '../../core/words/words.ts';

const [words, setWords] = createContext<Words>();

/**
 * The words of the language that holds now: `const words = useWords();`, then `words.review.back` in the markup or
 * in a `$derived`. Reading an entry there follows a change of language at once. For what comes with the rest of the
 * program, as all words do.
 */
export const useWords = words;

/** The same for the open page and what it has in common with other screens: it stands before all words are there. */
export const useOpenPageWords: () => OpenPageWords = words;

/** The same for the parts of the open page that are fetched once it stands. */
export const useWholePageWords: () => WholePageWords = words;

/**
 * Set once by the root.
 * @param catalogue read anew at each entry, so that it may be reactive
 */
export function provideWords(catalogue: () => OpenPageWords): OpenPageWords {
  return setWords(
    new Proxy({} as Words, { get: (_, section) => Reflect.get(catalogue(), section) as unknown }),
  );
}
