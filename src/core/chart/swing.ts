import type { FeelName } from './feel-names.ts';

/**
 * Long against short eighth on the ride cymbal. Drummers' ratio falls about linearly with tempo, from as much as
 * 3.5:1 near 120 bpm to 1:1 at fast tempi, and the short eighth stays near 100 ms from medium tempi up
 * (Friberg & Sundström, Music Perception 19(3), 2002; TMH-QPSR 4/1997). The line here passes 3:1 at 120 bpm and
 * 1:1 at 300, which keeps the short eighth between 91 and 125 ms from 120 to 280 bpm.
 */
const slowTempo = { bpm: 120, ratio: 3 };
const fastTempo = { bpm: 300, ratio: 1 };
/** A shuffle is a triplet with its middle left out; it evens out only where the ride would too. */
const tripletRatio = 2;

export const leastSwing = 0.5;
export const mostSwing = 0.8;

export function swingRatio(bpm: number): number {
  const slope = (fastTempo.ratio - slowTempo.ratio) / (fastTempo.bpm - slowTempo.bpm);
  const ratio = slowTempo.ratio + slope * (bpm - slowTempo.bpm);
  return Math.min(slowTempo.ratio, Math.max(fastTempo.ratio, ratio));
}

/** Share of the beat that the first eighth takes in a feel at a tempo: 0.5 is straight, 2/3 a triplet. */
export function swingShare(feel: FeelName, bpm: number): number {
  switch (feel) {
    case 'swing':
      return share(swingRatio(bpm));
    case 'shuffle':
    case 'ballad':
      return share(Math.min(tripletRatio, swingRatio(bpm)));
    case 'slow-blues':
      return share(tripletRatio);
    case 'straight':
    case 'funk':
    case 'bossa':
    case 'rock':
      return 0.5;
  }
}

const share = (ratio: number) => ratio / (ratio + 1);

/**
 * Where a written place in the bar is played. The beat's first half is stretched to `swing`, its second half
 * squeezed into the rest; triplets stay triplets, so the caller leaves those alone.
 */
export function swungBeat(writtenBeat: number, swing: number): number {
  const beat = Math.floor(writtenBeat);
  const place = writtenBeat - beat;
  return beat + (place < 0.5 ? place * 2 * swing : swing + (place - 0.5) * 2 * (1 - swing));
}
