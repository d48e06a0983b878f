/** The keyboard in ink: strokes between the white keys, black keys hung from the top, the strokes of the tones to land on at their feet. */
import type { TargetTone } from '../../core/grade/aims/targets.ts';
import { isWhite, keysIn, keysOf, layKeyboard, type Keys } from './keyboard.ts';
import { drawPlayed, drawTargetStroke, drawSlur, drawSpot, letter, type Page } from './pen.ts';
import { at, type Twelve } from './tones.ts';
import type { InstrumentView, Surface } from './view.ts';

interface KeyboardPicture {
  readonly keys: Keys;
  readonly twelve: Twelve;
  /** Whole MIDI number of the note just played, or null. */
  readonly played: number | null;
  readonly goal: number | null;
  readonly label: (tone: TargetTone) => string;
}

const INSET_PX = 4;
const FIGURES_PX = 18;
/** How far down a black key reaches. */
const BLACK_DEPTH = 0.56;

function drawKeyboard(
  { context, width, height, inks }: Surface,
  { keys, twelve, played, goal, label }: KeyboardPicture,
): void {
  const lay = layKeyboard(keys, INSET_PX, width - 2 * INSET_PX);
  const unit = Math.max(12, Math.min(lay.keyWidth * 0.62, height * 0.2, 40));
  const page: Page = { context, width, height, inks, unit };
  const foot = height - FIGURES_PX;
  const blackFoot = foot * BLACK_DEPTH;
  const markY = (midi: number) => (isWhite(midi) ? foot - unit * 0.75 : blackFoot - unit * 0.75);
  const all = keysIn(keys);

  for (const midi of all.filter(isWhite)) {
    context.fillStyle = midi % 12 === 0 ? inks.soft : inks.rule;
    context.fillRect(lay.edgeX(midi) - 0.75, 0, midi % 12 === 0 ? 2.5 : 1.5, foot);
    if (midi % 12 === 0)
      letter(
        page,
        `C${midi / 12 - 1}`,
        lay.keyX(midi),
        foot + FIGURES_PX / 2 + 1,
        14,
        500,
        inks.soft,
        'center',
      );
  }
  context.fillStyle = inks.soft;
  context.fillRect(INSET_PX, foot - 1, width - 2 * INSET_PX, 1.5);
  context.fillRect(width - INSET_PX, 0, 1.5, foot);
  for (const midi of all.filter((key) => !isWhite(key))) {
    context.fillStyle = inks.deep;
    context.strokeStyle = inks.soft;
    context.lineWidth = 1.5;
    context.beginPath();
    context.rect(lay.keyX(midi) - lay.blackWidth / 2, -2, lay.blackWidth, blackFoot + 2);
    context.fill();
    context.stroke();
  }
  for (const midi of all) {
    const next = at(twelve.next, midi);
    const [x, y] = [lay.keyX(midi), markY(midi)];
    const half = (isWhite(midi) ? lay.keyWidth : lay.blackWidth) / 2 - 2;
    if (next !== null) drawTargetStroke(page, x - half, x + half, isWhite(midi) ? foot - 2 : blackFoot - 2);
    const inPalette = twelve.palette.has(midi % 12);
    drawSpot(
      page,
      { x, y, now: at(twelve.now, midi), next, inPalette, ringed: false },
      { side: 'above', label },
    );
  }
  if (played === null || played < keys.lowest || played > keys.highest) return;
  drawPlayed(page, lay.keyX(played), markY(played));
  if (goal !== null && goal >= keys.lowest && goal <= keys.highest)
    // Over the labels, which stand above their marks.
    drawSlur(page, lay.keyX(played), markY(played) - unit * 0.75, lay.keyX(goal), markY(goal) - unit * 0.75);
}

export const keyboardView: InstrumentView = {
  open() {
    let keys: Keys | null = null;
    return (surface, { instrument, twelve, played, goal, label }) => {
      const middle = (instrument.lowestMidi + instrument.highestMidi) / 2;
      keys = keysOf(surface.width, played?.midi ?? middle, keys);
      drawKeyboard(surface, { keys, twelve, played: played?.midi ?? null, goal, label });
    };
  },
};
