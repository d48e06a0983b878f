/**
 * What to change first. Each piece names the bars, what was played, and the nearest tone that would have resolved,
 * a half or whole step away, with where it lies. Three pieces at most: what the aim in hand asks for, then the most useful.
 */
import type { Instrument } from '../../music/instruments.ts';
import { degreeOver, nameOverChord, noteName } from '../../music/pitch-names.ts';
import { wrapPitchClass } from '../../music/spelling.ts';
import type { Advice } from '../../take/schema.ts';
import type { GradedNote } from '../assign/graded-note.ts';
import { accentOf } from '../landings/note-facts.ts';
import { findFaults, servesAim, type AdviceGround, type Fault, type Finding } from './findings.ts';
import { whereItLies } from './where.ts';

const MOST_PIECES = 3;

/**
 * How much each fault is heard, against its notes' weight by length: a landing carries the new harmony, the key's
 * third over the IV clashes as long as it sounds, a phrase end is remembered; a b3 left hanging is half a habit of
 * the style; a chord tone where the third was a step away is no fault at all. The order is a teacher's, not measured.
 */
const WEIGHTS: Readonly<Record<Fault, number>> = {
  landing: 3,
  'third over four': 2.5,
  'phrase end': 2,
  'hanging b3': 1,
  'third near': 0.4,
};

/** @param instrument what is played, or null where it is not known */
export function findAdvice(ground: AdviceGround, instrument: Instrument | null): readonly Advice[] {
  const taken = new Set<number>();
  const groups = new Map<string, Finding[]>();
  for (const finding of findFaults(ground)) {
    if (taken.has(finding.note.index)) continue;
    taken.add(finding.note.index);
    const { fault, chord, from, resolution, held } = finding;
    const key = [fault, held, chord.symbol, from.pitchClass, wrapPitchClass(resolution.midi)].join(' ');
    const group = groups.get(key);
    if (group === undefined) groups.set(key, [finding]);
    else group.push(finding);
  }
  return [...groups.values()]
    .map((findings) => ({
      findings,
      serves: servesAim(findings[0]!, ground),
      use: useOf(findings, ground.notes),
    }))
    .sort((a, b) => Number(b.serves) - Number(a.serves) || b.use - a.use)
    .filter(isFirstOfItsMove)
    .slice(0, MOST_PIECES)
    .map(({ findings }) => adviceOf(findings, ground, instrument));
}

/** Two faults that ask for the same move over the same chord are one piece: the more useful one stands. */
function isFirstOfItsMove(
  { findings }: { readonly findings: readonly Finding[] },
  place: number,
  all: readonly { readonly findings: readonly Finding[] }[],
): boolean {
  return all.findIndex((other) => moveOf(other.findings[0]!) === moveOf(findings[0]!)) === place;
}

const moveOf = ({ chord, from, resolution }: Finding): string =>
  [chord.symbol, from.pitchClass, wrapPitchClass(resolution.midi)].join(' ');

const useOf = (findings: readonly Finding[], notes: readonly GradedNote[]): number =>
  findings.reduce((sum, { fault, note }) => sum + WEIGHTS[fault] * accentOf(notes, note.index), 0);

function adviceOf(
  findings: readonly Finding[],
  { timeline }: AdviceGround,
  instrument: Instrument | null,
): Advice {
  const { fault, held, note, chord, from, resolution } = findings[0]!;
  const spelled = (midi: number) => {
    const pitchClass = wrapPitchClass(midi);
    return { name: noteName(midi, nameOverChord(pitchClass, chord)), degree: degreeOver(pitchClass, chord) };
  };
  const bars = findings.map(({ beat }) => {
    const bar = Math.floor(beat / timeline.beatsPerBar + 1e-9);
    return ((bar % timeline.bars) + timeline.bars) % timeline.bars;
  });
  return {
    fault,
    held,
    bars: [...new Set(bars)].sort((a, b) => a - b),
    notes: findings.map((finding) => finding.note.index),
    chord: chord.symbol,
    played: spelled(note.pitch),
    from: spelled(from.pitch),
    resolve: {
      ...spelled(resolution.midi),
      semitones: resolution.midi - from.pitch,
      midi: resolution.midi,
    },
    where: instrument === null ? null : whereItLies(resolution.midi, from.pitch, chord, instrument),
  };
}
