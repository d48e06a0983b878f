/** Where a note could have gone: the nearest tone of the chord, a half or whole step away. */
import type { Chord, ToneRole } from '../../music/chord.ts';
import { wrapPitchClass } from '../../music/spelling.ts';

export interface Resolution {
  /** Whole MIDI number, near the note that was played. */
  readonly midi: number;
  readonly role: ToneRole;
}

/** Of two tones equally near, the one that tells more of the chord. */
const BEST_FIRST: readonly ToneRole[] = ['third', 'seventh', 'root', 'fifth', 'extension'];

/** Nearest first. */
const STEPS: readonly number[] = [-1, 1, -2, 2];

/**
 * The nearest chord tone a step away.
 * @param roles only tones of these roles, or null for all
 * @returns null where none lies so near
 * @example findResolution(64, parseChord('F7')!, null) // { midi: 63, role: 'seventh' }: E falls to Eb
 */
export function findResolution(
  pitch: number,
  chord: Chord,
  roles: readonly ToneRole[] | null,
): Resolution | null {
  const leads = isLeadingTone(pitch, chord);
  const near = STEPS.flatMap((step) => {
    const tone = chord.tones.find(({ pitchClass }) => pitchClass === wrapPitchClass(pitch + step));
    if (tone === undefined || (roles !== null && !roles.includes(tone.role))) return [];
    if (leads && tone.role !== 'root' && Math.abs(step) === 1) return [];
    return [{ midi: pitch + step, role: tone.role, distance: Math.abs(step) }];
  });
  const [best] = near.sort(
    (a, b) => a.distance - b.distance || BEST_FIRST.indexOf(a.role) - BEST_FIRST.indexOf(b.role),
  );
  return best === undefined ? null : { midi: best.midi, role: best.role };
}

/** The major seventh over a minor chord leads up to its root, and is never sent down to the minor seventh. */
function isLeadingTone(pitch: number, chord: Chord): boolean {
  const up = (semitones: number) => wrapPitchClass(chord.rootPitchClass + semitones);
  const isMinor = chord.tones.some(({ role, pitchClass }) => role === 'third' && pitchClass === up(3));
  return isMinor && wrapPitchClass(pitch) === up(11);
}
