/** The way to the page of help from wherever a mark or a word stands. */
import { createContext } from 'svelte';
import type { Role } from '../../core/take/schema.ts';
import type { Words } from '../../core/words/words.ts';

/** A mark by its role ('open' for the rest on a change), or a word by its entry in the catalogue. */
export type HelpEntry = Role | 'open' | keyof Words['help']['entries'];

const [help, setHelp] = createContext<(entry: HelpEntry) => void>();

/** Opens the help at an entry. */
export const useHelp = help;

/** Set once by the root. */
export const provideHelp = setHelp;
