/** The report's shape as JSON Schema, for readers in other languages. */
import { toJsonSchema } from '@valibot/to-json-schema';
import { reportSchema } from '../take/schema.ts';

/** JSON Schema (draft 2020-12) of the report. */
export const reportJsonSchema = (): object =>
  toJsonSchema(reportSchema, { target: 'draft-2020-12', errorMode: 'ignore' });
