/** The line written out as notes. */
import type { notation as english } from '../en/notation.ts';
import type { Translated } from '../entries/translated.ts';

export const notation: Translated<typeof english> = {
  title: 'Ausgeschrieben',
  back: 'Zurück zum Take',
  thisPage: 'Diese Seite',
  score: 'Partitur (MusicXML)',
  picture: 'Bild (SVG)',
  print: 'Drucken',
  degrees: 'Stufen',
  degreesWhy: 'Unter jedem Ton, was er zu seinem Akkord ist.',
  tab: 'Tabulatur',
  tabWhy: 'Saiten und Bünde, für die sich die Hand am wenigsten bewegt.',
  capo: ({ fret }) => `Kapodaster im ${fret}. Bund; die Bünde zählen von ihm an.`,
  chorus: ({ chorus }) => `Chorus ${chorus}`,
  bars: ({ from, to }) => (from === to ? `Takt ${from}` : `Takt ${from} bis ${to}`),
  noNotes: 'Es gibt keinen Ton zu schreiben: In diesem Take wurde keiner sicher genug gehört, um zu zählen.',
  quantised: 'Der Rhythmus ist auf Lesbares gerundet; geswingte Achtel stehen gerade.',
};
