/** Takes that are not played now: from the player's files, from the demo, from the store. */
import type { Backing } from '../core/grade-samples.ts';
import type { FileLine } from '../analysis/messages.ts';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import type { HeardNote } from '../core/take/note.ts';
import type { Report } from '../core/take/schema.ts';
import { takeFromDemo, takeFromFile, takeFromStore, type FinishedTake } from './finished-take.ts';
import { readKeptNotes } from '../core/kept-notes.ts';
import { readKeptReport } from '../core/kept-report.ts';
import type { AnalysisPort } from './ports.ts';
import type { SessionPorts } from './session-ports.ts';
import type { Message } from '../core/words/problem.ts';
import type { TakeDetails, TakeId } from './take.ts';

export interface OpenedTake {
  readonly take: FinishedTake;
  /** null where it is still to be graded. */
  readonly report: Report | null;
  /** Every note that was heard; null where it is still to be heard, or where an earlier take did not keep them. */
  readonly heard: readonly HeardNote[] | null;
  /** What was odd and mended. */
  readonly warnings: readonly Message[];
}

/** What a player opens: a recording or a list of notes, and the backing that is in the recording too. */
export interface RecordingFiles {
  readonly line: File;
  /** null where nothing is to be taken out. */
  readonly backing: File | null;
}

/** The files of a recording as they were read; nothing is said yet of what they are graded by. */
export interface ReadRecording {
  readonly line: FileLine;
  readonly backing: Backing | null;
  /** What was odd and mended. */
  readonly warnings: readonly Message[];
}

/** Reads a recording, or a list of notes, and its backing. */
export async function readRecording(
  analysis: AnalysisPort,
  { line, backing }: RecordingFiles,
  signal: AbortSignal,
): Promise<Outcome<ReadRecording>> {
  const [read, readBacking] = await Promise.all([
    analysis.read(line, line.name, false, signal),
    backing === null ? null : analysis.read(backing, backing.name, true, signal),
  ]);
  if (!read.ok) return read;
  if (readBacking?.ok === false) return readBacking;
  const band = readBacking?.value ?? null;
  if (backing !== null && read.value.kind === 'notes')
    return bad('take.notesHaveNoBacking', { name: line.name });
  if (backing !== null && band?.kind === 'notes') return bad('take.backingIsNotes', { name: backing.name });
  const out: Backing | null =
    backing !== null && band?.kind === 'sound'
      ? { kind: 'recording', name: backing.name, sound: band }
      : null;
  return good({
    line: read.value,
    backing: out,
    warnings: [...read.value.warnings, ...(band?.warnings ?? [])],
  });
}

/** A recording that was read, against a chart and its details. */
export const takeOfRecording = (
  name: string,
  { line, backing, warnings }: ReadRecording,
  details: Omit<TakeDetails, 'sampleRate' | 'firstBeatSeconds'>,
  firstBeatSeconds: number,
): OpenedTake => ({
  take: takeFromFile(name, line, details, firstBeatSeconds, backing),
  report: null,
  heard: null,
  warnings,
});

/** A recording in review with its backing from a file, to be taken out of it; null leaves it in. */
export async function withBacking(
  { id, details, content }: Pick<FinishedTake, 'id' | 'details' | 'content'>,
  file: File | null,
  analysis: AnalysisPort,
): Promise<Outcome<FinishedTake>> {
  if (content.kind === 'notes') return bad('take.notesHaveNoBacking', { name: details.title });
  if (file === null) return good({ id, details, content: { ...content, backing: null } });
  const read = await analysis.read(file, file.name, true);
  if (!read.ok) return read;
  if (read.value.kind === 'notes') return bad('take.backingIsNotes', { name: file.name });
  const backing: Backing = { kind: 'recording', name: file.name, sound: read.value };
  return good({ id, details, content: { ...content, backing } });
}

/** The demo line, rendered afresh. */
export async function openDemoTake({
  audio,
  today,
}: Pick<SessionPorts, 'audio' | 'today'>): Promise<Outcome<OpenedTake>> {
  const demo = await audio.renderDemo();
  return demo.ok
    ? good({ take: takeFromDemo(demo.value, today()), report: null, heard: null, warnings: [] })
    : demo;
}

/**
 * A stored take; without a report where it was cut off, or where its report can't be read. Fails where that and its notes
 * can't be read, and there is no sound.
 */
export async function openStoredTake(
  { takes }: Pick<SessionPorts, 'takes'>,
  id: TakeId,
): Promise<Outcome<OpenedTake>> {
  const stored = await takes.open(id);
  if (!stored.ok) return stored;
  const report = readKeptReport(stored.value);
  const heard = readKeptNotes(stored.value);
  const { written, soundRemoved } = stored.value.details;
  // Nothing of it could be graded, and a report of nothing would take the place of the one that is kept.
  if (!report.ok && heard === null && (written || soundRemoved)) return report;
  return good({
    take: takeFromStore(stored.value),
    report: report.ok ? report.value : null,
    heard,
    warnings: [],
  });
}
