/** What the command line says about itself. */
import { feelNames } from '../core/chart/feel-names.ts';
import { METERS } from '../core/chart/chart.ts';
import { languageCodes } from '../core/words/languages.ts';
import { HOUSE_AIMS } from '../core/grade/aims/targets.ts';
import { INSTRUMENTS } from '../core/music/instruments.ts';
import type { Words } from '../core/words/words.ts';
import { PALETTES, RANGES } from './options.ts';

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

const section = (title: string, entries: readonly (readonly [string, string])[]) =>
  [title, ...entries.map(entry)].join('\n');

const ids = (things: readonly { readonly id: string }[]) => things.map(({ id }) => id);

/** The page of `landfall --help`. */
export function helpPage({ cli: { usage, help } }: Words): string {
  const { options, sections } = help;
  return [
    help.whatItDoes,
    usage,
    wrap(help.file, COLUMNS).join('\n'),
    section(sections.chords, [
      ['--chart TEXT|FILE', options.chart],
      ['--tempo BPM', options.tempo({ range: help.range(RANGES.tempo) })],
      ['--first-beat SECONDS', options.firstBeat],
      ['--beats BEATS.csv', options.beats],
      ['--meter METER', options.meter({ meters: METERS.map(({ written }) => written) })],
      ['--swing SHARE', options.swing({ range: help.range(RANGES.swing) })],
      ['--rise BPM[/BARS]', options.rise],
      ['--trade BARS', options.trade],
      ['--feel NAME', options.feel],
      ['--transpose STEPS', options.transpose],
      ['--key KEY', options.key],
    ]),
    section(sections.grading, [
      ['--reference HZ|auto', options.reference({ range: help.range(RANGES.reference) })],
      ['--anticipation BEATS', options.anticipation({ range: help.range(RANGES.anticipation) })],
      ['--tolerance MS', options.tolerance({ range: help.range(RANGES.tolerance) })],
      ['--palette NAME', options.palette({ names: PALETTES })],
      ['--aim NAME|FILE', options.aim({ ids: ids(HOUSE_AIMS) })],
      ['--instrument NAME', options.instrument({ ids: ids(INSTRUMENTS) })],
      ['--capo FRET', options.capo],
      ['--backing FILE', options.backing],
      ['--part NUMBER', options.part],
    ]),
    section(sections.output, [
      ['--json', options.json],
      ['--explain BAR', options.explain],
      ['--chorus N', options.chorus],
      ['--full', options.full],
      ['--language CODE', options.language({ codes: languageCodes })],
    ]),
    section(sections.several, [
      ['FILE...', options.moreFiles],
      ['--lines', options.lines],
      ['landfall class', options.classDoes],
      ['--sheet SHEET', options.sheet],
      ['--csv, --json, --html', options.classOutput],
      ['--threads N', options.threads],
      ['--anew', options.anew],
    ]),
    section(sections.band, [
      ['--out FILE', options.out],
      ['--feel NAME', options.bandFeel({ names: feelNames })],
      ['--swing SHARE', options.bandSwing],
      ['--rise, --trade', options.bandTurns],
      ['--drone root|fifth', options.drone],
      ['--choruses N', options.choruses({ range: help.range(RANGES.choruses) })],
      ['--seed N', options.seed],
    ]),
    section(sections.others, [
      ['landfall chords', options.chordsOf],
      ['landfall forms', options.forms],
      ['landfall schema', options.schema],
    ]),
    wrap(help.exit, COLUMNS).join('\n'),
  ].join('\n\n');
}
