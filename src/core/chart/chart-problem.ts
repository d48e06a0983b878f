/** What keeps a chart from being read, and where, so that an editor can point at the symbol. */
export interface ChartProblem {
  /** One sentence: which bar, which symbol, what would be read. */
  readonly sentence: string;
  /** From 1. */
  readonly line: number;
  /** From 1. */
  readonly column: number;
  /** Characters that are meant. */
  readonly length: number;
}

/** Carries a problem out of the reader; caught in read-chart and never seen outside. */
export class UnreadableChart extends Error {
  readonly problem: ChartProblem;
  constructor(problem: ChartProblem) {
    super(problem.sentence);
    this.problem = problem;
  }
}

/** A piece of chart text with its place. */
export interface Piece {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

/** Gives up on the chart at a piece of its text. */
export function refuse(piece: Piece, sentence: string): never {
  throw new UnreadableChart({
    sentence,
    line: piece.line,
    column: piece.column,
    length: Math.max(1, piece.text.length),
  });
}
