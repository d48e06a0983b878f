/** A list of problems and notices that the player sees until they are put away: each is in it once. */
import type { Message } from '../core/words/problem.ts';

/** Whether two messages say the same: the same code with the same facts. */
export const isSameMessage = (one: Message, other: Message): boolean =>
  JSON.stringify(one) === JSON.stringify(other);

/** The list with a message at its end, unless it is in it. */
export const withMessage = (messages: readonly Message[], message: Message): readonly Message[] =>
  messages.some((other) => isSameMessage(other, message)) ? messages : [...messages, message];

export const withoutMessage = (messages: readonly Message[], message: Message): readonly Message[] =>
  messages.filter((other) => !isSameMessage(other, message));
