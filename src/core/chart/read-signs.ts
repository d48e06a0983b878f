/** The words and signs of a roadmap: numbers of endings, segno, coda, "To Coda", "Fine", "D.C. al Fine", "D.S. al Coda". */
import type { BarSigns, Jump } from './chart.ts';
import { refuse, type Piece } from './chart-problem.ts';

const AT_START = /^(?:(?<segno>𝄋|segno(?=\s|$))|(?<coda>𝄌|coda(?=\s|$)))\s*/iu;
/** "D.C.", "DC", "da capo"; never "D C", which is two chords. */
const AT_END =
  /(?:^|\s)(?:(?<fine>fine)|(?<toCoda>to\s+(?:coda|𝄌))|(?:(?<capo>d\.\s?c\.?|dc|da\s+capo)|(?<dal>d\.\s?s\.?|ds|dal\s+(?:segno|𝄋)))(?:\s+al\s+(?:(?<alFine>fine)|(?<alCoda>coda|𝄌)))?)\.?\s*$/iu;

/** A piece without the signs around it. */
export interface WithoutSigns {
  readonly piece: Piece;
  readonly before: Pick<BarSigns, 'segno' | 'coda'>;
  readonly behind: Pick<BarSigns, 'toCoda' | 'fine' | 'jump'>;
}

/** @example takeSigns({ text: 'Segno Dm7 G7 D.S. al Coda', … }) // piece 'Dm7 G7', segno before, a jump behind */
export function takeSigns(piece: Piece): WithoutSigns {
  let { text, column } = piece;
  let before: WithoutSigns['before'] = {};
  let behind: WithoutSigns['behind'] = {};
  const trimStart = () => {
    const length = text.length - text.trimStart().length;
    column += length;
    text = text.slice(length);
  };
  trimStart();
  for (let found = AT_START.exec(text); found; found = AT_START.exec(text)) {
    before = { ...before, ...(found.groups?.['segno'] ? { segno: true } : { coda: true }) };
    column += found[0].length;
    text = text.slice(found[0].length);
  }
  for (let found = AT_END.exec(text); found; found = AT_END.exec(text)) {
    behind = { ...signOf(found.groups ?? {}), ...behind };
    text = text.slice(0, found.index);
  }
  return { piece: { text: text.trimEnd(), line: piece.line, column }, before, behind };
}

function signOf(found: Readonly<Record<string, string | undefined>>): WithoutSigns['behind'] {
  if (found['fine']) return { fine: true };
  if (found['toCoda']) return { toCoda: true };
  const until = found['alFine'] ? 'fine' : found['alCoda'] ? 'coda' : null;
  return { jump: { to: found['capo'] ? 'start' : 'segno', until } };
}

/** The words of a jump: "D.S. al Coda". */
export const jumpWords = ({ to, until }: Jump): string =>
  (to === 'start' ? 'D.C.' : 'D.S.') + (until === null ? '' : until === 'fine' ? ' al Fine' : ' al Coda');

/** What stands before the chords of a bar, and behind them, as it is read back. */
export const signWords = ({ segno, coda, toCoda, fine, jump }: BarSigns) => ({
  before: [...(segno ? ['Segno'] : []), ...(coda ? ['Coda'] : [])],
  behind: [...(toCoda ? ['To Coda'] : []), ...(fine ? ['Fine'] : []), ...(jump ? [jumpWords(jump)] : [])],
});

/** Whether there is any. */
export const hasSigns = (signs: BarSigns): boolean => Object.keys(signs).length > 0;

/**
 * "1", "1,2", "1-3" as passes.
 * @param bar where they stand, from 1; null for the pickup
 */
export function passesOf(text: string, piece: Piece, bar: number | null): readonly number[] {
  const passes = new Set<number>();
  for (const part of text.split(',')) {
    const [first = 0, last = first] = part.split('-').map(Number);
    for (let pass = first; pass <= last; pass++) passes.add(pass);
  }
  if (passes.size === 0 || passes.has(0)) refuse(piece, 'chart.endingNumber', { bar });
  return [...passes].sort((a, b) => a - b);
}
