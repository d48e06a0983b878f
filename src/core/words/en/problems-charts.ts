/** Problems of charts, forms, lists of beats and scores. */
import { type ChordHint } from '../entries/entry.ts';
import { trimmed, noun, type Mode, type Named } from './phrases.ts';

/** A bar of a chart counted from 1; null for the pickup. */
interface InBar {
  readonly bar: number | null;
}
const barOrPickup = (bar: number | null): string => (bar === null ? 'The pickup' : `Bar ${bar}`);

/** What a player could have meant by a symbol that can't be read. */
function chordHint(hint: ChordHint): string {
  if (hint.kind === 'capital') return `a root is a capital letter: write ${hint.write}`;
  if (hint.kind === 'german') return `chords are written with English note names: write ${hint.write}`;
  if (hint.kind === 'beginning')
    return `only ${hint.readable.trim()} of it can be read: check what follows, as in Am7/G or Bb7(b9)`;
  return 'a chord is a root from A to G and its quality, like C7, F#m7b5, Bbmaj7, Eb6/9 or G7/B';
}

type ChartNumber = 'tempo' | 'swing' | 'pickup';
const CHART_NUMBERS: Readonly<Record<ChartNumber, string>> = {
  tempo: 'beats a minute',
  swing: 'of the beat for its first eighth',
  pickup: 'beats before the first downbeat',
};

