/** While a take is graded. */
import type { grading as english } from '../en/grading.ts';
import type { Translated } from '../entries/translated.ts';

export const grading: Translated<typeof english> = {
  naming: 'Jeder Ton bekommt seinen Namen …',
  progress: 'Bewertung',
};
