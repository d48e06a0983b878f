/** Samples → report: the band out where it is known, listen block by block, lay the notes on the chart, grade. */
import { floats, type MonoSamples } from './base/pcm16.ts';
import { grade } from './grade.ts';
import { tooMuchToGrade } from './grade-bounds.ts';
import type { BackingFacts } from './take/backing-facts.ts';
import { Listener } from './listen.ts';
import { listenPastBacking, listenWithout, wanderingNotice } from './listen-without.ts';
import type { GradeSettings } from './grade-settings.ts';
import type { HeardNote } from './take/note.ts';
import { failure, good, type Outcome } from './base/outcome.ts';
import { canBeRoundTrip, firstBeatAfterChange } from './take/round-trip.ts';
import type { Report } from './take/schema.ts';
import { tidyNumbers } from './report/tidy.ts';
import { BandRemover, type RoomPath } from './room/cancel/band-remover.ts';
import { ROOM_HZ, toRoomRate } from './room/align/room-rate.ts';
import { notice, type Message } from './words/problem.ts';
import { timelineOf } from './timeline-of-order.ts';
import { choiceOf, type GradeOrder } from './grade-order.ts';

/** Seconds of sound between two reports of progress: 10 ms of work or less. */
const BLOCK_SECONDS = 1;
/** The live listener receives hops of the microphone; the remover checks the delay once in each. */
const LIVE_PIECE_FRAMES = 512;

/** Mono sound: 16-bit for takes of our own, floating point at full scale ±1 for files that were opened. */
export interface Sound {
  readonly samples: MonoSamples;
  /** Of a backing in stereo half of left less right. */
  readonly side?: Float32Array | null;
  readonly sampleRate: number;
}

/** What is in the take beside the player, and is to be taken out before listening. */
export type Backing =
  /**
   * What the band played on the same frames. With the path by which it came back it is removed as it was during the take;
   * null means that it is unknown whether it came back, and it is searched for.
   */
  | { readonly kind: 'band'; readonly samples: Int16Array; readonly path: RoomPath | null }
  /** A recording of it: where it lies in the take and how it came there is found in the take itself. */
  | { readonly kind: 'recording'; readonly name: string; readonly sound: Sound };

export interface SoundToGrade extends Sound {
  /** The name that the player sees, for the messages. */
  readonly name: string;
  /** null where nothing is to be taken out. */
  readonly backing: Backing | null;
  /** The report of the live listener, which heard the band too; it is kept where the band is not found in the take. */
  readonly known?: GradedSound | null;
}

export interface GradedSound {
  readonly report: Report;
  /** Every note that was heard, those that count in no share too: with other choices they are graded again. */
  readonly heard: readonly HeardNote[];
}

export interface GradingEvents {
  /** The share done, 0 to 1. */
  progress(share: number): void;
  /** A problem or a notice about the take, once each. */
  message(message: Message): void;
}

/**
 * The report of a whole recording. A take with its band is heard as the live listener heard it; one with a recorded
 * backing as `landfall grade --backing` hears it.
 */
export function gradeSound(
  sound: SoundToGrade,
  order: GradeOrder,
  events: GradingEvents,
): Outcome<GradedSound> {
  // A chart or settings that cannot be graded are reported before the listening.
  const timeline = timelineOf(order);
  if (!timeline.ok) return timeline;
  const { backing, known = null } = sound;
  if (isKnown(backing)) {
    const { notes, facts } = heardIn(sound, backing, events);
    return withHeard(notes, gradeHeard(notes, sound, order, facts));
  }
  const { sampleRate, samples } = sound;
  const both = {
    frames: samples.length,
    sampleRate,
    take: toRoomRate(samples, sampleRate),
    band: toRoomRate(backing.samples, sampleRate),
  };
  const searched = gradeSearched(both, order, known, events);
  if (!searched.ok || searched.value !== null) return searched as Outcome<GradedSound>;
  const notes = listenTo(sound, events);
  return withHeard(notes, gradeHeard(notes, sound, order));
}

/** A take and the band that it may hold, for the search for that band: an hour of both is 346 MB. */
export interface TakeAndBand {
  /** Of the take, and their rate in Hz. */
  readonly frames: number;
  readonly sampleRate: number;
  /** Both at ROOM_HZ, where searching, removing and listening past a band is done. */
  readonly take: Float32Array;
  readonly band: Float32Array;
}

/**
 * The report of a take in which the band is searched for.
 * @returns null where the band is not in it and `known` is null: the take itself is then to be heard
 */
export function gradeSearched(
  { frames, sampleRate, take, band }: TakeAndBand,
  order: GradeOrder,
  known: GradedSound | null,
  events: GradingEvents,
): Outcome<GradedSound | null> {
  const timeline = timelineOf(order);
  if (!timeline.ok) return timeline;
  const [heard, played] = [take, band].map((samples) => ({ samples, sampleRate: ROOM_HZ }));
  const found = listenPastBacking(heard!, played!, events.progress);
  if (found === null) {
    const wandering = wanderingNotice(heard!, played!);
    if (wandering !== null) events.message(wandering);
  }
  if (found === null || !canBeRoundTrip(found.backing.offsetSeconds)) return good(known);
  // Rounded as in the report, so that the first downbeat computed from the report is the one that was graded.
  const facts = tidyNumbers(found.backing);
  if (found.notice !== null) events.message(found.notice);
  events.message(
    notice('band.cameBack', {
      ms: Math.round(1000 * facts.offsetSeconds),
      placedByIt: order.assumedRoundTripSeconds !== undefined,
    }),
  );
  const length = { samples: { length: frames }, sampleRate };
  return withHeard(found.notes, gradeHeard(found.notes, length, foundIn(order, facts), { backing: facts }));
}

