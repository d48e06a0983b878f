/**
 * Kaiser's window and his formulas for its parameters (Kaiser, "Nonrecursive digital filter design using the I₀-sinh
 * window function", 1974).
 */

/**
 * Length in taps of a filter with a stop-band attenuation of `decibels` and a transition band of this share of the
 * sample rate.
 */
export function kaiserTaps(decibels: number, transition: number): number {
  return Math.ceil((decibels - 8) / (2.285 * 2 * Math.PI * transition));
}

/** The shape parameter β of the window for an attenuation of 50 `decibels` or more. */
export function kaiserBeta(decibels: number): number {
  return 0.1102 * (decibels - 8.7);
}

/** The window at position `edge`: 0 is its middle, ±1 are its ends, where the value is 0. */
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
