/** From a form and a feel to what the band plays. Pure: the same form, settings and seed give the same events. */
import { bassRootAt, bassRootOf, playBass } from './bass.ts';
import { playChords, spanVoicings } from './comping.ts';
import { playDrums } from './drums.ts';
import { swelled } from './dynamics.ts';
import { playDrone } from './drone.ts';
import { bandParts, type Arrangement, type BandEvent } from './events.ts';
import { exampleLine } from './example-line.ts';
import { clickKeys, drumKeys } from './feels/feel.ts';
import { feels } from './feels/table.ts';
import { chorusBeats, feelOfBar, pickupBeats, type BandForm } from './form.ts';
import { sameBeat } from './pattern.ts';
import { chance, loosen } from '../base/random.ts';
import type { BandSettings } from './settings.ts';
import { fastestBpm, slowestBpm, type FeelName } from '../chart/feel-names.ts';
import { leastSwing, mostSwing, swingShare } from '../chart/swing.ts';

/** Each player has a stream of chance of its own, so that muting one changes nothing for the others. */
const player = { drums: 1, bass: 2, chords: 3, ending: 4, pickup: 5, line: 6 } as const;
/** General MIDI 2, drum sets. */
const brushKit = 40;
const clickBeats = 0.1;
const clickVelocity = { accent: 112, plain: 92 } as const;
/** Seconds would depend on tempo; the last chord rings for a bar. */
const endingVelocity = 96;
const pickupVelocity = 88;

/**
 * The count-in: clicks from `-countInBars` bars to beat 0, or to the pickup, which chords and bass play. With two bars
 * or more the first ones are half notes.
 */
export function countIn(form: BandForm, settings: BandSettings): readonly BandEvent[] {
  const { beatsPerBar } = form;
  const beats = settings.countInBars * beatsPerBar;
  const clicks = Array.from({ length: beats }, (_, i) => i).flatMap((i) => {
    const inBar = i % beatsPerBar;
    const lastBar = i >= (settings.countInBars - 1) * beatsPerBar;
    if (!lastBar && inBar % 2 === 1) return [];
    if (i - beats > -pickupBeats(form) - sameBeat) return [];
    return [
      {
        beat: i - settings.countInBars * beatsPerBar,
        durationBeats: clickBeats,
        part: 'click' as const,
        midi: inBar === 0 ? clickKeys.accent : clickKeys.plain,
        velocity: inBar === 0 ? clickVelocity.accent : clickVelocity.plain,
      },
    ];
  });
  return [...clicks, ...playPickup(form, settings)];
}

/** The chords of the pickup as they arrive, once, over their bass. */
function playPickup(form: BandForm, settings: BandSettings): readonly BandEvent[] {
  if (settings.drone !== undefined) return [];
  const upbeat = { ...form, spans: form.pickup };
  const voicings = spanVoicings(feels[settings.feel], upbeat);
  const luck = chance(settings.seed, player.pickup);
  return form.pickup.flatMap((span) => {
    if (span.chord === null) return [];
    const hit = (part: BandEvent['part'], midi: number): BandEvent => ({
      beat: span.startBeat,
      durationBeats: (span.endBeat - span.startBeat) * 0.9,
      part,
      midi,
      velocity: loosen(part === 'bass' ? pickupVelocity : pickupVelocity - 16, luck),
    });
    return [
      hit('bass', bassRootOf(span.chord)),
      ...(voicings.get(span) ?? []).map((midi) => hit('chords', midi)),
    ];
  });
}

/**
 * One chorus, beats from 0 to the form's length; `chorus` counts from 0 and, with the seed, decides the variation.
 * @throws RangeError when a setting is outside its range.
 */
export function arrangeChorus(form: BandForm, settings: BandSettings, chorus: number): readonly BandEvent[] {
  requireSettings(settings);
  const asked = new Set(form.feelChanges.map(({ feel }) => feel).filter((feel) => feel !== null));
  const own = asked.has(settings.feel) ? [...asked] : [settings.feel, ...asked];
  const inFeel = (name: FeelName) => (event: BandEvent) =>
    (feelOfBar(form, Math.floor((event.beat + sameBeat) / form.beatsPerBar)) ?? settings.feel) === name;
  return own
    .flatMap((name) => {
      const events = chorusIn(name, form, settings, chorus);
      return asked.size === 0 ? events : events.filter(inFeel(name));
    })
    .filter(onTheKitOf(settings.feel))
    .filter(({ part }) => part !== 'chords' || settings.chordsRest !== true || chorus % 2 === 0)
    .filter(({ part }) => settings.drone === undefined || part === 'drums')
    .concat(
      settings.backbeatClick === true ? backbeat(form) : [],
      settings.drone === undefined ? [] : playDrone(form, settings.drone, chorus),
      theLine(form, settings, chorus),
    )
    .map((event) => swelled(event, form, chorus))
    .toSorted(byTime);
}

/** The band's own turns, where player and band trade bars. */
function theLine(form: BandForm, settings: BandSettings, chorus: number): readonly BandEvent[] {
  const { trade, seed } = settings;
  if (trade === undefined) return [];
  const swingOf = (feel: FeelName) => swingIn(feel, form, settings);
  return exampleLine(form, { ...settings, trade }, chorus, swingOf, chance(seed, chorus, player.line));
}

/** Two and four; in other meters every second beat of the bar. */
const backbeat = (form: BandForm): BandEvent[] =>
  Array.from({ length: chorusBeats(form) }, (_, beat) => beat)
    .filter((beat) => (beat % form.beatsPerBar) % 2 === 1)
    .map((beat) => ({
      beat,
      durationBeats: clickBeats,
      part: 'click',
      midi: clickKeys.plain,
      velocity: clickVelocity.plain,
    }));

