/** Problems of the command line and of the disk that it reads and writes. */
import { joinWith } from '../entries/entry.ts';
import { several } from './grammar.ts';
import { type Named, noun } from './phrases.ts';

/** A number behind an option of the command line. */
interface OptionRange {
  readonly option: string;
  readonly lowest: number;
  readonly highest: number;
  readonly unit: keyof typeof OPTION_UNITS;
  readonly given: string;
}
/** Each with the blank before it. */
const OPTION_UNITS = {
  bpm: ' beats a minute',
  beat: ' of the beat',
  bars: ' bars',
  seconds: ' seconds',
  hz: ' Hz',
  beats: ' beats',
  choruses: ' choruses',
  halfSteps: ' half steps',
  ms: ' ms',
  none: '',
};

/** Why a file can't be read or written. */
type DiskReason =
  | 'missing'
  | 'notAllowed'
  | 'folder'
  | 'tooManyOpen'
  | 'disk'
  | 'nameTooLong'
  | 'full'
  | 'readOnly'
  | 'inUse'
  | 'linkLoop'
  | 'oddName'
  | 'nothingThere'
  | 'other';
function diskReason(reason: DiskReason, system: string): string {
  const told: Readonly<Record<DiskReason, string>> = {
    missing: 'there is no such file',
    notAllowed: 'you are not allowed to',
    folder: 'it is a folder; name a file in it',
    tooManyOpen: 'too many files are open',
    disk: 'the disk failed',
    nameTooLong: 'no file can have so long a name',
    full: 'the disk is full',
    readOnly: 'nothing can be written to that disk',
    inUse: 'another program is using it',
    oddName: 'its name holds signs that are no text in UTF-8; give it another name',
    linkLoop: 'it is a link that leads back to itself',
    nothingThere: 'nothing is connected there',
    other: `the system refuses it (its reason is ${system}); try another folder`,
  };
  return told[reason];
}

