/**
 * The grading pipeline: heard notes and a timeline in, the report out. One composition, no clock, no chance of
 * its own: the same notes give the same report, byte for byte.
 */
import { defaultAnticipationBeats } from './grade/assign/attribute.ts';
import { chordKeys } from './chart/keys-through.ts';
import type { Timeline } from './chart/timeline.ts';
import { findAccents } from './grade/teach/accents.ts';
import { countApproaches } from './grade/teach/approach.ts';
import { findFigures } from './grade/teach/came-back.ts';
import { findRange } from './grade/teach/range.ts';
import { findSpace } from './grade/teach/space.ts';
import { suspectChart, type Landed } from './grade/teach/suspect.ts';
import { findSwing } from './grade/teach/swing-played.ts';
import { findAdvice } from './grade/teach/advice.ts';
import { suspectDelay } from './grade/teach/delay-suspected.ts';
import { chooseNextAim, judgeAims } from './grade/aims/aim-results.ts';
import { onStrongBeats } from './grade/assign/beats.ts';
import { gatherChanges } from './grade/landings/changes.ts';
import { findFunctions } from './grade/landings/functions.ts';
import { gradeNotes, type NoteRules } from './grade/assign/grade-notes.ts';
import type { GradedNote } from './grade/assign/graded-note.ts';
import { MOST_ANTICIPATION_BEATS, type ChordChange } from './grade/landings/candidates.ts';
import { findChanges, judgeChanges } from './grade/landings/landings.ts';
import { splitAtChanges } from './grade/assign/length-parts.ts';
import { noteFacts } from './grade/landings/note-facts.ts';
import { mixPalette } from './grade/teach/palette.ts';
import { pitchClassShares } from './grade/chance/chance.ts';
import { landingEvent, noteEvent, type ToneEvent } from './grade/chance/tone-events.ts';
import { markPage, SHARES_TO_REACH } from './grade/chance/page.ts';
import { MOST_TOLERANCE_SECONDS, TOLERANCE_SECONDS } from './grade/assign/tolerance.ts';
import { correctNotes } from './correct/correct-notes.ts';
import { countedNotes } from './grade/assign/doubtful.ts';
import { correctionFacts, handsOn } from './grade/landings/corrected-facts.ts';
import { doubtfulFacts } from './grade/landings/doubtful-facts.ts';
import { findPhrases, type PhraseBounds } from './grade/assign/phrases.ts';
import { toneMask } from './grade/assign/tone-sets.ts';
import { isChordTone, isFlatThird } from './grade/assign/roles.ts';
import { paletteOver } from './grade/assign/scales.ts';
import { LANDING_BEATS, LEAN_BEATS, PHRASE_GAP_BEATS } from './grade/assign/settings.ts';
import type { GradeSettings } from './grade-settings.ts';
import { rotatedShares } from './grade/chance/rotated-shares.ts';
import { eventShares } from './grade/chance/shares.ts';
import { median } from './base/statistics.ts';
import { findThirds } from './grade/landings/thirds.ts';
import { measureTiming } from './grade/landings/timing.ts';
import { playersNotes } from './grade/assign/turns.ts';
import type { HeardNote } from './take/note.ts';
import { placeLost } from './grade/assign/place-lost.ts';
import type { Landing, Phrase, Report } from './take/schema.ts';
import { tidyNumbers } from './report/tidy.ts';
import { estimateReference } from './grade/assign/estimate-reference.ts';
import { STANDARD_A4_HZ } from './music/temperament.ts';

/**
 * Grades a take against its timeline.
 * @param heard notes in any order, seconds from the first sample
 * @throws RangeError for settings outside their range (a reference of 0 Hz, a negative anticipation)
 * @example grade(notes, timeline, { source: { kind: 'notes', durationSeconds: 20, sampleRate: null }, referenceHz: 440 })
 */
