/** How a take did by an aim. */
import { joinWith } from '../entries/entry.ts';
import { percent } from './grammar.ts';
import { capital, moreShows, luck, noun } from './phrases.ts';
import type { reportAims as english } from '../en/report-aims.ts';
import type { Facts, Translated } from '../entries/translated.ts';

type AimEvents = Facts<(typeof english)['evidence']['none']>;

const AIM_EVENTS: Readonly<Record<AimEvents['events'], readonly [one: string, several: string]>> = {
  landings: ['Landung', 'Landungen'],
  'phrase ends': ['Phrasenende', 'Phrasenenden'],
  'strong beats': ['betonter Schlag', 'betonte Schläge'],
  notes: ['Ton', 'Töne'],
  'flat thirds': ['kleine Terz', 'kleine Terzen'],
  changes: ['Akkordwechsel', 'Akkordwechsel'],
  bars: ['Takt', 'Takte'],
  choruses: ['Chorus', 'Chorusse'],
};
/** „von 8 Takten“: der Dativ der Mehrzahl. */
const AIM_EVENTS_OF: Readonly<Record<AimEvents['events'], readonly [one: string, several: string]>> = {
  ...AIM_EVENTS,
  'strong beats': ['betonten Schlag', 'betonten Schlägen'],
  notes: ['Ton', 'Tönen'],
  'flat thirds': ['kleinen Terz', 'kleinen Terzen'],
  changes: ['Akkordwechsel', 'Akkordwechseln'],
  bars: ['Takt', 'Takten'],
  choruses: ['Chorus', 'Chorussen'],
};

const overDegrees = (over: readonly string[]): string =>
  over.length === 0 ? '' : ` über ${noun(over.length, 'der', 'den')} ${joinWith(over, 'und')}`;
const aimEventsOf = (events: AimEvents['events'], count: number, over: readonly string[]): string =>
  `${AIM_EVENTS_OF[events][count === 1 ? 0 : 1]}${overDegrees(over)}`;

export const reportAims: Translated<typeof english> = {
  verdicts: {
    reached: 'erreicht',
    'not yet': 'noch nicht',
    'too short to tell': 'zu kurz für ein Urteil',
    'not in this chart': 'nicht in diesem Chart',
  },
  answer: {
    reached: ({ hits, of, events, over }) => `Geschafft: ${hits} von ${of} ${aimEventsOf(events, of, over)}.`,
    share: ({ hits, of, needed, events, over }) =>
      `Noch nicht: ${hits} von ${of} ${aimEventsOf(events, of, over)}; ${needed} würden reichen.`,
    luck: ({ hits, of, events, over }) =>
      `${hits} von ${of} ${aimEventsOf(events, of, over)}, aber der Zufall kann ebenso viele ergeben.`,
    tooShort: ({ hits, of, more, events, over }) =>
      `Bisher ${hits} von ${of} ${aimEventsOf(events, of, over)}. ${capital(moreShows(more))}.`,
  },
  evidence: {
    notInChart: ({ over }) =>
      over.length === 0
        ? 'Der Chart hat keinen solchen Akkord.'
        : `Der Chart hat keine ${joinWith(over, 'oder')}.`,
    none: ({ events, over }) => `In diesem Take: 0 ${AIM_EVENTS[events][1]}${overDegrees(over)}.`,
    few: ({ hits, of, least, events, over }) =>
      `${hits} von ${of} ${aimEventsOf(events, of, over)}; für ein Urteil sind mindestens ${least} nötig.`,
    notUsed: ({ hits, of, events, over }) =>
      `${hits} von ${of} ${aimEventsOf(events, of, over)}, aber du spielst diesen Ton auch sonst kaum: Dass du ihn meidest, ist damit noch nicht gezeigt.`,
    counted: ({ hits, of, toReach, expected, onlyLuck, moreChoruses, events, over }) =>
      `${hits} von ${of} ${aimEventsOf(events, of, over)}; das Ziel ist ${percent(toReach)}` +
      `${expected === undefined ? '' : `, ${luck(expected)}`}${onlyLuck ? ': genug, aber nicht mehr, als der Zufall ergeben kann' : ''}` +
      `${moreChoruses === null ? '' : `; ${moreShows(moreChoruses)}`}.`,
  },
};
