/** What a sound check has measured with one pair of devices, and which devices the player has chosen: as it is stored. */
import * as v from 'valibot';

const finite = v.pipe(v.number(), v.finite());

const measuredRoomSchema = v.object({
  /** Names of the devices, as the browser gives them. */
  input: v.string(),
  output: v.string(),
  /** ISO 8601. */
  measuredAt: v.string(),
  /** Round trip; null where nothing came back to measure it by. */
  delaySeconds: v.nullable(finite),
  /** Largest difference between the sweeps. */
  spreadSeconds: finite,
  /** null where nothing comes back. */
  leakDb: v.nullable(finite),
  removedDb: finite,
  /** How the band comes back; null through headphones. */
  path: v.nullable(v.object({ heldBackSamples: finite, taps: v.instance(Float32Array) })),
  /** Set by ear, on top of what was measured; positive where the notes were shown too late. */
  nudgeSeconds: finite,
});
export type MeasuredRoom = Readonly<v.InferOutput<typeof measuredRoomSchema>>;

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
  rooms: v.array(measuredRoomSchema),
};

export const usualDevices: DeviceSettings = { inputId: null, outputId: null, rooms: [] };
