/** Messages as English sentences, for tests that check what a player reads. */
import { en } from '../src/core/words/en.ts';
import { describe, type Message } from '../src/core/words/problem.ts';

export const english = (message: Message): string => describe(message, en);
