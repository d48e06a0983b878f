/**
 * The palette's contrast, by the formula of WCAG 2.2 (relative luminance and contrast ratio,
 * https://www.w3.org/TR/WCAG22/#dfn-contrast-ratio). 1.4.3 asks 4.5 for text, 1.4.11 asks 3 for marks and edges.
 */
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';

const css = readFileSync(fileURLToPath(new URL('../../src/ui/tokens.css', import.meta.url)), 'utf8');

/** Every colour of the palette, as `--name: light-dark(day, night)`. */
const palette = [...css.matchAll(/--([\w-]+):\s*light-dark\((#[0-9a-f]{6}), (#[0-9a-f]{6})\);/g)];
const themes = {
  day: Object.fromEntries(palette.map(([, name, day]) => [name!, day!])),
  night: Object.fromEntries(palette.map(([, name, , night]) => [name!, night!])),
};

function luminance(hex: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const channel = parseInt(hex.slice(at, at + 2), 16) / 255;
    return channel <= 0.04045 ? channel / 12.92 : ((channel + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red! + 0.7152 * green! + 0.0722 * blue!;
}

function contrast(a: string, b: string): number {
  const [light, dark] = [luminance(a), luminance(b)].sort((x, y) => y - x);
  return (light! + 0.05) / (dark! + 0.05);
}

const AS_TEXT = [
  ['ink', 'paper'],
  ['ink', 'paper-deep'],
  ['ink', 'lamp'],
  ['ink-soft', 'lamp'],
  ['accent', 'lamp'],
  ['ink', 'accent-wash'],
  ['ink-soft', 'paper'],
  ['ink-soft', 'paper-deep'],
  ['accent', 'paper'],
  ['accent', 'accent-wash'],
  ['on-accent', 'accent'],
] as const;
const AS_MARK = [
  ['edge', 'paper'],
  ['edge', 'paper-deep'],
  ['edge', 'lamp'],
  ['accent', 'paper-deep'],
] as const;

describe.each(Object.entries(themes))('the palette by %s', (_name, colours) => {
  it.each(AS_TEXT)('carries text: %s on %s', (front, back) => {
    expect(contrast(colours[front]!, colours[back]!)).toBeGreaterThanOrEqual(4.5);
  });
  it.each(AS_MARK)('carries marks: %s on %s', (front, back) => {
    expect(contrast(colours[front]!, colours[back]!)).toBeGreaterThanOrEqual(3);
  });
});

describe('the contrast formula', () => {
  it('gives the ratios that the standard names: 21 for black on white, 1 for a colour on itself', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(contrast('#2637c4', '#2637c4')).toBe(1);
  });
});

it('writes each colour once, by day and by night', () => {
  const names = palette.map(([, name]) => name);
  expect(names).toHaveLength(10);
  expect(new Set(names).size).toBe(names.length);
});

it('writes the measured figures into the README', () => {
  const readme = readFileSync(fileURLToPath(new URL('../../src/ui/README.md', import.meta.url)), 'utf8');
  for (const [front, back] of AS_TEXT) {
    const figures = [themes.day, themes.night].map((theme) =>
      contrast(theme[front]!, theme[back]!).toFixed(1),
    );
    expect(readme).toContain(`| \`${front}\` on \`${back}\` | ${figures[0]} | ${figures[1]} |`);
  }
});
