/**
 * The site itself, kept on this machine by its service worker (built by `src/cli/installable.ts`), so that it opens without
 * a network. A newer build is fetched whole beside the older one and waits: one page never runs files of two builds.
 */
import { bad, good, type Outcome } from '../core/base/outcome.ts';

const SERVICE_WORKER = './service-worker.js';

/** Held by every open window, so that each can count them. */
const WINDOW_LOCK = 'landfall window';

/** How a waiting build is told to take over (Workbox). */
const TAKE_OVER = { type: 'SKIP_WAITING' } as const;

export interface KeptSite {
  /** Calls back once when a newer build waits on this machine. */
  onWaiting(tell: () => void): void;
  /** Looks whether there is a newer build; nothing happens without a network. */
  look(): Promise<void>;
  /**
   * Puts the waiting build in place of this one and loads the page again. Where another window is open, nothing happens: a
   * take may be going on there, and its files would be gone.
   */
  takeOver(): Promise<Outcome<void>>;
}

/** Other windows than this one; 0 where the browser can't tell. */
async function otherWindows(): Promise<number> {
  if (!('locks' in navigator)) return 0;
  const { held = [] } = await navigator.locks.query();
  return Math.max(0, held.filter(({ name }) => name === WINDOW_LOCK).length - 1);
}

/** Registers the service worker. A browser without one, or a page that may not have one, runs as before. */
export async function keepSite(): Promise<KeptSite | null> {
  if (!('serviceWorker' in navigator)) return null;
  const workers = navigator.serviceWorker;
  if ('locks' in navigator)
    void navigator.locks.request(WINDOW_LOCK, { mode: 'shared' }, () => new Promise(() => undefined));
  let registration: ServiceWorkerRegistration;
  try {
    // `none`: the browser asks the server for the worker itself, past its own cache.
    registration = await workers.register(SERVICE_WORKER, { updateViaCache: 'none' });
    // Where a test or a policy blocks service workers, browsers answer with nothing.
    if (!('active' in registration)) return null;
  } catch {
    return null;
  }
  return {
    onWaiting(tell) {
      // The first build of all waits for nothing; only one that comes beside an older one does.
      const check = () => {
        if (registration.waiting !== null && registration.active !== null) tell();
      };
      check();
      registration.addEventListener('updatefound', () => {
        registration.installing?.addEventListener('statechange', check);
      });
    },
    async look() {
      await registration.update().catch(() => undefined);
    },
    async takeOver() {
      if ((await otherWindows()) > 0) return bad('site.otherWindow');
      workers.addEventListener('controllerchange', () => location.reload(), { once: true });
      if (registration.waiting === null) location.reload();
      else registration.waiting.postMessage(TAKE_OVER);
      return good(undefined);
    },
  };
}
