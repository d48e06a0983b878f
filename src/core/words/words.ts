/** What every language has to say. */
import type { openPage } from './en/open-page.ts';
import type { wholePage } from './en/whole-page.ts';
import type { en } from './en.ts';
import type { Translated } from './entries/translated.ts';

/** The catalogue of one language. */
export type Words = Translated<typeof en>;

/** The part of it that the open page does with, fetched first. */
export type OpenPageWords = Translated<typeof openPage>;

/** The same with the words of its parts that are fetched once it stands. */
export type WholePageWords = Translated<typeof wholePage>;
