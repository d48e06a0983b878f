/** The rest of the program, put together once it is fetched: everything that a take needs, and all pages but the open one. */
import { version } from '../package.json';
import { AnalysisClient } from './analysis/client.ts';
import { audioPort } from './audio-port/audio-port.ts';
import { instrumentOf } from './core/music/instruments.ts';
import type { Outcome } from './core/base/outcome.ts';
import { writeMusicXml } from './core/files/charts/write-musicxml.ts';
import { importedLate } from './fetched-late.ts';
import { BandAlone } from './state/band-alone.svelte.ts';
import { BackingDesk } from './state/backing-desk.svelte.ts';
import type { OpenPageState } from './state/app-state.ts';
import { ClassDesk } from './state/class-desk.svelte.ts';
import { LatePart } from './state/late-part.svelte.ts';
import { LibraryFiles } from './state/library-files.svelte.ts';
import type { AudioPort, BackingsPort, FilesPort, FramesPort, TakesPort } from './state/ports.ts';
import { RecordingDesk } from './state/recording-desk.svelte.ts';
import { Session } from './state/session.svelte.ts';
import { deviceFields, usualDevices, type DeviceSettings } from './state/measured-room.ts';
import { MeasuredRooms } from './state/measured-rooms.svelte.ts';
import { Tries } from './state/tries.svelte.ts';
import { ExampleSound } from './state/example-sound.svelte.ts';
import { SheetDesk } from './state/sheet-desk.svelte.ts';
import { StartSignal } from './state/start-signal.svelte.ts';
import { SoundCheck } from './state/sound-check.svelte.ts';
import { Arrivals } from './storage/arrivals.ts';
import { openSink } from './storage/file-sink.ts';
import { noArrivals, nothingRemembered } from './storage/nothing-kept.ts';
import type { LocalStorage } from './storage/open-storage.ts';
import Help from './ui/help/HelpDialog.svelte';
import type { Rest } from './ui/rest.ts';
import Screens from './ui/RestScreens.svelte';

interface OpenPage {
  readonly app: OpenPageState;
  readonly opened: Outcome<LocalStorage>;
  readonly takes: TakesPort;
  readonly recordings: BackingsPort;
  readonly files: FilesPort;
  /** Calls back later; returns a function that cancels it. */
  later(act: () => void, ms: number): () => void;
  /** The audio is there. */
  tellAudio(audio: AudioPort): void;
}

/** The display's frames. */
const frames: FramesPort = {
  each(draw) {
    let next = 0;
    const frame = () => {
      next = requestAnimationFrame(frame);
      draw();
    };
    next = requestAnimationFrame(frame);
    return () => cancelAnimationFrame(next);
  },
};

const nowSeconds = () => performance.now() / 1000;

export async function assembleRest({
  app,
  opened,
  takes,
  recordings,
  files,
  later,
  tellAudio,
}: OpenPage): Promise<Rest> {
  const { setup, library, lesson, midi, backings } = app;
  const today = () => new Date();
  const audio = audioPort();
  tellAudio(audio);
  const analysis = new AnalysisClient();
  analysis.warm();
  const rooms = new MeasuredRooms(
    opened.ok
      ? opened.value.settings<DeviceSettings>('rooms', deviceFields, usualDevices)
      : nothingRemembered(usualDevices),
  );
  await rooms.load();
  if (rooms.outputId !== null) await audio.chooseOutput(rooms.outputId);
  const tries = new Tries(setup);
  const session = new Session({
    setup,
    tries,
    lesson,
    midi,
    library,
    audio,
    analysis,
    takes,
    rooms,
    backings: recordings,
    stand: backings,
    frames,
    files,
    today,
  });
  return {
    app: {
      ...app,
      session,
      tries,
      sheetDesk: new SheetDesk({ setup, files, library, takes }),
      exampleSound: new ExampleSound(audio),
      bandAlone: new BandAlone({ setup, audio, today, later }),
      startSignal: new StartSignal({ audio, analysis, rooms, midi, nowSeconds }),
      libraryFiles: new LibraryFiles({
        takes,
        arrivals: opened.ok ? new Arrivals(opened.value.arrivalPorts) : noArrivals(opened.problem),
        files: { open: (fileName) => openSink(fileName, (blob, name) => files.save(blob, name)) },
        library,
        today,
      }),
      soundCheck: new SoundCheck({
        audio,
        analysis,
        rooms,
        openStrings: () => instrumentOf(setup.settings.instrument)?.neck?.openStrings ?? [],
        today,
      }),
      backingDesk: new BackingDesk({ audio, frames, files, backings, newId: () => crypto.randomUUID() }),
      classDesk: new ClassDesk({
        analysis,
        session,
        files,
        // Two at least, so that one long file does not hold the others up; more than eight only fill the memory.
        graders: Math.min(8, Math.max(2, navigator.hardwareConcurrency)),
        version,
      }),
      recordingDesk: new RecordingDesk({ analysis, audio, frames, setup, session, today }),
    },
    chartFiles: {
      read: (file, signal) => analysis.readChart(file, file.name, signal),
      write: writeMusicXml,
    },
    Screens,
    Help,
    written: new LatePart(
      importedLate(async () => (await import('./ui/notation/WrittenScreen.svelte')).default),
    ),
  };
}
