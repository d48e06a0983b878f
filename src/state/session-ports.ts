/** What a session of playing needs: the ports of a take, and what the app keeps. */
import type { BackingsPort, FilesPort, FramesPort } from './ports.ts';
import type { Stand } from './again.ts';
import type { Lesson } from './lesson.svelte.ts';
import type { Library } from './library.svelte.ts';
import type { MidiConnection } from './midi-connection.svelte.ts';
import type { Setup } from './setup.svelte.ts';
import type { Tries } from './tries.svelte.ts';
import type { TakePorts } from './microphone-take.ts';

export interface SessionPorts extends TakePorts {
  readonly setup: Setup;
  readonly tries: Tries;
  readonly lesson: Lesson;
  readonly midi: MidiConnection;
  readonly library: Library;
  readonly frames: FramesPort;
  readonly backings: BackingsPort;
  readonly stand: Stand;
  readonly files: FilesPort;
  readonly today: () => Date;
}
