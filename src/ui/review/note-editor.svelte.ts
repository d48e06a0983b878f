/** Correcting the notes of the take in review: from a verb or a drag to a correction, its sound, and what is said of it. */
import type { CorrectedNote } from '../../core/correct/correct-notes.ts';
import { draggedNote, editOf, type Edit, type EditPlace, type EditVerb } from '../../core/correct/edits.ts';
import { findNote } from '../../core/correct/find-note.ts';
import { nameNote } from '../../core/music/name-note.ts';
import type { Correction, NotePlace } from '../../core/take/correction.ts';
import type { HeardNote } from '../../core/take/note.ts';
import { spelledNote } from '../../core/words/spelling.ts';
import type { Words } from '../../core/words/words.ts';
import type { TakeCorrections } from '../../state/take-corrections.svelte.ts';
import { speakSigns } from '../parts/engrave.ts';
import type { EditCommand } from './edit-keys.ts';
import { nextChoice, type LineNote } from './line-notes.ts';

/** What the editor asks of the page. */
export interface EditorPage {
  corrections(): TakeCorrections;
  /** Semitones from what sounds to what the page shows. */
  shift(): number;
  line(): readonly LineNote[];
  chosen(): number | null;
  choose(place: number): void;
  place(): EditPlace;
  hear(note: HeardNote): void;
  words: Words;
}

/** A drag in seconds and half steps; with `onsetSeconds` 0 only the end moves. */
export interface Drag {
  readonly onsetSeconds: number;
  readonly offsetSeconds: number;
  readonly semitones: number;
}

export class NoteEditor {
  readonly #page: EditorPage;
  /** The note that is corrected, ahead of the report. */
  #ahead = $state.raw<NotePlace | null>(null);
  #said = $state.raw('');
  #turn = 0;

  constructor(page: EditorPage) {
    this.#page = page;
  }

  /** What was changed last, for the eye and for a screen reader. */
  get said(): string {
    return this.#said;
  }

