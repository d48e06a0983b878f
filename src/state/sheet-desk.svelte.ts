/** Where a teacher writes lesson sheets: one at a time, from what is on the stand or from one that is there already. */
import { decodeText } from '../core/files/bytes/text.ts';
import { EXAMPLE_LIMITS } from '../core/lesson/example.ts';
import { readSheet, SHEET_LIMITS, writeSheet, type LessonSheet } from '../core/lesson/sheet.ts';
import { readKeptReport } from '../core/kept-report.ts';
import { problem, type Message } from '../core/words/problem.ts';
import { safeFileName } from './file-names.ts';
import type { Library } from './library.svelte.ts';
import type { FilesPort, TakesPort } from './ports.ts';
import type { Setup } from './setup.svelte.ts';
import { SheetDraft } from './sheet-draft.svelte.ts';
import type { TakeCard, TakeId } from './take.ts';

export const SHEET_FILE_ENDING = '.sheet.json';

interface SheetDeskPorts {
  readonly setup: Setup;
  readonly files: FilesPort;
  readonly library: Pick<Library, 'takes'>;
  readonly takes: Pick<TakesPort, 'open'>;
}

export class SheetDesk {
  readonly #ports: SheetDeskPorts;
  #draft = $state.raw<SheetDraft | null>(null);
  #isOpen = $state.raw(false);
  #notices = $state.raw<readonly Message[]>([]);

  constructor(ports: SheetDeskPorts) {
    this.#ports = ports;
  }

  /** What is being written; null while the desk is closed. */
  get draft(): SheetDraft | null {
    return this.#isOpen ? this.#draft : null;
  }

  /** Why the last file was not opened. */
  get notices(): readonly Message[] {
    return this.#notices;
  }

  /** Kept takes over the chart of the sheet: each can be its example. */
  get examples(): readonly TakeCard[] {
    const { draft } = this;
    const chords = draft?.chords ?? null;
    if (draft === null || chords === null) return [];
    return this.#ports.library.takes.filter(
      ({ chartText, summary }) => summary !== null && draft.chordsOf(chartText) === chords,
    );
  }

  /** The notes of a kept take become the example of the sheet. */
  async giveExample(id: TakeId): Promise<void> {
    const { draft } = this;
    const take = await this.#ports.takes.open(id);
    const report = take.ok ? readKeptReport(take.value) : take;
    if (draft === null || draft !== this.draft) return;
    if (!report.ok) this.#notices = [report.problem];
    else if (take.ok && draft.giveExample(id, report.value, take.value.details.instrument))
      this.#notices = [];
    else this.#notices = [problem('sheet.example', { most: EXAMPLE_LIMITS.notes })];
  }

  /** Goes on with what was being written; begins with the chart on the stand where nothing was. */
  open(): void {
    this.#draft ??= SheetDraft.ofStand(this.#ports.setup.settings);
    this.#isOpen = true;
  }

  /** Begins anew, with the chart on the stand. */
  begin(): void {
    this.#draft = SheetDraft.ofStand(this.#ports.setup.settings);
    this.#isOpen = true;
  }

  /** A sheet that is there already. */
  edit(sheet: LessonSheet): void {
    this.#draft = SheetDraft.ofSheet(sheet, this.#ports.setup.settings);
    this.#isOpen = true;
  }

  async editFile(file: File): Promise<void> {
    const { name } = file;
    const text = file.size > SHEET_LIMITS.bytes ? null : new Uint8Array(await file.arrayBuffer());
    const sheet = text && readSheet(decodeText(text) ?? '', name);
    if (sheet?.ok) this.edit(sheet.value);
    this.#notices =
      sheet === null
        ? [problem('sheet.tooLong', { name, most: SHEET_LIMITS.bytes })]
        : sheet.ok
          ? []
          : [sheet.problem];
  }

  /** What is written is kept until the page is closed. */
  close(): void {
    this.#isOpen = false;
    this.#notices = [];
  }

  /** Downloads the sheet; does nothing while something is missing. @returns the name of the file */
  save(): string | null {
    const sheet = this.draft?.sheet;
    if (!sheet?.ok) return null;
    const fileName = safeFileName([sheet.value.file.title], SHEET_FILE_ENDING);
    this.#ports.files.save(new Blob([writeSheet(sheet.value.file)], { type: 'application/json' }), fileName);
    return fileName;
  }
}
