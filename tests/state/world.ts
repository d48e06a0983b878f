/**
 * The outside world of the state classes, in the hands of a test: a microphone that plays an array of samples, a
 * clock that goes when told, the real listener and grading without a thread, takes in memory.
 */
import type { MicrophoneEvents } from '../../src/audio/microphone/capture.ts';
import { AnalysisClient } from '../../src/analysis/client.ts';
import { bandClock } from '../../src/audio/base/clock.ts';
import type { PlayOrder } from '../../src/audio/playback/take-player.ts';
import type { MidiEvents } from '../../src/audio/devices/midi-input.ts';
import type { HeardNote } from '../../src/core/take/note.ts';
import { bad, failure, good, type Outcome } from '../../src/core/base/outcome.ts';
import { risingBeatMap } from '../../src/core/chart/tempo-rise.ts';
import type { Timeline } from '../../src/core/chart/timeline.ts';
import { readRecording, takeOfRecording, type RecordingFiles } from '../../src/state/open-take.ts';
import { readLessonFile } from '../../src/state/lesson-files.ts';
import { Lesson } from '../../src/state/lesson.svelte.ts';
import { Library } from '../../src/state/library.svelte.ts';
import { MidiConnection } from '../../src/state/midi-connection.svelte.ts';
import type {
  Accompaniment,
  AudioPort,
  NotesToPlay,
  OpenPlayer,
  SettingsPort,
} from '../../src/state/ports.ts';
import { Session } from '../../src/state/session.svelte.ts';
import { usualSettings, type Settings } from '../../src/state/settings.ts';
import { usualDevices, type MeasuredRoom } from '../../src/state/measured-room.ts';
import { MeasuredRooms } from '../../src/state/measured-rooms.svelte.ts';
import { StartSignal } from '../../src/state/start-signal.svelte.ts';
import { SoundCheck } from '../../src/state/sound-check.svelte.ts';
import { Tries } from '../../src/state/tries.svelte.ts';
import { Setup } from '../../src/state/setup.svelte.ts';
import { noBackings } from '../../src/storage/nothing-kept.ts';
import { InProcessWorker } from '../analysis/in-process.ts';
import { notice, problem, type Problem } from '../../src/core/words/problem.ts';
import { readSheetFragment } from '../../src/core/lesson/sheet-link.ts';
import { freshDatabase, memorySounds, takesOn } from '../storage/fakes.ts';

export const RATE = 8000;
/** As the worklet's (audio/microphone/hop.ts). */
const HOP = 512;
/** The audio clock does not begin at nought when a take does. */
const CLOCK_START_SECONDS = 3;

export function fakeSettings(first: Partial<Settings> = {}): SettingsPort<Settings> & { saved: Settings[] } {
  const saved: Settings[] = [];
  return {
    saved,
    load: () => Promise.resolve({ value: { ...usualSettings, ...first }, messages: [] }),
    save: (value) => saved.push(value),
  };
}

export class FakePlayer implements OpenPlayer {
  readonly durationSeconds: number;
  disposed = false;
  position = 0;
  bandLevelDb = NaN;
  refusal: Problem | null = null;
  #ended: () => void = () => undefined;
  constructor(durationSeconds: number) {
    this.durationSeconds = durationSeconds;
  }
  /** What was asked for, in order. */
  readonly orders: PlayOrder[] = [];
  takeLevelDb = 0;
  play(order: PlayOrder): Promise<Outcome<void>> {
    this.orders.push(order);
    this.position = order.fromSeconds;
    return Promise.resolve(this.refusal === null ? good(undefined) : failure(this.refusal));
  }
  pause = () => undefined;
  positionSeconds = () => this.position;
  setTakeLevelDb = (levelDb: number) => {
    this.takeLevelDb = levelDb;
  };
  setBandLevels = ({ all }: { all: number }) => {
    this.bandLevelDb = all;
  };
  onEnded = (listener: () => void) => {
    this.#ended = listener;
  };
  end(): void {
    this.#ended();
  }
  dispose = () => {
    this.disposed = true;
  };
}

