/** What the command line says about itself. */
import { feelNames } from '../core/chart/feel-names.ts';
import { METERS } from '../core/chart/chart.ts';
import { languageCodes } from '../core/words/languages.ts';
import { HOUSE_AIMS } from '../core/grade/aims/targets.ts';
import { INSTRUMENTS } from '../core/music/instruments.ts';
import { PALETTES, RANGES } from './options.ts';

/** Shown under the sentence when it was called wrongly. */
export const SHORT_USAGE = `Usage: landfall grade FILE --chart TEXT|FILE --tempo BPM [options]
       landfall grade FILE --beats BEATS.csv [options]
       landfall band --chart TEXT|FILE --tempo BPM --out band.wav|band.mid
       landfall forms | schema | --help | --version`;

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
const entry = ([option, text]: readonly [string, string]) =>
  wrap(text, COLUMNS - INDENT)
    .map((line, k) => (k === 0 ? `  ${option}` : '').padEnd(INDENT) + line)
    .join('\n');

const section = (title: string, entries: readonly (readonly [string, string])[]) =>
  [title, ...entries.map(entry)].join('\n');

const range = ({ lowest, highest }: { readonly lowest: number; readonly highest: number }) =>
  `${lowest} to ${highest}`;
const ids = (things: readonly { readonly id: string }[]) => things.map(({ id }) => id).join(', ');

export const HELP = [
  'Landfall hears an improvised line and says where it lands on the chords.',
  SHORT_USAGE,
  wrap(
    'FILE is a recording (WAV, FLAC, MP3, Ogg Vorbis) or a list of notes: a table with the header ' +
      'onset,duration,pitch (seconds, seconds, MIDI number) or a MIDI file.',
    COLUMNS,
  ).join('\n'),
  section('The chords under it', [
    [
      '--chart TEXT|FILE',
      'The chart: bar lines and chords, "| G7 | C7 | G7 | D7 |", in so many words or as a file (text, MusicXML, MIDI with chord markers); ' +
        '"form:NAME in KEY" for a built-in form. It goes round until the input ends.',
    ],
    ['--tempo BPM', `Beats a minute, ${range(RANGES.tempo)}; the chart's own if it has one.`],
    ['--first-beat SECONDS', 'When the first downbeat comes, from the start of FILE. 0 unless given.'],
    [
      '--beats BEATS.csv',
      'Instead of a chart: a table with the header time,chord, a row a beat, an empty chord where the last goes on.',
    ],
    ['--meter METER', `${METERS.map(({ written }) => written).join(', ')}. 4/4 unless given.`],
    [
      '--swing SHARE',
      `Share of the beat that the first eighth takes, ${range(RANGES.swing)}. 0.5 unless given.`,
    ],
    ['--rise BPM[/BARS]', 'The tempo rises by so much after each chorus, or after so many bars, up to 280.'],
    [
      '--trade BARS',
      "Player and band take turns of so many bars, the player first: only the player's are graded.",
    ],
    [
      '--feel NAME',
      'How it is played, where the chart does not say: a section with another feel swings by that.',
    ],
    ['--transpose STEPS', 'The chart so many half steps up, or down with a minus.'],
    [
      '--key KEY',
      'For the second reading of each note, like Bb or "F# minor"; the chart\'s own unless given.',
    ],
  ]),
  section('How it is graded', [
    ['--reference HZ|auto', `A4, ${range(RANGES.reference)} Hz, or found from the notes. 440 unless given.`],
    [
      '--anticipation BEATS',
      `How early a note may belong to the next chord, ${range(RANGES.anticipation)}; 0 is the chord at the onset. ` +
        'An eighth note unless given.',
    ],
    [
      '--tolerance MS',
      `How inexact a note may be at a change, ${range(RANGES.tolerance)} ms; 50 unless given. --anticipation 0 switches it off.`,
    ],
    ['--palette NAME', `What counts as colour: ${PALETTES.join(', ')}.`],
    [
      '--aim NAME|FILE',
      `Measure this aim first; more than one may be given. A file of your own, or ${ids(HOUSE_AIMS)}.`,
    ],
    ['--instrument NAME', `Say where the advised notes lie: ${ids(INSTRUMENTS)}.`],
    ['--capo FRET', 'The fret its capo lies on.'],
    [
      '--backing FILE',
      'A recording of the backing that the microphone heard too: it is found in the take, up to 10 seconds to either ' +
        'side, and taken out before listening.',
    ],
    ['--part NUMBER', 'Of a MIDI file with several parts, the one to take.'],
  ]),
  section('What comes out', [
    ['--json', 'The report as JSON and nothing else; landfall schema prints its shape.'],
    ['--language CODE', `The language of the page: ${languageCodes.join(' or ')}. en unless given.`],
    ['--full', 'Every figure on the page; without it the page is for one screen.'],
    ['--explain BAR', 'The reasons behind each landing and note of that bar.'],
    ['--chorus N', 'Of --explain: that bar of this chorus alone, counted from 1.'],
  ]),
  section('The band as a file', [
    [
      '--out FILE',
      'landfall band: where to write: a recording (.wav), a MIDI file (.mid), or the chart as a score (.musicxml).',
    ],
    ['--feel NAME', `${feelNames.join(', ')}; the chart's own unless given, else shuffle.`],
    ['--swing SHARE', "As above; the feel's own at this tempo unless given."],
    ['--rise, --trade', 'As above; in its turns the band plays a line on the --aim.'],
    ['--drone root|fifth', "The key's root, or root and fifth, held in place of bass and chords."],
    [
      '--choruses N',
      `How often the chart goes round, ${range(RANGES.choruses)}. 3 unless given; an ending follows.`,
    ],
    ['--seed N', 'The same number plays the same notes. 1 unless given.'],
  ]),
  section('Other commands', [
    ['landfall forms', 'The built-in forms.'],
    ['landfall schema', 'The JSON Schema of the report.'],
  ]),
  wrap(
    "It ends with 0 when it graded, 1 when the input can't be graded, 2 when it was called wrongly.",
    COLUMNS,
  ).join('\n'),
].join('\n\n');
