/** From a finished take to its report, kept with the take where the take is kept. */
import { gradeOrder } from '../core/grade-order.ts';
import { foundIn, withHeard, type GradedSound, type GradingEvents } from '../core/grade-samples.ts';
import { good, type Outcome } from '../core/base/outcome.ts';
import { countTake } from '../core/practice/take-counts.ts';
import type { Report } from '../core/take/schema.ts';
import { notice, type Message } from '../core/words/problem.ts';
import { gradeTake, type FinishedTake } from './finished-take.ts';
import { keepRecording } from './keep-recording.ts';
import type { Library } from './library.svelte.ts';
import { makeReview, type Review } from './phase.ts';
import type { AnalysisPort, TakesPort } from './ports.ts';
import type { TakeDetails, TakeId } from './take.ts';

export interface GradingPorts {
  readonly analysis: AnalysisPort;
  readonly takes: TakesPort;
  readonly library: Library;
}

export interface GradedTake extends GradedSound {
  /** With what the grading found out about it. */
  readonly take: FinishedTake;
}

/** What a grading tells, and what stops it. */
interface StoppableGrading extends GradingEvents {
  readonly signal: AbortSignal;
}

/**
 * @param known what was graded while it was played; null hears the whole take anew
 * @param changed what of the take is not as it was kept
 * @returns take and report, whether or not they could be kept; a failure to keep them is a notice
 */
export async function gradeAndKeep(
  take: FinishedTake,
  known: GradedSound | null,
  ports: GradingPorts,
  events: StoppableGrading,
  changed: Partial<TakeDetails> = {},
): Promise<Outcome<GradedTake>> {
  const graded =
    known !== null && !mayHoldBand(take)
      ? good(known)
      : await gradeTake(take, known, ports.analysis, events, events.signal);
  if (!graded.ok) {
    if (take.id !== null) void ports.library.load();
    return graded;
  }
  if (graded.value.heard.length === 0 && take.id !== null && !isGraded(take.id, ports.library)) {
    await discardEmpty(take.id, ports, events);
    return good({ take: { ...take, id: null }, ...graded.value });
  }
  const isNew = take.id === null && take.details.source === 'recording' && graded.value.heard.length > 0;
  const id = isNew ? await keepRecording(take, ports.takes, events.message) : take.id;
  const change = { ...changed, ...correctedFirstBeat(take, graded.value.report) };
  return good(await keep({ ...take, id }, graded.value, change, ports, events));
}

/** Whether a take was graded before: then it held something. */
const isGraded = (id: TakeId, { takes }: Library): boolean =>
  takes.some((take) => take.id === id && take.summary !== null);

/** A take in which nothing was heard would only make the list of takes longer. */
async function discardEmpty(
  id: TakeId,
  { takes, library }: GradingPorts,
  events: GradingEvents,
): Promise<void> {
  const removed = await takes.remove(id);
  events.message(removed.ok ? notice('take.emptyNotKept') : removed.problem);
  void library.load();
}

/**
 * The take in review graded again by other details, which are kept with it. The notes as they were heard are graded again;
 * where they were not kept, as in old takes, the sound is heard anew.
 */
export async function gradeWithDetails(
  { id, details: old, content, playedThrough, report, heard }: Review,
  changed: Partial<TakeDetails>,
  ports: GradingPorts,
  tell: (message: Message) => void,
): Promise<Outcome<Review>> {
  const events: GradingEvents = { progress: () => undefined, message: tell };
  const details = { ...old, ...changed };
  const take: FinishedTake = { id, details, content, ...(playedThrough && { playedThrough }) };
  const graded =
    heard === null
      ? await gradeTake(take, null, ports.analysis, events)
      : withHeard(heard, await ports.analysis.gradeNotes(heard, report.source, gradeOrder(details)));
  if (!graded.ok) return graded;
  const change = { ...changed, ...correctedFirstBeat(take, graded.value.report) };
  const kept = await keep(take, graded.value, change, ports, events);
  return makeReview(kept.take, kept);
}

/** Keeps a report with its take, and what has become known about the take. */
async function keep(
  take: FinishedTake,
  { report, heard }: GradedSound,
  change: Partial<TakeDetails>,
  { takes, library }: GradingPorts,
  events: GradingEvents,
): Promise<GradedTake> {
  if (take.id !== null) {
    const summary = { ...report.summary, counts: countTake(report) };
    const saved = await takes.saveReport(take.id, { ...report, heard }, summary, change);
    if (!saved.ok) events.message(saved.problem);
    void library.load();
  }
  return { take: { ...take, details: { ...take.details, ...change } }, report, heard };
}

/** Whether the band may be in what the live listener heard: no sound check has measured if it came back. */
const mayHoldBand = ({ content }: FinishedTake): boolean =>
  content.kind === 'sound' && content.backing?.kind === 'band' && content.backing.path === null;

/** The first downbeat by the round trip that was found in the take, where it had been placed by an assumed one. */
function correctedFirstBeat(take: FinishedTake, { source }: Report) {
  if (!mayHoldBand(take) || !source.backing || take.details.assumedRoundTripSeconds === undefined) return {};
  const { firstBeatSeconds, assumedRoundTripSeconds } = foundIn(gradeOrder(take.details), source.backing);
  return assumedRoundTripSeconds === undefined ? {} : { firstBeatSeconds, assumedRoundTripSeconds };
}
