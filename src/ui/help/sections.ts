/** What stands on the page of help, in the order in which a player meets it. */
import type { Role } from '../../core/take/schema.ts';
import type { Words } from '../../core/words/words.ts';
import { ROLES } from '../parts/roles.ts';

/** Pages of the guide that the help leads to, each a file in `guide/` beside the site (src/cli/guide.ts). */
export const GUIDE_PAGES: readonly (keyof Words['help']['guide']['pages'])[] = [
  'player',
  'teacher',
  'safety',
  'privacy',
];

export type HelpSection = keyof Words['help']['sections'];
type Entry = keyof Words['help']['entries'];

/** The marks; null is the rest on a change. */
export const HELP_MARKS: readonly (Role | null)[] = [...ROLES, null];

export const HELP_WORDS: readonly {
  readonly section: Exclude<HelpSection, 'marks'>;
  readonly entries: readonly Entry[];
}[] = [
  {
    section: 'stage',
    entries: ['chords', 'targetStroke', 'instrument', 'liveLine', 'note', 'aim', 'turns', 'form'],
  },
  {
    section: 'landing',
    entries: ['change', 'landing', 'chordTone', 'guideTone', 'earlyLate', 'anticipation', 'chorus'],
  },
  {
    section: 'result',
    entries: ['luck', 'tooShort', 'doubt', 'phrase', 'strongBeat', 'palette', 'figure', 'trend', 'due'],
  },
  { section: 'sound', entries: ['delay', 'soundCheck', 'bandOut', 'cents'] },
];
