/**
 * Everything that Landfall says, in English. The other languages have the same entries, and the compiler holds them
 * to it. An entry is a text, or a function of one object of plain values that gives a text. How to add one stands in
 * the folder's README.
 */
import {
  type ChordHint,
  type ForeignFile,
  type FoundValue,
  type OggCodec,
  type WantedValue,
  isArchive,
  isConvertible,
  chordRootAscii,
  joinWith,
  noteAscii,
  type NoteName,
  withoutMinusZero,
} from './entry.ts';

type VerdictCode = 'above chance' | 'at chance' | 'below chance' | 'too short to tell';

/** Landings on the tones that are asked about: thirds, or guide tones where no chord of the chart has a third. */
interface Landed {
  readonly hits: number;
  readonly of: number;
  readonly tones: 'thirds' | 'guideTones';
  /** What luck gives; null where it is not known. */
  readonly expected: number | null;
}

/** Shares of notes on chord tones as the chart is, and as it would be. */
interface Fits {
  readonly shareHere: number;
  readonly shareThere: number;
}

interface AimEvents {
  readonly events:
    'landings' | 'phrase ends' | 'strong beats' | 'notes' | 'flat thirds' | 'changes' | 'bars' | 'choruses';
  /** Degrees of the key; empty where every chord counts. */
  readonly over: readonly string[];
}

interface AdviceFacts {
  /** "Bars 3 and 7" */
  readonly bars: string;
  readonly chord: string;
  readonly played: string;
  readonly playedDegree: string;
  /** The note that the step starts from. */
  readonly from: string;
  /** How often it happened. */
  readonly count: number;
  /** Whether the note was held over the change rather than struck for it. */
  readonly held: boolean;
  /** From that note to the one that would have resolved. */
  readonly semitones: number;
  readonly resolve: string;
  readonly resolveDegree: string;
  /** Where that lies, or null. */
  readonly where: string | null;
}

interface ArrivalFacts {
  readonly chord: string;
  readonly degree: string;
}

const percent = (share: number): string => `${Math.round(share * 100)} %`;
/** With so many digits. What rounds to nothing has no minus sign. */
const decimal = (value: number, digits: number): string => withoutMinusZero(value, digits).toFixed(digits);
/** Room on a disk: "5.5 MB", "340 MB", "12.3 GB". */
const diskRoom = (megabytes: number): string =>
  megabytes < 1000
    ? `${decimal(megabytes, megabytes < 10 ? 1 : 0)} MB`
    : `${decimal(megabytes / 1000, 1)} GB`;
/** "never", "once", "twice", "5 times" */
const times = (count: number): string => ['never', 'once', 'twice'][count] ?? `${count} times`;
/** A whole number with a true minus sign. */
const signed = (value: number): string => `${value < 0 ? '−' : ''}${Math.abs(value)}`;
const several = (count: number, one: string, more = `${one}s`): string =>
  `${count} ${count === 1 ? one : more}`;
/** With so many digits at most. */
const trimmed = (value: number, digits = 2): string => String(Number(value.toFixed(digits)));
const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
const noun = (count: number, one: string): string => (count === 1 ? one : `${one}s`);
const inBrackets = (items: readonly string[]): string => (items.length === 0 ? '' : ` (${items.join(', ')})`);

const ORDINALS = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
];
const ordinal = (number: number): string => ORDINALS[number - 1] ?? `${number}th`;

const VERDICTS: Readonly<Record<VerdictCode, string>> = {
  'above chance': 'more than luck',
  'at chance': 'no more than luck',
  'below chance': 'less than luck gives',
  'too short to tell': 'too short to tell',
};

/** What luck would give, in events. */
function luck(expected: number | null): string {
  if (expected === null) return 'what luck gives is not known';
  if (expected === 0) return 'luck gives none';
  if (expected < 0.5) return 'luck gives less than one';
  return `luck gives about ${Math.round(expected)}`;
}

const countedLandings = ({ hits, of, tones }: Landed): string =>
  `${hits} of ${several(of, 'landing')} ${hits === 1 || of === 1 ? 'is' : 'are'} on ` +
  (tones === 'thirds' ? 'the third' : 'a guide tone (no chord here has a third)');

/** "one more chorus will tell", "3 more choruses will tell", "a longer take will tell" */
function moreTells(count: number | 'many'): string {
  if (count === 'many') return 'a longer take will tell';
  return `${count === 1 ? 'one more chorus' : `${count} more choruses`} will tell`;
}

/** "half a bar", "2.5 bars" */
function bars(count: number): string {
  const rounded = count < 1 ? Math.round(count * 4) / 4 : Math.round(count * 2) / 2;
  if (rounded <= 0.25) return 'a quarter of a bar';
  if (rounded < 1) return rounded === 0.5 ? 'half a bar' : 'three quarters of a bar';
  return several(rounded, 'bar');
}

/** A p value as it is written: "p < 0.001", "p = 0.03". */
function pValue(tail: number): string {
  if (tail < 0.001) return 'p < 0.001';
  return `p = ${tail < 0.01 ? tail.toFixed(3) : tail.toFixed(2)}`;
}

const AIM_EVENTS: Readonly<Record<AimEvents['events'], readonly [one: string, several: string]>> = {
  landings: ['landing', 'landings'],
  'phrase ends': ['phrase end', 'phrase ends'],
  'strong beats': ['strong beat', 'strong beats'],
  notes: ['note', 'notes'],
  'flat thirds': ['flat third', 'flat thirds'],
  changes: ['change', 'changes'],
  bars: ['bar', 'bars'],
  choruses: ['chorus', 'choruses'],
};

const aimEvents = (events: AimEvents['events'], count: number, over: readonly string[]): string =>
  `${AIM_EVENTS[events][count === 1 ? 0 : 1]}${over.length === 0 ? '' : ` over the ${joinWith(over, 'and')}`}`;

const timesAfter = (count: number): string => (count === 1 ? '' : `, ${times(count)}`);

/** "A half step up lies F#4, its 3 (first string, fret 2)" */
function adviceStep({ semitones, resolve, resolveDegree, where }: AdviceFacts, from?: string): string {
  const step = `A ${Math.abs(semitones) === 1 ? 'half' : 'whole'} step ${semitones > 0 ? 'up' : 'down'}`;
  const start = from === undefined ? '' : ` from ${from}`;
  return `${step}${start} lies ${resolve}, its ${resolveDegree}${where === null ? '' : ` (${where})`}`;
}

/** Against the nearest eighth or a change, in ms; negative is early. A difference under 10 ms can’t be heard. */
function lateness(ms: number): string {
  const rounded = Math.round(Math.abs(ms));
  return rounded < 10 ? 'on time' : `${rounded} ms ${ms < 0 ? 'early' : 'late'}`;
}

function inCents(cents: number): string {
  const rounded = Math.round(cents);
  return rounded === 0 ? 'in tune' : `${rounded < 0 ? '−' : '+'}${Math.abs(rounded)} cents`;
}

/** A file by the name that the player knows. */
interface Named {
  readonly name: string;
}

/** A bar of a chart counted from 1; null for the pickup. */
interface InBar {
  readonly bar: number | null;
}
const barOrPickup = (bar: number | null): string => (bar === null ? 'The pickup' : `Bar ${bar}`);

type Mode = 'major' | 'minor';

/** What a player could have meant by a symbol that can't be read. */
function chordHint(hint: ChordHint): string {
  if (hint.kind === 'capital') return `a root is a capital letter: write ${hint.write}`;
  if (hint.kind === 'beginning')
    return `only ${hint.readable} of it can be read: check what follows, as in Am7/G or Bb7(b9)`;
  return 'a chord is a root from A to G and its quality, like C7, F#m7b5, Bbmaj7, Eb6/9 or G7/B';
}

type ChartNumber = 'tempo' | 'swing' | 'pickup';
const CHART_NUMBERS: Readonly<Record<ChartNumber, string>> = {
  tempo: 'beats a minute',
  swing: 'of the beat for its first eighth',
  pickup: 'beats before the first downbeat',
};

const READABLE_FILES =
  'Landfall reads WAV, MP3, FLAC and Ogg Vorbis audio, MIDI files, and tables with the header onset,duration,pitch';

/** Files that are known and can't be graded. */
const FOREIGN_FILES: Readonly<Record<ForeignFile, string>> = {
  mp4: 'an MP4 or M4A file',
  aiff: 'an AIFF file',
  caf: 'a Core Audio file',
  rifx: 'a big-endian WAV file',
  wma: 'a Windows Media file',
  webm: 'a WebM or Matroska file',
  ape: 'a Monkey’s Audio file',
  wavpack: 'a WavPack file',
  au: 'an AU file',
  aac: 'an AAC stream',
  avi: 'a video (AVI)',
  webp: 'a picture (WebP)',
  png: 'a picture (PNG)',
  jpeg: 'a picture (JPEG)',
  gif: 'a picture (GIF)',
  bmp: 'a picture (BMP)',
  pdf: 'a PDF document',
  zip: 'a zip archive',
  gzip: 'a gzip archive',
  '7z': 'a 7z archive',
  program: 'a program',
};

function foreignAdvice(kind: ForeignFile): string {
  if (isArchive(kind)) return 'unpack it and give a recording';
  return isConvertible(kind) ? 'save it as WAV, FLAC, MP3 or Ogg Vorbis and try again' : 'give a recording';
}

const OGG_CODECS: Readonly<Record<OggCodec, string>> = {
  opus: 'Opus',
  flac: 'FLAC inside Ogg',
  speex: 'Speex',
  theora: 'Theora video',
};

/** What a field of an aim has to look like. */
type AimForm = 'words' | 'id' | 'degree of the key' | 'tone' | 'tones';
const AIM_FORMS: Readonly<Record<AimForm, string>> = {
  words: 'some words',
  id: 'small letters, digits and hyphens',
  'degree of the key': 'a degree like "I", "IV" or "bVII"',
  tone: 'a role like "third", a degree like "b3", or one of the key like "key 3"',
  tones: 'at least one tone',
};

/** What a field of a file has to hold, after "write". */
const WANTED: Readonly<Record<Exclude<WantedValue['kind'], 'one of' | 'at least' | 'at most'>, string>> = {
  text: 'a text',
  number: 'a number',
  integer: 'a whole number',
  boolean: 'true or false',
  list: 'a list',
  object: 'an object with named fields',
  other: 'another value',
};

function wantedWords(wanted: WantedValue): string {
  if (wanted.kind === 'one of') return joinWith(wanted.values, 'or');
  if (wanted.kind === 'at least') return `${wanted.limit} or more`;
  return wanted.kind === 'at most' ? `${wanted.limit} or less` : WANTED[wanted.kind];
}

const FOUND = { nothing: 'nothing', list: 'a list', object: 'an object with named fields' } as const;

const foundWords = (found: FoundValue): string => (found.kind === 'value' ? found.json : FOUND[found.kind]);

const quoted = (texts: readonly string[]): readonly string[] => texts.map((text) => `"${text}"`);

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

interface WrittenBandFacts {
  readonly file: string;
  readonly choruses: number;
  readonly bars: number;
  readonly feel: string;
  readonly bpm: number;
  readonly seed: number;
}

/** A chart that was found in a recording, and how many of its bars are unsure. */
interface FoundChordsFacts {
  readonly bars: number;
  readonly bpm: number;
  readonly unsure: number;
  readonly chart: string;
}

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

