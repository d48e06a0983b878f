/**
 * What could be better in a take, note by note; the advice is chosen from it. What the ladder of aims asks for (sixth, ninth,
 * thirteenth, the eleventh over a minor chord) is no fault, nor is a blue third, nor a tone that its own next note
 * resolved.
 */
import { chordKeys } from '../../chart/keys-through.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { Chord } from '../../music/chord.ts';
import type { Advice, AimResult, Landing, Thirds } from '../../take/schema.ts';
import { isOver } from '../aims/aim-chords.ts';
import type { Aim } from '../aims/aim.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { isChordTone } from '../assign/roles.ts';
import { isOnTheWay, type FunctionFound } from '../landings/functions.ts';
import type { ChordChange } from '../landings/candidates.ts';
import { isColour } from './colours.ts';
import { isThirdOverFour } from './palette.ts';
import { findResolution, type Resolution } from './resolution.ts';

/** What the rules before have found. */
export interface AdviceGround {
  readonly notes: readonly GradedNote[];
  readonly functions: readonly (FunctionFound | null)[];
  readonly changes: readonly ChordChange[];
  /** One a change, in the same order. */
  readonly landings: readonly Landing[];
  readonly phraseEnds: readonly GradedNote[];
  readonly thirds: Thirds;
  readonly timeline: Timeline;
  /** The aims that the player tried for, and how the take did by all of them. */
  readonly tried: readonly Aim[];
  readonly results: readonly AimResult[];
}

export type Fault = Advice['fault'];

/** One note at fault, and what it could have been. */
export interface Finding {
  readonly fault: Fault;
  /** Whether the note was held over the change rather than struck for it. */
  readonly held: boolean;
  readonly note: GradedNote;
  readonly chord: Chord;
  /** Where it is heard: the change that it lands on, or its own beat, from the first downbeat. */
  readonly beat: number;
  /** The note that would have moved to the resolution: the note itself, or the one before it. */
  readonly from: GradedNote;
  readonly resolution: Resolution;
}

/** In the order of their weight, so that a note at fault twice is told by the heavier one. */
export function findFaults(ground: AdviceGround): readonly Finding[] {
  return [
    ...faultyLandings(ground),
    ...thirdsOverFour(ground),
    ...faultyEnds(ground),
    ...hangingThirds(ground),
    ...thirdsNear(ground),
  ];
}

function finding(
  fault: Fault,
  note: GradedNote,
  chord: Chord,
  beat: number,
  only: 'third' | null = null,
): readonly Finding[] {
  const resolution = findResolution(note.pitch, chord, only === null ? null : [only]);
  return resolution === null ? [] : [{ fault, held: false, note, chord, beat, from: note, resolution }];
}

/** The beat at which a note is heard: the change that it is played on or runs ahead to, else its own. */
const beatOf = (note: GradedNote): number => note.anticipates ?? note.onsetBeat;

/** Whether a note is a blue third. */
function blueReader({ thirds }: AdviceGround): (note: GradedNote) => boolean {
  const blue = new Set(thirds.blueNotes.map(({ note }) => note));
  return ({ index }) => blue.has(index);
}

/** Functions that lead on by step: nothing is left to resolve. */
const LEADING_ON: ReadonlySet<string> = new Set(['appoggiatura', 'suspension', 'anticipation']);

const leadsOn = ({ functions }: AdviceGround, index: number): boolean => {
  const found = functions[index];
  return isOnTheWay(found) || (found !== null && found !== undefined && LEADING_ON.has(found.function));
};

/** Colours are corrected only where the aim in hand is about chord tones or thirds at that very place. */
function isAllowed(ground: AdviceGround, note: GradedNote, chord: Chord, events: Aim['events']): boolean {
  if (!isColour(note.pitchClass, chord)) return false;
  const keyOf = chordKeys(ground.timeline);
  const asks = ground.tried.some(
    (aim) =>
      aim.events === events &&
      aim.test === 'is one of' &&
      aim.tones.some((tone) => CHORD_TONE_NAMES.has(tone)) &&
      isOver(aim, chord, keyOf(chord)),
  );
  return !asks;
}

