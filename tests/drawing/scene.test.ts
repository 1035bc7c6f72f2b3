import PDFDocument from 'pdfkit';
import { describe, expect, it } from 'vitest';
import type { Drawing } from '../../src/drawing/drawing.ts';
import { drawScene } from '../../src/drawing/scene.ts';
import { svgOf } from '../../src/drawing/svg.ts';
import type { SideScene } from '../../src/mechanics/scene.ts';
import { cards } from '../published/exercise-cards.ts';
import { boundsOf, flattened, floorY, sceneFrom, sceneOf, shapesOf, touches, type Box } from './scenes.ts';

const BODY_PAINTS = ['workLeg', 'body', 'arm', 'otherLegLine', 'hair', 'weight', 'ghost'] as const;
const SETTINGS: Record<string, Partial<SideScene>> = {
  bridge: { props: ['mat'] },
  thrust: { props: ['bench'], weight: { kind: 'bar', at: 'pelvisFront', kg: 40 } },
  'Step-up': { props: ['step'] },
  Squat: { props: ['chair'] },
  Sitting: { props: ['chair'] },
  table: { props: ['chair', 'table'] },
  Nordic: { props: ['strap', 'mat'] },
};

const scenes = cards.map(({ name, movement, loadKg }) => {
  const setting = Object.entries(SETTINGS).reduce(
    (all, [word, more]) => (name.includes(word) ? { ...all, ...more } : all),
    {},
  );
  return { name, scene: sceneFrom(movement, loadKg, setting) };
});

function labelBox({ labels }: Drawing): Box {
  const [label] = labels;
  // 0.6 of the size a digit, 0.39 the degree sign, 0.67 the height of digits: read from the house's bold face.
  const half = ([...label!.text].length * 0.6 * label!.size) / 2;
  return {
    left: label!.x - half,
    right: label!.x + half,
    top: label!.y - 0.67 * label!.size,
    bottom: label!.y,
  };
}

describe.each(scenes)('$name', ({ scene }) => {
  const drawings = drawScene(scene);

  it('gives one drawing a frame, of one size, with one floor', () => {
    expect(drawings).toHaveLength(scene.frames.length);
    expect(new Set(drawings.map(({ viewBox }) => JSON.stringify(viewBox))).size).toBe(1);
    expect(new Set(drawings.map(floorY)).size).toBe(1);
  });

  it('writes whole numbers with M, L, C and Z only, all within the view box', () => {
    for (const { shapes, viewBox } of drawings) {
      for (const { d, width } of shapes) {
        expect(d).toMatch(/^M-?\d+ -?\d+([LC ]-?\d+( -?\d+)*|M-?\d+ -?\d+|Z)*$/);
        const box = boundsOf([{ d, fill: null, stroke: null, width, dash: null, cap: 'round' }]);
        expect(box.left - width / 2).toBeGreaterThanOrEqual(-1);
        expect(box.top - width / 2).toBeGreaterThanOrEqual(-1);
        expect(box.right + width / 2).toBeLessThanOrEqual(viewBox.width + 1);
        expect(box.bottom + width / 2).toBeLessThanOrEqual(viewBox.height + 1);
      }
    }
  });

  it('lets nothing of the body sink into the floor, nor into the mat on it', () => {
    for (const drawing of drawings) {
      const mat = scene.props.includes('mat') ? 30 : 0;
      for (const shape of shapesOf(drawing, ...BODY_PAINTS)) {
        if (scene.props.includes('strap') && shape.fill === null && shape.stroke === 'weight') continue;
        const ink = shape.stroke === 'ghost' ? shape.width / 2 : 0;
        expect(boundsOf([shape]).bottom + ink).toBeLessThanOrEqual(floorY(drawing) - mat + 2);
      }
    }
  });

  it('stands, lies or kneels on something: the body reaches the floor or a prop', () => {
    for (const drawing of drawings) {
      const lowest = boundsOf(shapesOf(drawing, 'workLeg', 'body', 'otherLegLine')).bottom;
      const support = boundsOf([...shapesOf(drawing, 'floor', 'prop')]).bottom;
      expect(support - lowest).toBeLessThan(scene.props.includes('step') ? 450 : 50);
    }
  });

  it('keeps the degrees clear of arc, body, weight, props and arrow', () => {
    for (const drawing of drawings) {
      const box = labelBox(drawing);
      const ink = drawing.shapes.filter(({ fill, stroke }) => stroke !== 'ghost' && fill !== 'ghost');
      expect(ink.filter((shape) => touches(shape, box)).map(({ fill, stroke }) => [fill, stroke])).toEqual(
        [],
      );
    }
  });

  it('survives 45 mm: lines of 0.2 mm and more, degrees of 6 point and more', () => {
    for (const { viewBox, shapes, labels } of drawings) {
      const scale = 45 / Math.max(viewBox.width, viewBox.height);
      const lines = shapes.filter(({ stroke }) => stroke !== null && stroke !== 'paperWhite');
      expect(Math.min(...lines.map(({ width }) => width)) * scale).toBeGreaterThan(0.2);
      expect(((labels[0]?.size ?? 0) * scale * 72) / 25.4).toBeGreaterThan(6);
    }
  });

  it('stays small: at most 4 kB of path text a picture', () => {
    for (const { shapes } of drawings)
      expect(shapes.reduce((sum, { d }) => sum + d.length, 0)).toBeLessThan(4096);
  });

  it('comes out byte for byte the same again', () => {
    expect(drawScene(structuredClone(scene)).map((drawing) => svgOf(drawing, 'x'))).toEqual(
      drawings.map((drawing) => svgOf(drawing, 'x')),
    );
  });
});

