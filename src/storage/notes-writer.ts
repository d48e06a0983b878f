/** A take on a MIDI instrument while it is played: its messages, and what becomes known about it. */
import type { PlayedMessage } from '../core/midi/played-notes.ts';
import type { MessagesWriter } from './played-messages.ts';
import type { TakeDetails } from '../core/take/details-schema.ts';
import type { Problem } from '../core/words/problem.ts';
import { DetailChanges } from './take-details.ts';

export class NotesWriter {
  readonly id: string;
  readonly #messages: MessagesWriter;
  readonly #changes: DetailChanges;
  readonly #onFinish: (durationSeconds: number) => Promise<void>;
  readonly #release: () => void;
  #tail: Promise<void> = Promise.resolve();

  constructor(ports: {
    readonly messages: MessagesWriter;
    readonly onChange: (change: Partial<TakeDetails>) => Promise<void>;
    readonly onFinish: (durationSeconds: number) => Promise<void>;
    /** Lets other pages see the take. */
    readonly release: () => void;
  }) {
    this.id = ports.messages.id;
    this.#messages = ports.messages;
    this.#changes = new DetailChanges(ports.onChange);
    this.#onFinish = ports.onFinish;
    this.#release = ports.release;
  }

  append(message: PlayedMessage): void {
    this.#messages.append(message);
  }

  change(details: Partial<TakeDetails>): void {
    const write = this.#changes.add(details);
    if (write) this.#tail = this.#tail.then(write);
  }

  /** Resolves with the problem that stopped the writing, or null when the whole take is on the disk. */
  async finish(durationSeconds: number): Promise<Problem | null> {
    const stopped = await this.#messages.finish();
    await this.#tail;
    if (stopped === null) await this.#onFinish(durationSeconds).catch(() => undefined);
    this.#release();
    return stopped;
  }
}
