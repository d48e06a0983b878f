/** The messages between page and listening worker. Every request that expects an answer has a number. */
import type { ListedLine } from '../core/files/read-list.ts';
import type { HeardNote, LiveReading } from '../core/take/note.ts';
import type { Outcome } from '../core/base/outcome.ts';
import type { Landing } from '../core/take/schema.ts';
import type { RoomPath } from '../core/room/cancel/band-remover.ts';
import type { GradeSettings } from '../core/grade-settings.ts';
import type { MonoSamples } from '../core/base/pcm16.ts';
import type { GradedSound, SoundToGrade } from '../core/grade-samples.ts';
import type { WholeSearch } from './band-search.ts';
import type { Message, Notice } from '../core/words/problem.ts';
import type { AimCount } from './aim-so-far.ts';
import type { GradeOrder } from '../core/grade-order.ts';
import type { ByTheseSheets, ReturnedFile } from './returned-file.ts';

export type AnalysisRequest =
  /** `path` is how the band comes back through the microphone, where it does: it is taken out before listening. */
  | {
      readonly kind: 'open';
      readonly id: number;
      readonly sampleRate: number;
      readonly path: RoomPath | null;
    }
  /** From here on committed notes are set against the chart. The first downbeat is known by then. */
  | { readonly kind: 'follow'; readonly id: number; readonly order: GradeOrder }
  /** Samples are transferred; no answer, what is heard comes as `heard`. */
  | {
      readonly kind: 'hop';
      readonly samples: Float32Array<ArrayBuffer>;
      /** What the band played on the same frames; null where it was silent, or no path is known. */
      readonly band: Float32Array<ArrayBuffer> | null;
    }
  /** Answer: every note of the listening, ends corrected. */
  | { readonly kind: 'finish'; readonly id: number }
  /** Answer: the report of the listening and its notes (`GradedSound`). The same as grading the whole recording, but it is heard already. */
  | { readonly kind: 'report'; readonly id: number; readonly order: GradeOrder }
  /** Answer: the report of a whole recording and its notes (`GradedSound`). */
  | { readonly kind: 'grade'; readonly id: number; readonly sound: SoundToGrade; readonly order: GradeOrder }
  /** A piece of a take and of its band, in order, for the search for that band. Samples are transferred; answer: nothing. */
  | {
      readonly kind: 'search piece';
      readonly id: number;
      readonly whole: WholeSearch;
      readonly take: MonoSamples;
      readonly band: MonoSamples;
    }
  /** Answer: the report of the take of those pieces (`GradedSound`), or null where it has to be heard itself. */
  | {
      readonly kind: 'grade searched';
      readonly id: number;
      readonly order: GradeOrder;
      readonly known: GradedSound | null;
    }
  /** Answer: the report of notes that are known without listening. */
  | {
      readonly kind: 'grade notes';
      readonly id: number;
      readonly notes: readonly HeardNote[];
      readonly source: GradeSettings['source'];
      readonly order: GradeOrder;
    }
  /** Answer: a student's file graded for the teacher (`GradedReturn`). */
  | {
      readonly kind: 'grade returned';
      readonly id: number;
      readonly returned: ReturnedFile;
      readonly by: ByTheseSheets;
    }
  /** Answer: what the line says of its tempo (`RecordingTempo`), or null. */
  | {
      readonly kind: 'tempo';
      readonly id: number;
      readonly line: FileLine;
      readonly expectedBpm: number;
    }
  /** Answer: what is in the file (`FileLine`); `asBacking` with its side, where it is in stereo. */
  | {
      readonly kind: 'read';
      readonly id: number;
      readonly file: Blob;
      readonly name: string;
      readonly asBacking?: boolean;
    }
  /** Answer: the chart in the file (`ReadChartFile`). */
  | { readonly kind: 'read chart'; readonly id: number; readonly file: Blob; readonly name: string };

type Asked = Extract<AnalysisRequest, { readonly id: number }>;
type WithoutId<R> = R extends unknown ? Omit<R, 'id'> : never;
/** A request that expects an answer, without its number. */
export type Order = WithoutId<Asked>;

export type AnalysisMessage =
  | { readonly kind: 'answer'; readonly id: number; readonly outcome: Outcome<unknown> }
  | { readonly kind: 'progress'; readonly id: number; readonly share: number }
  /** A problem or a notice about what is being graded. */
  | { readonly kind: 'message'; readonly id: number; readonly message: Message }
  | { readonly kind: 'heard'; readonly heard: Heard };

/** Landings that are new or were judged anew: told alone, so that a note late in a long take sends no more than an early one. */
export interface LandingsFrom {
  /** So many landings stand as they were told; these follow them. */
  readonly from: number;
  readonly landings: readonly Landing[];
}

/** What is heard now, and what has been heard since this was last told. */
export interface Heard {
  readonly reading: LiveReading;
  /** Committed since the last time, in order of onset; times from the first sample. */
  readonly notes: readonly HeardNote[];
  /** The delay as last measured while the band plays, against the path's; null where it was not. */
  readonly delayChangeSeconds: number | null;
  /** null while nothing has changed, or no chart is followed. */
  readonly landings: LandingsFrom | null;
  /** How the aim in hand goes; null while nothing has changed, or the take has no aim. */
  readonly aim: AimCount | null;
  /** A4 that notes are named by now; null while no chart is followed. */
  readonly referenceHz: number | null;
}

/** An audio file as mono samples; `warnings` are about what was wrong and was repaired. */
export interface FileSound {
  readonly kind: 'sound';
  readonly samples: Float32Array;
  /** Of a backing in stereo half of left less right; null, or left out, else. */
  readonly side?: Float32Array | null;
  readonly sampleRate: number;
  readonly warnings: readonly Notice[];
}

/** What a file holds that can be graded: sound, or a line that is written down. */
export type FileLine = FileSound | ({ readonly kind: 'notes' } & ListedLine);
