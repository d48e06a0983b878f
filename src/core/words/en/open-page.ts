/** What the open page says in English: it is fetched first, and has to do without all other words. */
import { aims } from './aims.ts';
import { forms } from './forms.ts';
import { parts } from './parts.ts';
import { problemsOfOpenPage } from './problems-open-page.ts';
import { ready } from './ready.ts';
import { settings } from './settings.ts';
import { terms } from './terms.ts';
import { trouble } from './trouble.ts';

export const openPage = {
  ...terms,
  ready: { ...ready, ...settings, ...forms },
  aims,
  parts,
  trouble,
  problems: problemsOfOpenPage,
};
