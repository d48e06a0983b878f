/** Web MIDI (W3C) as far as it is used, faked: inputs that come and go, and a browser that says no. */
import { english } from '../../english.ts';
import { describe, expect, it } from 'vitest';
import { openMidi, type MidiBrowser } from '../../../src/audio/devices/midi-input.ts';

interface FakeInput {
  name: string;
  state: 'connected' | 'disconnected';
  onmidimessage: ((event: { data: Uint8Array; timeStamp: number }) => void) | null;
}
const input = (name: string): FakeInput => ({ name, state: 'connected', onmidimessage: null });

function fakeBrowser(...first: FakeInput[]) {
  const inputs = new Map(first.map((one) => [one.name, one]));
  const listeners = new Set<() => void>();
  const access = {
    inputs,
    addEventListener: (_kind: string, listener: () => void) => listeners.add(listener),
    removeEventListener: (_kind: string, listener: () => void) => listeners.delete(listener),
  };
  const browser = { requestMIDIAccess: () => Promise.resolve(access) } as unknown as MidiBrowser;
  const changed = () => {
    for (const listener of listeners) listener();
  };
  return { browser, inputs, listeners, changed };
}

const heard = () => {
  const messages: [number[], number][] = [];
  const names: string[][] = [];
  return {
    messages,
    names,
    events: {
      onMessage: (message: Uint8Array, ago: number) => void messages.push([[...message], ago]),
      onInputs: (found: readonly string[]) => void names.push([...found]),
    },
  };
};

describe('MIDI input', () => {
  it('hears every input, and says how long ago a message was sent', async () => {
    const [keys, pedal] = [input('keys'), input('pedal')];
    const { browser } = fakeBrowser(keys, pedal);
    const { messages, names, events } = heard();
    expect((await openMidi(events, browser, () => 1005)).ok).toBe(true);
    expect(names).toEqual([['keys', 'pedal']]);
    keys.onmidimessage!({ data: new Uint8Array([0x90, 60, 64]), timeStamp: 1000 });
    pedal.onmidimessage!({ data: new Uint8Array([0xb0, 64, 127]), timeStamp: 1006 });
    expect(messages).toEqual([
      [[0x90, 60, 64], 0.005],
      [[0xb0, 64, 127], 0],
    ]);
  });

  it('listens to inputs that are connected later, and stops listening to those that are removed', async () => {
    const keys = input('keys');
    const { browser, inputs, changed } = fakeBrowser(keys);
    const { names, events } = heard();
    await openMidi(events, browser);
    const late = input('late');
    inputs.set('late', late);
    keys.state = 'disconnected';
    changed();
    expect(names.at(-1)).toEqual(['late']);
    expect(keys.onmidimessage).toBeNull();
    expect(late.onmidimessage).not.toBeNull();
  });

  it('lets go of everything', async () => {
    const keys = input('keys');
    const { browser, listeners } = fakeBrowser(keys);
    const opened = await openMidi(heard().events, browser);
    if (opened.ok) opened.value.dispose();
    expect(keys.onmidimessage).toBeNull();
    expect(listeners.size).toBe(0);
  });

  it('a browser without it, or one that was told no: a sentence', async () => {
    const without = await openMidi(heard().events, {});
    expect(!without.ok && english(without.problem)).toMatch(/no Web MIDI/);
    const refused = await openMidi(heard().events, {
      requestMIDIAccess: () => Promise.reject(new DOMException('', 'SecurityError')),
    });
    expect(!refused.ok && english(refused.problem)).toMatch(/not allowed/);
  });
});
