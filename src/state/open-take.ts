/** Takes that are not played now: from the player's files, from the demo, from the store. */
import type { Backing } from '../analysis/grade-samples.ts';
import { bad, good, type Outcome } from '../core/base/outcome.ts';
import type { HeardNote } from '../core/take/note.ts';
import type { Report } from '../core/take/schema.ts';
import { takeFromDemo, takeFromFile, takeFromStore, type FinishedTake } from './finished-take.ts';
import { readKeptNotes, readKeptReport } from './kept-report.ts';
import type { AnalysisPort, AudioPort, TakesPort } from './ports.ts';
import type { SessionPorts } from './session-ports.ts';
import type { Message } from '../core/words/problem.ts';
import type { TakeDetails, TakeId } from './take.ts';

type OpenerPorts = Pick<SessionPorts, 'setup' | 'analysis' | 'takes' | 'audio' | 'today'>;

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

/** The takes that a session opens, each from where it is. */
export const takeOpeners = ({ setup, analysis, takes, audio, today }: OpenerPorts) => ({
  /** Files against the chart, key and tempo that are set. */
  recording: async (files: RecordingFiles, firstBeatSeconds: number) => {
    if (!setup.timeline.ok) return setup.timeline;
    const { details } = setup.planTake(setup.timeline.value, today());
    return openFilesAsTake(analysis, files, details, firstBeatSeconds);
  },
  demo: () => openDemoTake(audio, today()),
  stored: (id: TakeId) => openStoredTake(takes, id),
});

/** Reads the files, against a chart and its details. */
async function openFilesAsTake(
  analysis: AnalysisPort,
  { line, backing }: RecordingFiles,
  details: Omit<TakeDetails, 'sampleRate' | 'firstBeatSeconds'>,
  firstBeatSeconds: number,
): Promise<Outcome<OpenedTake>> {
  const [read, readBacking] = await Promise.all([
    analysis.read(line, line.name),
    backing === null ? null : analysis.read(backing, backing.name, true),
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
    take: takeFromFile(line.name, read.value, details, firstBeatSeconds, out),
    report: null,
    heard: null,
    warnings: [...read.value.warnings, ...(band?.warnings ?? [])],
  });
}

/** The demo line, rendered afresh. */
async function openDemoTake(audio: AudioPort, now: Date): Promise<Outcome<OpenedTake>> {
  const demo = await audio.renderDemo();
  return demo.ok
    ? good({ take: takeFromDemo(demo.value, now), report: null, heard: null, warnings: [] })
    : demo;
}

/** A stored take; without a report where it was cut off, or where its report can't be read any more. */
async function openStoredTake(takes: TakesPort, id: TakeId): Promise<Outcome<OpenedTake>> {
  const stored = await takes.open(id);
  if (!stored.ok) return stored;
  const report = readKeptReport(stored.value);
  return good({
    take: takeFromStore(stored.value),
    report: report.ok ? report.value : null,
    heard: readKeptNotes(stored.value),
    warnings: [],
  });
}
