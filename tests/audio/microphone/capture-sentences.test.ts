/** Exception names: W3C Media Capture and Streams, getUserMedia. */
import { describe, expect, it } from 'vitest';
import {
  capturedAsAsked,
  refusalSentence,
  unavailableSentence,
} from '../../../src/audio/microphone/capture-sentences.ts';

describe('capture sentences', () => {
  it('says something of its own for every way getUserMedia fails', () => {
    const names = [
      'NotAllowedError',
      'NotFoundError',
      'NotReadableError',
      'OverconstrainedError',
      'SecurityError',
      'AbortError',
    ];
    expect(new Set([...names, 'SomethingNew'].map(refusalSentence)).size).toBe(7);
  });

  it('explains an insecure page and a browser without microphones', () => {
    expect(unavailableSentence(false, undefined)).toContain('https');
    expect(unavailableSentence(true, undefined)).toContain('browser');
    expect(unavailableSentence(true, {} as MediaDevices)).toBeNull();
  });

  it('warns of processing that stayed on and of telephone sound, and of nothing that is not told', () => {
    expect(capturedAsAsked({})).toEqual([]);
    expect(
      capturedAsAsked({
        echoCancellation: false,
        noiseSuppression: false,
        autoGainControl: false,
        sampleRate: 48_000,
      }),
    ).toEqual([]);
    expect(capturedAsAsked({ echoCancellation: true, autoGainControl: true })[0]).toMatch(
      /echo cancellation and automatic gain/,
    );
    expect(capturedAsAsked({ sampleRate: 16_000 })[0]).toMatch(/telephone/);
  });
});
