/** Which takes are being written at present, told from one page of the browser to the others (Web Locks, W3C). */

export interface Locks {
  /** Holds the name until the returned function is called; waits while another page holds it. */
  hold(name: string): Promise<() => void>;
  held(): Promise<ReadonlySet<string>>;
}

export const lockName = (id: string) => `landfall take ${id}`;

/** Where a browser has no locks, no take counts as being played elsewhere. */
export function browserLocks(): Locks {
  if (!('locks' in navigator)) return { hold: async () => () => undefined, held: async () => new Set() };
  return {
    hold: (name) =>
      new Promise((resolve) => {
        const held = navigator.locks.request(name, () => new Promise<void>((release) => resolve(release)));
        // A browser that refuses the lock (blocked storage) must not keep a take from beginning.
        held.catch(() => resolve(() => undefined));
      }),
    held: async () => {
      const { held = [] } = await navigator.locks.query().catch(() => ({ held: [] }));
      return new Set(held.map((lock) => lock.name ?? ''));
    },
  };
}
