/**
 * An aim: what a take tries for. It is data, so that a teacher can write one as a small readable file.
 */
import * as v from 'valibot';
import { bad, good, type Outcome } from '../outcome.ts';

/** The events that an aim counts. */
export const aimEvents = [
  'landings',
  'changes',
  'phrase ends',
  'strong beats',
  'notes',
  'flat thirds',
  'bars',
  'choruses',
] as const;

/** How the tones must be met. */
export const aimTests = [
  'is one of',
  'is none of',
  'has one of',
  'has all of',
  'moves to',
  'steps between',
] as const;

export const aimSchema = v.object({
  format: v.literal('landfall-aim'),
  version: v.literal(1),
  /** A short word of its own: "third-over-one". */
  id: v.pipe(v.string(), v.regex(/^[a-z0-9-]+$/)),
  name: v.pipe(v.string(), v.minLength(1)),
  /** What the player is asked to do, one sentence. */
  task: v.pipe(v.string(), v.minLength(1)),
  events: v.picklist(aimEvents),
  /** Chords that count, by the degree of their root in the key ("I", "IV", "bVII"); left out, every chord counts. */
  over: v.optional(v.array(v.pipe(v.string(), v.regex(/^[b#]?(I|II|III|IV|V|VI|VII)$/)))),
  test: v.picklist(aimTests),
  /** Roles ("third", "guide tone", "chord tone", "blue") or degrees ("b3" of the chord, "key 3" of the key). */
  tones: v.pipe(v.array(v.string()), v.minLength(1)),
  shareToReach: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
  leastEvents: v.pipe(v.number(), v.integer(), v.minValue(1)),
});

export type Aim = Readonly<Omit<v.InferOutput<typeof aimSchema>, 'over' | 'tones'>> & {
  readonly over?: readonly string[] | undefined;
  readonly tones: readonly string[];
};

/** Reads an aim that a teacher wrote; the sentence names the field that can't be read and what would be. */
export function readAim(value: unknown): Outcome<Aim> {
  const read = v.safeParse(aimSchema, value);
  if (read.success) return good(read.output);
  const issue = read.issues[0];
  const path = v.getDotPath(issue);
  const where = path === null ? 'The aim' : `"${path}" of the aim`;
  return bad(
    `${where} can't be read: expected ${issue.expected ?? 'another value'}, found ${issue.received}.`,
  );
}
