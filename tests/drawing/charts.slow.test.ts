import { readFileSync } from 'node:fs';
import { create } from 'fontkit';
import { describe, expect, it } from 'vitest';
import { flagsOf, widthOf, wrapped } from '../../src/drawing/charts/shapes.ts';
import { compressionLadder, type Ladder } from '../../src/drawing/charts/compressionLadder.ts';
import { rangeRuler, type Ruler } from '../../src/drawing/charts/rangeRuler.ts';
import { squeezeChart, type Squeeze } from '../../src/drawing/charts/squeezeChart.ts';
import type { Drawing, Label } from '../../src/drawing/drawing.ts';
import { captionHalf } from '../../src/drawing/strokes.ts';
import { boundsOf, shapesOf, touches, type Box } from './scenes.ts';

// The house's own faces are the judge of every width that the pure room only estimates.
const face = (name: string) => create(readFileSync(new URL(`../../shared/fonts/${name}`, import.meta.url)));
const FACES = {
  regular: face('AtkinsonHyperlegibleNext_400Regular.ttf'),
  bold: face('AtkinsonHyperlegibleNext_700Bold.ttf'),
};
const measured = (text: string, size: number, weight: keyof typeof FACES) =>
  (FACES[weight].layout(text).advanceWidth / FACES[weight].unitsPerEm) * size;

function boxOf({ text, x, y, anchor, size, weight }: Label): Box {
  const width = measured(text, size, weight);
  const left = anchor === 'start' ? x : anchor === 'end' ? x - width : x - width / 2;
  return { left, right: left + width, top: y - 0.67 * size, bottom: y };
}

const apart = (a: Box, b: Box) =>
  a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;

function overlaps({ labels }: Drawing): readonly string[] {
  return labels.flatMap((one, i) =>
    labels
      .slice(i + 1)
      .filter((two) => !apart(boxOf(one), boxOf(two)))
      .map((two) => `${one.text} × ${two.text}`),
  );
}

function outside({ labels, viewBox }: Drawing): readonly string[] {
  return labels
    .filter((label) => {
      const box = boxOf(label);
      return box.left < 0 || box.top < 0 || box.right > viewBox.width || box.bottom > viewBox.height;
    })
    .map(({ text }) => text);
}

const STAGES = ['Hold', 'Slow, hip nearly straight', 'Slow, more hip bend', 'Slow, deep bend'];
const TICKS = [30, 45, 60, 90].map((capDeg, index) => ({ stage: STAGES[index]!, capDeg }));
// Rows of mechanics.md section 11: peak compression in body weights.
const CARDS: readonly (readonly [string, number, number])[] = [
  ['Prone hip extension (straight leg)', 0, 1],
  ['Prone leg-curl hold 30 deg, 5 kg', 0, 1],
  ['Long-lever bridge hold (hip 5)', 0.05, 2],
  ['Step-up 20 cm', 0.23, 3],
  ['Single-leg bridge, top range 20-0', 0.27, 3],
  ['RDL 20 kg to 45 deg hip', 0.56, 4],
  ['Double-leg bridge, from the floor', 0.56, 4],
  ['Split squat', 1.12, 5],
  ['Hip thrust 40 kg (bench 0.40 m)', 1.62, 6],
  ['RDL 40 kg to 90 deg hip', 3.39, 7],
];
const ladder: Ladder = {
  rungs: CARDS.map(([title, compressionBw, bracket], index) => ({
    title,
    compressionBw,
    bracket,
    prescribed: index % 4 === 2,
  })),
  caps: [0.35, 0.8, 2].map((compressionBw, index) => ({ stage: STAGES[index]!, compressionBw })),
};

