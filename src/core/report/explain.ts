/** Any note of a report, and any bar, explained: what it is, and which rule says so. */
import type { DoubtfulNote, Landing, Report, ReportNote } from '../take/schema.ts';
import { spelledChord, spelledKey, spelledNote } from '../words/spelling.ts';
import type { Words } from '../words/words.ts';

export interface Explanation {
  /** "C#4" */
  readonly name: string;
  /** "the third of A7" */
  readonly reading: string;
  /** "bar 3, beat 2½" */
  readonly place: string;
  /** Everything else, a sentence each. */
  readonly sentences: readonly string[];
  /** What is told only where numbers are asked for. */
  readonly numbers: readonly string[];
}

/** A smaller change of pitch is not called a bend: a finger pulls a string by as much without meaning to. In semitones. */
const LEAST_BEND = 0.3;

/**
 * One note in a teacher's words.
 * @throws RangeError on an index that the report does not have
 */
export function explainNote(report: Report, index: number, words: Words): Explanation {
  const note = report.notes[index];
  if (note === undefined) throw new RangeError(`the notes are 0 to ${report.notes.length - 1}, not ${index}`);
  const told = words.report.explain;
  const { cents, offGridMs, bendSemitones, attack, vibrato, weight, strongBeat, phraseEnd } = note;
  const bent = Math.abs(bendSemitones) >= LEAST_BEND;
  const legato = attack === 'legato';
  return {
    name: spelledNote(note.spelling, words),
    reading: readingOf(note, words),
    place: placeOf(note, report, words),
    sentences: [
      told.degrees({ degree: note.degree, keyDegree: note.keyDegree, key: keyOf(note, report, words) }),
      told.tuning({ cents, offsetMs: offGridMs }),
      ...(note.chosen ? [told.chosen({ confidence: note.confidence })] : []),
      ...(note.second === null ? [] : [told.second({ name: spelledNote(note.second, words) })]),
      ...(bent || legato || vibrato !== null
        ? [told.manner({ bend: bent ? bendSemitones : null, legato, vibrato: vibrato !== null })]
        : []),
      ruleSentence(note, words),
      ...(note.function === null
        ? []
        : [
            told.function[note.function]({
              notes: note.functionNotes.map((at) => spelledNote(report.notes[at]!.spelling, words)),
            }),
          ]),
      ...report.thirds.blueNotes
        .filter((blue) => blue.note === index)
        .map((blue) => told.blueThird({ cents: blue.cents })),
      told.standing({ strongBeat, phraseEnd }),
      ...report.landings
        .filter((landing) => landing.note === index)
        .map((landing) => arrivalSentence(landing, report, words)),
    ].filter((sentence) => sentence !== ''),
    numbers: weight === null ? [] : [told.weight({ weight })],
  };
}

/** A note that counts in no share: what it would be, where it is heard, and why it does not count. */
export function explainDoubtful(note: DoubtfulNote, report: Report, words: Words): Explanation {
  const told = words.report.explain;
  const { beat, cents, confidence, spelling, takenOut } = note;
  const heardAt = { beat, bar: beat < 0 ? null : 0, rule: 'onset', aheadBeats: null } as const;
  return {
    name: spelledNote(spelling, words),
    reading: readingOf(note, words),
    place: placeOf(heardAt, report, words),
    sentences: [
      takenOut ? told.takenOut : told.doubtful({ confidence }),
      told.tuning({ cents, offsetMs: null }),
    ],
    numbers: [],
  };
}

/**
 * Every note and every arrival of one bar of the form, in the order of time; the notes that land early in it, or are
 * held into it, are among them. Lines that go on about a note are set in.
 * @param bar counted from 1, as players do
 * @param chorus from 1, or null for all of them
 * @returns null when the form has no such bar
 */
