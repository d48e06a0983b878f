/** Tables as spreadsheets write them: RFC 4180, and the semicolons or tabs some of them use instead. */
import { bad, good, type Outcome } from '../../base/outcome.ts';

export interface TableRow {
  /** Line in the file, from 1: for the problem about it. */
  readonly line: number;
  /** The wanted columns, in the order wanted, white space trimmed. */
  readonly cells: readonly string[];
}

interface Fields {
  readonly line: number;
  readonly fields: readonly string[];
}

/** Splits text into rows of fields; a field in double quotes may hold separators, line breaks and "". */
function split(text: string, separator: string): Fields[] {
  const rows: Fields[] = [];
  let fields: string[] = [];
  let field = '';
  let quoted = false;
  let line = 1;
  let rowLine = 1;
  const endRow = () => {
    fields.push(field.trim());
    if (fields.some((cell) => cell !== '')) rows.push({ line: rowLine, fields });
    fields = [];
    field = '';
  };
  for (let at = 0; at < text.length; at++) {
    const character = text[at]!;
    const lineBreak = character === '\n' || (character === '\r' && text[at + 1] !== '\n');
    if (lineBreak) line++;
    if (quoted) {
      if (character !== '"') field += character;
      else if (text[at + 1] === '"') {
        field += '"';
        at++;
      } else quoted = false;
    } else if (character === '"' && field.trim() === '') {
      field = '';
      quoted = true;
    } else if (character === separator) {
      fields.push(field.trim());
      field = '';
    } else if (lineBreak) {
      endRow();
      rowLine = line;
    } else field += character;
  }
  endRow();
  return rows;
}

const separatorOf = (header: string) =>
  [',', ';', '\t'].find((separator) => header.includes(separator)) ?? ',';

/** Column names of the first line that is not blank, in lower case; empty where there is none. */
export function headerOf(text: string): readonly string[] {
  const first = text.split(/\r\n|\r|\n/).find((line) => line.trim() !== '') ?? '';
  return split(first, separatorOf(first))[0]?.fields.map((name) => name.toLowerCase()) ?? [];
}

/**
 * Reads the wanted columns of a table; they may stand in any order, with others between them.
 * @param name the file, for the problem.
 */
export function readTable(
  text: string,
  wanted: readonly string[],
  name: string,
): Outcome<readonly TableRow[]> {
  const header = headerOf(text);
  const places = wanted.map((column) => header.indexOf(column));
  const missing = wanted.filter((_, k) => places[k]! < 0);
  if (missing.length > 0) return bad('table.columns', { name, missing, wanted });
  const first = text.split(/\r\n|\r|\n/).find((line) => line.trim() !== '') ?? '';
  const rows = split(text, separatorOf(first)).slice(1);
  return good(rows.map(({ line, fields }) => ({ line, cells: places.map((place) => fields[place] ?? '') })));
}

/** A number as a table writes it, decimal comma allowed; NaN where the cell is none. */
export function numberIn(cell: string): number {
  return /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i.test(cell) ? Number(cell.replace(',', '.')) : NaN;
}
