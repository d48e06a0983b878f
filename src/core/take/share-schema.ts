/** How a share is told: counts first, then the share, its doubt and its chance level. */
import * as v from 'valibot';

export const finite = v.pipe(v.number(), v.finite());
export const whole = v.pipe(v.number(), v.integer());
export const count = v.pipe(v.number(), v.integer(), v.minValue(0));
/** A share of a whole, 0 to 1; null where there was nothing to share. */
export const portion = v.nullable(v.pipe(v.number(), v.minValue(0), v.maxValue(1)));
/** The place of a note in `notes`. */
export const noteIndex = count;

/** What a share says beside its chance level; "too short to tell" wherever the events are too few for a verdict. */
export const verdictSchema = v.picklist(['above chance', 'at chance', 'below chance', 'too short to tell']);

export const shareSchema = v.object({
  /** Events that succeed; seconds where the share is by length. */
  hits: v.pipe(v.number(), v.minValue(0)),
  of: v.pipe(v.number(), v.minValue(0)),
  share: portion,
  /** Wilson 95 % interval. */
  low: portion,
  high: portion,
  /** What the same notes would score if they were scattered without regard to the chords, 0 to 1. */
  chance: portion,
  /** Hits that chance would give. */
  expected: v.nullable(v.pipe(v.number(), v.minValue(0))),
  /** The chance of as many hits or more. */
  tail: portion,
  /**
   * The same two values under the names that they had when a plain p value was reported beside them. Now there is one p
   * and one expectation.
   */
  fairTail: portion,
  fairExpected: v.nullable(v.pipe(v.number(), v.minValue(0))),
  /** The p value corrected for the number of shares on the page (Holm); the verdict of a cell goes by it. */
  correctedTail: portion,
  chanceBy: v.nullable(v.picklist(['own notes', 'rotations'])),
  verdict: verdictSchema,
  /** How many choruses more would say something, where it is too short to tell; else null. */
  moreChoruses: v.nullable(count),
});

/** The three sets of tones that every kind of event is measured by. */
export const sharesSchema = v.object({
  thirds: shareSchema,
  guideTones: shareSchema,
  chordTones: shareSchema,
});