describe('what a picture says', () => {
  const [start, end] = drawScene(sceneOf('Single-leg deadlift 10 kg to 80 deg'));

  it('draws the working leg solid and the other with a line round it', () => {
    expect(shapesOf(start!, 'workLeg')).toHaveLength(1);
    expect(
      start!.shapes.filter(({ fill, stroke }) => fill === 'paperWhite' && stroke === 'otherLegLine'),
    ).toHaveLength(1);
    const [squat] = drawScene(sceneOf('Squat to 60 deg hip'));
    expect(shapesOf(squat!, 'workLeg')).toHaveLength(2);
  });

  it('shows ghost and arrow in the end picture only', () => {
    expect(shapesOf(start!, 'ghost', 'arrow')).toEqual([]);
    expect(shapesOf(end!, 'ghost').length).toBeGreaterThan(3);
    expect(shapesOf(end!, 'arrow')).toHaveLength(2);
    const [hold] = drawScene(sceneOf('Long-lever bridge hold (hip 5)'));
    expect(shapesOf(hold!, 'ghost', 'arrow')).toEqual([]);
  });

  it('prints the degrees as they are given, with a true minus', () => {
    expect([start, end].map((drawing) => drawing!.labels[0]?.text)).toEqual(['5°', '80°']);
    const lift = drawScene(sceneOf('Prone hip extension (straight leg)'));
    expect(lift[1]?.labels[0]?.text).toBe('−10°');
  });

  it('turns a left side about, so that the working leg is nearest in both', () => {
    const right = drawScene(sceneOf('Split squat'));
    const left = drawScene(sceneOf('Split squat', { side: 'left' }));
    const width = right[0]!.viewBox.width;
    expect(left[0]!.viewBox).toEqual(right[0]!.viewBox);
    const [solid] = shapesOf(right[0]!, 'workLeg');
    const [turned] = shapesOf(left[0]!, 'workLeg');
    const [a, b] = [boundsOf([solid!]), boundsOf([turned!])];
    expect(Math.abs(a.left + b.right - width)).toBeLessThanOrEqual(2);
    expect(a.top).toBe(b.top);
  });

  it('looks the way the toes point', () => {
    const [standing] = drawScene(sceneOf('RDL 20 kg to 45 deg hip'));
    const face = standing!.shapes.find(({ fill, stroke }) => fill === 'body' && stroke === 'paperWhite');
    const hair = standing!.shapes.find(({ fill }) => fill === 'hair');
    expect(boundsOf([face!]).right).toBeGreaterThan(boundsOf([hair!]).right);
    expect(boundsOf([hair!]).left).toBeLessThan(boundsOf([face!]).left);
  });

  it('differs between stage 1 and stage 3 of one card, because the range does', () => {
    const at = (hip: number) => {
      const scene = sceneOf('RDL 20 kg to 70 deg hip');
      const { movement } = cards.find(({ name }) => name === 'RDL 20 kg to 70 deg hip')!;
      const posed = sceneFrom(
        { ...movement, end: { ...movement.end!, work: { ...movement.end!.work, hip } } },
        20,
      );
      return drawScene({ ...scene, frames: posed.frames });
    };
    expect(svgOf(at(30)[1]!, null)).not.toBe(svgOf(at(70)[1]!, null));
    const lean = (drawing: Drawing) => boundsOf(shapesOf(drawing, 'body')).top;
    expect(lean(at(70)[1]!)).toBeGreaterThan(lean(at(30)[1]!) + 50);
  });

  it('rests the head of a bridge on the floor, and keeps it over the bench of a thrust', () => {
    const [, top] = drawScene(sceneOf('Double-leg bridge, from the floor'));
    const hair = top!.shapes.find(({ fill }) => fill === 'hair');
    expect(Math.abs(boundsOf([hair!]).bottom - floorY(top!))).toBeLessThan(10);
    const [, thrust] = drawScene(sceneOf('Hip thrust 40 kg (bench 0.40 m)', { props: ['bench'] }));
    const head = thrust!.shapes.find(({ fill }) => fill === 'hair');
    expect(floorY(thrust!) - boundsOf([head!]).bottom).toBeGreaterThan(300);
  });

  it('puts a step of its height under the foot, and a bench under the back', () => {
    const [up] = drawScene(sceneOf('Step-up 40 cm', { props: ['step'], supportRiseM: 0.4 }));
    const box = boundsOf(shapesOf(up!, 'propFill'));
    expect(floorY(up!) - box.top).toBeCloseTo(400, -1);
    expect(Math.abs(boundsOf(shapesOf(up!, 'workLeg')).bottom - box.top)).toBeLessThanOrEqual(2);
    const [thrust] = drawScene(sceneOf('Hip thrust 40 kg (bench 0.40 m)'));
    expect(floorY(thrust!) - boundsOf(shapesOf(thrust!, 'propFill')).top).toBeCloseTo(400, -1);
  });

  it.each(['dumbbell', 'kettlebell', 'bar', 'rucksack', 'bottles'] as const)(
    'draws a %s of its own shape',
    (kind) => {
      const weight = { kind, at: 'hands', kg: 10 } as const;
      const [drawing] = drawScene(sceneOf('RDL 20 kg to 45 deg hip', { weight }));
      const [other] = drawScene(sceneOf('RDL 20 kg to 45 deg hip', { weight: null }));
      expect(shapesOf(drawing!, 'weight').length).toBeGreaterThan(0);
      expect(shapesOf(other!, 'weight')).toEqual([]);
    },
  );

  it('has nothing to show for a scene without frames', () => {
    expect(drawScene(sceneOf('Split squat', { frames: [] }))).toEqual([]);
  });
});

// As much of pdfkit as this needs; src/outputs/pdf types the rest.
interface Sheet {
  on(event: 'data', take: (chunk: Buffer) => void): void;
  on(event: 'end', done: () => void): void;
  path(d: string): { stroke(): void };
  end(): void;
}

describe('on paper', () => {
  it('every path goes to pdfkit as it stands, point for point', async () => {
    const doc = new (PDFDocument as unknown as new (options: object) => Sheet)({ compress: false });
    const chunks: Buffer[] = [];
    doc.on('data', (chunk) => chunks.push(chunk));
    const ended = new Promise<void>((done) => doc.on('end', done));
    const [, drawing] = drawScene(sceneOf('Hip thrust 40 kg (bench 0.40 m)', { props: ['bench'] }));
    for (const { d } of drawing!.shapes) doc.path(d).stroke();
    doc.end();
    await ended;
    const operators =
      Buffer.concat(chunks)
        .toString('latin1')
        .match(/ (m|l|c)$/gm) ?? [];
    const points = drawing!.shapes.flatMap(({ d }) => flattened(d, 1).flat()).length;
    const closed = drawing!.shapes.flatMap(({ d }) => d.match(/Z/g) ?? []).length;
    expect(operators).toHaveLength(points - closed);
  });
});
