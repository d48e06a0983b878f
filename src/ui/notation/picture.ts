/** The whole page as one SVG file that needs nothing beside it: the signs of music are inside. */
import type { WrittenPage } from '../../core/notation/written-page.ts';
import { drawSystem, type DrawOptions } from './draw-system.ts';
import fontUrl from './landfall-music.woff2?url';
import { planSystems } from './plan-systems.ts';

/** Units; four bars of eighths to a line. */
const WIDTH = 1040;
const GAP = 24;
const EDGE = 20;
const SVG = 'http://www.w3.org/2000/svg';

export async function pictureOf(page: WrittenPage, options: DrawOptions): Promise<string> {
  const root = document.createElementNS(SVG, 'svg');
  const style = [
    `@font-face{font-family:'Landfall Music';src:url(${await fontData()}) format('woff2')}`,
    '.chord,.degree,.fret{font-family:Georgia,serif;font-weight:700}',
  ].join('');
  let y = EDGE;
  for (const plan of planSystems(page, WIDTH)) {
    const system = drawSystem(page, plan, 1, options);
    system.setAttribute('x', String(EDGE));
    system.setAttribute('y', String(y));
    y += Number(system.getAttribute('height')) + GAP;
    root.append(system);
  }
  const [width, height] = [WIDTH + 2 * EDGE, Math.ceil(y)];
  for (const [name, value] of Object.entries({
    viewBox: `0 0 ${width} ${height}`,
    width,
    height,
    color: 'black',
  }))
    root.setAttribute(name, String(value));
  const paper = document.createElementNS(SVG, 'rect');
  for (const [name, value] of Object.entries({ width: '100%', height: '100%', fill: 'white' }))
    paper.setAttribute(name, value);
  root.prepend(paper);
  // A style element of this page's own would break its policy: it is written into the text of the file alone.
  const drawn = new XMLSerializer().serializeToString(root);
  const inside = drawn.indexOf('>') + 1;
  return `<?xml version="1.0" encoding="UTF-8"?>\n${drawn.slice(0, inside)}<style>${style}</style>${drawn.slice(inside)}\n`;
}

/** The font as a data URL. */
async function fontData(): Promise<string> {
  const bytes = new Uint8Array(await (await fetch(fontUrl)).arrayBuffer());
  return `data:font/woff2;base64,${btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''))}`;
}
