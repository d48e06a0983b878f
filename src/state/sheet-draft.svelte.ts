/** A lesson sheet while a teacher writes it. */
import type { Outcome } from '../core/base/outcome.ts';
import { AIM_CHOICES, aimOf, HOUSE_AIMS } from '../core/grade/aims/aim-choices.ts';
import { exampleOf, type Example } from '../core/lesson/example.ts';
import { sheetFragment } from '../core/lesson/sheet-link.ts';
import { readSheetFile, SHEET_LIMITS, type LessonSheet, type SheetFile } from '../core/lesson/sheet.ts';
import type { Report } from '../core/take/schema.ts';
import { chordsReader } from './chords-of-chart.ts';
import { usualPractice } from './practice-settings.ts';
import { Setup } from './setup.svelte.ts';
import type { Settings } from './settings.ts';
import type { TakeId } from './take.ts';
import { settingsOfSheet, sheetChart } from './sheet-settings.ts';

/** What a sheet asks for besides its chart. */
interface DraftFields {
  readonly title: string;
  readonly note: string;
  /** Id of an instrument; null where each student plays their own. */
  readonly instrument: string | null;
  readonly choruses: number;
  readonly aims: SheetFile['aims'];
  /** What it may sound like; null without. */
  readonly example: GivenExample | null;
}

/** An example, and the chords that it was played over: over others it is none. */
interface GivenExample {
  readonly example: Example;
  readonly chords: string | null;
  /** Of the take that it is from; null where the sheet had it already. */
  readonly takeId: TakeId | null;
}

/** Enough changes for an answer, and not yet tiring. */
const USUAL_CHORUSES = 3;
/** So many hundredths of the share are one step. */
const SHARE_STEP = 0.05;

/** The id of an aim of a sheet, and its share to reach, its own or that of the house. */
export function askedShare(aim: SheetFile['aims'][number]): number {
  return aim.shareToReach ?? HOUSE_AIMS.find(({ id }) => id === aim.id)?.shareToReach ?? 0;
}

export class SheetDraft {
  /** A set-up of its own: nothing of it is remembered. */
  readonly setup: Setup;
  readonly chordsOf = chordsReader();
  #fields: DraftFields;

  private constructor(settings: Settings, fields: DraftFields) {
    const value = { ...settings, ...usualPractice };
    this.setup = new Setup({
      settings: { load: () => Promise.resolve({ value, messages: [] }), save: () => undefined },
    });
    this.setup.takeOver(value);
    this.#fields = $state.raw(fields);
  }

  /** From what is set up now. */
  static ofStand(settings: Settings): SheetDraft {
    const aim = aimOf(settings.aim);
    return new SheetDraft(settings, {
      title: '',
      note: '',
      instrument: null,
      choruses: settings.choruses ?? USUAL_CHORUSES,
      aims: aim === null ? [] : [{ id: aim.id, shareToReach: aim.shareToReach }],
      example: null,
    });
  }

  /** From a sheet that is there already. */
  static ofSheet(sheet: LessonSheet, settings: Settings): SheetDraft {
    const { title, note, instrument = null, choruses, aims, example } = sheet.file;
    const fields = { title, note, instrument, choruses, aims, example: null };
    const draft = new SheetDraft({ ...settings, ...settingsOfSheet(sheet, settings) }, fields);
    if (example !== undefined) draft.#give(example, null);
    return draft;
  }

  get fields(): DraftFields {
    return this.#fields;
  }

  change(fields: Partial<Omit<DraftFields, 'aims' | 'example'>>): void {
    this.#fields = { ...this.#fields, ...fields };
  }

  /** The chords of the chart, by which takes over it are known; null while it can't be read. */
  get chords(): string | null {
    const { timeline } = this.setup;
    return timeline.ok ? this.chordsOf(timeline.value.chart) : null;
  }

  /** Whether the example was played over another chart than the sheet has now: then it is left out. */
  get exampleMisfits(): boolean {
    const { example } = this.#fields;
    return example !== null && example.chords !== this.chords;
  }

  /**
   * Takes the notes of a kept take as the example.
   * @returns whether there were notes, and no more than an example holds
   */
  giveExample(takeId: TakeId, report: Report, instrument: string | undefined): boolean {
    const example = exampleOf(report, instrument);
    if (example !== null) this.#give(example, takeId);
    return example !== null;
  }

  removeExample(): void {
    this.#fields = { ...this.#fields, example: null };
  }

  /** Ids of the aims of the house that are not asked for yet; none where the sheet is full. */
  get otherAims(): readonly string[] {
    const { aims } = this.#fields;
    if (aims.length >= SHEET_LIMITS.aims) return [];
    const ids = AIM_CHOICES.map(({ id }) => aimOf(id)?.id ?? id);
    return ids.filter((id, i) => ids.indexOf(id) === i && aims.every((aim) => aim.id !== id));
  }

  /** Adds an aim of the house behind the others; the first one leads. */
  addAim(id: string): void {
    const aim = aimOf(id);
    if (aim === null || !this.otherAims.includes(aim.id)) return;
    this.#setAims([...this.#fields.aims, { id: aim.id, shareToReach: aim.shareToReach }]);
  }

  removeAim(id: string): void {
    this.#setAims(this.#fields.aims.filter((aim) => aim.id !== id));
  }

  /** @param share 0 to 1, brought to the nearest twentieth from one twentieth on */
  setShare(id: string, share: number): void {
    const steps = Math.round(Math.min(1, Math.max(SHARE_STEP, share)) / SHARE_STEP);
    const shareToReach = Math.round(100 * steps * SHARE_STEP) / 100;
    this.#setAims(this.#fields.aims.map((aim) => (aim.id === id ? { ...aim, shareToReach } : aim)));
  }

  /** The sheet as it would be read; a problem while something is missing. */
  get sheet(): Outcome<LessonSheet> {
    const { instrument, title, note, choruses, aims, example } = this.#fields;
    const file = {
      format: 'landfall-sheet',
      version: 1,
      title: title.trim(),
      note: note.trim(),
      ...sheetChart(this.setup.settings),
      choruses,
      ...(instrument !== null && { instrument }),
      aims,
      ...(example !== null && !this.exampleMisfits && { example: example.example }),
    };
    return readSheetFile(file, file.title);
  }

  /** The fragment of a link that holds the sheet; a problem while something is missing, and for a sheet that is too long. */
  get fragment(): Outcome<string> {
    const { sheet } = this;
    return sheet.ok ? sheetFragment(sheet.value.file) : sheet;
  }

  #give(example: Example, takeId: TakeId | null): void {
    this.#fields = { ...this.#fields, example: { example, chords: this.chords, takeId } };
  }

  #setAims(aims: SheetFile['aims']): void {
    this.#fields = { ...this.#fields, aims };
  }
}
