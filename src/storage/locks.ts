/** Which takes are being written at present, told from one page of the browser to the others. */

/** Shows the pages of one browser which takes are being played at present (Web Locks). */
export interface Locks {
  /** Holds the name until the returned function is called. */
  hold(name: string): Promise<() => void>;
  held(): Promise<ReadonlySet<string>>;
}

export const lockName = (id: string) => `landfall take ${id}`;

/** Web Locks; where a browser has none, no take counts as being played elsewhere. */
export function browserLocks(): Locks {
  if (!('locks' in navigator)) return { hold: async () => () => undefined, held: async () => new Set() };
  return {
    hold: (name) =>
      new Promise((resolve) => {
        void navigator.locks.request(name, () => new Promise<void>((release) => resolve(release)));
      }),
    held: async () => {
      const { held = [] } = await navigator.locks.query();
      return new Set(held.map((lock) => lock.name ?? ''));
    },
  };
}
