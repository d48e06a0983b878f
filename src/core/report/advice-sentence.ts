/** A piece of advice as a sentence. */
import type { Advice } from '../take/schema.ts';
import { spelledChord, spelledNote } from '../words/spelling.ts';
import type { Words } from '../words/words.ts';

/** More bars than this are counted and not named. */
const MOST_BARS = 5;

/** The bars, what was played, the tone that would have resolved, and where it lies. */
export function adviceSentence(advice: Advice, words: Words): string {
  const { fault, held, chord, played, from, resolve, where, notes } = advice;
  const told = words.report.advice;
  const bare = (name: string) => spelledNote(name.replace(/-?\d+$/u, ''), words);
  return told[fault]({
    bars: adviceBars(advice, words),
    chord: spelledChord(chord, words),
    played: bare(played.name),
    playedDegree: played.degree,
    from: bare(from.name),
    count: notes.length,
    held,
    semitones: resolve.semitones,
    resolve: bare(resolve.name),
    resolveDegree: resolve.degree,
    where: where === null ? null : placeOnInstrument(where, words),
  });
}

/** "Bars 3 and 7": counted from 1. */
export function adviceBars({ bars }: Pick<Advice, 'bars'>, words: Words): string {
  const numbers = bars.map((bar) => bar + 1);
  const more = numbers.length > MOST_BARS ? numbers.length - MOST_BARS + 1 : 0;
  return words.report.advice.bars({ bars: more > 0 ? numbers.slice(0, MOST_BARS - 1) : numbers, more });
}

const placeOnInstrument = (where: NonNullable<Advice['where']>, words: Words): string =>
  where.kind === 'neck'
    ? words.report.advice.neck(where)
    : words.report.advice.written({ name: spelledNote(where.name, words) });
