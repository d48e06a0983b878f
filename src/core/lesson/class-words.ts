/** A class table in words, the same in the desk, on the printed page and in the terminal. */
import { aimWords } from '../report/aim-words.ts';
import { aimEvidence } from '../report/aim-sentences.ts';
import { spelledChord, spelledNote } from '../words/spelling.ts';
import type { Words } from '../words/words.ts';
import type { ClassChange, ClassRow } from './class-table.ts';
import { weakestChange, type ReturnedTake, type TakeDoubt } from './returned-take.ts';

/** "A7 to D7 (bar 5)" in the spelling of the language. */
export const changeWords = (
  { from, to, bar }: Pick<ClassChange, 'from' | 'to' | 'bar'>,
  words: Words,
): string =>
  words.lesson.change({
    from: from === null ? null : spelledChord(from, words),
    to: spelledChord(to, words),
    bar: bar + 1,
  });

/** What a row says, cell by cell. */
export interface RowWords {
  readonly student: string;
  readonly attention: string;
  readonly aim: string;
  readonly thirds: string;
  readonly weakest: string;
  readonly tries: string;
  readonly doubts: readonly string[];
}

/** The name of an aim of the house, or of the teacher's own. */
export const aimName = (aim: ReturnedTake['aims'][number], words: Words): string => aimWords(aim, words).name;

/** A doubt, and where the take was moved from as far as its notes tell. */
function doubtWords(doubt: TakeDoubt, { suspected }: ReturnedTake, words: Words): string {
  const { doubts } = words.lesson;
  if (doubt === 'moved key') return doubts[doubt]({ tonic: spelledNote(suspected!.tonic, words) });
  if (doubt === 'moved time') return doubts[doubt]({ beats: suspected!.beats });
  return doubts[doubt];
}

export function rowWords({ student, take, takes, attention }: ClassRow, words: Words): RowWords {
  const { lesson } = words;
  const aim = take.aims[0];
  const weakest = weakestChange(take.changes);
  return {
    student,
    attention: lesson.attention[attention],
    aim: aim === undefined ? lesson.noAim : lesson.counted(aim.result),
    thirds: lesson.besideLuck({
      hits: take.thirds.hits,
      of: take.thirds.of,
      expected: take.thirds.expected,
    }),
    weakest:
      weakest === null
        ? lesson.noWeakest
        : lesson.weakest({ change: changeWords(weakest, words), hits: weakest.hits, of: weakest.of }),
    tries: lesson.tries({ takes, tryNumber: take.tryNumber }),
    doubts: take.doubts.map((doubt) => doubtWords(doubt, take, words)),
  };
}

/** How each aim of a take went, a sentence an aim, the leading one first. */
export const aimSentences = (take: ReturnedTake, words: Words): readonly string[] =>
  take.aims.map(
    (aim) => `${aimName(aim, words)}: ${words.report.aims.verdicts[aim.verdict]}. ${aimEvidence(aim, words)}`,
  );
