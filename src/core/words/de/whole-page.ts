/** What all of the open page says in German, with the parts that are fetched once it stands. */
import { folded } from './folded.ts';
import { openPage } from './open-page.ts';
import { takes } from './takes.ts';

export const wholePage = { ...openPage, ready: { ...openPage.ready, ...folded, takes } };
