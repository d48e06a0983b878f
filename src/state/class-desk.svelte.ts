/**
 * The teacher's desk: files of a class graded in workers, their table, and the answers that are being written. Nothing
 * of it is kept on this machine; the takes stay the files that they are.
 */
import type { ClassGrader } from '../analysis/client.ts';
import type { ReturnedFile } from '../analysis/returned-file.ts';
import { classCsv } from '../core/lesson/class-csv.ts';
import { classHtml } from '../core/lesson/class-html.ts';
import { classRows, rowsBySheet, type ClassRow, type SheetRows } from '../core/lesson/class-table.ts';
import { ANSWER_FILE_ENDING, ANSWER_LIMITS, writeAnswer, type BarComment } from '../core/lesson/answer.ts';
import type { GradedReturn } from '../core/take-file/grade-returned.ts';
import type { Words } from '../core/words/words.ts';
import { sortFiles, type DroppedFile, type FailedFile, type SortedFiles } from './class-file.ts';
import { openReturned } from './class-review.ts';
import { safeFileName } from './file-names.ts';
import { FirstDownbeats, isRecording } from './first-downbeats.svelte.ts';
import type { AnalysisPort, FilesPort } from './ports.ts';
import type { Session } from './session.svelte.ts';

/** What the teacher has written about a take so far. */
export interface AnswerDraft {
  readonly note: string;
  readonly comments: readonly BarComment[];
}
const NOTHING_WRITTEN: AnswerDraft = { note: '', comments: [] };

interface GradedFile {
  readonly returned: ReturnedFile;
  readonly graded: GradedReturn;
}

/** How far the grading has come. */
interface ClassProgress {
  readonly done: number;
  readonly of: number;
}

interface ClassDeskPorts {
  readonly analysis: AnalysisPort & { openGrader(): ClassGrader };
  readonly session: Pick<Session, 'gradeRecording' | 'close'>;
  readonly files: FilesPort;
  /** How many files are graded at the same time. */
  readonly graders: number;
  readonly version: string;
}

export class ClassDesk {
  readonly #ports: ClassDeskPorts;
  #sheets = $state.raw<SortedFiles['sheets']>([]);
  #taken = $state.raw<readonly GradedFile[]>([]);
  #failed = $state.raw<readonly FailedFile[]>([]);
  #progress = $state.raw<ClassProgress | null>(null);
  #drafts = $state.raw<Readonly<Record<string, AnswerDraft>>>({});
  #inReview = $state.raw<GradedFile | null>(null);
  readonly #firstBeats = new FirstDownbeats();
  #waiting: ReturnedFile[] = [];
  /** Takes that came without a sheet: they are graded once there is one. */
  #withoutSheet: ReturnedFile[] = [];
  #graders: readonly ClassGrader[] = [];
  /** Counts the batches: what comes from one that was cancelled is dropped. */
  #turn = 0;
  readonly #rows = $derived(classRows(this.#taken.map(({ graded }) => graded.row)));
  readonly #bySheet = $derived(rowsBySheet(this.#rows));

  constructor(ports: ClassDeskPorts) {
    this.#ports = ports;
  }

  get sheets(): SortedFiles['sheets'] {
    return this.#sheets;
  }
  get rows(): readonly ClassRow[] {
    return this.#rows;
  }
  get bySheet(): readonly SheetRows[] {
    return this.#bySheet;
  }
  get takes(): number {
    return this.#taken.length;
  }
  /** How many of them are plain recordings, which do not say where the chart begins. */
  get recordings(): number {
    return this.#taken.filter(({ graded }) => isRecording(graded)).length;
  }
  /** Where the first downbeat lies in a plain recording, in seconds, unless one has its own. */
  get firstBeatSeconds(): number {
    return this.#firstBeats.ofAll;
  }
  /** Files that could not be graded, in the order of their paths. */
  get failed(): readonly FailedFile[] {
    return this.#failed;
  }
  /** null while nothing is being graded. */
  get progress(): ClassProgress | null {
    return this.#progress;
  }
  /** The take that stands in review; null where none of the class does. */
  get inReview(): GradedReturn | null {
    return this.#inReview?.graded ?? null;
  }
  /** What is written about the take in review. */
  get draft(): AnswerDraft {
    return this.#drafts[this.#inReview?.returned.path ?? ''] ?? NOTHING_WRITTEN;
  }
  /** Whether something is written about a take. */
  hasDraft(path: string): boolean {
    return path in this.#drafts;
  }

