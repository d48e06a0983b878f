/** What a sound check has measured, kept for each pair of devices. */
import * as v from 'valibot';
import type { SweepResult } from '../core/room/check/sound-check.ts';

const finite = v.pipe(v.number(), v.finite());

const knownRoomSchema = v.object({
  /** Names of the devices, as the browser gives them. */
  input: v.string(),
  output: v.string(),
  /** ISO 8601. */
  measuredAt: v.string(),
  /** Round trip; null where nothing came back to measure it by. */
  delaySeconds: v.nullable(finite),
  spreadSeconds: finite,
  /** null where nothing comes back. */
  leakDb: v.nullable(finite),
  removedDb: finite,
  /** How the band comes back; null through headphones. */
  path: v.nullable(v.object({ heldBackSamples: finite, taps: v.instance(Float32Array) })),
  /** Set by ear, on top of what was measured; positive where the notes were heard too early. */
  nudgeSeconds: finite,
});
export type MeasuredRoom = Readonly<v.InferOutput<typeof knownRoomSchema>>;

export interface DeviceSettings {
  /** null is the system's own choice. */
  readonly inputId: string | null;
  readonly outputId: string | null;
  /** The newest first. */
  readonly rooms: readonly MeasuredRoom[];
}

export const deviceFields: {
  readonly [K in keyof DeviceSettings]: v.GenericSchema<unknown, DeviceSettings[K]>;
} = {
  inputId: v.nullable(v.string()),
  outputId: v.nullable(v.string()),
  rooms: v.array(knownRoomSchema),
};

export const usualDevices: DeviceSettings = { inputId: null, outputId: null, rooms: [] };

/** Older ones are forgotten: nobody plays through more pairs of devices. */
const MOST_ROOMS = 8;

/** The furthest that a delay can be nudged either way. */
export const MOST_NUDGE_SECONDS = 0.1;

export const findRoom = (
  rooms: readonly MeasuredRoom[],
  input: string,
  output: string,
): MeasuredRoom | null => rooms.find((room) => room.input === input && room.output === output) ?? null;

/** The list with this room in front, in place of what was known of its pair. */
export const withRoom = (rooms: readonly MeasuredRoom[], room: MeasuredRoom): readonly MeasuredRoom[] =>
  [room, ...rooms.filter(({ input, output }) => input !== room.input || output !== room.output)].slice(
    0,
    MOST_ROOMS,
  );

/** A fresh measurement; what was set by ear belonged to the old one. */
export const measuredRoom = (
  measured: SweepResult,
  pair: { readonly input: string; readonly output: string },
  measuredAt: Date,
): MeasuredRoom => ({
  ...pair,
  measuredAt: measuredAt.toISOString(),
  delaySeconds: measured.delaySeconds,
  spreadSeconds: measured.spreadSeconds,
  leakDb: Number.isFinite(measured.leakDb) ? measured.leakDb : null,
  removedDb: measured.removedDb,
  path: measured.path,
  nudgeSeconds: 0,
});

/** Round trip of a room, what was set by ear included; null where nobody could measure it. */
export const roundTripOf = ({ delaySeconds, nudgeSeconds }: MeasuredRoom): number | null =>
  delaySeconds === null ? null : Math.max(0, delaySeconds + nudgeSeconds);
