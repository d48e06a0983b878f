/** The role marks on a canvas, from the same paths as in SVG. */
import type { Role } from '../../core/take/schema.ts';
import { cutRim } from './cut-rim.ts';
import type { Inks } from './inks.ts';
import { ROLE_MARKS } from './roles.ts';

const paths = new Map<Role, Path2D>();

function pathOf(role: Role): Path2D {
  const known = paths.get(role);
  if (known !== undefined) return known;
  const path = new Path2D(ROLE_MARKS[role].path);
  paths.set(role, path);
  return path;
}

/** Draws one mark centred on (x, y), `size` CSS pixels high, with a rim of page that lifts it off the line. */
export function drawMark(
  context: CanvasRenderingContext2D,
  role: Role,
  x: number,
  y: number,
  size: number,
  inks: Inks,
): void {
  const { filled, colour } = ROLE_MARKS[role];
  const path = pathOf(role);
  context.save();
  context.translate(x, y);
  context.scale(size / 26, size / 26);
  context.lineJoin = 'round';
  context.lineCap = 'round';
  context.lineWidth = filled ? 5 : 8;
  cutRim(context, () => {
    context.stroke(path);
    if (!filled && role !== 'outside') context.fill(path);
  });
  if (filled) {
    context.fillStyle = inks[colour];
    context.fill(path);
  } else {
    context.strokeStyle = inks[colour];
    context.lineWidth = 3.2;
    context.stroke(path);
  }
  context.restore();
}
