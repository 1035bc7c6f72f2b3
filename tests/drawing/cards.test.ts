/** Every card's figure, posed or only drawn, from the side, the front or above: what must hold of all of them. */
import { describe, expect, it } from 'vitest';
import { drawScene } from '../../src/drawing/scene.ts';
import { svgOf } from '../../src/drawing/svg.ts';
import { modelOf } from '../../src/decisions/person/model.ts';
import { pictureFor } from '../../src/decisions/candidates/scene.ts';
import { shipped } from '../programme/shipped.ts';
import { BODY, boundsOf, floorY, shapesOf } from './scenes.ts';

const model = modelOf(BODY);
const cards = [...shipped.exercises.values()].map((card) => {
  const scene = pictureFor(card, null, null, model, 'right')?.scene ?? null;
  return { id: card.id, card, scene };
});
const BODY_PAINTS = ['workLeg', 'body', 'arm', 'otherLegLine', 'hair', 'ghost'] as const;
// Both legs work, one after the other: each picture shows the one that is nearer.
const ALTERNATES = ['strides'];

describe.each(cards)('$id', ({ card, scene }) => {
  if (scene === null) throw new Error('a card without a figure');
  const drawings = drawScene(scene);

  it('has a drawing a frame, of one size, all within it', () => {
    expect(drawings).toHaveLength(scene.frames.length);
    for (const { shapes, viewBox } of drawings) {
      expect(viewBox).toEqual(drawings[0]!.viewBox);
      const box = boundsOf(shapes);
      expect(Math.min(box.left, box.top)).toBeGreaterThanOrEqual(-1);
      expect(box.right).toBeLessThanOrEqual(viewBox.width + 1);
      expect(box.bottom).toBeLessThanOrEqual(viewBox.height + 1);
    }
  });

  it('lets nothing of the body sink into the floor', () => {
    if (scene.view === 'above') return;
    for (const drawing of drawings)
      expect(boundsOf(shapesOf(drawing, ...BODY_PAINTS)).bottom).toBeLessThanOrEqual(floorY(drawing) + 2);
  });

  it('draws the working leg solid, and is small', () => {
    for (const drawing of drawings) {
      expect(shapesOf(drawing, 'workLeg').length).toBe(
        card.legs === 'together' && !ALTERNATES.includes(card.id) ? 2 : 1,
      );
      expect(svgOf(drawing, null).length).toBeLessThan(7000);
    }
  });

  it('is turned about for the left side', () => {
    const left = pictureFor(card, null, null, model, 'left')!.scene;
    if (scene.side === 'both') expect(drawScene(left)).toEqual(drawings);
    else expect(drawScene(left)[0]!.viewBox).toEqual(drawings[0]!.viewBox);
  });
});

describe('a picture that is only drawn', () => {
  const drawn = cards.filter(({ card }) => card.movement === null);

  it('prints no angle and gives no estimate', () => {
    expect(drawn.length).toBeGreaterThan(20);
    for (const { scene } of drawn) expect(drawScene(scene!).flatMap(({ labels }) => labels)).toEqual([]);
  });

  it('keeps the proportions of the person', () => {
    const tall = modelOf({ massKg: 80, heightM: 1.95 });
    const small = modelOf({ massKg: 50, heightM: 1.55 });
    const card = shipped.exercises.get('side-step')!;
    const heightOf = (of: typeof tall) =>
      drawScene(pictureFor(card, null, null, of, 'right')!.scene)[0]!.viewBox.height;
    expect(heightOf(tall) / heightOf(small)).toBeCloseTo(1.95 / 1.55, 1);
  });

  it('tells a hop step by step: on the ground, off it, on it again', () => {
    const [off, flight, landing] = drawScene(cards.find(({ id }) => id === 'pogo-hops')!.scene!);
    const gap = (drawing: typeof off) => floorY(drawing!) - boundsOf(shapesOf(drawing!, 'workLeg')).bottom;
    expect(gap(off)).toBeLessThan(3);
    expect(gap(flight)).toBeGreaterThan(70);
    expect(gap(landing)).toBeLessThan(3);
  });
});
