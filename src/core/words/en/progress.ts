/** The page that says what to practise today. */
import { several } from './grammar.ts';

export const progress = {
  title: 'From day to day',
  back: 'Back',
  nothingYet: 'Play a take: the next day this page shows the changes that went worst.',
  counted: ({ takes, days }: { takes: number; days: number }) =>
    `${several(takes, 'take')} on ${several(days, 'day')}. It counts when you land on the third or the seventh of a chord as it arrives; for an aim, what the aim asks for.`,
  today: 'For today',
  why: 'The weakest changes that are due. A change that goes well comes back after some days; one that does not comes back tomorrow.',
  nothingDue: 'Nothing is due today: play what you like.',
  change: ({ from, to }: { from: string; to: string }) => `${from} to ${to}`,
  met: ({ hits, of }: { hits: number; of: number }) => `Third or seventh ${hits} of ${several(of, 'time')}.`,
  lastPlayed: ({ days }: { days: number }) =>
    days <= 0 ? 'Played today.' : days === 1 ? 'Played yesterday.' : `Played ${days} days ago.`,
  practise: 'Practise it',
  practiseNamed: ({ change }: { change: string }) => `Practise it: ${change}`,
  byAim: 'Aims',
  byForm: 'Forms',
  byChord: 'Chords',
  byKey: 'Keys',
  columns: { what: 'What', course: 'Day by day', counts: 'In all, and the trend' },
  directions: {
    rising: 'getting better',
    falling: 'going down',
    steady: 'no clear trend',
    'too few': 'too few takes to tell',
  },
  twoTakes: 'Two takes side by side',
  takeChoice: { first: 'First take', second: 'Second take' },
  openTake: 'Open it',
  chorus: ({ chorus }: { chorus: number }) => `Chorus ${chorus}`,
  wholeTake: 'In all',
  differences: {
    better: 'The second take lands better than the first, and by more than luck.',
    worse: 'The second take lands worse than the first, and by more than luck.',
    'no difference': 'They differ no more than two takes on the same day usually do.',
    'too few': 'Too few landings in one of them to tell.',
  },
};