const CHORD_TONE_NAMES: ReadonlySet<string> = new Set([
  'third',
  'guide tone',
  'chord tone',
  'root',
  'fifth',
  'seventh',
]);

function faultyLandings(ground: AdviceGround): readonly Finding[] {
  const { landings, changes, notes } = ground;
  const isBlue = blueReader(ground);
  return landings.flatMap((landing, i) => {
    if (landing.note === null || isChordTone(landing.role)) return [];
    const note = notes[landing.note]!;
    const { chord, span } = changes[i]!;
    const movedOn =
      landing.leansInto !== null ||
      landing.putRight !== null ||
      landing.function === 'suspension' ||
      landing.function === 'passing' ||
      (landing.kind === 'landing' && leadsOn(ground, landing.note));
    if (movedOn || isBlue(note) || isAllowed(ground, note, chord, 'landings')) return [];
    const held = landing.kind === 'held';
    return finding('landing', note, chord, span.startBeat).map((found) => ({ ...found, held }));
  });
}

function thirdsOverFour(ground: AdviceGround): readonly Finding[] {
  const keyOf = chordKeys(ground.timeline);
  return ground.notes.flatMap((note) =>
    note.chord !== null &&
    isThirdOverFour(note.pitchClass, note.chord, keyOf(note.chord)) &&
    !leadsOn(ground, note.index)
      ? finding('third over four', note, note.chord, beatOf(note))
      : [],
  );
}

function faultyEnds(ground: AdviceGround): readonly Finding[] {
  const isBlue = blueReader(ground);
  return ground.phraseEnds.flatMap((note) => {
    if (note.chord === null || isChordTone(note.role)) return [];
    if (isBlue(note) || leadsOn(ground, note.index)) return [];
    if (isAllowed(ground, note, note.chord, 'phrase ends')) return [];
    return finding('phrase end', note, note.chord, beatOf(note));
  });
}

const hangingThirds = ({ thirds, notes }: AdviceGround): readonly Finding[] =>
  thirds.leftHanging.flatMap((index) => {
    const note = notes[index]!;
    return finding('hanging b3', note, note.chord!, beatOf(note), 'third');
  });

/** Landings on another chord tone where the third was a step away. */
const thirdsNear = ({ landings, changes, notes }: AdviceGround): readonly Finding[] =>
  landings.flatMap((landing, i): readonly Finding[] => {
    const before = landing.note === null ? undefined : notes[landing.note - 1];
    if (before === undefined || landing.kind !== 'landing' || landing.role === 'third') return [];
    if (!isChordTone(landing.role)) return [];
    const { chord, span } = changes[i]!;
    const resolution = findResolution(before.pitch, chord, ['third']);
    if (resolution === null) return [];
    const note = notes[landing.note!]!;
    return [
      { fault: 'third near', held: false, note, chord, beat: span.startBeat, from: before, resolution },
    ];
  });

/** Whether a finding is about what the aim in hand asks for. */
export function servesAim({ fault, chord }: Finding, { tried, results, timeline }: AdviceGround): boolean {
  const keyOf = chordKeys(timeline);
  return tried.some((aim) => {
    const isOpen = results.some(({ id, verdict }) => id === aim.id && verdict !== 'reached');
    return isOpen && FAULTS_OF_EVENTS[aim.events].includes(fault) && isOver(aim, chord, keyOf(chord));
  });
}

const FAULTS_OF_EVENTS: Readonly<Record<Aim['events'], readonly Fault[]>> = {
  landings: ['landing', 'third near'],
  changes: ['landing', 'third near'],
  'phrase ends': ['phrase end'],
  notes: ['third over four'],
  'flat thirds': ['hanging b3'],
  'strong beats': ['landing'],
  bars: ['landing', 'third near', 'hanging b3'],
  choruses: ['landing', 'third near', 'hanging b3'],
};
