/** The table of shares on the page: counts, chance level, and whether it is more or less than that. */
import type { Report, Share, Shares } from '../take/schema.ts';
import type { Words } from '../words/words.ts';

/** The kinds of events, as the table has them from top to bottom. */
export const SHARE_ROWS = ['landings', 'phraseEnds', 'strongBeats', 'allNotes', 'byLength'] as const;
const COLUMNS = ['thirds', 'guideTones', 'chordTones'] as const satisfies readonly (keyof Shares)[];
const FIRST_COLUMNS = 14;
const CELL_COLUMNS = 22;

/** The shares as a table, each beside its chance level, with what the signs mean under it. */
export function sharesTable(
  shares: Report['shares'],
  shown: readonly (typeof SHARE_ROWS)[number][],
  words: Words,
): readonly string[] {
  const { rows, columns } = words.page;
  const line = (name: string, cells: readonly string[]) =>
    (name.padEnd(FIRST_COLUMNS) + cells.map((text) => text.padEnd(CELL_COLUMNS)).join('')).trimEnd();
  return [
    line(
      '',
      COLUMNS.map((column) => columns[column]),
    ),
    ...shown.map((row) =>
      line(
        rows[row],
        COLUMNS.map((column) => cell(shares[row][column], row === 'byLength', words)),
      ),
    ),
    ...signLegend(
      shown.flatMap((row) => COLUMNS.map((column) => shares[row][column])),
      words,
    ),
  ];
}

/** Longer counts would not fit their column, and say no more than per cent do. */
const MOST_COUNTED = 1000;

/** "7/12, luck 8 % +": counts, chance level, and whether it is more or less than that. */
function cell(share: Share, byLength: boolean, { page, numbers }: Words): string {
  if (share.share === null) return page.none;
  const counted =
    byLength || share.of >= MOST_COUNTED
      ? numbers.percent({ share: share.share })
      : `${share.hits}/${share.of}`;
  const luck = share.chance === null ? '' : `, ${page.luck({ share: share.chance })}`;
  const sign = VERDICT_SIGNS[share.verdict];
  return `${counted}${luck}${sign === '' ? '' : ` ${sign}`}`;
}

const VERDICT_SIGNS: Readonly<Record<Share['verdict'], string>> = {
  'above chance': '+',
  'at chance': '',
  'below chance': '−',
  'too short to tell': '?',
};

function signLegend(cells: readonly Share[], { page }: Words): readonly string[] {
  const verdicts = ['above chance', 'below chance', 'too short to tell'] as const;
  const used = verdicts.filter((verdict) =>
    cells.some((share) => share.verdict === verdict && share.share !== null),
  );
  const told = used.map((verdict) => `${VERDICT_SIGNS[verdict]} ${page.signs[verdict]}`);
  return used.length === 0 ? [] : [`   ${told.join(', ')}`];
}
