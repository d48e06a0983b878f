/** The ways to divide a beat: where their slots lie, and what each costs against a plainer one. */

/** A division of one beat, or of two, into equal written parts. */
export interface Grid {
  /** Beats that it spans. */
  readonly beats: 1 | 2;
  /** Equal parts of the whole span. */
  readonly parts: number;
  /** Where the parts are played, in beats from its start: not equal where eighths swing. */
  readonly places: readonly number[];
  /** What it costs to write so, in units of the logarithm of likelihood. */
  readonly cost: number;
  /** What each part without an onset costs: a group of six is read only where most of it is played. */
  readonly costOfEmpty: number;
  /** Twos and fours, or threes and sixes, against the meter's own division. */
  readonly kind: 'plain' | 'cross';
  /** Swung places scatter more than even ones. */
  readonly swung: boolean;
}

/**
 * Costs were set on rhythms of handbooks played with the scatter of skilled soloists (tests/core/notation), seeds below
 * 1000. They say: eighths before triplets and sixteenths, these before sextuplets and thirty-seconds.
 */
const COSTS = {
  beat: 0,
  half: 0.4,
  sixteenths: 1.8,
  triplet: 1.2,
  quarterTriplet: 3,
  sextuplet: 3.5,
  quintuplet: 5.5,
  thirtySeconds: 5,
  swungSixteenths: 0.7,
  duplet: 3,
  quadruplet: 4.5,
} as const;

const even = (parts: number, beats = 1): readonly number[] =>
  Array.from({ length: parts }, (_, part) => (part * beats) / parts);

const grid = (parts: number, cost: number, more: Partial<Omit<Grid, 'parts' | 'cost'>> = {}): Grid => ({
  beats: 1,
  parts,
  places: even(parts, more.beats ?? 1),
  cost,
  costOfEmpty: 0,
  kind: 'plain',
  swung: false,
  ...more,
});

/** Swing from here on is heard as swing: less is the scatter of straight eighths. */
const HEARD_SWING = 0.53;

/**
 * The grids of a beat that is a quarter note.
 * @param swing share of the beat that the first eighth takes, 0.5 to 0.8
 */
export function simpleGrids(swing: number): readonly Grid[] {
  const swings = swing > HEARD_SWING;
  const halves = [0, swing];
  const quarters = [0, swing / 2, swing, (1 + swing) / 2];
  return [
    grid(1, COSTS.beat),
    ...(swings ? [grid(2, COSTS.half, { places: halves, swung: true })] : []),
    // A player leaves the swing for straight eighths now and then.
    grid(2, COSTS.half + (swings ? 0.3 : 0)),
    grid(4, COSTS.sixteenths, { costOfEmpty: 0.6 }),
    ...(swings
      ? [
          grid(4, COSTS.sixteenths + COSTS.swungSixteenths, {
            places: quarters,
            swung: true,
            costOfEmpty: 0.6,
          }),
        ]
      : []),
    grid(3, COSTS.triplet, { kind: 'cross', costOfEmpty: 0.5 }),
    grid(6, COSTS.sextuplet, { kind: 'cross', costOfEmpty: 1 }),
    grid(5, COSTS.quintuplet, { kind: 'cross', costOfEmpty: 2 }),
    grid(8, COSTS.thirtySeconds, { costOfEmpty: 0.7 }),
    grid(3, COSTS.quarterTriplet, { beats: 2, kind: 'cross', costOfEmpty: 2 }),
  ];
}

/** The grids of a beat that is a dotted quarter: its eighths do not swing. */
export const COMPOUND_GRIDS: readonly Grid[] = [
  grid(1, COSTS.beat),
  grid(3, COSTS.half),
  grid(6, COSTS.sixteenths, { costOfEmpty: 0.15 }),
  grid(12, COSTS.thirtySeconds, { costOfEmpty: 0.7 }),
  grid(2, COSTS.duplet, { kind: 'cross', costOfEmpty: 1 }),
  grid(4, COSTS.quadruplet, { kind: 'cross', costOfEmpty: 1.5 }),
];