export function grade(heard: readonly HeardNote[], timeline: Timeline, settings: GradeSettings): Report {
  const anticipation = settings.anticipationBeats ?? 'an eighth';
  const anticipationBeats =
    settings.anticipationBeats ?? defaultAnticipationBeats(timeline.swing, timeline.divisions);
  if (!(anticipationBeats >= 0 && anticipationBeats <= MOST_ANTICIPATION_BEATS)) {
    throw new RangeError(`anticipationBeats is 0 to ${MOST_ANTICIPATION_BEATS}, found ${anticipationBeats}`);
  }
  const { toleranceSeconds: tolerance = TOLERANCE_SECONDS } = settings;
  if (!(tolerance >= 0 && tolerance <= MOST_TOLERANCE_SECONDS)) {
    throw new RangeError(`toleranceSeconds is 0 to ${MOST_TOLERANCE_SECONDS}, found ${tolerance}`);
  }
  // Without an anticipation the chord at the onset stands, exactly.
  const toleranceSeconds = anticipationBeats === 0 ? 0 : tolerance;
  const phraseGapBeats = settings.phraseGapBeats ?? PHRASE_GAP_BEATS;
  const paletteName = settings.palette ?? 'both pentatonics';
  const palette = paletteOver(paletteName, timeline);
  const corrected = correctNotes(heard, settings.corrections ?? []);
  const byHand = handsOn(corrected.notes);
  const { counted, doubtful } = countedNotes(corrected.notes);
  const played = playersNotes(counted, timeline, anticipation, toleranceSeconds);
  // What may be the band's own line, in its turn, is nobody's to let count.
  const isPlayers = (note: HeardNote) =>
    playersNotes([note], timeline, anticipation, toleranceSeconds).length > 0;
  const tuning = findReference(played, settings.referenceHz);
  const { referenceHz } = tuning;

  const rules: NoteRules = { referenceHz, anticipation, palette, toleranceSeconds };
  const notes = gradeNotes(played, timeline, rules);
  const phrases = findPhrases(notes, phraseGapBeats);
  const strong = onStrongBeats(
    notes.map((note) => note.onsetBeat),
    timeline.beatsPerBar,
  );
  const functions = findFunctions(notes, phrases);
  const thirds = findThirds(notes, phrases);
  const changes = findChanges(timeline, notes, toleranceSeconds);
  const landings = judgeChanges(changes, { notes, phrases, leans: thirds.leans, timeline, palette });
  const phraseEnds = phrases.map((phrase) => notes[phrase.lastNote]!);

  const choruses = chorusesPlayed(notes, timeline);
  const own = pitchClassShares(notes);
  const asked = hasThirds(timeline) ? 'thirds' : 'guideTones';
  const shares = markPage(
    {
      landings: eventShares(
        landingEvents(landings, changes, notes),
        notes,
        SHARES_TO_REACH.landings,
        choruses,
      ),
      phraseEnds: eventShares(noteEvents(phraseEnds, notes), notes, SHARES_TO_REACH.phraseEnds, choruses),
      ...rotatedShares(notes, strong, timeline, { anticipation, toleranceSeconds, referenceHz, choruses }),
    },
    asked,
  );
  const flatThirds = notes.filter((note) => note.chord !== null && isFlatThird(note.pitchClass, note.chord));
  const aims = judgeAims(settings.aims ?? [], {
    ...{ notes, functions, changes, landings, phraseEnds, strong, timeline, palette, own, choruses },
    leans: thirds.leans,
    flatThirds,
  });

  return tidyNumbers<Report>({
    format: 'landfall-report',
    version: 2,
    source: sourceFacts(settings.source, timeline),
    tuning: { ...tuning, medianCents: median(notes.map((note) => note.cents)) },
    timeline: timelineFacts(timeline, notes, settings.source.durationSeconds),
    settings: {
      anticipationBeats,
      toleranceMs: toleranceSeconds * 1000,
      landingBeats: LANDING_BEATS,
      phraseGapBeats,
      leanBeats: LEAN_BEATS,
      palette: paletteName,
      instrument: settings.instrument?.name ?? null,
    },
    notes: noteFacts(notes, timeline, { functions, phrases, strong, byHand }),
    doubtful: doubtfulFacts(doubtful.filter(isPlayers), timeline, rules, byHand),
    ...correctionFacts(corrected),
    landings,
    phrases: phrases.map((phrase) => phraseFacts(phrase, notes)),
    summary: {
      notes: shares.allNotes.chordTones.of,
      chordToneShare: shares.allNotes.chordTones.share,
      thirdShare: shares.allNotes.thirds.share,
      landings: {
        count: landings.length,
        open: landings.filter((landing) => landing.kind === 'open').length,
        chordTones: landings.filter((landing) => isChordTone(landing.role)).length,
        thirds: landings.filter((landing) => landing.role === 'third').length,
      },
      asked,
    },
    shares,
    changes: gatherChanges(landings, new Set(thirds.blueNotes.map(({ note }) => note))),
    thirds,
    palette: mixPalette(splitAtChanges(notes, timeline), chordKeys(timeline), functions),
    timing: measureTiming(notes, timeline.beatMap),
    suspectedDelay: suspectDelay(notes, timeline),
    aims,
    nextAim: chooseNextAim(aims),
    space: findSpace(notes, phrases, timeline),
    approach: countApproaches(landings, functions),
    figures: findFigures(notes, timeline),
    range: findRange(notes, phrases),
    accents: findAccents(notes, strong),
    swingPlayed: findSwing(notes),
    suspected: suspectChart(
      notes,
      landedNotes(landings, changes, notes),
      timeline,
      toleranceSeconds,
      [shares.landings[asked], shares.landings.chordTones].some(({ verdict }) => verdict === 'above chance'),
    ),
    advice: findAdvice(
      {
        ...{ notes, functions, changes, landings, phraseEnds, thirds, timeline },
        tried: settings.aims ?? [],
        results: aims,
      },
      settings.instrument ?? null,
    ),
  });
}

