/**
 * The file that a take leaves as: a zip archive with these parts. Everything is documented here and by the JSON Schema
 * that `landfall schema take` prints.
 */
import { toJsonSchema } from '@valibot/to-json-schema';
import * as v from 'valibot';
import { TakeDetailsInFileSchema } from '../take/details-schema.ts';
import { takeIdSchema } from '../take/take-id.ts';

/** Names of the parts. An archive may hold others, which are left alone. */
export const PARTS = {
  take: 'take.json',
  /** What was played: WAV, one channel of 16 bits. Takes by MIDI, and those without sound, have none. */
  line: 'line.wav',
  /** What the band played on the same frames, where it is kept. */
  band: 'band.wav',
  /** The report, and with it every note that was heard (`heard`). A take that was never graded has none. */
  report: 'report.json',
} as const;

export const TAKE_FILE_ENDING = '.landfall';

/** What a file may hold; anything beyond is refused before it is unpacked. */
export const TAKE_FILE_LIMITS = {
  parts: 64,
  /** Two hours of a MIDI instrument are about 4 MB. */
  takeJsonBytes: 1 << 25,
  reportBytes: 1 << 26,
  hours: 2,
} as const;

export const VERSION = 1;

const seconds = v.pipe(v.number(), v.finite());
const byte = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(255));

/** `take.json`. */
export const takeJsonSchema = v.object({
  format: v.literal('landfall-take'),
  version: v.literal(VERSION),
  /** By which the take is known again: a library holds it once. */
  id: takeIdSchema,
  /** Samples of `line.wav`; of a take without sound its length at `details.sampleRate`. */
  frames: v.pipe(v.number(), v.integer(), v.minValue(0)),
  details: TakeDetailsInFileSchema,
  /** What a MIDI instrument sent, in the order played; left out where a sound was heard. */
  messages: v.exactOptional(v.array(v.object({ seconds, bytes: v.pipe(v.array(byte), v.maxLength(3)) }))),
});

/** JSON Schema (draft 2020-12) of `take.json`. */
export const takeJsonJsonSchema = (): object =>
  toJsonSchema(takeJsonSchema, { target: 'draft-2020-12', errorMode: 'ignore' });
