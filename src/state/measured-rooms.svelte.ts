/** The devices that the player has chosen, and what sound checks have measured for each pair of them. */
import type { SweepResult } from '../core/room/check/sound-check.ts';
import type { StrokeDelay } from '../core/room/check/stroke-delay.ts';
import { SET_DELAY_LIMITS_SECONDS } from '../core/take/round-trip.ts';
import { usualDevices, type DevicePair, type DeviceSettings, type MeasuredRoom } from './measured-room.ts';
import type { RoomsPort, SettingsPort } from './ports.ts';

/** More pairs of devices than anybody plays through; older ones are forgotten. */
const MOST_ROOMS = 8;

const isPair = (room: MeasuredRoom, { input, output }: DevicePair): boolean =>
  room.input === input && room.output === output;

/** Devices of which nothing is measured yet. */
const notSwept = ({ input, output }: DevicePair): MeasuredRoom => ({
  ...{ input, output, measuredAt: '', delaySeconds: null, delayFrom: 'sweep', spreadSeconds: 0, strokes: 0 },
  ...{ isSwept: false, leakDb: null, removedDb: 0, path: null, setSeconds: null },
});

export class MeasuredRooms implements RoomsPort {
  readonly #store: SettingsPort<DeviceSettings>;
  #settings = $state.raw<DeviceSettings>(usualDevices);

  constructor(store: SettingsPort<DeviceSettings>) {
    this.#store = store;
  }

  async load(): Promise<void> {
    this.#settings = (await this.#store.load()).value;
  }

  get inputId(): string | null {
    return this.#settings.inputId;
  }

  get outputId(): string | null {
    return this.#settings.outputId;
  }

  get knowsOthers(): boolean {
    return this.#settings.rooms.length > 0;
  }

  find(input: string, output: string): MeasuredRoom | null {
    return this.#settings.rooms.find((room) => isPair(room, { input, output })) ?? null;
  }

  chooseInput(inputId: string | null): void {
    this.#change({ inputId });
  }

  chooseOutput(outputId: string | null): void {
    this.#change({ outputId });
  }

  /**
   * New sweeps replace what was known of the same devices, and what was set by hand. Only where they measured no delay,
   * one from strokes stays: through headphones a sweep measures nothing.
   */
  keep(pair: DevicePair, measured: SweepResult, measuredAt: Date): void {
    const { delaySeconds, spreadSeconds, leakDb, removedDb, path } = measured;
    const before = this.find(pair.input, pair.output);
    const stays = delaySeconds === null && before?.delayFrom === 'strokes' ? before : null;
    this.#put({
      ...pair,
      measuredAt: measuredAt.toISOString(),
      delaySeconds: stays?.delaySeconds ?? delaySeconds,
      delayFrom: stays === null ? 'sweep' : 'strokes',
      spreadSeconds: stays?.spreadSeconds ?? spreadSeconds,
      strokes: stays?.strokes ?? 0,
      isSwept: true,
      leakDb: Number.isFinite(leakDb) ? leakDb : null,
      removedDb,
      path,
      setSeconds: stays?.setSeconds ?? null,
    });
  }

  /** The delay from strokes, in place of what was known of it; what sweeps have found of the room stays. */
  keepStrokes(pair: DevicePair, measured: StrokeDelay, measuredAt: Date): void {
    const { delaySeconds, spreadSeconds, strokes } = measured;
    this.#put({
      ...(this.find(pair.input, pair.output) ?? notSwept(pair)),
      measuredAt: measuredAt.toISOString(),
      ...{ delaySeconds, spreadSeconds, strokes },
      delayFrom: 'strokes',
      setSeconds: null,
    });
  }

  /** Sets the round trip by hand, brought within its limits; null takes what was measured. */
  setDelay(
    { delaySeconds: seconds, ...pair }: DevicePair & { readonly delaySeconds: number | null },
    today: Date,
  ): void {
    const { least, most } = SET_DELAY_LIMITS_SECONDS;
    this.#put({
      ...(this.find(pair.input, pair.output) ?? { ...notSwept(pair), measuredAt: today.toISOString() }),
      setSeconds: seconds === null ? null : Math.min(most, Math.max(least, seconds)),
    });
  }

  #put(room: MeasuredRoom): void {
    const others = this.#settings.rooms.filter((other) => !isPair(other, room));
    this.#change({ rooms: [room, ...others].slice(0, MOST_ROOMS) });
  }

  #change(change: Partial<DeviceSettings>): void {
    this.#settings = { ...this.#settings, ...change };
    this.#store.save(this.#settings);
  }
}
