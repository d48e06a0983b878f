/** Microphones and outputs to choose from, and what is plugged in now. */
import { bad, good, type Outcome } from '../../core/base/outcome.ts';

export interface DeviceChoice {
  readonly deviceId: string;
  /** Its name; empty until a microphone has been opened once. */
  readonly label: string;
}

export async function listDevices(kind: 'audioinput' | 'audiooutput'): Promise<readonly DeviceChoice[]> {
  const devices = (await navigator.mediaDevices?.enumerateDevices()) ?? [];
  return devices
    .filter((device) => device.kind === kind && device.deviceId !== '')
    .map(({ deviceId, label }) => ({ deviceId, label }));
}

/** Whether the player allowed the microphone before, so that opening it asks nothing. */
export async function microphoneAllowed(): Promise<boolean> {
  try {
    // The name is newer than the types of some browsers.
    const asked = await navigator.permissions.query({ name: 'microphone' as PermissionName });
    return asked.state === 'granted';
  } catch {
    return false;
  }
}

/** Calls back when a device is connected or removed. @returns a function that stops this */
export function onDevicesChanged(listener: () => void): () => void {
  navigator.mediaDevices?.addEventListener('devicechange', listener);
  return () => navigator.mediaDevices?.removeEventListener('devicechange', listener);
}

/** A part of the Audio Output Devices API that not every browser has. */
type Steerable = AudioContext & {
  readonly setSinkId?: (id: string) => Promise<void>;
  readonly sinkId?: unknown;
};

export const outputCanBeChosen = (context: AudioContext): boolean => 'setSinkId' in context;

/** @param deviceId null is the system's own choice */
export async function chooseOutput(context: AudioContext, deviceId: string | null): Promise<Outcome<void>> {
  const steerable = context as Steerable;
  if (steerable.setSinkId === undefined) return good(undefined);
  try {
    await steerable.setSinkId(deviceId ?? '');
    return good(undefined);
  } catch {
    return bad('output.removed');
  }
}

/**
 * The name of the output that is used now: the chosen one, or the system's default. A measured room is found again by
 * it; an output without a name is called "Output", which is never shown.
 */
export async function outputName(deviceId: string | null): Promise<string> {
  const outputs = await listDevices('audiooutput');
  const wanted = deviceId ?? 'default';
  return (outputs.find((output) => output.deviceId === wanted) ?? outputs[0])?.label || 'Output';
}
