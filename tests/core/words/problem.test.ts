import { describe, expect, it } from 'vitest';
import { bad } from '../../../src/core/base/outcome.ts';
import { de } from '../../../src/core/words/de.ts';
import { en } from '../../../src/core/words/en.ts';
import { describeProblem, problem, type Problem } from '../../../src/core/words/problem.ts';

describe('describeProblem', () => {
  const told = problem('cli.language', { given: 'fr', known: ['en', 'de'] });

  it('gives the sentence of the language', () => {
    expect(describeProblem(told, en)).toBe('--language must be en or de, not "fr".');
    expect(describeProblem(told, de)).toBe('--language muss en oder de sein, nicht „fr“.');
  });

  it('reads a problem that came as plain data', () => {
    expect(describeProblem(JSON.parse(JSON.stringify(told)) as Problem, en)).toBe(describeProblem(told, en));
  });

  it('throws on a code that no catalogue has', () => {
    expect(() => describeProblem({ code: 'no.such' } as unknown as Problem, en)).toThrow(RangeError);
  });
});

describe('bad', () => {
  it('holds the problem and is not ok', () => {
    expect(bad('cli.language', { given: 'x', known: ['en'] })).toMatchObject({
      ok: false,
      problem: { code: 'cli.language', facts: { given: 'x', known: ['en'] } },
    });
  });

  it('asks for the facts of its code', () => {
    // @ts-expect-error a fact is missing
    expect(() => bad('cli.language', { given: 'x' })).toThrow();
    // @ts-expect-error no such code
    expect(() => bad('cli.languages', {})).toThrow();
  });
});
