/** The earlier takes, at the end of the open page. */
import { several, decimal } from './grammar.ts';

/** Room on a disk: "5.5 MB", "340 MB", "12.3 GB". */
const diskRoom = (megabytes: number): string =>
  megabytes < 1000
    ? `${decimal(megabytes, megabytes < 10 ? 1 : 0)} MB`
    : `${decimal(megabytes / 1000, 1)} GB`;

export const takes = {
  heading: 'Earlier takes',
  /** Before and behind the title of the take. */
  cutOff: 'A take was cut off:',
  kept: ({ length }: { length: string }) => `${length} of it is kept.`,
  grade: 'Grade it',
  throwAway: 'Throw it away',
  remove: 'Remove',
  removeNamed: ({ title }: { title: string }) => `Remove ${title}`,
  removeForGood: 'Remove for good',
  heldOnly: 'Only those with a star',
  keep: 'Keep',
  saveAll: 'Save all takes in one file',
  /** How much room the sounds take, in megabytes. */
  size: ({ megabytes }: { megabytes: number }) => diskRoom(megabytes),
  room: ({ megabytes, freeMegabytes }: { megabytes: number; freeMegabytes: number | null }) =>
    `The sound of all takes needs ${diskRoom(megabytes)}${freeMegabytes === null ? '' : `; ${diskRoom(freeMegabytes)} are free`}.`,
  roomIsShort: ({ takes, megabytes }: { takes: number; megabytes: number }) =>
    `The disk is nearly full. The sound of the oldest ${several(takes, 'take')} without a star needs ${diskRoom(megabytes)}; grades and notes stay when it is removed.`,
  removeOldSound: 'Remove this sound',
  bringIn: 'Bring takes in from files',
  comingIn: ({ done, of }: { done: number; of: number }) => `Bringing in: ${done} of ${of}`,
  goingOut: ({ done, of }: { done: number; of: number }) => `Saving: ${done} of ${of}`,
  recording: 'recording',
  notGraded: 'not graded yet',
  noLandings: 'no landings',
  thirds: ({ thirds, landings }: { thirds: number; landings: number }) =>
    `thirds on ${thirds} of ${several(landings, 'landing')}`,
};