export const problemsOfCommandLine = {
  // ── command line ──
  'cli.language': ({ given, known }: { given: string; known: readonly string[] }) =>
    `--language must be ${joinWith(known, 'or')}, not "${given}".`,
  'cli.noCommand': 'No command is given.',
  'cli.unknownCommand': ({ command }: { command: string }) => `There is no command "${command}".`,
  'cli.noFileWanted': ({ command }: { command: string }) => `landfall ${command} takes no file.`,
  'cli.noFile': 'No file is given: name the file to grade.',
  'cli.explainsOneFile': '--explain is for one file: name a single one.',
  'cli.backingOfOneFile': '--backing is for one file: grade each with its own backing.',
  'cli.noTakes': ({ folders }: { folders: readonly string[] }) =>
    `There is no recording and no list of notes in ${joinWith(folders, 'and')}.`,
  'cli.tooManyTakes': ({ found, most }: { found: number; most: number }) =>
    `There are ${found} files, and ${most} are the most in one call: name their folders one by one.`,
  'cli.idleForChords': ({ option }: { option: string }) => `--${option} has no meaning for landfall chords.`,
  'cli.idleWithFound': ({ option }: { option: string }) =>
    `--${option} needs a chart: name one with --chart, or leave --${option} out and the chords of the backing are taken.`,
  'cli.chordsUnsure': ({ name, unsure, bars }: Named & { unsure: number; bars: number }) =>
    `The chords of ${name} are not sure enough to grade by: ${unsure} of ${several(bars, 'bar')} ${unsure === 1 ? 'is' : 'are'} unsure. Look at them with landfall chords, and name the chart with --chart and --tempo.`,
  'cli.backingUnplaced': ({ name }: Named) =>
    `${name} is not heard in the take, so nothing tells where its chords lie: name the chart with --chart and --tempo, and its first downbeat with --first-beat.`,
  'cli.noBand': ({ name }: Named) =>
    `No band with a steady beat is heard in ${name}, so no chords are found in it: name them with --chart and --tempo, or with --beats.`,
  'cli.chordsFile': 'No recording is given: name the file whose chords are wanted.',
  'cli.chordsOneFile': ({ word }: { word: string }) =>
    `landfall chords takes one recording; "${word}" is one too many.`,
  'cli.idleForClass': ({ option }: { option: string }) =>
    `--${option} has no meaning for landfall class: the sheet says how to grade.`,
  'cli.classFolder': 'No folder is given: name the folder with the takes.',
  'cli.classSheet': 'No sheet is given: name the lesson sheet with --sheet.',
  'cli.classOnly': ({ option }: { option: string }) => `--${option} is for landfall class.`,
  'cli.oneOutput': 'Give one of --csv, --json and --html.',
  'cli.noSuchSchema': ({ asked, known }: { asked: string; known: readonly string[] }) =>
    `There is no schema "${asked}": landfall schema prints that of ${joinWith(known, 'or')}.`,
  'cli.jsonOrExplain': 'Give --json or --explain, not both.',
  'cli.chorusOfNoBar': '--chorus chooses a chorus of the bar that is explained: give --explain BAR with it.',
  'cli.chartOrBeats': 'Give --chart or --beats, not both.',
  'cli.idleWithBeats': ({ option }: { option: string }) =>
    `--${option} has no meaning with --beats: the list says when each beat comes.`,
  'cli.noChords': 'No chords are given: name them with --chart and --tempo, or with --beats.',
  'cli.idleForTakeFile': ({ option }: { option: string }) =>
    `--${option} has no meaning for a take file: its chart and its settings are in it.`,
  'cli.takeFileHasChords': ({ name }: Named) =>
    `${name} is a take file with chords of its own: grade it without --chart and --beats.`,
  'cli.noTempo': 'The chart has no tempo of its own; give --tempo.',
  'cli.capoWithoutNeck': '--capo needs an --instrument with a neck.',
  'cli.capoFret': ({ most, fret }: { most: number; fret: number }) =>
    `--capo must be a fret from 1 to ${most}, not ${fret}.`,
  'cli.idleForBand': ({ option }: { option: string }) => `--${option} has no meaning for landfall band.`,
  'cli.bandTakesNoFile': ({ word }: { word: string }) =>
    `landfall band takes no file, so "${word}" has no meaning; a chart must be in quotes.`,
  'cli.bandChart': 'No chart is given: name it with --chart.',
  'cli.bandOut': 'No file to write is given: name it with --out band.wav or --out band.mid.',
  'cli.bandOutKind': ({ file }: { file: string }) =>
    `--out must end in .wav, .mid or .musicxml, not "${file}".`,
  'cli.bandOutIsChart': ({ file }: { file: string }) =>
    `${file} is the chart itself and would be overwritten: give --out another name.`,
  'cli.bandOnly': ({ option }: { option: string }) => `--${option} is for landfall band.`,
  'cli.bandTempo': ({ lowest, highest, bpm }: { lowest: number; highest: number; bpm: number }) =>
    `The band plays ${lowest} to ${highest} beats a minute, not ${bpm}.`,
  'cli.wavTooLong': ({ file }: { file: string }) =>
    `${file} would be longer than a WAV file can be; ask for fewer choruses.`,
  'cli.bandTooLong': ({ file, hours }: { file: string; hours: number }) =>
    `${file} would last longer than ${hours} hours; ask for fewer choruses.`,
  'cli.unknownOption': ({ option }: { option: string }) => `There is no option ${option}.`,
  'cli.takesNoValue': ({ option }: { option: string }) => `--${option} takes no value.`,
  'cli.valueMissing': ({ option }: { option: string }) => `--${option} needs a value behind it.`,
  'cli.givenTwice': ({ option }: { option: string }) => `--${option} is given twice.`,
  'cli.number': ({ option, lowest, highest, unit, auto, given }: OptionRange & { auto: boolean }) =>
    `--${option} must be a number from ${lowest} to ${highest}${OPTION_UNITS[unit]}${auto ? ', or auto' : ''}, not "${given}".`,
  'cli.wholeNumber': ({ option, lowest, highest, given }: OptionRange) =>
    `--${option} must be a whole number from ${lowest} to ${highest}, not "${given}".`,
  'cli.fromOneUp': ({ option, given }: { option: string; given: string }) =>
    `--${option} must be a number from 1 up, not "${given}".`,
  'cli.rise': ({ most, given }: { most: number; given: string }) =>
    `--rise must be up to ${most} beats a minute, with a number of bars behind a slash if the tempo does not rise after each chorus, like 4/24; not "${given}".`,
  'cli.oneOf': ({ option, choices, given }: { option: string; choices: readonly string[]; given: string }) =>
    `--${option} must be one of ${choices.join(', ')}, not "${given}".`,
  'cli.key': ({ given }: { given: string }) => `--key must be a key like Bb or "F# minor", not "${given}".`,
  'cli.instrument': ({ given }: { given: string }) =>
    `--instrument must be one that landfall --help lists, not "${given}".`,
  'cli.unknownAim': ({ given }: { given: string }) =>
    `"${given}" is neither a file nor a built-in aim; landfall --help lists the aims.`,
  'cli.aimNotJson': ({ name }: Named) =>
    `${name} is not JSON, in which an aim is written; the page src/pages/aims.md has an example.`,
  'cli.inFile': ({ name, cause }: Named & { cause: string }) => `${name}: ${cause}`,
  'cli.noSuchBar': ({ bars, bar }: { bars: number; bar: number }) =>
    `The form has ${bars} ${noun(bars, 'bar')}, so there is no bar ${bar} to explain.`,
  'cli.neitherFileNorChart': ({ given }: { given: string }) =>
    `"${given}" is neither a file nor a chart; write bars like "| G7 | C7 |", or name a form like "form:minor blues in A" (landfall forms lists them).`,
  'cli.fault': ({ reason }: { reason: string }) =>
    `This is a fault of Landfall, not of your input (${reason}); please report it.`,
  'disk.read': ({ name, reason, system }: Named & { reason: DiskReason; system: string }) =>
    `${name} can’t be read: ${reason === 'missing' ? 'there is no such file' : diskReason(reason, system)}.`,
  'disk.longPipe': ({ name, megabytes }: Named & { megabytes: number }) =>
    `${name} goes on past ${megabytes} MB and is no file; save it as a file and give that.`,
  'disk.slowPipe': ({ name, seconds }: Named & { seconds: number }) =>
    `${name} did not come to its end within ${seconds} s; save it as a file and give that.`,
  'disk.write': ({ name, reason, system }: Named & { reason: DiskReason; system: string }) =>
    `${name} can’t be written: ${reason === 'missing' ? 'there is no such folder' : diskReason(reason, system)}.`,
};
