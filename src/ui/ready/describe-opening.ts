/** What is being opened, in the words of the button. */
import type { OpenPageWords } from '../../core/words/words.ts';
import type { Opening } from '../../state/phase.ts';

export function describeOpening(opening: Opening, words: OpenPageWords): string {
  const entries = words.ready.opening;
  if (opening.kind === 'rendering') return entries.rendering(opening);
  return opening.kind === 'file' ? entries.file(opening) : entries[opening.kind];
}
