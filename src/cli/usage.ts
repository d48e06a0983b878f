/** What the command line says about itself. */
import { feelNames } from '../core/chart/feel-names.ts';
import { METERS } from '../core/chart/chart.ts';
import { languageCodes } from '../core/words/languages.ts';
import { HOUSE_AIMS } from '../core/grade/aims/aim-choices.ts';
import { INSTRUMENTS } from '../core/music/instruments.ts';
import type { Words } from '../core/words/words.ts';
import { optionsOf } from './args.ts';
import { BAND_TEMPO, PALETTES, RANGES } from './options.ts';
import type { Command } from './orders.ts';

const COLUMNS = 80;
const INDENT = 23;

/** Words of a text in lines of at most `columns`. */
function wrap(text: string, columns: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(' ')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= columns)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}

/** An option and what it does, in two columns. */
function entry([option, text]: readonly [string, string]): string {
  const name = `  ${option}`;
  // A name that fills its column stands in a line of its own.
  const fits = name.length < INDENT;
  const lines = wrap(text, COLUMNS - INDENT).map(
    (line, k) => (k === 0 && fits ? name : '').padEnd(INDENT) + line,
  );
  return [...(fits ? [] : [name]), ...lines].join('\n');
}

interface Section {
  readonly title: string;
  /** Each an option, as it is written, and what it does. */
  readonly entries: readonly (readonly [string, string])[];
  /** On whose pages it may stand. */
  readonly of: readonly Command[];
}

const written = ({ title, entries }: Section): string => [title, ...entries.map(entry)].join('\n');

/** Of a section what belongs on the page of a command; null where nothing does. */
function sectionOf(section: Section, command: Command | null): Section | null {
  if (command === null) return section;
  if (!section.of.includes(command)) return null;
  const known = optionsOf(command).map((name) => `--${name}`);
  const entries = section.entries.filter(([option]) => {
    const [first] = option.match(/--[a-z-]+/) ?? [];
    if (first === undefined) return command === 'grade' && option === SEVERAL_FILES;
    // For a class it is one of three kinds of table, which stand together.
    return known.includes(first) && !(command === 'class' && option === '--json');
  });
  return entries.length === 0 ? null : { ...section, entries };
}

const SEVERAL_FILES = 'FILE...';

/** What is written behind the commands that share a line of the usage. */
const BEHIND: Partial<Record<Command, string>> = { forms: '[--json]', schema: '[sheet|take|answer]' };

/** The lines of the usage that are about a command, the word before the first of them kept. */
function usageOf(usage: string, command: Command | null): string {
  if (command === null) return usage;
  const heading = /^\S+ /.exec(usage)?.[0] ?? '';
  const lines = usage.split('\n').map((line) => line.slice(heading.length));
  const behind = BEHIND[command];
  const told =
    behind === undefined
      ? lines.filter((line) => line.startsWith(`landfall ${command} `))
      : [`landfall ${command} ${behind}`];
  return told.map((line, k) => (k === 0 ? heading : ' '.repeat(heading.length)) + line).join('\n');
}

const ids = (things: readonly { readonly id: string }[]) => things.map(({ id }) => id);

/** Everything that can be given, in the order of the page. */
function sectionsIn({ cli: { help } }: Words, command: Command | null): readonly Section[] {
  const { options, sections } = help;
  return [
    {
      title: sections.chords,
      entries: [
        ['--chart TEXT|FILE', options.chart],
        ['--tempo BPM', options.tempo({ range: help.range(command === 'band' ? BAND_TEMPO : RANGES.tempo) })],
        ['--first-beat SECONDS', options.firstBeat],
        ['--beats BEATS.csv', options.beats],
        ['--meter METER', options.meter({ meters: METERS.map(({ written }) => written) })],
        ['--swing SHARE', options.swing({ range: help.range(RANGES.swing) })],
        ['--rise BPM[/BARS]', options.rise],
        ['--trade BARS', options.trade],
        ['--feel NAME', options.feel],
        ['--transpose STEPS', options.transpose],
        ['--key KEY', options.key],
      ],
      of: ['grade', 'band', 'class'],
    },
    {
      title: sections.grading,
      entries: [
        ['--reference HZ|auto', options.reference({ range: help.range(RANGES.reference) })],
        ['--anticipation BEATS', options.anticipation({ range: help.range(RANGES.anticipation) })],
        ['--tolerance MS', options.tolerance({ range: help.range(RANGES.tolerance) })],
        ['--palette NAME', options.palette({ names: PALETTES })],
        ['--aim NAME|FILE', options.aim({ ids: ids(HOUSE_AIMS) })],
        ['--instrument NAME', options.instrument({ ids: ids(INSTRUMENTS) })],
        ['--capo FRET', options.capo],
        ['--backing FILE', options.backing],
        ['--part NUMBER', options.part],
      ],
      of: ['grade', 'band'],
    },
    {
      title: sections.output,
      entries: [
        ['--json', options.json],
        ['--explain BAR', options.explain],
        ['--chorus N', options.chorus],
        ['--full', options.full],
        ['--language CODE', options.language({ codes: languageCodes })],
      ],
      of: ['grade', 'band', 'class'],
    },
    {
      title: sections.several,
      entries: [
        [SEVERAL_FILES, options.moreFiles],
        ['--lines', options.lines],
        ['landfall class', options.classDoes],
        ['--sheet SHEET', options.sheet],
        ['--csv, --json, --html', options.classOutput],
        ['--threads N', options.threads],
        ['--anew', options.anew],
      ],
      of: ['grade', 'class'],
    },
    {
      title: sections.band,
      entries: [
        ['--out FILE', options.out],
        ['--feel NAME', options.bandFeel({ names: feelNames })],
        ['--swing SHARE', options.bandSwing],
        ['--rise, --trade', options.bandTurns],
        ['--drone root|fifth', options.drone],
        ['--choruses N', options.choruses({ range: help.range(RANGES.choruses) })],
        ['--seed N', options.seed],
      ],
      of: ['band'],
    },
    {
      title: sections.others,
      entries: [
        ['landfall chords', options.chordsOf],
        ['landfall forms', options.forms],
        ['landfall schema', options.schema],
      ],
      of: [],
    },
  ];
}

/** What a command does, or takes. */
function aboutCommand({ file, options }: Words['cli']['help'], command: Command | null): string | null {
  switch (command) {
    case null:
    case 'grade':
      return file;
    case 'class':
      return options.classDoes;
    case 'chords':
      return options.chordsOf;
    case 'forms':
      return options.forms;
    case 'schema':
      return options.schema;
    case 'band':
      return null;
  }
}

/** The page of `landfall --help`, or that of one command, with its own options only. */
export function helpPage(words: Words, command: Command | null = null): string {
  const { usage, help } = words.cli;
  const about = aboutCommand(help, command);
  const sections = sectionsIn(words, command).flatMap((one) => sectionOf(one, command) ?? []);
  return [
    ...(command === null ? [help.whatItDoes] : []),
    usageOf(usage, command),
    ...(about === null ? [] : [wrap(about, COLUMNS).join('\n')]),
    ...sections.map(written),
    wrap(help.exit, COLUMNS).join('\n'),
  ].join('\n\n');
}
