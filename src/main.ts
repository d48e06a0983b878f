/**
 * Where the open page is put together, which is all that is fetched at first. The rest of the program (`rest.ts`) follows
 * when the browser has nothing else to do, or at the first press that needs it.
 */
import { mount } from 'svelte';
import * as v from 'valibot';
import { midiAllowed, openMidi } from './audio/devices/midi-input.ts';
import { importedLate, whenIdle } from './fetched-late.ts';
import { closestLanguage } from './core/words/languages.ts';
import type { OpenPageState } from './state/app-state.ts';
import { Backings, emptyStand, type StandSettings } from './state/backings.svelte.ts';
import { DiskRoom } from './state/disk-room.svelte.ts';
import { LatePart } from './state/late-part.svelte.ts';
import { Lesson, studentFields, usualStudent, type StudentSettings } from './state/lesson.svelte.ts';
import { Library } from './state/library.svelte.ts';
import { MidiConnection } from './state/midi-connection.svelte.ts';
import { NewerSite } from './state/newer-site.svelte.ts';
import { Pages } from './state/pages.svelte.ts';
import type { AudioPort, FilesPort } from './state/ports.ts';
import { settingsFields, usualSettings, type Settings } from './state/settings.ts';
import { Setup } from './state/setup.svelte.ts';
import { Songbook } from './state/songbook.svelte.ts';
import { estimateOfRoom } from './storage/estimate.ts';
import { keepSite } from './storage/kept-site.ts';
import { noBackings, noCharts, nothingKept, nothingRemembered } from './storage/nothing-kept.ts';
import { openStorage } from './storage/open-storage.ts';
import App from './ui/App.svelte';
import type { LaterParts } from './ui/ready/later.ts';
import type { Rest } from './ui/rest.ts';
import { hasWords, type Amount, type Catalogues } from './ui/words/catalogues.ts';
import './ui/base.css';
import './ui/fonts/fonts.css';
import './ui/tokens.css';

