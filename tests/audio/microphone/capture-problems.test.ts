/** Exception names: W3C Media Capture and Streams, getUserMedia. */
import { describe, expect, it } from 'vitest';
import { english } from '../../english.ts';
import {
  capturedOtherwise,
  whyRefused,
  whyUnavailable,
} from '../../../src/audio/microphone/capture-problems.ts';

describe('problems of a capture', () => {
  it('has a problem of its own for every error of getUserMedia', () => {
    const names = [
      'NotAllowedError',
      'NotFoundError',
      'NotReadableError',
      'OverconstrainedError',
      'SecurityError',
      'AbortError',
    ];
    expect(new Set([...names, 'SomethingNew'].map((name) => whyRefused(name).code)).size).toBe(7);
  });

  it('explains an insecure page and a browser without microphones', () => {
    expect(whyUnavailable(false, undefined)?.code).toBe('microphone.insecure');
    expect(whyUnavailable(true, undefined)?.code).toBe('microphone.unsupported');
    expect(whyUnavailable(true, {} as MediaDevices)).toBeNull();
  });

  it('warns of processing that stayed on and of telephone sound, and of nothing that is not told', () => {
    expect(capturedOtherwise({})).toEqual([]);
    expect(
      capturedOtherwise({
        echoCancellation: false,
        noiseSuppression: false,
        autoGainControl: false,
        sampleRate: 48_000,
      }),
    ).toEqual([]);
    expect(capturedOtherwise({ echoCancellation: true, autoGainControl: true }).map(english)).toEqual([
      expect.stringMatching(/echo cancellation and automatic gain/),
    ]);
    expect(capturedOtherwise({ sampleRate: 16_000 })).toEqual([{ code: 'microphone.telephone' }]);
  });
});