  /** Every note as it is now, and the chosen one among them; −1 where none is chosen. */
  get #now(): { readonly notes: readonly CorrectedNote[]; readonly index: number } {
    const { notes } = this.#page.corrections();
    const of = this.#ahead ?? this.#chosenPlace;
    return {
      notes,
      index:
        of === null
          ? -1
          : findNote(
              notes.map(({ note }) => note),
              of,
            ),
    };
  }

  get #chosenPlace(): NotePlace | null {
    const chosen = this.#page.chosen();
    const one = chosen === null ? undefined : this.#page.line()[chosen];
    return one === undefined
      ? null
      : { onsetSeconds: one.note.onsetSeconds, midi: one.note.midi - this.#page.shift() };
  }

  do(command: EditCommand): void {
    if (command === 'undo' || command === 'redo') return this.#turnBack(command);
    if (command === 'count') return this.#turnCount();
    const { notes, index } = this.#now;
    const edit = editOf(command, notes, index, this.#page.place());
    if (edit === null) return this.#say(this.#page.words.review.edit.noNote);
    this.#make(edit, command, notes[index]?.note);
  }

  /** What a drag would make of the chosen note: in seconds, and as high as the page shows it. */
  dragged(by: Drag): { onsetSeconds: number; offsetSeconds: number; midi: number } | null {
    const { notes, index } = this.#now;
    if (index < 0) return null;
    const to = draggedNote(notes, index, by, this.#page.place().durationSeconds);
    return { ...to, midi: to.midi + this.#page.shift() };
  }

  /** Lets go of the chosen note. */
  drop(by: Drag): void {
    const { notes, index } = this.#now;
    const note = notes[index]?.note;
    if (note === undefined) return;
    const to = draggedNote(notes, index, by, this.#page.place().durationSeconds);
    const { onsetSeconds, offsetSeconds } = to;
    const moved = onsetSeconds !== note.onsetSeconds || offsetSeconds !== note.offsetSeconds;
    const of = { onsetSeconds: note.onsetSeconds, midi: note.midi };
    if (moved) {
      const follow = { onsetSeconds, midi: note.midi };
      const verb = by.onsetSeconds === 0 ? 'longer' : 'later';
      if (!this.#make({ correction: { kind: 'move', of, onsetSeconds, offsetSeconds }, follow }, verb, note))
        return;
    }
    if (to.midi === note.midi) return;
    const raised = { onsetSeconds, midi: note.midi };
    const follow = { onsetSeconds, midi: to.midi };
    this.#make({ correction: { kind: 'pitch', of: raised, midi: to.midi }, follow }, 'up', note);
  }

  /** Back to what was heard. */
  undoAll(): void {
    const of = this.#chosenPlace;
    this.#page.corrections().undoAll();
    this.#say(this.#page.words.review.edit.said.allBack);
    void this.#follow(of);
  }

  #make(edit: Edit, verb: EditVerb, before: HeardNote | undefined): boolean {
    const { words } = this.#page;
    const refused = this.#page.corrections().edit(edit.correction);
    if (refused !== null) {
      this.#say(words.review.edit.refused[refused]);
      return false;
    }
    this.#ahead = edit.follow;
    const { notes, index } = this.#now;
    const after = notes[index];
    this.#say(this.#sentence(verb, before, after));
    if (verb !== 'delete' && after !== undefined) this.#page.hear(after.note);
    void this.#follow(edit.follow);
    return true;
  }

  #sentence(verb: EditVerb, before: HeardNote | undefined, after: CorrectedNote | undefined): string {
    const told = this.#page.words.review.edit.said;
    const name = this.#nameOf((verb === 'delete' ? before : after?.note) ?? before);
    const ms = (seconds: number) => Math.round(1000 * seconds);
    switch (verb) {
      case 'up':
      case 'down':
        return told.pitch({ name });
      case 'earlier':
      case 'later': {
        const was = after?.was[0]?.onsetSeconds;
        const now = after?.note.onsetSeconds ?? 0;
        return told.moved({ name, ms: was === undefined ? null : ms(now - was) });
      }
      case 'shorter':
      case 'longer': {
        const { onsetSeconds = 0, offsetSeconds = 0 } = after?.note ?? {};
        return told.lasts({ name, ms: ms(offsetSeconds - onsetSeconds) });
      }
      case 'split':
        return told.split({ name });
      case 'join':
        return told.joined({ name });
      case 'add':
        return told.added({ name });
      case 'delete':
        return told.deleted({ name });
    }
  }

  /** As the page shows it, spoken. */
  #nameOf(note: HeardNote | undefined): string {
    if (note === undefined) return '';
    const { name, octave } = nameNote(note.midi + this.#page.shift(), this.#page.place().referenceHz);
    return speakSigns(spelledNote(`${name}${octave}`, this.#page.words), this.#page.words);
  }

  #turnCount(): void {
    const { notes, index } = this.#now;
    const chosen = this.#page.chosen();
    const one = chosen === null ? undefined : this.#page.line()[chosen];
    const note = notes[index]?.note;
    const { edit } = this.#page.words.review;
    if (one === undefined || note === undefined) return this.#say(edit.noNote);
    const { counts } = nextChoice(one);
    const of = { onsetSeconds: note.onsetSeconds, midi: note.midi };
    this.#page.corrections().edit({ kind: 'count', of, counts });
    const told = { true: edit.said.counts, false: edit.said.countsNot, null: edit.said.asHeard };
    this.#say(told[`${counts}`]({ name: this.#nameOf(note) }));
    void this.#follow(of);
  }

  #turnBack(command: 'undo' | 'redo'): void {
    const corrections = this.#page.corrections();
    const { edit } = this.#page.words.review;
    const done = corrections[command]();
    if (done === null) return this.#say(edit.nothingTo[command]);
    this.#say(edit.said[command]({ left: corrections.count }));
    void this.#follow(placeOf(done, command));
  }

  #say(sentence: string): void {
    this.#said = sentence;
  }

  /** Chooses the note on the line as soon as the report has it. */
  async #follow(place: NotePlace | null): Promise<void> {
    const turn = ++this.#turn;
    await this.#page.corrections().settled();
    if (turn !== this.#turn) return;
    this.#ahead = null;
    const line = this.#page.line();
    if (place === null || line.length === 0) return;
    const midi = place.midi + this.#page.shift();
    const distance = ({ note }: LineNote) =>
      Math.abs(note.onsetSeconds - place.onsetSeconds) + Math.abs(note.midi - midi) / 1000;
    this.#page.choose(line.reduce((near, one) => (distance(one) < distance(near) ? one : near)).place);
  }
}

/** Where the note of a correction lies after it was undone or done again. */
function placeOf(correction: Correction, command: 'undo' | 'redo'): NotePlace {
  if (correction.kind === 'add') return correction;
  if (command === 'undo') return correction.of;
  if (correction.kind === 'move') return { ...correction.of, onsetSeconds: correction.onsetSeconds };
  return correction.kind === 'pitch' ? { ...correction.of, midi: correction.midi } : correction.of;
}