/** The reference to grade at; where the notes say too little of it, the standard one. */
function findReference(heard: readonly HeardNote[], asked: number | 'auto') {
  if (asked !== 'auto') return { referenceHz: asked, estimated: false };
  const { referenceHz, evidence } = estimateReference(heard);
  return evidence === 'enough'
    ? { referenceHz, estimated: true }
    : { referenceHz: STANDARD_A4_HZ, estimated: false };
}

/** What was recorded, each stretch of lost sound with its bar and beat. */
function sourceFacts({ lost, ...source }: GradeSettings['source'], timeline: Timeline): Report['source'] {
  return lost === undefined || lost.length === 0 ? source : { ...source, lost: placeLost(lost, timeline) };
}

/** How often the chart has gone round under the notes, parts of a round too; null where it does not go round. */
function chorusesPlayed(notes: readonly GradedNote[], { beatMap, roundBeats }: Timeline): number | null {
  const last = notes.at(-1);
  return beatMap.bpm === null || last === undefined ? null : Math.max(0, last.offsetBeat) / roundBeats;
}

/** Whether any chord of the chart has a third; where none has, the headline asks about guide tones. */
const hasThirds = (timeline: Timeline): boolean =>
  timeline
    .spansBetween(0, timeline.roundBeats)
    .some(({ chord }) => chord !== null && toneMask(chord, 'thirds') !== 0);

/** The landings that stay where they are: one that the line puts right by step says that this chord is meant. */
const landedNotes = (
  landings: readonly Landing[],
  changes: readonly ChordChange[],
  notes: readonly GradedNote[],
): readonly Landed[] =>
  landings.flatMap(({ note, putRight, leansInto }, i) =>
    note === null || putRight !== null || leansInto !== null
      ? []
      : [{ note: notes[note]!, chord: changes[i]!.chord }],
  );

const landingEvents = (
  landings: readonly Landing[],
  changes: readonly ChordChange[],
  notes: readonly GradedNote[],
): readonly ToneEvent[] =>
  landings.flatMap(({ note }, i) => (note === null ? [] : [landingEvent(changes[i]!, notes[note]!, notes)]));

const noteEvents = (asked: readonly GradedNote[], notes: readonly GradedNote[]): readonly ToneEvent[] =>
  asked.flatMap((note) => (note.chord === null ? [] : [noteEvent(note, note.chord, notes)]));

function phraseFacts({ firstNote, lastNote }: PhraseBounds, notes: readonly GradedNote[]): Phrase {
  const last = notes[lastNote]!;
  return {
    firstNote,
    lastNote,
    startBeat: notes[firstNote]!.onsetBeat,
    endBeat: last.offsetBeat,
    chord: last.chord?.symbol ?? null,
    degree: last.degree,
    role: last.role,
  };
}

/** The timeline as plain data: every stretch of one chord from the first note or downbeat to the end of the take. */
function timelineFacts(
  timeline: Timeline,
  notes: readonly GradedNote[],
  durationSeconds: number,
): Report['timeline'] {
  const { beatMap, beatsPerBar, bars, chart, key, keys, swing, rise, turnBars } = timeline;
  const lastOffset = notes.reduce((latest, note) => Math.max(latest, note.offsetBeat), 0);
  const endBeat = Math.max(lastOffset, beatMap.beatAt(durationSeconds));
  const spans = timeline.spansBetween(Math.min(0, notes[0]?.onsetBeat ?? 0), endBeat).map((span) => {
    const spanEnd = Math.min(span.endBeat, Math.max(endBeat, span.startBeat));
    return {
      startBeat: span.startBeat,
      endBeat: Number.isFinite(span.endBeat) ? span.endBeat : spanEnd,
      startSeconds: beatMap.secondsAt(span.startBeat),
      endSeconds: beatMap.secondsAt(Number.isFinite(span.endBeat) ? span.endBeat : spanEnd),
      chord: span.chord?.symbol ?? null,
      bar: span.bar,
      chorus: span.chorus,
    };
  });
  return {
    bpm: beatMap.bpm,
    beatsPerBar,
    bars,
    chart,
    key: { tonic: key.tonic, mode: key.mode },
    ...(keys && {
      keys: keys.map((one) => ({ fromBar: one.fromBar, tonic: one.key.tonic, mode: one.key.mode })),
    }),
    swing,
    ...(rise && { rise }),
    ...(turnBars !== undefined && { turnBars }),
    spans,
  };
}
