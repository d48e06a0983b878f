/** Clefs drawn with a broad pen: the typefaces have none. Units are half staff spaces, the clef's own line at 0. */
import type { Clef } from './staff.ts';

/** One stroke of the pen as a path, and its width. */
type Stroke = readonly [path: string, width: number];

/** The G clef winds round the second line: up, round, and down through the staff to its foot. */
const TREBLE: readonly Stroke[] = [
  [
    'M0.2 0.9C-1.2 0.9 -1.2 -1.4 0.5 -1.5C2.7 -1.6 2.9 2 0.3 2.1C-3.4 2.2 -3.3 -2.6 -0.6 -4.8C1 -6.1 1.9 -7.4 1.7 -9C1.6 -10 0.7 -10.2 0.1 -9',
    0.55,
  ],
  ['M0.1 -9C-0.5 -7.8 -0.2 -6.3 0 -5L1.3 4.1C1.6 5.9 -1 6.4 -1.2 4.9', 0.42],
];
/** The F clef: a hook from the fourth line, with a dot on either side of it. */
const BASS: readonly Stroke[] = [['M-1.5 0.1C-2 -2.4 2.4 -2.9 2.5 0.6C2.6 3.4 0.6 5 -2 6.2', 0.6]];

/** @param yOf where a step from the middle line lies @param half half a staff space in CSS pixels */
export function drawClef(
  context: CanvasRenderingContext2D,
  clef: Clef,
  x: number,
  yOf: (step: number) => number,
  half: number,
  colour: string,
): void {
  context.save();
  // The G clef's line is two steps below the middle, the F clef's two above.
  context.translate(x + half * 2.4, yOf(clef === 'treble' ? -2 : 2));
  context.scale(half, half);
  context.strokeStyle = context.fillStyle = colour;
  context.lineCap = context.lineJoin = 'round';
  for (const [path, width] of clef === 'treble' ? TREBLE : BASS) {
    context.lineWidth = width;
    context.stroke(new Path2D(path));
  }
  const dots =
    clef === 'treble'
      ? [[-1, 4.9, 0.55]]
      : [
          [-1.3, 0, 0.65],
          [3.7, -1, 0.42],
          [3.7, 1, 0.42],
        ];
  for (const [dotX, dotY, radius] of dots) {
    context.beginPath();
    context.arc(dotX!, dotY!, radius!, 0, 2 * Math.PI);
    context.fill();
  }
  context.restore();
}
