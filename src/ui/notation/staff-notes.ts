/** The signs of one measure as VexFlow draws them: notes, rests, grace notes, beams and groups. */
import {
  Accidental,
  Beam,
  Dot,
  GraceNote,
  GraceNoteGroup,
  StaveNote,
  Tuplet,
  Voice,
  type Stave,
  type StemmableNote,
} from 'vexflow/core';
import { isSilent } from '../../core/notation/quantise.ts';
import { TICKS_PER_QUARTER, type Measure, type ValueName, type Written } from '../../core/notation/score.ts';
import type { SpelledPitch, WrittenPage } from '../../core/notation/written-page.ts';

/** VexFlow's names of note values. */
const DURATIONS: Readonly<Record<ValueName, string>> = {
  whole: 'w',
  half: 'h',
  quarter: 'q',
  eighth: '8',
  '16th': '16',
  '32nd': '32',
  '64th': '64',
};

export interface StaffMeasure {
  readonly voice: Voice;
  /** One for each sign of the measure. */
  readonly notes: readonly StaveNote[];
  readonly beams: readonly Beam[];
  readonly tuplets: readonly Tuplet[];
}

/** A measure that stands on its staff. */
export interface DrawnMeasure {
  readonly stave: Stave;
  readonly content: StaffMeasure;
}

/** Middle of a note's head. */
export const headMiddle = (note: StaveNote): number =>
  (note.getNoteHeadBeginX() + note.getNoteHeadEndX()) / 2;

/** Half a head, and the stem of a grace note with its flag, in tenths of a staff space. */
const HALF_HEAD = 8;
const GRACE_STEM = 32;

/** How high and how low a drawn note reaches, with its stem and its grace notes. */
export function extentOf(note: StaveNote): { readonly top: number; readonly bottom: number } {
  const heads = note.getYs();
  const stem = note.isRest() || !note.hasStem() ? [] : Object.values(note.getStemExtents());
  const graces = note
    .getModifiersByType(GraceNoteGroup.CATEGORY)
    .flatMap((group) => (group as GraceNoteGroup).getGraceNotes())
    .flatMap((grace) => grace.getYs());
  return {
    top: Math.min(...heads.map((y) => y - HALF_HEAD), ...stem, ...graces.map((y) => y - GRACE_STEM)),
    bottom: Math.max(...[...heads, ...graces].map((y) => y + HALF_HEAD), ...stem),
  };
}

const keyOf = ({ letter, alter, octave }: SpelledPitch): string =>
  `${letter.toLowerCase()}${(alter < 0 ? 'b' : '#').repeat(Math.abs(alter))}/${octave}`;

/** @param signature VexFlow's name of the key: its accidentals are not drawn again */
export function staffMeasure(page: WrittenPage, measure: Measure, signature: string): StaffMeasure {
  const { signs } = measure;
  const silent = isSilent(measure);
  const notes = signs.map((sign) => staffNote(page, sign, silent));
  const tuplets = groupsIn(signs).map(
    ({ from, to, sign }) =>
      new Tuplet(notes.slice(from, to), {
        numNotes: sign.tuplet!.actual,
        notesOccupied: sign.tuplet!.normal,
        bracketed: true,
        ratioed: false,
      }),
  );
  const { beats, beatType } = page.line.meter;
  const voice = new Voice({ numBeats: beats, beatValue: beatType }).setStrict(false);
  voice.addTickables([...notes]);
  Accidental.applyAccidentals([voice], signature);
  const beams = beamsIn(page, signs).map(
    (members) => new Beam(members.map((i) => notes[i]!) as StemmableNote[], true),
  );
  for (const note of notes) note.setStyle({ fillStyle: INK, strokeStyle: INK });
  for (const note of notes) note.setLedgerLineStyle({ strokeStyle: INK, lineWidth: 1.4 });
  return { voice, notes, beams, tuplets };
}

const INK = 'currentColor';

function staffNote(page: WrittenPage, sign: Written, silent: boolean): StaveNote {
  const { clef } = page;
  const duration = DURATIONS[sign.value];
  if (sign.note === null) {
    const middle = clef === 'treble' ? 'b/4' : 'd/3';
    const rest = new StaveNote({
      keys: [silent ? (clef === 'treble' ? 'd/5' : 'f/3') : middle],
      duration: `${silent ? 'w' : duration}r`,
      clef,
      alignCenter: silent,
    });
    if (sign.dotted && !silent) Dot.buildAndAttach([rest], { all: true });
    return rest;
  }
  const keys = page.notes[sign.note]!.pitches.map(keyOf).sort(byHeight);
  const note = new StaveNote({ keys, duration, clef, autoStem: true, dots: sign.dotted ? 1 : 0 });
  if (sign.dotted) Dot.buildAndAttach([note], { all: true });
  if (sign.graces.length > 0) {
    const small = sign.graces.map(
      (grace) =>
        new GraceNote({
          keys: page.notes[grace]!.pitches.map(keyOf).sort(byHeight),
          duration: '8',
          clef,
          slash: true,
        }),
    );
    const group = new GraceNoteGroup(small, true);
    note.addModifier(small.length > 1 ? group.beamNotes() : group, 0);
  }
  return note;
}

/** VexFlow takes the heads of a chord from below. */
function byHeight(a: string, b: string): number {
  const height = (key: string) => Number(key.split('/')[1]) * 7 + 'cdefgab'.indexOf(key.charAt(0));
  return height(a) - height(b);
}

function groupsIn(signs: readonly Written[]): readonly { from: number; to: number; sign: Written }[] {
  const found: { from: number; to: number; sign: Written }[] = [];
  signs.forEach((sign, from) => {
    if (!sign.tuplet?.starts) return;
    const stop = signs.findIndex((other, i) => i >= from && other.tuplet?.stops);
    found.push({ from, to: stop + 1, sign });
  });
  return found;
}

const HAS_FLAG: ReadonlySet<ValueName> = new Set(['eighth', '16th', '32nd', '64th']);

/**
 * Which signs hang under one beam: those of a beat; in 4/4 four plain eighths of half a bar, too (common practice).
 * Places of signs, two or more to a beam.
 */
export function beamsIn(
  { line }: Pick<WrittenPage, 'line'>,
  signs: readonly Written[],
): readonly (readonly number[])[] {
  const { beatTicks, meter } = line;
  const half = meter.beats === 4 && meter.beatType === 4 ? 2 * TICKS_PER_QUARTER : beatTicks;
  const eighths = (at: number) => {
    const inside = signs.filter(({ atTicks }) => Math.floor(atTicks / half) === Math.floor(at / half));
    return inside.every(({ value, note, dotted }) => value === 'eighth' && note !== null && !dotted);
  };
  const spanOf = ({ atTicks }: Written) =>
    eighths(atTicks) ? `h${Math.floor(atTicks / half)}` : `b${Math.floor(atTicks / beatTicks)}`;
  const beams: number[][] = [];
  let span = '';
  signs.forEach((sign, i) => {
    const joins = sign.note !== null && HAS_FLAG.has(sign.value);
    const own = joins ? spanOf(sign) : '';
    if (joins && own === span) beams.at(-1)!.push(i);
    else if (joins) beams.push([i]);
    span = own;
  });
  return beams.filter(({ length }) => length > 1);
}