/** Nobody changes instruments in the middle of a form: where there are no brushes, nothing is swirled. */
const onTheKitOf = (feel: FeelName) => (event: BandEvent) =>
  event.part !== 'drums' || event.midi !== drumKeys.swirl || feels[feel].instruments.drumKit === brushKit;

/** The whole chorus in one feel. */
function chorusIn(
  name: FeelName,
  form: BandForm,
  settings: BandSettings,
  chorus: number,
): readonly BandEvent[] {
  const feel = feels[name];
  const swing = swingIn(name, form, settings);
  const stream = (part: number) => chance(settings.seed, chorus, part);
  return [
    ...playDrums(feel, form, swing, chorus, stream(player.drums)),
    ...playBass(feel, form, swing, stream(player.bass)),
    ...playChords(feel, form, swing, stream(player.chords)),
  ];
}

/** In compound time the long eighth is two of the beat's three, whatever the feel; a section's own feel swings by itself. */
function swingIn(name: FeelName, form: BandForm, { feel, bpm, swing }: BandSettings): number {
  if (form.divisions === 3) return 2 / 3;
  return name === feel && swing !== null ? swing : swingShare(name, bpm);
}

/** The last bar: tonic chord, low root, kick and crash, ringing. Beats from 0. */
export function ending(form: BandForm, settings: BandSettings): readonly BandEvent[] {
  const voicings = spanVoicings(feels[settings.feel], form);
  const home =
    form.spans.find((span) => span.chord?.rootPitchClass === form.key.tonicPitchClass) ??
    form.spans.findLast((span) => span.chord !== null);
  const luck = chance(settings.seed, player.ending);
  const hit = (part: BandEvent['part'], midi: number): BandEvent => ({
    beat: 0,
    durationBeats: form.beatsPerBar,
    part,
    midi,
    velocity: loosen(part === 'chords' ? endingVelocity - 16 : endingVelocity, luck),
  });
  const drums = [hit('drums', drumKeys.kick), hit('drums', drumKeys.crash)];
  if (settings.drone !== undefined) {
    const held = playDrone(form, settings.drone, 0)
      .filter(({ beat }) => beat === 0)
      .map((event) => ({ ...event, durationBeats: form.beatsPerBar }));
    return [...drums, ...held].toSorted(byTime);
  }
  const root = home ? bassRootAt(form, home.startBeat) : null;
  return [
    ...drums,
    ...(root === null ? [] : [hit('bass', root)]),
    ...(home ? (voicings.get(home) ?? []).map((midi) => hit('chords', midi)) : []),
  ].toSorted(byTime);
}

/** A whole performance: count-in, `choruses` times the form, and an ending bar where asked for. */
export function arrange(
  form: BandForm,
  settings: BandSettings,
  choruses: number,
  withEnding = false,
): Arrangement {
  if (!Number.isInteger(choruses) || choruses < 1)
    throw new RangeError(`choruses must be 1 or more, not ${choruses}`);
  const length = chorusBeats(form);
  const later = (events: readonly BandEvent[], beats: number) =>
    events.map((event) => ({ ...event, beat: event.beat + beats }));
  const played = Array.from({ length: choruses }, (_, i) =>
    later(arrangeChorus(form, settings, i), i * length),
  );
  const last = withEnding ? later(ending(form, settings), choruses * length) : [];
  return {
    events: [...countIn(form, settings), ...played.flat(), ...last],
    chorusBeats: length,
    startBeat: -Math.max(settings.countInBars * form.beatsPerBar, pickupBeats(form)),
    choruses,
    endBeat: choruses * length + (withEnding ? form.beatsPerBar : 0),
  };
}

/**
 * What is played from one beat to another of a performance that never ends: negative beats are the count-in, then
 * chorus after chorus. Beats count from the first downbeat.
 */
export function eventsBetween(
  form: BandForm,
  settings: BandSettings,
  fromBeat: number,
  toBeat: number,
): readonly BandEvent[] {
  const length = chorusBeats(form);
  const first = Math.max(0, Math.floor((fromBeat + sameBeat) / length));
  const last = Math.ceil((toBeat - sameBeat) / length) - 1;
  const events: BandEvent[] = fromBeat < 0 ? [...countIn(form, settings)] : [];
  for (let chorus = first; chorus <= last; chorus++) {
    for (const event of arrangeChorus(form, settings, chorus)) {
      events.push({ ...event, beat: event.beat + chorus * length });
    }
  }
  return events.filter((event) => event.beat >= fromBeat - sameBeat && event.beat < toBeat - sameBeat);
}

const byTime = (a: BandEvent, b: BandEvent) =>
  a.beat - b.beat || bandParts.indexOf(a.part) - bandParts.indexOf(b.part) || a.midi - b.midi;

function requireSettings({ bpm, swing, seed, countInBars, trade }: BandSettings): void {
  if (!(bpm >= slowestBpm && bpm <= fastestBpm)) {
    throw new RangeError(`bpm must lie from ${slowestBpm} to ${fastestBpm}, not ${bpm}`);
  }
  if (swing !== null && !(swing >= leastSwing && swing <= mostSwing)) {
    throw new RangeError(`swing must be null or lie from ${leastSwing} to ${mostSwing}, not ${swing}`);
  }
  if (trade !== undefined && !(Number.isInteger(trade.bars) && trade.bars >= 1))
    throw new RangeError(`a turn is 1 or more whole bars, not ${trade.bars}`);
  if (!Number.isInteger(seed)) throw new RangeError(`seed must be a whole number, not ${seed}`);
  if (!Number.isInteger(countInBars) || countInBars < 0 || countInBars > 4) {
    throw new RangeError(`countInBars must be a whole number from 0 to 4, not ${countInBars}`);
  }
}
