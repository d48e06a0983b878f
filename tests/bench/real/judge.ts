/** Judges the notes heard in one recording against what was played. */
import { matchNotes, type MetricNote } from '../note-metrics.ts';
import { kindOfExtra, kindOfMiss, type ExtraKind, type MissKind } from './kinds.ts';
import type { AnnotatedRecording } from './folder.ts';
import type { PlayedNote } from './truth.ts';

/** A heard note; a listener that gives no confidence is sure of all its notes. */
export interface SureNote extends MetricNote {
  readonly confidence?: number;
}

export interface Judgement {
  readonly right: number;
  readonly played: number;
  /** Estimates that count: those that fit a note set aside are left out. */
  readonly heard: number;
  readonly extras: readonly ExtraKind[];
  readonly misses: readonly MissKind[];
  /** Heard minus played, of every right note, in ms. */
  readonly onsetErrorsMs: readonly number[];
  /** Confidence of every estimate that counts, and whether it is right. */
  readonly confidences: readonly (readonly [confidence: number, right: boolean])[];
  /** For a sequence: whether exactly its notes were heard; else null. */
  readonly isExact: boolean | null;
}

const PITCH_TOLERANCE_CENTS = 50;

export type BurstAt = (atSeconds: number) => boolean;

function judgeNotes(
  played: readonly PlayedNote[],
  heard: readonly SureNote[],
  onsetToleranceSeconds: number,
  burst: BurstAt,
): Judgement {
  const tolerances = { onsetToleranceSeconds, pitchToleranceCents: PITCH_TOLERANCE_CENTS };
  const wanted = played.filter((note) => !note.setAside);
  const matches = matchNotes(wanted, heard, tolerances);
  const rightEstimates = new Set(matches.map(([, estimate]) => estimate));
  const left = [...heard.keys()].filter((index) => !rightEstimates.has(index));
  const asideMatches = matchNotes(
    played.filter((note) => note.setAside),
    left.map((index) => heard[index] as SureNote),
    tolerances,
  );
  const setAside = new Set(asideMatches.map(([, position]) => left[position] as number));
  const open = new Set(left.filter((index) => !setAside.has(index)));

  const found = new Set(matches.map(([note]) => note));
  const misses: MissKind[] = [];
  wanted.forEach((note, index) => {
    if (found.has(index)) return;
    const { kind, estimate } = kindOfMiss(note, played, heard, [...open], onsetToleranceSeconds);
    misses.push(kind);
    if (estimate !== null) open.delete(estimate);
  });
  return {
    right: matches.length,
    played: wanted.length,
    heard: heard.length - setAside.size,
    extras: [...open].map((index) => kindOfExtra(heard[index] as SureNote, played, burst)),
    misses,
    onsetErrorsMs: matches.map(
      ([note, estimate]) =>
        1000 * ((heard[estimate] as SureNote).onsetSeconds - (wanted[note] as PlayedNote).onsetSeconds),
    ),
    confidences: heard.flatMap((note, index) =>
      setAside.has(index) ? [] : [[note.confidence ?? 1, rightEstimates.has(index)] as const],
    ),
    isExact: null,
  };
}

/** Right notes of a sequence: the longest common subsequence (Wagner and Fischer, J. ACM 1974). */
function judgeSequence(midi: readonly number[], heard: readonly SureNote[]): Judgement {
  let row = new Array<number>(heard.length + 1).fill(0);
  for (const pitch of midi) {
    const next = [0];
    heard.forEach((note, j) => {
      const fits = 100 * Math.abs(note.midi - pitch) <= PITCH_TOLERANCE_CENTS;
      next.push(fits ? (row[j] ?? 0) + 1 : Math.max(row[j + 1] ?? 0, next[j] ?? 0));
    });
    row = next;
  }
  const right = row.at(-1) ?? 0;
  return {
    right,
    played: midi.length,
    heard: heard.length,
    extras: [],
    misses: [],
    onsetErrorsMs: [],
    confidences: [],
    isExact: right === midi.length && right === heard.length,
  };
}

/** Judges one recording; `heard` in any order. */
export function judge(
  recording: Pick<AnnotatedRecording, 'truth' | 'onsetToleranceSeconds'>,
  heard: readonly SureNote[],
  burst: BurstAt,
): Judgement {
  const inOrder = heard.toSorted((a, b) => a.onsetSeconds - b.onsetSeconds);
  const { truth, onsetToleranceSeconds } = recording;
  return truth.kind === 'notes'
    ? judgeNotes(truth.notes, inOrder, onsetToleranceSeconds, burst)
    : judgeSequence(truth.midi, inOrder);
}
