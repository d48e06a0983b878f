/** The lesson sheet's shape as JSON Schema, for whoever writes one with another program. */
import { toJsonSchema } from '@valibot/to-json-schema';
import { sheetSchema } from './sheet.ts';

/** JSON Schema (draft 2020-12) of the lesson sheet. */
export const sheetJsonSchema = (): object =>
  toJsonSchema(sheetSchema, { target: 'draft-2020-12', errorMode: 'ignore' });
