/**
 * What to change first. Each piece names the bars, what was played, and the nearest tone that would have resolved,
 * a half or whole step away, with where it lies. Three pieces at most, the most useful first.
 */
import { chordKeys } from '../../chart/keys-through.ts';
import type { Timeline } from '../../chart/timeline.ts';
import type { Chord } from '../../music/chord.ts';
import type { Instrument } from '../../music/instruments.ts';
import { degreeOver, nameOverChord, noteName } from '../../music/pitch-names.ts';
import { wrapPitchClass } from '../../music/spelling.ts';
import type { Advice, Landing, Thirds } from '../../take/schema.ts';
import type { FunctionFound } from '../landings/functions.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import type { ChordChange } from '../landings/landings.ts';
import { accentOf } from '../landings/note-facts.ts';
import { isThirdOverFour } from './palette.ts';
import { isChordTone } from '../assign/roles.ts';
import { findResolution, type Resolution } from './resolution.ts';
import { whereItLies } from './where.ts';

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
}

const MOST_PIECES = 3;

/**
 * How much each fault is heard, against its notes' weight by length: a landing carries the new harmony, the key's
 * third over the IV clashes as long as it sounds, a phrase end is remembered; a b3 left hanging is half a habit of
 * the style; a chord tone where the third was a step away is no fault at all. The order is a teacher's, not measured.
 */
const WEIGHTS = {
  landing: 3,
  'third over four': 2.5,
  'phrase end': 2,
  'hanging b3': 1,
  'third near': 0.4,
} as const;
type Fault = keyof typeof WEIGHTS;

/** One note at fault, and what it could have been. */
interface Finding {
  readonly fault: Fault;
  readonly note: GradedNote;
  readonly chord: Chord;
  readonly bar: number;
  /** The note that would have moved to the resolution: the note itself, or the one before it. */
  readonly from: GradedNote;
  readonly resolution: Resolution;
}

/** @param instrument what is played, or null where it is not known */
export function findAdvice(ground: AdviceGround, instrument: Instrument | null): readonly Advice[] {
  const taken = new Set<number>();
  const groups = new Map<string, Finding[]>();
  for (const finding of allFindings(ground)) {
    if (taken.has(finding.note.index)) continue;
    taken.add(finding.note.index);
    const { fault, chord, from, resolution } = finding;
    const key = [fault, chord.symbol, from.pitchClass, wrapPitchClass(resolution.midi)].join(' ');
    groups.set(key, [...(groups.get(key) ?? []), finding]);
  }
  return [...groups.values()]
    .map((findings) => ({ findings, use: useOf(findings, ground.notes) }))
    .sort((a, b) => b.use - a.use)
    .slice(0, MOST_PIECES)
    .map(({ findings }) => adviceOf(findings, instrument));
}

const useOf = (findings: readonly Finding[], notes: readonly GradedNote[]): number =>
  findings.reduce((sum, { fault, note }) => sum + WEIGHTS[fault] * accentOf(notes, note.index), 0);

/** In the order of their weight, so that of a note with two faults the heavier one is kept. */
function allFindings(ground: AdviceGround): readonly Finding[] {
  const { notes, functions, changes, landings, phraseEnds, thirds, timeline } = ground;
  const barOf = (note: GradedNote) =>
    wrapTo(Math.floor((note.anticipates ?? note.onsetBeat) / timeline.beatsPerBar + 1e-9), timeline.bars);
  const atFault = (fault: Fault, note: GradedNote, chord: Chord, bar: number): readonly Finding[] => {
    const resolution = findResolution(note.pitch, chord, fault === 'hanging b3' ? ['third'] : null);
    return resolution === null ? [] : [{ fault, note, chord, bar, from: note, resolution }];
  };
  const keyOf = chordKeys(timeline);
  const wentOn = (index: number) => RESOLVING.has(functions[index]?.function ?? 'free');

  const landed = landings.flatMap((landing, i) => {
    if (landing.note === null || isChordTone(landing.role)) return [];
    const moved = landing.leansInto !== null || landing.function === 'suspension';
    if (moved || (landing.kind === 'landing' && wentOn(landing.note))) return [];
    return atFault('landing', notes[landing.note]!, changes[i]!.chord, landing.bar);
  });
  const overFour = notes.flatMap((note, i) =>
    note.chord !== null && isThirdOverFour(note.pitchClass, note.chord, keyOf(note.chord)) && !wentOn(i)
      ? atFault('third over four', note, note.chord, barOf(note))
      : [],
  );
  const ends = phraseEnds.flatMap((note) =>
    note.chord !== null &&
    !isChordTone(note.role) &&
    !thirds.blueNotes.some((blue) => blue.note === note.index)
      ? atFault('phrase end', note, note.chord, barOf(note))
      : [],
  );
  const hanging = thirds.leftHanging.flatMap((index) => {
    const note = notes[index]!;
    return atFault('hanging b3', note, note.chord!, barOf(note));
  });
  const near = landings.flatMap((landing, i): readonly Finding[] => {
    const before = landing.note === null ? undefined : notes[landing.note - 1];
    if (before === undefined || landing.kind !== 'landing' || landing.role === 'third') return [];
    if (!isChordTone(landing.role)) return [];
    const { chord } = changes[i]!;
    const resolution = findResolution(before.pitch, chord, ['third']);
    if (resolution === null) return [];
    return [
      { fault: 'third near', note: notes[landing.note!]!, chord, bar: landing.bar, from: before, resolution },
    ];
  });
  return [...landed, ...overFour, ...ends, ...hanging, ...near];
}

/** Functions that lead on by step into a tone of the chord: nothing is left to resolve. */
const RESOLVING: ReadonlySet<string> = new Set([
  'passing',
  'neighbour',
  'approach',
  'appoggiatura',
  'suspension',
]);

const wrapTo = (value: number, size: number): number => ((value % size) + size) % size;

function adviceOf(findings: readonly Finding[], instrument: Instrument | null): Advice {
  const { fault, note, chord, from, resolution } = findings[0]!;
  const spelled = (midi: number) => {
    const pitchClass = wrapPitchClass(midi);
    return { name: noteName(midi, nameOverChord(pitchClass, chord)), degree: degreeOver(pitchClass, chord) };
  };
  return {
    fault,
    bars: [...new Set(findings.map((finding) => finding.bar))].sort((a, b) => a - b),
    notes: findings.map((finding) => finding.note.index),
    chord: chord.symbol,
    played: spelled(note.pitch),
    from: spelled(from.pitch),
    resolve: {
      ...spelled(resolution.midi),
      semitones: resolution.midi - from.pitch,
      midi: resolution.midi,
    },
    where: instrument === null ? null : whereItLies(resolution.midi, from.pitch, instrument),
  };
}
