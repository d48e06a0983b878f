/** What is about to be played: the chart, its key, tempo and feel, the reference pitch, the band's levels. */
import type { BandPart } from '../core/band/events.ts';
import type { FeelName } from '../core/chart/feel-names.ts';
import { swingShare } from '../core/chart/swing.ts';
import { firstChords, type Chart } from '../core/chart/chart.ts';
import { parseChart } from '../core/chart/parse-chart.ts';
import type { Timeline } from '../core/chart/timeline.ts';
import { transposeChart } from '../core/chart/transpose-chart.ts';
import { writeChart } from '../core/chart/write-chart.ts';
import { parseKey, writeKey } from '../core/music/keys.ts';
import { good, type Outcome } from '../core/base/outcome.ts';
import { withStep, type ChartStep, type Flow } from './chart-history.ts';
import { planTake } from './plan-take.ts';
import { chartOf, settingsOfForm, timelineOfSettings, titleAfter } from './setup-chart.ts';
import { passesOf } from './practice-settings.ts';
import type { Language } from '../core/words/languages.ts';
import type { PlayingSettings } from './playing-settings.ts';
import type { SettingsPort } from './ports.ts';
import {
  BPM_RANGE,
  clampTo,
  LEVEL_RANGE,
  MOST_CHORUSES,
  MOST_COUNT_IN_BARS,
  REFERENCE_RANGE,
  SWING_RANGE,
  usualSettings,
  type Settings,
} from './settings.ts';
import { backingTimeline, type ChosenBacking } from './chosen-backing.ts';
import type { TakeDetails } from './take.ts';
import { setupOfTake } from './take-setup.ts';
import type { Message } from '../core/words/problem.ts';
import type { TakePlan } from './take-plan.ts';

export type { Settings } from './settings.ts';

type Trial = Pick<Settings, 'choruses' | 'practice'>;

/** What holds again when a lesson sheet is left. */
interface BeforeLesson {
  readonly settings: Partial<Settings>;
  readonly backing: ChosenBacking | null;
  readonly steps: readonly ChartStep[];
}

