/** The lesson sheet that is open: what it asks of the set-up, who plays it, and which try the next take is. */
import * as v from 'valibot';
import { bad, type Outcome } from '../core/base/outcome.ts';
import type { AnswerFile } from '../core/lesson/answer.ts';
import type { LessonSheet } from '../core/lesson/sheet.ts';
import { notice, problem, type Message } from '../core/words/problem.ts';
import type { LessonFile } from './lesson-files.ts';
import type { Library } from './library.svelte.ts';
import { withMessage, withoutMessage } from './messages.ts';
import type { SettingsPort } from './ports.ts';
import type { Setup } from './setup.svelte.ts';
import { settingsOfSheet } from './sheet-settings.ts';
import type { TakeCard, TakeDetails, TakeId } from './take.ts';

/** What is remembered of who plays. */
export interface StudentSettings {
  readonly name: string;
}
export const STUDENT_NAME_CHARACTERS = 80;
export const studentFields = { name: v.pipe(v.string(), v.maxLength(STUDENT_NAME_CHARACTERS)) };
export const usualStudent: StudentSettings = { name: '' };

interface LessonPorts {
  readonly setup: Setup;
  readonly library: Pick<Library, 'takes' | 'mark'>;
  readonly student: SettingsPort<StudentSettings>;
  /**
   * The sheet that the fragment of an address holds; null where it is the fragment of something else.
   * @throws where the part of the program that reads it can't be fetched
   */
  readonly readLink: (fragment: string) => Promise<Outcome<LessonSheet> | null>;
  /** As `readLessonFile`. @throws where the part of the program that reads it can't be fetched */
  readonly readFile: (file: File) => Promise<LessonFile>;
  /** Takes the sheet out of the page's address. */
  readonly forgetLink: () => void;
}