/** Time goes by `play`; everything that is open is counted. */
export async function world(
  options: {
    settings?: Partial<Settings>;
    /** Samples that the disk takes. */
    room?: number;
    roundTripSeconds?: number;
    microphone?: () => Promise<Outcome<void>>;
    midiRefused?: boolean;
    /** Whether an input can be opened with nothing asked; yes unless given. */
    mayOpen?: (input: 'microphone' | 'midi') => 'yes' | 'closed' | 'asleep';
    /** Of the microphone; RATE unless given. */
    sampleRate?: number;
    /** What a sound check has found. */
    known?: MeasuredRoom;
  } = {},
) {
  const rate = options.sampleRate ?? RATE;
  const db = await freshDatabase();
  const sounds = memorySounds(options.room);
  const takes = takesOn(db, sounds);
  const open = { microphone: 0, band: 0 };
  const draws = new Set<() => void>();
  const players: FakePlayer[] = [];
  /** The band that each player was opened with. */
  const accompaniments: (Accompaniment | null)[] = [];
  const saved: { blob: Blob; fileName: string }[] = [];
  const workers: InProcessWorker[] = [];
  /** Takes of notes that were opened to be played. */
  const notesOpened: NotesToPlay[] = [];
  /** What was given to the kit to play. */
  const rendered: (readonly HeardNote[])[] = [];
  /** Whether each band was mixed to mono. */
  const inMono: boolean[] = [];
  let events: MicrophoneEvents | null = null;
  let midiEvents: MidiEvents | null = null;
  let waiting: (() => void) | null = null;
  let played: { sounds: readonly Float32Array[]; startFrames: readonly number[] } | null = null;
  let frame = CLOCK_START_SECONDS * rate;
  let isShown = true;
  const now = () => frame / rate;

  const audio: AudioPort = {
    wake: () => Promise.resolve(good(undefined)),
    heardSeconds: now,
    assumedRoundTripSeconds: () => options.roundTripSeconds ?? 0,
    openMicrophone: async (given) => {
      const allowed = (await options.microphone?.()) ?? good(undefined);
      if (!allowed.ok) return allowed;
      events = given;
      open.microphone++;
      return good({
        label: 'fake',
        sampleRate: rate,
        warnings: [notice('microphone.processing', { echo: true, noise: false, gain: false })],
        dispose: () => {
          open.microphone--;
          events = null;
        },
      });
    },
    devices: () => Promise.resolve({ inputs: [{ deviceId: 'fake', label: 'fake' }], outputs: [] }),
    onDevicesChanged: () => () => undefined,
    mayOpen: (input) => Promise.resolve(options.mayOpen?.(input) ?? 'yes'),
    chooseOutput: () => Promise.resolve(good(undefined)),
    outputName: () => Promise.resolve('speakers'),
    playSounds: (sounds, gapSeconds) => {
      let at = frame + 1000;
      const startFrames = sounds.map((sound) => {
        const from = at;
        at += sound.length + Math.round(gapSeconds * rate);
        return from;
      });
      played = { sounds, startFrames };
      return { startFrames, stop: () => undefined };
    },
    openBand: (_timeline: Timeline, band) => {
      open.band++;
      return Promise.resolve(
        good({
          start: () =>
            bandClock(
              now() + (4 * band.countInBars * 60) / band.bpm,
              risingBeatMap({ bpm: band.bpm, rise: band.rise ?? null, beatsPerBar: 4 }, 0),
            ),
          setLevels: () => undefined,
          playInMono: (mono) => void inMono.push(mono),
          onFailed: () => undefined,
          dispose: () => {
            open.band--;
          },
        }),
      );
    },
    openPlayer: (sound, band) => {
      accompaniments.push(band);
      if ('notes' in sound) notesOpened.push(sound);
      const player = new FakePlayer(
        'notes' in sound ? sound.durationSeconds : sound.samples.length / sound.sampleRate,
      );
      players.push(player);
      return player;
    },
    renderNotes: (notes, durationSeconds) => {
      rendered.push(notes);
      return Promise.resolve(
        good({ samples: new Float32Array(Math.ceil(durationSeconds * rate)), sampleRate: rate }),
      );
    },
    openBacking: () => Promise.resolve(bad('backing.gone')),
    searchChords: () => ({
      findChords: () => Promise.resolve(bad('harmony.noChords')),
      stopFinding: () => undefined,
    }),
    prepareBacking: () => undefined,
    renderDemo: () => Promise.resolve(bad('band.failed', { reason: 'no demo in this world' })),
  };
  const settings = fakeSettings({
    form: null,
    ownChart: '| A7 | D7 |',
    bpm: 120,
    feel: 'straight',
    ...options.settings,
  });
  const setup = new Setup({ settings });
  await setup.load();
  const files = { save: (blob: Blob, fileName: string) => void saved.push({ blob, fileName }) };
  const library = new Library({ takes });
  const analysis = new AnalysisClient(() => {
    const worker = new InProcessWorker();
    workers.push(worker);
    return InProcessWorker.asWorker(worker);
  });
  const rooms = new MeasuredRooms({
    load: () =>
      Promise.resolve({
        value: { ...usualDevices, rooms: options.known ? [options.known] : [] },
        messages: [],
      }),
    save: () => undefined,
  });
  await rooms.load();
  const soundCheck = new SoundCheck({
    audio,
    analysis,
    rooms,
    openStrings: () => [40, 45, 50, 55, 59, 64],
    today: () => new Date('2026-03-01T10:00:00Z'),
  });
  const midi = new MidiConnection({
    open: (events) => {
      midiEvents = events;
      if (options.midiRefused) return Promise.resolve(bad('midi.refused'));
      events.onInputs(['a keyboard']);
      return Promise.resolve(good({ dispose: () => undefined }));
    },
    allowed: () => Promise.resolve(false),
    nowSeconds: now,
    later: (act) => {
      waiting = act;
      return () => (waiting = null);
    },
  });
  const tries = new Tries(setup);
  /** Names that were remembered, and how often the address was cleared. */
  const student = { names: [] as string[], cleared: 0 };
  const lesson = new Lesson({
    setup,
    library,
    student: {
      load: () => Promise.resolve({ value: { name: 'Alto' }, messages: [] }),
      save: ({ name }) => void student.names.push(name),
    },
    readLink: (fragment) => Promise.resolve(readSheetFragment(fragment)),
    readFile: readLessonFile,
    forgetLink: () => void student.cleared++,
  });
  await lesson.load();
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
    backings: noBackings(problem('storage.none')),
    stand: { kept: [], play: () => Promise.resolve() },
    frames: {
      each: (draw) => {
        draws.add(draw);
        return () => draws.delete(draw);
      },
    },
    files,
    today: () => new Date('2026-03-01T10:15:00Z'),
  });

  /** A recording as the desk grades it that changes nothing of what is set up. */
  const openRecording = async (files: RecordingFiles, firstBeatSeconds = 0) => {
    const { timeline } = setup;
    const read = timeline.ok ? await readRecording(analysis, files, new AbortController().signal) : timeline;
    const opened =
      read.ok && timeline.ok
        ? good(
            takeOfRecording(
              files.line.name,
              read.value,
              setup.planTake(timeline.value, new Date('2026-03-01T10:15:00Z')).details,
              firstBeatSeconds,
            ),
          )
        : (read as Outcome<never>);
    await session.gradeRecording(files.line.name, opened);
  };

  const startSignal = new StartSignal({ audio, analysis, rooms, midi, nowSeconds: now });

  const settle = async () => {
    for (let i = 0; i < 20; i++) await new Promise((resolve) => setTimeout(resolve, 0));
  };
  return {
    setup,
    session,
    tries,
    lesson,
    student,
    openRecording,
    startSignal,
    midi,
    /** So long that whoever waits has waited long enough. */
    wait: () => waiting?.(),
    /** A message of the MIDI keyboard, as it arrives. */
    send: (...message: number[]) => midiEvents?.onMessage(new Uint8Array(message), 0),
    rooms,
    soundCheck,
    /** What was last asked to be played, and from which frames on. */
    played: () => played,
    frame: () => frame,
    library,
    takes,
    sounds,
    audio,
    analysis,
    open,
    inMono,
    players,
    rendered,
    notesOpened,
    accompaniments,
    saved,
    settings,
    workers,
    settle,
    /** Plays samples into the microphone, hop by hop, the display drawing along; the band on the same frames. */
    play: async (samples: Float32Array, band: Float32Array | null = null) => {
      for (let from = 0; from < samples.length; from += HOP) {
        const piece = samples.slice(from, from + HOP);
        events?.onHop({
          startFrame: frame,
          samples: piece,
          band: band && (band.slice(from, from + HOP) as Float32Array<ArrayBuffer>),
        });
        frame += piece.length;
        if (isShown) for (const draw of [...draws]) draw();
        await Promise.resolve();
      }
      await settle();
    },
    /** The page is out of sight: the browser draws no frames. */
    hide: () => {
      isShown = false;
    },
    /** The browser delivers nothing for a while. */
    skip: (seconds: number) => {
      frame += Math.round(seconds * rate);
    },
    /** Nothing but zeros comes, and then sound again. */
    silence: () => events?.onSilent?.(problem('microphone.silent')),
    soundBack: () => events?.onSoundBack?.(problem('microphone.silent')),
    behind: () => events?.onBehind?.(),
    pullOut: async () => {
      events?.onLost(problem('microphone.lost'));
      await settle();
    },
    /** Until the session is in a phase of this kind. */
    until: async (kind: string) => {
      for (let i = 0; i < 2000 && session.phase.kind !== kind; i++)
        await new Promise((resolve) => setTimeout(resolve, 5));
      if (session.phase.kind !== kind)
        throw new Error(`waited for ${kind}, it is ${JSON.stringify(session.phase)}`);
    },
  };
}
