import type { AttackSpectra, PitchEvidence } from '../frames/attack-spectra.ts';
import { PLATEAU_STEP } from '../tuning/notes.ts';
import * as S from '../tuning/strokes.ts';
import fitted from '../weights/stroke-pitch.json' with { type: 'json' };

/** What the path hears after an attack. */
export interface PathPitch {
  /** Fractional MIDI number, NaN where it hears no pitch. */
  readonly midi: number;
  /** Highest clarity of its frames, 0 to 1. */
  readonly clarity: number;
}

/** The pitch that a stroke brought. */
export interface StrokePitch {
  /** Fractional MIDI number. */
  readonly midi: number;
  /** Autocorrelation of what the attack added at its period, 0 to 1. */
  readonly added: number;
  /** Part of the power after the attack that it brought, 0 to 1. */
  readonly share: number;
  /** It is not what the path hears. */
  readonly differsFromPath: boolean;
}

/** What speaks for one candidate. The weight of each is in ../weights/stroke-pitch.json, in nepers. */
export interface StrokePitchFeatures {
  /** Clarity of its period after the attack, 0 to 1. */
  readonly after: number;
  /** Natural logarithm of the part of the added power that it leaves unexplained. */
  readonly unexplained: number;
  /** Its fundamental against its strongest harmonic, decades of amplitude. */
  readonly fundamental: number;
  /** Clarity of the path at this pitch, times `after`. */
  readonly heard: number;
  /** Octaves from the note before, up to FARTHEST_OCTAVES. */
  readonly far: number;
  /** Octaves above MIDI 0. */
  readonly up: number;
  /** Octaves above STRUCK_HIGH_MIDI, 0 below. */
  readonly high: number;
}

const WEIGHTS: Readonly<Record<keyof StrokePitchFeatures, number>> = fitted.weights;

/**
 * Which of the candidates was struck: what the path hears, the note that sounded before, and the periods before and after
 * the attack are weighed by a conditional logit (McFadden 1974). Null where nothing has a pitch.
 *
 * @param before the note that sounded, as a fractional MIDI number, null in silence
 */
export function chooseStrokePitch(
  spectra: AttackSpectra,
  path: PathPitch,
  before: number | null,
): StrokePitch | null {
  let best: StrokePitch | null = null;
  let most = -Infinity;
  for (const midi of strokeCandidates(spectra, path, before)) {
    const evidence = spectra.evidence(midi);
    const weight = weigh(strokePitchFeatures(midi, evidence, path, before));
    if (weight <= most) continue;
    most = weight;
    const differsFromPath = clarityOfPathAt(path, midi) === 0;
    best = { midi, added: evidence.added, share: spectra.share, differsFromPath };
  }
  return best;
}

/** Every pitch that may have been struck, as fractional MIDI numbers. The path's own is the most exact, the note before the least. */
export function strokeCandidates(spectra: AttackSpectra, path: PathPitch, before: number | null): number[] {
  const candidates: number[] = [];
  const add = (midi: number) => {
    if (!candidates.some((other) => Math.abs(other - midi) < S.SAME_CANDIDATE)) candidates.push(midi);
  };
  if (!Number.isNaN(path.midi)) add(path.midi);
  spectra.pitches((midi) => {
    if (midi < S.STRUCK_CEILING_MIDI) add(midi);
  });
  if (before !== null) add(before);
  return candidates;
}

/** What speaks for one candidate, given as a fractional MIDI number. */
export function strokePitchFeatures(
  midi: number,
  evidence: PitchEvidence,
  path: PathPitch,
  before: number | null,
): StrokePitchFeatures {
  return {
    after: evidence.after,
    unexplained: Math.log(S.UNEXPLAINED_FLOOR + Math.max(0, 1 - evidence.gained)),
    fundamental: evidence.fundamental,
    heard: clarityOfPathAt(path, midi) * evidence.after,
    far: before === null ? 0 : Math.min(S.FARTHEST_OCTAVES, Math.abs(midi - before) / 12),
    up: midi / 12,
    high: Math.max(0, midi - S.STRUCK_HIGH_MIDI) / 12,
  };
}

function clarityOfPathAt(path: PathPitch, midi: number): number {
  return Math.abs(midi - path.midi) < PLATEAU_STEP ? path.clarity : 0;
}

function weigh(features: StrokePitchFeatures): number {
  return (
    WEIGHTS.after * features.after +
    WEIGHTS.unexplained * features.unexplained +
    WEIGHTS.fundamental * features.fundamental +
    WEIGHTS.heard * features.heard +
    WEIGHTS.far * features.far +
    WEIGHTS.up * features.up +
    WEIGHTS.high * features.high
  );
}
