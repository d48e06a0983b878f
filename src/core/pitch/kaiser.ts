/** Kaiser's window (Kaiser, "Nonrecursive digital filter design using the I₀-sinh window function", 1974) at 60 dB. */
const BETA = 5.65;

/** Taps that a filter needs whose transition is this share of the rate (his formula). */
export function kaiserTaps(transition: number): number {
  return Math.ceil(52 / (2.285 * 2 * Math.PI * transition));
}

/** The window at `edge`: 0 in its middle, ±1 at its ends, where it is taken for 0. */
export function kaiser(edge: number): number {
  return Math.abs(edge) >= 1 ? 0 : besselI0(BETA * Math.sqrt(1 - edge * edge));
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
