/** Text and lines put into an SVG element by hand. */

const SVG = 'http://www.w3.org/2000/svg';

export interface TextStyle {
  readonly size: number;
  readonly className: string;
  /** Set about its middle; left of it else. */
  readonly middle?: boolean;
}

export function drawText(
  svg: SVGSVGElement,
  words: string,
  x: number,
  y: number,
  { size, className, middle = false }: TextStyle,
): SVGTextElement {
  const text = document.createElementNS(SVG, 'text');
  text.textContent = words;
  text.setAttribute('x', x.toFixed(1));
  text.setAttribute('y', y.toFixed(1));
  text.setAttribute('font-size', String(size));
  text.setAttribute('class', className);
  text.setAttribute('fill', 'currentColor');
  if (middle) text.setAttribute('text-anchor', 'middle');
  svg.append(text);
  return text;
}

export function drawLine(
  svg: SVGSVGElement,
  from: readonly [number, number],
  to: readonly [number, number],
  pen = 0.9,
): void {
  const line = document.createElementNS(SVG, 'line');
  const [x1, y1] = from;
  const [x2, y2] = to;
  for (const [name, value] of Object.entries({ x1, y1, x2, y2 })) line.setAttribute(name, value.toFixed(1));
  line.setAttribute('stroke', 'currentColor');
  line.setAttribute('stroke-width', String(pen));
  svg.append(line);
}
