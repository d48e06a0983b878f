/**
 * The events an aim counts in a take: whether each met the aim, and how likely luck was to meet it.
 * Luck is the player's own notes scattered over the chart, as for the shares.
 */
import type { Chord, Key } from '../../music/chord.ts';
import { wrapPitchClass } from '../../music/spelling.ts';
import type { Landing, Lean } from '../../take/schema.ts';
import { chordKeys } from '../../chart/keys-through.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { Aim } from './aim.ts';
import { pitchClassShares } from '../chance/chance.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import type { ChordChange } from '../landings/landings.ts';
import type { PaletteOver } from '../assign/scales.ts';
import { namedTones } from '../assign/tone-names.ts';
import type { LuckEvent } from '../chance/shares.ts';
import { landingLuck, noteLuck, type Wanted } from '../chance/luck.ts';
import { ALL_TONES, holds, shareInside, toneMask } from '../assign/tone-sets.ts';

/** What a take gives an aim to look at. */
export interface AimGround {
  readonly notes: readonly GradedNote[];
  readonly changes: readonly ChordChange[];
  /** One a change, in the same order. */
  readonly landings: readonly Landing[];
  readonly phraseEnds: readonly GradedNote[];
  readonly strong: readonly boolean[];
  readonly leans: readonly Lean[];
  readonly flatThirds: readonly GradedNote[];
  readonly timeline: Timeline;
  readonly palette: PaletteOver;
}

/** The widest move that still is a step. */
const STEP_SEMITONES = 2;

/** Semitones above the tonic by the degree's numeral. */
const NUMERALS: Readonly<Record<string, number>> = { I: 0, II: 2, III: 4, IV: 5, V: 7, VI: 9, VII: 11 };

