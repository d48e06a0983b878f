/** MIDI instruments and foot switches through Web MIDI (W3C): every input there is, those plugged in later too. */
import { bad, good, type Outcome } from '../../core/base/outcome.ts';

export interface MidiEvents {
  /** @param agoSeconds how long ago the device sent it */
  onMessage(message: Uint8Array, agoSeconds: number): void;
  /** Names of what is plugged in, at first and whenever that changes. */
  onInputs(names: readonly string[]): void;
}

export interface MidiInput {
  dispose(): void;
}

/** Whether the player allowed MIDI before, so that opening it asks nothing. */
export async function midiAllowed(): Promise<boolean> {
  try {
    // The name is newer than the types of some browsers.
    const asked = await navigator.permissions.query({ name: 'midi' as PermissionName });
    return asked.state === 'granted';
  } catch {
    return false;
  }
}

/** What this file needs of the browser. */
export interface MidiBrowser {
  requestMIDIAccess?: () => Promise<Pick<MIDIAccess, 'inputs' | 'addEventListener' | 'removeEventListener'>>;
}

/** Asks for MIDI, which the browser may put to the player, and listens to every input. */
export async function openMidi(
  events: MidiEvents,
  browser: MidiBrowser = navigator,
  now: () => number = () => performance.now(),
): Promise<Outcome<MidiInput>> {
  if (browser.requestMIDIAccess === undefined) return bad('midi.unsupported');
  let access;
  try {
    access = await browser.requestMIDIAccess();
  } catch {
    return bad('midi.refused');
  }
  const inputs = () => [...access.inputs.values()].filter(({ state }) => state === 'connected');
  const hear = (event: MIDIMessageEvent) => {
    if (event.data !== null) events.onMessage(event.data, Math.max(0, (now() - event.timeStamp) / 1000));
  };
  let listening: readonly MIDIInput[] = [];
  const look = () => {
    const found = inputs();
    for (const input of listening) if (!found.includes(input)) input.onmidimessage = null;
    for (const input of found) input.onmidimessage = hear;
    listening = found;
    events.onInputs(found.map(({ name }) => name ?? 'MIDI'));
  };
  access.addEventListener('statechange', look);
  look();
  return good({
    dispose: () => {
      access.removeEventListener('statechange', look);
      for (const input of listening) input.onmidimessage = null;
    },
  });
}
