/** An image of the form with every landing in its place: an SVG file of its own (W3C SVG 1.1), for paper and slides. */
import { escaped } from '../base/markup.ts';
import { isChordTone } from '../grade/assign/roles.ts';
import type { Landing, Report } from '../take/schema.ts';
import { spelledChord } from '../words/spelling.ts';
import type { Words } from '../words/words.ts';
import { headlineOf } from './sentences.ts';
import { writtenChords } from './text-form.ts';

const BARS_A_ROW = 4;
const BAR_WIDTH = 220;
const MARGIN = 24;
/** Of one landing's mark, and marks in a line of a bar. */
const MARK = { width: 34, height: 24, gap: 5 } as const;
const MARKS_A_LINE = 5;
const HEAD_HEIGHT = 34;
const TITLE_HEIGHT = 76;

const text = (x: number, y: number, size: number, weight: number, content: string): string =>
  `<text x="${x}" y="${y}" font-size="${size}" font-weight="${weight}">${escaped(content)}</text>`;

/** A third is a full box, another chord tone an empty one, any other tone a dashed one; a rest is a dot. */
function markOf({ kind, degree, role }: Landing, x: number, y: number): string {
  const middle = x + MARK.width / 2;
  if (kind === 'open' || degree === null)
    return `<circle cx="${middle}" cy="${y + MARK.height / 2}" r="2.5"/>`;
  const full = role === 'third';
  const dashes = full || isChordTone(role) ? '' : ' stroke-dasharray="4 3"';
  const box = `<rect x="${x}" y="${y}" width="${MARK.width}" height="${MARK.height}" fill="${full ? '#111' : 'none'}" stroke="#111"${dashes}/>`;
  const held = kind === 'held' ? '~' : '';
  return `${box}<text x="${middle}" y="${y + 17}" font-size="15" text-anchor="middle" fill="${full ? '#fff' : '#111'}">${escaped(held + degree)}</text>`;
}

/**
 * The form of a take, four bars a row, with the landings of all choruses under each bar in the order they were played.
 * @param title of the take
 * @returns a whole SVG document, black on white
 */
export function formSvg(report: Report, title: string, words: Words): string {
  const { bars } = report.timeline;
  const chords = writtenChords(report);
  const landingsOf = (bar: number) => report.landings.filter((landing) => landing.bar === bar);
  const parts: string[] = [
    text(MARGIN, MARGIN + 20, 22, 700, title),
    text(MARGIN, MARGIN + 46, 15, 400, headlineOf(report, words)),
  ];
  let y = MARGIN + TITLE_HEIGHT;
  for (let row = 0; row < bars; row += BARS_A_ROW) {
    const inRow = Array.from({ length: Math.min(BARS_A_ROW, bars - row) }, (_, i) => row + i);
    const lines = Math.max(1, ...inRow.map((bar) => Math.ceil(landingsOf(bar).length / MARKS_A_LINE)));
    const height = HEAD_HEIGHT + lines * (MARK.height + MARK.gap) + MARK.gap;
    for (const bar of inRow) {
      const x = MARGIN + (bar - row) * BAR_WIDTH;
      const names = chords.filter((chord) => chord.bar === bar).map(({ name }) => spelledChord(name, words));
      parts.push(
        `<rect x="${x}" y="${y}" width="${BAR_WIDTH}" height="${height}" fill="none" stroke="#111"/>`,
        text(x + 6, y + 16, 11, 400, String(bar + 1)),
        text(x + 28, y + 24, 19, 700, names.join('  ')),
        ...landingsOf(bar).map((landing, i) =>
          markOf(
            landing,
            x + 10 + (i % MARKS_A_LINE) * (MARK.width + MARK.gap),
            y + HEAD_HEIGHT + Math.floor(i / MARKS_A_LINE) * (MARK.height + MARK.gap),
          ),
        ),
      );
    }
    y += height;
  }
  const width = 2 * MARGIN + BARS_A_ROW * BAR_WIDTH;
  const whole = y + MARGIN;
  return `<?xml version="1.0" encoding="UTF-8"?>
<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${whole}" width="${width}" height="${whole}" font-family="sans-serif" fill="#111">
<rect width="${width}" height="${whole}" fill="#fff"/>
${parts.join('\n')}
</svg>
`;
}
