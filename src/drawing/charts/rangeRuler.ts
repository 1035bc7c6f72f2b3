/** The range ruler: a thin scale of hip bend with the present part filled and the caps of the stages as ticks. */
import type { Drawing, Label, Shape } from '../drawing.ts';
import {
  box,
  chart,
  flagsOf,
  flagWords,
  LINE_HEIGHT,
  rowsOf,
  stageWords,
  SMALL,
  stroke,
  TEXT,
  widthOf,
  words,
} from './shapes.ts';

export interface Ruler {
  readonly fromDeg: number;
  readonly toDeg: number;
  readonly ticks: readonly { readonly stage: string; readonly capDeg: number }[];
}

const SCALE_DEG = { low: 0, high: 120, step: 30 } as const;
const BAR = 26;
const MARGIN = 12;
/** A hold has no range; its mark is this wide. */
const LEAST_FILL = 14;

/**
 * The ruler, `widthMm` millimetres wide. The scale runs from 0 to 120° and grows by whole steps of 30° when the range or
 * a cap lies outside. Angles in degrees of hip flexion.
 */
export function rangeRuler(ruler: Ruler, widthMm: number): Drawing {
  const width = widthMm * 10;
  const angles = [ruler.fromDeg, ruler.toDeg, ...ruler.ticks.map(({ capDeg }) => capDeg)];
  const low = Math.min(SCALE_DEG.low, Math.floor(Math.min(...angles) / SCALE_DEG.step) * SCALE_DEG.step);
  const high = Math.max(SCALE_DEG.high, Math.ceil(Math.max(...angles) / SCALE_DEG.step) * SCALE_DEG.step);
  const inset = MARGIN + widthOf(`${high}°`, TEXT) / 2;
  const xOf = (deg: number) => inset + ((deg - low) / (high - low)) * (width - 2 * inset);
  const poles = ruler.ticks.map(({ stage, capDeg }) => ({
    x: xOf(capDeg),
    text: `${stageWords(stage)}: ${degrees(capDeg)}`,
  }));
  const flags = flagsOf(poles, width, SMALL);
  const barTop = MARGIN + rowsOf(flags) * LINE_HEIGHT + (flags.length > 0 ? 10 : 0);
  const caps = flags.map((flag) =>
    flagWords(flag, barTop - 14 - flag.row * LINE_HEIGHT, 'quiet', 'regular', SMALL),
  );
  const bar = { top: barTop, bottom: barTop + BAR };
  const scale = Array.from(
    { length: (high - low) / SCALE_DEG.step + 1 },
    (_, index) => low + index * SCALE_DEG.step,
  );
  return chart(
    width,
    bar.bottom + 14 + TEXT + MARGIN,
    [
      box({ left: xOf(low), right: xOf(high), ...bar }, 'propFill', 'prop'),
      filledPart(ruler, xOf, bar),
      ...scale.map((deg) =>
        stroke(
          [
            [xOf(deg), bar.bottom],
            [xOf(deg), bar.bottom + 10],
          ],
          'prop',
          3,
        ),
      ),
      ...flags.map(({ x, row }) =>
        stroke(
          [
            [x, barTop - 10 - row * LINE_HEIGHT - SMALL],
            [x, bar.bottom],
          ],
          'ink',
          4,
        ),
      ),
      ...caps.map(({ ground }) => ground),
    ],
    [...caps.map(({ label }) => label), ...scaleLabels(ruler, scale, xOf, bar.bottom + 14 + TEXT)],
  );
}

type XOf = (deg: number) => number;
interface Bar {
  readonly top: number;
  readonly bottom: number;
}

function filledPart({ fromDeg, toDeg }: Ruler, xOf: XOf, bar: Bar): Shape {
  const [a, b] = [xOf(Math.min(fromDeg, toDeg)), xOf(Math.max(fromDeg, toDeg))];
  const grow = Math.max(0, LEAST_FILL - (b - a)) / 2;
  return box({ left: a - grow, right: b + grow, top: bar.top, bottom: bar.bottom }, 'workLeg');
}

// The ends of the range in bold; numbers of the scale that would touch them give way.
function scaleLabels(
  { fromDeg, toDeg }: Ruler,
  scale: readonly number[],
  xOf: XOf,
  y: number,
): readonly Label[] {
  const near = (a: number, b: number) => Math.abs(xOf(a) - xOf(b)) < widthOf('000°', TEXT);
  const ends =
    fromDeg === toDeg || near(fromDeg, toDeg)
      ? [joined(fromDeg, toDeg, xOf, y)]
      : [fromDeg, toDeg].map((deg) => endLabel(degrees(deg), xOf(deg), y));
  const rest = scale.filter((deg) => ![fromDeg, toDeg, (fromDeg + toDeg) / 2].some((end) => near(deg, end)));
  return [...ends, ...rest.map((deg) => words(degrees(deg), { x: xOf(deg), y, anchor: 'middle' }, 'quiet'))];
}

function joined(fromDeg: number, toDeg: number, xOf: XOf, y: number): Label {
  const text = fromDeg === toDeg ? degrees(toDeg) : `${degrees(fromDeg)}–${degrees(toDeg)}`;
  return endLabel(text, (xOf(fromDeg) + xOf(toDeg)) / 2, y);
}

function endLabel(text: string, x: number, y: number): Label {
  return words(text, { x: Math.max(x, widthOf(text, TEXT) / 2 + 2), y, anchor: 'middle' }, 'ink', 'bold');
}

function degrees(deg: number): string {
  return `${deg < 0 ? '−' : ''}${Math.abs(deg)}°`;
}
