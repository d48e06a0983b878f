/** The state classes of the app: those of the open page, which are fetched first, and all others, which come after it. */
import type { BandAlone } from './band-alone.svelte.ts';
import type { ClassDesk } from './class-desk.svelte.ts';
import type { BackingDesk } from './backing-desk.svelte.ts';
import type { Backings } from './backings.svelte.ts';
import type { DiskRoom } from './disk-room.svelte.ts';
import type { Lesson } from './lesson.svelte.ts';
import type { LibraryFiles } from './library-files.svelte.ts';
import type { Library } from './library.svelte.ts';
import type { MidiConnection } from './midi-connection.svelte.ts';
import type { NewerSite } from './newer-site.svelte.ts';
import type { Pages } from './pages.svelte.ts';
import type { RecordingDesk } from './recording-desk.svelte.ts';
import type { Session } from './session.svelte.ts';
import type { Songbook } from './songbook.svelte.ts';
import type { Tries } from './tries.svelte.ts';
import type { Setup } from './setup.svelte.ts';
import type { ExampleSound } from './example-sound.svelte.ts';
import type { SheetDesk } from './sheet-desk.svelte.ts';
import type { StartSignal } from './start-signal.svelte.ts';
import type { SoundCheck } from './sound-check.svelte.ts';

/** What the open page shows. */
export interface OpenPageState {
  readonly setup: Setup;
  readonly lesson: Lesson;
  readonly midi: MidiConnection;
  readonly library: Library;
  readonly diskRoom: DiskRoom;
  readonly songbook: Songbook;
  readonly backings: Backings;
  readonly newerSite: NewerSite;
  readonly pages: Pages;
}

/** All of it, once the rest of the program is there. */
export interface AppState extends OpenPageState {
  readonly session: Session;
  readonly tries: Tries;
  readonly sheetDesk: SheetDesk;
  readonly exampleSound: ExampleSound;
  readonly bandAlone: BandAlone;
  readonly libraryFiles: LibraryFiles;
  readonly soundCheck: SoundCheck;
  readonly startSignal: StartSignal;
  readonly backingDesk: BackingDesk;
  readonly classDesk: ClassDesk;
  readonly recordingDesk: RecordingDesk;
}
