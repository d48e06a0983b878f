/** The parts of the open page that are fetched once it stands, handed down the tree of components. */
import { createContext } from 'svelte';
import type { LatePart } from '../../state/late-part.svelte.ts';
import type { laterParts } from './later-parts.ts';

export type LaterParts = typeof laterParts;

/** `provideLater` is called once by the root; `Later.svelte` shows what stands in their places. */
export const [useLater, provideLater] = createContext<LatePart<LaterParts>>();
