/** Kaiser's window and his formulas (Kaiser, "Nonrecursive digital filter design using the I₀-sinh window function", 1974). */

/** Taps of a filter that closes by so many `decibels`, and whose transition is this share of the rate. */
export function kaiserTaps(decibels: number, transition: number): number {
  return Math.ceil((decibels - 8) / (2.285 * 2 * Math.PI * transition));
}

/** The window's shape for 50 `decibels` or more. */
export function kaiserBeta(decibels: number): number {
  return 0.1102 * (decibels - 8.7);
}

/** The window at `edge`: 0 in its middle, ±1 at its ends, where it is taken for 0. */
export function kaiser(beta: number, edge: number): number {
  return Math.abs(edge) >= 1 ? 0 : besselI0(beta * Math.sqrt(1 - edge * edge));
}

function besselI0(x: number): number {
  let sum = 1;
  let term = 1;
  for (let k = 1; k < 30; k++) {
    term *= (x / (2 * k)) ** 2;
    sum += term;
  }
  return sum;
}
