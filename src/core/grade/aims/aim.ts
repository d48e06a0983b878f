/**
 * An aim: what a take tries for. It is data, so that a teacher can write one as a small readable file.
 */
import * as v from 'valibot';
import { bad, good, type Outcome } from '../../base/outcome.ts';
import { unfitValue } from '../../base/unfit-value.ts';

/** The events that an aim may count, and the tests that make sense for each. */
const TESTS_BY_EVENTS = {
  landings: ['is one of', 'is none of'],
  'phrase ends': ['is one of', 'is none of'],
  'strong beats': ['is one of', 'is none of'],
  notes: ['is one of', 'is none of'],
  'flat thirds': ['moves to'],
  changes: ['steps between'],
  bars: ['has one of', 'has all of'],
  choruses: ['has one of', 'has all of'],
} as const;
type AimEvents = keyof typeof TESTS_BY_EVENTS;

/** What a field has to look like, by a word that the catalogue turns into an example. */
type AimForm = 'words' | 'id' | 'degree of the key' | 'tone' | 'tones';

const ROLES = 'root|third|fifth|seventh|extension|colour|blue|outside|guide tone|chord tone';
const TONE = new RegExp(`^(?:${ROLES}|(?:key )?[b#]?(?:1[0-3]|[1-9]))$`);
const DEGREE_OF_KEY = /^[b#]?(?:VII|VI|IV|V|III|II|I)7?$/;

/** Written limits: an aim is read by people, and stands on the page whole. */
export const AIM_LIMITS = { nameCharacters: 200, taskCharacters: 2000, entries: 100 } as const;

const text = (most: number) =>
  v.pipe(v.string(), v.trim(), v.minLength(1, 'words' satisfies AimForm), v.maxLength(most));

/** The file a teacher writes, as JSON. */
export const aimSchema = v.pipe(
  v.object({
    format: v.literal('landfall-aim'),
    version: v.literal(1),
    /** A short word of its own: "third-over-one". */
    id: v.pipe(
      v.string(),
      v.regex(/^[a-z0-9-]+$/, 'id' satisfies AimForm),
      v.maxLength(AIM_LIMITS.nameCharacters),
    ),
    name: text(AIM_LIMITS.nameCharacters),
    /** What the player is asked to do, one sentence. */
    task: text(AIM_LIMITS.taskCharacters),
    events: v.picklist(Object.keys(TESTS_BY_EVENTS) as AimEvents[]),
    /**
     * Chords that count, by the degree of their root in the key ("IV7": only a dominant seventh there); left out, every
     * chord counts.
     */
    over: v.optional(
      v.pipe(
        v.array(v.pipe(v.string(), v.regex(DEGREE_OF_KEY, 'degree of the key' satisfies AimForm))),
        v.maxLength(AIM_LIMITS.entries),
      ),
    ),
    test: v.picklist(['is one of', 'is none of', 'has one of', 'has all of', 'moves to', 'steps between']),
    /** Roles ("third", "guide tone"), degrees of the chord ("b3", "9") or of the key ("key 3"). */
    tones: v.pipe(
      v.array(v.pipe(v.string(), v.regex(TONE, 'tone' satisfies AimForm))),
      v.minLength(1, 'tones' satisfies AimForm),
      v.maxLength(AIM_LIMITS.entries),
    ),
    /** Of the events, 0 to 1. */
    shareToReach: v.pipe(v.number(), v.minValue(0), v.maxValue(1)),
    /** Fewer say nothing. */
    leastEvents: v.pipe(v.number(), v.integer(), v.minValue(1)),
    /** Whether the share must also be more than luck. */
    againstLuck: v.boolean(),
  }),
  v.check((aim) => (TESTS_BY_EVENTS[aim.events] as readonly string[]).includes(aim.test), 'test'),
);

type AimFile = v.InferOutput<typeof aimSchema>;
type Worded = 'name' | 'task';

/** An aim of the house has no words of its own: the catalogue has them, by its id. */
export interface Aim extends Readonly<Omit<AimFile, 'format' | 'version' | 'over' | 'tones' | Worded>> {
  readonly over?: readonly string[] | undefined;
  readonly tones: readonly string[];
  /** The words of a teacher's file. */
  readonly own?: Readonly<Pick<AimFile, Worded>>;
}

/**
 * Reads an aim that a teacher wrote; the problem names the field that can't be read and what would be.
 * @param value the file's JSON, parsed
 */
export function readAim(value: unknown): Outcome<Aim> {
  const read = v.safeParse(aimSchema, value);
  if (read.success) {
    const { format: _, version: _version, name, task, ...aim } = read.output;
    return good({ ...aim, own: { name, task } });
  }
  const issue = read.issues[0];
  if (issue.type === 'check') {
    const { events, test } = value as AimFile;
    return bad('aim.test', { test, events, tests: TESTS_BY_EVENTS[events] });
  }
  const unfit = unfitValue(issue);
  if (issue.type === 'regex' || issue.type === 'min_length')
    return bad('aim.form', { field: unfit.field ?? '', found: unfit.found, form: issue.message as AimForm });
  return bad('aim.field', unfit);
}
