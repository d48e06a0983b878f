/** The shapes of the lesson sheet and of an answer as JSON Schema, for whoever writes one with another program. */
import { toJsonSchema } from '@valibot/to-json-schema';
import { answerSchema } from './answer.ts';
import { sheetSchema } from './sheet.ts';

/** JSON Schema (draft 2020-12) of the lesson sheet. */
export const sheetJsonSchema = (): object =>
  toJsonSchema(sheetSchema, { target: 'draft-2020-12', errorMode: 'ignore' });

/** JSON Schema (draft 2020-12) of a teacher's answer. */
export const answerJsonSchema = (): object =>
  toJsonSchema(answerSchema, { target: 'draft-2020-12', errorMode: 'ignore' });
