/** The table of a class as one HTML page that needs nothing else: a page for the class, and a page for each student. */
import { escaped } from '../base/markup.ts';
import type { Problem } from '../words/problem.ts';
import { describeProblem } from '../words/problem.ts';
import type { Words } from '../words/words.ts';
import { classChanges, rowsBySheet, type ClassRow } from './class-table.ts';
import { aimSentences, changeWords, rowWords } from './class-words.ts';

/** What the page is made of. */
export interface ClassPage {
  readonly title: string;
  readonly rows: readonly ClassRow[];
  readonly takes: number;
  /** Files that could not be graded. */
  readonly failed: readonly { readonly file: string; readonly problem: Problem }[];
  /** Of the program that graded. */
  readonly version: string;
}

const cell = (text: string) => `<td>${escaped(text)}</td>`;
const COLUMN_ORDER = ['student', 'attention', 'aim', 'thirds', 'weakest', 'tries', 'doubts'] as const;

function tableOf(rows: readonly ClassRow[], words: Words): string {
  const { columns } = words.lesson;
  const head = COLUMN_ORDER.map((name) => `<th scope="col">${escaped(columns[name])}</th>`).join('');
  const body = rows.map((row) => {
    const said = rowWords(row, words);
    const cells = COLUMN_ORDER.slice(1).map((name) =>
      cell(name === 'doubts' ? said.doubts.join('; ') : said[name]),
    );
    return `<tr class="${row.attention.replaceAll(' ', '-')}"><th scope="row">${escaped(said.student)}</th>${cells.join('')}</tr>`;
  });
  return `<table><thead><tr>${head}</tr></thead><tbody>\n${body.join('\n')}\n</tbody></table>`;
}

function studentPage(row: ClassRow, words: Words): string {
  const { columns, page } = words.lesson;
  const said = rowWords(row, words);
  const changes = row.take.changes.map(
    (change) =>
      `<li>${escaped(`${changeWords(change, words)}: ${page.changeLine({ hits: change.hits, of: change.of, missedBy: [] })}`)}</li>`,
  );
  const lines: readonly (readonly [string, string])[] = [
    [columns.attention, said.attention],
    [columns.thirds, said.thirds],
    [columns.weakest, said.weakest],
    [columns.tries, said.tries],
    [columns.file, row.take.file],
    [columns.sheet, row.take.title],
    ...(said.doubts.length > 0 ? [[columns.doubts, said.doubts.join('; ')] as const] : []),
  ];
  return `<section class="student"><h2>${escaped(row.student)}</h2>
${aimSentences(row.take, words)
  .map((sentence) => `<p class="aim">${escaped(sentence)}</p>`)
  .join('\n')}
<dl>${lines.map(([term, text]) => `<dt>${escaped(term)}</dt><dd>${escaped(text)}</dd>`).join('')}</dl>
<ul>${changes.join('')}</ul></section>`;
}

const STYLE = `
:root{color-scheme:light dark;font-family:system-ui,sans-serif;line-height:1.45}
body{max-width:72rem;margin:2rem auto;padding:0 1rem}
h1{font-size:1.6rem}h2{font-size:1.3rem;margin-top:2rem}
table{border-collapse:collapse;width:100%}
th,td{text-align:left;vertical-align:top;padding:.4rem .7rem .4rem 0;border-bottom:1px solid GrayText}
tr.doubtful th,tr.not-reached th{font-weight:700}
tr.reached th,tr.too-short th{font-weight:400}
dt{font-weight:600}dd{margin:0 0 .4rem}
footer{margin-top:2rem;font-size:.9rem}
@media print{body{margin:0;max-width:none}.student{break-before:page}a{color:inherit}}`;

/** @returns a whole HTML document (WHATWG HTML), without a script and without anything from elsewhere */
export function classHtml({ title, rows, takes, failed, version }: ClassPage, words: Words): string {
  const { page } = words.lesson;
  const heading = escaped(page.title({ sheet: title }));
  const sheets = rowsBySheet(rows);
  const changes = sheets.map(({ title: of, rows: own }) => {
    const lines = classChanges(own).map(
      (change) => `<li>${escaped(`${changeWords(change, words)}: ${page.changeLine(change)}`)}</li>`,
    );
    const head = sheets.length === 1 ? page.changes : page.changesOf({ sheet: of });
    return `<h2>${escaped(head)}</h2><ul>${lines.join('')}</ul>`;
  });
  const notGraded = failed.map(
    ({ file, problem }) => `<li>${escaped(file)}: ${escaped(describeProblem(problem, words))}</li>`,
  );
  return `<!doctype html>
<html lang="${escaped(words.tag)}"><head><meta charset="utf-8"><meta name="viewport" content="width=device-width">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>${heading}</title><style>${STYLE}</style></head><body>
<h1>${heading}</h1>
<p>${escaped(page.students({ students: rows.length, takes }))}</p>
${tableOf(rows, words)}
${changes.join('\n')}
${notGraded.length > 0 ? `<h2>${escaped(page.failed)}</h2><ul>${notGraded.join('')}</ul>` : ''}
${rows.map((row) => studentPage(row, words)).join('\n')}
<footer>${escaped(page.gradedBy({ version }))}</footer>
</body></html>
`;
}
