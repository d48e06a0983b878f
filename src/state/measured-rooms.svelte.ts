/** The devices that the player has chosen, and what sound checks have measured for each pair of them. */
import type { SweepResult } from '../core/room/check/sound-check.ts';
import { usualDevices, type DeviceSettings, type MeasuredRoom } from './measured-room.ts';
import type { RoomsPort, SettingsPort } from './ports.ts';

/** More pairs of devices than anybody plays through; older ones are forgotten. */
const MOST_ROOMS = 8;

/** The furthest that a delay can be nudged either way. */
const MOST_NUDGE_SECONDS = 0.1;

export interface DevicePair {
  readonly input: string;
  readonly output: string;
}

const isPair = (room: MeasuredRoom, { input, output }: DevicePair): boolean =>
  room.input === input && room.output === output;

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

  /** A new measurement replaces the old one of the same devices, with what was set by ear on top of it. */
  keep(pair: DevicePair, measured: SweepResult, measuredAt: Date): void {
    const { delaySeconds, spreadSeconds, leakDb, removedDb, path } = measured;
    this.#put({
      ...pair,
      measuredAt: measuredAt.toISOString(),
      delaySeconds,
      spreadSeconds,
      leakDb: Number.isFinite(leakDb) ? leakDb : null,
      removedDb,
      path,
      nudgeSeconds: 0,
    });
  }

  /** Shifts the delay of a pair of devices, by ear. */
  nudge(room: MeasuredRoom, seconds: number): void {
    const nudgeSeconds = Math.min(
      MOST_NUDGE_SECONDS,
      Math.max(-MOST_NUDGE_SECONDS, room.nudgeSeconds + seconds),
    );
    this.#put({ ...room, nudgeSeconds });
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
