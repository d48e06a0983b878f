/** The table of a class for a terminal: a few lines a student, those that need attention first. */
import { onOneLine } from '../words/one-line.ts';
import type { Words } from '../words/words.ts';
import { classChanges, rowsBySheet, type ClassRow } from './class-table.ts';
import { changeWords, rowWords } from './class-words.ts';

/** @returns the page without a closing line break */
export function classText(
  {
    title,
    rows,
    takes,
  }: { readonly title: string; readonly rows: readonly ClassRow[]; readonly takes: number },
  words: Words,
): string {
  const { columns, page } = words.lesson;
  const labels = [columns.aim, columns.thirds, columns.weakest, columns.tries, columns.doubts];
  const width = Math.max(...labels.map(({ length }) => length)) + 2;
  const sheets = rowsBySheet(rows);
  const students = rows.flatMap((row) => {
    const said = rowWords(row, words);
    const facts: readonly (readonly [string, string])[] = [
      [columns.aim, said.aim],
      [columns.thirds, said.thirds],
      [columns.weakest, said.weakest],
      [columns.tries, said.tries],
      ...(said.doubts.length > 0 ? [[columns.doubts, said.doubts.join('; ')] as const] : []),
    ];
    return [
      '',
      `${said.student}${sheets.length === 1 ? '' : ` (${row.take.title})`}: ${said.attention}`,
      ...facts.map(([label, text]) => `  ${label.padEnd(width)}${text}`),
    ];
  });
  const changes = sheets.flatMap(({ title: of, rows: own }) => [
    '',
    sheets.length === 1 ? page.changes : page.changesOf({ sheet: of }),
    ...classChanges(own).map((change) => `  ${changeWords(change, words)}: ${page.changeLine(change)}`),
  ]);
  return [
    page.title({ sheet: title }),
    page.students({ students: rows.length, takes }),
    ...students,
    ...changes,
  ]
    .map(onOneLine)
    .join('\n');
}
