/** The lesson sheet of the class tests, at the command line and at the desk: four chords, a bar each, three times round. */
export const THIRDS_SHEET = {
  format: 'landfall-sheet',
  version: 1,
  title: 'Thirds in D',
  note: '',
  chart: '| D7 | G7 | A7 | E7 |',
  tempo: 120,
  feel: 'straight',
  choruses: 3,
  aims: [{ id: 'third-on-arrival', shareToReach: 0.5 }],
};
