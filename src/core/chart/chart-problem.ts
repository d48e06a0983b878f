import { problem, type Problem, type ProblemCode, type ProblemFacts } from '../words/problem.ts';

/** What keeps a chart from being read, and where, so that an editor can point at the symbol. */
export interface ChartProblem {
  /** Which bar, which symbol, what would be read. */
  readonly problem: Problem;
  /** From 1. */
  readonly line: number;
  /** From 1. */
  readonly column: number;
  /** Characters that are meant. */
  readonly length: number;
}

/** Carries a problem out of the reader; caught in parse-chart and never seen outside. */
export class UnreadableChart extends Error {
  readonly problem: ChartProblem;
  constructor(problem: ChartProblem) {
    super(problem.problem.code);
    this.problem = problem;
  }
}

/** A piece of chart text with its place. */
export interface Piece {
  readonly text: string;
  readonly line: number;
  readonly column: number;
}

/** Gives up on the chart at a piece of its text, with a problem that is at hand already. */
export function refuseWith(piece: Piece, told: Problem): never {
  throw new UnreadableChart({
    problem: told,
    line: piece.line,
    column: piece.column,
    length: Math.max(1, piece.text.length),
  });
}

/** Gives up on the chart at a piece of its text. */
export function refuse<Code extends ProblemCode>(
  piece: Piece,
  code: Code,
  ...facts: ProblemFacts<Code>
): never {
  refuseWith(piece, problem(code, ...facts));
}