export const problemsOfCharts = {
  // ── charts ──
  'chart.tooLong': ({ characters }: { characters: number }) =>
    `The chart is longer than ${characters} characters: shorten it, or grade it in parts.`,
  'chart.noBars': 'The chart has no bars: write chords between bar lines, like | G7 | C7 | G7 | D7 |.',
  'chart.onlyPickup': 'The chart has a pickup and no bar after it: write the bars behind it.',
  'chart.repeatOpen': ({ bar }: InBar) =>
    `${barOrPickup(bar)} opens a repeat that is never closed: write :| behind its last bar.`,
  'chart.signsAtEnd': 'A segno or coda sign at the end has no bar behind it.',
  'chart.endingWithoutRepeat': ({ bar }: { bar: number }) =>
    `Bar ${bar} starts an ending, but no repeat sign :| closes it.`,
  'chart.chorusTooLong': ({ bars }: { bars: number }) =>
    `The chart is longer than ${bars} bars, repeats played out: shorten it.`,
  'chart.chordsInBar': ({ bar, most }: { bar: number | null; most: number }) =>
    `${bar === null ? 'The pickup' : `Bar ${bar}`} has more than ${most} chords and beat marks; nobody can play that: write some of them into more bars.`,
  'chart.tooManyChords': ({ most }: { most: number }) =>
    `The chart has more than ${most} chords: shorten it.`,
  'chart.noBarLines': ({ line }: { line: number }) =>
    `Line ${line} has chords but no bar lines: write them between bar lines, like | C7 | F7 |.`,
  'chart.headingTooLate': ({ line, word }: { line: number; word: string }) =>
    `Line ${line}: ${word} must stand above the first bar; only feel and key may change later.`,
  'chart.headingEmpty': ({ line, word }: { line: number; word: string }) =>
    `Line ${line}: ${word} has no value; write one behind it or delete the line.`,
  'chart.sectionName': ({ line, section }: { line: number; section: string }) =>
    `Line ${line}: “${section}” can’t be the name of a section; write letters and words in brackets, like [A] or [Bridge].`,
  'chart.chordWithoutBarLines': ({ text }: { text: string }) =>
    `${text} has no bar lines around it: write a bar as | ${text} |.`,
  'chart.sectionEmpty': ({ section, feel }: { section: string | null; feel: string | null }) =>
    `Section ${section ?? (feel === null ? 'in another key' : `with the feel ${feel}`)} has no bars: write some behind it or delete its line.`,
  'chart.noHeading': ({ line, text }: { line: number; text: string }) =>
    `Line ${line}: “${text}” is not a heading; write a word, a colon and a value.`,
  'chart.unknownHeading': ({ line, word, known }: { line: number; word: string; known: readonly string[] }) =>
    `Line ${line}: “${word}” is not a heading of a chart; the headings are ${known.join(', ')}.`,
  'chart.barEmpty': ({ bar }: InBar) =>
    `${barOrPickup(bar)} is empty: write % to repeat the bar before, or N.C. for no chord.`,
  'chart.signWithoutBar': ({ line, signs }: { line: number; signs: string }) =>
    `Line ${line}: no bar stands before ${signs}.`,
  'chart.endingWithoutChord': ({ bar }: InBar) =>
    `${barOrPickup(bar)} starts an ending but has no chord in it.`,
  'chart.pickupTooLong': ({ beats, meter }: { beats: number; meter: string }) =>
    `A pickup is shorter than a bar: ${beats} beats don’t fit before ${meter}.`,
  'chart.pickupRepeated': 'The pickup is played once: put repeats and signs behind it.',
  'chart.repeatInRepeat': ({ bar }: InBar) =>
    `${barOrPickup(bar)} opens a repeat inside a repeat: close the first one with :| before it.`,
  'chart.repeatWithoutBar': ({ line }: { line: number }) =>
    `Line ${line}: a repeat closes here with no bar in it.`,
  'chart.repeatTimes': ({ bar, times: count, most }: { bar: number; times: number; most: number }) =>
    `Bar ${bar} repeats x${count}; write how often it sounds in all, x2 to x${most}.`,
  'chart.repeatsNothing': ({ bar }: InBar) =>
    `${barOrPickup(bar)} repeats the bar before with %, but there is none: write its chord.`,
  'chart.markFirst': ({ bar }: InBar) =>
    `${barOrPickup(bar)} starts with a beat mark, but no chord stands before it: write the chord first.`,
  'chart.noBeats': ({ bar, word, symbol }: InBar & { word: string; symbol: string }) =>
    `${barOrPickup(bar)}: ${word} lasts 0 beats; write how many, like ${symbol}:2.`,
  'chart.percentBesideChords': ({ bar }: InBar) =>
    `${barOrPickup(bar)}: % repeats a whole bar and stands alone in it; to hold a chord for a beat write /.`,
  'chart.chord': ({ bar, symbol, hint }: InBar & { symbol: string; hint: ChordHint }) =>
    `${barOrPickup(bar)}: “${symbol}” can’t be read as a chord; ${chordHint(hint)}.`,
  'chart.someBeats': ({ bar }: InBar) =>
    `${barOrPickup(bar)} writes beats behind some of its chords: write them behind all, like C7:3 F7:1, and leave the beat marks out.`,
  'chart.beatSum': ({ bar, written, holds }: InBar & { written: number; holds: number }) =>
    `${barOrPickup(bar)} has ${trimmed(written, 3)} ${noun(written, 'beat')} written, but holds ${trimmed(holds, 3)}: each chord and each / is one beat.`,
  'chart.meter': ({ line, value, known }: { line: number; value: string; known: readonly string[] }) =>
    `Line ${line}: “${value}” is not a meter that can be played; write one of ${known.join(', ')}.`,
  'chart.key': ({ line, value }: { line: number; value: string }) =>
    `Line ${line}: “${value}” is not a key; write a tonic and, for minor, the word: Bb, F# minor.`,
  'chart.number': ({
    line,
    word,
    value,
    least,
    most,
  }: {
    line: number;
    word: ChartNumber;
    value: string;
    least: number;
    most: number;
  }) =>
    `Line ${line}: ${word} “${value}” is out of range; write a number from ${least} to ${most} (${CHART_NUMBERS[word]}).`,
  'chart.endingNumber': ({ bar }: InBar) =>
    `${barOrPickup(bar)}: endings are numbered from 1 up, like [1 or [1-3.`,
  'chart.noCoda': ({ bar }: { bar: number }) =>
    `Bar ${bar} goes to the coda, but there is none: write Coda before its first bar, or name a section [Coda].`,
  'chart.noSegno': ({ bar, jump }: { bar: number; jump: string }) =>
    `Bar ${bar} says ${jump}, but there is no segno: write Segno before the bar it goes back to.`,
  'chart.noFine': ({ bar, jump }: { bar: number; jump: string }) =>
    `Bar ${bar} says ${jump}, but there is no Fine: write Fine behind the bar it ends with.`,
  'chart.noToCoda': ({ bar, jump }: { bar: number; jump: string }) =>
    `Bar ${bar} says ${jump}, but no bar goes there: write To Coda behind the bar that jumps to it.`,
  'form.unknown': ({ form, known }: { form: string; known: readonly string[] }) =>
    `There is no form “${form}”; the forms are ${known.join(', ')}.`,
  'form.key': ({ key, form }: { key: string; form: string }) =>
    `“${key}” is not a key for the ${form}; write its tonic, like Bb or F#.`,
  'form.mode': ({ form, mode, tonic, asked }: { form: string; mode: Mode; tonic: string; asked: Mode }) =>
    `The ${form} is in ${mode}, not ${tonic} ${asked}; leave the mode out or take another form.`,
  'beats.tooFew': ({ rows }: { rows: number }) =>
    `The list of beats has ${rows === 0 ? 'no row' : 'one row'}: at least two beats are needed to tell the tempo.`,
  'beats.noTime': ({ row }: { row: number }) =>
    `Row ${row} of the beats has no time: write seconds, like 2.45.`,
  'beats.order': ({ row, seconds, before }: { row: number; seconds: number; before: number }) =>
    seconds > before
      ? `Row ${row} of the beats, at ${seconds} s, comes less than 10 ms after the row before, at ${before} s: write one row for each beat.`
      : `Row ${row} of the beats, at ${seconds} s, does not come after the row before, at ${before} s: put the beats in order.`,
  'beats.chord': ({ row, symbol, hint }: { row: number; symbol: string; hint: ChordHint }) =>
    `Row ${row} of the beats: “${symbol}” can’t be read as a chord; ${chordHint(hint)}.`,
  'beats.unit': ({ name, unit }: Named & { unit: 'milliseconds' | 'samples' }) =>
    `${name} has its times in ${unit}, it seems, and must have them in seconds: divide them by ${unit === 'samples' ? 'the sample rate' : '1000'}.`,
  'beats.cell': ({ name, line, cell }: Named & { line: number; cell: string }) =>
    `${name}, line ${line}: the time "${cell}" is not a number of seconds; correct that line.`,
  'beats.fileOrder': ({
    name,
    line,
    seconds,
    before,
  }: Named & { line: number; seconds: number; before: number }) =>
    `${name}, line ${line}: the beat at ${seconds} s does not come after the one before it, at ${before} s; put the beats in order, one row each.`,
  'beats.fileTooFew': ({ name, beats }: Named & { beats: number }) =>
    `${name} has ${beats === 0 ? 'no beats' : 'only one beat'}; it needs two or more.`,
  'score.notXml': ({ name }: Named) => `${name} is not well-formed XML; save it again as MusicXML.`,
  'score.timewise': ({ name }: Named) =>
    `${name} is written bar by bar (score-timewise); save it as a partwise score.`,
  'score.otherXml': ({ name }: Named) => `${name} is XML, but not a MusicXML score.`,
  'score.overfull': ({ name }: Named) =>
    `${name} has more elements than any score needs; export only the part with the chord symbols.`,
  'score.chordsInBar': ({ name, bar, most }: Named & { bar: string; most: number }) =>
    `${name}: bar ${bar} has more than ${most} chord symbols; nobody can play that: write some of them into more bars.`,
  'score.endingNumber': ({ name, ending }: Named & { ending: number }) =>
    `${name} has an ending for time ${ending}; endings are numbered 1 to 9 here: number them anew, or write the repeat out.`,
  'score.noChords': ({ name }: Named) => `${name} has no chord symbols in it (no harmony elements).`,
  'score.meter': ({ name, bar, meter }: Named & { bar: string; meter: string }) =>
    `${name}: bar ${bar} is in ${meter}, a meter that a chart can’t have here.`,
  'score.noMeter': ({ name, bar }: Named & { bar: string }) =>
    `${name}: bar ${bar} has no meter (senza misura), and a chart has one: write a time signature there, such as 4/4.`,
  'score.meterChanges': ({ name, bar, meter }: Named & { bar: string; meter: string }) =>
    `${name}: the meter changes to ${meter} in bar ${bar}; a chart has one meter: split the score there.`,
  'chartFile.tooLong': ({ name }: Named) => `${name} is too long for a chart.`,
  'chartFile.unreadable': ({ name, cause }: Named & { cause: string }) =>
    `${name} can’t be read as a chart: ${cause}`,
  'chartFile.noScore': ({ name }: Named) => `${name} is a zip archive, but not a compressed MusicXML score.`,
  'chartFile.damagedArchive': ({ name }: Named) =>
    `${name} is a damaged archive; save the score again as MusicXML.`,
};