export class Setup {
  readonly #store: SettingsPort<Settings>;
  #settings = $state.raw<Settings>(usualSettings);
  #steps = $state.raw<readonly ChartStep[]>([]);
  #notices = $state.raw<readonly Message[]>([]);
  /** What holds again when a trial is over, and what is remembered meanwhile; null where nothing is tried. */
  #beforeTrial: Trial | null = null;
  /** null where no sheet is open. */
  #beforeLesson = $state.raw<BeforeLesson | null>(null);
  /** A recording in the band's place; its own chart counts then. */
  #backing = $state.raw<ChosenBacking | null>(null);
  readonly #chart = $derived.by(() => (this.#backing ? good(this.#backing.chart) : chartOf(this.#settings)));
  readonly #timeline = $derived.by(() => {
    if (this.#backing !== null) return backingTimeline(this.#backing);
    return this.#chart.ok ? timelineOfSettings(this.#settings, this.#chart.value, this.swing) : this.#chart;
  });

  constructor(ports: { readonly settings: SettingsPort<Settings> }) {
    this.#store = ports.settings;
  }

  /** Reads what was remembered. What could not be read is in `notices`. */
  async load(): Promise<void> {
    const { value, messages } = await this.#store.load();
    this.#settings = value;
    this.#notices = messages;
  }

  get settings(): Settings {
    return this.#settings;
  }

  /** The recording that is played to; null where the band plays. */
  get backing(): ChosenBacking | null {
    return this.#backing;
  }

  /** Puts a recording in the band's place; null lets the band play again. */
  setBacking(backing: ChosenBacking | null): void {
    this.#backing = backing;
  }

  /** The recording that is there on the next visit: an open sheet only hides it. */
  get keptBacking(): ChosenBacking | null {
    return this.#beforeLesson === null ? this.#backing : this.#beforeLesson.backing;
  }

  get notices(): readonly Message[] {
    return this.#notices;
  }

  /** The chart that counts now: the form in the chosen key, or the player's own. */
  get chart(): Outcome<Chart> {
    return this.#chart;
  }

  /** Its text: what the player wrote, or the form written out. */
  get chartText(): string {
    if (this.#settings.form === null) return this.#settings.ownChart;
    return this.#chart.ok ? writeChart(this.#chart.value) : '';
  }

  /** The chart on time, its first downbeat at 0 seconds. */
  get timeline(): Outcome<Timeline> {
    return this.#timeline;
  }

  /** The swing that counts now, 0.5 to 0.75. */
  get swing(): number {
    const { swing, feel, bpm } = this.#settings;
    return swing ?? clampTo(SWING_RANGE, swingShare(feel, bpm));
  }

  /**
   * A short name for lists: "12-bar blues in A", the chart's own title, or its first chords. It is empty for a chart
   * that can't be read, over which no take can start.
   */
  get title(): string {
    const { form, key } = this.#settings;
    if (this.#backing !== null) return this.#backing.record.title;
    if (form !== null) return `${form} in ${key}`;
    return this.ownTitle ?? (this.#chart.ok ? firstChords(this.#chart.value) : '');
  }

  /** What the player's own chart is called, in any key; null where nobody has called it anything. */
  get ownTitle(): string | null {
    const { form, ownChart, ownTitle } = this.#settings;
    if (ownTitle !== null) return ownTitle;
    const chart = form === null ? this.#chart : parseChart(ownChart);
    return chart.ok ? chart.value.title : null;
  }

  /** A form brings its feel and tempo. One in the other mode keeps the tonic: blues in A, minor blues in A minor. */
  chooseForm(name: string): void {
    this.#backing = null;
    this.#change(settingsOfForm(name, this.#settings));
  }

  /**
   * A chart of the player's own. Its key is the one it writes, or the one its chords are in.
   * @param title null where only the text may have one; left out, the chart is still the same one and keeps its title
   */
  writeChart(text: string, title?: string | null): void {
    const chart = parseChart(text);
    const key = chart.ok ? writeKey(chart.value.key) : this.#settings.key;
    this.#backing = null;
    const ownTitle = title === undefined ? titleAfter(text, this.#settings) : title;
    const typed = title === undefined && this.#settings.form === null;
    this.#change({ form: null, ownChart: text, key, ownTitle }, typed ? 'typing' : null);
  }

  /** What the player calls the chart that is his own. */
  nameChart(title: string): void {
    this.#change({ ownTitle: title.trim() === '' ? null : title.trim() });
  }

  /** Moves the form, or the player's own chart, to the key's tonic; the mode stays the chart's. */
  chooseKey(key: string): void {
    const wanted = parseKey(key);
    if (!wanted || !this.#chart.ok || this.#backing !== null) return;
    const moved = transposeChart(this.#chart.value, wanted);
    this.#change({
      key: writeKey(moved.key),
      ...(this.#settings.form === null ? { ownChart: writeChart(moved) } : {}),
    });
  }

  /** Whether a change of the chart or of its practice can be undone. */
  get canUndo(): boolean {
    return this.#steps.length > 0;
  }

  /** The chart, its key, feel and tempo, and how it is practised, as they were before the last change. */
  undo(): void {
    const last = this.#steps.at(-1);
    if (last === undefined) return;
    const before = this.#steps.slice(0, -1);
    this.#change(last.before);
    this.#steps = before;
  }

  setBpm(bpm: number): void {
    this.#change({ bpm: clampTo(BPM_RANGE, bpm) }, 'tempo');
  }

  chooseFeel(feel: FeelName): void {
    this.#change({ feel });
  }

  setSwing(swing: number | null): void {
    this.#change({ swing: swing === null ? null : clampTo(SWING_RANGE, swing) });
  }

  /** Bars that are counted in, clamped to 0 to 4. */
  setCountIn(bars: number): void {
    this.#change({ countInBars: clampTo({ lowest: 0, highest: MOST_COUNT_IN_BARS }, Math.round(bars)) });
  }

  setReference(reference: number | 'auto'): void {
    this.#change({ reference: reference === 'auto' ? reference : clampTo(REFERENCE_RANGE, reference) });
  }

  /** In dB, clamped to -60 (silent) to +6. */
  setLevel(part: BandPart | 'all', levelDb: number): void {
    this.#change({ levels: { ...this.#settings.levels, [part]: clampTo(LEVEL_RANGE, levelDb) } });
  }

  setChoruses(choruses: number | null): void {
    this.#change({
      choruses:
        choruses === null ? null : clampTo({ lowest: 1, highest: MOST_CHORUSES }, Math.round(choruses)),
    });
  }

  /** Instrument, view, aim, and how the screen is run. */
  setPlaying(change: Partial<PlayingSettings>): void {
    this.#change(change);
  }

  /** The loop is in bars of the chorus as played, from 1; outside it, it is brought in. */
  setPractice(change: Partial<Settings['practice']>): void {
    this.#change({ practice: { ...this.#settings.practice, ...change } });
  }

  /** Of the screens; null: the browser's. */
  setLanguage(language: Language | null): void {
    this.#change({ language });
  }

  /** These settings, as they are. */
  takeOver(settings: Settings): void {
    this.#settings = settings;
  }

  /** The set-up of a take, whatever was set before. A recording in the band's place is not part of it. */
  takeUp(details: TakeDetails): void {
    this.#backing = null;
    this.#change(setupOfTake(details));
  }

  /** What holds until the trial is over; null ends it. */
  setTrial(trial: Trial | null): void {
    this.#settings = { ...this.#settings, ...this.#beforeTrial };
    const { choruses, practice } = this.#settings;
    this.#beforeTrial = trial && { choruses, practice };
    this.#settings = { ...this.#settings, ...trial };
  }

  /**
   * What a lesson sheet asks for, laid over what is set up until the sheet is left: null brings all of that back. It is not
   * remembered.
   */
  setLesson(asked: Partial<Settings> | null): void {
    this.setTrial(null);
    if (this.#beforeLesson !== null) {
      this.#settings = { ...this.#settings, ...this.#beforeLesson.settings };
      ({ backing: this.#backing, steps: this.#steps } = this.#beforeLesson);
      this.#beforeLesson = null;
    }
    if (asked === null) return;
    const names = Object.keys(asked) as (keyof Settings)[];
    const settings = Object.fromEntries(names.map((name) => [name, this.#settings[name]]));
    this.#beforeLesson = { settings, backing: this.#backing, steps: this.#steps };
    this.#settings = { ...this.#settings, ...asked };
    this.#backing = null;
    this.#steps = [];
  }

  /** How many times the form is gone through before it begins anew: once a key where it goes through keys. */
  get passes(): number {
    return this.#backing === null ? passesOf(this.#settings.practice) : 1;
  }

  /** All that a take needs of the present setup. */
  planTake(timeline: Timeline, now: Date): TakePlan {
    const { title, swing } = this;
    return planTake(
      { settings: this.#settings, chart: this.#chart, backing: this.#backing, title, swing },
      timeline,
      now,
    );
  }

  #change(change: Partial<Settings>, flow: Flow = null): void {
    this.#steps = withStep(this.#steps, this.#settings, change, flow);
    this.#settings = { ...this.#settings, ...change };
    this.#store.save({ ...this.#settings, ...this.#beforeTrial, ...this.#beforeLesson?.settings });
  }
}
