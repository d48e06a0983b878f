/** The line written out as notes. */

export const notation = {
  title: 'Written out',
  back: 'Back to the take',
  thisPage: 'This page',
  score: 'Score (MusicXML)',
  picture: 'Picture (SVG)',
  print: 'Print',
  degrees: 'Degrees',
  degreesWhy: 'Under each note, what it is to its chord.',
  tab: 'Tablature',
  tabWhy: 'Strings and frets that need the least motion of the hand.',
  capo: ({ fret }: { fret: number }) => `Capo on fret ${fret}; frets are counted from it.`,
  chorus: ({ chorus }: { chorus: number }) => `Chorus ${chorus}`,
  bars: ({ from, to }: { from: number; to: number }) =>
    from === to ? `Bar ${from}` : `Bars ${from} to ${to}`,
  noNotes: 'There is no note to write: in this take no note was heard surely enough to count.',
  quantised: 'The rhythm is rounded to what can be read; swung eighths are written straight.',
};
