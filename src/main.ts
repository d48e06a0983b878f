/** The one place where everything is put together. */
import { mount } from 'svelte';
import * as v from 'valibot';
import { version } from '../package.json';
import { AnalysisClient } from './analysis/client.ts';
import { midiAllowed, openMidi } from './audio/devices/midi-input.ts';
import { audioPort } from './audio-port/audio-port.ts';
import { instrumentOf } from './core/music/instruments.ts';
import { Backings, emptyStand, type StandSettings } from './state/backings.svelte.ts';
import { BandAlone } from './state/band-alone.svelte.ts';
import { BackingDesk } from './state/backing-desk.svelte.ts';
import type { AppState } from './state/app-state.ts';
import { ClassDesk } from './state/class-desk.svelte.ts';
import { DiskRoom } from './state/disk-room.svelte.ts';
import { Lesson, studentFields, usualStudent, type StudentSettings } from './state/lesson.svelte.ts';
import { LibraryFiles } from './state/library-files.svelte.ts';
import { Library } from './state/library.svelte.ts';
import type { FilesPort, FramesPort } from './state/ports.ts';
import { MidiConnection } from './state/midi-connection.svelte.ts';
import { NewerSite } from './state/newer-site.svelte.ts';
import { Pages } from './state/pages.svelte.ts';
import { RecordingDesk } from './state/recording-desk.svelte.ts';
import { Session } from './state/session.svelte.ts';
import { deviceFields, usualDevices, type DeviceSettings } from './state/measured-room.ts';
import { MeasuredRooms } from './state/measured-rooms.svelte.ts';
import { settingsFields, usualSettings, type Settings } from './state/settings.ts';
import { Setup } from './state/setup.svelte.ts';
import { Tries } from './state/tries.svelte.ts';
import { Songbook } from './state/songbook.svelte.ts';
import { ExampleSound } from './state/example-sound.svelte.ts';
import { SheetDesk } from './state/sheet-desk.svelte.ts';
import { StartSignal } from './state/start-signal.svelte.ts';
import { SoundCheck } from './state/sound-check.svelte.ts';
import { estimateOfRoom } from './storage/estimate.ts';
import { openSink } from './storage/file-sink.ts';
import { keepSite } from './storage/kept-site.ts';
import { openStorage } from './storage/open-storage.ts';
import { noArrivals, noBackings, noCharts, nothingKept, nothingRemembered } from './storage/nothing-kept.ts';
import App from './ui/App.svelte';
import './ui/base.css';
import './ui/fonts/fonts.css';
import './ui/tokens.css';

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

/** A file for the player, as a download. */
const files: FilesPort = {
  save(blob, fileName) {
    const link = document.createElement('a');
    link.href = URL.createObjectURL(blob);
    link.download = fileName;
    link.click();
    // The browser takes the file over at the click; a minute is more than it needs.
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
  },
};

const later = (act: () => void, ms: number) => {
  const timer = setTimeout(act, ms);
  return () => clearTimeout(timer);
};

async function assemble(): Promise<AppState> {
  const opened = await openStorage();
  const takes = opened.ok ? opened.value.takes : nothingKept(opened.problem);
  const settings = opened.ok
    ? opened.value.settings<Settings>('setup', settingsFields, usualSettings)
    : nothingRemembered(usualSettings);
  const setup = new Setup({ settings });
  const library = new Library({ takes, files });
  const arrivals = opened.ok ? opened.value.arrivals : noArrivals(opened.problem);
  const today = () => new Date();
  const libraryFiles = new LibraryFiles({
    takes,
    arrivals,
    files: { open: (fileName) => openSink(fileName, (blob, name) => files.save(blob, name)) },
    library,
    today,
  });
  const diskRoom = new DiskRoom({ takes, library, estimate: estimateOfRoom });
  const songbook = new Songbook({
    charts: opened.ok ? opened.value.charts : noCharts(opened.problem),
    files,
    newId: () => crypto.randomUUID(),
  });
  const audio = audioPort();
  const recordings = opened.ok ? opened.value.backings : noBackings(opened.problem);
  const backings = new Backings({
    backings: recordings,
    setup,
    stand: opened.ok
      ? opened.value.settings<StandSettings>('stand', { backing: v.nullable(v.string()) }, emptyStand)
      : nothingRemembered(emptyStand),
    prepare: (run) => audio.prepareBacking(run),
  });
  await Promise.all([setup.load(), library.load(), songbook.load()]);
  await backings.load();
  const analysis = new AnalysisClient();
  analysis.warm();
  const backingDesk = new BackingDesk({
    audio,
    frames,
    files,
    backings,
    newId: () => crypto.randomUUID(),
  });
  const rooms = new MeasuredRooms(
    opened.ok
      ? opened.value.settings<DeviceSettings>('rooms', deviceFields, usualDevices)
      : nothingRemembered(usualDevices),
  );
  await rooms.load();
  if (rooms.outputId !== null) await audio.chooseOutput(rooms.outputId);
  const soundCheck = new SoundCheck({
    audio,
    analysis,
    rooms,
    openStrings: () => instrumentOf(setup.settings.instrument)?.neck?.openStrings ?? [],
    today: () => new Date(),
  });
  const midi = new MidiConnection({
    open: (events) => openMidi(events),
    allowed: midiAllowed,
    nowSeconds: () => performance.now() / 1000,
    later,
  });
  const tries = new Tries(setup);
  const lesson = new Lesson({
    setup,
    library,
    student: opened.ok
      ? opened.value.settings<StudentSettings>('student', studentFields, usualStudent)
      : nothingRemembered(usualStudent),
    forgetLink: () => history.replaceState(null, '', location.pathname + location.search),
  });
  await lesson.load();
  lesson.arrive(location.hash, true);
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
  const bandAlone = new BandAlone({ setup, audio, today, later });
  const recordingDesk = new RecordingDesk({ analysis, audio, frames, setup, session, today });
  const classDesk = new ClassDesk({
    analysis,
    session,
    files,
    // Two at least, so that one long file does not hold the others up; more than eight only fill the memory.
    graders: Math.min(8, Math.max(2, navigator.hardwareConcurrency)),
    version,
  });
  const startSignal = new StartSignal({
    audio,
    analysis,
    rooms,
    midi,
    nowSeconds: () => performance.now() / 1000,
  });
  const newerSite = new NewerSite({ site: keepSite, nowSeconds: () => performance.now() / 1000 });
  return {
    setup,
    session,
    tries,
    lesson,
    sheetDesk: new SheetDesk({ setup, files, library, takes }),
    exampleSound: new ExampleSound(audio),
    bandAlone,
    startSignal,
    midi,
    library,
    libraryFiles,
    diskRoom,
    songbook,
    soundCheck,
    backings,
    backingDesk,
    classDesk,
    newerSite,
    pages: new Pages(),
    recordingDesk,
  };
}

const target = document.getElementById('app');
if (target === null) throw new Error('index.html has lost its #app');
const app = await assemble();
mount(App, { target, props: { app } });
// After the first screen: keeping the site must not delay it.
void app.newerSite.open();