export class Lesson {
  readonly #ports: LessonPorts;
  #sheet = $state.raw<LessonSheet | null>(null);
  #waiting = $state.raw<LessonSheet | null>(null);
  #student = $state.raw(usualStudent.name);
  #notices = $state.raw<readonly Message[]>([]);
  readonly #tries = $derived.by(() => {
    const mark = this.#sheet?.mark;
    const own = (take: TakeCard) =>
      take.lesson !== undefined && take.lesson.mark === mark && take.lesson.student === this.#student.trim();
    return mark === undefined ? [] : this.#ports.library.takes.filter(own);
  });

  constructor(ports: LessonPorts) {
    this.#ports = ports;
  }

  /** Reads the student's name, as it was remembered. */
  async load(): Promise<void> {
    const { value, messages } = await this.#ports.student.load();
    this.#student = value.name;
    this.#notices = messages;
  }

  /** null where none is open. */
  get sheet(): LessonSheet | null {
    return this.#sheet;
  }

  /** The name as it was typed; empty until it is. */
  get student(): string {
    return this.#student;
  }

  setStudent(name: string): void {
    this.#student = name.slice(0, STUDENT_NAME_CHARACTERS);
    this.#ports.student.save({ name: this.#student });
  }

  /** What was wrong with a file or a link, and what is good to know. */
  get notices(): readonly Message[] {
    return this.#notices;
  }

  dismissNotice(message: Message): void {
    this.#notices = withoutMessage(this.#notices, message);
  }

  /** The student's kept takes for the sheet, newest first. */
  get tries(): readonly TakeCard[] {
    return this.#tries;
  }

  /** Of the next take: one more than the highest of those that are kept. */
  get tryNumber(): number {
    return 1 + Math.max(0, ...this.#tries.map(({ lesson }) => lesson?.tryNumber ?? 0));
  }

  /** Opens a sheet. What was set up comes back when it is left. */
  open(sheet: LessonSheet): void {
    this.#waiting = null;
    this.#sheet = sheet;
    this.#layOut(sheet);
  }

  /** Back to what was set up before the sheet was opened. */
  leave(): void {
    if (this.#sheet === null) return;
    this.#sheet = null;
    this.#ports.setup.setLesson(null);
    this.#ports.forgetLink();
  }

  /** Opens the sheet that a kept take was played for; leaves the one that is open where it was played for none (null). */
  follow(sheet: LessonSheet | null): void {
    if (sheet === null) this.leave();
    else this.open(sheet);
  }

  /**
   * Reads a sheet from the fragment of the page's address; another fragment changes nothing.
   * @param isFree whether nothing goes on that it would disturb; else it waits for `openWaiting`
   * @returns whether a sheet was opened
   */
  async arrive(fragment: string, isFree: () => boolean): Promise<boolean> {
    const sheet = await this.#readLink(fragment);
    if (sheet === null) return false;
    const opens = sheet.ok && isFree();
    if (!sheet.ok) this.#tell(sheet.problem);
    else if (opens) this.open(sheet.value);
    else {
      this.#waiting = sheet.value;
      this.#tell(notice('sheet.waits', { title: sheet.value.file.title }));
    }
    return opens;
  }

  async #readFile(file: File): Promise<LessonFile> {
    try {
      return await this.#ports.readFile(file);
    } catch {
      return { kind: 'sheet', sheet: bad('site.partMissing') };
    }
  }

  async #readLink(fragment: string): Promise<Outcome<LessonSheet> | null> {
    try {
      return await this.#ports.readLink(fragment);
    } catch {
      return bad('site.partMissing');
    }
  }

  /** Opens the sheet that waits, if one does. */
  openWaiting(): void {
    const sheet = this.#waiting;
    if (sheet === null) return;
    this.#notices = this.#notices.filter(({ code }) => code !== 'sheet.waits');
    this.open(sheet);
  }

  /**
   * Opens a sheet from its file, or keeps a teacher's answer with the take that it is about.
   * @returns the take that was answered; null for a sheet, and for a file that can't be used
   */
  async openFile(file: File): Promise<TakeId | null> {
    this.#notices = [];
    const read = await this.#readFile(file);
    if (read.kind === 'answer') return this.#keepAnswer(read.answer);
    const { sheet } = read;
    if (!sheet.ok) this.#tell(sheet.problem);
    else {
      this.#ports.forgetLink();
      this.open(sheet.value);
    }
    return null;
  }

  /**
   * What a take for the sheet begins with: the set-up is laid out as the sheet asks once more, whatever was changed.
   * @returns what the take carries of it; null where no sheet is open
   */
  begin(): NonNullable<TakeDetails['lesson']> | null {
    const sheet = this.#sheet;
    if (sheet === null) return null;
    this.#layOut(sheet);
    return {
      mark: sheet.mark,
      title: sheet.file.title,
      student: this.#student.trim(),
      tryNumber: this.tryNumber,
      sheet: { ...sheet.file },
    };
  }

  #layOut(sheet: LessonSheet): void {
    const { setup } = this.#ports;
    setup.setLesson(null);
    setup.setLesson(settingsOfSheet(sheet, setup.settings));
  }

  async #keepAnswer(answer: Outcome<AnswerFile>): Promise<TakeId | null> {
    const { library } = this.#ports;
    if (!answer.ok) {
      this.#tell(answer.problem);
      return null;
    }
    const take = takeAnswered(answer.value, library.takes);
    if (take === null) {
      const { title, student } = answer.value;
      this.#tell(problem('answer.noTake', { title, student }));
      return null;
    }
    await library.mark(take.id, { answer: { ...answer.value } });
    return take.id;
  }

  #tell(message: Message): void {
    this.#notices = withMessage(this.#notices, message);
  }
}

/** By the id of the take; where the teacher had none, by the sheet, the student and the try. */
function takeAnswered(answer: AnswerFile, takes: readonly TakeCard[]): TakeCard | null {
  const { takeId, mark, student, tryNumber } = answer;
  if (takeId !== null) return takes.find(({ id }) => id === takeId) ?? null;
  const isIt = ({ lesson }: TakeCard) =>
    lesson !== undefined &&
    lesson.mark === mark &&
    lesson.student === student &&
    lesson.tryNumber === tryNumber;
  return takes.find(isIt) ?? null;
}