  /** Takes more files in and grades them beside those that are here. */
  async open(dropped: readonly DroppedFile[]): Promise<void> {
    const { sheets, takes, failed } = await sortFiles(dropped);
    const news = sheets.filter(({ sheet }) => !this.#sheets.some((one) => one.sheet.mark === sheet.mark));
    this.#sheets = [...this.#sheets, ...news];
    const again = news.length > 0 ? this.#toGradeAgain() : [];
    const here = [...again, ...takes].map(({ path }) => path);
    this.#taken = this.#taken.filter(({ returned }) => !here.includes(returned.path));
    this.#failed = [
      ...this.#failed.filter(({ path }) => !here.includes(path) && !failed.some((one) => one.path === path)),
      ...failed,
    ];
    const added = [...again.filter(({ path }) => !takes.some((one) => one.path === path)), ...takes];
    this.#waiting.push(...added);
    if (added.length > 0)
      this.#progress = {
        done: this.#progress?.done ?? 0,
        of: (this.#progress?.of ?? 0) + added.length,
      };
    await this.#gradeWaiting();
  }

  /** Says where the chart begins in all plain recordings; they are graded by it, from the notes that were heard. */
  setFirstBeat(seconds: number): void {
    this.#firstBeats.setAll(seconds);
    this.#taken = this.#taken.map((one) => this.#placed(one));
  }

  /** The same of the recording in review alone, which is then shown as it is graded now. */
  async setFirstBeatOfReview(seconds: number): Promise<void> {
    const one = this.#inReview;
    if (one === null || !isRecording(one.graded)) return;
    const { path } = one.returned;
    this.#firstBeats.setOne(path, seconds);
    this.#taken = this.#taken.map((taken) => this.#placed(taken));
    await this.review(path);
  }

