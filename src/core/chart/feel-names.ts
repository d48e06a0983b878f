/** The feels that a chart may name and the band can play, and the tempos it plays at. */

export type FeelName = 'shuffle' | 'swing' | 'straight' | 'slow-blues' | 'funk' | 'bossa' | 'rock' | 'ballad';

export const feelNames: readonly FeelName[] = [
  'shuffle',
  'swing',
  'straight',
  'slow-blues',
  'funk',
  'bossa',
  'rock',
  'ballad',
];

export const slowestBpm = 40;
export const fastestBpm = 280;