export function explainBar(
  report: Report,
  bar: number,
  chorus: number | null,
  words: Words,
): readonly string[] | null {
  const { bars } = report.timeline;
  if (!(Number.isInteger(bar) && bar >= 1 && bar <= bars)) return null;
  const isAsked = (at: { readonly bar: number | null; readonly chorus: number | null }) =>
    at.bar === bar - 1 && (chorus === null || at.chorus === chorus - 1);
  const arrivals = report.landings.filter(isAsked);
  const landed = new Set(arrivals.map(({ note }) => note));
  const notes = report.notes.flatMap((note, index) =>
    isAsked(note) || landed.has(index)
      ? [{ beat: note.beat, lines: linesOf(explainNote(report, index, words)) }]
      : [],
  );
  const open = arrivals
    .filter(({ kind }) => kind === 'open')
    .map((landing) => ({ beat: landing.beat, lines: [arrivalSentence(landing, report, words)] }));
  const lines = [...notes, ...open].sort((a, b) => a.beat - b.beat).flatMap((told) => told.lines);
  return lines.length === 0 ? [words.report.explain.emptyBar({ bar, chorus })] : lines;
}

const linesOf = ({ name, reading, place, sentences, numbers }: Explanation): readonly string[] => [
  `${name}, ${reading}; ${place}.`,
  ...[...sentences, ...numbers].map((sentence) => `  ${sentence}`),
];

/** "the third of A7" */
export function readingOf({ role, chord }: Pick<ReportNote, 'role' | 'chord'>, words: Words): string {
  const { role: roles, noChord } = words.report.explain;
  return chord === null || role === null ? noChord : roles[role]({ chord: spelledChord(chord, words) });
}

const QUARTERS = ['', '¼', '½', '¾'];

/** Where a note is heard, to a quarter of a beat: one that is played on a change stands at the change. */
function placeOf(
  note: Pick<ReportNote, 'beat' | 'bar' | 'rule' | 'aheadBeats'>,
  { timeline }: Report,
  words: Words,
): string {
  const { beforeFirstBar, place } = words.report.explain;
  if (note.bar === null) return beforeFirstBar;
  const ahead = note.rule === 'at change' ? (note.aheadBeats ?? 0) : 0;
  const quarters = Math.round((note.beat + ahead) * 4);
  const bar = Math.floor(quarters / (4 * timeline.beatsPerBar));
  const ofBar = quarters - 4 * timeline.beatsPerBar * bar;
  return place({
    bar: (bar % timeline.bars) + 1,
    beat: `${Math.floor(ofBar / 4) + 1}${QUARTERS[ofBar % 4] ?? ''}`,
    chorus: Math.floor(bar / timeline.bars) + 1,
  });
}

function keyOf(note: ReportNote, { timeline }: Report, words: Words): string {
  const key = timeline.keys?.findLast(({ fromBar }) => fromBar <= (note.bar ?? 0)) ?? timeline.key;
  return spelledKey(key, words);
}

function ruleSentence({ rule, chord, aheadBeats }: ReportNote, words: Words): string {
  const told = words.report.explain.rule;
  if (chord === null) return told.noChord;
  const name = spelledChord(chord, words);
  if (rule === 'at change') return told.onTheChange({ chord: name });
  return rule === 'anticipation' && aheadBeats !== null
    ? told.anticipation({ beats: aheadBeats, chord: name })
    : told.onset({ chord: name });
}

function arrivalSentence(landing: Landing, { notes }: Report, words: Words): string {
  const { kind, degree, offsetMs, guideTone, putRight, anticipates } = landing;
  const told = words.report.explain;
  const chord = spelledChord(landing.chord, words);
  if (kind === 'open') return told.open({ chord, bar: landing.bar + 1, chorus: landing.chorus + 1 });
  const motion = guideTone === null ? '' : told.guideTone[guideTone.kind](guideTone);
  const facts = { chord, degree: degree ?? '' };
  const what = () => {
    if (kind === 'held') return told.held(facts);
    return anticipates ? told.anticipated(facts) : told.landing({ ...facts, offsetMs: offsetMs ?? 0 });
  };
  const right =
    putRight === null
      ? ''
      : told.putRight({
          name: spelledNote(notes[putRight.note]!.spelling.replace(/-?\d+$/u, ''), words),
          beats: putRight.beats,
        });
  return `${what()}${motion}${right}.`;
}
