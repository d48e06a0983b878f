/** A MIDI keyboard in the hands of a test: what Web MIDI (W3C) gives a page, and messages that arrive now. */
import type { Page } from '@playwright/test';

/** To be given as `before`: the page finds one keyboard plugged in. */
export async function withKeyboard(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const input = { name: 'test keys', state: 'connected', onmidimessage: null as unknown };
    const access = {
      inputs: new Map([['1', input]]),
      addEventListener: () => undefined,
      removeEventListener: () => undefined,
    };
    Object.assign(navigator, { requestMIDIAccess: () => Promise.resolve(access) });
    Object.assign(globalThis, {
      send: (...bytes: number[]) =>
        (input.onmidimessage as ((event: unknown) => void) | null)?.({
          data: new Uint8Array(bytes),
          timeStamp: performance.now(),
        }),
    });
  });
}

export const send = (page: Page, ...bytes: number[]): Promise<void> =>
  page.evaluate(
    (message) => (globalThis as unknown as { send: (...b: number[]) => void }).send(...message),
    bytes,
  );

/** Keys one after the other, 300 ms each. */
export async function playKeys(page: Page, keys: readonly number[]): Promise<void> {
  for (const key of keys) {
    await send(page, 0x90, key, 100);
    await page.waitForTimeout(300);
    await send(page, 0x80, key, 0);
  }
}
