/** The roadmap of a chart: whether each jump has its target, and where the coda is. */
import { writtenBars, type ChartBar, type ChartSection } from './chart.ts';
import { jumpWords } from './read-signs.ts';

/** A section that is called Coda is the coda, where the chart goes to one and no sign says where it is. */
export function withCodaNamed(sections: readonly ChartSection[]): readonly ChartSection[] {
  const bars = writtenBars({ sections });
  const named = sections.find(({ name }) => name !== null && /^coda$/i.test(name));
  const first = named?.bars[0];
  if (!first || !bars.some(({ signs }) => signs?.toCoda) || bars.some(({ signs }) => signs?.coda))
    return sections;
  const marked: ChartBar = { ...first, signs: { ...first.signs, coda: true } };
  return sections.map((section) =>
    section === named ? { ...section, bars: [marked, ...section.bars.slice(1)] } : section,
  );
}

/** The sentence about the first jump that leads nowhere, or null. */
export function lostJump(sections: readonly ChartSection[]): string | null {
  const bars = writtenBars({ sections });
  const has = (sign: 'segno' | 'coda' | 'toCoda' | 'fine') => bars.some(({ signs }) => signs?.[sign]);
  for (const [index, { signs }] of bars.entries()) {
    const label = `Bar ${index + 1}`;
    if (signs?.toCoda && !has('coda'))
      return `${label} goes to the coda, but there is none: write Coda before its first bar, or name a section [Coda].`;
    const { jump } = signs ?? {};
    if (!jump) continue;
    const words = jumpWords(jump);
    if (jump.to === 'segno' && !has('segno'))
      return `${label} says ${words}, but there is no segno: write Segno before the bar it goes back to.`;
    if (jump.until === 'fine' && !has('fine'))
      return `${label} says ${words}, but there is no Fine: write Fine behind the bar it ends with.`;
    if (jump.until === 'coda' && !has('toCoda'))
      return `${label} says ${words}, but no bar goes there: write To Coda behind the bar before the leap.`;
  }
  return null;
}