  /** Ends the grading; what is graded stays. */
  cancel(): void {
    this.#turn += 1;
    this.#waiting = [];
    this.#progress = null;
    for (const grader of this.#graders) grader.dispose();
    this.#graders = [];
  }

  /** Puts everything away. */
  clear(): void {
    this.cancel();
    this.#sheets = [];
    this.#taken = [];
    this.#failed = [];
    this.#drafts = {};
    this.#firstBeats.clear();
    this.#withoutSheet = [];
  }

  /** Opens the take whose figures stand in a row. */
  async review(path: string): Promise<void> {
    const one = this.#taken.find(({ returned }) => returned.path === path);
    if (one === undefined) return;
    this.#inReview = one;
    const { session, analysis } = this.#ports;
    await session.gradeRecording(
      one.graded.row.title,
      await openReturned(one.returned, one.graded, analysis),
    );
  }

  /** Leaves the review; what was written stays until the desk is put away. */
  leaveReview(): void {
    this.#inReview = null;
    this.#ports.session.close();
  }

  writeNote(note: string): void {
    this.#write({ ...this.draft, note: note.slice(0, ANSWER_LIMITS.noteCharacters) });
  }

  /** One more comment; nothing where it says nothing, or where there are too many. */
  addComment({ chorus, bar, text }: BarComment): void {
    const said = text.trim().slice(0, ANSWER_LIMITS.commentCharacters);
    const { comments } = this.draft;
    if (said === '' || comments.length >= ANSWER_LIMITS.comments) return;
    const inOrder = [...comments, { chorus, bar, text: said }].sort(
      (a, b) => a.chorus - b.chorus || a.bar - b.bar,
    );
    this.#write({ ...this.draft, comments: inOrder });
  }

  removeComment(index: number): void {
    this.#write({ ...this.draft, comments: this.draft.comments.filter((_, i) => i !== index) });
  }

  /** Saves the answer to the take in review as a file. */
  giveAnswer(): void {
    if (this.#inReview === null) return;
    const { takeId, row } = this.#inReview.graded;
    const { mark, title, student, tryNumber } = row;
    const short = (text: string) => text.slice(0, ANSWER_LIMITS.nameCharacters);
    const text = writeAnswer({
      ...{ format: 'landfall-answer', version: 1, takeId, mark },
      ...{ title: short(title), student: short(student), tryNumber },
      ...this.draft,
    });
    this.#save(text, 'application/json', safeFileName([student, title], ANSWER_FILE_ENDING));
  }

  saveCsv(): void {
    this.#save(classCsv(this.#rows), 'text/csv', 'class.csv');
  }

  savePage(words: Words): void {
    const page = {
      title: this.#bySheet[0]?.title ?? '',
      rows: this.#rows,
      takes: this.takes,
      failed: this.#failed.map(({ path, problem }) => ({ file: path, problem })),
      version: this.#ports.version,
    };
    this.#save(classHtml(page, words), 'text/html', 'class.html');
  }

  #save(text: string, type: string, name: string): void {
    this.#ports.files.save(new Blob([text], { type }), name);
  }

  #write(draft: AnswerDraft): void {
    if (this.#inReview === null) return;
    this.#drafts = { ...this.#drafts, [this.#inReview.returned.path]: draft };
  }

  /** What a new sheet may be for: takes that came without one, and takes for a sheet that was not here. */
  #toGradeAgain(): readonly ReturnedFile[] {
    const waiting = this.#withoutSheet;
    this.#withoutSheet = [];
    const others = this.#taken.filter(({ graded }) => graded.row.sheet === 'another');
    return [...waiting, ...others.map(({ returned }) => returned)];
  }

  async #gradeWaiting(): Promise<void> {
    const turn = this.#turn;
    const free = Math.max(0, this.#ports.graders - this.#graders.length);
    const count = Math.min(free, this.#waiting.length);
    await Promise.all(Array.from({ length: count }, () => this.#gradeWith(turn)));
    if (turn === this.#turn && this.#graders.length === 0) this.#progress = null;
  }

  /** One worker takes file after file. A worker that stops by an error is replaced; the file at which it stopped has failed, and no other. */
  async #gradeWith(turn: number): Promise<void> {
    let grader = this.#openGrader();
    for (let next = this.#waiting.shift(); next !== undefined; next = this.#waiting.shift()) {
      if (!grader.alive) {
        this.#graders = this.#graders.filter((one) => one !== grader);
        grader = this.#openGrader();
      }
      const by = {
        sheets: this.#sheets.map(({ text, name }) => ({ text, name })),
        firstBeatSeconds: this.#firstBeats.of(next.path),
      };
      const graded = await grader.grade(next, by);
      if (turn !== this.#turn) return;
      // The teacher may have said meanwhile where the recordings begin.
      if (graded.ok) this.#taken = [...this.#taken, this.#placed({ returned: next, graded: graded.value })];
      else {
        if (graded.problem.code === 'class.noSheet') this.#withoutSheet.push(next);
        this.#failed = [...this.#failed, { path: next.path, problem: graded.problem }];
      }
      if (this.#progress) this.#progress = { ...this.#progress, done: this.#progress.done + 1 };
    }
    grader.dispose();
    this.#graders = this.#graders.filter((one) => one !== grader);
  }

  #placed({ returned, graded }: GradedFile): GradedFile {
    return { returned, graded: this.#firstBeats.place(returned.path, graded) };
  }

  #openGrader(): ClassGrader {
    const grader = this.#ports.analysis.openGrader();
    this.#graders = [...this.#graders, grader];
    return grader;
  }
}
