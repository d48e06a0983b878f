/**
 * A played line as measures of written notes. Each beat gets the division that explains its onsets best, swung eighths
 * are written straight, releases end on plain places, and lengths are split so that the beats can be seen.
 */
import type { Timeline } from '../chart/timeline.ts';
import { COMPOUND_GRIDS, simpleGrids, type Grid } from './beat-grids.ts';
import { barLevels, splitStretch, writtenMeter, type BarLevels } from './metric-levels.ts';
import { placeOnsets, type Onset, type Placed } from './place-onsets.ts';
import { habitsOf, type Habits } from './player-habits.ts';
import { TICKS_PER_QUARTER, type Measure, type Written, type WrittenLine } from './score.ts';
import { groupOf, splitInGroup, type Group } from './tuplets.ts';
import { writtenEnd } from './written-ends.ts';

/** A note of the line, in order of onset; beats from the first downbeat, as the report has them. */
export interface LineNote {
  readonly beat: number;
  readonly endBeat: number;
}

export type Time = Pick<Timeline, 'beatMap' | 'beatsPerBar' | 'divisions' | 'swing' | 'barSwings' | 'bars'>;

/**
 * Writes a line down. Measures go from the first downbeat, or the bar of a note before it, to the last note's.
 * The same notes give the same measures.
 * @throws RangeError where onsets are out of order or not finite
 * @example quantise([{ beat: 0, endBeat: 0.6 }, { beat: 0.66, endBeat: 0.9 }], swinging) // two eighths
 */
export function quantise(notes: readonly LineNote[], time: Time): WrittenLine {
  const beatTicks = time.divisions === 3 ? (TICKS_PER_QUARTER * 3) / 2 : TICKS_PER_QUARTER;
  const bar = barLevels(time.beatsPerBar, beatTicks);
  const meter = writtenMeter(time.beatsPerBar, time.divisions);
  if (!notes.every(({ beat }, i) => Number.isFinite(beat) && beat >= (notes[i - 1]?.beat ?? -Infinity)))
    throw new RangeError('notes of a line are in order of their finite onsets');
  if (notes.length === 0) return { meter, beatTicks, measures: [], onsetTicks: [] };
  const { placed, habits } = placeLine(notes, time);
  const onsetTicks = placed.map(
    ({ beat, grid, part }) => beat * beatTicks + (part * grid.beats * beatTicks) / grid.parts,
  );
  const groups = groupsOf(placed, beatTicks);
  const groupAt = (ticks: number): Group | null => groups.get(Math.floor(ticks / beatTicks)) ?? null;
  const stretches: Stretch[] = [];
  let graces: number[] = [];
  placed.forEach((place, note) => {
    if (place.grace) return void graces.push(note);
    const fromTicks = onsetTicks[note]!;
    let following = note + 1;
    while (placed[following]?.grace) following++;
    const end = writtenEnd(
      {
        fromTicks,
        releaseTicks: writtenRelease(notes[note]!, place, habits, time) * beatTicks,
        nextTicks: onsetTicks[following] ?? Infinity,
        partTicks: (place.grid.beats * beatTicks) / place.grid.parts,
      },
      bar,
      groupAt,
    );
    stretches.push({ fromTicks, toTicks: end, note, graces });
    graces = [];
  });
  return { meter, beatTicks, measures: measuresOf(stretches, bar, groupAt), onsetTicks };
}

interface Stretch {
  readonly fromTicks: number;
  readonly toTicks: number;
  /** null for silence. */
  readonly note: number | null;
  readonly graces: readonly number[];
}

/** Placed twice: once to learn the player's habits, once with them. */
function placeLine(notes: readonly LineNote[], time: Time): { placed: readonly Placed[]; habits: Habits } {
  const { beatMap, beatsPerBar, bars, divisions, swing, barSwings } = time;
  const beatSecondsAt = (beat: number) => beatMap.secondsAt(beat + 1) - beatMap.secondsAt(beat);
  const swingAt = (beat: number) => {
    const inForm = ((Math.floor(beat / beatsPerBar) % bars) + bars) % bars;
    return barSwings?.[inForm] ?? swing;
  };
  const place = ({ lateSeconds, swing: played }: Habits, drifts: boolean) => {
    const known = new Map<number, readonly Grid[]>();
    const gridsAt = (beat: number) => {
      if (divisions === 3) return COMPOUND_GRIDS;
      // A section with a feel of its own swings by that; elsewhere the player's own swing holds.
      const share = swingAt(beat) === swing ? played : swingAt(beat);
      const grids = known.get(share) ?? simpleGrids(share);
      known.set(share, grids);
      return grids;
    };
    const onsets = notes.map(({ beat }, i): Onset => {
      const next = notes[i + 1];
      return {
        beat: beat - lateSeconds / beatSecondsAt(beat),
        toNextSeconds: next ? beatMap.secondsAt(next.beat) - beatMap.secondsAt(beat) : Infinity,
      };
    });
    return placeOnsets(onsets, { beatsPerBar, gridsAt, beatSecondsAt, drifts });
  };
  const first = place({ lateSeconds: 0, swing }, false);
  const habits = habitsOf(
    notes.map(({ beat }) => beat),
    first,
    beatSecondsAt,
    swing,
  );
  return { placed: place(habits, true), habits };
}

