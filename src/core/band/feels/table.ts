import type { FeelName } from '../../chart/feel-names.ts';
import { bossa, funk, rock, straight } from './even.ts';
import type { Feel } from './feel.ts';
import { ballad, shuffle, slowBlues, swing } from './swung.ts';

export const feels: Readonly<Record<FeelName, Feel>> = {
  shuffle,
  swing,
  straight,
  'slow-blues': slowBlues,
  funk,
  bossa,
  rock,
  ballad,
};
