/**
 * Why a value that came from outside does not have the form that was asked for, as facts: the catalogues put them into
 * words, because the validation library's own sentences are English.
 */
import { getDotPath, type BaseIssue } from 'valibot';
import type { FoundValue, WantedValue } from '../words/entries/entry.ts';

/** Longer texts are cut. */
const MOST_LETTERS = 40;

interface UnfitValue {
  /** Its place, as "notes.3.midi"; null where the whole value is meant. */
  readonly field: string | null;
  readonly wanted: WantedValue;
  readonly found: FoundValue;
}

/**
 * @example unfitValue(issue) // { field: 'tuning.referenceHz', wanted: { kind: 'number' }, found: { kind: 'value', json: '"440"' } }
 */
export const unfitValue = (issue: BaseIssue<unknown>): UnfitValue => ({
  field: getDotPath(issue),
  wanted: wantedBy(issue),
  found: foundIn(issue.input),
});

const KINDS: ReadonlyMap<string, WantedValue> = new Map([
  ['string', { kind: 'text' }],
  ['number', { kind: 'number' }],
  ['finite', { kind: 'number' }],
  ['integer', { kind: 'integer' }],
  ['boolean', { kind: 'boolean' }],
  ['array', { kind: 'list' }],
  ['object', { kind: 'object' }],
  ['record', { kind: 'object' }],
]);

function wantedBy({ type, expected, requirement, input }: BaseIssue<unknown>): WantedValue {
  if (type === 'literal') return { kind: 'one of', values: [expected ?? ''] };
  // '("bars" | "notes")': the values stand between the strokes.
  if (type === 'picklist')
    return { kind: 'one of', values: (expected ?? '').replace(/^\(|\)$/g, '').split(' | ') };
  if (type === 'min_value') return { kind: 'at least', limit: Number(requirement) };
  if (type === 'max_value') return { kind: 'at most', limit: Number(requirement) };
  if (type === 'max_length')
    return { kind: Array.isArray(input) ? 'entries' : 'characters', limit: Number(requirement) };
  return KINDS.get(type) ?? { kind: 'other' };
}

/** The value itself where it is a single one, as JSON writes it, so that a text has its quotes. */
function foundIn(value: unknown): FoundValue {
  if (value === undefined) return { kind: 'nothing' };
  if (value === null) return { kind: 'null' };
  if (Array.isArray(value)) return { kind: 'list' };
  if (typeof value === 'object') return { kind: 'object' };
  // JSON reads 1e400 as such a number and can't write it.
  if (typeof value === 'number' && !Number.isFinite(value)) return { kind: 'unbounded' };
  const json = typeof value === 'string' ? JSON.stringify(value) : String(value);
  return { kind: 'value', json: json.length > MOST_LETTERS ? `${json.slice(0, MOST_LETTERS)} …` : json };
}
