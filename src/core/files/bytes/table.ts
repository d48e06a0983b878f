/** Tables as spreadsheets write them: RFC 4180, and the semicolons or tabs some of them use instead. */
import { MOST_ROW_CHARACTERS } from '../../base/limits.ts';
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

/**
 * Splits text into rows of fields; a field in double quotes may hold separators, line breaks and "".
 * @param most behind so many rows the rest is left
 * @param tooLong called with the line of a row that has no end in sight; what is read by then is the result
 */
function split(
  text: string,
  separator: string,
  most = Infinity,
  tooLong: (line: number) => void = () => undefined,
): Fields[] {
  const rows: Fields[] = [];
  let fields: string[] = [];
  let field = '';
  let quoted = false;
  let line = 1;
  let rowLine = 1;
  let rowStart = 0;
  const isSign = (character: string) =>
    character === separator || character === '"' || character === '\n' || character === '\r';
  const endRow = () => {
    fields.push(field.trim());
    if (fields.some((cell) => cell !== '')) rows.push({ line: rowLine, fields });
    fields = [];
    field = '';
  };
  for (let at = 0; at < text.length && rows.length < most; at++) {
    const character = text[at]!;
    if (at - rowStart > MOST_ROW_CHARACTERS) {
      tooLong(rowLine);
      return rows;
    }
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
      rowStart = at;
    } else {
      // A plain stretch is taken whole: character by character a long field would fill the memory.
      let end = at + 1;
      while (end < text.length && !isSign(text[end]!)) end++;
      field += text.slice(at, end);
      at = end - 1;
    }
  }
  if (rows.length < most) endRow();
  return rows;
}

const separatorOf = (header: string) =>
  [',', ';', '\t'].find((separator) => header.includes(separator)) ?? ',';

/** A header stands within so many characters. */
const HEADER_CHARACTERS = 16_384;

const firstLine = (text: string): string => text.split(/\r\n|\r|\n/).find((line) => line.trim() !== '') ?? '';

/** Column names of the first line that is not blank, in lower case; empty where there is none. */
export function headerOf(text: string): readonly string[] {
  const first = firstLine(text);
  return split(first, separatorOf(first))[0]?.fields.map((name) => name.toLowerCase()) ?? [];
}

/**
 * Reads the wanted columns of a table; they may stand in any order, with others between them.
 * @param name the file, for the problem.
 * @param most rows that are wanted; one more is given where there are more
 */
export function readTable(
  text: string,
  wanted: readonly string[],
  name: string,
  most: number,
): Outcome<readonly TableRow[]> {
  const header = headerOf(text.slice(0, HEADER_CHARACTERS));
  const places = wanted.map((column) => header.indexOf(column));
  const missing = wanted.filter((_, k) => places[k]! < 0);
  if (missing.length > 0) return bad('table.columns', { name, missing, wanted });
  const first = firstLine(text.slice(0, HEADER_CHARACTERS));
  let longRow: number | null = null;
  const rows = split(text, separatorOf(first), most + 2, (line) => (longRow = line)).slice(1);
  if (longRow !== null) return bad('table.longRow', { name, line: longRow, most: MOST_ROW_CHARACTERS });
  return good(rows.map(({ line, fields }) => ({ line, cells: places.map((place) => fields[place] ?? '') })));
}

/** A number as a table writes it, decimal comma allowed; NaN where the cell is none. */
export function numberIn(cell: string): number {
  return /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i.test(cell) ? Number(cell.replace(',', '.')) : NaN;
}
