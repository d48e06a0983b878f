/**
 * The key of a chart that writes none, from its chords: each of the 24 keys is scored by how long chords stand
 * that belong to it, by the cadences that lead to its tonic, and by where the chart starts and ends. The weights
 * put in numbers what a harmony textbook says about functions (*common practice*); they fit no data.
 */
import type { Chord, Key } from '../music/chord.ts';
import { keyOn } from '../music/keys.ts';
import { wrapPitchClass } from '../music/spelling.ts';
import type { ChartChord } from './chart.ts';

type Family = 'major' | 'dominant' | 'minor' | 'diminished';

/** Worth of a beat of each chord family by semitones above the tonic. What is not listed is foreign: 0. */
const IN_MAJOR: Readonly<Record<number, Partial<Record<Family, number>>>> = {
  0: { major: 3, dominant: 3 },
  2: { minor: 2, dominant: 0.8, diminished: 0.5 },
  4: { minor: 1.5, dominant: 0.5, diminished: 0.5 },
  5: { major: 2, dominant: 2, minor: 0.8 },
  6: { diminished: 0.8 },
  7: { dominant: 2.2, major: 2, minor: 0.5 },
  9: { minor: 2, dominant: 0.8 },
  10: { dominant: 0.6, major: 0.6 },
  11: { diminished: 1 },
};
const IN_MINOR: Readonly<Record<number, Partial<Record<Family, number>>>> = {
  0: { minor: 3 },
  2: { diminished: 2, minor: 0.3 },
  3: { major: 1.5 },
  5: { minor: 2, dominant: 0.8 },
  7: { dominant: 2.2, minor: 1, major: 1.2 },
  8: { major: 1.5, dominant: 1.5 },
  10: { dominant: 1, major: 1 },
  11: { diminished: 1 },
};

/**
 * Worth, in thirds of a beat of the tonic: V led into a tonic that rests (a seventh chord on the tonic does not), a
 * start on the tonic, an end on it or on a V that turns back. The start weighs most: a blues ends on its turnaround.
 */
const CADENCE = 4;
const STARTS_ON_TONIC = 8;
const ENDS_ON_TONIC = 6;
const ENDS_ON_DOMINANT = 4;

/** The key that fits best; C major for a chart without any chord. Of equals, the one whose tonic comes first. */
export function findKey(chords: readonly ChartChord[]): Key {
  const heard = chords.flatMap(({ chord, beats }) =>
    chord ? [{ chord, beats, family: familyOf(chord) }] : [],
  );
  const first = heard[0];
  const last = heard.at(-1);
  if (!first || !last) return keyOn(0, 'major');
  let best: Key | null = null;
  let bestScore = -1;
  const tonics = [...new Set(heard.map(({ chord }) => chord.rootPitchClass))];
  // A tonic that is never played still counts: a ii–V alone has its key.
  for (let pitchClass = 0; pitchClass < 12; pitchClass++)
    if (!tonics.includes(pitchClass)) tonics.push(pitchClass);
  for (const tonic of tonics) {
    for (const mode of ['major', 'minor'] as const) {
      const worth = mode === 'major' ? IN_MAJOR : IN_MINOR;
      const isTonic = ({ chord, family }: Heard) =>
        chord.rootPitchClass === tonic &&
        (mode === 'minor') === (family === 'minor') &&
        family !== 'diminished';
      const isDominant = ({ chord, family }: Heard) =>
        wrapPitchClass(chord.rootPitchClass - tonic) === 7 && family === 'dominant';
      let score = 0;
      heard.forEach((here, index) => {
        const interval = wrapPitchClass(here.chord.rootPitchClass - tonic);
        score += (worth[interval]?.[here.family] ?? 0) * here.beats;
        const next = heard[(index + 1) % heard.length];
        if (next && isDominant(here) && isTonic(next) && next.family !== 'dominant') score += CADENCE;
      });
      if (isTonic(first)) score += STARTS_ON_TONIC;
      if (isTonic(last)) score += ENDS_ON_TONIC;
      else if (isDominant(last)) score += ENDS_ON_DOMINANT;
      if (score > bestScore + 1e-9) {
        bestScore = score;
        const spelled = heard.find(({ chord }) => chord.rootPitchClass === tonic)?.chord.root;
        best = keyOn(tonic, mode, spelled);
      }
    }
  }
  return best ?? keyOn(0, 'major');
}

interface Heard {
  readonly chord: Chord;
  readonly beats: number;
  readonly family: Family;
}

/** What a chord does in a key, by its third, fifth and seventh. */
function familyOf(chord: Chord): Family {
  const has = (degree: string) => chord.tones.some((tone) => tone.degree === degree);
  if (has('b3')) return has('b5') ? 'diminished' : 'minor';
  return has('b7') ? 'dominant' : 'major';
}
