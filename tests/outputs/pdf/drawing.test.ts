import { describe, expect, it } from 'vitest';
import { drawScene } from '../../../src/drawing/scene.ts';
import { pathOperators } from '../../../src/outputs/pdf/drawing.ts';
import { otter } from '../../fixtures/programme.ts';
import { leafletOf } from './make.ts';
import { readObjects } from './objects.ts';
import { openPdf, pictureOf } from './viewer.ts';
import { attributesOf, structureOf, walk } from './structure.ts';

describe('paths as PDF operators (ISO 32000-1 table 59)', () => {
  it.each([
    ['M1 2L3 4', '1 2 m 3 4 l'],
    ['M-1.5 2L3 -4 5 6Z', '-1.5 2 m 3 -4 l 5 6 l h'],
    ['M0 0C1 2 3 4 5 6 7 8 9 10 11 12', '0 0 m 1 2 3 4 5 6 c 7 8 9 10 11 12 c'],
  ])('%s', (d, operators) => {
    expect(pathOperators(d)).toBe(operators);
  });

  it('refuses what it cannot draw', () => {
    expect(() => pathOperators('M0 0Q1 1 2 2')).toThrow('path letter Q; only M, L, C and Z are drawn');
  });

  it('can draw every figure of the figure room', () => {
    const scenes = otter.exercises.flatMap(({ figures }) => (figures ? [figures.scene] : []));
    const paths = scenes.flatMap((scene) =>
      drawScene(scene).flatMap(({ shapes }) => shapes.map(({ d }) => d)),
    );
    expect(paths.length).toBeGreaterThan(20);
    for (const d of paths) expect(pathOperators(d)).toMatch(/^[-\d.]+ [-\d.]+ m/);
  });
});

describe('a figure on the page', () => {
  it('has ink in its bounding box, and its box on the page', async () => {
    const bytes = await leafletOf(otter);
    const structure = structureOf(readObjects(bytes));
    const boxes = [...walk(structure.top)]
      .filter(
        ({ role, kids }) => role === 'Figure' && kids.some((kid) => kid.kind === 'content' && kid.page === 0),
      )
      .map((figure) => attributesOf(structure, figure, 'Layout').get('BBox') as number[]);
    expect(boxes).toHaveLength(otter.exercises.length);
    const pdf = await openPdf(bytes);
    const page = await pdf.getPage(1);
    const { width, height } = page.getViewport({ scale: 1 });
    const picture = await pictureOf(pdf, page, 1);
    await pdf.destroy();
    for (const [left, bottom, right, top] of boxes as [number, number, number, number][]) {
      expect(left).toBeGreaterThan(0);
      expect(right).toBeLessThan(width);
      expect(bottom).toBeGreaterThan(0);
      expect(top).toBeLessThan(height);
      let dark = 0;
      for (let y = Math.ceil(height - top); y < height - bottom; y++)
        for (let x = Math.ceil(left); x < right; x++) if (picture.brightness(x, y) < 160) dark++;
      expect(dark).toBeGreaterThan(150);
    }
  });
});
