/** The fitted weights of the chord network. `fixtures/chords/make-weights.ts` makes them; README.md says what they gave. */
import type { ChordWeights } from './chord-network.ts';
import data from './weights.json' with { type: 'json' };

let made: ChordWeights | null = null;

/** The weights as typed arrays, made once. */
export const chordWeights = (): ChordWeights =>
  (made ??= {
    hidden: Float32Array.from(data.hidden),
    output: Float32Array.from(data.output),
    none: Float32Array.from(data.none),
  });
