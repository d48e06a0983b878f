/** Where a teacher writes lesson sheets: one at a time, from what is on the stand or from one that is there already. */
import { decodeText } from '../core/files/bytes/text.ts';
import { readSheet, SHEET_LIMITS, writeSheet, type LessonSheet } from '../core/lesson/sheet.ts';
import { problem, type Message } from '../core/words/problem.ts';
import { safeFileName } from './file-names.ts';
import type { FilesPort } from './ports.ts';
import type { Setup } from './setup.svelte.ts';
import { SheetDraft } from './sheet-draft.svelte.ts';

export const SHEET_FILE_ENDING = '.sheet.json';

export class SheetDesk {
  readonly #setup: Setup;
  readonly #files: FilesPort;
  #draft = $state.raw<SheetDraft | null>(null);
  #isOpen = $state.raw(false);
  #notices = $state.raw<readonly Message[]>([]);

  constructor(ports: { readonly setup: Setup; readonly files: FilesPort }) {
    this.#setup = ports.setup;
    this.#files = ports.files;
  }

  /** What is being written; null while the desk is closed. */
  get draft(): SheetDraft | null {
    return this.#isOpen ? this.#draft : null;
  }

  /** Why the last file was not opened. */
  get notices(): readonly Message[] {
    return this.#notices;
  }

  /** Goes on with what was being written; begins with the chart on the stand where nothing was. */
  open(): void {
    this.#draft ??= SheetDraft.ofStand(this.#setup.settings);
    this.#isOpen = true;
  }

  /** Begins anew, with the chart on the stand. */
  begin(): void {
    this.#draft = SheetDraft.ofStand(this.#setup.settings);
    this.#isOpen = true;
  }

  /** A sheet that is there already. */
  edit(sheet: LessonSheet): void {
    this.#draft = SheetDraft.ofSheet(sheet, this.#setup.settings);
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
    this.#files.save(new Blob([writeSheet(sheet.value.file)], { type: 'application/json' }), fileName);
    return fileName;
  }
}
