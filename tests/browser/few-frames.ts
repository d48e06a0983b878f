/**
 * A slower display. Drawing takes three quarters of the processor's time that a take in the browser takes where there is no
 * graphics card, and tests of what is on the screen need none of it: they get 10 frames a second in place of 60. The
 * tests of the other projects (`playwright.config.ts`) count frames or hold sound against what is shown, and have them all.
 */
import type { BrowserContext } from '@playwright/test';

const SLOWER_MS = 1000 / 10;

/** Holds for every page of the browser that is opened from now on. Playwright's own frames stay as they are. */
export async function fewFrames(context: BrowserContext): Promise<void> {
  await context.addInitScript((slowerMs) => {
    const nextFrame = globalThis.requestAnimationFrame.bind(globalThis);
    const waiting = new Map<number, FrameRequestCallback>();
    let lastId = 0;
    let isAsked = false;
    const frame = (now: number) => {
      isAsked = false;
      // What is asked for while these are called waits for the next frame.
      for (const id of [...waiting.keys()]) {
        const draw = waiting.get(id);
        waiting.delete(id);
        draw?.(now);
      }
    };
    globalThis.requestAnimationFrame = (draw) => {
      if (!isAsked) setTimeout(() => nextFrame(frame), slowerMs - 1000 / 60);
      isAsked = true;
      waiting.set(++lastId, draw);
      return lastId;
    };
    globalThis.cancelAnimationFrame = (id) => void waiting.delete(id);
  }, SLOWER_MS);
}
