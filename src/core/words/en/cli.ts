/** What the command line says beside its reports. */
import { joinWith } from '../entries/entry.ts';
import { several, decimal, percent } from './grammar.ts';
import { noun, type Mode } from './phrases.ts';

interface WrittenBandFacts {
  readonly file: string;
  readonly choruses: number;
  readonly bars: number;
  readonly feel: string;
  readonly bpm: number;
  readonly seed: number;
}

export const cli = {
  /** What `landfall chords` found in a recording. */
  chords: {
    found: ({
      bars,
      choruses,
      bpm,
      firstBeatSeconds,
    }: {
      bars: number;
      choruses: number;
      bpm: number;
      firstBeatSeconds: number;
    }) =>
      `${several(bars, 'bar')}, ${several(choruses, 'chorus', 'choruses')}, ${bpm} beats a minute, first downbeat at ${decimal(firstBeatSeconds, 2)} s.`,
    form: ({ name, key, alike }: { name: string; key: string; alike: number }) =>
      `${alike > 0.995 ? 'This is' : `This is much like (${percent(alike)})`} the form "${name} in ${key}".`,
    allSure: 'Every bar is sure.',
    notSure: 'Not sure:',
    unsure: ({
      bar,
      sure,
      chords,
      others,
    }: {
      bar: number;
      sure: number;
      chords: readonly string[];
      others: readonly string[];
    }) =>
      `  bar ${bar}: ${chords.join(' ')} (${percent(sure)})` +
      (others.length === 0 ? '' : `, or ${joinWith(others, 'or')}`),
  },
  graded: ({ files, of, failed }: { files: number; of: number; failed: number }) =>
    `${files} of ${of} graded${failed === 0 ? '' : `, ${failed} could not be`}`,
  notGraded: ({ files }: { files: number }) => `${several(files, 'file')} could not be graded:`,
  ofFile: ({ file, says }: { file: string; says: string }) => `${file}: ${says}`,
  listening: ({ time, share }: { time: string; share: number | null }) =>
    `Listening: ${time}${share === null ? '' : `, ${Math.floor(100 * share)} %`}`,
  writtenBand: ({ file, choruses, bars, feel, bpm, seed }: WrittenBandFacts) =>
    `${file}: ${choruses === 1 ? 'one chorus' : `${choruses} choruses`} of ${bars} ${noun(bars, 'bar')}, ${feel}, ${bpm} bpm, seed ${seed}.`,
  writtenScore: ({ file, bars }: { file: string; bars: number }) =>
    `${file}: ${bars} ${noun(bars, 'bar')} of chords.`,
  formLength: ({ bars, mode }: { bars: number; mode: Mode }) => `${bars} ${noun(bars, 'bar')}, ${mode}`,
  /** What can't be read or written, where it is not a file. */
  input: 'The input',
  output: 'Standard output',
  formHint: 'Take one with --chart "form:NAME in KEY", like --chart "form:minor blues in A".',
  /** Printed below the problem when the command was wrong. */
  usage: `Usage: landfall grade FILE... --chart TEXT|FILE --tempo BPM [options]
       landfall grade FILE --beats BEATS.csv [options]
       landfall class FOLDER... --sheet SHEET [options]
       landfall chords RECORDING [--json]
       landfall band --chart TEXT|FILE --tempo BPM --out band.wav|band.mid
       landfall forms | schema | --help | --version`,
  help: {
    whatItDoes: 'Landfall hears an improvised line and says where it lands on the chords.',
    file: 'FILE is a recording (WAV, FLAC, MP3, Ogg Vorbis) or a list of notes: a table with the header onset,duration,pitch (seconds, seconds, MIDI number) or a MIDI file. A take that the app has saved (.landfall) holds its chart and tempo, and needs no --chart.',
    range: ({ lowest, highest }: { lowest: number; highest: number }) => `${lowest} to ${highest}`,
    exit: 'The exit code is 0 when the take was graded, 1 when the input can’t be graded, 2 when the command was wrong.',
    sections: {
      chords: 'The chords under the line',
      grading: 'How it is graded',
      output: 'What comes out',
      band: 'The band as a file',
      several: 'Several takes, and a class',
      others: 'Other commands',
    },
    /** What each option does. */
    options: {
      chart:
        'The chart: bar lines and chords, "| G7 | C7 | G7 | D7 |", as text or as the name of a file (text, MusicXML, MIDI with chord markers); "form:NAME in KEY" for a built-in form. It repeats until the input ends.',
      tempo: ({ range }: { range: string }) => `Beats a minute, ${range}; the chart’s own if it has one.`,
      firstBeat: 'When the first downbeat comes, from the start of FILE. 0 unless given.',
      beats:
        'Instead of a chart: a table with the header time,chord and a row for each beat; an empty chord continues the last one.',
      meter: ({ meters }: { meters: readonly string[] }) => `${meters.join(', ')}. 4/4 unless given.`,
      swing: ({ range }: { range: string }) =>
        `Share of the beat that the first eighth takes, ${range}. 0.5 unless given.`,
      rise: 'The tempo rises by BPM after each chorus, or after so many BARS, up to 280.',
      transpose: 'Moves the chart up by so many half steps, or down with a minus.',
      trade:
        'Player and band take turns of so many bars, the player first: only the player’s turns are graded.',
      feel: 'The feel where the chart names none; sections with a feel of their own keep it.',
      key: 'The key of the line, like Bb or "F# minor", for the degree of each note in the key; the chart’s own unless given.',
      reference: ({ range }: { range: string }) =>
        `A4, ${range} Hz, or found from the notes. 440 unless given.`,
      anticipation: ({ range }: { range: string }) =>
        `How early a note may start and still belong to the next chord, ${range}; with 0 the chord at the onset counts. An eighth note unless given.`,
      tolerance: ({ range }: { range: string }) =>
        `How inexact the time of a note may be at a change, ${range} ms; 50 unless given. --anticipation 0 switches it off.`,
      full: 'Prints every figure; without it the page fits one screen.',
      chorus: 'With --explain: explains that bar of this chorus only, counted from 1.',
      palette: ({ names }: { names: readonly string[] }) =>
        `The scales beside the chords; their tones count as scale tones: ${names.join(', ')}.`,
      aim: ({ ids }: { ids: readonly string[] }) =>
        `Measures this aim first; more than one may be given. A file of your own, or ${ids.join(', ')}.`,
      instrument: ({ ids }: { ids: readonly string[] }) =>
        `Says where the advised notes lie: ${ids.join(', ')}.`,
      capo: 'The fret of the capo.',
      backing:
        'A recording of the backing that the microphone heard too: it is found in the take, up to 10 seconds earlier or later, and taken out before listening.',
      part: 'The part to take from a MIDI file with several parts.',
      json: 'Prints the report as JSON and nothing else; landfall schema prints its schema.',
      explain: 'Prints the reasons behind each landing and note of that bar.',
      lines:
        'A line of JSON for each file, as JSON Lines; --json does the same where several files are given.',
      moreFiles:
        'landfall grade takes several files and folders: they are graded over all cores, a page each.',
      classDoes:
        'Grades the takes of a class by one lesson sheet; the table starts with who needs attention.',
      sheet: 'landfall class: the lesson sheet, a JSON file; landfall schema sheet prints its schema.',
      classOutput: 'landfall class: the table as CSV, as lines of JSON, or as a page that prints.',
      threads: 'Files graded at the same time; one a core unless given.',
      anew: 'Grades again what was graded before; without it a batch that was stopped goes on.',
      language: ({ codes }: { codes: readonly string[] }) =>
        `The language of the page: ${joinWith(codes, 'or')}. en unless given.`,
      out: 'landfall band: where to write: a recording (.wav), a MIDI file (.mid), or the chart as a score (.musicxml).',
      bandFeel: ({ names }: { names: readonly string[] }) =>
        `${names.join(', ')}; the chart’s own unless given, else shuffle.`,
      bandSwing: 'As above; the usual one of the feel at this tempo unless given.',
      bandTurns: 'As above; when it is the band’s turn, it plays a line with the --aim.',
      drone: 'The key’s root, or root and fifth, held in place of bass and chords.',
      choruses: ({ range }: { range: string }) =>
        `How often the chart is played, ${range}. 3 unless given; an ending follows.`,
      seed: 'The same number plays the same notes. 1 unless given.',
      forms: 'The built-in forms.',
      chordsOf: 'The chords of a recording: downbeat, meter, form and chords, and how sure each bar is.',
      schema:
        'The JSON Schema of the report; schema sheet prints that of a lesson sheet, schema answer that of a teacher’s answer, schema take that of a take file.',
    },
  },
};
