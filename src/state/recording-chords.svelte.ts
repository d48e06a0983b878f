/** The chords of a recording that is to be graded: found in it where a band plays along, and laid out as what it is graded by. */
import { barsIn } from '../core/beats/round.ts';
import { evenBeats, type RecordingTempo } from '../core/beats/recording-tempo.ts';
import type { BeatTrack } from '../core/beats/track.ts';
import type { Outcome } from '../core/base/outcome.ts';
import type { Chart } from '../core/chart/chart.ts';
import type { Problem } from '../core/words/problem.ts';
import type { ChordDesk } from './chord-desk.ts';
import { ChordFinding } from './chord-finding.svelte.ts';
import type { ChordSearch } from './ports.ts';
import type { RecordingDraft } from './recording-draft.svelte.ts';
import { BPM_RANGE, clampTo } from './settings.ts';
import { evenTrack } from './wave-peaks.ts';

/** What a search came to; null while none has been made. 'alone': one line and no band, whose chords are a guess. */
type Result = 'found' | 'alone' | 'stopped' | Problem;

export class RecordingChords implements ChordDesk {
  readonly #draft: RecordingDraft;
  readonly #search: ChordSearch;
  readonly #durationSeconds: number;
  #result = $state.raw<Result | null>(null);
  #tempo = $state.raw<RecordingTempo | null>(null);
  readonly finding: ChordFinding;

  constructor(draft: RecordingDraft, search: ChordSearch, durationSeconds: number) {
    this.#draft = draft;
    this.#search = search;
    this.#durationSeconds = durationSeconds;
    const { setup } = draft;
    this.finding = new ChordFinding({
      text: () => (setup.settings.form === null ? setup.chartText : null),
      write: (chartText) => this.takeChart(chartText),
    });
  }

  get result(): Result | null {
    return this.#result;
  }

  /** The tempo of the beats over which the chords were found; null where none were. */
  get tempo(): RecordingTempo | null {
    return this.#tempo;
  }

  get chart(): Outcome<Chart> {
    return this.#draft.setup.chart;
  }

  get editor(): ChordDesk['editor'] {
    return { bpm: this.#bpm, track: this.#track };
  }

  get bars(): number {
    const { chart } = this;
    return chart.ok ? barsIn(this.#track, chart.value.meter.beatsPerBar) : 0;
  }

  get busy(): string | null {
    return this.finding.share === null ? null : 'finding chords';
  }

  /** Looks for beats and chords. What the player has changed meanwhile stays; what was found is then only offered. */
  async findChart(over: readonly number[] | null): Promise<void> {
    const before = this.#said;
    this.#result = null;
    const found = await this.finding.search(this.#search, over);
    if (found === null) return;
    if (!found.ok) this.#result = found.problem;
    else if (!found.value.hasBand) {
      this.finding.forget();
      this.#result = 'alone';
    } else {
      this.#result = 'found';
      if (before === this.#said) this.takeFound();
    }
  }

  /** The search is ended at once, and nothing is proposed. */
  stop(): void {
    this.finding.forget();
    this.#result = 'stopped';
  }

  takeChart(chartText: string): void {
    this.#draft.setup.writeChart(chartText, null);
  }

  takeFound(): void {
    const { beats, proposal } = this.finding;
    if (beats === null || proposal === null) return;
    const even = evenBeats(beats);
    const firstBeatSeconds = even.first + proposal.downbeat * even.step;
    this.takeChart(proposal.chart);
    this.#draft.setup.setBpm(clampTo(BPM_RANGE, roundBpm(60 / even.step, beats.length)));
    this.#draft.firstBeatSeconds = firstBeatSeconds;
    this.#tempo = { bpm: this.#bpm, firstBeatSeconds, wanderSeconds: even.wanderSeconds, from: 'beats' };
  }

  /** The first bar begins elsewhere: the chords are laid out anew from there. */
  firstBeatMoved(): void {
    const { beats, standing } = this.finding;
    if (beats === null || standing === null) return;
    const { firstBeatSeconds } = this.#draft;
    const off = beats.map((beat) => Math.abs(beat - firstBeatSeconds));
    const nearest = off.indexOf(Math.min(...off));
    this.finding.setDownbeat(off[nearest]! * this.#bpm < 60 * NEAR_BEATS ? nearest : null);
  }

  dispose(): void {
    this.finding.forget();
    this.#search.stopFinding();
  }

  get #bpm(): number {
    return this.#draft.setup.settings.bpm;
  }

  get #track(): BeatTrack {
    return evenTrack(this.#bpm, this.#draft.firstBeatSeconds, this.#durationSeconds);
  }

  /** All that a search would lay anew. */
  get #said(): string {
    const { setup, firstBeatSeconds } = this.#draft;
    return JSON.stringify([setup.chartText, setup.settings.key, this.#bpm, firstBeatSeconds]);
  }
}

/** A first bar that is set this near to a beat that was heard begins on it, in beats. */
const NEAR_BEATS = 0.25;
/** A tempo is written as short as it can be without the last beat being off by more than this, seconds. */
const ROUNDING_SECONDS = 0.015;

function roundBpm(bpm: number, beats: number): number {
  const offAt = (written: number) => beats * Math.abs(60 / written - 60 / bpm);
  const written = [1, 10, 100].map((parts) => Math.round(bpm * parts) / parts);
  return written.find((rounded) => offAt(rounded) < ROUNDING_SECONDS) ?? written.at(-1)!;
}
