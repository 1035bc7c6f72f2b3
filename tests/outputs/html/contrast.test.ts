import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { PAINTS } from '../../../src/drawing/drawing.ts';

interface Tokens {
  readonly colour: Record<'light' | 'dark' | 'print', Record<string, string>>;
  readonly paint: Record<string, string>;
  readonly textPairs: readonly [string, string][];
  readonly graphicPairs: readonly [string, string][];
  /** A fill with its outline, on the ground: one of the two shows. */
  readonly outlinedPairs: readonly [string, string, string][];
  readonly partedPairs: readonly [string, string, number][];
  readonly darkThings: readonly string[];
  readonly greyPairs: readonly [string, string, number][];
}

const tokens = JSON.parse(readFileSync('shared/tokens.json', 'utf8')) as Tokens;

/** Contrast ratio of two `#rrggbb` colours, 1 to 21 (WCAG 2.2, definitions of contrast ratio and relative luminance). */
function contrast(a: string, b: string): number {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

function luminance(hex: string): number {
  const [r, g, b] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

describe('the arithmetic', () => {
  it.each([
    ['black on white, WCAG 2.2 maximum', '#000000', '#ffffff', 21],
    ['#767676 on white, the palest grey that passes 4.5 (from memory)', '#767676', '#ffffff', 4.54],
    ['#949494 on white, the palest grey that passes 3 (from memory)', '#949494', '#ffffff', 3.03],
  ])('%s', (_, a, b, expected) => {
    expect(contrast(a, b)).toBeCloseTo(expected, 2);
  });
});

describe.each(['light', 'dark', 'print'] as const)('%s', (theme) => {
  const ratio = (a: string, b: string) => contrast(tokens.colour[theme][a]!, tokens.colour[theme][b]!);

  it.each(tokens.textPairs)('text %s on %s: 4.5 or more (WCAG 2.2, 1.4.3)', (a, b) => {
    expect(ratio(a, b)).toBeGreaterThanOrEqual(4.5);
  });

  it.each(tokens.graphicPairs)('drawn %s on %s: 3 or more (WCAG 2.2, 1.4.11)', (a, b) => {
    expect(ratio(a, b)).toBeGreaterThanOrEqual(3);
  });

  it.each(tokens.outlinedPairs)('%s in its outline %s on %s: one of them 3 or more', (fill, line, ground) => {
    expect(Math.max(ratio(fill, ground), ratio(line, ground))).toBeGreaterThanOrEqual(3);
  });

  it.each(tokens.partedPairs)(
    '%s over %s parts by %f or more without an outline (house choice)',
    (a, b, least) => {
      expect(ratio(a, b)).toBeGreaterThanOrEqual(least);
    },
  );

  it.each(tokens.darkThings)('%s is drawn dark', (name) => {
    expect(luminance(tokens.colour[theme][name]!)).toBeLessThan(0.08);
  });
});

describe('print in grey', () => {
  it.each(tokens.greyPairs)('%s beside %s differ by %f or more (house choice)', (a, b, least) => {
    expect(contrast(tokens.colour.print[a]!, tokens.colour.print[b]!)).toBeGreaterThanOrEqual(least);
  });
});

describe('the tokens', () => {
  it('give the same names a colour in every theme', () => {
    const names = Object.keys(tokens.colour.light).sort();
    expect(Object.keys(tokens.colour.dark).sort()).toEqual(names);
    expect(Object.keys(tokens.colour.print).sort()).toEqual(names);
  });

  it('give every paint of a drawing a colour', () => {
    expect(Object.keys(tokens.paint).sort()).toEqual([...PAINTS].sort());
    for (const colour of Object.values(tokens.paint)) expect(tokens.colour.light).toHaveProperty(colour);
  });
});
