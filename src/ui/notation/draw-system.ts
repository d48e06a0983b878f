/**
 * One line of the page as an SVG element: the staff by VexFlow; chords over it, degrees and tablature under it by our own
 * pen. Ink is `currentColor`, so that a page is light on dark by night and black on paper.
 */
import { Formatter, Renderer, Stave, StaveTie, BarlineType, type SVGContext } from 'vexflow/core';
import { fifthsOf } from '../../core/music/keys.ts';
import type { Key } from '../../core/music/chord.ts';
import type { WrittenPage } from '../../core/notation/written-page.ts';
import { drawTab, tabHeight } from './draw-tab.ts';
import { extentOf, headMiddle, staffMeasure, type DrawnMeasure } from './staff-notes.ts';
import { drawText } from './draw-text.ts';

export interface DrawOptions {
  readonly degrees: boolean;
  readonly tab: boolean;
  /** A chord symbol as the page's language sets it. */
  readonly chordText: (symbol: string | null) => string;
}

/** A line of measures, first to last, and how wide each is drawn. */
export interface SystemPlan {
  readonly from: number;
  readonly widths: readonly number[];
  /** Room for clef, signature and meter at its start. */
  readonly head: number;
}

const INK = 'currentColor';
/** Units are a tenth of a staff space. */
const STAFF_TOP = 120;
const CHORD_SIZE = 21;
const DEGREE_SIZE = 14.5;
const SIGNATURES = ['Cb', 'Gb', 'Db', 'Ab', 'Eb', 'Bb', 'F', 'C', 'G', 'D', 'A', 'E', 'B', 'F#', 'C#'];

/** VexFlow's name for the signature of a key; none where it would need more than seven signs. */
export const signatureOf = (key: Key): string => SIGNATURES[fifthsOf(key.tonic, key.mode) + 7] ?? 'C';

/** The signature that stands at a measure. */
export function standingSignature({ over }: WrittenPage, index: number): string {
  const key = over.slice(0, index + 1).findLast((one) => one.key !== null)?.key;
  return key ? signatureOf(key) : 'C';
}

/** Draws a line into a new SVG element. `scale` is CSS pixels a unit. */
export function drawSystem(
  page: WrittenPage,
  { from, widths, head }: SystemPlan,
  scale: number,
  options: DrawOptions,
): SVGSVGElement {
  const host = document.createElement('div');
  const renderer = new Renderer(host, Renderer.Backends.SVG);
  const width = head + widths.reduce((sum, one) => sum + one, 0) + 1;
  renderer.resize(width, 400);
  const context = renderer.getContext() as SVGContext;
  context.setFillStyle(INK);
  context.setStrokeStyle(INK);
  const svg = host.querySelector('svg')!;
  const drawn = drawStaves(page, { from, widths, head }, context);
  const extents = drawn.flatMap(({ content }) => content.notes.map(extentOf));
  const top = Math.min(STAFF_TOP, ...extents.map((one) => one.top), ...tupletTops(drawn));
  const low = Math.max(
    STAFF_TOP + 40,
    ...extents.map((one) => one.bottom),
    ...drawn.flatMap(({ content }) => content.tuplets.map((tuplet) => tuplet.getYPosition() + 8)),
  );
  const chordLine = top - 12;
  let bottom = low + 6;
  drawChords(svg, page, from, drawn, chordLine, options);
  if (options.degrees) {
    bottom += DEGREE_SIZE + 4;
    drawDegrees(svg, page, from, drawn, bottom);
    bottom += 4;
  }
  if (options.tab && page.neck !== null) {
    const tabTop = bottom + 16;
    drawTab(svg, page, { from, width: width - 1, head }, drawn, tabTop);
    bottom = tabTop + tabHeight(page.neck) + 8;
  }
  const viewTop = chordLine - CHORD_SIZE - 2;
  svg.setAttribute('viewBox', `0 ${viewTop} ${width} ${bottom + 4 - viewTop}`);
  svg.setAttribute('width', String(width * scale));
  svg.setAttribute('height', String((bottom + 4 - viewTop) * scale));
  svg.removeAttribute('style');
  inkOnly(svg);
  return svg;
}

