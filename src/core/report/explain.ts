/** Any note of a report, and any bar, explained in sentences: what it is, and which rule says so. */
import type { Landing, NoteFunction, Report, ReportNote, Role } from '../take/schema.ts';

const ROLE_WORDS: Readonly<Record<Role, string>> = {
  root: 'the root',
  third: 'the third',
  fifth: 'the fifth',
  seventh: 'the seventh',
  extension: 'an extension that the symbol names',
  colour: 'a colour from the palette',
  blue: 'a blue note',
  outside: 'outside the chord and the palette',
};

/** What the notes beside it must do for a tone outside the chord to be called so. */
const FUNCTION_WORDS: Readonly<Record<NoteFunction, string>> = {
  passing: 'passing by step, all in one direction, between chord tones',
  neighbour: 'a neighbour: a step away from a chord tone and back',
  approach: 'an approach by half step into a chord tone',
  appoggiatura: 'an appoggiatura: reached by a leap, left by a step into a chord tone',
  escape: 'an escape tone: left by a leap against the step that led to it',
  suspension: 'a suspension: kept from the chord before, then resolved by step',
  anticipation: 'an anticipation of the chord to come',
  free: 'free: no step leads it on into the chord',
};

/** One note in sentences. Throws on an index that the report does not have. */
export function explainNote(report: Report, index: number): readonly string[] {
  const note = report.notes[index];
  if (note === undefined) throw new RangeError(`the notes are 0 to ${report.notes.length - 1}, not ${index}`);
  return [
    `${note.spelling} (${signed(note.cents)} cents) ${placeOf(note, report)}: ${chordSentence(note, report)}`,
    ...(note.second === null ? [] : [`${note.second} sounds with it.`]),
    note.rule,
    ...(note.function === null ? [] : [functionSentence(note, report)]),
    weightSentence(note),
    ...report.landings.filter((landing) => landing.note === index).map((landing) => landingSentence(landing)),
  ];
}

/**
 * Every note and every arrival of one bar of the form, in the order of time; the notes that land early in it, or are
 * held into it, are among them.
 * @param bar counted from 1, as players do
 * @returns null when the form has no such bar
 */
export function explainBar(report: Report, bar: number): readonly string[] | null {
  const { bars } = report.timeline;
  if (!(Number.isInteger(bar) && bar >= 1 && bar <= bars)) return null;
  const arrivals = report.landings.filter((landing) => landing.bar === bar - 1);
  const landed = new Set(arrivals.map(({ note }) => note));
  const notes = report.notes.flatMap((note, index) =>
    note.bar === bar - 1 || landed.has(index)
      ? [
          {
            beat: note.beat,
            lines: explainNote(report, index).map((line, i) => (i === 0 ? line : `  ${line}`)),
          },
        ]
      : [],
  );
  const open = arrivals
    .filter(({ kind }) => kind === 'open')
    .map((landing) => ({ beat: landing.beat, lines: [landingSentence(landing)] }));
  const lines = [...notes, ...open].sort((a, b) => a.beat - b.beat).flatMap((told) => told.lines);
  return lines.length === 0 ? [`Nothing was played in bar ${bar}.`] : lines;
}

function placeOf(note: ReportNote, { timeline }: Report): string {
  if (note.bar === null || note.chorus === null)
    return `before the first downbeat (beat ${twoDigits(note.beat)})`;
  const ofBar = note.beat - Math.floor(note.beat / timeline.beatsPerBar) * timeline.beatsPerBar;
  return `in chorus ${note.chorus + 1}, bar ${note.bar + 1}, beat ${twoDigits(ofBar + 1)}`;
}

function chordSentence(note: ReportNote, { timeline }: Report): string {
  const key = timeline.keys?.findLast(({ fromBar }) => fromBar <= (note.bar ?? 0)) ?? timeline.key;
  const inKey = `${note.keyDegree} of ${key.tonic} ${key.mode}`;
  if (note.chord === null || note.degree === null || note.role === null) return `no chord; ${inKey}.`;
  return `${note.degree} of ${note.chord}, ${ROLE_WORDS[note.role]}; ${inKey}.`;
}

function functionSentence(note: ReportNote, { notes }: Report): string {
  const by = note.functionNotes.map((index) => notes[index]!.spelling);
  const because = by.length === 0 ? '' : ` (${by.join(', ')})`;
  return `It is ${FUNCTION_WORDS[note.function!]}${because}.`;
}

function weightSentence({ offGridMs, weight, strongBeat, phraseEnd }: ReportNote): string {
  const facts = [
    offGridMs === null ? null : `${lateness(offGridMs)} against the nearest eighth`,
    weight === null ? null : `weight ${twoDigits(weight)} by its length`,
    strongBeat ? 'on a strong beat' : null,
    phraseEnd ? 'ends its phrase' : null,
  ].filter((fact) => fact !== null);
  const text = facts.join(', ');
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

function landingSentence(landing: Landing): string {
  const { chord, chorus, bar, kind, degree, offsetMs, guideTone } = landing;
  const change = `the change to ${chord} in chorus ${chorus + 1}, bar ${bar + 1}`;
  if (kind === 'open') return `Open: nothing sounds at ${change}.`;
  const motion =
    guideTone === null
      ? ''
      : guideTone.kind === 'kept'
        ? `; the guide tone ${guideTone.from} stays as ${guideTone.to}`
        : `; the guide tone ${guideTone.from} moves by step to ${guideTone.to}`;
  if (kind === 'held') return `Held over ${change}, where it is the ${degree ?? ''}${motion}.`;
  return `The landing on ${change}: ${degree ?? ''}, ${lateness(offsetMs ?? 0)}${motion}.`;
}

const lateness = (ms: number): string => {
  const rounded = Math.round(Math.abs(ms));
  return rounded === 0 ? 'on time' : `${rounded} ms ${ms < 0 ? 'early' : 'late'}`;
};

const twoDigits = (value: number): string => String(Math.round(value * 100) / 100);

const signed = (cents: number): string => {
  const rounded = Math.round(cents) + 0;
  return rounded < 0 ? `−${-rounded}` : `+${rounded}`;
};
