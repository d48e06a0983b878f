/**
 * Property-based tries of everything that reads what comes from outside. A seed that is always the same, printed by
 * fast-check where a case fails; FUZZ_SEED takes another one, FUZZ_RUNS another number of cases.
 */
import fc from 'fast-check';
import type { Outcome } from '../../src/core/base/outcome.ts';
import { languages } from '../../src/core/words/catalogues.ts';
import { describeProblem } from '../../src/core/words/problem.ts';

const SEED = Number(process.env['FUZZ_SEED'] ?? 1);
const RUNS = 10_000;
/** No case may take longer, in milliseconds of this process: not of a machine that is busy with something else. */
const MOST_MILLISECONDS = 1000;

const cpuMilliseconds = () => process.cpuUsage().user / 1000;

/** By hand: an `expect` for each of some hundred thousand cases took as long as many of the readers. */
function checkTime(milliseconds: number): void {
  if (!(milliseconds < MOST_MILLISECONDS))
    throw new Error(`a case took ${milliseconds} ms, and ${MOST_MILLISECONDS} are the most`);
}

/** @param runs fewer cases for a reader that takes longer; the figure stands beside it */
export function fuzz<T>(inputs: fc.Arbitrary<T>, read: (input: T) => void, runs = RUNS): void {
  fc.assert(
    fc.property(inputs, (input) => {
      const before = cpuMilliseconds();
      read(input);
      checkTime(cpuMilliseconds() - before);
    }),
    { seed: SEED, numRuns: Number(process.env['FUZZ_RUNS'] ?? runs) },
  );
}

export async function fuzzAsync<T>(
  inputs: fc.Arbitrary<T>,
  read: (input: T) => Promise<void>,
  runs = RUNS,
): Promise<void> {
  await fc.assert(
    fc.asyncProperty(inputs, async (input) => {
      const before = cpuMilliseconds();
      await read(input);
      checkTime(cpuMilliseconds() - before);
    }),
    { seed: SEED, numRuns: Number(process.env['FUZZ_RUNS'] ?? runs) },
  );
}

/** A problem has a sentence in every language, and no sentence shows what only a programmer understands. */
export function expectSentences(outcome: Outcome<unknown>): void {
  if (outcome.ok) return;
  for (const words of Object.values(languages)) {
    const sentence = describeProblem(outcome.problem, words);
    if (sentence.length <= 5 || /undefined|\[object|Infinity/.test(sentence))
      throw new Error(`${outcome.problem.code} has no sentence for a player: “${sentence}”`);
  }
}

/** Numbers and texts where readers go wrong. */
const EDGES: readonly unknown[] = [
  ...[null, true, false, 0, -0, 1, -1, 0.5, 1e9, -1e9, 1e308, Infinity, -Infinity, NaN, 2 ** 31, 2 ** 53],
  ...['', ' ', '0', '\u0000', '\ud800', '<b>', '../x', '__proto__', 'x'.repeat(300), [], {}, [[]], undefined],
];

/**
 * A good value with some of its parts changed to odd ones, left out, or put where another belongs. What is unchanged is the
 * good value's own, in every case again: frozen, so that a reader that wrote into what it reads would throw.
 */
export const damaged = (good: unknown): fc.Arbitrary<unknown> => {
  const places = placesIn(good);
  const whole = frozen(good);
  return fc
    .array(
      fc.tuple(
        fc.nat({ max: places.length - 1 }),
        fc.oneof(fc.constantFrom(...EDGES), fc.double(), fc.string()),
      ),
      {
        minLength: 1,
        maxLength: 4,
      },
    )
    .map((changes) =>
      changes.reduce<unknown>((value, [place, odd]) => withChange(value, places[place]!, odd), whole),
    );
};

type Path = readonly (string | number)[];

/** A copy that nobody can write into; bytes and samples, which can't be frozen, are the good value's own. */
function frozen(value: unknown): unknown {
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return value;
  if (Array.isArray(value)) return Object.freeze(value.map(frozen));
  return Object.freeze(Object.fromEntries(Object.entries(value).map(([key, part]) => [key, frozen(part)])));
}

/** A value whose lists have a few members at most, so that a case hits the rest of it as often as its many notes. */
export function withShortLists(value: unknown, most = 6): unknown {
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return value;
  if (Array.isArray(value)) return value.slice(0, most).map((part: unknown) => withShortLists(part, most));
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, withShortLists(part, most)]));
}

function placesIn(value: unknown): readonly Path[] {
  if (typeof value !== 'object' || value === null || ArrayBuffer.isView(value)) return [[]];
  return [
    [],
    ...Object.entries(value).flatMap(([key, part]) => placesIn(part).map((path) => [key, ...path])),
  ];
}

function withChange(value: unknown, [key, ...rest]: Path, odd: unknown): unknown {
  if (key === undefined) return odd;
  if (typeof value !== 'object' || value === null) return value;
  const copy = (Array.isArray(value) ? [...(value as unknown[])] : { ...value }) as Record<
    string | number,
    unknown
  >;
  const changed = withChange(copy[key], rest, odd);
  if (changed === undefined && !Array.isArray(copy)) Reflect.deleteProperty(copy, key);
  else copy[key] = changed;
  return copy;
}

/** Bytes of a good file with some of them changed, some left out, some twice, or cut short. */
export const damagedBytes = (good: Uint8Array): fc.Arbitrary<Uint8Array> =>
  fc
    .tuple(
      fc.array(
        fc.tuple(
          fc.nat({ max: good.length - 1 }),
          fc.oneof(fc.constantFrom(0, 1, 127, 128, 255), fc.nat(255)),
        ),
        {
          maxLength: 12,
        },
      ),
      fc.option(fc.nat({ max: good.length }), { freq: 4 }),
      fc.option(fc.tuple(fc.nat({ max: good.length }), fc.nat({ max: good.length })), { freq: 4 }),
    )
    .map(([changes, cut, doubled]) => {
      const bytes = good.slice();
      for (const [place, byte] of changes) bytes[place] = byte;
      const whole =
        doubled === null
          ? bytes
          : Uint8Array.from([...bytes.subarray(0, doubled[0]), ...bytes.subarray(doubled[1])]);
      return cut === null ? whole : whole.slice(0, cut);
    });

/** Text of pieces that belong together, in any order, with others between them. */
export const textOf = (pieces: readonly string[], most: number): fc.Arbitrary<string> =>
  fc
    .array(
      fc.oneof({ weight: 12, arbitrary: fc.constantFrom(...pieces) }, { weight: 1, arbitrary: fc.string() }),
      {
        maxLength: most,
      },
    )
    .map((parts) => parts.join(''));
