import { describe, expect, it } from 'vitest';
import { studentOfPath, tryOfPath } from '../../../src/core/lesson/student-of-path.ts';

describe('the student of a recording', () => {
  it.each([
    ['lesson 3/oboe 2.wav', 'oboe', 2],
    ['C:\\lesson 3\\oboe_12.flac', 'oboe', 12],
    ['lesson 3/oboe/2.wav', 'oboe', 2],
    ['./2.wav', '2', 2],
    ['jörg.wav', 'jörg', null],
    ['.hidden', '.hidden', null],
    ['lesson 3/oboe (1).wav', 'oboe', null],
    ['ann.marie 1.mp3', 'ann.marie', 1],
  ])('of %s is %s, try %s', (path, student, number) => {
    expect(studentOfPath(path)).toBe(student);
    expect(tryOfPath(path)).toBe(number);
  });
});