export const en = {
  /** The language's own name, as its speakers write it. */
  name: 'English',
  /** Its tag of BCP 47, by which the browser writes dates. */
  tag: 'en',

  numbers: {
    /** With so many digits behind the point. */
    decimal: ({ value, digits }: { value: number; digits: number }) => decimal(value, digits),
    /** A share from 0 to 1. */
    percent: ({ share }: { share: number }) => percent(share),
    /** "a, b and c" */
    and: ({ items }: { items: readonly string[] }) => joinWith(items, 'and'),
    /** "a, b or c" */
    or: ({ items }: { items: readonly string[] }) => joinWith(items, 'or'),
  },

  // The terms of music. Renderings use them through core/words/spelling.ts and hand the result to other entries.
  music: {
    /** A note of a line: "F#4", or "F#" where no octave is meant. Signs are set by the screens. */
    note: (name: NoteName) => noteAscii(name),
    /** The letter and accidental that a chord symbol begins with, or the bass behind its slash. */
    chordRoot: (name: NoteName) => chordRootAscii(name),
    key: ({ tonic, mode }: { tonic: string; mode: 'major' | 'minor' }) =>
      mode === 'minor' ? `${tonic} minor` : `${tonic} major`,
    roles: {
      root: 'root',
      third: 'third',
      fifth: 'fifth',
      seventh: 'seventh',
      extension: 'extension',
      colour: 'scale tone',
      blue: 'blue note',
      outside: 'outside',
    },
  },

  // What a report is told with, on the page of the command line and in the review alike. Names of notes and chords come
  // spelled; a share or an expected number that is null is not told.
  report: {
    headline: {
      noNotes: 'No note was heard over a chord: there is nothing to grade yet.',
      noLandings: 'The chord did not change while you played: there is no landing to judge.',
      judged: ({
        verdict,
        moreChoruses,
        ...counted
      }: Landed & { verdict: VerdictCode; moreChoruses: number | 'many' | null }) =>
        `${countedLandings(counted)}; ${luck(counted.expected)}: ${VERDICTS[verdict]}.` +
        `${moreChoruses === null ? '' : ` ${capital(moreTells(moreChoruses))}.`}`,
      /** The figures behind the sentence. */
      numbers: ({ low, high, tail }: { low: number; high: number; tail: number }) =>
        `95 % interval ${Math.round(low * 100)} to ${Math.round(high * 100)} %, ${pValue(tail)}.`,
    },

    /** What was good beside the headline. */
    good: {
      landings: ({ hits, of, tones }: { hits: number; of: number; tones: 'guideTones' | 'chordTones' }) =>
        `${hits} of ${of} landings are on ${tones === 'chordTones' ? 'chord tones' : 'guide tones'}: more than luck.`,
      strongBeats: ({ hits, of }: { hits: number; of: number }) =>
        `${hits} of ${of} notes on strong beats are chord tones: more than luck.`,
      putRight: ({ count, of }: { count: number; of: number }) =>
        `${count} of ${of} landings outside the chord are resolved by step into a chord tone.`,
    },

    /** The chart fits better somewhere else: said before everything. */
    suspected: {
      key: ({ here, there, shareHere, shareThere }: { here: string; there: string } & Fits) =>
        `This fits ${there} better than ${here}: ${percent(shareThere)} of the notes would be chord tones, here ${percent(shareHere)} are. Wrong key chosen?`,
      place: ({ beats, shareHere, shareThere }: { beats: number } & Fits) =>
        `This fits better with the chart begun ${several(Math.abs(beats), 'beat')} ${beats > 0 ? 'later' : 'earlier'}: ` +
        `${percent(shareThere)} of the notes would be chord tones, here ${percent(shareHere)} are. Wrong first beat?`,
    },

    /** What else a teacher hears, a sentence each. */
    hears: {
      space: ({ rest, phraseBars, runBars }: { rest: number; phraseBars: number; runBars: number }) =>
        `You rest ${percent(rest)} of the time. A phrase lasts about ${bars(phraseBars)}; the longest stretch without a rest is ${bars(runBars)}.`,
      starts: ({ count, of, beat }: { count: number; of: number; beat: string }) =>
        `${count} of ${of} phrases start on beat ${beat}.`,
      approach: ({ landings, ways }: { landings: number; ways: readonly string[] }) =>
        `How you reach ${several(landings, 'landing')} on chord tones: ${joinWith(ways, 'and')}.`,
      ways: {
        halfBelow: ({ count }: { count: number }) => `${count} from a half step below`,
        halfAbove: ({ count }: { count: number }) => `${count} from a half step above`,
        wholeStep: ({ count }: { count: number }) => `${count} by a whole step`,
        enclosure: ({ count }: { count: number }) => `${count} from both sides (an enclosure)`,
        leap: ({ count }: { count: number }) => `${count} by a leap`,
        sameNote: ({ count }: { count: number }) => `${count} on the same note`,
      },
      figure: ({
        notes,
        more,
        count,
        bar,
        changes,
      }: {
        notes: readonly string[];
        /** Notes that are not named. */
        more: number;
        count: number;
        /** Of the form, where it comes first. */
        bar: number | null;
        changes: readonly string[];
      }) =>
        `A figure comes back: ${notes.join(' ')}${more > 0 ? ` and ${more} more` : ''}, ${times(count)}${bar === null ? '' : `, first in bar ${bar}`}` +
        `${changes.length === 0 ? '' : ` (${changes.join(', ')})`}.`,
      figureChanges: {
        movedInBar: ({ count }: { count: number }) => `${times(count)} at another place in the bar`,
        otherOctave: ({ count }: { count: number }) => `${times(count)} in another octave`,
        otherChord: ({ count }: { count: number }) => `${times(count)} ending over another chord`,
        otherEnd: ({ count }: { count: number }) => `${times(count)} more with another last note`,
      },
      beat: ({ medianMs, spreadMs }: { medianMs: number; spreadMs: number }) =>
        `On the beats you are ${Math.round(medianMs) === 0 ? 'on time' : `${Math.abs(Math.round(medianMs))} ms ${medianMs < 0 ? 'early' : 'late'}`}, give or take ${Math.round(spreadMs)} ms.`,
      /** Shares of the beat that the first eighth takes. */
      swing: ({ played, asked }: { played: number; asked: number }) =>
        `Your first eighth takes ${percent(played)} of the beat; the feel asks for ${percent(asked)}.`,
      range: ({ lowest, highest, semitones }: { lowest: string; highest: string; semitones: number }) =>
        `From ${lowest} to ${highest}, ${several(semitones, 'half step')}.`,
      shapes: ({ shapes }: { shapes: readonly string[] }) => `Phrases: ${shapes.join(', ')}.`,
      shape: {
        rising: ({ count }: { count: number }) => `${count} ${count === 1 ? 'rises' : 'rise'}`,
        falling: ({ count }: { count: number }) => `${count} ${count === 1 ? 'falls' : 'fall'}`,
        arched: ({ count }: { count: number }) =>
          `${count} ${count === 1 ? 'goes' : 'go'} up and come${count === 1 ? 's' : ''} back`,
        level: ({ count }: { count: number }) => `${count} ${count === 1 ? 'stays' : 'stay'} level`,
      },
      accents: ({ db }: { db: number }) =>
        `Notes on the strong beats are ${Math.abs(Math.round(db))} dB ${db > 0 ? 'louder' : 'softer'} than the others.`,
    },

    // The delay of the take is wrong. Late: the notes lie behind the beats.
    suspectedDelay: {
      known: ({
        ms,
        isLate,
        spreadMs,
        notes,
      }: {
        ms: number;
        isLate: boolean;
        spreadMs: number;
        notes: number;
      }) =>
        `Your notes lie about ${ms} ms ${isLate ? 'behind' : 'ahead of'} the beat (${notes} notes, give or take ${spreadMs} ms). That is more than players usually do: the delay is probably set about ${ms} ms too ${isLate ? 'short' : 'long'}.`,
      unclear: ({
        ms,
        isLate,
        spreadMs,
        notes,
      }: {
        ms: number;
        isLate: boolean;
        spreadMs: number;
        notes: number;
      }) =>
        `Your notes miss the beats, all by about the same time (${notes} notes, give or take ${spreadMs} ms) and by more than players usually do: about ${ms} ms ${isLate ? 'behind' : 'ahead of'} the beats, or further ${isLate ? 'ahead of' : 'behind'} them. The delay is probably wrong. The notes alone do not show by how much, so measure it.`,
    },

    timing: {
      ahead: ({ ms }: { ms: number }) =>
        `You play about ${ms} ms ahead of the beat; that does not change the grades.`,
      behind: ({ ms }: { ms: number }) =>
        `You play about ${ms} ms behind the beat; the notes are graded as if they were on it.`,
    },

    /** What was corrected by hand; `added` and `deleted` are among `notes`. */
    corrected: ({
      notes,
      added,
      deleted,
      leftOut,
    }: {
      notes: number;
      added: number;
      deleted: number;
      /** Corrections that no longer fit. */
      leftOut: number;
    }) => {
      const parts = [
        ...(added === 0 ? [] : [`${added} added`]),
        ...(deleted === 0 ? [] : [`${deleted} deleted`]),
      ];
      const told =
        notes === 0
          ? []
          : [
              `${notes === 1 ? '1 note is' : `${notes} notes are`} corrected by hand${parts.length === 0 ? '' : ` (${parts.join(', ')})`}.`,
            ];
      const left =
        leftOut === 0
          ? []
          : [
              leftOut === 1
                ? '1 correction no longer fits the notes and is left out.'
                : `${leftOut} corrections no longer fit the notes and are left out.`,
            ];
      return [...told, ...left].join(' ');
    },
    lost: {
      countIn: 'the count-in',
      bar: ({ bar, chorus }: { bar: number; chorus: number }) =>
        chorus === 1 ? `bar ${bar}` : `bar ${bar} of chorus ${chorus}`,
      more: ({ bars }: { bars: number }) => `${bars} more ${noun(bars, 'bar')}`,
      told: ({ ms, places }: { ms: number; places: readonly string[] }) =>
        `The browser lost ${ms} ms of sound, in ${joinWith(places, 'and')}; what was played there is not in the report.`,
    },

    aims: {
      verdicts: {
        reached: 'reached',
        'not yet': 'not yet',
        'too short to tell': 'too short to tell',
        'not in this chart': 'not in this chart',
      },
      /** What a take answers to the aim in hand: a headline. The numbers are in `evidence`. */
      answer: {
        reached: ({ hits, of, events, over }: AimEvents & { hits: number; of: number }) =>
          `You did it: ${hits} of ${of} ${aimEvents(events, of, over)}.`,
        share: ({
          hits,
          of,
          needed,
          events,
          over,
        }: AimEvents & { hits: number; of: number; needed: number }) =>
          `Not yet: ${hits} of ${of} ${aimEvents(events, of, over)}; ${needed} would do it.`,
        luck: ({ hits, of, events, over }: AimEvents & { hits: number; of: number }) =>
          `${hits} of ${of} ${aimEvents(events, of, over)}, but luck may give as many.`,
        tooShort: ({
          hits,
          of,
          more,
          events,
          over,
        }: AimEvents & {
          hits: number;
          of: number;
          /** Choruses that would tell. */
          more: number | 'many';
        }) => `${hits} of ${of} ${aimEvents(events, of, over)} so far. ${capital(moreTells(more))}.`,
      },
      /** How a take did by an aim. */
      evidence: {
        notInChart: ({ over }: { over: readonly string[] }) =>
          over.length === 0 ? 'The chart has no such chord.' : `The chart has no ${joinWith(over, 'or')}.`,
        none: ({ events, over }: AimEvents) => `No ${aimEvents(events, 0, over)} in this take.`,
        few: ({ hits, of, least, events, over }: AimEvents & { hits: number; of: number; least: number }) =>
          `${hits} of ${of} ${aimEvents(events, of, over)}; it takes at least ${least} to tell.`,
        /** Nothing is shown by a tone to avoid that the player never plays anyway. */
        notUsed: ({ hits, of, events, over }: AimEvents & { hits: number; of: number }) =>
          `${hits} of ${of} ${aimEvents(events, of, over)}, but you hardly play that tone elsewhere either: nothing shows yet that you avoid it.`,
        counted: ({
          hits,
          of,
          toReach,
          expected,
          onlyLuck,
          moreChoruses,
          events,
          over,
        }: AimEvents & {
          hits: number;
          of: number;
          toReach: number;
          /** What luck gives; undefined where the aim does not ask. */
          expected?: number | null | undefined;
          /** Whether the share is reached, but luck may reach it too. */
          onlyLuck: boolean;
          /** How many choruses more would tell, or null. */
          moreChoruses: number | 'many' | null;
        }) =>
          `${hits} of ${of} ${aimEvents(events, of, over)}; the aim is ${percent(toReach)}` +
          `${expected === undefined ? '' : `, ${luck(expected)}`}${onlyLuck ? ': enough, but no more than luck may give' : ''}` +
          `${moreChoruses === null ? '' : `; ${moreTells(moreChoruses)}`}.`,
      },
      /** Names and tasks of the built-in aims, by their ids. */
      house: {
        'guide-tones': {
          name: 'Thirds and sevenths',
          task: 'Land on the third or the seventh of each chord as it arrives.',
        },
        thirds: { name: 'Thirds', task: 'Land on the third of each chord as it arrives.' },
        'chord-tones': { name: 'All chord tones', task: 'Land on any tone of each chord as it arrives.' },
        'third-over-one': {
          name: 'The third over the I',
          task: 'Let the third be heard in every other bar you play over the I.',
        },
        'flat-third-into-third': {
          name: 'The b3 into the 3',
          task: 'Over a chord with a major third, let every other b3 go up into the 3 within half a beat.',
        },
        'add-the-sixth': {
          name: 'Add the sixth',
          task: 'Bring the sixth into every third bar you play over the I.',
        },
        'add-the-ninth': {
          name: 'Add the ninth',
          task: 'Bring the ninth into every third bar you play over the I.',
        },
        'third-sixth-ninth': {
          name: 'Third, sixth and ninth in one chorus',
          task: 'Over the I, bring the third, the sixth and the ninth into one chorus, in every other chorus.',
        },
        'third-on-arrival': {
          name: 'The third of every chord as it arrives',
          task: 'Land on the third of the new chord at every other change.',
        },
        'guide-tones-by-step': {
          name: 'Guide tones by step',
          task: 'At every third change, move from a guide tone of the old chord to the nearest one of the new by a step.',
        },
        'phrases-end-on-chord-tones': {
          name: 'End phrases on chord tones',
          task: 'End three of four phrases on a tone of the chord under them.',
        },
        'off-the-third-over-four': {
          name: 'Avoid the key’s major third over the IV',
          task: 'Over the IV, play the key’s b3 or 4 where you would have played its major third.',
        },
      },
    },

    advice: {
      bars: ({ bars, more }: { bars: readonly number[]; more: number }) => {
        if (bars.length === 1 && more === 0) return `Bar ${bars[0]}`;
        return `Bars ${joinWith([...bars.map(String), ...(more > 0 ? [`${more} more`] : [])], 'and')}`;
      },
      landing: (told: AdviceFacts) =>
        `${told.bars}: as ${told.chord} arrives you ${told.held ? 'hold' : 'land on'} ${told.played} (its ${told.playedDegree})${timesAfter(told.count)}. ${adviceStep(told)}.`,
      'third over four': (told: AdviceFacts) =>
        `${told.bars}: over ${told.chord} you play ${told.played}, the key’s major third (its ${told.playedDegree})${timesAfter(told.count)}. ${adviceStep(told)}.`,
      'phrase end': (told: AdviceFacts) =>
        `${told.bars}: over ${told.chord} a phrase ends on ${told.played} (its ${told.playedDegree})${timesAfter(told.count)}. ${adviceStep(told)}.`,
      'hanging b3': (told: AdviceFacts) =>
        `${told.bars}: over ${told.chord} the b3, ${told.played}, is not resolved${timesAfter(told.count)}. ${adviceStep(told)}.`,
      'third near': (told: AdviceFacts) =>
        `${told.bars}: into ${told.chord} you go from ${told.from} to ${told.played} (its ${told.playedDegree})${timesAfter(told.count)}. ${adviceStep(told, told.from)}.`,
      /** Where a tone lies on a neck, strings counted from the highest. */
      neck: ({ string, fret, open }: { string: number; fret: number; open: boolean }) =>
        open ? `open ${ordinal(string)} string` : `${ordinal(string)} string, fret ${fret}`,
      written: ({ name }: { name: string }) => `written ${name}`,
    },

    explain: {
      beforeFirstBar: 'before the first bar',
      /** `beat` with quarters of a beat as fractions: "2½". */
      place: ({ bar, beat, chorus }: { bar: number; beat: string; chorus: number }) =>
        `bar ${bar}, beat ${beat}${chorus === 1 ? '' : `, chorus ${chorus}`}`,
      /** What a note is over its chord. */
      role: {
        root: ({ chord }: { chord: string }) => `the root of ${chord}`,
        third: ({ chord }: { chord: string }) => `the third of ${chord}`,
        fifth: ({ chord }: { chord: string }) => `the fifth of ${chord}`,
        seventh: ({ chord }: { chord: string }) => `the seventh of ${chord}`,
        extension: ({ chord }: { chord: string }) => `an extension that ${chord} names`,
        colour: ({ chord }: { chord: string }) => `a scale tone over ${chord}`,
        blue: ({ chord }: { chord: string }) => `a blue note over ${chord}`,
        outside: ({ chord }: { chord: string }) => `outside ${chord} and the scales`,
      },
      noChord: 'no chord under it',
      degrees: ({ degree, keyDegree, key }: { degree: string | null; keyDegree: string; key: string }) =>
        degree === null ? `${keyDegree} of ${key}.` : `${degree} of the chord, ${keyDegree} of ${key}.`,
      /** Against the reference and the nearest eighth; null where the time is not known. */
      tuning: ({ cents, offsetMs }: { cents: number; offsetMs: number | null }) =>
        `${capital(inCents(cents))}${offsetMs === null ? '' : `, ${lateness(offsetMs)}`}.`,
      /** Of a note that counts in no share; the confidence from 0 to 1. */
      doubtful: ({ confidence }: { confidence: number }) =>
        `The listener is not sure of this note (confidence ${percent(confidence)}), so it counts in no share.`,
      takenOut: 'You took this note out, so it counts in no share.',
      /** Of a note that counts because the player wants it to. */
      chosen: ({ confidence }: { confidence: number }) =>
        `The listener was not sure of this note (confidence ${percent(confidence)}); it counts because you chose so.`,
      second: ({ name }: { name: string }) => `${name} sounds with it.`,
      manner: ({
        bend,
        legato,
        vibrato,
      }: {
        /** In semitones; null for a note that is not bent. */
        bend: number | null;
        legato: boolean;
        vibrato: boolean;
      }) => {
        const ways = [
          ...(bend === null ? [] : [`bent by ${decimal(bend, 1)} semitones`]),
          ...(legato ? ['slurred'] : []),
          ...(vibrato ? ['with vibrato'] : []),
        ];
        return `${capital(ways.join(', '))}.`;
      },
      /** 0 to 1, by the length. */
      weight: ({ weight }: { weight: number }) => `Weight ${decimal(weight, 2)} by its length.`,
      standing: ({ strongBeat, phraseEnd }: { strongBeat: boolean; phraseEnd: boolean }) => {
        const facts = [
          ...(strongBeat ? ['on a strong beat'] : []),
          ...(phraseEnd ? ['ends its phrase'] : []),
        ];
        return facts.length === 0 ? '' : `${capital(facts.join(', '))}.`;
      },
      rule: {
        onset: ({ chord }: { chord: string }) => `${chord} sounds when it starts.`,
        anticipation: ({ beats, chord }: { beats: number; chord: string }) =>
          `It starts ${trimmed(beats)} beat before ${chord}, lasts until that arrives, and is one of its tones.`,
        onTheChange: ({ chord }: { chord: string }) =>
          `It starts so shortly before ${chord} that it counts as played on the change.`,
        noChord: 'No chord sounds when it starts.',
      },
      /** What the notes beside it make of a tone outside the chord; `notes` are those notes. */
      function: {
        passing: ({ notes }: { notes: readonly string[] }) =>
          notes.length > 1
            ? `It passes by step, all in one direction, between two chord tones${inBrackets(notes)}.`
            : `It moves on by step${inBrackets(notes)}.`,
        neighbour: ({ notes }: { notes: readonly string[] }) =>
          notes.length > 1
            ? `It is a neighbour: a step away from a chord tone and back${inBrackets(notes)}.`
            : `It turns back by step${inBrackets(notes)}.`,
        approach: ({ notes }: { notes: readonly string[] }) =>
          `It is an approach by half step into a chord tone${inBrackets(notes)}.`,
        enclosure: ({ notes }: { notes: readonly string[] }) =>
          `It is half of an enclosure: two tones, one on either side of the chord tone that they reach${inBrackets(notes)}.`,
        appoggiatura: ({ notes }: { notes: readonly string[] }) =>
          notes.length > 1
            ? `It is an appoggiatura: reached by a leap, left by a step into a chord tone${inBrackets(notes)}.`
            : `It is an appoggiatura: it begins the phrase and goes by step into a chord tone${inBrackets(notes)}.`,
        escape: ({ notes }: { notes: readonly string[] }) =>
          `It is an escape tone: left by a leap against the step that led to it${inBrackets(notes)}.`,
        suspension: ({ notes }: { notes: readonly string[] }) =>
          `It is a suspension: kept from the chord before, then resolved by step${inBrackets(notes)}.`,
        anticipation: ({ notes }: { notes: readonly string[] }) =>
          `It anticipates the chord to come${inBrackets(notes)}.`,
        free: ({ notes }: { notes: readonly string[] }) =>
          `It is left by no step, so it leads to no other note${inBrackets(notes)}.`,
      },
      landing: ({ chord, degree, offsetMs }: ArrivalFacts & { offsetMs: number }) =>
        `The landing on the change to ${chord}: ${degree}, ${lateness(offsetMs)}`,
      anticipated: ({ chord, degree }: ArrivalFacts) =>
        `The landing on the change to ${chord}: ${degree}, an eighth early, as an anticipation`,
      /** Follows a landing that is on no chord tone. */
      putRight: ({ name, beats }: { name: string; beats: number }) =>
        `; the line resolves it by a step, to ${name}, ${beats < 0.05 ? 'at once' : `${trimmed(beats)} ${beats === 1 ? 'beat' : 'beats'} later`}`,
      blueThird: ({ cents }: { cents: number }) =>
        `It is a blue third, ${Math.round(cents)} cents above the b3: the blues is played so.`,
      held: ({ chord, degree }: ArrivalFacts) =>
        `Held over the change to ${chord}, where it is the ${degree}`,
      guideTone: {
        kept: ({ from, to }: { from: string; to: string }) => `; the guide tone ${from} stays as ${to}`,
        resolved: ({ from, to }: { from: string; to: string }) =>
          `; the guide tone ${from} moves by step to ${to}`,
      },
      open: ({ chord, bar, chorus }: { chord: string; bar: number; chorus: number }) =>
        `A rest: nothing sounds at the change to ${chord} in bar ${bar}${chorus === 1 ? '' : `, chorus ${chorus}`}.`,
      emptyBar: ({ bar, chorus }: { bar: number; chorus: number | null }) =>
        `Nothing was played in bar ${bar}${chorus === null ? '' : ` of chorus ${chorus}`}.`,
    },
  },

  // The page that the command line prints, 80 columns wide.
  page: {
    title: ({
      notes,
      bars,
      choruses: rounds,
      key,
      bpm,
      rise,
      referenceHz,
      estimated,
      anticipationBeats,
      turnBars,
    }: {
      notes: number;
      bars: number;
      /** Choruses that were played, a part of one too. */
      choruses: number;
      key: string;
      bpm: number | null;
      rise: { readonly byBpm: number; readonly everyBars: number } | null;
      referenceHz: number;
      estimated: boolean;
      /** null: not told. */
      anticipationBeats: number | null;
      turnBars: number | null;
    }) => {
      const rising =
        rise === null ? '' : ` and ${rise.byBpm} more every ${rise.everyBars} ${noun(rise.everyBars, 'bar')}`;
      const tempo = bpm === null ? '' : `${trimmed(bpm, 1)} bpm${rising}, `;
      const turns = turnBars === null ? '' : `, your turns of ${turnBars} ${noun(turnBars, 'bar')}`;
      return (
        `${notes} ${noun(notes, 'note')} over ${rounds > 1 ? `${rounds} choruses of ` : ''}${bars} ${noun(bars, 'bar')} in ${key}, ${tempo}` +
        `A4 ${trimmed(referenceHz, 1)} Hz${estimated ? ' (found)' : ''}${anticipationBeats === null ? '' : `, anticipation ${trimmed(anticipationBeats)} beat`}${turns}`
      );
    },
    rows: {
      landings: 'landings',
      phraseEnds: 'phrase ends',
      strongBeats: 'strong beats',
      allNotes: 'all notes',
      byLength: 'by length',
    },
    columns: { thirds: 'thirds', guideTones: 'guide tones', chordTones: 'chord tones' },
    none: 'none',
    luck: ({ share }: { share: number }) => `luck ${percent(share)}`,
    signs: {
      'above chance': 'more than luck',
      'below chance': 'less than luck',
      'too short to tell': 'too few to tell',
    },
    form: {
      legend: 'chorus by chorus: b3>3 b3 into 3, ~ held over, ( ) not in the chord, · rest',
      chord: ({
        thirds,
        landed,
        chordTones,
        open,
      }: {
        thirds: number;
        landed: number;
        chordTones: number;
        open: number;
      }) =>
        `${thirds} of ${landed} on the third, ${chordTones} on a chord tone${open === 0 ? '' : `, ${several(open, 'rest')}`}`,
      more: ({ chords }: { chords: number }) => `and ${chords} more ${noun(chords, 'chord')}`,
    },
    /** The headings in the margin, nine letters at most. */
    headings: {
      suspected: 'First',
      next: 'Next',
      numbers: 'Numbers',
      space: 'Space',
      approach: 'Approach',
      figures: 'Figures',
      range: 'Range',
      accents: 'Accents',
      changes: 'Changes',
      thirds: 'Thirds',
      palette: 'Palette',
      backing: 'Backing',
      lost: 'Lost',
      corrected: 'By hand',
      time: 'Time',
      aims: 'Aims',
      advice: 'Advice',
      good: 'Good',
    },
    changes: {
      inBar: ({ chord, bar }: { chord: string; bar: number }) => `${chord} in bar ${bar}`,
      alwaysThird: ({ places }: { places: readonly string[] }) => `Always the third: ${places.join(', ')}.`,
      neverChordTone: ({ places }: { places: readonly string[] }) =>
        `Never a chord tone: ${places.join(', ')}.`,
      guideTones: ({ changes, resolved, kept }: { changes: number; resolved: number; kept: number }) =>
        `A guide tone moved by step into the next chord at ${resolved} of ${changes} ${noun(changes, 'change')}` +
        `${kept === 0 ? '' : `, and stayed at ${kept}`}.`,
    },
    thirds: {
      counted: ({
        notes,
        thirds,
        flatThirds,
        leans,
        ways,
        falls,
        leftHanging,
      }: {
        notes: number;
        thirds: number;
        flatThirds: number;
        leans: number;
        ways: readonly string[];
        falls: number;
        leftHanging: number;
      }) =>
        `Of ${several(notes, 'note')} over chords with a major third ${thirds} ${thirds === 1 ? 'is' : 'are'} the 3 and ${flatThirds} the b3. ` +
        `b3 into 3: ${times(leans)}${inBrackets(ways)}; 3 back to b3: ${times(falls)}; b3 not resolved: ${times(leftHanging)}.`,
      ways: {
        slid: ({ count }: { count: number }) => `${count} slid`,
        hammered: ({ count }: { count: number }) => `${count} hammered`,
        bent: ({ count }: { count: number }) => `${count} bent`,
        picked: ({ count }: { count: number }) => `${count} picked`,
      },
      blue: ({ count, lowCents, highCents }: { count: number; lowCents: number; highCents: number }) =>
        `Blue thirds between the two: ${count}, ${lowCents === highCents ? lowCents : `${lowCents} to ${highCents}`} cents above the b3. They are not wrong notes.`,
    },
    palette: {
      mixture: ({
        minor,
        major,
        both,
        neither,
      }: {
        minor: number;
        major: number;
        both: number;
        neither: number;
      }) =>
        `minor ${percent(minor)}, major ${percent(major)}, both ${percent(both)}, neither ${percent(neither)}`,
      overall: ({ mixture }: { mixture: string }) => `${mixture} of the time.`,
      chord: ({ chord, mixture }: { chord: string; mixture: string }) => `${chord}: ${mixture}.`,
      thirdOverFour: ({ count, seconds, degree }: { count: number; seconds: number; degree: string }) =>
        `The key’s major third sounded over the IV ${times(count)}, ${trimmed(Math.max(0.1, seconds), 1)} s in all: there it is the ${degree} and clashes.`,
    },
    backing: {
      notHeard: 'Not heard in the take, so nothing was taken out.',
      heard: ({
        offsetSeconds,
        driftPpm,
        removedDb,
      }: {
        offsetSeconds: number;
        driftPpm: number;
        removedDb: number;
      }) =>
        `Heard from ${decimal(offsetSeconds, 3)} s on` +
        `${driftPpm === 0 ? '' : `, ${Math.abs(driftPpm)} ppm ${driftPpm > 0 ? 'fast' : 'slow'}`}; ${removedDb === 0 ? 'it could not be made quieter' : `made ${removedDb} dB quieter`} before listening.`,
    },
    suspected: {
      key: ({ semitones }: { semitones: number }) => `Grade it again with --transpose ${semitones}.`,
      place: ({ firstBeat }: { firstBeat: string }) => `Grade it again with --first-beat ${firstBeat}.`,
    },
    /** The last line of the short page. */
    more: 'More: --full prints every figure, --explain BAR the reasons.',
    aims: {
      tried: ({ name, verdict, evidence }: { name: string; verdict: string; evidence: string }) =>
        `${name}: ${verdict}. ${evidence}`,
      reached: ({ names }: { names: readonly string[] }) => `Reached: ${names.join('; ')}.`,
      /** The aim that was tried for stays the next one. */
      stay: ({ task }: { task: string }) => `Next: stay with this aim. ${task}`,
      next: ({ name, evidence, task }: { name: string; evidence: string; task: string }) =>
        `Next: ${name}. ${evidence} ${task}`,
      nextInShort: ({ name, task }: { name: string; task: string }) => `${name}. ${task}`,
    },
  },

  // Everything that keeps something from being done: what is wrong, where, and what to do. A key is a code; a fact
  // named `cause` holds another problem. Keys are grouped by the folder or the thing that they speak of.
  problems: {
    // ── charts ──
    'chart.tooLong': ({ characters }: { characters: number }) =>
      `The chart is longer than ${characters} characters: shorten it, or grade it in parts.`,
    'chart.noBars': 'The chart has no bars: write chords between bar lines, like | G7 | C7 | G7 | D7 |.',
    'chart.repeatOpen': ({ line }: { line: number }) =>
      `Line ${line} opens a repeat that is never closed: write :| behind its last bar.`,
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
    'chart.sectionName': ({ line, name }: { line: number; name: string }) =>
      `Line ${line}: “${name}” can’t name a section; write letters and words in brackets, like [A] or [Bridge].`,
    'chart.chordWithoutBarLines': ({ name }: { name: string }) =>
      `${name} has no bar lines around it: write a bar as | ${name} |.`,
    'chart.sectionEmpty': ({ name, feel }: { name: string | null; feel: string | null }) =>
      `Section ${name ?? (feel === null ? 'in another key' : `with the feel ${feel}`)} has no bars: write some behind it or delete its line.`,
    'chart.noHeading': ({ line, text }: { line: number; text: string }) =>
      `Line ${line}: “${text}” is not a heading; write a word, a colon and a value.`,
    'chart.unknownHeading': ({
      line,
      word,
      known,
    }: {
      line: number;
      word: string;
      known: readonly string[];
    }) => `Line ${line}: “${word}” is not a heading of a chart; the headings are ${known.join(', ')}.`,
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
    'form.unknown': ({ name, known }: { name: string; known: readonly string[] }) =>
      `There is no form “${name}”; the forms are ${known.join(', ')}.`,
    'form.key': ({ key, form }: { key: string; form: string }) =>
      `“${key}” is not a key for the ${form}; write its tonic, like Bb or F#.`,
    'form.mode': ({ form, mode, tonic, asked }: { form: string; mode: Mode; tonic: string; asked: Mode }) =>
      `The ${form} is in ${mode}, not ${tonic} ${asked}; leave the mode out or take another form.`,
    'beats.tooFew': ({ rows }: { rows: number }) =>
      `The list of beats has ${rows === 0 ? 'no row' : 'one row'}: at least two beats are needed to tell the tempo.`,
    'beats.noTime': ({ row }: { row: number }) =>
      `Row ${row} of the beats has no time: write seconds, like 2.45.`,
    'beats.order': ({ row, seconds, before }: { row: number; seconds: number; before: number }) =>
      `Row ${row} of the beats, at ${seconds} s, does not come after the row before, at ${before} s: put the beats in order.`,
    'beats.chord': ({ row, symbol, hint }: { row: number; symbol: string; hint: ChordHint }) =>
      `Row ${row} of the beats: “${symbol}” can’t be read as a chord; ${chordHint(hint)}.`,

    // ── files ──
    'file.empty': ({ name }: Named) => `${name} is empty; give a recording or a list of notes.`,
    'file.tagOnly': ({ name }: Named) => `${name} holds a tag but no sound; the file may be cut short.`,
    'file.foreign': ({ name, kind }: Named & { kind: ForeignFile }) =>
      `${name} is ${FOREIGN_FILES[kind]}, which can’t be graded; ${foreignAdvice(kind)}.`,
    'file.zeros': ({ name }: Named) =>
      `${name} holds only zeros and no recording; it may not have been saved completely.`,
    'file.readerNotLoaded': ({ name }: Named) =>
      `${name} can’t be opened now: the part of Landfall that reads such files did not load. Start the server that this page came from, reload the page, then try again.`,
    'file.unknown': ({ name }: Named) => `${name} is not a file that can be graded. ${READABLE_FILES}.`,
    'file.text': ({ name }: Named) => `${name} is text, not sound or a list of notes. ${READABLE_FILES}.`,
    'file.beats': ({ name }: Named) =>
      `${name} is a list of beats, not of notes: it goes with a line (at the command line, after --beats); give a recording or a list of notes.`,
    'file.notesNoSound': ({ name }: Named) =>
      `${name} is a list of notes and holds no sound; give a recording.`,
    'file.tooLongForWhole': ({ name, minutes }: Named & { minutes: number }) =>
      `${name} is longer than ${minutes} minutes; cut it into takes, or grade it on the command line.`,
    'take.tooLongWithBacking': ({ name, minutes }: Named & { minutes: number }) =>
      `${name} is longer than ${minutes} minutes, too long to have its backing taken out; cut it into takes.`,
    'file.tooLongToPlay': ({ name, minutes }: Named & { minutes: number }) =>
      `${name} is longer than ${minutes} minutes: keep only the part you play to.`,
    'file.listTooLong': ({ name }: Named) => `${name} is too long for a list of notes; cut it into takes.`,
    'file.takeTooLong': ({ name, hours }: Named & { hours: number }) =>
      `${name} goes on past ${hours} hours, which no take may: cut it into takes, or look for a time that is wrong.`,
    'file.tooLarge': ({ name, megabytes }: Named & { megabytes: number }) =>
      `${name} is larger than ${megabytes} MB, too large for what it is asked to be.`,
    'file.tooManyNotes': ({ name, most }: Named & { most: number }) =>
      `${name} has more than ${most} notes; cut it into takes.`,
    'file.tooManyBeats': ({ name, most }: Named & { most: number }) =>
      `${name} has more than ${most} beats; cut it into takes.`,
    'notes.unit': ({ name, unit }: Named & { unit: 'milliseconds' | 'samples' }) =>
      `${name} has its times in ${unit}, it seems; they are wanted in seconds: divide onset and duration by ${unit === 'samples' ? 'the sample rate' : '1000'}.`,
    'beats.unit': ({ name, unit }: Named & { unit: 'milliseconds' | 'samples' }) =>
      `${name} has its times in ${unit}, it seems; they are wanted in seconds: divide them by ${unit === 'samples' ? 'the sample rate' : '1000'}.`,
    'sound.manyBlocks': ({ name, most }: Named & { most: number }) =>
      `${name} has more than ${most} blocks before its sound; it is damaged: save or export it again.`,
    'sound.noNumber': ({ name }: Named) =>
      `${name} has not one sample that can be sound: all are no numbers, infinite or far too large; save or export it again.`,
    'file.notAllText': ({ name }: Named) =>
      `${name} is not text throughout; save it as a UTF-8 table and try again.`,
    'file.notText': ({ name }: Named) => `${name} is not text; save it as UTF-8 text and try again.`,
    'file.noSound': ({ name }: Named) =>
      `${name} holds no sound that can be read; it may be damaged: save or export it again.`,
    'table.longRow': ({ name, line, most }: Named & { line: number; most: number }) =>
      `${name}: the row at line ${line} has more than ${most} characters; look for a quotation mark that is never closed.`,
    'table.columns': ({
      name,
      missing,
      wanted,
    }: Named & { missing: readonly string[]; wanted: readonly string[] }) =>
      `${name} has no column ${quoted(missing).join(', ')} in its first line; begin it with the header ${wanted.join(',')}.`,
    'notes.cell': ({
      name,
      line,
      column,
      cell,
      highest,
    }: Named & { line: number; column: 'onset' | 'duration' | 'pitch'; cell: string; highest: number }) => {
      const range = {
        onset: 'a number of seconds',
        duration: 'a number of seconds, 0 or more',
        pitch: `a MIDI number from 0 to ${highest}`,
      };
      return `${name}, line ${line}: the ${column} "${cell}" is not ${range[column]}; correct that line.`;
    },
    'notes.none': ({ name }: Named) => `${name} has a header and no notes under it; add a row for each note.`,
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
    'midiFile.damaged': ({ name }: Named) =>
      `${name} is a damaged MIDI file; save it again as a standard MIDI file.`,
    'midiFile.format': ({ name, format }: Named & { format: number }) =>
      `${name} is a MIDI file of format ${format}; save it as format 0 or 1.`,
    'midiFile.noNotes': ({ name }: Named) =>
      `${name} has no notes in it (percussion is left out); give a file with a line.`,
    'midiFile.noPart': ({ name, parts, part }: Named & { parts: number; part: number }) =>
      `${name} has ${parts} ${noun(parts, 'part')} with notes, and no part ${part}.`,
    'midiFile.noTempo': ({ name }: Named) => `${name} counts frames instead of beats; save it with a tempo.`,
    'midiFile.meterChanges': ({ name, from, to }: Named & { from: string; to: string }) =>
      `${name} changes its meter from ${from} to ${to}; a chart has one meter: split the file there.`,
    'midiFile.meter': ({ name, meter }: Named & { meter: string }) =>
      `${name} is in ${meter}, a meter that a chart can’t have here.`,
    'midiFile.noChords': ({ name }: Named) =>
      `${name} has no chord symbols among its markers and texts; give a chart, or a MIDI file with some.`,
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
    'score.meterChanges': ({ name, bar, meter }: Named & { bar: string; meter: string }) =>
      `${name}: the meter changes to ${meter} in bar ${bar}; a chart has one meter: split the score there.`,
    'chartFile.tooLong': ({ name }: Named) => `${name} is too long for a chart.`,
    'chartFile.unreadable': ({ name, cause }: Named & { cause: string }) =>
      `${name} can’t be read as a chart: ${cause}`,
    'chartFile.noScore': ({ name }: Named) =>
      `${name} is a zip archive, but not a compressed MusicXML score.`,
    'chartFile.damagedArchive': ({ name }: Named) =>
      `${name} is a damaged archive; save the score again as MusicXML.`,
    'archive.cutShort': ({ name }: Named) =>
      `${name} ends too early or is no zip archive; copy it again from where it came.`,
    'archive.manyParts': ({ name, most }: Named & { most: number }) =>
      `${name} has more than ${most} parts, which no file of Landfall has; nothing was taken from it.`,
    'archive.partTwice': ({ name, part }: Named & { part: string }) =>
      `${name} has two parts with the name ${part}; nothing was taken from it.`,
    'archive.partName': ({ name }: Named) =>
      `${name} has a part whose name leads out of the archive or can’t be read; nothing was taken from it.`,
    'archive.encrypted': ({ name, part }: Named & { part: string }) =>
      `${name} is encrypted (${part}); unpack it with its password and pack it again without one.`,
    'archive.packing': ({ name, part }: Named & { part: string }) =>
      `${part} in ${name} is packed in a way that Landfall does not read; pack it again as a plain zip archive.`,
    'archive.damaged': ({ name, part }: Named & { part: string }) =>
      `${part} in ${name} is damaged; copy the file again from where it came.`,
    'archive.bomb': ({ name, part }: Named & { part: string }) =>
      `${part} in ${name} becomes far too large when it is unpacked; nothing was taken from it.`,
    'takeFile.none': ({ name }: Named) =>
      `${name} is a zip archive, but no take of Landfall: it has no part take.json.`,
    'takeFile.newer': ({ name, version }: Named & { version: number }) =>
      `${name} was saved by a newer Landfall (version ${version} of the file); load the page anew to get it.`,
    'takeFile.notJson': ({ name, part }: Named & { part: string }) =>
      `${part} in ${name} is not JSON; nothing was taken from it.`,
    'takeFile.field': ({ name, part, field }: Named & { part: string; field: string }) =>
      `${part} in ${name} is not as Landfall writes it${field === '' ? '' : `: look at ${field}`}; nothing was taken from it.`,
    'takeFile.chart': ({ name, cause }: Named & { cause: string }) =>
      `The chart in ${name} can’t be used: ${cause}`,
    'takeFile.tooLong': ({ name, hours }: Named & { hours: number }) =>
      `${name} is longer than ${several(hours, 'hour')}; a take can’t be so long.`,
    'takeFile.sound': ({ name, part, sampleRate }: Named & { part: string; sampleRate: number }) =>
      `${part} in ${name} does not fit its take.json: it has to be WAV, one channel, 16 bits, ${sampleRate} Hz, and as long as said there.`,
    'takeFile.noLine': ({ name }: Named) =>
      `${name} has neither a sound nor notes; there is nothing to grade in it.`,
    'sound.noChannel': ({ name }: Named) =>
      `${name} has no channel by its header; the header is damaged, so save the file again.`,
    'sound.sampleRate': ({
      name,
      hz,
      lowest,
      highest,
    }: Named & { hz: number; lowest: number; highest: number }) =>
      `${name} has a sample rate of ${hz} Hz; it must lie between ${lowest} and ${highest} Hz: save it again at 44100 or 48000.`,
    'flac.header': ({ name }: Named) => `${name} is a FLAC file with a damaged header; encode it again.`,
    'flac.empty': ({ name }: Named) =>
      `${name} is a FLAC file with no samples in it; it may be cut short: encode it again.`,
    'mp3.empty': ({ name }: Named) => `${name} has no MP3 sound in it; it may be damaged: save it again.`,
    'wav.header': ({ name }: Named) => `${name} is a WAV file with a damaged header; save it again.`,
    'wav.samples': ({ name, format, bits }: Named & { format: string | number; bits: number | null }) =>
      `${name} is a WAV file with ${bits !== null ? `${bits}-bit` : typeof format === 'number' ? `format ${format}` : format} samples, which can’t be read; save it as 16 or 24-bit PCM and try again.`,
    'wav.noFormat': ({ name }: Named) =>
      `${name} is a WAV file that does not say how its samples are written; save it again.`,
    'wav.empty': ({ name }: Named) =>
      `${name} is a WAV file with no samples in it; it may be cut short, or nothing was recorded.`,
    'ogg.codec': ({ name, codec }: Named & { codec: OggCodec }) =>
      `${name} holds ${OGG_CODECS[codec]}, which can’t be read; save it as WAV, FLAC, MP3 or Ogg Vorbis.`,
    'ogg.noVorbis': ({ name }: Named) =>
      `${name} is an Ogg file with no Vorbis sound in it; save it again as WAV or FLAC.`,

    // ── aims and reports ──
    // ── lesson sheets ──
    'sheetLink.tooLong': ({ characters, most }: { characters: number; most: number }) =>
      `With ${characters} characters the link is too long: it may have ${most}. Save the sheet as a file instead, or shorten its note, its chart or its example.`,
    'sheetLink.damaged':
      'The link holds no whole lesson sheet: it was cut or changed on its way. Copy it again, or ask for the sheet as a file.',
    'sheet.example': ({ most }: { most: number }) =>
      `This take can’t be the example: it has no notes that count, or more than ${most}.`,
    'answer.noTake': ({ title, student }: { title: string; student: string }) =>
      `The answer is about “${title}”${student === '' ? '' : ` by ${student}`}, and that take is not kept here. Open the answer on the machine where it was played, or first open the take’s file.`,
    'sheet.tooLong': ({ name, most }: Named & { most: number }) =>
      `${name} is longer than ${most} characters: that is no lesson sheet.`,
    'sheet.notJson': ({ name }: Named) =>
      `${name} is no lesson sheet: it is not JSON. Save the sheet again where it was written.`,
    'sheet.notSheet': ({ name }: Named) =>
      `${name} is no lesson sheet: its "format" is not "landfall-sheet".`,
    'sheet.version': ({ name, found }: Named & { found: string }) =>
      `${name} is a lesson sheet of version ${found}, and this Landfall reads version 1: use a newer Landfall.`,
    'sheet.field': ({ name, field }: Named & { field: string }) =>
      `${name}: "${field}" is missing or can’t be read. landfall schema sheet prints what it may be.`,
    'class.noSheet': ({ name }: Named) =>
      `${name} comes without a lesson sheet: add the sheet that it is to be graded by.`,
    'answer.tooLong': ({ name, most }: Named & { most: number }) =>
      `${name} is longer than ${most} characters: that is no teacher’s answer.`,
    'answer.notJson': ({ name }: Named) =>
      `${name} is no teacher’s answer: it is not JSON. Ask for it to be sent again, as a file.`,
    'answer.notAnswer': ({ name }: Named) =>
      `${name} is no teacher’s answer: its "format" is not "landfall-answer".`,
    'answer.version': ({ name, found }: Named & { found: string }) =>
      `${name} is an answer of version ${found}, and this Landfall reads version 1: use a newer Landfall.`,
    'answer.field': ({ name, field }: Named & { field: string }) =>
      `${name}: "${field}" is missing or can’t be read. landfall schema answer prints what it may be.`,
    'aim.field': ({
      field,
      found,
      wanted,
    }: {
      field: string | null;
      found: FoundValue;
      wanted: WantedValue;
    }) =>
      found.kind === 'nothing' && field !== null
        ? `The aim has no field "${field}"; the page src/pages/aims.md has an example.`
        : `${field === null ? 'The aim' : `The field "${field}" of the aim`} can’t be read: found ${foundWords(found)}, write ${wantedWords(wanted)}.`,
    'aim.form': ({ field, found, form }: { field: string; found: FoundValue; form: AimForm }) =>
      `The field "${field}" of the aim can’t be read: found ${foundWords(found)}, write ${AIM_FORMS[form]}.`,
    'aim.test': ({ test, events, tests }: { test: string; events: string; tests: readonly string[] }) =>
      `The aim can’t be read: its test "${test}" does not go with "${events}"; write ${joinWith(quoted(tests), 'or')}.`,
    'report.unreadable': ({
      field,
      wanted,
      found,
    }: {
      field: string | null;
      wanted: WantedValue;
      found: FoundValue;
    }) =>
      `${field === null ? 'This' : `Its field "${field}"`} is not what a Landfall report holds (expected ${wantedWords(wanted)}, found ${foundWords(found)}). ` +
      'Grade the take again to get a fresh report.',

    // ── room and beats ──
    'beatFinder.tooShort': ({ seconds }: { seconds: number }) =>
      `The recording lasts less than ${seconds} seconds: too short to find a beat in.`,
    'beatFinder.silent': 'The recording is silent: open another file.',
    'beatFinder.none': 'No steady beat was found in this recording: tap the beats while you hear it.',
    'sweep.silent':
      'The microphone gave only silence during the sweep: check that it is not muted, then try again.',
    'sweep.tooLoud':
      'The sweep was too loud for the microphone: turn the speakers or the input down and try again.',
    'sweep.playing': 'Something was played during the sweeps: damp the strings, and try again.',
    'sweep.noisyRoom':
      'The room is too loud to hear the sweep: wait for a quieter moment, or turn the speakers up a little.',
    'sweep.nothingRecorded': 'Nothing was recorded during the sweep: try again.',
    'sweep.spread': ({ ms }: { ms: number }) =>
      `The delay differed by ${ms} ms from one sweep to the next: close other programs, wait until it is quiet, and try again.`,

    // ── audio, storage, analysis, state ──
    'microphone.insecure':
      'Browsers open the microphone only on https or localhost: open the page at such an address.',
    'microphone.unsupported':
      'This browser has no microphone for web pages: use a current Chrome, Edge, Firefox or Safari.',
    'microphone.blocked':
      'The microphone is blocked: allow it for this page in the address bar, and in the system settings, then try again.',
    'microphone.blockedByPage':
      'The microphone is blocked on this page by its settings: open the page by itself, then try again.',
    'microphone.notFound': 'No microphone was found: plug one in, then try again.',
    'microphone.removed': 'That microphone is no longer connected: choose another one.',
    'microphone.busy':
      'The microphone is connected but sends no sound: another program may be using it. Close that program, then try again.',
    'microphone.stopped': 'The microphone stopped while it was being opened: try again.',
    'microphone.failed': 'The microphone could not be opened: check that it is plugged in, then try again.',
    'microphone.lost':
      'The microphone is gone: it was unplugged or stopped. What you played until now is kept; plug it in and open it again.',
    'microphone.silent':
      'The microphone sends nothing but silence: look for a mute switch, and check which input is chosen in the system settings.',
    'microphone.paused':
      'The browser has stopped the sound; so does a machine that sleeps. What you played is kept, and the take goes on when the sound is back.',
    'microphone.otherRate':
      'The sound devices have changed since this page was loaded: reload the page, then try again. Your takes are kept.',
    'microphone.recorder': 'The recorder could not be loaded. Reload the page and try again.',
    'output.asleep':
      'The browser did not start its sound: click once more, and check that a sound output is connected.',
    'output.removed': 'That output is no longer connected: choose another one.',
    'midi.unsupported':
      'This browser has no Web MIDI; Chrome, Edge and Firefox have. The microphone works without it.',
    'midi.refused':
      'The browser was not allowed to use MIDI. Allow it beside the address, then choose it again; the microphone works without it.',
    'playback.workerGone': 'The take can’t be slowed down: reload the page and try again.',
    'playback.notSlowed': ({ reason }: { reason: string }) =>
      `The take can’t be slowed down (${reason}). At full speed it plays as before.`,
    'band.failed': ({ reason }: { reason: string | null }) =>
      `The band can’t play${reason === null ? '' : ` (${reason})`}. Reload the page and try again.`,
    'backing.failed': ({ reason }: { reason: string }) =>
      `The recording could not be processed (${reason}). Reload the page and try again.`,
    'backing.workerGone': 'The recording could not be processed: reload the page and try again.',
    'backing.superseded': 'The settings of the recording have changed meanwhile: press Start again.',
    'backing.notOpen': 'No recording is open: open one first.',
    'backing.tooShort': ({ name, seconds }: { name: string; seconds: number }) =>
      `${name} lasts less than ${seconds} seconds: too short to play over. Open a longer one.`,
    'backing.silent': ({ name }: { name: string }) =>
      `${name} is silent from beginning to end: open another file.`,
    'backing.takeAlone': ({ cause }: { cause: string }) => `${cause} Press again to hear the take alone.`,
    'backing.noWholeBar': ({ title }: { title: string }) =>
      `“${title}” has no whole bar after its first downbeat: set the downbeat earlier.`,
    'backing.tooFewTaps': ({ least }: { least: number }) =>
      `Tap ${least} beats or more while the recording plays.`,
    'backing.beatOrder': 'The beats of the recording are not in order: set them again.',
    'backing.gone': 'This recording is no longer on this machine: open its file again.',
    'backing.noSpace':
      'There is no space on this machine for the recording: it can be played now, but it will not be kept. Remove takes or recordings that you no longer need.',
    'backing.recordsUnreadable':
      'The record of a recording could not be read; the other recordings are unchanged.',
    'site.partMissing':
      'The rest of Landfall could not be fetched: its server does not answer. Nothing is lost. Try again when it answers: this page is then loaded anew.',
    'site.otherWindow':
      'Landfall is open in another window, and a take may be going on there. Close the other window, then press the button again.',
    'storage.newer': 'The takes on this machine were written by a newer Landfall. Reload the page to get it.',
    'storage.none':
      'This browser stores nothing for this page (perhaps this is a private window). You can play; export a take to keep it.',
    'storage.soundNeeded':
      'The notes of this take were not kept with it, so its sound is needed to grade it and stays.',
    'storage.diskFull':
      'The disk is full: the rest of this take is in memory only. It will be graded; export it before you close the page.',
    'storage.unreachable':
      'This browser could not reach its storage. Reload the page; what is on the screen can still be exported.',
    'storage.settingsUnreadable': 'The settings could not be read; the usual ones are set.',
    'storage.settingUnreadable': ({ fields }: { fields: readonly string[] }) =>
      `A stored setting could not be read (${fields.join(', ')}); the usual one is set.`,
    'storage.chartUnreadable': 'A stored chart could not be read; the others are unchanged.',
    'take.gone': 'This take is no longer on this machine.',
    'take.unreadable': ({ id }: { id: string }) =>
      `The record of take ${id} can’t be read; its sound is kept, and the other takes are unchanged.`,
    'take.calledOff': 'The take was cancelled before it began.',
    'take.notesHaveNoBacking': ({ name }: { name: string }) =>
      `${name} is not a recording: there is no backing to take out of it.`,
    'take.backingIsNotes': ({ name }: { name: string }) =>
      `${name} is a list of notes, not a recording of a backing: choose another file.`,
    'take.soundLost': 'The browser is losing sound, and the notes in it are lost too. Close other programs.',
    'take.slipped': ({ ms, time, late }: { ms: number; time: string; late: boolean }) =>
      `The sound jumped by ${ms} ms at ${time}: the notes after it are placed ${ms} ms too ${late ? 'late' : 'early'}. Close other programs.`,
    'listener.failed': ({ reason }: { reason: string }) =>
      `The listener failed (${reason}). The recording is unchanged: grade it again.`,
    'listener.notLoaded':
      'The listener did not load: the server that this page came from does not answer. Start it, reload the page, then try again. Your takes are kept.',
    'listener.stopped': 'The listener stopped by itself. What was played is kept: grade it again.',
    'listener.sampleRate': ({ hz }: { hz: number }) =>
      `The microphone runs at ${hz} Hz; Landfall hears 8000 to 192000 Hz. Choose another input.`,
    'listener.notOpen': 'The listener is not running. Start a take first.',
    'order.tempo': ({ bpm, slowest, fastest }: { bpm: number; slowest: number; fastest: number }) =>
      `The tempo is ${bpm}; it can be ${slowest} to ${fastest} beats a minute.`,
    'order.swing': ({ swing, straight, widest }: { swing: number; straight: number; widest: number }) =>
      `The swing is ${swing}; it can be ${straight} (straight) to ${widest}.`,
    'soundCheck.left': 'The sound check was closed before it was done.',
    'soundCheck.clicksHeard':
      'The clicks themselves came back through the microphone, so the strokes could not be told from them: with speakers play the sweeps; with headphones turn the click down, and strike only after the count-in.',
    'soundCheck.strokesApart': ({ asked }: { asked: number }) =>
      `The strokes and the clicks were not together: wait for the four low clicks, then strike the muted strings once with each of the ${asked} high ones, as loud as you play.`,
    'soundCheck.strokesLost':
      'The browser lost sound during the clicks, so the strokes can’t be measured: close other programs, and play them again.',
    'soundCheck.soundLost': 'The browser lost sound during each sweep: close other programs, and try again.',

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
    'cli.idleForChords': ({ option }: { option: string }) =>
      `--${option} has no meaning for landfall chords.`,
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
    'harmony.noChords': 'No chord is heard in this recording: write the chart by hand.',
    'cli.idleForClass': ({ option }: { option: string }) =>
      `--${option} has no meaning for landfall class: the sheet says how to grade.`,
    'cli.classFolder': 'No folder is given: name the folder with the takes.',
    'cli.classSheet': 'No sheet is given: name the lesson sheet with --sheet.',
    'cli.classOnly': ({ option }: { option: string }) => `--${option} is for landfall class.`,
    'cli.oneOutput': 'Give one of --csv, --json and --html.',
    'cli.noSuchSchema': ({ asked, known }: { asked: string; known: readonly string[] }) =>
      `There is no schema "${asked}": landfall schema prints that of ${joinWith(known, 'or')}.`,
    'cli.jsonOrExplain': 'Give --json or --explain, not both.',
    'cli.chorusOfNoBar':
      '--chorus chooses a chorus of the bar that is explained: give --explain BAR with it.',
    'cli.chartOrBeats': 'Give --chart or --beats, not both.',
    'cli.idleWithBeats': ({ option }: { option: string }) =>
      `--${option} has no meaning with --beats: the list says when each beat comes.`,
    'cli.noChords': 'No chords are given: name them with --chart and --tempo, or with --beats.',
    'cli.idleForTakeFile': ({ option }: { option: string }) =>
      `--${option} has no meaning for a take file: it says itself what it is graded by.`,
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
    'cli.oneOf': ({
      option,
      choices,
      given,
    }: {
      option: string;
      choices: readonly string[];
      given: string;
    }) => `--${option} must be one of ${choices.join(', ')}, not "${given}".`,
    'cli.key': ({ given }: { given: string }) => `--key must be a key like Bb or "F# minor", not "${given}".`,
    'cli.instrument': ({ given }: { given: string }) =>
      `--instrument must be one that landfall --help lists, not "${given}".`,
    'cli.unknownAim': ({ name }: Named) =>
      `"${name}" is neither a file nor a built-in aim; landfall --help lists the aims.`,
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
  },

  // What was odd and was mended, or is good to know; nothing failed. Codes as in `problems`.
  notices: {
    'sheet.waits': ({ title }: { title: string }) =>
      `The sheet “${title}” waits until you are back on the open page.`,
    // ── of the core ──
    'cli.chordsFound': ({ name, bars, bpm, unsure, chart }: Named & FoundChordsFacts) =>
      `The chords are those that were found in ${name}: ${several(bars, 'bar')} at ${bpm}${unsure === 0 ? '' : `, ${unsure} of them unsure`}, ${chart}`,
    'library.cameIn': ({ fresh, sounds, here }: { fresh: number; sounds: number; here: number }) =>
      [
        ...(fresh > 0 ? [`${several(fresh, 'take')} came in`] : []),
        ...(sounds > 0 ? [`${several(sounds, 'take')} got the sound back`] : []),
        ...(here > 0
          ? [
              `${several(here, 'take')} ${here === 1 ? 'was' : 'were'} here already and stayed as ${here === 1 ? 'it was' : 'they were'}`,
            ]
          : []),
      ].join('; ') + '.',
    'library.wentOut': ({ takes }: { takes: number }) =>
      `${several(takes, 'take')} ${takes === 1 ? 'is' : 'are'} in the file.`,
    'sound.cut': ({
      name,
      promisedSeconds,
      heldSeconds,
    }: Named & { promisedSeconds: number; heldSeconds: number }) =>
      `${name} is cut short or damaged: by its header it lasts ${decimal(promisedSeconds, 1)} s, but it holds ${decimal(heldSeconds, 1)} s; what is there was taken.`,
    'sound.cutStream': ({ name }: Named) =>
      `${name} is cut short: its sound stops before its end; what is there was taken.`,
    'sound.damaged': ({ name, places, silence }: Named & { places: number | null; silence: boolean }) =>
      `${name} is damaged${places === null ? '' : ` in ${places === 1 ? 'one place' : `${places} places`}`}; ${silence ? 'silence was put there' : 'what can be read was taken'}.`,
    'sound.channelTaken': ({ name, channel }: Named & { channel: number }) =>
      `The channels of ${name} almost cancel each other when they are mixed; only channel ${channel} was taken.`,
    'sound.notNumbers': ({ name, samples }: Named & { samples: number }) =>
      `${name} has ${samples} ${samples === 1 ? 'sample that is' : 'samples that are'} not a usable number (NaN or infinite); silence was put there.`,
    'midiFile.cut': ({ name }: Named) => `${name} is cut short; the notes that are there were taken.`,
    'midiFile.partTaken': ({
      name,
      parts,
      part,
      title,
      track,
      channel,
    }: Named & {
      parts: number;
      part: number;
      /** The name of the track, or null. */
      title: string | null;
      track: number | null;
      channel: number | null;
    }) => {
      const place = channel === null ? `track ${track ?? 1}` : `channel ${channel}`;
      return `${name} has ${parts} ${noun(parts, 'part')} with notes; ${title === null ? place : `"${title}" (${place})`} was taken, part ${part}.`;
    },
    'midiFile.unread': ({ name, texts }: Named & { texts: readonly string[] }) =>
      `${name}: ${texts.map((text) => `“${text}”`).join(', ')} was not read as a chord.`,
    'score.lostJumps': ({ name }: Named) =>
      `${name}: its jumps (D.C., D.S., coda) have no place to jump to; the bars are played in the order in which they are written.`,
    'score.unreadChord': ({ name, bar, what }: Named & { bar: string; what: string | null }) =>
      `${name}: in bar ${bar} ${what === null ? 'a chord without a root' : `“${what}”`} can’t be read as a chord; the chord before it goes on.`,
    'score.repeatAfterJump': ({ name }: Named) =>
      `${name}: repeats that should be played after a D.C. or D.S. are not played there.`,
    'removal.silent': ({ name }: Named) =>
      `${name} is silent, so there is nothing to take out; the take is graded as it is.`,
    'removal.notHeard': ({ take, backing }: { take: string; backing: string }) =>
      `${backing} is not heard in ${take} within 10 seconds of its start: it may be another recording or another tempo, or headphones kept it out of the microphone; the take is graded as it is.`,
    'removal.wandering':
      'The band is heard in the take, but its timing jumped several times, so it could not be taken out: some of the notes may be the band’s. Close other programs, and do a sound check before the next take.',
    'removal.slipped': ({
      ms,
      time,
      more,
      late,
    }: {
      ms: number;
      time: string;
      more: number;
      late: boolean;
    }) =>
      `The timing of the band jumped by ${ms} ms at ${time}${more > 0 ? `, and ${more} more ${noun(more, 'time')} after that` : ''}: the band was taken out before and after that, but the notes after the jump are placed ${ms} ms too ${late ? 'late' : 'early'}.`,

    'band.unknownFeel': ({ feel }: { feel: string }) =>
      `The band can’t play the feel “${feel}”; it plays these bars like the others, or with the feel of --feel.`,

    // ── of the app ──
    'microphone.processing': ({ echo, noise, gain }: { echo: boolean; noise: boolean; gain: boolean }) => {
      const kept = [echo && 'echo cancellation', noise && 'noise suppression', gain && 'automatic gain'];
      const names = kept.filter((name) => name !== false);
      return `The browser left ${joinWith(names, 'and')} on, which removes notes: turn it off in the sound settings of the system.`;
    },
    'microphone.telephone':
      'This headset sends sound of telephone quality: use a wired microphone, or the one in the laptop.',
    'take.emptyNotKept': 'No note was heard, so this take is not kept.',
    'midi.nothingPlugged': 'No MIDI instrument is plugged in yet; it will be heard as soon as it is.',
    'devices.notChecked':
      'You play through other devices than at your last sound check: do a sound check with these, it takes half a minute.',
    'band.cameBack': ({ ms, placedByIt }: { ms: number; placedByIt: boolean }) =>
      `The band came back through the microphone, ${ms} ms late: it was taken out` +
      `${placedByIt ? ', and your notes are placed by that delay' : ''}. After a sound check this is done while you play.`,
  },

  // The screen before a take.
  ready: {
    // On the button, while a take is opened.
    opening: {
      microphone: 'Opening the microphone …',
      band: 'Opening the band …',
      backing: 'Opening the recording …',
      sound: 'Opening the sound …',
      midi: 'Opening MIDI …',
      take: 'Opening the take …',
      demo: 'Opening the demo take …',
      program: 'Fetching the rest of Landfall …',
      rendering: ({ share }: { share: number }) => `Rendering the recording: ${percent(share)} …`,
      file: ({ name }: { name: string }) => `Opening ${name} …`,
    },
    language: 'Language',
    headline: 'Land on the chord as it arrives.',
    about:
      'You improvise over the form. Landfall names every note against its chord and shows you where your line ' +
      'lands at each change.',
    start: 'Start playing',
    demo: 'Hear the demo take',
    soundCheck: 'Sound check',
    startWithMidi: 'Start listens to MIDI, to hear your notes.',
    startWithMicrophone: 'Start asks for the microphone, to hear your notes.',
    howItGoes:
      'Nothing leaves this machine. One bar is counted in. Stop or the space bar ends the take, and you see where you ' +
      'landed. If you play through speakers, do the sound check once.',

    // The light of the page.
    light: 'Light',
    lights: { auto: 'Auto', day: 'Day', night: 'Night' },

    // Files to open.
    openRecording: 'Open a recording',
    undo: 'Undo the last change',
    hearBand: { band: 'Listen to the band', backing: 'Listen to the backing' },
    stopBand: 'Stop listening',
    halfStepDown: 'A half step down',
    halfStepUp: 'A half step up',
    tooManyFiles: 'Open one recording, or two files: the recording and the backing that is in it.',
    whichIsYou: 'In which of the two do you play?',
    otherIsBacking:
      'The other file is used as the backing. It is removed from your recording before your line is heard.',
    neither: 'In neither: cancel',

    // Three low notes start the band.
    startByNotes: {
      listening: 'Listening: after a rest, play the same low note three times to start the band.',
      closed: ({ input }: { input: 'microphone' | 'midi' }) =>
        `Three low notes will start the band once the browser allows ${input === 'midi' ? 'MIDI' : 'the microphone'}: press Start playing this first time.`,
      asleep: 'Touch the page or press a key; then it listens for three low notes.',
      stop: 'Stop listening',
    },

    // The set list and the sheet.
    setList: 'Set list',
    ownCharts: 'Your own',
    ownBacking: ({ length }: { length: string }) => `your own backing, ${length}`,
    inKey: ({ key }: { key: string }) => `in ${key}`,
    writeChart: 'Write a chart',
    ownChanges: 'your own changes, written in bars',
    sheet: 'The sheet',
    ownChart: 'Your own chart',
    form: 'Form',
    bars: 'Bars of the form',
    concertPitchChart: ({ pitch }: { pitch: string }) =>
      `Write it at concert pitch. The page shows it as written for ${pitch}.`,
    feel: 'Feel',
    tempo: 'Tempo',
    key: 'Key',
    choruses: 'Choruses',
    untilStopped: 'until I stop',
    feels: {
      shuffle: 'shuffle',
      swing: 'swing',
      straight: 'straight',
      'slow-blues': 'slow blues',
      funk: 'funk',
      bossa: 'bossa',
      rock: 'rock',
      ballad: 'ballad',
    },

    // A chart of the player's own.
    chart: {
      label: 'Your chart, bar by bar',
      example: '| A7 | D7 | A7 | % |',
      /** Two pieces of chart text stand before and behind each of the next. */
      twoChords: 'Two chords share a bar:',
      repeat: 'repeats a bar,',
      noChord: 'is no chord,',
      bass: 'puts E in the bass.',
      title: 'Title',
      keep: 'Keep it',
      keepOver: 'Keep it in place of the old one',
      rename: 'Rename',
      remove: 'Remove',
      removeNamed: ({ title }: { title: string }) => `Remove ${title} from your own charts`,
      open: 'Open a chart',
      save: 'Save as MusicXML',
      file: 'A chart as text, MusicXML or MIDI',
    },

    // The player.
    player: {
      name: 'The player',
      landOn: 'Land on',
      instrument: 'Instrument',
      pitch: 'Chords and names',
      written: ({ pitch }: { pitch: string }) => `written for ${pitch}`,
      concert: 'at concert pitch',
      input: 'Heard by',
      microphone: 'the microphone',
      midi: 'MIDI',
      view: 'Shown on',
      noView: 'no instrument',
      midiFrom: ({ names }: { names: readonly string[] }) => `MIDI: ${names.join(', ')}.`,
      midiNone: 'MIDI: nothing is plugged in yet. The browser may ask before a page can use MIDI.',
      more: 'Display and hands-free control',
    },
    views: { neck: 'the neck', keyboard: 'a keyboard', staff: 'a staff' },
    instruments: {
      guitar: 'Guitar',
      'guitar-24': 'Guitar, 24 frets',
      'guitar-drop-d': 'Guitar, drop D',
      'guitar-half-down': 'Guitar, a half step down',
      'guitar-open-g': 'Guitar, open G',
      'guitar-dadgad': 'Guitar, D A D G A D',
      'guitar-7': 'Guitar, 7 strings',
      'guitar-8': 'Guitar, 8 strings',
      bass: 'Bass',
      'bass-5': 'Bass, 5 strings',
      violin: 'Violin',
      flute: 'Flute',
      clarinet: 'B♭ clarinet',
      trumpet: 'B♭ trumpet',
      'soprano-sax': 'Soprano sax (B♭)',
      'alto-sax': 'Alto sax (E♭)',
      'tenor-sax': 'Tenor sax (B♭)',
      'baritone-sax': 'Baritone sax (E♭)',
      trombone: 'Trombone',
      piano: 'Piano',
      voice: 'Voice',
    },

    // What the playing screen shows.
    display: {
      tonesBy: 'Tones by',
      byDegree: 'degree',
      byName: 'name',
      frets: 'Frets',
      allFrets: 'all',
      fretsAtHand: 'where my hand is',
      fiveFrom: ({ fret }: { fret: number }) => `five from ${fret}`,
      capo: 'Capo',
      noCapo: 'none',
      capoAt: ({ fret }: { fret: number }) => `fret ${fret}`,
      clef: 'Clef',
      treble: 'treble',
      bassClef: 'bass',
      leftHanded: 'Left-handed',
      leftHandedWhy: 'the neck is mirrored',
      quiet: 'Quiet page',
      quietWhy: 'shows landings only, no live note: you listen instead of looking',
      speak: 'Say landings',
      speakWhy: 'for a screen reader',
    },

    // The screen is run with both hands on the instrument.
    handsFree: {
      learnedFoot: ({
        kind,
        number,
        channel,
        how,
      }: {
        kind: 'controller' | 'program' | 'note';
        number: number;
        channel: number;
        how: 'plain' | 'inverted' | 'presses only';
      }) => {
        const note = {
          plain: '',
          inverted: ', its low value is down',
          'presses only': ', it sends presses only',
        }[how];
        return `${kind} ${number} on channel ${channel}${note}`;
      },
      pedal: 'Foot switch sends',
      pedals: { space: 'space', pages: 'page down, page up', arrows: 'arrows', enter: 'enter' },
      repeat: 'Repeat automatically',
      repeatWhy: 'after the last chorus you see the result, then the next take is counted in',
      midiPedal: 'A MIDI pedal controls the screen',
      midiPedalWhy: 'start, stop, play again; hold it down after a take for the next aim',
      playedSignal: 'Three low notes start and stop',
      playedSignalWhy:
        'after a rest, play the same low note three times, evenly, within two seconds; for that this page listens all the time',
      pressSwitch: 'Press the switch and let it go.',
      letGo: 'Let it go.',
      switchIs: ({ foot }: { foot: string }) => `The switch is ${foot}.`,
      anyPedal: 'The switch is any damper, sostenuto or soft pedal, on any channel.',
      neverMind: 'Cancel',
      learn: 'Learn another switch',
      forget: 'Forget this switch',
      /** Stands before, between and behind the keys of the dials. */
      keysBefore: 'While playing,',
      keysBetween: 'choose band, tempo, swing and count-in;',
      keysAnd: 'and',
      keysAfter: 'change them.',
      /** A switch that was learned: "control 64 on channel 1". */
      foot: ({
        kind,
        number,
        channel,
        how,
      }: {
        kind: string;
        number: number;
        channel: number;
        how: string;
      }) => `${kind} ${number} on channel ${channel}${how}`,
    },

    // How the form is practised.
    practice: {
      closed: 'Practise a part of it',
      inUse: ({ parts }: { parts: readonly string[] }) => `Practising: ${parts.join(', ')}`,
      fromBar: 'From bar',
      toBar: 'To bar',
      keys: 'Keys',
      oneKey: 'this one',
      cycles: {
        fourths: 'up a fourth each chorus',
        'half steps': 'up a half step each chorus',
        random: 'at random',
      },
      keyCount: 'How many keys',
      faster: 'Faster by, bpm',
      every: 'every',
      turns: 'Turns',
      noTurns: 'none, I play throughout',
      turnsOf: ({ bars }: { bars: number }) => `${several(bars, 'bar')} each, I begin`,
      over: 'Over',
      band: 'bass and chords',
      drones: { root: 'a drone on the root', 'root and fifth': 'a drone on root and fifth' },
      chordsRest: 'The chords rest every second chorus',
      click: 'A click on 2 and 4',
      turnsNote:
        'When it is the band’s turn, it plays an example of the tones you want to land on. Only your turns are graded.',
      sameBars: 'Your turns fall on the same bars each time: loop other bars to play the rest.',
      droneNote:
        'The chords of the chart are silent, but you are still graded by them. To practise over a single chord, write a chart with one chord.',
      chorusCount: ({ count }: { count: number }) => (count === 1 ? 'chorus' : `${count} choruses`),
      // Pieces of the summary.
      bars: ({ from, to }: { from: number; to: number }) => `bars ${from} to ${to}`,
      throughKeys: 'through the keys',
      fasterEvery: ({ bpm, choruses }: { bpm: number; choruses: number }) =>
        `${bpm} bpm faster every ${choruses === 1 ? 'chorus' : `${choruses} choruses`}`,
      turnsEach: ({ bars }: { bars: number }) => `turns of ${several(bars, 'bar')}`,
      overDrone: 'over a drone',
      chordsEverySecond: 'chords every second chorus',
      clickOn: 'click on 2 and 4',
    },

    // The sound of the band.
    sound: {
      band: 'Band',
      parts: { drums: 'Drums', bass: 'Bass', chords: 'Chords', line: 'Its solos', click: 'Click' },
      silent: 'silent',
      decibels: ({ level }: { level: number }) => `${level} decibels`,
      care:
        'It starts quiet: turn it up only until you hear the changes. Loud headphones harm hearing. Rest when a hand ' +
        'hurts or tingles; if it stays, see a clinician who knows musicians.',
      more: 'Levels of the parts, swing, count-in, tuning',
      swing: 'Swing',
      straight: 'straight',
      swingShare: ({ percent }: { percent: number }) => `${percent} per cent`,
      countIn: 'Count-in',
      bars: ({ bars }: { bars: number }) => several(bars, 'bar'),
      tunedTo: 'Tuned to',
      asPlayed: 'what I play',
      reference: ({ hz }: { hz: number }) => `A = ${hz} Hz`,
    },

    // Earlier takes.
    takes: {
      heading: 'Earlier takes',
      /** Before and behind the title of the take. */
      cutOff: 'A take was cut off:',
      kept: ({ length }: { length: string }) => `${length} of it is kept.`,
      grade: 'Grade it',
      throwAway: 'Throw it away',
      remove: 'Remove',
      removeNamed: ({ title }: { title: string }) => `Remove ${title}`,
      removeForGood: 'Remove for good',
      heldOnly: 'Only those with a star',
      keep: 'Keep',
      saveAll: 'Save all takes in one file',
      /** How much room the sounds take, in megabytes. */
      size: ({ megabytes }: { megabytes: number }) => diskRoom(megabytes),
      room: ({ megabytes, freeMegabytes }: { megabytes: number; freeMegabytes: number | null }) =>
        `The sound of all takes needs ${diskRoom(megabytes)}${freeMegabytes === null ? '' : `; ${diskRoom(freeMegabytes)} are free`}.`,
      roomIsShort: ({ takes, megabytes }: { takes: number; megabytes: number }) =>
        `The disk is nearly full. The sound of the oldest ${several(takes, 'take')} without a star needs ${diskRoom(megabytes)}; grades and notes stay when it is removed.`,
      removeOldSound: 'Remove this sound',
      bringIn: 'Bring takes in from files',
      comingIn: ({ done, of }: { done: number; of: number }) => `Coming in: ${done} of ${of}`,
      goingOut: ({ done, of }: { done: number; of: number }) => `Saving: ${done} of ${of}`,
      recording: 'recording',
      notGraded: 'not graded yet',
      noLandings: 'no landings',
      thirds: ({ thirds, landings }: { thirds: number; landings: number }) =>
        `thirds on ${thirds} of ${landings} landings`,
    },

    // The built-in forms. Their names are those of the command line; here they are as a set list shows them.
    formGroups: {
      'one or two chords': 'One or two chords',
      blues: 'Blues',
      cadences: 'Cadences',
      chains: 'Chains',
      'other meters': 'Other meters',
      tunes: 'Tunes',
    },
    forms: {
      'one-chord vamp': {
        title: 'One-chord vamp',
        trains: 'One dominant chord for as long as you like: find its third and its flat seventh.',
      },
      'minor one-chord vamp': {
        title: 'Minor one-chord vamp',
        trains: 'One minor chord for as long as you like: find its third and its seventh.',
      },
      'two-chord vamp': {
        title: 'Two-chord vamp',
        trains: 'I and IV, two bars each: the third of the I falls a half step to the seventh of the IV.',
      },
      'minor two-chord vamp': {
        title: 'Minor two-chord vamp',
        trains: 'Minor I and the dominant a fourth above it, a bar each.',
      },
      '12-bar blues': {
        title: '12-bar blues',
        trains: 'Three dominant chords with time on each: hear the third change from I to IV.',
      },
      'quick-change blues': {
        title: 'Quick-change blues',
        trains: 'The IV arrives in bar 2: be ready for it at once.',
      },
      'jazz blues': {
        title: 'Jazz blues',
        trains:
          'The blues with a ii–V to the IV, a diminished passing chord and a turnaround of two chords a bar.',
      },
      'minor blues': {
        title: 'Minor blues',
        trains: 'Minor tonic and minor IV, then the chord on the flat sixth, which falls to the dominant.',
      },
      '8-bar blues': {
        title: '8-bar blues',
        trains: 'The short form: the V comes already in bar 2.',
      },
      '16-bar blues': {
        title: '16-bar blues',
        trains: 'The long form: eight bars on the I before the first change.',
      },
      'major ii-V-I': {
        title: 'Major ii–V–I',
        trains: 'The most common cadence of jazz: the seventh of each chord falls to the third of the next.',
      },
      'minor ii-V-I': {
        title: 'Minor ii–V–I',
        trains: 'The cadence in minor: half-diminished, a dominant with its flat ninth, minor sixth.',
      },
      turnaround: {
        title: 'Turnaround',
        trains: 'Two chords a bar: another third every two beats.',
      },
      'minor line': {
        title: 'Minor line',
        trains:
          'One minor chord whose inner voice falls by half steps: root, major seventh, flat seventh, sixth.',
      },
      'plagal cadence': {
        title: 'Plagal cadence',
        trains:
          'The IV changes from major to minor: its third falls a half step. The dominant on the flat seventh leads back to the I.',
      },
      'chain of dominants': {
        title: 'Chain of dominants',
        trains: 'Each seventh falls a half step to the next third, each third to the next seventh.',
      },
      'descending ii-Vs': {
        title: 'Descending ii–Vs',
        trains: 'A ii–V in each bar, each a step lower than the last: the guide tones fall by step.',
      },
      'diatonic circle': {
        title: 'Diatonic circle',
        trains: 'The seven chords of a minor key by falling fifths, the leading tone only at the end.',
      },
      'side step': {
        title: 'Side step',
        trains: 'One minor chord, then the same a half step higher: all tones move up, and back again.',
      },
      '3/4 blues': {
        title: '3/4 blues',
        trains: 'The blues in three: the strong beat comes every three beats.',
      },
      '12/8 blues': {
        title: '12/8 blues',
        trains: 'Slow, three eighths to a beat, a ninth in every chord: time to hear each third.',
      },
      '5/4 vamp': {
        title: '5/4 vamp',
        trains: 'Minor I for three beats, its dominant for two: hear where the dominant begins.',
      },
      '6/8 ballad': {
        title: '6/8 ballad',
        trains: 'Two slow beats a bar, triads over a moving bass: only the third tells major from minor.',
      },
      '32-bar AABA': {
        title: '32-bar AABA',
        trains: 'Two chords a bar around the tonic, then a bridge of dominants that last two bars each.',
      },
      '16-bar minor tune': {
        title: '16-bar minor tune',
        trains: 'A minor key, a ii–V–I to its relative major in the middle, and back: two tonics to hear.',
      },
    },
  },

  // The screen during a take.
  playing: {
    title: 'Playing',
    beatsInBar: ({ beats }: { beats: number }) => `${beats} beats in the bar`,
    you: 'you',
    theBand: 'band',
    /** Between whose turn it is and how many bars it still lasts. */
    turnFor: 'for',
    countIn: 'count-in',
    /** Before and behind the number of the chorus. */
    chorus: 'chorus',
    keyOf: ({ key, of }: { key: number; of: number }) => `, key ${key} of ${of}`,
    ofChoruses: ({ choruses }: { choruses: number }) => ` of ${choruses}`,
    inKey: 'in',
    tempo: 'tempo',
    stop: 'Stop',
    stopKey: 'space',
    toReview: 'To the review',
    demo: 'demo take',
    microphoneLevel: 'Level of the microphone',
    microphone: 'mic',
    listening: 'listening',
    next: 'Next:',
    /** Before and behind the number of beats until the next chord. */
    inBeats: 'in',
    beats: ({ beats }: { beats: number }) => (beats === 1 ? 'beat' : 'beats'),
    /** The aim in hand at the head of the stage, by its id, as short as it can be said. */
    aims: {
      'guide-tones': 'thirds and sevenths',
      'chord-tones': 'chord tones as they arrive',
      'third-over-one': 'the third over the I',
      'flat-third-into-third': 'the b3 into the 3',
      'add-the-sixth': 'the sixth over the I',
      'add-the-ninth': 'the ninth over the I',
      'third-sixth-ninth': 'third, sixth and ninth in one chorus',
      'third-on-arrival': 'thirds as they arrive',
      'guide-tones-by-step': 'guide tones by step',
      'phrases-end-on-chord-tones': 'phrase ends on chord tones',
      'off-the-third-over-four': 'off the key’s major third over the IV',
    },
    aimInHand: 'The aim in hand',
    aimSoFar: ({ hits, of }: { hits: number; of: number }) => `${hits} of ${of} so far`,
    /** Before the tones that the aim asks for while the chord lasts. */
    aimNow: 'now',
    // One line on the first take.
    legend: {
      name: 'What the marks mean',
      landHere: 'land here next',
      inChordNow: 'in the chord now',
      fits: 'fits as well',
      heavyLine: 'your line, in the chord',
      lightLine: 'not in the chord',
    },
    tonesToLandOn: 'Tones to land on',
    stays: 'stays',
    chords: 'Chords',
    form: 'The form',
    yourTurn: 'Your turn.',
    bandsTurn: 'The band’s turn: listen.',
    youIn: 'you in',
    getReady: 'get ready',
    listen: 'listen',

    // Band, tempo, swing and count-in while playing. The keys that choose them are in every language b, t, s and c.
    dials: {
      name: 'Band and time',
      names: { band: 'band', tempo: 'tempo', swing: 'swing', 'count-in': 'count-in' },
      less: {
        band: 'band quieter',
        tempo: 'tempo slower',
        swing: 'swing straighter',
        'count-in': 'count-in shorter',
      },
      more: {
        band: 'band louder',
        tempo: 'tempo faster',
        swing: 'swing more',
        'count-in': 'count-in longer',
      },
      silent: 'silent',
      straight: 'straight',
      bars: ({ bars }: { bars: number }) => several(bars, 'bar'),
      bandCare: ({ level }: { level: string }) =>
        `Band ${level}. Keep it low enough to talk over: loud sound harms hearing.`,
      tempoSet: ({ value, countingIn }: { value: string; countingIn: boolean }) =>
        `Tempo ${value}: ${countingIn ? 'it counts in again' : 'from the next take on'}.`,
      swingSet: ({ value, countingIn }: { value: string; countingIn: boolean }) =>
        `Swing ${value}: ${countingIn ? 'it counts in again' : 'from the next take on'}.`,
      countInSet: ({ value, countingIn }: { value: string; countingIn: boolean }) =>
        `Count-in ${value}: ${countingIn ? 'it counts in again' : 'from the next take on'}.`,
    },
  },

  // The page of help. Marks have their meanings under `parts`.
  help: {
    title: 'What it means',
    open: 'What it means',
    close: 'Close',
    whatIsThis: 'What does this mean?',
    aboutMarks:
      'Each mark says what a note is to the chord under it. A full mark is a tone of the chord, an open one is not. The figure beside it counts from the chord’s root.',
    sections: {
      marks: 'The marks',
      stage: 'While you play',
      landing: 'Landings',
      result: 'After a take',
      sound: 'Sound and time',
    },
    entries: {
      chords: {
        word: 'the two chords',
        says: 'The large chord sounds now. The one on the right comes next; the number says in how many beats.',
      },
      targetStroke: {
        word: 'the stroke under a tone',
        says: 'Your line can land on this tone. The stroke marks the tones that your aim asks for at the next chord.',
      },
      instrument: {
        word: 'marks on the instrument',
        says: 'A large mark on a stroke: a tone to land on at the next chord. A small mark: a tone of the chord that sounds now. A very small lozenge: a scale tone, which fits as well. The ring is the note that you play; the curve leads from it to the nearest tone to land on.',
      },
      liveLine: {
        word: 'your line',
        says: 'The line shows the pitch of what you play. It is thick where the note belongs to the chord, and thin where it does not. At each change the drawing begins anew.',
      },
      note: {
        word: 'the note on the left',
        says: 'The note that you play now: its mark, its degree over the chord, its name, and how many cents it is sharp or flat.',
      },
      aim: {
        word: 'aim',
        says: 'What you try to do in this take. While you play, the count beside it says how often you did it, and of how many times. The aim is reached when you do it often enough, and more often than luck would.',
      },
      turns: {
        word: 'turns',
        says: 'You and the band play the same number of bars, one after the other. Only your turns are graded.',
      },
      form: {
        word: 'the form',
        says: 'All bars of one chorus. The heavy line is where you are; the marks are your landings.',
      },
      change: {
        word: 'change',
        says: 'The place where a new chord begins, and the first chord of all. The same chord over another bass is not a change.',
      },
      landing: {
        word: 'landing',
        says: 'Your first note on a new chord: the first one from an eighth before the change to one beat after it, or a note that you hold into it.',
      },
      chordTone: {
        word: 'chord tone',
        says: 'A tone that the chord’s symbol names: root, third, fifth, seventh, and a 9, 11 or 13 where it is written.',
      },
      guideTone: {
        word: 'guide tone',
        says: 'The third or the seventh: the two tones by which a chord is told from another. In a sus chord the fourth takes the place of the third.',
      },
      earlyLate: {
        word: 'early, late',
        says: 'How far from the change the landing began. A difference of less than about 10 ms can’t be heard.',
      },
      anticipation: {
        word: 'an eighth early',
        says: 'A landing that comes an eighth before the change, on purpose, belongs to the new chord. It is not a mistake.',
      },
      chorus: { word: 'chorus', says: 'Once through the form.' },
      luck: {
        word: 'luck',
        says: 'What the same notes would reach if they were played at random places over the chords. Only a result clearly above that is yours.',
      },
      tooShort: {
        word: 'one more chorus will tell',
        says: 'So few landings may be luck, good or bad. Play on, and there are enough for an answer.',
      },
      doubt: {
        word: 'the thick stroke',
        says: 'Your share differs a little from take to take. Your true share probably lies somewhere on the stroke, which gets shorter the more you play.',
      },
      phrase: {
        word: 'phrase',
        says: 'Notes between two rests of a beat or more. Its last note is the phrase end.',
      },
      strongBeat: {
        word: 'strong beat',
        says: 'Beats 1 and 3 in four, 1 in three: the beats on which a chord is heard most clearly.',
      },
      palette: {
        word: 'scale tone',
        says: 'A tone of the major or minor pentatonic of the key that is not in the chord: it fits, but it is not a landing on the chord.',
      },
      figure: {
        word: 'figure',
        says: 'A few notes that come back in the same order. However often it comes back, it counts once in the comparison with luck.',
      },
      trend: {
        word: 'getting better, no trend',
        says: 'One good day is not progress. “Getting better” stands there only where your takes rise by more than they differ from day to day.',
      },
      due: {
        word: 'for today',
        says: 'A change that went badly is due the next day. One that went well is due after two days, then four, and so on.',
      },
      delay: {
        word: 'delay',
        says: 'The time from the loudspeaker to your ear, and from the microphone into the machine. It is subtracted, so that early and late are right.',
      },
      soundCheck: {
        word: 'sound check',
        says: 'It measures the level, the delay, and how the band comes back into the microphone. Do it once for each pair of devices.',
      },
      bandOut: {
        word: 'the band taken out',
        says: 'When the band plays through loudspeakers, the microphone hears it too. It is subtracted before your notes are named.',
      },
      cents: { word: 'cents', says: 'Hundredths of a half step, from the pitch that you tune to.' },
    },
  },

  // The page over days.
  progress: {
    title: 'From day to day',
    back: 'Back',
    open: 'What to practise today',
    nothingYet: 'Play a take: the next day this page shows the changes that went worst.',
    counted: ({ takes, days }: { takes: number; days: number }) =>
      `${several(takes, 'take')} on ${several(days, 'day')}. It counts when you land on the third or the seventh of a chord as it arrives; for an aim, what the aim asks for.`,
    today: 'For today',
    why: 'The weakest changes that are due. A change that goes well comes back after some days; one that does not comes back tomorrow.',
    nothingDue: 'Nothing is due today: play what you like.',
    change: ({ from, to }: { from: string; to: string }) => `${from} to ${to}`,
    met: ({ hits, of }: { hits: number; of: number }) =>
      `Third or seventh ${hits} of ${several(of, 'time')}.`,
    lastPlayed: ({ days }: { days: number }) =>
      days <= 0 ? 'Played today.' : days === 1 ? 'Played yesterday.' : `Played ${days} days ago.`,
    practise: 'Practise it',
    practiseNamed: ({ change }: { change: string }) => `Practise it: ${change}`,
    byAim: 'Aims',
    byForm: 'Forms',
    byChord: 'Chords',
    byKey: 'Keys',
    columns: { what: 'What', course: 'Day by day', counts: 'In all, and the trend' },
    directions: {
      rising: 'getting better',
      falling: 'going down',
      steady: 'no clear trend',
      'too few': 'too few takes to tell',
    },
    twoTakes: 'Two takes side by side',
    takeChoice: { first: 'First take', second: 'Second take' },
    openTake: 'Open it',
    chorus: ({ chorus }: { chorus: number }) => `Chorus ${chorus}`,
    wholeTake: 'In all',
    differences: {
      better: 'The second take lands better than the first, and by more than luck.',
      worse: 'The second take lands worse than the first, and by more than luck.',
      'no difference': 'They differ no more than two takes on the same day usually do.',
      'too few': 'Too few landings in one of them to tell.',
    },
  },

  // The screen after a take.
  review: {
    unsaved: {
      title: 'This take is kept nowhere',
      text: 'There was no room for it on the disk. If you leave it now, it is lost.',
      save: 'Save it as a file, then leave',
      lose: 'Leave without it',
      stay: 'Stay',
    },
    thisTake: 'This take',
    back: 'Back',
    saveReport: 'Save the report',
    saveSound: 'Save the sound',
    saveNotes: 'Save the notes',
    inASentence: 'In one sentence',
    goOn: { again: 'Play it again', yourself: 'Play it yourself', bars: 'Try these bars again' },
    nextAim: ({ name }: { name: string }) => `Next aim: ${name}`,
    againIn: 'again in',
    stayHere: 'Stay here',
    yourAim: 'Your aim:',
    good: 'Good',
    toTry: 'To try',
    inTime: 'In time',
    numbers: 'The numbers',
    landings: 'Landings',
    barsOfForm: 'Bars of the form',
    line: 'The line',
    lostIsHatched: 'These places are hatched on the line.',
    correctedIsWaved: 'A wave stands under each of them; what was heard is drawn faintly behind.',
    heard: 'What else is heard',
    gradeThere: 'Grade it from there',
    gradeInKey: ({ key }: { key: string }) => `Grade it in ${key}`,

    // The facts of a take, one after the other.
    facts: {
      bpm: ({ bpm }: { bpm: number }) => `${bpm} bpm`,
      notes: ({ count }: { count: number }) => (count === 1 ? '1 note' : `${count} notes`),
      bandTakenOut: ({ db }: { db: number }) =>
        db === 0 ? 'band not taken out' : `band made ${db} dB quieter`,
      reference: ({ hz, estimated }: { hz: number; estimated: boolean }) =>
        `A = ${decimal(hz, estimated ? 1 : 0)} Hz`,
    },

    // The line over the chords.
    zoom: 'Zoom',
    closer: 'Closer',
    wider: 'Wider',
    notesList: 'Notes of the take: arrow keys go from one to the next, Delete takes one out or lets it count',
    /** How a note that counts in no share is read out; `note` is its name and what it is over its chord. */
    spokenDoubtful: ({ note }: { note: string }) => `doubtful: ${note}`,
    spokenTakenOut: ({ note }: { note: string }) => `taken out: ${note}`,
    /** How many notes count in no share, and how they are drawn; at least one. */
    notCounted: ({ doubtful, takenOut }: { doubtful: number; takenOut: number }) =>
      [
        ...(doubtful === 0
          ? []
          : [
              doubtful === 1
                ? '1 note is doubtful (a dashed ring on the line) and counts in no share.'
                : `${doubtful} notes are doubtful (dashed rings on the line) and count in no share.`,
            ]),
        ...(takenOut === 0
          ? []
          : [
              takenOut === 1
                ? 'You took 1 note out (a crossed ring).'
                : `You took ${takenOut} notes out (crossed rings).`,
            ]),
      ].join(' '),

    // Correcting notes by hand.
    edit: {
      bar: 'Correct by hand',
      open: 'Correct notes (E)',
      close: 'Done correcting (E)',
      hint: 'Choose a note on the line. Drag it to move it in time and pitch; drag its end to stretch it.',
      verbs: {
        up: 'Half step up',
        down: 'Half step down',
        earlier: 'Earlier',
        later: 'Later',
        shorter: 'Shorter',
        longer: 'Longer',
        split: 'Split here',
        join: 'Join with next',
        add: 'Add a note',
        delete: 'Delete',
        undo: 'Undo',
        redo: 'Redo',
      },
      groups: { pitch: 'Pitch', time: 'Time', note: 'Note', history: 'Steps' },
      allBack: 'Back to what was heard',
      askAllBack: ({ count }: { count: number }) =>
        `Take back ${count === 1 ? 'the one correction' : `all ${count} corrections`} of this take?`,
      yes: 'Take them back',
      no: 'Keep them',
      noNote: 'Choose a note first.',
      nothingTo: { undo: 'There is nothing to undo.', redo: 'There is nothing to redo.' },
      said: {
        pitch: ({ name }: { name: string }) => `It is ${name} now.`,
        moved: ({
          name,
          ms,
        }: {
          name: string;
          /** null for a note that was not heard. */ ms: number | null;
        }) =>
          ms === null
            ? `${name} is moved.`
            : ms === 0
              ? `${name} begins where it was heard.`
              : `${name} begins ${Math.abs(ms)} ms ${ms < 0 ? 'earlier' : 'later'} than it was heard.`,
        lasts: ({ name, ms }: { name: string; ms: number }) => `${name} lasts ${ms} ms now.`,
        split: ({ name }: { name: string }) => `${name} is two notes now.`,
        joined: ({ name }: { name: string }) => `${name} is one note with the next now.`,
        added: ({ name }: { name: string }) => `${name} is added.`,
        deleted: ({ name }: { name: string }) => `${name} is deleted.`,
        counts: ({ name }: { name: string }) => `${name} counts now.`,
        countsNot: ({ name }: { name: string }) => `${name} no longer counts.`,
        asHeard: ({ name }: { name: string }) => `${name} is as it was heard.`,
        undo: ({ left }: { left: number }) =>
          `Undone. ${left === 0 ? 'No correction is left' : left === 1 ? '1 correction is left' : `${left} corrections are left`}.`,
        redo: ({ left }: { left: number }) =>
          `Done again: ${left === 1 ? '1 correction' : `${left} corrections`}.`,
        allBack: 'All notes are as they were heard. Redo brings the corrections back, one by one.',
      },
      refused: {
        'no note': 'That note is no longer there.',
        'no next note': 'No note comes after it.',
        'too short': 'A note would be too short: it needs 50 ms.',
        together: 'There is no room: another note sounds there.',
        'too many': 'This take has as many corrections as it can hold. Undo some first.',
      },
      countKey: 'let a note count, or not',
      inLine:
        'While you correct, E closes the bar, the arrows up and down on the line change the pitch, and Ctrl+Z undoes.',
      spokenCorrected: ({ note }: { note: string }) => `corrected: ${note}`,
    },

    // The playback.
    pause: 'Pause',
    hearTake: 'Hear the take',
    placeInTake: 'Place in the take',
    speed: 'Speed',
    speeds: { 1: 'full', 0.75: '¾', 0.5: 'half' },
    mix: 'Hear',
    mixes: { both: 'line and band', line: 'line', band: 'band' },
    loop: 'Loop these bars',
    looped: ({ fromBar, toBar }: { fromBar: number; toBar: number }) =>
      fromBar === toBar ? `Looping bar ${fromBar}` : `Looping bars ${fromBar} to ${toBar}`,
    showKeys: 'Keys (?)',
    keysTitle: 'Keys',
    keysInLine:
      'On the line itself the arrow keys go from note to note. Drag across the chord names to loop their bars.',
    closeKeys: 'Close',
    keyNames: {
      ArrowUp: '↑',
      ArrowDown: '↓',
      Delete: 'Delete',
      ' ': 'Space',
      ArrowLeft: '←',
      ArrowRight: '→',
      Home: 'Home',
    },
    keys: {
      play: 'play, pause',
      'bar back': 'a bar back',
      'bar on': 'a bar on',
      start: 'to the start',
      loop: 'loop these bars, or no longer',
      'loop starts': 'the loop starts here',
      'loop ends': 'the loop ends here',
      speed: 'full speed, three quarters, half',
      mix: 'line and band, line, band',
      note: 'hear the chosen note',
      correct: 'correct notes by hand, or no longer',
      keys: 'this list',
    },

    // A delay that the take makes suspect.
    takeDelay: ({ ms, isLate, stays }: { ms: number; isLate: boolean; stays: boolean }) =>
      `Count the notes ${ms} ms ${isLate ? 'earlier' : 'later'}${stays ? ', now and with these devices' : ''}`,
    openSoundCheck: 'Open the sound check',
    nothingHeard: 'The microphone heard no note. The sound check shows within seconds whether it hears you.',

    // Where the first bar of an opened recording starts.
    firstBeatBefore: 'The first bar of the chart starts at',
    firstBeatAfter: 'seconds',
    takePlaybackPlace: 'Use the place of the playback',
    gradeAgain: 'Grade again',

    // The backing in an opened recording.
    askForBacking:
      'Is a backing in it too? Give its file, and it is taken out before your line is listened to.',
    giveBacking: 'Give its backing',
    giveOtherBacking: 'Give another backing',
    leaveBackingIn: 'Leave it in',
    backingNotFound: ({ name }: { name: string }) =>
      `${name} was not heard in it, so nothing was taken out: see the note below.`,
    backingTakenOut: ({
      name,
      offsetSeconds,
      atOnce,
      driftPpm,
      db,
    }: {
      name: string;
      offsetSeconds: number;
      atOnce: boolean;
      /** 0 where there is none worth a word. */
      driftPpm: number;
      db: number;
    }) => {
      const exact = `${decimal(Math.abs(offsetSeconds), 2)} s`;
      const begins = atOnce
        ? `begins with the recording (within ${exact})`
        : offsetSeconds > 0
          ? `begins ${exact} into the recording`
          : `had run for ${exact} when the recording began`;
      const clock =
        driftPpm === 0
          ? ''
          : `, and runs ${Math.abs(driftPpm)} millionths too ${driftPpm > 0 ? 'fast' : 'slow'}`;
      return `${name} ${begins}${clock}; ${db === 0 ? 'it could not be made quieter' : `it was made ${db} dB quieter`}.`;
    },

    // Advice.
    advice: 'Next time',
    to: 'to',
    showNote: 'Show the note',
    hearYours: 'Hear yours',
    hearResolved: 'Hear it resolved',
    tryBars: ({ fromBar, toBar }: { fromBar: number; toBar: number }) =>
      fromBar === toBar
        ? `Loop bar ${fromBar} and try again`
        : `Loop bars ${fromBar} to ${toBar} and try again`,
    /** Why bars can't be looped. */
    notTried: {
      recording: 'To loop these bars, play the chart with the band: your backing goes round as it is.',
      keys: 'To loop these bars, play the form in one key: this take goes through several.',
    },

    // Bars that were tried again, beside the take that they are from.
    beside: 'First time and now',
    /** `of` is 0 where nothing landed. */
    besideCounts: ({
      asked,
      fromBar,
      toBar,
      first,
      now,
    }: {
      asked: 'thirds' | 'guideTones' | 'chordTones';
      fromBar: number;
      toBar: number;
      first: { hits: number; of: number };
      now: { hits: number; of: number };
    }) => {
      const tone = {
        thirds: 'the third',
        guideTones: 'the third or the seventh',
        chordTones: 'a chord tone',
      }[asked];
      const told = ({ hits, of }: { hits: number; of: number }) =>
        of === 0 ? 'nothing played' : `${hits} of ${of}`;
      const where = fromBar === toBar ? `bar ${fromBar}` : `bars ${fromBar} to ${toBar}`;
      return `On ${tone} in ${where}: ${told(first)} the first time, ${told(now)} now.`;
    },
    besideVerdicts: {
      more: 'That is more than luck.',
      fewer: 'That is fewer than before, and not by luck.',
      'too early': 'Too few yet to call it a change: one more go will tell.',
    },
    besideFirst: 'First time',
    besideNow: 'Now',
    besideHear: { first: 'Hear it: first time', now: 'Hear it: now' },
    besideChange: ({ bar, chord }: { bar: number; chord: string }) => `Bar ${bar}, ${chord}`,
    besideRest: 'a rest',
    besideAim: 'The aim',
    wholeForm: 'Play the whole form again',

    // The chosen note.
    noteBefore: 'Note before',
    noteAfter: 'Note after',
    hearNote: 'Hear it',
    stopHearing: 'Stop it',
    letCount: 'Let it count',
    takeOut: 'Take it out',
    asHeard: 'As it was heard',
    noNote: 'No note was heard in this take.',
    chooseNote: 'Choose a note to see what it was and which rule decided.',

    // Aims.
    aims: 'Aims',
    next: 'Next',
    playForIt: 'Play for it now',

    // Shares and their chance levels.
    shares: 'How much, and is it luck?',
    sharesKey:
      'The note head marks your share. The stroke shows how far the share may be from your true one after so few notes. ' +
      'The wave shows what the same notes would reach if they were scattered over the chart by chance.',
    sharesMore: 'Phrase ends, strong beats, all notes, by length',
    events: {
      landings: 'Landings',
      phraseEnds: 'Phrase ends',
      strongBeats: 'Strong beats',
      allNotes: 'All notes',
      byLength: 'By length',
    },
    tones: { thirds: 'thirds', guideTones: 'guide tones', chordTones: 'chord tones' },
    none: 'none',
    nothingToCount: 'Nothing to count in this take.',
    secondsOf: ({ hits, of }: { hits: number; of: number }) => `${decimal(hits, 1)} of ${decimal(of, 1)} s`,
    /** Shares from 0 to 1; null where a part is not told. */
    share: ({
      share,
      low,
      high,
      chance,
      verdict,
    }: {
      share: number | null;
      low: number | null;
      high: number | null;
      chance: number | null;
      verdict: 'above chance' | 'at chance' | 'below chance' | 'too short to tell';
    }) => {
      const range =
        low === null || high === null ? null : `somewhere from ${percent(low)} to ${percent(high)}`;
      const parts = [share === null ? null : percent(share), range].filter((part) => part !== null);
      const told = parts.join(', ');
      const luck = {
        'above chance': 'More than luck.',
        'at chance': 'No more than luck.',
        'below chance': 'Less than luck would give.',
        'too short to tell': 'Too short to tell.',
      }[verdict];
      const by = chance === null ? '' : `; chance gives ${percent(chance)}`;
      return `${told.charAt(0).toUpperCase()}${told.slice(1)}${by}. ${luck}`;
    },

    // Palette and thirds.
    palette: 'Thirds and scales',
    all: 'All',
    mixtures: {
      minorOnly: 'only minor pentatonic',
      both: 'in both',
      majorOnly: 'only major pentatonic',
      neither: 'in neither',
    },
    mixture: ({ share, name }: { share: number; name: string }) => `${percent(share)} ${name}`,
    thirds: ({ thirds, flatThirds }: { thirds: number; flatThirds: number }) =>
      `Over chords with a major third you play that third ${times(thirds)} and the minor third, the ♭3, ${times(flatThirds)}.`,
    noLeans: 'No ♭3 moved into the 3.',
    leans: ({ count, ways }: { count: number; ways: readonly string[] }) =>
      `The ♭3 moved ${times(count)} into the 3${ways.length === 0 ? '' : ` (${ways.join(', ')})`}.`,
    leanWays: { slid: 'slid', hammered: 'hammered', bent: 'bent', picked: 'picked' },
    leanWay: ({ count, way }: { count: number; way: string }) => `${count} ${way}`,
    falls: ({ count }: { count: number }) => `The 3 fell back ${times(count)} to the ♭3.`,
    leftHanging: ({ count }: { count: number }) => `A ♭3 was not resolved ${times(count)}.`,
    blueNotes: ({ count }: { count: number }) =>
      `A blue note between the two thirds sounded ${times(count)}.`,

    // Files of the take, and the command that grades them.
    takeAlong: 'Files of this take',
    wholeTake: 'The whole take',
    wholeTakeWhy:
      'One file with sound, notes, grade and set-up. Open it here or in another browser, and the take is back; the command line grades it, too.',
    lineAsNotes: 'Notes as MIDI, with bends and chords',
    notesAsTable: 'Notes as a table',
    formAsImage: 'Form as an image',
    reportAsJson: 'Report as JSON',
    lineAsWav: 'Line as WAV',
    lineAsMidi: 'Line as MIDI',
    beatsAsTable: 'Beats as a table',
    bandAsWav: 'Band as WAV',
    commandLine: 'Grade it at the command line',
    files: { own: 'your file', line: 'the line', beats: 'the beats', band: 'the band' },
    commandFolder: ({ files, band }: { files: readonly string[]; band: boolean }) =>
      `In the folder with ${files.join(', ')}:` +
      (band
        ? ' the command finds the band in the line and takes it out again, so it may hear some notes differently.'
        : ''),
    copy: 'Copy',
    copied: 'Copied',
  },

  // The line written out as notes: src/ui/notation.
  notation: {
    title: 'Written out',
    back: 'Back to the take',
    thisPage: 'This page',
    score: 'Score (MusicXML)',
    picture: 'Picture (SVG)',
    print: 'Print',
    degrees: 'Degrees',
    degreesWhy: 'Under each note, what it is to its chord.',
    tab: 'Tablature',
    tabWhy: 'Strings and frets that need the least motion of the hand.',
    capo: ({ fret }: { fret: number }) => `Capo on fret ${fret}; frets are counted from it.`,
    chorus: ({ chorus }: { chorus: number }) => `Chorus ${chorus}`,
    bars: ({ from, to }: { from: number; to: number }) =>
      from === to ? `Bar ${from}` : `Bars ${from} to ${to}`,
    noNotes: 'There is no note to write: in this take no note was heard surely enough to count.',
    quantised: 'The rhythm is rounded to what can be read; swung eighths are written straight.',
  },

  // The sound check.
  soundCheck: {
    title: 'Sound check',
    back: 'Back',
    microphone: 'Microphone',
    output: 'Output',
    systemDevice: 'The one chosen in the system',
    /** A device without a name: "Microphone 2". */
    deviceNumber: ({ kind, number }: { kind: string; number: number }) => `${kind} ${number}`,
    listenAgain: 'Listen again',
    level: 'Play something loud',
    levels: { silent: 'Nothing yet', 'turn up': 'Turn up', good: 'Good', 'too hot': 'Too loud' },
    notOpen: 'The microphone is not open.',
    levelFacts: ({ peakDb, floorDb, clipped }: { peakDb: number; floorDb: number; clipped: boolean }) =>
      `Loudest ${signed(peakDb)} dB, the room alone ${signed(floorDb)} dB of full scale.` +
      (clipped ? ' It clips: turn the input down, or move away from it.' : ''),
    strings: 'Open strings, one by one',
    notPlayed: 'not played',
    letRing: 'Let each one ring for a second.',
    againstStandard: 'Measured against A = 440 Hz until more strings were heard.',
    agreeOn: ({ hz }: { hz: number }) => `They agree on A = ${decimal(hz, 1)} Hz.`,
    room: 'The room',
    caution:
      'Three short rising tones (sweeps) are played, each a little louder than the last, at most as loud as quiet talk. Set ' +
      'the volume at which you will play, and low enough to talk over: loud sound harms hearing. Take headphones off your ' +
      'ears, and damp the strings.',
    playSweeps: 'Play the sweeps',
    sweeping: 'Quiet please: three sweeps …',
    delayUnknown:
      'The delay could not be measured, since nothing came back; the delay that the browser states is used instead.',
    /** spreadMs: null where the sweeps agree. */
    delay: ({ ms, spreadMs }: { ms: number; spreadMs: number | null }) =>
      `From speaker to microphone it takes ${ms} ms, ` +
      `${spreadMs === null ? 'the same each time' : `within ${decimal(spreadMs, 1)} ms from sweep to sweep`}.`,
    headphones: 'Headphones: there is no band to take out.',
    speakers: ({ db }: { db: number }) =>
      db === 0
        ? 'Speakers: the band can’t be taken out of what the microphone hears.'
        : `Speakers: the band is made ${db} dB quieter in what the microphone hears.`,
    leak: ({ db }: { db: number }) =>
      db === 0
        ? 'It comes back as loud as it is played.'
        : `It comes back ${Math.abs(db)} dB ${db < 0 ? 'quieter' : 'louder'} than it is played.`,
    delayTitle: 'The delay',
    byStrokes: ({ ms, spreadMs, strokes }: { ms: number; spreadMs: number; strokes: number }) =>
      `Measured by strokes: ${strokes} strokes came ${ms} ms after their clicks, half of them within ${spreadMs} ms of that. If you tend to play early or late, that is part of it.`,
    delaySet: ({ ms }: { ms: number }) => `Set by hand: ${ms} ms.`,
    delayAssumed: ({ ms }: { ms: number }) =>
      `Not measured: the delay that the browser states is used, ${ms} ms.`,
    strokesTask:
      'Through headphones the microphone does not hear the sweeps. Damp the strings, press the button, wait for four low ' +
      'clicks, then strike once with each of the eight high ones.',
    strokesNotForSpeakers:
      'With speakers, play the sweeps: the microphone could not tell strokes from clicks of a speaker.',
    strike: 'Strike with the click',
    striking: 'Four to count in, then eight strokes …',
    delayField: 'The delay in ms',
    delayLimits: ({ least, most }: { least: number; most: number }) =>
      `A whole number from ${least} to ${most}.`,
    takeMeasured: 'Use the measured delay',
    takeAssumed: 'Use the delay that the browser states',
  },

  // A recording that was opened, and what it is graded by.
  recording: {
    title: 'What did you play over?',
    reading: 'Reading the recording and looking for its tempo…',
    fromPulse: ({ bpm, seconds }: { bpm: number; seconds: number }) =>
      `The recording beats at ${trimmed(bpm, 1)} a minute, its first beat is at ${decimal(seconds, 2)} s. Listen and look whether the bars fit.`,
    wanders: ({ bpm, seconds }: { bpm: number; seconds: number }) =>
      `The recording beats at about ${trimmed(bpm, 1)} a minute, from ${decimal(seconds, 2)} s on, but its tempo wanders: the bars can’t fit from beginning to end.`,
    fromLine: ({ bpm, seconds }: { bpm: number; seconds: number }) =>
      `Nothing but your line tells the tempo: probably ${trimmed(bpm, 1)}, from ${decimal(seconds, 2)} s on. Tap it if that is wrong.`,
    noTempo:
      'No steady tempo was found. Type it, or tap it while you listen, and say where the first bar begins.',
    chords: 'Chords of the recording',
    gradeByThis: 'Right, grade by this',
    /** The file that was opened is only a backing. */
    playToIt: 'It is a backing: play to it',
    noChords: {
      alone: 'No chords were found: one line sounds alone.',
      stopped: 'The search for chords was stopped.',
    },
    /** Stands behind why no chords were found. */
    chartStays: ({ chart, bars }: { chart: string; bars: number }) =>
      `It is graded by the chart on the stand: ${chart}, ${several(bars, 'bar')}.`,
    anotherChart: ({ chart, bars }: { chart: string; bars: number }) =>
      `It is graded by ${chart}, ${several(bars, 'bar')}, not by the chords that were found.`,
    chart: 'Chart',
    begins: 'Where the first bar begins',
    beatEarlier: 'A beat earlier',
    beatLater: 'A beat later',
    listen: 'Listen',
    pause: 'Pause',
    place: 'Place in the recording',
    placeAt: ({ seconds }: { seconds: number }) => `${decimal(seconds, 2)} seconds`,
    grade: 'Grade it',
    later: 'You can change all of this afterwards. A copy is kept among your takes, on this machine.',
    gradedBy: ({ chart, bpm, seconds }: { chart: string; bpm: number; seconds: number }) =>
      `Graded over ${chart} at ${trimmed(bpm, 1)} bpm, the first bar at ${decimal(seconds, 2)} s.`,
    change: 'Change that',
    leave: 'Leave it as it is',
  },

  // The screen of a backing recording and its beats.
  backing: {
    title: 'Set the beats of your backing.',
    open: 'Bring your own backing',
    back: 'Back',
    throwAway: 'Throw it away',
    goOn: 'Continue editing',
    fallen: ({ name }: { name: string }) => `Open ${name} in place of this backing?`,
    keep: 'Use this backing',
    saveBeats: 'Save the beats as a table',
    busy: {
      reading: 'Now reading the backing …',
      listening: 'Now listening for its beats …',
      'finding chords': 'Now listening for its beats and chords …',
    },
    /** The chart that is found in the recording and proposed. */
    found: {
      heading: 'Chords of your backing',
      /** Stands behind the first chord. */
      ask: ({ bars, bpm, choruses }: { bars: number; bpm: number; choruses: number }) =>
        `${several(bars, 'bar')}, ${bpm}, ${several(choruses, 'chorus', 'choruses')}: right?`,
      right: 'Right, play to it',
      nothing: 'No chords were found: write the chart below.',
      allSure: 'Every bar is sure.',
      unsure: ({ bars, of }: { bars: number; of: number }) =>
        `${bars} of ${several(of, 'bar')} ${bars === 1 ? 'is' : 'are'} not sure: look at the ones with a question mark.`,
      bar: ({ bar, chords, sure }: { bar: number; chords: string; sure: boolean }) =>
        `Bar ${bar}: ${chords}${sure ? '' : ', not sure'}`,
      instead: ({ bar }: { bar: number }) => `Bar ${bar} instead:`,
      press: 'Press a bar to change it.',
      length: 'Bars of the form',
      form: ({ title, key, alike }: { title: string; key: string; alike: number }) =>
        alike > 0.995 ? `This is “${title}” in ${key}.` : `This is nearly “${title}” in ${key}.`,
      takeForm: 'Take this form',
      takeFound: 'Take the chords that were found',
      again: 'Find the chords again',
      overBeats: 'Find the chords over these beats',
      stop: 'Stop searching',
      done: 'Share of the search that is done',
    },
    help:
      'Space plays and taps. Drag a beat, or move it with the arrow keys; its neighbours follow. Press twice between ' +
      'two beats to add one.',
    beats: 'Beats',
    facts: 'Name, meter, tuning and chart',

    // The beats over the sound.
    noBeatChosen: 'No beat is chosen',
    beatBefore: ({ beats, time }: { beats: number; time: string }) =>
      `${several(beats, 'beat')} before bar 1, at ${time}`,
    beatAt: ({ bar, beat, time }: { bar: number; beat: number; time: string }) =>
      `Bar ${bar}, beat ${beat}, at ${time}`,
    setByHand: ({ beat }: { beat: string }) => `${beat}, set by hand`,
    wave: 'Beats of the backing. Up and down choose a beat, left and right move it by 10 milliseconds',
    inSight: 'Part of the backing that is shown',
    inSightFrom: ({ seconds }: { seconds: number }) => `from ${several(seconds, 'second')}`,

    // Playing and tapping.
    pause: 'Pause',
    tap: 'Tap a beat',
    play: 'Play with clicks',
    taps: ({ taps, bpm }: { taps: number; bpm: number | null }) =>
      `${several(taps, 'tap')}${bpm === null ? '' : `, ${bpm} a minute`}`,
    useTaps: 'Use the taps as beats',
    forgetTaps: 'Delete the taps',
    findAgain: 'Find the beats again',
    wide: 'Length shown',
    seconds: ({ seconds }: { seconds: number }) => several(seconds, 'second'),

    // What can be done with the beats.
    noBeats: 'No beats yet.',
    /** Stands behind the tempo. */
    tempoAndBars: ({ bars }: { bars: number }) => `beats a minute in the middle, ${several(bars, 'bar')}.`,
    otherTempos: 'Count it in another way:',
    countOther: ({ level, bpm }: { level: 'a third' | 'half' | 'twice' | 'three times'; bpm: number }) =>
      `Count ${level}: ${bpm} beats a minute`,
    chosenBeat: 'The chosen beat',
    chooseBeat: 'Choose a beat: press it, or use the arrow keys.',
    barOne: 'Bar 1 begins here',
    playFrom: 'Play from here',
    earlier: '10 ms earlier',
    later: '10 ms later',
    release: 'Do not fix it',
    hold: 'Fix it here',
    addBehind: 'Add one behind it',
    takeOut: 'Remove it',
    evenOut: 'Even out between fixed beats',
    continueTempo: 'Continue at this tempo',
    undo: 'Undo',

    // Name, meter, swing, tuning.
    name: 'Name',
    meter: 'Meter',
    eighths: 'Eighths',
    swings: { straight: 'straight', little: 'a little swung', swung: 'swung', shuffled: 'shuffled' },
    tunedTo: 'Tuned to',
    reference: ({ hz }: { hz: number }) => `A = ${hz} Hz`,

    // A backing in place of the band, on the open page.
    yours: 'Your backing',
    soundsAt: ({ bpm, hz }: { bpm: number; hz: number }) =>
      `Your own backing, ${bpm} beats a minute as it is played. It sounds at A = ${decimal(hz, 1).replace('.0', '')} Hz.`,
    speed: 'Speed',
    asRecorded: 'as recorded',
    cents: 'Higher or lower, in cents',
    fromBar: 'From bar',
    toBar: 'To bar',
    choruses: 'Choruses',
    untilStopped: 'until I stop',
    allBars: 'All bars',
    edit: 'Beats and chart',
    backToBand: 'Back to the band',
    remove: 'Remove',
    removeNamed: ({ title }: { title: string }) => `Remove ${title}`,
    removeForGood: 'Remove for good',
    keepIt: 'Keep it',
  },

  // The screen while a take is graded.
  grading: {
    naming: 'Naming every note …',
    progress: 'Grading',
  },

  // The screen of a take that can't be graded.
  trouble: {
    tryAgain: 'Try again',
    back: 'Back',
  },

  // What several screens share.
  parts: {
    title: 'Landfall',
    putAway: ({ sentence }: { sentence: string }) => `Close this message: ${sentence}`,
    newer: {
      waits: 'A newer Landfall is on this machine. Your takes and settings stay as they are.',
      use: 'Use it now',
    },
    /** Read out before the chords of a bar. */
    bar: ({ bar }: { bar: number }) => `Bar ${bar}:`,
    // A kept take can have a name, and a star that marks it.
    tap: 'Tap',
    tapWhy: 'Tap the beat four times or more',
    // A kept take is named, and marked as one to hold on to.
    name: 'Name it',
    nameTake: ({ title }: { title: string }) => `Name ${title}`,
    takeName: 'Name of the take',
    keepName: 'Keep the name',
    hold: 'Star it',
    holdTake: ({ title }: { title: string }) => `Star ${title}`,
    bandBar: ({ bar }: { bar: number }) => `Bar ${bar}, the band’s turn:`,
    barsNotDrawn: ({ from, to }: { from: number; to: number }) => `Bars ${from} to ${to}`,
    goesOn: 'continues',
    /** The title of the demo. */
    demo: 'Demo take',
    earlierLanding: ({ chorus, landing }: { chorus: number; landing: string }) =>
      `Chorus ${chorus}. ${landing}`,
    /** "A 7: third, 3, 20 ms late.", read out. */
    landing: ({
      chord,
      role,
      degree,
      timing,
    }: {
      chord: string;
      role: string;
      degree: string;
      timing: string;
    }) => `${chord}: ${[role, degree, timing].filter((part) => part !== '').join(', ')}.`,
    onTheBeat: 'on the beat',
    early: ({ ms }: { ms: number }) => `${ms} ms early`,
    late: ({ ms }: { ms: number }) => `${ms} ms late`,
    inTune: 'in tune',
    /** With its sign, which is a true minus. */
    cents: ({ cents }: { cents: number }) => `${cents < 0 ? '−' : '+'}${Math.abs(cents)} cents`,
    ofAll: ({ count, all }: { count: number; all: number }) => `${count} of ${all}`,
    /** A key in a title, a list or the head of the page. */
    key: ({ tonic, mode }: { tonic: string; mode: 'major' | 'minor' }) =>
      mode === 'minor' ? `${tonic} minor` : tonic,
    titleInKey: ({ title, key }: { title: string; key: string }) => `${title} in ${key}`,

    // The marks of the roles.
    marks: 'Key to the marks',
    open: 'rest',
    meanings: {
      root: 'the tone the chord is named after',
      third: 'tells major from minor',
      fifth: 'a chord tone that says little about the chord',
      seventh: 'moves on to the third of the next chord; the sixth of a 6 chord counts as a seventh',
      extension: 'a 9, 11 or 13 that the symbol names',
      colour: 'not in the chord, but in the scales you play from',
      blue: 'between the two thirds, or the flat five',
      outside: 'neither in the chord nor in the scales',
      open: 'nothing played at the change: counted apart, never as a miss',
    },

    // What a screen reader says for the signs of a chord symbol or a degree.
    signs: {
      flat: 'flat',
      sharp: 'sharp',
      doubleSharp: 'double sharp',
      majorSeventh: 'major seventh',
      halfDiminished: 'half-diminished',
      diminished: 'diminished',
      minor: 'minor',
      over: 'over',
    },
  },

  // Lesson sheets in the app: written by a teacher, played by a student, given back, answered.
  sheets: {
    lessons: 'Lessons',
    lessonsWhy:
      'A lesson sheet is a small file or a link: a chart, a tempo, what to land on. The student plays it and gives the take back.',
    open: 'Open a sheet or an answer',
    write: 'Write a lesson sheet',
    thisSheet: 'This sheet',
    editOther: 'Open another sheet',
    anew: 'Begin anew',
    back: 'Back',
    title: 'Title',
    titleExample: 'Thirds over a slow blues',
    note: 'What you say about it',
    noteExample: 'Sing each third before you play it.',
    aims: 'What to land on',
    needsTitle: 'Give the sheet a title.',
    needsAim: 'Choose at least one aim.',
    addAim: 'Another aim',
    chooseAim: 'choose',
    remove: 'Remove',
    removeAim: ({ name }: { name: string }) => `Remove “${name}”`,
    shareToReach: 'Share to reach',
    chart: 'Chart',
    chartAndTempo: 'Chart and tempo',
    ownInstrument: 'each plays their own',
    away: 'To your students',
    save: 'Save as a file',
    saved: ({ name }: { name: string }) => `Saved as “${name}”. Send it by mail or by your class platform.`,
    copyLink: 'Copy the link',
    copied: ({ characters }: { characters: number }) =>
      `Copied: ${characters} characters. The whole sheet is in the link; no server keeps it.`,
    copyByHand: 'This browser does not let the page copy: the link is marked below, copy it there.',
    link: ({ characters }: { characters: number }) => `The link, ${characters} characters`,
    example: {
      title: 'An example, if you want',
      why: 'One of your takes over this chart, to be heard with the band: its notes go into the sheet, not its sound.',
      noTakes: 'You have no take over this chart yet. Play it, and choose the take here.',
      choose: 'Your take',
      none: 'no example',
      kept: 'the one in the sheet',
      notes: ({ notes }: { notes: number }) => several(notes, 'note'),
      misfits: 'The example was played over another chart, so it is left out.',
      hear: 'Listen to the example',
      stop: 'Stop the example',
    },
    sheet: 'Lesson sheet',
    change: 'Change it',
    openOther: 'Open another',
    leave: 'Leave the sheet',
    reach: ({ share }: { share: number }) => `at least ${percent(share)}`,
    choruses: ({ choruses }: { choruses: number }) => several(choruses, 'chorus', 'choruses'),
    yourName: 'Your name',
    needsName: 'Write your name first: your teacher sees it on the take.',
    thisTry: ({ tryNumber }: { tryNumber: number }) => `This will be try ${tryNumber}.`,
    play: 'Play',
    tries: 'Your tries',
    oneTry: ({ tryNumber }: { tryNumber: number }) => `try ${tryNumber}`,
    answered: 'your teacher has answered',
    takeOf: ({ student, tryNumber }: { student: string; tryNumber: number }) =>
      `${student === '' ? '' : `${student}, `}try ${tryNumber}`,
    giveBack: 'Give back',
    giveBackWhy: 'Saves the take as a file for your teacher: the sound, your name and the try are in it.',
    gaveBack: ({ name }: { name: string }) => `Saved as “${name}”. Send it to your teacher.`,
    answer: 'What your teacher says',
    atBar: ({ chorus, bar }: { chorus: number; bar: number }) => `Chorus ${chorus}, bar ${bar}`,
  },

  // The lesson sheet, the desk, and the pages of a class.
  lesson: {
    attention: {
      doubtful: 'look first',
      'not reached': 'not reached',
      'too short': 'too short to tell',
      reached: 'reached',
    },
    doubts: {
      'another sheet': 'played for another sheet',
      'moved key': ({ tonic }: { tonic: string }) => `fits ${tonic} far better: played in another key?`,
      'moved time': ({ beats }: { beats: number }) =>
        `fits far better with the chart begun ${several(Math.abs(beats), 'beat')} ${beats > 0 ? 'later' : 'earlier'}: moved?`,
      band: 'the band came through the microphone and was taken out',
      delay: 'the whole take lies early or late',
      'lost sound': 'sound was lost',
      corrected: 'corrected by hand, graded as heard',
      'few notes': 'hardly any notes',
    },
    columns: {
      student: 'Student',
      attention: 'Needs',
      aim: 'Aim',
      thirds: 'Landings on thirds',
      weakest: 'Weakest change',
      tries: 'Tries',
      doubts: 'Doubts',
      sheet: 'Sheet',
      file: 'File',
    },
    noAim: 'no aim',
    noWeakest: 'none missed',
    counted: ({
      hits,
      of,
      low,
      high,
    }: {
      hits: number;
      of: number;
      low: number | null;
      high: number | null;
    }) =>
      of === 0
        ? 'none played'
        : `${hits} of ${of}` +
          (low === null || high === null ? '' : ` (${Math.round(100 * low)} to ${percent(high)})`),
    besideLuck: ({ hits, of, expected }: { hits: number; of: number; expected: number | null }) =>
      of === 0
        ? 'none played'
        : `${hits} of ${of}` + (expected === null ? '' : `, luck gives ${decimal(expected, 1)}`),
    /** A change of chord; `from` is null where the chord follows no other. */
    change: ({ from, to, bar }: { from: string | null; to: string; bar: number }) =>
      `${from === null ? to : `${from} to ${to}`} (bar ${bar})`,
    weakest: ({ change, hits, of }: { change: string; hits: number; of: number }) =>
      `${change}, ${hits} of ${of}`,
    tries: ({ takes, tryNumber }: { takes: number; tryNumber: number | null }) =>
      tryNumber === null ? String(takes) : `${takes}, try ${tryNumber}`,
    desk: {
      title: 'The teacher’s desk',
      open: 'The teacher’s desk',
      back: 'Back',
      lead: 'Drop a folder here: takes that came back, recordings, and the lesson sheet. Every take is listened to again on this machine: what a file says of its own grade is not believed. Nothing leaves this machine, and nothing is kept.',
      chooseFolder: 'Choose a folder',
      chooseFiles: 'Choose files',
      clear: 'Clear the desk',
      sheets: 'Lesson sheets',
      noSheet: 'No lesson sheet yet: takes that carry theirs are graded by it; recordings need one.',
      firstBeat: ({ recordings }: { recordings: number }) =>
        `In ${recordings === 1 ? 'the plain recording' : `all ${recordings} plain recordings`} the first bar of the chart starts at`,
      progress: ({ done, of }: { done: number; of: number }) => `${done} of ${of} graded`,
      cancel: 'Stop here',
      table: 'Who needs you first',
      counted: ({ rows, takes }: { rows: number; takes: number }) =>
        `${several(rows, 'row')}, ${several(takes, 'take')}. A range in brackets is what the share may truly be (95 %).`,
      length: 'Length',
      review: ({ student }: { student: string }) => `Open the take of ${student}`,
      written: 'answer begun',
      map: 'Which change fails for whom',
      mapOf: ({ sheet }: { sheet: string }) => `Which change fails for whom: ${sheet}`,
      change: 'Change',
      landed: 'Third or seventh',
      missedBy: 'Fewer than half',
      nobody: 'nobody',
      failed: ({ files }: { files: number }) => `${several(files, 'file')} could not be graded`,
      saveCsv: 'Save the table (CSV)',
      savePage: 'Save a page to print',
      backToDesk: 'Back to the desk',
      answer: ({ student }: { student: string }) => `Your answer to ${student}`,
      believed: 'This grade was computed here, from the sound. The take is not among your own.',
      note: 'About the whole take',
      comments: 'Comments on bars',
      chorus: 'Chorus',
      bar: 'Bar',
      comment: 'Comment',
      add: 'Add this comment',
      remove: ({ place }: { place: string }) => `Remove the comment on ${place}`,
      place: ({ chorus, bar }: { chorus: number; bar: number }) => `chorus ${chorus}, bar ${bar}`,
      give: 'Save the answer as a file',
      howToGive: 'Send the file to the student: it opens beside the take in Landfall.',
    },
    page: {
      title: ({ sheet }: { sheet: string }) => `Class: ${sheet}`,
      students: ({ students, takes }: { students: number; takes: number }) =>
        `${several(students, 'student')}, ${several(takes, 'take')}`,
      changes: 'Changes of the form, over the whole class',
      changesOf: ({ sheet }: { sheet: string }) => `Changes of “${sheet}”, over the whole class`,
      changeLine: ({ hits, of, missedBy }: { hits: number; of: number; missedBy: readonly string[] }) =>
        `${hits} of ${of} on a third or a seventh` +
        (missedBy.length === 0 ? '' : `; fewer than half by ${missedBy.join(', ')}`),
      failed: 'Not graded',
      gradedBy: ({ version }: { version: string }) =>
        `Graded from the sound by Landfall ${version}. A range in brackets is what the share may truly be (95 %).`,
    },
  },

  // Help and the other pages of the command line.
  cli: {
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
      file: 'FILE is a recording (WAV, FLAC, MP3, Ogg Vorbis) or a list of notes: a table with the header onset,duration,pitch (seconds, seconds, MIDI number) or a MIDI file. A take that the app has saved (.landfall) says itself what it is graded by, and needs no chords.',
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
  },
};
