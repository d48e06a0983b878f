/** The screen that says what failed outside the program. */
import type { trouble as english } from '../en/trouble.ts';
import type { Translated } from '../entries/translated.ts';

export const trouble: Translated<typeof english> = {
  tryAgain: 'Noch einmal versuchen',
  back: 'Zurück',
};
