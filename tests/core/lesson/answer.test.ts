import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, it } from 'vitest';
import { ANSWER_LIMITS, readAnswer, writeAnswer, type AnswerFile } from '../../../src/core/lesson/answer.ts';
import { answerJsonSchema } from '../../../src/core/lesson/json-schema.ts';
import { english } from '../../english.ts';

const ANSWER: AnswerFile = {
  format: 'landfall-answer',
  version: 1,
  takeId: '1f0c2a34-9b1e-4f5a-8f5e-2b7d1f6a0c11',
  mark: 'af63dc4c8601ec8c',
  title: 'Thirds over a slow blues',
  student: 'Oboe',
  tryNumber: 3,
  note: 'Much calmer than last week.',
  comments: [
    { chorus: 0, bar: 4, text: 'Here the F♯ was waiting, a half step below.' },
    { chorus: 1, bar: 9, text: 'Yes: the third, on the beat.' },
  ],
};
const MOST_COMMENTS = Array.from({ length: ANSWER_LIMITS.comments }, (_, bar) => ({
  chorus: 0,
  bar,
  text: '♭'.repeat(ANSWER_LIMITS.commentCharacters),
}));

const read = (changes: object) => readAnswer(JSON.stringify({ ...ANSWER, ...changes }), 'reply.json');
function sentence(text: string): string {
  const answer = readAnswer(text, 'reply.json');
  if (answer.ok) throw new Error('The answer was read.');
  return english(answer.problem);
}

describe('a teacher’s answer', () => {
  it('comes back from its own text, with its comments in the order of their bars', () => {
    const shuffled = { ...ANSWER, comments: [...ANSWER.comments].reverse() };
    const again = readAnswer(writeAnswer(shuffled), 'reply.json');
    expect(again.ok && again.value).toEqual(ANSWER);
    expect(writeAnswer(shuffled)).toBe(writeAnswer(ANSWER));
  });

  it('answers a plain recording, which has neither an id nor a sheet nor a number', () => {
    const answer = read({ takeId: null, mark: null, tryNumber: null, note: '', comments: [] });
    expect(answer.ok).toBe(true);
  });

  it('fits the schema that is published, by another validator (ajv), and so does what is refused not', () => {
    const validate = new Ajv2020({ strict: false }).compile(answerJsonSchema());
    expect(validate(ANSWER), JSON.stringify(validate.errors)).toBe(true);
    for (const wrong of [
      { takeId: '../x' },
      { comments: [{ chorus: 0, bar: -1, text: 'a' }] },
      { more: 1 },
    ]) {
      expect(validate({ ...ANSWER, ...wrong })).toBe(false);
      expect(read(wrong).ok).toBe(false);
    }
  });

  it('may be as long as its limits say, and no longer', () => {
    const note = '♭'.repeat(ANSWER_LIMITS.noteCharacters);
    const longest = readAnswer(writeAnswer({ ...ANSWER, note, comments: MOST_COMMENTS }), 'reply.json');
    expect(longest.ok && longest.value.comments).toHaveLength(ANSWER_LIMITS.comments);
    expect(read({ note: `${note}!` }).ok).toBe(false);
    expect(read({ comments: [...MOST_COMMENTS, MOST_COMMENTS[0]] }).ok).toBe(false);
    expect(read({ comments: [{ chorus: 0, bar: 0, text: `${MOST_COMMENTS[0]!.text}!` }] }).ok).toBe(false);
    expect(read({ comments: [{ chorus: 0, bar: 0, text: '   ' }] }).ok).toBe(false);
  });

  it.each([
    [/is not JSON/, '{'],
    [/no teacher’s answer/, 'null'],
    [/no teacher’s answer/, '{"format":"landfall-sheet"}'],
    [/version 2/, '{"format":"landfall-answer","version":2}'],
    [/"takeId" is missing/, '{"format":"landfall-answer","version":1}'],
    [
      /"comments.1.text"/,
      JSON.stringify({ ...ANSWER, comments: [ANSWER.comments[0], { chorus: 0, bar: 1 }] }),
    ],
    [/longer than 400000 characters/, ' '.repeat(ANSWER_LIMITS.characters + 1)],
  ])('says what is wrong: %s', (said, text) => {
    expect(sentence(text)).toMatch(said);
    expect(sentence(text)).toContain('reply.json');
  });
});
