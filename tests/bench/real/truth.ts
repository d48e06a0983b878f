/** Reads what is known of a recording: its notes, or their order alone, and how far its onsets can be trusted. */
import * as v from 'valibot';
import { read, unreadable, type Read } from './read.ts';
import type { MetricNote } from '../note-metrics.ts';

/** An annotated note. */
export interface PlayedNote extends MetricNote {
  /**
   * Marked as doubtful or as a grace note: an estimate that fits it is neither right nor wrong, and it isn't missed.
   */
  readonly setAside: boolean;
}

/** All notes with their times, or only their pitches in order (MIDI numbers): then exactly these and none else. */
export type Truth =
  | { readonly kind: 'notes'; readonly notes: readonly PlayedNote[] }
  | { readonly kind: 'sequence'; readonly midi: readonly number[] };

/** What the catalogue says of one recording. */
export interface CatalogueEntry {
  readonly name: string;
  /** The collection that it comes from; a fit leaves a whole one out. */
  readonly source: string;
  readonly onsetToleranceSeconds: number;
}

/** mir_eval's default, and what annotation after the fact allows. */
const NARROW_SECONDS = 0.05;
const WIDE_SECONDS = 0.1;
/** The catalogue's mark for onsets that were measured afterwards, trusted to ±30 ms only. */
const MEASURED_AFTERWARDS = 'C';

const seconds = v.pipe(v.number(), v.finite());
const truthSchema = v.union([
  v.object({
    notes: v.array(
      v.object({
        on: seconds,
        off: seconds,
        midi: v.pipe(v.number(), v.minValue(0), v.maxValue(127)),
        unsure: v.optional(v.boolean(), false),
        grace: v.optional(v.boolean(), false),
      }),
    ),
  }),
  v.object({ sequence: v.array(v.number()) }),
]);
const catalogueSchema = v.array(
  v.object({ name: v.string(), tier: v.optional(v.string(), ''), source: v.optional(v.string()) }),
);

/** The part of a recording's name before its number: "wooden-flute" of "wooden-flute-03". */
export const instrumentOf = (name: string): string => name.replace(/-\d+$/, '');

function parsed(text: string, name: string): Read<unknown> {
  try {
    return read(JSON.parse(text));
  } catch {
    return unreadable(`${name} is not JSON.`);
  }
}

/** Reads NAME.json; notes come back in order of onset. */
export function readTruth(text: string, name: string): Read<Truth> {
  const json = parsed(text, name);
  if (!json.ok) return json;
  const result = v.safeParse(truthSchema, json.value);
  if (!result.success)
    return unreadable(`${name} must hold "notes" with on, off and midi, or a "sequence" of MIDI numbers.`);
  if ('sequence' in result.output) return read({ kind: 'sequence', midi: result.output.sequence });
  const notes = result.output.notes.map(({ on, off, midi, unsure, grace }) => ({
    onsetSeconds: on,
    offsetSeconds: off,
    midi,
    setAside: unsure || grace,
  }));
  return read({ kind: 'notes', notes: notes.sort((a, b) => a.onsetSeconds - b.onsetSeconds) });
}

/** What to take for a recording that no catalogue tells of. */
export function entryWithoutCatalogue(name: string, wide: readonly string[]): CatalogueEntry {
  const instrument = instrumentOf(name);
  return {
    name,
    source: instrument,
    onsetToleranceSeconds: wide.includes(instrument) ? WIDE_SECONDS : NARROW_SECONDS,
  };
}

/**
 * Reads catalogue.json. Onsets count within 50 ms; within 100 ms where they were measured afterwards and on the
 * instruments in `wide` (whose labels are known to be early or late).
 */
export function readCatalogue(
  text: string,
  name: string,
  wide: readonly string[],
): Read<readonly CatalogueEntry[]> {
  const json = parsed(text, name);
  if (!json.ok) return json;
  const result = v.safeParse(catalogueSchema, json.value);
  if (!result.success) return unreadable(`${name} must be a list of recordings, each with a name.`);
  return read(
    result.output.map((entry) => {
      const plain = entryWithoutCatalogue(entry.name, wide);
      return {
        name: entry.name,
        source: entry.source ?? plain.source,
        onsetToleranceSeconds:
          entry.tier === MEASURED_AFTERWARDS ? WIDE_SECONDS : plain.onsetToleranceSeconds,
      };
    }),
  );
}