describe('widths', () => {
  it.each([
    'Romanian deadlift with two dumbbells',
    'MAXIMUM WIDTH @ 100 %',
    'Slow, hip nearly straight 45°',
    '0.56',
    'ÄÖÜ façade',
  ])('are never estimated under what the bold face needs: %s', (text) =>
    expect(widthOf(text, 10)).toBeGreaterThanOrEqual(measured(text, 10, 'bold')),
  );

  it('hold every degree a hip can have', () => {
    for (let deg = -30; deg <= 140; deg += 1) {
      const text = `${deg < 0 ? '−' : ''}${Math.abs(deg)}°`;
      const { x } = captionHalf({ text, centre: { x: 0, y: 0 }, sizeM: 1, paint: 'arc' });
      expect(2 * x).toBeGreaterThanOrEqual(measured(text, 1, 'bold'));
    }
  });

  it('wrap without losing a letter, long words included', () => {
    const text = 'Single-leg deadlift with Donaudampfschifffahrtsgesellschaft';
    const lines = wrapped(text, 200, 28);
    expect(lines.join('').replaceAll(' ', '')).toBe(text.replaceAll(' ', ''));
    expect(lines.every((line) => widthOf(line, 28) <= 200)).toBe(true);
  });

  it('fly flags without a pole through words to its right', () => {
    const flags = flagsOf(
      [10, 60, 110, 500].map((x) => ({ x, text: 'Slow, hip nearly straight' })),
      900,
      20,
    );
    for (const flag of flags) {
      const crossed = flags.filter(({ x, row }) => x > flag.x && x < flag.x + flag.length && row >= flag.row);
      expect(crossed).toEqual([]);
    }
  });
});

describe('range ruler', () => {
  const rulers: Record<string, Ruler> = {
    'a range': { fromDeg: 5, toDeg: 45, ticks: TICKS },
    'a hold': { fromDeg: 5, toDeg: 5, ticks: TICKS.slice(0, 1) },
    'into extension': { fromDeg: -10, toDeg: 0, ticks: [] },
    'the gentle way round': { fromDeg: 20, toDeg: 0, ticks: TICKS },
    'beyond the scale': { fromDeg: 0, toDeg: 130, ticks: TICKS },
  };

  it.each(Object.entries(rulers))('%s: no word over another, none cut off, at 60 and 120 mm', (_, ruler) => {
    for (const width of [60, 120]) {
      const drawing = rangeRuler(ruler, width);
      expect(overlaps(drawing)).toEqual([]);
      expect(outside(drawing)).toEqual([]);
    }
  });

  it('fills from the one angle to the other on an even scale of 0 to 120°', () => {
    const drawing = rangeRuler({ fromDeg: 30, toDeg: 60, ticks: [{ stage: 'x', capDeg: 90 }] }, 100);
    const scale = boundsOf(drawing.shapes.filter(({ fill }) => fill === 'propFill'));
    const part = boundsOf(shapesOf(drawing, 'workLeg'));
    const tick = boundsOf(drawing.shapes.filter(({ stroke }) => stroke === 'ink'));
    const share = (x: number) => (x - scale.left) / (scale.right - scale.left);
    expect(share(part.left)).toBeCloseTo(30 / 120, 2);
    expect(share(part.right)).toBeCloseTo(60 / 120, 2);
    expect(share(tick.left)).toBeCloseTo(90 / 120, 2);
  });

  it('names the present range in bold', () => {
    const bold = rangeRuler(rulers['a range']!, 100).labels.filter(({ weight }) => weight === 'bold');
    expect(bold.map(({ text }) => text)).toEqual(['5°', '45°']);
  });
});

