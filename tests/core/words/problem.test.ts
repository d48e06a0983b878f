import { parseChart } from '../../../src/core/chart/parse-chart.ts';
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

describe('a problem inside another', () => {
  const read = parseChart('| C7 | H7 |');
  if (read.ok) throw new Error('H7 is no chord');
  const told = problem('chartFile.unreadable', { name: 'song.txt', cause: read.problem });

  it('is told in the same language', () => {
    expect(describeProblem(told, en)).toMatch(/^song\.txt can’t be read as a chart: Bar 2: “H7” can’t be/);
    expect(describeProblem(told, de)).toMatch(
      /^song\.txt ist nicht als Chart zu lesen: Takt 2: „H7“ ist nicht als Akkord/,
    );
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
    const short = bad('cli.language', { given: 'x' });
    // @ts-expect-error no such code
    const unknown = bad('cli.languages', {});
    expect([short.ok, unknown.ok]).toEqual([false, false]);
    expect(() => describeProblem(unknown.problem, en)).toThrow(RangeError);
  });
});
