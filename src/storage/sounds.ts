/** Where the sound of takes is kept: raw mono 16-bit samples, appended while playing, safe after every append. */
import type { Outcome } from '../core/base/outcome.ts';

export interface SoundWriter {
  /** Resolves when the samples are on the disk. After the first failure nothing more is written. */
  append(samples: Int16Array): Promise<Outcome<void>>;
  close(): Promise<void>;
}

export interface Sounds {
  create(id: string): Promise<Outcome<SoundWriter>>;
  read(id: string): Promise<Outcome<Int16Array>>;
  /** Samples kept so far; 0 for a sound that is not there. */
  frames(id: string): Promise<number>;
  remove(id: string): Promise<void>;
}

/**
 * Writes each sound to the first of two places that accepts it, and reads it from there. Both are on the same disk: when it is
 * full, neither accepts a sound.
 */
export function firstOf(first: Sounds, second: Sounds): Sounds {
  const placeOf = async (id: string) => ((await first.frames(id)) > 0 ? first : second);
  return {
    create: async (id) => {
      const made = await first.create(id);
      return made.ok ? made : second.create(id);
    },
    read: async (id) => (await placeOf(id)).read(id),
    frames: async (id) => (await placeOf(id)).frames(id),
    remove: async (id) => {
      await first.remove(id);
      await second.remove(id);
    },
  };
}

/** The name under which the band of a take is stored. */
export const bandOf = (id: string) => `${id}-band`;
