/** Repeats, endings, segno, coda, Fine, D.C. and D.S. of a MusicXML measure: signs by what its sound elements say, else by signs and words. */
import type { XmlElement } from '@rgrove/parse-xml';
import type { BarSigns, Jump } from '../../chart/chart.ts';
import { takeSigns } from '../../chart/read-signs.ts';
import { notice, problem, type Notice } from '../../words/problem.ts';
import { childrenOf, firstOf, numberOf, textOf } from '../bytes/xml.ts';
import { UnreadableScore, warnOnce } from './score-problems.ts';

/** What has been seen of the score so far. */
export interface Roadmap {
  /** Coda signs that no sound element explains: the first is where the leap begins, the next where it ends. */
  unexplainedCodas: number;
}

/** The signs of a measure; an empty object where it has none. */
export function signsOfMeasure(measure: XmlElement, roadmap: Roadmap): BarSigns {
  let signs: BarSigns = {};
  let until: Jump['until'] = null;
  for (const element of childrenOf(measure)) {
    if (element.name === 'sound') signs = { ...signs, ...told(element) };
    if (element.name === 'barline') signs = { ...signs, ...drawn(element, {}, roadmap) };
    if (element.name !== 'direction') continue;
    const words = inWords(element);
    until = words.jump?.until ?? until;
    const sounds = childrenOf(element, 'sound').reduce((all, sound) => ({ ...all, ...told(sound) }), {});
    const known: BarSigns = { ...words, ...sounds };
    signs = { ...signs, ...known };
    for (const type of childrenOf(element, 'direction-type'))
      signs = { ...signs, ...drawn(type, known, roadmap) };
  }
  return signs.jump ? { ...signs, jump: { ...signs.jump, until } } : signs;
}

/** The sound element's attributes, as the standard defines them. */
function told({ attributes }: XmlElement): BarSigns {
  const { segno, coda, tocoda, fine, dacapo, dalsegno } = attributes;
  return {
    ...(segno !== undefined && { segno: true }),
    ...(coda !== undefined && { coda: true }),
    ...(tocoda !== undefined && { toCoda: true }),
    ...(fine !== undefined && { fine: true }),
    ...(dacapo === 'yes' && { jump: { to: 'start', until: null } as const }),
    ...(dalsegno !== undefined && { jump: { to: 'segno', until: null } as const }),
  };
}

/** "D.S. al Coda" as it is printed. Words that say anything else say nothing here. */
function inWords(direction: XmlElement): BarSigns {
  return childrenOf(direction, 'direction-type').reduce<BarSigns>((found, type) => {
    const text = textOf(type, 'words');
    if (text === null) return found;
    const { piece, before, behind } = takeSigns({ text, line: 1, column: 1 });
    return piece.text === '' ? { ...found, ...before, ...behind } : found;
  }, {});
}

/** Signs that are drawn, where nothing beside them says what they do. */
function drawn(element: XmlElement, known: BarSigns, roadmap: Roadmap): BarSigns {
  const segno = firstOf(element, 'segno') !== null;
  const coda = firstOf(element, 'coda') !== null && !known.coda && !known.toCoda;
  const which = coda && roadmap.unexplainedCodas++ > 0 ? { coda: true as const } : { toCoda: true as const };
  return { ...(segno && { segno: true as const }), ...(coda && which) };
}

/** What the bar lines of a measure say. */
export interface BarMarks {
  repeatStart: boolean;
  repeatTimes: number;
  endings: readonly number[];
}

/** What a score is read into, as far as a bar line needs it. */
interface ScoreNotes {
  /** The file, for the problems. */
  readonly name: string;
  readonly warnings: Notice[];
}

/** Adds what a bar line says to the marks of its measure. */
export function readBarline(barline: XmlElement, marks: BarMarks, reading: ScoreNotes): void {
  const repeat = firstOf(barline, 'repeat');
  const ending = firstOf(barline, 'ending');
  if (ending?.attributes['type'] === 'start') {
    const passes = (ending.attributes['number'] ?? '').match(/\d+/g) ?? [];
    marks.endings = passes.map(Number).filter((pass) => pass > 0);
    // A chart writes the number of an ending as one digit.
    const large = marks.endings.find((pass) => pass > 9);
    if (large !== undefined)
      throw new UnreadableScore(problem('score.endingNumber', { name: reading.name, ending: large }));
  }
  if (repeat?.attributes['direction'] === 'forward') marks.repeatStart = true;
  if (repeat?.attributes['after-jump'] === 'yes')
    warnOnce(reading.warnings, notice('score.repeatAfterJump', { name: reading.name }));
  if (repeat?.attributes['direction'] === 'backward')
    marks.repeatTimes = Math.max(2, Math.round(numberOf(repeat.attributes['times']) ?? 2));
}
