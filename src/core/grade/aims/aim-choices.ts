/** What a player can choose to land on, and the aims of the house, by their ids. */
import type { Aim } from './aim.ts';
import { AIM_LADDER, PLAIN_AIMS } from './aims.ts';

export interface AimChoice {
  /** For storage, and for its words in the catalogue; it never changes. */
  readonly id: string;
  /** As an aim names them. */
  readonly tones: readonly string[];
  /** Degrees of the key that the tones are meant over; left out, every chord. */
  readonly over?: readonly string[];
}

const GUIDE_TONES: AimChoice = {
  id: 'guide-tones',
  tones: ['guide tone'],
};

const PLAIN_CHOICES: readonly AimChoice[] = [
  GUIDE_TONES,
  {
    id: 'thirds',
    tones: ['third'],
  },
  {
    id: 'chord-tones',
    tones: ['chord tone'],
  },
];

/** The tones that are shown for an aim. One to keep off a tone shows the guide tones. */
export const choiceForAim = ({ id, test, tones, over }: Aim): AimChoice => ({
  id,
  tones: test === 'is none of' ? GUIDE_TONES.tones : tones,
  ...(over === undefined || test === 'is none of' ? {} : { over }),
});

/** The plain choices first, then the rungs of the ladder. */
export const AIM_CHOICES: readonly AimChoice[] = [...PLAIN_CHOICES, ...AIM_LADDER.map(choiceForAim)];

/** What holds until something is chosen. */
export const USUAL_AIM = GUIDE_TONES.id;

/** The tones that are shown where an aim asks for none. */
export const USUAL_TONES = GUIDE_TONES.tones;

/** The aims of the house: the plain ones, and the rungs of the ladder. */
export const HOUSE_AIMS: readonly Aim[] = [...PLAIN_AIMS, ...AIM_LADDER];

/** The rung that a plain choice stands for: the same tones, asked at the same place. */
const SAME_AS: Readonly<Record<string, string>> = { thirds: 'third-on-arrival' };

/**
 * The aim that a take with this choice is graded by; null for an id that is no longer known.
 * @example aimOf('thirds')?.id // "third-on-arrival"
 */
export const aimOf = (id: string): Aim | null =>
  HOUSE_AIMS.find((aim) => aim.id === (SAME_AS[id] ?? id)) ?? null;

/** The choice with an id; the usual one for an id that is no longer known. */
export const aimChoiceOf = (id: string): AimChoice =>
  AIM_CHOICES.find((choice) => choice.id === id) ?? GUIDE_TONES;
