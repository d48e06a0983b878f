/** What was heard, behind what was corrected by hand: where it lies on the strip. */
import type { Report } from '../../core/take/schema.ts';
import { heightOf, xOf, type Strip } from './line-geometry.ts';

/** A note as it was heard: a faint bar from its onset to its end. */
export interface Ghost {
  readonly x: number;
  readonly endX: number;
  readonly y: number;
  /** It is gone, and not only changed. */
  readonly deleted: boolean;
}

export function ghostsOn(
  strip: Strip,
  { notes, doubtful, corrections }: Pick<Report, 'notes' | 'doubtful' | 'corrections'>,
  beatAt: (seconds: number) => number,
): readonly Ghost[] {
  const ghost = (
    place: { readonly onsetSeconds: number; readonly offsetSeconds: number; readonly midi: number },
    deleted: boolean,
  ): Ghost => ({
    x: xOf(strip, beatAt(place.onsetSeconds)),
    endX: xOf(strip, beatAt(place.offsetSeconds)),
    y: heightOf(strip, place.midi).y,
    deleted,
  });
  return [
    ...[...notes, ...doubtful].flatMap(({ corrected }) =>
      (corrected?.was ?? []).map((place) => ghost(place, false)),
    ),
    ...(corrections?.deleted ?? []).map((place) => ghost(place, true)),
  ];
}