/** Only the language that is read is fetched. */
const catalogues: Catalogues = {
  en: {
    openPage: new LatePart(importedLate(async () => (await import('./core/words/en/open-page.ts')).openPage)),
    wholePage: new LatePart(
      importedLate(async () => (await import('./core/words/en/whole-page.ts')).wholePage),
    ),
    all: new LatePart(importedLate(async () => (await import('./core/words/en.ts')).en)),
  },
  de: {
    openPage: new LatePart(importedLate(async () => (await import('./core/words/de/open-page.ts')).openPage)),
    wholePage: new LatePart(
      importedLate(async () => (await import('./core/words/de/whole-page.ts')).wholePage),
    ),
    all: new LatePart(importedLate(async () => (await import('./core/words/de.ts')).de)),
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

const afterMs = (act: () => void, ms: number) => {
  const timer = setTimeout(act, ms);
  return () => clearTimeout(timer);
};

interface Assembled {
  readonly app: OpenPageState;
  /** The parts of the open page that come once it stands. */
  readonly later: LatePart<LaterParts>;
  readonly rest: LatePart<Rest>;
}

async function assemble(): Promise<Assembled> {
  const opened = await openStorage();
  const takes = opened.ok ? opened.value.takes : nothingKept(opened.problem);
  const setup = new Setup({
    settings: opened.ok
      ? opened.value.settings<Settings>('setup', settingsFields, usualSettings)
      : nothingRemembered(usualSettings),
  });
  const library = new Library({ takes });
  const songbook = new Songbook({
    charts: opened.ok ? opened.value.charts : noCharts(opened.problem),
    files,
    newId: () => crypto.randomUUID(),
    chartFiles: async () => {
      await rest.fetchAhead();
      return rest.now?.chartFiles ?? null;
    },
  });
  let tellAudio: (audio: AudioPort) => void = () => undefined;
  const audio = new Promise<AudioPort>((tell) => (tellAudio = tell));
  const recordings = opened.ok ? opened.value.backings : noBackings(opened.problem);
  const backings = new Backings({
    backings: recordings,
    setup,
    stand: opened.ok
      ? opened.value.settings<StandSettings>('stand', { backing: v.nullable(v.string()) }, emptyStand)
      : nothingRemembered(emptyStand),
    prepare: (run) => void audio.then((there) => there.prepareBacking(run)),
  });
  const lesson = new Lesson({
    setup,
    library,
    student: opened.ok
      ? opened.value.settings<StudentSettings>('student', studentFields, usualStudent)
      : nothingRemembered(usualStudent),
    // With what unpacks it; most visits come without.
    readLink: async (fragment) =>
      fragment === '' ? null : (await import('./core/lesson/sheet-link.ts')).readSheetFragment(fragment),
    readFile: async (file) => (await import('./state/lesson-files.ts')).readLessonFile(file),
    forgetLink: () => history.replaceState(null, '', location.pathname + location.search),
  });
  const app: OpenPageState = {
    setup,
    lesson,
    midi: new MidiConnection({
      open: (events) => openMidi(events),
      allowed: midiAllowed,
      nowSeconds: () => performance.now() / 1000,
      later: afterMs,
    }),
    library,
    diskRoom: new DiskRoom({ takes, library, estimate: estimateOfRoom }),
    songbook,
    backings,
    newerSite: new NewerSite({ site: keepSite, nowSeconds: () => performance.now() / 1000 }),
    pages: new Pages(),
  };
  const rest = new LatePart<Rest>(
    importedLate(async () => {
      // After a take all of the open page stands, whether its server answers by then or not.
      const [{ assembleRest }] = await Promise.all([
        import('./rest.ts'),
        fetchWords('all'),
        later.fetchAhead(),
      ]);
      const made = await assembleRest({ app, opened, takes, recordings, files, later: afterMs, tellAudio });
      // Another language may have been chosen meanwhile.
      await fetchWords('all');
      return made;
    }),
  );
  const later = new LatePart(
    importedLate(async () => {
      const [{ laterParts }] = await Promise.all([
        import('./ui/ready/later-parts.ts'),
        fetchWords('wholePage'),
      ]);
      await fetchWords('wholePage');
      return laterParts;
    }),
  );
  const language = () => setup.settings.language ?? closestLanguage(navigator.languages);
  /** @throws Error where they can't be fetched */
  const fetchWords = async (amount: Amount) => {
    while (!hasWords(catalogues[language()], amount)) {
      const words = catalogues[language()][amount];
      await words.fetchAhead();
      if (words.now === null) throw new Error('the words can not be fetched');
    }
  };
  const words = async () => {
    await setup.load();
    await catalogues[language()].openPage.fetchAhead();
  };
  await Promise.all([words(), library.load(), songbook.load()]);
  await backings.load();
  await lesson.load();
  await lesson.arrive(location.hash, () => true);
  // A chart that can't be read has its sentence from the first moment on.
  if (!setup.timeline.ok) await catalogues[language()].all.fetchAhead();
  // What stands on the first screen since an earlier visit is there when the page is.
  if (library.unfinished.length > 0 || setup.backing !== null || setup.settings.form === null)
    await later.fetchAhead();
  return { app, later, rest };
}

async function begin(): Promise<void> {
  const target = document.getElementById('app');
  if (target === null) throw new Error('index.html has lost its #app');
  const { app, later, rest } = await assemble();
  mount(App, { target, props: { app, later, rest, catalogues } });
  // The browser asks before it closes or reloads the page; its words are its own.
  addEventListener('beforeunload', (event) => {
    if (rest.now?.app.session.isOnlyInMemory) event.preventDefault();
  });
  // After the first screen: neither what comes later nor keeping the site may delay it.
  whenIdle(async () => {
    // Where it does not come, its places say so.
    later.use();
    await later.fetchAhead();
    await rest.fetchAhead();
    await rest.now?.written.fetchAhead();
  });
  void app.newerSite.open();
}

// Not awaited: what is fetched here imports from the file that this one is part of, and would wait for its end.
void begin();
