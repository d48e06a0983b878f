/** The moving place in the form: the staff line is drawn over in ink as it is played. Written straight to the elements. */
import type { LiveMoment } from '../../state/session.svelte.ts';

type Place = Pick<LiveMoment, 'beat' | 'bar' | 'beatInBar'>;

const numberOf = (list: HTMLElement, name: string) => Number(list.style.getPropertyValue(name)) || 1;

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
      this.#bar = this.#played = null;
      this.#find(list);
      if (this.#bar === null) this.#bringNear(list);
    } else if (this.#bar === null || !this.#bar.isConnected) this.#find(list);
    if (this.#played !== null)
      this.#played.style.transform = `scaleX(${Math.min(1, live.beatInBar / beatsPerBar)})`;
  }

  /** The page has another size: the row being played is brought into sight again. */
  forget(): void {
    this.#leave();
    this.#index = NaN;
  }

  /** The bar, where it is drawn: of a long form only what is in sight is. */
  #find(list: HTMLElement): void {
    this.#bar = this.#index < 0 ? null : list.querySelector<HTMLElement>(`[data-bar="${this.#index}"]`);
    if (this.#bar === null) return;
    this.#played = this.#bar.querySelector<HTMLElement>('.played');
    this.#bar.setAttribute('aria-current', 'true');
    this.#bringIntoView(list);
  }

  /** Scrolls to where a bar lies that is not drawn yet; it is, a frame later. */
  #bringNear(list: HTMLElement): void {
    const frame = list.parentElement?.parentElement;
    const row = Math.floor(this.#index / numberOf(list, '--in-row'));
    if (frame && row >= 0) frame.scrollTop = (row * list.offsetHeight) / numberOf(list, '--rows');
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