/** The release in beats as it would be written: late and swing of the player taken out. */
function writtenRelease(note: LineNote, place: Placed, habits: Habits, time: Time): number {
  const { swing, lateSeconds } = habits;
  const { divisions, beatMap } = time;
  const endBeat = beatMap.beatAt(beatMap.secondsAt(note.endBeat) - lateSeconds);
  if (divisions === 3 || place.grid.kind === 'cross') return endBeat;
  const beat = Math.floor(endBeat);
  const share = endBeat - beat;
  return beat + (share < swing ? share / swing / 2 : 0.5 + (share - swing) / (1 - swing) / 2);
}

/** The groups by the beats that they cover. */
function groupsOf(placed: readonly Placed[], beatTicks: number): ReadonlyMap<number, Group> {
  const groups = new Map<number, Group>();
  for (const { beat, grid } of placed) {
    const group = groupOf(grid, beat, beatTicks);
    if (group === null) continue;
    for (let covered = 0; covered < grid.beats; covered++) groups.set(beat + covered, group);
  }
  return groups;
}

/** Notes and the silence between them, cut into measures. */
function measuresOf(
  notes: readonly Stretch[],
  bar: BarLevels,
  groupAt: (ticks: number) => Group | null,
): readonly Measure[] {
  const firstBar = Math.min(0, Math.floor(notes[0]!.fromTicks / bar.ticks));
  const lastBar = Math.ceil(notes.at(-1)!.toTicks / bar.ticks) - 1;
  const silence = (fromTicks: number, toTicks: number): Stretch[] =>
    toTicks > fromTicks ? [{ fromTicks, toTicks, note: null, graces: [] }] : [];
  const whole = [
    ...silence(firstBar * bar.ticks, notes[0]!.fromTicks),
    ...notes.flatMap((note, i) => [
      note,
      ...silence(note.toTicks, notes[i + 1]?.fromTicks ?? (lastBar + 1) * bar.ticks),
    ]),
  ];
  const signs = new Map<number, Written[]>();
  for (const stretch of whole) {
    for (const { bar: number, sign } of signsOf(stretch, bar, groupAt)) {
      const measure = signs.get(number) ?? [];
      signs.set(number, measure);
      measure.push(sign);
    }
  }
  return Array.from({ length: lastBar - firstBar + 1 }, (_, i) => ({
    bar: firstBar + i,
    ticks: bar.ticks,
    signs: signs.get(firstBar + i) ?? [],
  }));
}

/** One stretch as signs: cut at bar lines and groups, then as values allow. */
function signsOf(
  { fromTicks, toTicks, note, graces }: Stretch,
  bar: BarLevels,
  groupAt: (ticks: number) => Group | null,
): readonly { readonly bar: number; readonly sign: Written }[] {
  const found: { bar: number; sign: Written }[] = [];
  let at = fromTicks;
  while (at < toTicks) {
    const number = Math.floor(at / bar.ticks);
    const barStart = number * bar.ticks;
    const group = groupAt(at);
    const end = Math.min(
      toTicks,
      group?.toTicks ?? nextCut(at, barStart + bar.ticks, bar.beatTicks, groupAt),
    );
    const silent = note === null && at === barStart && end === barStart + bar.ticks;
    const pieces = silent
      ? [{ at: 0, ticks: bar.ticks, value: WHOLE }]
      : group === null
        ? splitStretch(at - barStart, end - barStart, bar, note === null ? 'rest' : 'note')
        : splitInGroup(at, end, group).map((piece) => ({ ...piece, at: piece.at - barStart }));
    for (const piece of pieces) {
      const from = barStart + piece.at;
      const to = from + piece.ticks;
      found.push({
        bar: number,
        sign: {
          atTicks: piece.at,
          ticks: piece.ticks,
          ...piece.value,
          tuplet: group && {
            actual: group.actual,
            normal: group.normal,
            part: group.part,
            starts: from === group.fromTicks,
            stops: to === group.toTicks,
          },
          note,
          tiedFrom: note !== null && from > fromTicks,
          tiedOn: note !== null && to < toTicks,
          graces: from === fromTicks ? graces : [],
        },
      });
    }
    at = end;
  }
  return found;
}

/** The next bar line, or the group before it. */
function nextCut(
  at: number,
  barEnd: number,
  beatTicks: number,
  groupAt: (ticks: number) => Group | null,
): number {
  for (let beat = Math.ceil((at + 1) / beatTicks) * beatTicks; beat < barEnd; beat += beatTicks)
    if (groupAt(beat) !== null) return beat;
  return barEnd;
}

/** A whole rest stands for a measure of any meter. */
const WHOLE = { value: 'whole', dotted: false } as const;

/** Whether a measure is silent from its start to its end. */
export const isSilent = ({ signs }: Measure): boolean => signs.length === 1 && signs[0]?.note === null;
