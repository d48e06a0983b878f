/** What the player says of a take that is kept. */
import type { Review } from '../../state/phase.ts';
import type { TakeCard, TakeMark } from '../../state/take.ts';

export interface Naming {
  /** Empty where the take goes by what was played. */
  readonly name: string;
  readonly starred: boolean;
  onmark(change: TakeMark): void;
}

/** null for a take that is not kept. */
export const namingOf = (
  { id, details }: Pick<Review, 'id' | 'details'>,
  onmark: (change: TakeMark) => void,
): Naming | null => (id === null ? null : cardNaming(details, onmark));

export const cardNaming = (
  { name = '', starred = false }: Pick<TakeCard, 'name' | 'starred'>,
  onmark: (change: TakeMark) => void,
): Naming => ({ name, starred, onmark });
