/**
 * The events an aim counts in a take: whether each met the aim, and how luck would have met it.
 * Luck is the player's own notes scattered over the chart, one draw a figure, as for the shares.
 */
import type { Chord } from '../../music/chord.ts';
import type { Landing, Lean } from '../../take/schema.ts';
import { chordKeys } from '../../chart/keys-through.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { Aim } from './aim.ts';
import { isOver } from './aim-chords.ts';
import { allMetChance, guideStepChance } from './aim-chances.ts';
import type { ChanceEvent, LuckEvent } from '../chance/draws.ts';
import { figureAt } from '../chance/figures.ts';
import { landingEvent, noteEvent, type Wanted } from '../chance/tone-events.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { isOnTheWay, type FunctionFound } from '../landings/functions.ts';
import type { ChordChange } from '../landings/candidates.ts';
import type { PaletteOver } from '../assign/scales.ts';
import { namedTones } from '../assign/tone-names.ts';
import { ALL_TONES, holds, shareInside, toneMask } from '../assign/tone-sets.ts';

/** What a take gives an aim to look at. */
export interface AimGround {
  readonly notes: readonly GradedNote[];
  readonly functions: readonly (FunctionFound | null)[];
  readonly changes: readonly ChordChange[];
  /** One a change, in the same order. */
  readonly landings: readonly Landing[];
  readonly phraseEnds: readonly GradedNote[];
  readonly strong: readonly boolean[];
  readonly leans: readonly Lean[];
  readonly flatThirds: readonly GradedNote[];
  readonly timeline: Timeline;
  readonly palette: PaletteOver;
  /** The player's share of each pitch class; see chance.ts. */
  readonly own: readonly number[];
  /** Choruses played; null where nothing goes round. */
  readonly choruses: number | null;
}

/** The tones that an aim names over a chord, as a mask, worked out once a chord. */
export function aimTones({
  timeline,
  palette,
}: AimGround): (names: readonly string[], chord: Chord) => number {
  const keyOf = chordKeys(timeline);
  return rememberMasks((names, chord) =>
    names.reduce((mask, name) => mask | namedTones(name, chord, keyOf(chord), palette(chord)), 0),
  );
}

/** All events of a take that an aim counts. A chord that has none of its tones (a sus chord no third) is not counted. */
export function findAimEvents(aim: Aim, ground: AimGround): readonly LuckEvent[] {
  const { notes, timeline, own } = ground;
  const keyOf = chordKeys(timeline);
  const maskFor = aimTones(ground);
  const counted = (chord: Chord | null): chord is Chord =>
    chord !== null && isOver(aim, chord, keyOf(chord)) && maskFor(aim.tones, chord) !== 0;

  const keepsOff = aim.test === 'is none of';
  const wanted: Wanted = (chord) => {
    const mask = maskFor(aim.tones, chord);
    return keepsOff ? ALL_TONES & ~mask : mask;
  };
  const toneEvents = (asked: readonly GradedNote[]) =>
    asked.flatMap((note) => {
      // A tone on the way to another is no stay on it: who keeps off a tone may pass through it.
      const passes = keepsOff && isOnTheWay(ground.functions[note.index]);
      return counted(note.chord) && !passes ? [noteEvent(note, note.chord, notes).eventFor(wanted)] : [];
    });

  switch (aim.events) {
    case 'notes':
      return toneEvents(notes);
    case 'strong beats':
      return toneEvents(notes.filter((_, i) => ground.strong[i]));
    case 'phrase ends':
      return toneEvents(ground.phraseEnds);
    case 'landings':
      return ground.landings.flatMap((landing, i) => {
        const change = ground.changes[i]!;
        const note = landing.note === null ? undefined : notes[landing.note];
        if (note === undefined || !counted(change.chord)) return [];
        return [landingEvent(change, note, notes).eventFor(wanted)];
      });
    case 'bars':
      return stretches(timeline.beatsPerBar);
    case 'choruses':
      return stretches(timeline.bars * timeline.beatsPerBar);
    case 'flat thirds': {
      const led = leanOn();
      return [...leaningNotes(ground)].flatMap((note) =>
        counted(note.chord) ? [moveEvent(note, note.chord, led.has(note.index))] : [],
      );
    }
    case 'changes':
      return ground.landings.flatMap((landing, i) => {
        const { chord, fromChord } = ground.changes[i]!;
        const { note, stepSemitones, guideTone } = landing;
        if (note === null || stepSemitones === null || fromChord === null || !counted(chord)) return [];
        if (toneMask(fromChord, 'guideTones') === 0) return [];
        const chance = guideStepChance(own, fromChord, chord);
        return [{ figure: figureAt(notes, note), hit: guideTone?.kind === 'resolved', chance }];
      });
  }

  /** Bars or choruses in which something was played over the chords that count. Those with the same notes are one figure. */
  function stretches(beats: number): readonly ChanceEvent[] {
    const groups = new Map<number, GradedNote[]>();
    for (const note of notes) {
      if (!counted(note.chord)) continue;
      const at = Math.floor((note.anticipates ?? note.onsetBeat) / beats + 1e-9);
      const group = groups.get(at);
      if (group === undefined) groups.set(at, [note]);
      else group.push(note);
    }
    return [...groups.values()].map((group) => {
      // "has one of" asks for any of its tones together, "has all of" for each by itself.
      const sets = aim.test === 'has all of' ? aim.tones.map((tone) => [tone]) : [aim.tones];
      const isMet = (names: readonly string[]) =>
        group.some((note) => holds(maskFor(names, note.chord!), note.pitchClass));
      const luck = (names: readonly string[], note: GradedNote) =>
        shareInside(own, maskFor(names, note.chord!));
      return {
        figure: group.map(({ pitchClass }) => pitchClass).join(' '),
        hit: sets.every(isMet),
        chance: allMetChance(sets, group, luck),
      };
    });
  }

  /** The notes that lean on into a tone that the aim asks for. */
  function leanOn(): ReadonlySet<number> {
    const arriving = ground.leans.filter(({ to }) => {
      const { chord, pitchClass } = notes[to]!;
      return chord !== null && holds(maskFor(aim.tones, chord), pitchClass);
    });
    return new Set(arriving.map(({ from }) => from));
  }

  function moveEvent(note: GradedNote, chord: Chord, hit: boolean): ChanceEvent {
    return { figure: figureAt(notes, note.index), hit, chance: shareInside(own, maskFor(aim.tones, chord)) };
  }
}

type MaskFor = (names: readonly string[], chord: Chord) => number;

/** The same few sets of names are asked for over every note: each is worked out once a chord. */
function rememberMasks(maskFor: MaskFor): MaskFor {
  const known = new Map<Chord, Map<string, number>>();
  return (names, chord) => {
    const ofChord = known.get(chord) ?? new Map<string, number>();
    known.set(chord, ofChord);
    const asked = names.join(' ');
    const mask = ofChord.get(asked) ?? maskFor(names, chord);
    ofChord.set(asked, mask);
    return mask;
  };
}

/** Every b3, and every 3 that was bent up from one: both were a b3 to begin with. */
function leaningNotes({ flatThirds, leans, notes }: AimGround): Set<GradedNote> {
  return new Set([...flatThirds, ...leans.map((lean) => notes[lean.from]!)]);
}
