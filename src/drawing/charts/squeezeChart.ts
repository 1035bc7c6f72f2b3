/** Squeeze against hip bend along one movement: where on the way it rises, and where a cap cuts it off. */
import type { Drawing, Label, Shape } from '../drawing.ts';
import { chart, dot, SMALL, stroke, TEXT, widthOf, words } from './shapes.ts';

export interface Squeeze {
  /** In the order of the movement. */
  readonly samples: readonly { readonly hipFlexionDeg: number; readonly compressionBw: number }[];
  readonly capBw: number | null;
  /** Words beside the axes and the cap; the caller decides them. */
  readonly across: string;
  readonly up: string;
  readonly cap: string;
}

const HEIGHT_SHARE = 0.56;
const STEP_DEG = 15;
const NICE_BW = [0.1, 0.2, 0.5, 1, 2, 5] as const;
const STEPS_AT_MOST = 5;

/** The chart, `widthMm` millimetres wide; empty axes when there are no samples. Degrees across, body weights up. */
export function squeezeChart(squeeze: Squeeze, widthMm: number): Drawing {
  const width = widthMm * 10;
  const height = width * HEIGHT_SHARE;
  const degrees = squeeze.samples.map(({ hipFlexionDeg }) => hipFlexionDeg);
  const [low, high] = [
    STEP_DEG * Math.floor(Math.min(0, ...degrees) / STEP_DEG),
    STEP_DEG * Math.ceil(Math.max(30, ...degrees) / STEP_DEG),
  ];
  const most = Math.max(
    0.1,
    squeeze.capBw ?? 0,
    ...squeeze.samples.map(({ compressionBw }) => compressionBw),
  );
  const stepBw = NICE_BW.find((step) => most / step <= STEPS_AT_MOST) ?? Math.ceil(most / STEPS_AT_MOST);
  // A cap may lie at the very top; its words then stand between the line and those of the axis.
  const top = TEXT * 1.6 + (squeeze.capBw === null ? 0 : SMALL + 8);
  const frame = {
    left: widthOf('0.0', TEXT) + 16,
    right: width - widthOf('°', TEXT) - 24,
    top,
    bottom: height - TEXT * 2.8,
  };
  const ceiling = Math.ceil(most / stepBw - 1e-9) * stepBw;
  const xOf = (deg: number) => frame.left + ((deg - low) / (high - low)) * (frame.right - frame.left);
  const yOf = (bw: number) => frame.bottom - (bw / ceiling) * (frame.bottom - frame.top);
  const scaleDeg = steps(low, high, (high - low) / STEP_DEG > 8 ? 2 * STEP_DEG : STEP_DEG);
  const scaleBw = steps(0, ceiling, stepBw);
  return chart(
    width,
    height,
    [
      ...scaleBw.map((bw) =>
        stroke(
          [
            [frame.left, yOf(bw)],
            [frame.right, yOf(bw)],
          ],
          bw === 0 ? 'prop' : 'ghost',
          3,
        ),
      ),
      ...scaleDeg.map((deg) =>
        stroke(
          [
            [xOf(deg), frame.bottom],
            [xOf(deg), frame.bottom + 10],
          ],
          'prop',
          3,
        ),
      ),
      ...(squeeze.capBw === null
        ? []
        : [
            stroke(
              [
                [frame.left, yOf(squeeze.capBw)],
                [frame.right, yOf(squeeze.capBw)],
              ],
              'arc',
              4,
              [14, 9],
            ),
          ]),
      ...curve(squeeze, xOf, yOf),
    ],
    [
      words(squeeze.up, { x: 2, y: TEXT * 0.9, anchor: 'start' }, 'quiet'),
      words(squeeze.across, { x: frame.right, y: height - 10, anchor: 'end' }, 'quiet'),
      ...scaleDeg.map((deg) =>
        words(
          `${deg < 0 ? '−' : ''}${Math.abs(deg)}°`,
          { x: xOf(deg), y: frame.bottom + TEXT + 10, anchor: 'middle' },
          'quiet',
          'regular',
          SMALL,
        ),
      ),
      ...scaleBw.map((bw) =>
        words(
          bw.toFixed(1),
          { x: frame.left - 10, y: yOf(bw) + SMALL * 0.34, anchor: 'end' },
          'quiet',
          'regular',
          SMALL,
        ),
      ),
      ...capLabel(squeeze, frame.left, yOf),
    ],
  );
}

function curve(
  { samples }: Squeeze,
  xOf: (deg: number) => number,
  yOf: (bw: number) => number,
): readonly Shape[] {
  const points = samples.map(
    ({ hipFlexionDeg, compressionBw }) => [xOf(hipFlexionDeg), yOf(compressionBw)] as const,
  );
  const peak = points.reduce<readonly [number, number] | null>(
    (high, point) => (high === null || point[1] < high[1] ? point : high),
    null,
  );
  return [
    ...(points.length > 1 ? [stroke(points, 'workLeg', 8)] : []),
    ...(peak === null ? [] : [dot(peak[0], peak[1], 11, 'workLeg')]),
  ];
}

function capLabel({ capBw, cap }: Squeeze, left: number, yOf: (bw: number) => number): readonly Label[] {
  if (capBw === null) return [];
  return [
    words(
      `${cap} ${capBw.toFixed(2)}`,
      { x: left + 8, y: yOf(capBw) - 8, anchor: 'start' },
      'arc',
      'bold',
      SMALL,
    ),
  ];
}

function steps(low: number, high: number, step: number): readonly number[] {
  return Array.from({ length: Math.round((high - low) / step) + 1 }, (_, index) => low + index * step);
}
