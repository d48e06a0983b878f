/** The words that grade a take elsewhere: its exported files at the command line. */
import { parseChart } from '../core/chart/parse-chart.ts';
import { aimOf } from '../core/grade/aims/aim-choices.ts';
import type { Report } from '../core/take/schema.ts';
import { instrumentOf } from '../core/music/instruments.ts';
import { fileNames } from './export-files.ts';
import type { FinishedTake } from './finished-take.ts';
import type { TakeDetails } from './take.ts';

type GradedTake = FinishedTake & { readonly report: Pick<Report, 'source'> };

const quoted = (text: string) => `'${text.replaceAll("'", `'\\''`)}'`;

/** A file as a word; a name that begins with a hyphen would be taken for an option. */
const fileWord = (name: string) => quoted(name.startsWith('-') ? `./${name}` : name);

/** The name under which the line leaves, or the one that the player's file has. */
const lineName = ({ details, content }: FinishedTake): string => {
  if (details.source === 'recording') return details.title;
  const names = fileNames(details);
  return content.kind === 'sound' ? names.sound : names.notes;
};

/** The band's name as it leaves, or that of the file it was opened from; null where nothing was taken out. */
function backingName({ details, content, report }: GradedTake): string | null {
  const backing = content.kind === 'sound' ? content.backing : null;
  // A band that is kept, but was not heard in the sound, need not be taken out of it again.
  if (backing === null || (backing.kind === 'band' && !report.source.backing)) return null;
  return backing.kind === 'band' ? fileNames(details).band : backing.name;
}

/**
 * The words that grade the exported line at the command line. They give this very report, but for two cases:
 * where the band was taken out by a path that a sound check had measured, the command line, which has no sound check,
 * finds the path in the take, and a note here or there comes out otherwise; and under listed beats nothing goes round,
 * so that all bars are one chorus.
 */
export function gradeCommand(take: GradedTake): string {
  const { details } = take;
  const backing = backingName(take);
  const aim = details.aim === undefined ? undefined : aimOf(details.aim)?.id;
  return [
    `npx landfall grade ${fileWord(lineName(take))}`,
    ...(backing === null ? [] : [`--backing ${fileWord(backing)}`]),
    ...(details.backing === undefined ? chartWords(details) : beatsWords(details)),
    `--swing ${details.swing}`,
    `--reference ${details.reference}`,
    ...instrumentWords(details),
    ...(aim === undefined ? [] : [`--aim ${aim}`]),
  ].join(' ');
}

const chartWords = (details: TakeDetails): readonly string[] => {
  const { chartText, bpm, firstBeatSeconds, rise, trade, feel } = details;
  return [
    `--chart ${quoted(chartText)}`,
    `--tempo ${bpm}`,
    `--first-beat ${firstBeatSeconds ?? 0}`,
    ...(rise === undefined ? [] : [`--rise ${rise.byBpm}/${rise.everyBars}`]),
    ...(trade === undefined ? [] : [`--trade ${trade.bars}`]),
    // The feel of the sections that have none of their own.
    ...(/^feel:/m.test(chartText) ? [`--feel ${feel}`] : []),
  ];
};

/** A recording that was played to has no one tempo: its beats leave as a table, each with its chord. */
function beatsWords(details: TakeDetails): readonly string[] {
  const chart = parseChart(details.chartText);
  return [
    `--beats ${quoted(fileNames(details).beats)}`,
    ...(chart.ok ? [`--meter ${chart.value.meter.written}`] : []),
    `--key ${quoted(details.key)}`,
  ];
}

/** As the grading takes it: a capo off the neck, or an instrument that is no longer there, is left out. */
function instrumentWords({ instrument: id, capo = 0 }: TakeDetails): readonly string[] {
  const instrument = id === undefined ? null : instrumentOf(id);
  if (instrument === null) return [];
  const onNeck = instrument.neck !== null && capo > 0 && capo < instrument.neck.frets;
  return [`--instrument ${instrument.id}`, ...(onNeck ? [`--capo ${capo}`] : [])];
}
