/** What a sound check has measured with one pair of devices, and which devices the player has chosen: as it is stored. */
import * as v from 'valibot';

const finite = v.pipe(v.number(), v.finite());

/** Names of the devices, as the browser gives them. */
export interface DevicePair {
  readonly input: string;
  readonly output: string;
}

/** As it is stored; the fields with a usual value were not there in earlier versions. */
const storedRoomSchema = v.object({
  /** Names of the devices, as the browser gives them. */
  input: v.string(),
  output: v.string(),
  /** ISO 8601. */
  measuredAt: v.string(),
  /** Round trip; null where nothing came back to measure it by. */
  delaySeconds: v.nullable(finite),
  /** What measured the delay. */
  delayFrom: v.optional(v.picklist(['sweep', 'strokes']), 'sweep'),
  /** Largest difference between the sweeps; of strokes the interquartile range. */
  spreadSeconds: finite,
  /** Strokes that were played with their click; 0 where sweeps measured the delay. */
  strokes: v.optional(finite, 0),
  /** Whether sweeps were played with these devices; without them nothing is known of leak and path. */
  isSwept: v.optional(v.boolean(), true),
  /** null where nothing comes back. */
  leakDb: v.nullable(finite),
  removedDb: finite,
  /** How the band comes back; null through headphones. */
  path: v.nullable(v.object({ heldBackSamples: finite, taps: v.instance(Float32Array) })),
  /** The round trip that the player has set in place of what was measured; null where nothing was set. */
  setSeconds: v.optional(v.nullable(finite), null),
  /** An earlier version kept what was set as a difference from what was measured. */
  nudgeSeconds: v.optional(finite, 0),
});

const measuredRoomSchema = v.pipe(
  storedRoomSchema,
  v.transform(({ nudgeSeconds, ...room }) =>
    nudgeSeconds === 0 || room.delaySeconds === null
      ? room
      : { ...room, setSeconds: Math.max(0, room.delaySeconds + nudgeSeconds) },
  ),
);
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