/** Whether a chord counts for an aim: by the degree of its root in the key, or always. */
export function isOver(aim: Pick<Aim, 'over'>, chord: Chord, key: Key): boolean {
  return (
    aim.over === undefined ||
    aim.over.some((degree) => {
      const numeral = degree.replace(/[b#]/, '');
      const altered = degree.startsWith('b') ? -1 : degree.startsWith('#') ? 1 : 0;
      return wrapPitchClass(key.tonicPitchClass + NUMERALS[numeral]! + altered) === chord.rootPitchClass;
    })
  );
}

/** All events of a take that an aim counts. */
export function findAimEvents(aim: Aim, ground: AimGround): readonly LuckEvent[] {
  const { notes, timeline, palette } = ground;
  const own = pitchClassShares(notes);
  const keyOf = chordKeys(timeline);
  const maskFor = rememberMasks((names, chord) =>
    names.reduce((mask, name) => mask | namedTones(name, chord, keyOf(chord), palette(chord)), 0),
  );
  const counted = (chord: Chord | null): chord is Chord => chord !== null && isOver(aim, chord, keyOf(chord));

  const wanted: Wanted = (chord) => {
    const mask = maskFor(aim.tones, chord);
    return aim.test === 'is none of' ? ALL_TONES & ~mask : mask;
  };
  const toneEvent = (pitchClass: number, chord: Chord, fairChance: number): LuckEvent => ({
    hit: holds(wanted(chord), pitchClass),
    chance: shareInside(own, wanted(chord)),
    fairChance,
  });
  const toneEvents = (asked: readonly GradedNote[]) =>
    asked.flatMap((note) =>
      counted(note.chord) ? [toneEvent(note.pitchClass, note.chord, noteLuck(note, wanted, own))] : [],
    );

  switch (aim.events) {
    case 'notes':
      return toneEvents(notes);
    case 'strong beats':
      return toneEvents(notes.filter((_, i) => ground.strong[i]));
    case 'phrase ends':
      return toneEvents(ground.phraseEnds);
    case 'landings':
      return ground.landings.flatMap((landing, i) => {
        const { chord } = ground.changes[i]!;
        const note = landing.note === null ? undefined : notes[landing.note];
        if (note === undefined || !counted(chord)) return [];
        return [toneEvent(note.pitchClass, chord, landingLuck(ground.changes[i]!, notes, wanted, own))];
      });
    case 'bars':
      return gathered(timeline.beatsPerBar);
    case 'choruses':
      return gathered(timeline.bars * timeline.beatsPerBar);
    case 'flat thirds':
      return [...leaningNotes(ground)].flatMap((note) =>
        counted(note.chord) ? [moveEvent(note, note.chord)] : [],
      );
    case 'changes':
      return ground.landings.flatMap((landing, i) => {
        const { chord, fromChord } = ground.changes[i]!;
        if (landing.stepSemitones === null || fromChord === null || !counted(chord)) return [];
        return [plainEvent(landing.guideTone?.kind === 'resolved', guideStepChance(own, fromChord, chord))];
      });
  }

  /** Bars or choruses in which something was played over the chords that count. */
  function gathered(beats: number): readonly LuckEvent[] {
    const groups = new Map<number, GradedNote[]>();
    for (const note of notes) {
      if (!counted(note.chord)) continue;
      const at = Math.floor((note.anticipates ?? note.onsetBeat) / beats + 1e-9);
      groups.set(at, [...(groups.get(at) ?? []), note]);
    }
    return [...groups.values()].map((group) => {
      // "has one of" asks for any of its tones together, "has all of" for each by itself.
      const sets = aim.test === 'has all of' ? aim.tones.map((tone) => [tone]) : [aim.tones];
      const hit = sets.every((names) =>
        group.some((note) => holds(maskFor(names, note.chord!), note.pitchClass)),
      );
      const luck = (names: readonly string[], note: GradedNote) =>
        shareInside(own, maskFor(names, note.chord!));
      return plainEvent(hit, allMetChance(sets, group, luck));
    });
  }

  function moveEvent(note: GradedNote, chord: Chord): LuckEvent {
    const near = own.map((share, pitchClass) =>
      circleDistance(pitchClass, note.pitchClass) <= STEP_SEMITONES ? share : 0,
    );
    const hit = ground.leans.some(({ from, to }) => {
      const arrived = notes[to]!;
      return (
        from === note.index &&
        arrived.chord !== null &&
        holds(maskFor(aim.tones, arrived.chord), arrived.pitchClass)
      );
    });
    return plainEvent(hit, shareInside(near, maskFor(aim.tones, chord)));
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

/** An event for which the anticipation makes no difference worth reckoning. */
const plainEvent = (hit: boolean, chance: number): LuckEvent => ({ hit, chance, fairChance: chance });

/** Every b3, and every 3 that was bent up from one: both were a b3 to begin with. */
function leaningNotes({ flatThirds, leans, notes }: AimGround): Set<GradedNote> {
  return new Set([...flatThirds, ...leans.map((lean) => notes[lean.from]!)]);
}

/**
 * Chance that every wanted set of tones is met at least once among notes drawn one by one (inclusion and exclusion
 * over the sets that are missed).
 */
function allMetChance(
  wanted: readonly (readonly string[])[],
  group: readonly GradedNote[],
  luck: (names: readonly string[], note: GradedNote) => number,
): number {
  let chance = 0;
  for (let missed = 0; missed < 1 << wanted.length; missed++) {
    const chosen = wanted.filter((_, i) => ((missed >> i) & 1) === 1);
    const allMissed = group.reduce((product, note) => product * (1 - luck(chosen.flat(), note)), 1);
    chance += (chosen.length % 2 === 0 ? 1 : -1) * allMissed;
  }
  return Math.min(1, Math.max(0, chance));
}

/** Chance that two notes drawn one by one are a guide tone of the old chord and one of the new a step away. */
function guideStepChance(own: readonly number[], from: Chord, to: Chord): number {
  const old = toneMask(from, 'guideTones');
  const next = toneMask(to, 'guideTones');
  let chance = 0;
  for (let a = 0; a < 12; a++) {
    if (!holds(old, a)) continue;
    for (let b = 0; b < 12; b++) {
      const step = circleDistance(a, b);
      if (holds(next, b) && step >= 1 && step <= STEP_SEMITONES) chance += own[a]! * own[b]!;
    }
  }
  return Math.min(1, chance);
}

const circleDistance = (a: number, b: number): number =>
  Math.min(wrapPitchClass(a - b), wrapPitchClass(b - a));
