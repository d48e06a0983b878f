/** Charts with jumps, and the roots of their bars in the order they sound. */
export interface Roadmap {
  readonly name: string;
  readonly text: string;
  readonly order: string;
}

export const roadmaps: readonly Roadmap[] = [
  { name: 'da capo, once', text: '| C | D | E D.C. |', order: 'C D E C D E' },
  { name: 'da capo al fine', text: '| C | D Fine | E | F D.C. al Fine |', order: 'C D E F C D' },
  { name: 'dal segno', text: '| C | Segno D | E | F D.S. |', order: 'C D E F D E F' },
  { name: 'dal segno al fine', text: '| C | 𝄋 D | E Fine | F | G D.S. al Fine |', order: 'C D E F G D E' },
  {
    name: 'da capo al coda: the coda only when it is jumped to',
    text: '| C | D To Coda | E | F D.C. al Coda | Coda G | A |',
    order: 'C D E F C D G A',
  },
  {
    name: 'dal segno al coda, the coda a section of that name',
    text: '| C | Segno D | E To Coda | F | G D.S. al Coda |\n[Coda]\n| A | B |',
    order: 'C D E F G D E A B',
  },
  {
    name: 'repeats are not taken after the jump',
    text: '|: C | D :| E | F D.C. al Fine |'.replace('E |', 'E Fine |'),
    order: 'C D C D E F C D E',
  },
  {
    name: 'of two endings the second is taken after the jump',
    text: '|: C |[1 D :|[2 E | F Fine | G D.C. al Fine |',
    order: 'C D C E F G C E F',
  },
  {
    name: 'a jump inside a repeat waits for the last time',
    text: '| C Fine |: D | E D.C. al Fine :|',
    order: 'C D E D E C',
  },
  {
    name: 'a repeat inside the coda counts',
    text: '| C | D To Coda | E D.C. al Coda | Coda |: F | G :|',
    order: 'C D E C D F G F G',
  },
  {
    name: 'words on lines of their own, spelled out',
    text: '| C |\nSegno\n| D | E | F |\nFine\n| G |\nDal Segno al Fine',
    order: 'C D E F G D E F',
  },
];