describe('compression ladder', () => {
  const drawing = compressionLadder(ladder, 130);

  it('has no word over another and none cut off, narrow and wide', () => {
    for (const width of [90, 130, 174]) {
      expect(overlaps(compressionLadder(ladder, width))).toEqual([]);
      expect(outside(compressionLadder(ladder, width))).toEqual([]);
    }
  });

  it('keeps words off the lines of the caps', () => {
    const caps = drawing.shapes.filter(({ stroke }) => stroke === 'arc');
    const struck = drawing.labels
      .filter(({ paint }) => paint !== 'arc')
      .filter((label) => caps.some((line) => touches(line, boxOf(label))));
    expect(struck.map(({ text }) => text)).toEqual([]);
  });

  it('draws bars in proportion to the squeeze, in its order', () => {
    const shuffled = compressionLadder({ ...ladder, rungs: ladder.rungs.toReversed() }, 130);
    expect(shuffled.labels.map(({ text }) => text).includes('3.39')).toBe(true);
    const bars = drawing.shapes.filter(
      ({ fill, d }) => (fill === 'propFill' || fill === 'workLeg') && d.match(/L/g)?.length === 3,
    );
    const lengths = bars.map((shape) => boundsOf([shape]).right - boundsOf([shape]).left);
    expect(lengths).toHaveLength(CARDS.length);
    expect(lengths).toEqual(lengths.toSorted((a, b) => a - b));
    expect(lengths[7]! / lengths[9]!).toBeCloseTo(1.12 / 3.39, 2);
  });

  it('brackets only what has a neighbour in its bracket', () => {
    const brackets = drawing.shapes.filter(({ stroke, fill }) => stroke === 'ink' && fill === null);
    expect(brackets).toHaveLength(3);
  });

  it('marks prescribed cards by letter and shape, not by colour alone', () => {
    const bold = drawing.labels.filter(({ weight, paint }) => weight === 'bold' && paint === 'ink');
    expect(bold.map(({ text }) => text).join(' ')).toContain('Long-lever bridge hold');
    expect(drawing.shapes.filter(({ fill, stroke }) => fill === 'workLeg' && stroke === null)).toHaveLength(
      2 * 2,
    );
  });

  it('holds forty rungs at 8 point', () => {
    const many = Array.from({ length: 40 }, (_, index) => ({
      title: `Card number ${index} with a name of some length`,
      compressionBw: index / 15,
      prescribed: index === 7,
      bracket: index,
    }));
    const tall = compressionLadder({ rungs: many, caps: ladder.caps }, 174);
    expect(overlaps(tall)).toEqual([]);
    expect(Math.min(...tall.labels.map(({ size }) => size))).toBeGreaterThanOrEqual(24.6);
  });

  it('stands empty without rungs', () => {
    expect(compressionLadder({ rungs: [], caps: [] }, 100).labels).toEqual([]);
  });
});

describe('squeeze chart', () => {
  const samples = Array.from({ length: 21 }, (_, index) => ({
    hipFlexionDeg: 5 + index * 3,
    compressionBw: (1.5 * index ** 2) / 400,
  }));
  const squeeze: Squeeze = {
    samples,
    capBw: 0.8,
    across: 'Hip bend',
    up: 'Squeeze, body weights',
    cap: 'Stage 2',
  };

  it('has no word over another and none cut off', () => {
    for (const width of [60, 110]) {
      expect(overlaps(squeezeChart(squeeze, width))).toEqual([]);
      expect(outside(squeezeChart(squeeze, width))).toEqual([]);
    }
  });

  it('draws the curve up to its peak, where the dot sits', () => {
    const drawing = squeezeChart(squeeze, 100);
    const [line, dot] = shapesOf(drawing, 'workLeg');
    const [a, b] = [boundsOf([line!]), boundsOf([dot!])];
    expect(Math.abs((b.left + b.right) / 2 - a.right)).toBeLessThan(2);
    expect(Math.abs((b.top + b.bottom) / 2 - a.top)).toBeLessThan(2);
  });

  it('leaves the cap out where there is none, and bears an empty movement', () => {
    expect(shapesOf(squeezeChart({ ...squeeze, capBw: null }, 100), 'arc')).toEqual([]);
    expect(shapesOf(squeezeChart({ ...squeeze, samples: [] }, 100), 'workLeg')).toEqual([]);
  });
});
