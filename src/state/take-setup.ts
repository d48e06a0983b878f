/** The set-up that a take was played with: kept with the take, so that "again" plays the same. */
import * as v from 'valibot';
import { formChart, listForms } from '../core/chart/forms.ts';
import { parseChart } from '../core/chart/parse-chart.ts';
import { playedBars } from '../core/chart/play-order.ts';
import { movedChart } from '../core/chart/transpose-chart.ts';
import { keyOn, parseKey, writeKey } from '../core/music/keys.ts';
import { swingShare } from '../core/chart/swing.ts';
import { writeChart } from '../core/chart/write-chart.ts';
import { TRADES, usualPractice } from './practice-settings.ts';
import { settingsFields, type Settings } from './settings.ts';
import type { TakeDetails } from './take.ts';

/** The settings that belong to the take; those of the player's instrument, room and screen do not. */
const KEPT = [
  'form',
  'ownChart',
  'ownTitle',
  'key',
  'bpm',
  'feel',
  'swing',
  'choruses',
  'countInBars',
  'aim',
  'practice',
] as const satisfies readonly (keyof Settings)[];

export type KeptSetup = Pick<Settings, (typeof KEPT)[number]>;

/** The part of the settings that is kept with a take. The text of a chart that was not played is left out. */
export function keptSetup(settings: Settings): KeptSetup {
  const kept = Object.fromEntries(KEPT.map((name) => [name, settings[name]])) as unknown as KeptSetup;
  return kept.form === null ? kept : { ...kept, ownChart: '', ownTitle: null };
}

/**
 * The settings that play a take again: as they were kept with it, a field that can't be read left out; of a take
 * that was stored without them, as far as its other details tell. The player's own chart stays where a form was played.
 */
export function setupOfTake(details: TakeDetails): Partial<KeptSetup> {
  const kept = details.setup;
  if (kept === undefined) return setupFromDetails(details);
  const read: Record<string, unknown> = {};
  for (const name of KEPT) {
    const field = v.safeParse(settingsFields[name], kept[name]);
    if (field.success) read[name] = field.output;
  }
  const { ownChart, ownTitle, ...rest } = read as Partial<KeptSetup>;
  return typeof rest.form === 'string' || ownChart === undefined
    ? rest
    : { ...rest, ownChart, ownTitle: ownTitle ?? null };
}

/** A kept set-up with its key, and its own chart, so many semitones away. */
export function movedSetup(
  setup: NonNullable<TakeDetails['setup']>,
  semitones: number,
): NonNullable<TakeDetails['setup']> {
  const key = typeof setup['key'] === 'string' ? parseKey(setup['key']) : null;
  const own = typeof setup['ownChart'] === 'string' ? parseChart(setup['ownChart']) : null;
  return {
    ...setup,
    ...(key && { key: writeKey(keyOn((key.tonicPitchClass + semitones + 12) % 12, key.mode)) }),
    ...(own?.ok && { ownChart: writeChart(movedChart(own.value, semitones)) }),
  };
}

function setupFromDetails(details: TakeDetails): Partial<KeptSetup> {
  const { bpm, feel, swing, aim, chordsRest = false, backbeatClick = false, rise, trade, drone } = details;
  const form = formOf(details);
  const played = details.source === 'microphone' || details.source === 'midi';
  const tradeBars = trade && TRADES.includes(trade.bars) ? trade.bars : null;
  return {
    ...(form === null
      ? { form, ownChart: details.chartText, ownTitle: played ? details.title : null }
      : { form }),
    key: details.key,
    bpm,
    feel,
    swing: Math.abs(swing - swingShare(feel, bpm)) < SWING_TOLERANCE ? null : swing,
    ...(aim !== undefined && { aim }),
    practice: {
      ...usualPractice.practice,
      chordsRest,
      backbeatClick,
      rise: rise ? riseByChoruses(rise, details.chartText) : null,
      tradeBars,
      drone: drone?.tones ?? null,
    },
  };
}

const SWING_TOLERANCE = 1e-6;

/** The built-in form that has these very chords in this key; null where none has. */
function formOf({ chartText, key }: Pick<TakeDetails, 'chartText' | 'key'>): string | null {
  const chart = parseChart(chartText);
  if (!chart.ok) return null;
  const bare = (text: string) => text.replaceAll(/^(title|key):.*\n/gm, '');
  const wanted = bare(writeChart(chart.value));
  const same = listForms().find(({ name }) => {
    const form = formChart(name, key);
    return form.ok && bare(writeChart(form.value)) === wanted;
  });
  return same?.name ?? null;
}

/** The tempo was kept to rise after so many bars; the settings count choruses. */
function riseByChoruses(
  rise: NonNullable<TakeDetails['rise']>,
  chartText: string,
): Settings['practice']['rise'] {
  const chart = parseChart(chartText);
  const bars = chart.ok ? playedBars(chart.value).length : 0;
  const everyChoruses = rise.everyBars / bars;
  return Number.isInteger(everyChoruses) ? { byBpm: rise.byBpm, everyChoruses } : null;
}
