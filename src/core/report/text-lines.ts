/** Lines of a page of plain text. */
import { onOneLine } from '../words/one-line.ts';

/** The width of the page: what every terminal shows. */
export const PAGE_COLUMNS = 80;

/** Breaks a text at spaces so that no line is longer than `columns`; a longer word has a line to itself. A line break of a name is none. */
export function wrapText(text: string, columns: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of onOneLine(text).split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (longer.length > columns && line !== '') {
      lines.push(line);
      line = word;
    } else {
      line = longer;
    }
  }
  return [...lines, line];
}

/** A heading in the margin and texts beside it, each from a line of its own; nothing without a text. */
export function block(heading: string, texts: readonly string[], margin: number): readonly string[] {
  return texts
    .flatMap((text) => wrapText(text, PAGE_COLUMNS - margin))
    .map((line, i) => (i === 0 ? heading : '').padEnd(margin) + line);
}

export const rule = (): string => '─'.repeat(PAGE_COLUMNS);
