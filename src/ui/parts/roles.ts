/**
 * One mark for each role: a shape of its own, so that no role is known by its colour alone. This is the one place for a
 * role's shape and colour. Filled marks are tones that the chord names, open ones are other tones. Corners count: the third
 * has three, the fifth five, the seventh seven.
 *
 * Paths are drawn in a box from −12 to 12, centred on 0, y down, and serve SVG and canvas alike.
 */
import type { Role } from '../../core/take/schema.ts';

export interface RoleMark {
  readonly path: string;
  /** Filled, or drawn as a line. */
  readonly filled: boolean;
  /** The colour of the palette it has, by its name in `tokens.css`. Thirds and sevenths tell chords apart: the accent. */
  readonly colour: 'ink' | 'accent';
}

/** A mark's colour as CSS. */
export const cssColour = ({ colour }: RoleMark): string => `var(--${colour})`;

/** A star or polygon with the first point up; `inner` equal to `outer` leaves out the inner corners. */
function corners(count: number, outer: number, inner: number | null): string {
  const steps = inner === null ? count : count * 2;
  const points = Array.from({ length: steps }, (_, i) => {
    const radius = inner === null || i % 2 === 0 ? outer : inner;
    const angle = (i / steps) * 2 * Math.PI - Math.PI / 2;
    return `${(radius * Math.cos(angle)).toFixed(2)} ${(radius * Math.sin(angle)).toFixed(2)}`;
  });
  return `M${points.join('L')}Z`;
}

export const ROLE_MARKS: Readonly<Record<Role, RoleMark>> = {
  root: {
    // A note head at rest, as in the sign of the house: a disc is too like a pentagon from afar.
    path: 'M-11.13 4.5A12 7.6 -22 1 1 11.13 -4.5A12 7.6 -22 1 1 -11.13 4.5Z',
    filled: true,
    colour: 'ink',
  },
  third: {
    path: 'M0 -11L11.2 9.2L-11.2 9.2Z',
    filled: true,
    colour: 'accent',
  },
  fifth: {
    path: corners(5, 11, 8.2),
    filled: true,
    colour: 'ink',
  },
  seventh: {
    path: corners(7, 11.6, 5.6),
    filled: true,
    colour: 'accent',
  },
  extension: {
    path: 'M0 -12L8 0L0 12L-8 0Z',
    filled: true,
    colour: 'ink',
  },
  colour: {
    path: 'M0 -11L7.6 0L0 11L-7.6 0Z',
    filled: false,
    colour: 'ink',
  },
  blue: {
    path: 'M6 -9.2A10.6 10.6 0 1 0 6 9.2A10.4 10.4 0 0 1 6 -9.2Z',
    filled: false,
    colour: 'ink',
  },
  outside: {
    path: 'M-11 4C-8.4 -7 -3.6 -7 0 0C3.6 7 8.4 7 11 -4',
    filled: false,
    colour: 'ink',
  },
};

/** A change that no note met: a rest hung from the staff line. */
export const OPEN_MARK: RoleMark = {
  path: 'M-10 -5H10V5H-10Z',
  filled: false,
  colour: 'ink',
};

export const ROLES = Object.keys(ROLE_MARKS) as readonly Role[];
