/**
 * The pages that stand beside playing: the one over days, the teacher's desk, the line written out in place of its review,
 * and the help, which lies over whatever page there is.
 */
export class Pages {
  #progress = $state.raw(false);
  #written = $state.raw(false);
  #classDesk = $state.raw(false);
  #help = $state.raw<string | null>(null);

  /** Whether the page over days stands in place of the open page. */
  get progress(): boolean {
    return this.#progress;
  }

  /** Whether the teacher's desk stands in place of the open page. */
  get classDesk(): boolean {
    return this.#classDesk;
  }

  /** Where the help is open: the id of an entry, '' for its beginning; null while it is closed. */
  get help(): string | null {
    return this.#help;
  }

  /** Whether the line stands written out in place of the review of its take. */
  get written(): boolean {
    return this.#written;
  }

  showWritten(shown: boolean): void {
    this.#written = shown;
  }

  showClassDesk(shown: boolean): void {
    this.#classDesk = shown;
  }

  showProgress(shown: boolean): void {
    this.#progress = shown;
  }

  /** @param entry id of the entry to begin with, '' for the first */
  openHelp(entry = ''): void {
    this.#help = entry;
  }

  closeHelp(): void {
    this.#help = null;
  }
}
