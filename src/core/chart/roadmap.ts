/** The roadmap of a chart: whether each jump has its target, and where the coda is. */
import { writtenBars, type ChartBar, type ChartSection } from './chart.ts';
import { problem, type Problem } from '../words/problem.ts';
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

/** The problem of the first jump that leads nowhere, or null. */
export function lostJump(sections: readonly ChartSection[]): Problem | null {
  const bars = writtenBars({ sections });
  const has = (sign: 'segno' | 'coda' | 'toCoda' | 'fine') => bars.some(({ signs }) => signs?.[sign]);
  for (const [index, { signs }] of bars.entries()) {
    const bar = index + 1;
    if (signs?.toCoda && !has('coda')) return problem('chart.noCoda', { bar });
    const { jump } = signs ?? {};
    if (!jump) continue;
    const facts = { bar, jump: jumpWords(jump) };
    if (jump.to === 'segno' && !has('segno')) return problem('chart.noSegno', facts);
    if (jump.until === 'fine' && !has('fine')) return problem('chart.noFine', facts);
    if (jump.until === 'coda' && !has('toCoda')) return problem('chart.noToCoda', facts);
  }
  return null;
}