/** A report with the notes that it was made of. */
export const withHeard = (heard: readonly HeardNote[], report: Outcome<Report>): Outcome<GradedSound> =>
  report.ok ? good({ report: report.value, heard }) : report;

/** The order with the round trip that was found in the take, where it had only been assumed. */
export const foundIn = (order: GradeOrder, { offsetSeconds }: BackingFacts): GradeOrder =>
  order.assumedRoundTripSeconds === undefined
    ? order
    : {
        ...order,
        firstBeatSeconds: firstBeatAfterChange(
          order.firstBeatSeconds,
          { roundTripSeconds: order.assumedRoundTripSeconds },
          { roundTripSeconds: offsetSeconds },
        ),
        assumedRoundTripSeconds: offsetSeconds,
      };

interface HeardIn {
  readonly notes: readonly HeardNote[];
  readonly facts: { readonly backing?: BackingFacts | null };
}

type KnownBacking = Extract<Backing, { kind: 'recording' }> | KnownBand;
const isKnown = (backing: Backing | null): backing is KnownBacking | null =>
  backing?.kind !== 'band' || backing.path !== null;
interface KnownBand {
  readonly kind: 'band';
  readonly samples: Int16Array;
  readonly path: RoomPath;
}

function heardIn(sound: SoundToGrade, backing: KnownBacking | null, events: GradingEvents): HeardIn {
  if (backing === null) return { notes: listenTo(sound, events), facts: {} };
  if (backing.kind === 'band') return listenPast(sound, backing, events);
  const { name, sampleRate } = sound;
  const heard = listenWithout(
    { name, samples: sound.samples, sampleRate },
    { ...backing.sound, name: backing.name },
    (share) => events.progress(share),
  );
  if (heard.notice !== null) events.message(heard.notice);
  return { notes: heard.notes, facts: { backing: heard.backing } };
}

function listenTo({ samples, sampleRate }: Sound, events: GradingEvents): readonly HeardNote[] {
  const listener = new Listener({ sampleRate });
  const block = Math.round(BLOCK_SECONDS * sampleRate);
  for (let from = 0; from < samples.length; from += block) {
    listener.push(floats(samples.subarray(from, from + block)));
    events.progress(Math.min(1, (from + block) / samples.length));
  }
  return listener.finish();
}

/** Listens as the live listener did. */
function listenPast(
  { samples, sampleRate }: Sound,
  { samples: band, path }: KnownBand,
  events: GradingEvents,
): HeardIn {
  const remover = new BandRemover(sampleRate, path);
  const listener = new Listener({ sampleRate: ROOM_HZ });
  let told = 0;
  for (let from = 0; from < samples.length; from += LIVE_PIECE_FRAMES) {
    const to = from + LIVE_PIECE_FRAMES;
    const microphone = floats(samples.subarray(from, to));
    const played = new Float32Array(microphone.length);
    played.set(floats(band.subarray(from, Math.min(to, samples.length))));
    listener.push(remover.push(microphone, played));
    if (from - told < BLOCK_SECONDS * sampleRate) continue;
    told = from;
    events.progress(from / samples.length);
  }
  listener.push(remover.finish());
  return { notes: listener.finish(), facts: { backing: factsOf(remover) } };
}

/** What a remover took out, for the report; the band lay where the sweep had found it. */
export const factsOf = ({ laterSeconds, driftPpm, removedDb }: BandRemover): BackingFacts => ({
  offsetSeconds: laterSeconds,
  driftPpm,
  removedDb,
});

/** Grades what a listener heard in a recording. */
export const gradeHeard = (
  notes: readonly HeardNote[],
  { samples, sampleRate }: { readonly samples: { readonly length: number }; readonly sampleRate: number },
  order: GradeOrder,
  facts: { readonly backing?: BackingFacts | null } = {},
): Outcome<Report> =>
  gradeNotes(
    notes,
    {
      kind: order.source,
      durationSeconds: samples.length / sampleRate,
      sampleRate,
      ...facts,
      ...(order.lost && { lost: order.lost }),
    },
    order,
  );

/**
 * Grades notes that are known without listening: played by MIDI, written down, or heard before.
 * @param source where the notes come from, as the report is to have it
 */
export function gradeNotes(
  notes: readonly HeardNote[],
  source: GradeSettings['source'],
  order: GradeOrder,
): Outcome<Report> {
  const timeline = timelineOf(order);
  if (!timeline.ok) return timeline;
  const tooMuch = tooMuchToGrade(notes, timeline.value);
  if (tooMuch !== null) return failure(tooMuch);
  return good(grade(notes, timeline.value, { source, referenceHz: order.reference, ...choiceOf(order) }));
}
