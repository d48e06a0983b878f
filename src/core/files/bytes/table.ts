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
 * @param from where the rows begin, and the number of that line
 * @param most behind so many rows the rest is left
 * @param tooLong called with the line of a row that has no end in sight; what is read by then is the result
 */
function split(
  text: string,
  separator: string,
  from = { at: 0, line: 1 },
  most = Infinity,
  tooLong: (line: number) => void = () => undefined,
): Fields[] {
  const rows: Fields[] = [];
  let fields: string[] = [];
  let field = '';
  let quoted = false;
  let { line } = from;
  let rowLine = line;
  let rowStart = from.at;
  const isSign = (character: string) =>
    character === separator || character === '"' || character === '\n' || character === '\r';
  const endRow = () => {
    fields.push(field.trim());
    if (fields.some((cell) => cell !== '')) rows.push({ line: rowLine, fields });
    fields = [];
    field = '';
  };
  for (let { at } = from; at < text.length && rows.length < most; at++) {
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

/** "sep=;" in the first line tells some spreadsheets what separates the columns. */
const TELLS_SEPARATOR = /^ *"?sep=(.?)"? *$/i;
/** A remark in a line of its own, as programs for measurements write it; "#" alone may name a column of numbers. */
const REMARK = /^"?#(?!"?\s*[,;\t])\s*/;

interface TableHeader {
  /** Names of the columns, in lower case; empty where the text has none. */
  readonly names: readonly string[];
  readonly separator: string;
  /** Where the row behind it begins. */
  readonly next: { readonly at: number; readonly line: number };
}

/**
 * The first line that is not blank, behind a line that tells the separator and behind remarks. Where numbers stand there, the
 * last remark is the header: some programs write it so.
 */
function findHeader(text: string): TableHeader {
  let told: string | null = null;
  let remark: TableHeader | null = null;
  let line = 0;
  for (const { 0: whole, 1: content = '', index } of text.matchAll(/([^\r\n]*)(?:\r\n|\r|\n|$)/g)) {
    line++;
    const written = content.trim();
    if (written === '') {
      if (index + whole.length >= text.length) break;
      continue;
    }
    const separator = TELLS_SEPARATOR.exec(content)?.[1];
    if (separator !== undefined) {
      if (separator !== '') told = separator;
      continue;
    }
    const next = { at: index + whole.length, line: line + 1 };
    const header = (row: string): TableHeader => {
      const by = told ?? separatorOf(row);
      return {
        names: split(row, by)[0]?.fields.map((name) => name.toLowerCase()) ?? [],
        separator: by,
        next,
      };
    };
    if (REMARK.test(written)) {
      remark = header(written.replace(REMARK, ''));
      continue;
    }
    const found = header(written);
    const isData = !Number.isNaN(numberIn(found.names[0] ?? ''));
    return isData && remark !== null ? remark : found;
  }
  return { names: [], separator: ',', next: { at: text.length, line } };
}

/** Column names of a table, in lower case; empty where there are none. */
export const headerOf = (text: string): readonly string[] => findHeader(text).names;

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
  const { names, separator, next } = findHeader(text.slice(0, HEADER_CHARACTERS));
  const places = wanted.map((column) => names.indexOf(column));
  const missing = wanted.filter((_, k) => places[k]! < 0);
  if (missing.length > 0) return bad('table.columns', { name, missing, wanted });
  let longRow: number | null = null;
  const rows = split(text, separator, next, most + 1, (line) => (longRow = line));
  if (longRow !== null) return bad('table.longRow', { name, line: longRow, most: MOST_ROW_CHARACTERS });
  return good(rows.map(({ line, fields }) => ({ line, cells: places.map((place) => fields[place] ?? '') })));
}

/** A number as a table writes it, decimal comma allowed; NaN where the cell is none. */
export function numberIn(cell: string): number {
  return /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d+)?$/i.test(cell) ? Number(cell.replace(',', '.')) : NaN;
}
