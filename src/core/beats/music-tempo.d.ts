/** Types for the part of `music-tempo` that is used; the package has none. */
declare module 'music-tempo' {
  export default class MusicTempo {
    constructor(
      samples: number[],
      params?: {
        readonly hopSize?: number;
        readonly bufferSize?: number;
        readonly timeStep?: number;
        readonly correctionFactor?: number;
        readonly maxChange?: number;
      },
    );
    /** Normalised flux, a value a hop. */
    readonly spectralFlux: number[];
    /** Hops with an onset. */
    readonly peaks: number[];
    /** Onsets in seconds. */
    readonly events: number[];
    /** Beats in seconds. */
    readonly beats: number[];
  }
}
