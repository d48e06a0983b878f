/**
 * A feel as data, written the way a drummer writes a bar: one character a step.
 *
 * Drums and chords: `X` accent, `x` plain, `o` soft, `g` ghost, `.` rest, `-` (chords) the chord rings on,
 * `>` (chords) the chord that comes next, early. Bass: `R` root, `3 5 6 7` that tone of the chord, `8` the
 * root an octave up, `a` a step from the next root, `.` rest, `-` rings on.
 *
 * A line is one bar of four beats, or two bars after one another; other meters take the beats they need.
 */
export type DrumName =
  | 'kick'
  | 'snare'
  | 'sidestick'
  | 'swirl'
  | 'hat'
  | 'hatFoot'
  | 'hatOpen'
  | 'ride'
  | 'bell'
  | 'crash'
  | 'highTom'
  | 'midTom'
  | 'lowTom'
  | 'floorTom'
  | 'shaker'
  | 'clave';

/** General MIDI percussion map (MIDI 1.0, General MIDI level 1). */
export const drumKeys: Readonly<Record<DrumName, number>> = {
  kick: 36,
  sidestick: 37,
  snare: 38,
  swirl: 40,
  floorTom: 43,
  lowTom: 45,
  midTom: 47,
  highTom: 48,
  hat: 42,
  hatFoot: 44,
  hatOpen: 46,
  crash: 49,
  ride: 51,
  bell: 53,
  shaker: 70,
  clave: 75,
};

/** High and low wood block: heard through any loudspeaker. */
export const clickKeys = { accent: 76, plain: 77 } as const;

export const velocityOf: Readonly<Record<string, number>> = { X: 108, x: 86, o: 62, g: 38, '>': 90 };

export type StepsPerBeat = 2 | 3 | 4;

export interface DrumPattern {
  readonly stepsPerBeat: StepsPerBeat;
  readonly lines: Readonly<Partial<Record<DrumName, string>>>;
  /** How often against the others; 1 where it is left out. */
  readonly weight?: number;
}

export interface LinePattern {
  readonly stepsPerBeat: StepsPerBeat;
  readonly line: string;
  readonly weight?: number;
}

/** MIDI programs, from 0. */
export interface Instruments {
  readonly drumKit: number;
  readonly bass: number;
  readonly chords: number;
}

export interface Feel {
  readonly instruments: Instruments;
  readonly drums: readonly DrumPattern[];
  /** The last bar before a section. */
  readonly fills: readonly DrumPattern[];
  /** `walk`: a note a beat; `two`: half notes with a step into the change; else patterns. */
  readonly bass: 'walk' | 'two' | readonly LinePattern[];
  readonly chords: readonly LinePattern[];
  /** Whether chords take a ninth of the key that the symbol leaves to the player. */
  readonly addsNinths: boolean;
  /** Share of its written length that a bass note sounds. */
  readonly bassGate: number;
  /** Likewise for the chords' last step before a rest or a new stroke. */
  readonly chordGate: number;
}
