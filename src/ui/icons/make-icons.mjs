/**
 * Draws the icons of the installed app from ../icon.svg with a Chromium. Run after changing that file:
 * CHROME_PATH=chromium node src/ui/icons/make-icons.mjs
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));

/** `--paper` of tokens.css by day; `share` is how much of the edge the sign takes. */
const PAPER = '#f1ecdf';
const ICONS = [
  { name: 'landfall-192.png', pixels: 192, share: 0.86 },
  { name: 'landfall-512.png', pixels: 512, share: 0.86 },
  { name: 'landfall-maskable-512.png', pixels: 512, share: 0.6 },
  { name: 'landfall-180.png', pixels: 180, share: 0.8 },
];

const sign = readFileSync(here('../icon.svg'), 'utf8');
const browser = await chromium.launch({
  executablePath: process.env.CHROME_PATH ?? '/usr/bin/chromium',
  args: ['--no-sandbox', '--disable-gpu'],
});
const page = await browser.newPage({ colorScheme: 'light' });
for (const { name, pixels, share } of ICONS) {
  await page.setViewportSize({ width: pixels, height: pixels });
  await page.setContent(
    `<style>body{margin:0;height:100vh;display:grid;place-items:center;background:${PAPER}}svg{width:${100 * share}%}</style>${sign}`,
  );
  await page.screenshot({ path: here(name) });
}
await browser.close();
