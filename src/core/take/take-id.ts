/** By what a take is known again, in its file and in an answer to it. */
import * as v from 'valibot';

/** Letters, digits, underscores and hyphens, 80 at most. */
export const takeIdSchema = v.pipe(v.string(), v.regex(/^[\w-]{1,80}$/));
