/** What the command line says about itself. */
import { AIM_LADDER } from '../core/grading/aims.ts';
import { METERS } from '../core/chart/chart.ts';
import { INSTRUMENTS } from '../core/music/instruments.ts';
import { PALETTES, RANGES } from './options.ts';

/** Shown under the sentence when it was called wrongly. */
export const SHORT_USAGE = `Usage: landfall grade FILE --chart TEXT|FILE --tempo BPM [options]
       landfall grade FILE --beats BEATS.csv [options]
       landfall forms | schema | --help | --version`;

const list = (names: readonly string[], indent: number): string => {
  const lines: string[] = [];
  let line = '';
  for (const name of names) {
    const longer = line === '' ? name : `${line}, ${name}`;
    if (longer.length > 78 - indent) {
      lines.push(`${line},`);
      line = name;
    } else line = longer;
  }
  return [...lines, line].join(`\n${' '.repeat(indent)}`);
};

const range = ({ lowest, highest }: { readonly lowest: number; readonly highest: number }) =>
  `${lowest} to ${highest}`;

export const HELP = `Landfall hears an improvised line and says where it lands on the chords.

${SHORT_USAGE}

FILE is a recording (WAV, FLAC, MP3, Ogg Vorbis) or a list of notes: a table with
the header onset,duration,pitch (seconds, seconds, MIDI number) or a MIDI file.

The chords under it
  --chart TEXT|FILE    the chart: bar lines and chords, "| G7 | C7 | G7 | D7 |", in
                       so many words or as a text file; "form:NAME in KEY" for a
                       built-in form; it goes round until the input ends
  --tempo BPM          beats a minute, ${range(RANGES.tempo)}; the chart's own if it has one
  --first-beat SECONDS when the first downbeat comes, from the start of FILE (0)
  --beats BEATS.csv    instead of a chart: a table with the header time,chord, a row
                       a beat, an empty chord where the last one goes on
  --meter METER        ${list(
    METERS.map(({ written }) => written),
    23,
  )} (4/4)
  --swing SHARE        share of the beat that the first eighth takes, ${range(RANGES.swing)} (0.5)
  --key KEY            the key for the second reading of each note, like Bb or
                       "F# minor"; the chart's own without

How it is graded
  --reference HZ|auto  A4, ${range(RANGES.reference)} Hz, or found from the notes (440)
  --anticipation BEATS how early a note may belong to the next chord, ${range(RANGES.anticipation)};
                       0: the chord at the onset (an eighth note)
  --palette NAME       what counts as colour: ${list(PALETTES, 45)}
  --aim NAME|FILE      measure an aim too, may be given more than once; a file of
                       your own or one of
                       ${list(
                         AIM_LADDER.map(({ id }) => id),
                         23,
                       )}
  --instrument NAME    says where the advised notes lie:
                       ${list(
                         INSTRUMENTS.map(({ id }) => id),
                         23,
                       )}
  --part NUMBER        of a MIDI file with several parts, the one to take

What comes out
  --json               the report as JSON and nothing else; its shape: landfall schema
  --explain BAR        the reasons behind each landing and note of that bar

Other commands
  landfall forms       the built-in forms
  landfall schema      the JSON Schema of the report

It ends with 0 when it graded, 1 when the input can't be graded, 2 when it was
called wrongly.`;
