/** Set up for a mutation run: properties are tried with few inputs, because every mutant asks all of them again. */
import type * as FastCheck from 'fast-check';
import { vi } from 'vitest';

const MOST_RUNS = 5;

vi.mock('fast-check', async (original) => {
  const real = await original<typeof FastCheck>();
  const assert = <Inputs>(property: FastCheck.IRawProperty<Inputs>, options?: FastCheck.Parameters<Inputs>) =>
    real.assert(property, {
      ...options,
      seed: 1,
      numRuns: Math.min(MOST_RUNS, options?.numRuns ?? MOST_RUNS),
    });
  return { ...real, assert, default: { ...real.default, assert } };
});
