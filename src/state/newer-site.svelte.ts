/** A newer Landfall that waits on this machine: told when nothing is played, taken into use when the player says so. */
import type { Problem } from '../core/words/problem.ts';
import type { SitePort } from './ports.ts';

/** A page may stand open for days: it looks again at most this often, and only between takes. */
const LOOK_AGAIN_SECONDS = 3600;

export interface NewerSitePorts {
  /** Null where the browser keeps no site. */
  site(): Promise<SitePort | null>;
  nowSeconds(): number;
}

export class NewerSite {
  readonly #ports: NewerSitePorts;
  #site: SitePort | null = null;
  #waits = $state.raw(false);
  #putAway = $state.raw(false);
  #problem = $state.raw<Problem | null>(null);
  #lookedSeconds = 0;

  constructor(ports: NewerSitePorts) {
    this.#ports = ports;
  }

  /** Whether a newer build waits and the player has not dismissed the message. */
  get waits(): boolean {
    return this.#waits && !this.#putAway;
  }

  /** Why it could not be taken into use, or null. */
  get problem(): Problem | null {
    return this.#problem;
  }

  async open(): Promise<void> {
    this.#lookedSeconds = this.#ports.nowSeconds();
    this.#site = await this.#ports.site();
    this.#site?.onWaiting(() => (this.#waits = true));
  }

  /** To be called between takes. */
  async look(): Promise<void> {
    const now = this.#ports.nowSeconds();
    if (this.#site === null || now - this.#lookedSeconds < LOOK_AGAIN_SECONDS) return;
    this.#lookedSeconds = now;
    await this.#site.look();
  }

  /** Loads the page again with the newer build. */
  async takeOver(): Promise<void> {
    const taken = await this.#site?.takeOver();
    this.#problem = taken === undefined || taken.ok ? null : taken.problem;
  }

  /** It is taken into use by itself when no window is open any more. */
  putAway(): void {
    this.#putAway = true;
  }
}
