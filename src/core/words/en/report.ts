/** What a report is told with, on the page of the command line and in the review alike. */
import { joinWith } from '../entries/entry.ts';
import { percent, several } from './grammar.ts';
import { luck, capital, moreTells, times, noun } from './phrases.ts';

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

const countedLandings = ({ hits, of, tones }: Landed): string =>
  `${hits} of ${several(of, 'landing')} ${hits === 1 || of === 1 ? 'is' : 'are'} on ` +
  (tones === 'thirds' ? 'the third' : 'a guide tone (no chord here has a third)');

/** A p value as it is written: "p < 0.001", "p = 0.03". */
function pValue(tail: number): string {
  if (tail < 0.001) return 'p < 0.001';
  return `p = ${tail < 0.01 ? tail.toFixed(3) : tail.toFixed(2)}`;
}

const timesAfter = (count: number): string => (count === 1 ? '' : `, ${times(count)}`);

/** "A half step up lies F#4, its 3 (first string, fret 2)" */
function adviceStep({ semitones, resolve, resolveDegree, where }: AdviceFacts, from?: string): string {
  const step = `A ${Math.abs(semitones) === 1 ? 'half' : 'whole'} step ${semitones > 0 ? 'up' : 'down'}`;
  const start = from === undefined ? '' : ` from ${from}`;
  return `${step}${start} lies ${resolve}, its ${resolveDegree}${where === null ? '' : ` (${where})`}`;
}

/** "half a bar", "2.5 bars" */
function bars(count: number): string {
  const rounded = count < 1 ? Math.round(count * 4) / 4 : Math.round(count * 2) / 2;
  if (rounded <= 0.25) return 'a quarter of a bar';
  if (rounded < 1) return rounded === 0.5 ? 'half a bar' : 'three quarters of a bar';
  return several(rounded, 'bar');
}

export const report = {
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
      `${told.bars}: over ${told.chord} the b3, ${told.played}, is${told.count === 1 ? '' : ` ${times(told.count)}`} not resolved. ${adviceStep(told)}.`,
    'third near': (told: AdviceFacts) =>
      `${told.bars}: into ${told.chord} you go from ${told.from} to ${told.played} (its ${told.playedDegree})${timesAfter(told.count)}. ${adviceStep(told, told.from)}.`,
    /** Where a tone lies on a neck, strings counted from the highest. */
    neck: ({ string, fret, open }: { string: number; fret: number; open: boolean }) =>
      open ? `open ${ordinal(string)} string` : `${ordinal(string)} string, fret ${fret}`,
    written: ({ name }: { name: string }) => `written ${name}`,
  },
};
