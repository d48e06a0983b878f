/** What a validation found, as facts. The schemas are made for the test. */
import * as v from 'valibot';
import { describe, expect, it } from 'vitest';
import { unfitValue } from '../../../src/core/base/unfit-value.ts';

const schema = v.object({
  name: v.string(),
  bars: v.pipe(v.number(), v.integer(), v.minValue(1), v.maxValue(64)),
  loud: v.boolean(),
  tones: v.array(v.string()),
  short: v.optional(v.pipe(v.string(), v.maxLength(4))),
  few: v.optional(v.pipe(v.array(v.number()), v.maxLength(2))),
  kind: v.picklist(['chorus', 'bar']),
  version: v.literal(2),
  either: v.union([v.string(), v.number()]),
});
const right = { name: 'A', bars: 12, loud: true, tones: ['3'], kind: 'bar', version: 2, either: 1 };
const unfit = (changed: object | null) => {
  const read = v.safeParse(schema, changed === null ? null : { ...right, ...changed });
  if (read.success) throw new Error('the value fits');
  return unfitValue(read.issues[0]);
};

describe('a value that does not fit', () => {
  it('is told by its place, by what it had to be and by what it is', () => {
    const value = (json: string) => ({ kind: 'value', json });
    expect(unfit({ name: 3 })).toEqual({ field: 'name', wanted: { kind: 'text' }, found: value('3') });
    expect(unfit({ bars: '12' })).toEqual({
      field: 'bars',
      wanted: { kind: 'number' },
      found: value('"12"'),
    });
    expect(unfit({ bars: 1.5 }).wanted).toEqual({ kind: 'integer' });
    expect(unfit({ short: 'abcde' }).wanted).toEqual({ kind: 'characters', limit: 4 });
    expect(unfit({ few: [1, 2, 3] }).wanted).toEqual({ kind: 'entries', limit: 2 });
    expect(unfit({ bars: 0 }).wanted).toEqual({ kind: 'at least', limit: 1 });
    expect(unfit({ bars: 65 }).wanted).toEqual({ kind: 'at most', limit: 64 });
    // As 1e400 is read from JSON: no player knows the word that JavaScript has for it.
    expect(unfit({ name: JSON.parse('1e400') as unknown }).found).toEqual({ kind: 'unbounded' });
    expect(unfit({ loud: null })).toEqual({
      field: 'loud',
      wanted: { kind: 'boolean' },
      found: { kind: 'null' },
    });
    expect(unfit({ tones: {} })).toEqual({
      field: 'tones',
      wanted: { kind: 'list' },
      found: { kind: 'object' },
    });
    expect(unfit({ tones: [1] })).toEqual({ field: 'tones.0', wanted: { kind: 'text' }, found: value('1') });
    expect(unfit({ kind: [] })).toEqual({
      ...{
        field: 'kind',
        wanted: { kind: 'one of', values: ['"chorus"', '"bar"'] },
        found: { kind: 'list' },
      },
    });
    expect(unfit({ version: 1 }).wanted).toEqual({ kind: 'one of', values: ['2'] });
    expect(unfit({ either: true }).wanted).toEqual({ kind: 'other' });
    expect(unfit(null)).toEqual({ field: null, wanted: { kind: 'object' }, found: { kind: 'null' } });
  });

  it('may be missing', () => {
    const { name: _, ...rest } = right;
    const read = v.safeParse(schema, rest);
    expect(read.success ? null : unfitValue(read.issues[0])).toMatchObject({
      field: 'name',
      found: { kind: 'nothing' },
    });
  });

  it('is cut where it is long', () => {
    expect(unfit({ name: undefined, bars: 'x'.repeat(99) }).found).toEqual({ kind: 'nothing' });
    const found = unfit({ bars: 'x'.repeat(99) }).found;
    expect(found).toEqual({ kind: 'value', json: `"${'x'.repeat(39)} …` });
  });
});
