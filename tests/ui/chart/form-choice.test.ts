/** Every form, instrument and feel has its words in every language. */
import { describe, expect, it } from 'vitest';
import { listForms } from '../../../src/core/chart/forms.ts';
import { INSTRUMENTS } from '../../../src/core/music/instruments.ts';
import { wordsOf } from '../../../src/core/words/catalogues.ts';
import { languageCodes } from '../../../src/core/words/languages.ts';
import { formChoices } from '../../../src/ui/chart/form-choice.ts';

describe.each(languageCodes)('the open page in %s', (code) => {
  const words = wordsOf(code);

  it('has a title and a sentence for each built-in form, and for no other', () => {
    const forms = listForms();
    expect(formChoices(forms, words)).toHaveLength(forms.length);
    expect(Object.keys(words.ready.forms).sort()).toEqual(forms.map(({ name }) => name).sort());
  });

  it('has a name for each instrument, and for no other', () => {
    expect(Object.keys(words.ready.instruments).sort()).toEqual(INSTRUMENTS.map(({ id }) => id).sort());
  });
});
