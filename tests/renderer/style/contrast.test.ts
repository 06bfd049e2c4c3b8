// Holds the text colours of both themes to WCAG 2.2 AA: 4.5 to 1 for text (success criterion 1.4.3), 3 to 1
// for the edges of fields and the marks of drawings (1.4.11). Formula of relative luminance: WCAG 2.2, glossary.
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

const css = readFileSync(new URL('../../../renderer/style/tokens.css', import.meta.url), 'utf8');

function tokens(selector: string): ReadonlyMap<string, string> {
  const start = css.indexOf(`${selector} {`);
  const block = css.slice(start, css.indexOf('}', start));
  return new Map(
    [...block.matchAll(/--([a-z-]+): (#[0-9a-f]{6});/gu)].map((found) => [found[1]!, found[2]!]),
  );
}

const themes = { light: tokens(':root'), dark: tokens(":root[data-theme='dark']") };

function luminance(hex: string): number {
  const channel = (at: number): number => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return 0.2126 * channel(1) + 0.7152 * channel(3) + 0.0722 * channel(5);
}

function contrast(one: string, other: string): number {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a);
  return (light! + 0.05) / (dark! + 0.05);
}

const grounds = ['paper', 'sheet', 'shade', 'accent-tint'];
const texts = ['ink', 'ink-soft', 'accent', 'short', 'caution'];
const pairs: readonly (readonly [string, string, number])[] = [
  ...grounds.flatMap((ground) => texts.map((text) => [text, ground, 4.5] as const)),
  ['ink-faint', 'paper', 4.5],
  ['ink-faint', 'sheet', 4.5],
  ['ink-faint', 'shade', 4.5],
  ['on-accent', 'accent', 4.5],
  ['on-short', 'short', 4.5],
  ['on-mark', 'mark', 4.5],
  ['short', 'short-tint', 4.5],
  ['caution', 'caution-tint', 4.5],
  ['ink', 'short-tint', 4.5],
  ['ink', 'caution-tint', 4.5],
  ['edge', 'paper', 3],
  ['edge', 'sheet', 3],
  ['mark', 'paper', 3],
  ['accent', 'paper', 3],
];

test('the formula gives 21 to 1 for black on white, as WCAG says', () => {
  expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
});

describe.each(['light', 'dark'] as const)('%s theme', (theme) => {
  test('has a colour for every name of the other theme', () => {
    expect([...themes[theme].keys()].sort()).toEqual([...themes.light.keys()].sort());
    expect(themes[theme].size).toBeGreaterThan(15);
  });

  test.each(pairs)('%s on %s is at least %d to 1', (text, ground, least) => {
    expect(contrast(themes[theme].get(text)!, themes[theme].get(ground)!)).toBeGreaterThanOrEqual(least);
  });
});
