/** The moving place in the form: the staff line is drawn over in ink as it is played. Written straight to the elements. */
import type { LiveMoment } from '../../state/session.svelte.ts';

type Place = Pick<LiveMoment, 'beat' | 'bar' | 'beatInBar'>;

export class PlaceMark {
  #bar: HTMLElement | null = null;
  #played: HTMLElement | null = null;
  #index = -1;

  /** Moves to where `live` is; `list` is the form's list of bars. */
  move(list: HTMLElement, live: Place, beatsPerBar: number): void {
    const index = live.beat < 0 ? -1 : live.bar;
    if (index !== this.#index) {
      this.#leave();
      this.#index = index;
      this.#bar = index < 0 ? null : list.querySelector<HTMLElement>(`[data-bar="${index}"]`);
      this.#played = this.#bar?.querySelector<HTMLElement>('.played') ?? null;
      this.#bar?.setAttribute('aria-current', 'true');
      this.#bringIntoView(list);
    }
    if (this.#played !== null)
      this.#played.style.transform = `scaleX(${Math.min(1, live.beatInBar / beatsPerBar)})`;
  }

  /** The page has another size: the row being played is brought into sight again. */
  forget(): void {
    this.#leave();
    this.#index = NaN;
  }

  #leave(): void {
    this.#bar?.removeAttribute('aria-current');
    if (this.#played !== null) this.#played.style.transform = '';
  }

  /** A long form scrolls by rows so that the row being played is in sight, with the one before it where it fits. */
  #bringIntoView(list: HTMLElement): void {
    const frame = list.parentElement?.parentElement;
    if (frame === null || frame === undefined || this.#bar === null) return;
    const rowHeight = this.#bar.offsetHeight;
    // Where all rows are there but for the sea under the last one, turning would only cut the names of the first.
    if (frame.scrollHeight - frame.clientHeight < rowHeight / 2) return void (frame.scrollTop = 0);
    const rowBefore = frame.clientHeight >= 2 * rowHeight ? rowHeight * 1.1 : 0;
    frame.scrollTop = this.#bar.offsetTop - list.offsetTop - rowBefore;
  }
}
