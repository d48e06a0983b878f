/** One note in a teacher's words: what it was, over what, when, and which rule decided. */
import type { Landing, ReportNote, Report } from '../../core/take/schema.ts';
import { speakSigns, withSigns } from '../parts/engrave.ts';
import { en } from '../../core/words/en.ts';
import { centsWords, timingWords } from '../parts/sentences.ts';

export interface Explanation {
  /** "C♯4" */
  readonly name: string;
  /** "Bar 3, beat 2½" */
  readonly place: string;
  /** "the third of A7" */
  readonly reading: string;
  /** Everything else, a sentence each. */
  readonly sentences: readonly string[];
}

const ORDINALS = ['first', 'second', 'third', 'fourth'];

export function explainNote(report: Report, index: number): Explanation | null {
  const note = report.notes[index];
  if (note === undefined) return null;
  return {
    name: withSigns(note.spelling),
    place: placeWords(note, report.timeline.beatsPerBar),
    reading: readingWords(note),
    sentences: [
      note.chord === null
        ? `${withSigns(note.keyDegree)} in the key.`
        : `${withSigns(note.degree ?? '')} of the chord, ${withSigns(note.keyDegree)} in the key.`,
      `${capital(centsWords(note.cents))}${timing(note)}.`,
      ...manner(note),
      ...functionWords(report, note),
      ...landingWords(report.landings.find((landing) => landing.note === index)),
      withSigns(note.rule),
    ],
  };
}

function placeWords({ bar, chorus, beat }: ReportNote, beatsPerBar: number): string {
  if (bar === null) return 'Before the first bar';
  const inBar = beat - Math.floor(beat / beatsPerBar) * beatsPerBar;
  const quarter = Math.round(inBar * 4) / 4;
  const whole = Math.floor(quarter);
  const rest = ['', '¼', '½', '¾'][Math.round((quarter - whole) * 4)] ?? '';
  const round = chorus === null || chorus === 0 ? '' : `, ${ORDINALS[chorus] ?? `${chorus + 1}th`} chorus`;
  return `Bar ${bar + 1}, beat ${whole + 1}${rest}${round}`;
}

function readingWords({ role, chord }: ReportNote): string {
  if (chord === null || role === null) return 'no chord under it';
  const name = withSigns(chord);
  switch (role) {
    case 'colour':
      return `a colour over ${name}`;
    case 'blue':
      return `a blue note over ${name}`;
    case 'outside':
      return `outside ${name}`;
    case 'extension':
      return `an extension of ${name}`;
    default:
      return `the ${en.music.roles[role]} of ${name}`;
  }
}

function timing({ offGridMs }: ReportNote): string {
  const words = timingWords(offGridMs);
  return words === null ? '' : `, ${words === 'on the beat' ? 'in time' : words}`;
}

function manner({ attack, bendSemitones, vibrato }: ReportNote): readonly string[] {
  const words: string[] = [];
  if (Math.abs(bendSemitones) >= 0.3) words.push(`bent by ${bendSemitones.toFixed(1)} semitones`);
  if (attack === 'legato') words.push('slurred');
  if (vibrato !== null) words.push('with vibrato');
  return words.length === 0 ? [] : [`${capital(words.join(', '))}.`];
}

function functionWords(report: Report, note: ReportNote): readonly string[] {
  if (note.function === null) return [];
  const names = note.functionNotes.map((at) => withSigns(report.notes[at]?.spelling ?? '')).filter(Boolean);
  const line = names.length > 1 ? `: ${names.join(' – ')}` : '';
  return [`${capital(FUNCTION_WORDS[note.function])}${line}.`];
}

const FUNCTION_WORDS: Readonly<Record<NonNullable<ReportNote['function']>, string>> = {
  passing: 'passes by step between two chord tones',
  neighbour: 'steps away and comes back',
  approach: 'a half step that leads on',
  appoggiatura: 'reached by leap, resolved by step',
  escape: 'reached by step, left by leap',
  suspension: 'held over from the chord before',
  anticipation: 'belongs to the chord that comes',
  free: 'stands free, with no step that leads on',
};

function landingWords(landing: Landing | undefined): readonly string[] {
  if (landing === undefined) return [];
  const chord = withSigns(landing.chord);
  const how = landing.kind === 'held' ? `Held over into ${chord}` : `The landing on ${chord}`;
  const timing = timingWords(landing.offsetMs);
  const guide = landing.guideTone;
  const moved =
    guide === null
      ? ''
      : guide.kind === 'kept'
        ? `; the guide tone ${withSigns(guide.from)} stays as ${withSigns(guide.to)}`
        : `; the guide tone ${withSigns(guide.from)} moves to ${withSigns(guide.to)}`;
  return [`${how}${timing === null ? '' : `, ${timing}`}${moved}.`];
}

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The same in one breath, for a screen reader going from note to note. */
export function spokenNote(note: ReportNote): string {
  const reading = speakSigns(readingWords(note));
  return `${speakSigns(note.spelling)}, ${reading}, ${centsWords(note.cents)}`;
}