function drawStaves(
  page: WrittenPage,
  { from, widths, head }: SystemPlan,
  context: SVGContext,
): readonly DrawnMeasure[] {
  const { measures, meter } = page.line;
  let x = 0;
  const drawn = widths.map((room, i): DrawnMeasure => {
    const index = from + i;
    const width = i === 0 ? room + head : room;
    const stave = new Stave(x, STAFF_TOP - 40, width, { leftBar: i === 0 });
    x += width;
    // A signature later in the line stands as the clef at its start has it.
    Object.assign(stave, { clef: page.clef });
    const signature = standingSignature(page, index);
    if (i === 0) stave.addClef(page.clef).addKeySignature(signature);
    else if (page.over[index]!.key !== null)
      // Naturals cancel a signature only where no other takes its place (common practice).
      stave.addKeySignature(signature, signature === 'C' ? standingSignature(page, index - 1) : undefined);
    if (index === 0) stave.addTimeSignature(`${meter.beats}/${meter.beatType}`);
    if (index === measures.length - 1) stave.setEndBarType(BarlineType.END);
    else if (page.over[index + 1]!.chorus !== null) stave.setEndBarType(BarlineType.DOUBLE);
    stave.setStyle({ strokeStyle: INK, fillStyle: INK, lineWidth: 0.9 });
    return { stave, content: staffMeasure(page, measures[index]!, signature) };
  });
  for (const { stave, content } of drawn) {
    stave.setContext(context).draw();
    const { voice, beams, tuplets } = content;
    new Formatter().joinVoices([voice]).formatToStave([voice], stave);
    voice.draw(context, stave);
    for (const beam of beams) beam.setStyle({ fillStyle: INK, strokeStyle: INK }).setContext(context).draw();
    for (const tuplet of tuplets) tuplet.setContext(context).draw();
  }
  drawTies(page, from, drawn, context);
  return drawn;
}

/** Ties inside the line, and half ones where it breaks. */
function drawTies(
  page: WrittenPage,
  from: number,
  drawn: readonly DrawnMeasure[],
  context: SVGContext,
): void {
  const all = drawn.flatMap(({ content }, i) =>
    page.line.measures[from + i]!.signs.map((sign, k) => ({ sign, note: content.notes[k]! })),
  );
  all.forEach(({ sign, note }, i) => {
    const indexes = note.getKeys().map((_, k) => k);
    const tie = (firstNote: typeof note | null, lastNote: typeof note | null) =>
      new StaveTie({ firstNote, lastNote, firstIndexes: indexes, lastIndexes: indexes })
        .setContext(context)
        .draw();
    if (sign.tiedOn) tie(note, all[i + 1]?.note ?? null);
    if (sign.tiedFrom && i === 0) tie(null, note);
  });
}

const tupletTops = (drawn: readonly DrawnMeasure[]): readonly number[] =>
  drawn.flatMap(({ content }) => content.tuplets.map((tuplet) => tuplet.getYPosition() - 14));

/** A chord stands over the note that begins with it, or where it would. */
function drawChords(
  svg: SVGSVGElement,
  page: WrittenPage,
  from: number,
  drawn: readonly DrawnMeasure[],
  y: number,
  { chordText }: DrawOptions,
): void {
  let free = -Infinity;
  drawn.forEach(({ stave, content }, i) => {
    const { signs, ticks } = page.line.measures[from + i]!;
    const start = stave.getNoteStartX();
    for (const { atTicks, chord } of page.over[from + i]!.chords) {
      const here = signs.findIndex((sign) => sign.atTicks === atTicks);
      const alone = signs.length === 1;
      const exact = here >= 0 && !alone ? content.notes[here]!.getAbsoluteX() : null;
      const x = Math.max(free, exact ?? start + (atTicks / ticks) * (stave.getNoteEndX() - start));
      const text = drawText(svg, chordText(chord?.symbol ?? null), x - 2, y, {
        size: CHORD_SIZE,
        className: 'chord',
      });
      // Where nothing can be measured, a letter is about six tenths of its size wide.
      free = x + text.textContent.length * CHORD_SIZE * 0.6 + 6;
    }
  });
}

function drawDegrees(
  svg: SVGSVGElement,
  page: WrittenPage,
  from: number,
  drawn: readonly DrawnMeasure[],
  y: number,
): void {
  drawn.forEach(({ content }, i) => {
    page.line.measures[from + i]!.signs.forEach(({ note, tiedFrom }, k) => {
      const degree = note === null || tiedFrom ? null : page.notes[note]!.degree;
      if (degree === null) return;
      const text = degree.replaceAll('b', '♭').replaceAll('#', '♯');
      drawText(svg, text, headMiddle(content.notes[k]!), y, {
        size: DEGREE_SIZE,
        className: 'degree',
        middle: true,
      });
    });
  });
}

/** VexFlow's own greys and blacks become ink. */
function inkOnly(svg: SVGSVGElement): void {
  for (const element of [svg, ...svg.querySelectorAll('[fill], [stroke]')]) {
    for (const name of ['fill', 'stroke']) {
      const value = element.getAttribute(name);
      if (value !== null && value !== 'none' && value !== INK) element.setAttribute(name, INK);
    }
  }
}
