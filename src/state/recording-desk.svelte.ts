/** A recording that was opened, until it is graded: what is found in it is proposed, and the player confirms it. */
import type { RecordingTempo } from '../core/beats/recording-tempo.ts';
import { Audition } from './audition.svelte.ts';
import { readRecording, takeOfRecording, type ReadRecording, type RecordingFiles } from './open-take.ts';
import type { AnalysisPort, AudioPort, FramesPort } from './ports.ts';
import { RecordingChords } from './recording-chords.svelte.ts';
import { RecordingDraft } from './recording-draft.svelte.ts';
import type { Session } from './session.svelte.ts';
import { BPM_RANGE, clampTo } from './settings.ts';
import type { Setup } from './setup.svelte.ts';
import { peaksOf } from './wave-peaks.ts';

interface DeskPorts {
  readonly analysis: AnalysisPort;
  readonly audio: AudioPort;
  readonly frames: FramesPort;
  readonly setup: Setup;
  readonly session: Session;
  readonly today: () => Date;
}

/** A recording that lies on the desk. */
export interface OnDesk {
  readonly name: string;
  readonly file: File;
  readonly read: ReadRecording;
  /** null where neither a pulse nor the line's onsets tell a tempo. */
  readonly found: RecordingTempo | null;
  readonly draft: RecordingDraft;
  /** null for a line that is written down. */
  readonly audition: Audition | null;
  /** What is drawn of it, `PEAKS_PER_SECOND`; null for a line that is written down. */
  readonly peaks: Float32Array | null;
  /** The chords that are looked for in it; null for a line that is written down. */
  readonly chords: RecordingChords | null;
}

export class RecordingDesk {
  readonly #ports: DeskPorts;
  #reading = $state.raw<string | null>(null);
  #lying = $state.raw<OnDesk | null>(null);
  #turn = 0;
  /** Ends what is being read and looked through. */
  #stop = new AbortController();

  constructor(ports: DeskPorts) {
    this.#ports = ports;
  }

  /** The file that is being read and looked through; null where none is. */
  get reading(): string | null {
    return this.#reading;
  }

  /** null where nothing lies there. */
  get lying(): OnDesk | null {
    return this.#lying;
  }

  /** Whether a recording lies there, or is being read. */
  get isOpen(): boolean {
    return this.#lying !== null || this.#reading !== null;
  }

  /** Reads the files and looks for a tempo; what can't be read is the session's trouble. */
  async open(files: RecordingFiles): Promise<void> {
    const { analysis, setup, session } = this.#ports;
    this.close();
    const turn = this.#turn;
    const { name } = files.line;
    this.#reading = name;
    const read = await readRecording(analysis, files, this.#stop.signal);
    if (turn !== this.#turn) return;
    if (!read.ok) {
      this.close();
      return session.gradeRecording(name, read);
    }
    const tempo = await analysis.tempo(read.value.line, setup.settings.bpm, this.#stop.signal);
    if (turn !== this.#turn) return;
    const found = tempo.ok ? tempo.value : null;
    const draft = RecordingDraft.of(setup.settings, found?.firstBeatSeconds ?? 0);
    if (found !== null) draft.setup.setBpm(clampTo(BPM_RANGE, Math.round(found.bpm * 10) / 10));
    this.#reading = null;
    const chords = this.#chordsOf(files.line, read.value, draft);
    this.#lying = {
      name,
      file: files.line,
      read: read.value,
      found,
      draft,
      chords,
      ...this.#heard(read.value),
    };
    await chords?.findChart(null);
  }

  /** Grades what lies there by what the player has said. Does nothing where its chart can't be read. */
  async grade(): Promise<void> {
    const { session, today } = this.#ports;
    const lying = this.#lying;
    const details = lying?.draft.plan(today()) ?? null;
    if (lying === null || details === null) return;
    const opened = takeOfRecording(lying.name, lying.read, details, lying.draft.firstBeatSeconds);
    this.close();
    await session.gradeRecording(lying.name, { ok: true, value: opened });
  }

  /** Puts the recording away; nothing of it is kept. */
  close(): void {
    this.#turn++;
    this.#stop.abort();
    this.#stop = new AbortController();
    this.#lying?.audition?.dispose();
    this.#lying?.chords?.dispose();
    this.#lying = null;
    this.#reading = null;
  }

  #chordsOf(file: File, { line }: ReadRecording, draft: RecordingDraft): RecordingChords | null {
    if (line.kind === 'notes') return null;
    const source = {
      id: `recording ${this.#turn}`,
      name: file.name,
      file: () => Promise.resolve({ ok: true, value: file } as const),
    };
    return new RecordingChords(
      draft,
      this.#ports.audio.searchChords(source),
      line.samples.length / line.sampleRate,
    );
  }

  #heard({ line }: ReadRecording): Pick<OnDesk, 'audition' | 'peaks'> {
    if (line.kind === 'notes') return { audition: null, peaks: null };
    const { audio, frames } = this.#ports;
    return {
      audition: new Audition(audio.openPlayer(line, null), frames),
      peaks: peaksOf(line.samples, line.sampleRate),
    };
  }
}
