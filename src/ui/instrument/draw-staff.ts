/** The staff: the chord now, the note just played, and past the bar line the tones to land on. */
import type { TargetTone } from '../../core/grade/aims/targets.ts';
import { withSigns } from '../parts/engrave.ts';
import { drawClef } from './clefs.ts';
import { drawPlayed, drawNow, drawTargetStroke, drawSlur, drawTarget, letter, type Page } from './pen.ts';
import { ledgerSteps, middleOf, octavesNear, stepsFor, writeNote, type WrittenNote } from './staff.ts';
import type { InstrumentView, Picture, Surface } from './view.ts';

/** Semitones to either side of the register that chord tones are written in. */
const REACH = 8;
/** Shares of the width: where the clef ends, the note just played stands, the bar line is. */
const COLUMNS = { clef: 0.085, played: 0.52, barLine: 0.6 } as const;

function drawStaff(surface: Surface, picture: Picture): void {
  const { context, width, height, inks } = surface;
  const { instrument, now, targets, register, played, goal, label } = picture;
  const { clef } = picture.settings;
  const registerStep = ((register - middleOf(instrument, clef)) * 7) / 12;
  const { lowest, highest } = stepsFor(registerStep, REACH);
  const half = height / (highest - lowest);
  const unit = Math.max(12, Math.min(half * 2.3, width / 22, 40));
  const page: Page = { ...surface, unit };
  const yOf = (step: number) => (highest - step) * half;
  const barX = width * COLUMNS.barLine;

  context.fillStyle = inks.soft;
  for (let line = -4; line <= 4; line += 2) context.fillRect(0, yOf(line) - 0.75, width, 1.5);
  context.fillStyle = inks.ink;
  context.fillRect(barX - 1.5, yOf(4), 3, yOf(-4) - yOf(4));
  const clefWidth = Math.max(width * COLUMNS.clef, half * 7);
  drawClef(context, clef, half * 1.2, yOf, half, inks.ink);

  const written = (tone: TargetTone) =>
    octavesNear(tone.pitchClass, register, REACH).map((midi) => ({
      midi,
      tone,
      note: writeNote(midi, tone.name, instrument, clef),
    }));
  const spread = (tones: readonly TargetTone[], fromX: number, toX: number) => {
    const placed = tones.flatMap(written).sort((a, b) => a.midi - b.midi);
    return placed.map((one, i) => ({ ...one, x: fromX + ((i + 0.5) / placed.length) * (toX - fromX) }));
  };
  const drawLedger = (x: number, { step, accidental }: WrittenNote) => {
    context.fillStyle = inks.soft;
    for (const line of ledgerSteps(step))
      context.fillRect(x - unit * 0.85, yOf(line) - 0.75, unit * 1.7, 1.5);
    if (accidental !== '')
      letter(page, withSigns(accidental), x - unit * 0.62, yOf(step), unit * 0.95, 500, inks.ink, 'right');
  };

  for (const { x, tone, note } of spread(now, clefWidth + unit, width * (COLUMNS.played - 0.04))) {
    drawLedger(x, note);
    drawNow(page, tone, x, yOf(note.step));
    letter(page, label(tone), x, below(yOf, note.step, unit, height), unit * 0.6, 500, inks.soft, 'center');
  }
  const targetNotes = spread(targets, barX + unit, width - unit * 0.5);
  for (const { x, tone, note } of targetNotes) {
    drawLedger(x, note);
    drawTargetStroke(page, x - unit * 0.95, x + unit * 0.95, yOf(note.step));
    drawTarget(page, tone, x, yOf(note.step));
    letter(page, label(tone), x, below(yOf, note.step, unit, height), unit * 0.8, 800, inks.ink, 'center');
  }
  if (played === null) return;
  const note = writeNote(played.midi, played.tone.name, instrument, clef);
  const [x, y] = [width * COLUMNS.played, yOf(note.step)];
  drawLedger(x, note);
  drawNow(page, played.tone, x, y);
  drawPlayed(page, x, y);
  const landing = targetNotes.find(({ midi }) => midi === goal);
  if (landing !== undefined) drawSlur(page, x, y, landing.x, yOf(landing.note.step));
}

/** Labels stand under their note, or over it where the page ends. */
const below = (yOf: (step: number) => number, step: number, unit: number, height: number): number =>
  yOf(step) + unit * 1.15 < height - unit * 0.3 ? yOf(step) + unit * 1.05 : yOf(step) - unit * 1.05;

export const staffView: InstrumentView = {
  open: () => drawStaff,
};
