/** From where landings on chord tones are reached. */
import type { Approach, Landing } from '../../take/schema.ts';
import { isChordTone } from '../assign/roles.ts';
import type { FunctionFound } from '../landings/functions.ts';

/** @param functions of all notes, so that an enclosure is known by the note before its target */
export function countApproaches(
  landings: readonly Landing[],
  functions: readonly (FunctionFound | null)[],
): Approach {
  const counts = { halfBelow: 0, halfAbove: 0, wholeStep: 0, enclosure: 0, leap: 0, sameNote: 0 };
  const asked = landings.filter(({ kind, role, stepSemitones }) => {
    return kind === 'landing' && isChordTone(role) && stepSemitones !== null;
  });
  for (const { note, stepSemitones } of asked) {
    const before = functions[note! - 1];
    const encloses = before?.function === 'enclosure' && before.notes.at(-1) === note;
    counts[encloses ? 'enclosure' : wayOf(stepSemitones!)]++;
  }
  return { landings: asked.length, ...counts };
}

function wayOf(step: number): 'halfBelow' | 'halfAbove' | 'wholeStep' | 'leap' | 'sameNote' {
  if (step === 0) return 'sameNote';
  if (step === 1) return 'halfBelow';
  if (step === -1) return 'halfAbove';
  return Math.abs(step) === 2 ? 'wholeStep' : 'leap';
}
