/** Values over days: what was asked for dashed, what was done as dots and a line, limits as thin lines across. */
import type { DayChart, DayLine } from '../../units/dayChart.ts';
import type { Drawing, Label, Shape } from '../drawing.ts';
import { chart, dot, SMALL, stroke, TEXT, widthOf, words } from './shapes.ts';

const PLOT = 210;
const KEY = 44;
const DASH = [16, 10] as const;
const LIMIT_DASH = [3, 8] as const;
const HALF_DASH = 12;
const LIMIT_GAP = 16;

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly xOf: (day: number) => number;
  readonly yOf: (value: number) => number;
}

/** The chart, `widthMm` millimetres wide: key, plot with its limits, numbers of both axes. */
export function dayChart(data: DayChart, widthMm: number): Drawing {
  const width = widthMm * 10;
  const frame = frameOf(data, width);
  return chart(
    width,
    frame.bottom + 2 * TEXT + 24,
    [
      ...scaleOf(data).map((value) => across(frame, value, 'propFill', 2)),
      across(frame, data.low, 'prop', 3),
      ...data.limits.map(({ value }) => across(frame, value, 'arc', 4, LIMIT_DASH)),
      ...data.ticks.map(({ day }) =>
        stroke(
          [
            [frame.xOf(day), frame.bottom],
            [frame.xOf(day), frame.bottom + 10],
          ],
          'prop',
          3,
        ),
      ),
      ...data.lines.flatMap((line) => lineShapes(line, frame)),
      ...keyOf(data.lines).flatMap(keyShapes),
    ],
    [...keyOf(data.lines).map(keyLabel), ...axisLabels(data, frame), ...limitLabels(data, frame)],
  );
}

function frameOf({ low, high, step, days, limits }: DayChart, width: number): Frame {
  const widest = Math.max(...[low, high, step].map((value) => widthOf(numberOf(value), SMALL)));
  const left = widest + 20;
  const besides = Math.max(0, ...limits.map(({ text }) => widthOf(text, SMALL) + LIMIT_GAP));
  const right = width - Math.max(30, besides);
  const top = KEY + TEXT + 30;
  const bottom = top + PLOT;
  const span = Math.max(1, days);
  return {
    left,
    right,
    top,
    bottom,
    xOf: (day) => left + 14 + (day / span) * (right - left - 28),
    yOf: (value) => bottom - ((value - low) / (high - low)) * PLOT,
  };
}

function across(
  { left, right, yOf }: Frame,
  value: number,
  paint: Shape['stroke'] & string,
  width: number,
  dash: Shape['dash'] = null,
): Shape {
  return stroke(
    [
      [left, yOf(value)],
      [right, yOf(value)],
    ],
    paint,
    width,
    dash,
  );
}

function scaleOf({ low, high, step }: DayChart): readonly number[] {
  return Array.from({ length: Math.round((high - low) / step) + 1 }, (_, index) => low + index * step);
}

function lineShapes({ kind, stretches }: DayLine, { xOf, yOf }: Frame): readonly Shape[] {
  return stretches.flatMap((points) => {
    const at = points.map(({ day, value }) => [xOf(day), yOf(value)] as const);
    if (kind === 'asked') return [askedShape(at)];
    return [...(at.length > 1 ? [stroke(at, 'ink', 4)] : []), ...at.map(([x, y]) => dot(x, y, 9, 'ink'))];
  });
}

function askedShape(at: readonly (readonly [number, number])[]): Shape {
  const [first] = at;
  if (at.length === 1 && first !== undefined)
    return stroke(
      [
        [first[0] - HALF_DASH, first[1]],
        [first[0] + HALF_DASH, first[1]],
      ],
      'quiet',
      7,
    );
  return stroke(at, 'quiet', 5, DASH);
}

const SAMPLE = 70;

interface KeyEntry {
  readonly line: DayLine;
  readonly x: number;
}

/** In one row, each with its sample before it. */
function keyOf(lines: readonly DayLine[]): readonly KeyEntry[] {
  return lines.reduce<{ readonly at: number; readonly entries: readonly KeyEntry[] }>(
    ({ at, entries }, line) => ({
      at: at + SAMPLE + widthOf(line.name, TEXT) + 60,
      entries: [...entries, { line, x: at }],
    }),
    { at: 4, entries: [] },
  ).entries;
}

function keyShapes({ line: { kind, stretches }, x }: KeyEntry): readonly Shape[] {
  const y = KEY / 2;
  const ends = [
    [x, y],
    [x + SAMPLE, y],
  ] as const;
  const middle = x + SAMPLE / 2;
  const alone = stretches.every(({ length }) => length < 2);
  if (kind === 'asked') return [alone ? askedShape([[middle, y]]) : askedShape(ends)];
  return [...(alone ? [] : [stroke(ends, 'ink', 4)]), dot(middle, y, 9, 'ink')];
}

function keyLabel({ line: { name }, x }: KeyEntry): Label {
  return words(name, { x: x + SAMPLE + 12, y: KEY / 2 + TEXT * 0.34, anchor: 'start' });
}

function axisLabels(data: DayChart, frame: Frame): readonly Label[] {
  const { left, right, top, bottom, xOf, yOf } = frame;
  return [
    words(data.up, { x: 2, y: top - 24, anchor: 'start' }, 'quiet'),
    words(data.across, { x: right, y: bottom + 2 * TEXT + 16, anchor: 'end' }, 'quiet'),
    ...scaleOf(data).map((value) =>
      words(
        numberOf(value),
        { x: left - 10, y: yOf(value) + SMALL * 0.34, anchor: 'end' },
        'quiet',
        'regular',
        SMALL,
      ),
    ),
    ...apart(data.ticks.map(({ day, text }) => ({ text, x: within(xOf(day), text, right + 28) }))).map(
      ({ text, x }) => words(text, { x, y: bottom + TEXT + 8, anchor: 'middle' }, 'quiet', 'regular', SMALL),
    ),
  ];
}

interface DateLabel {
  readonly text: string;
  readonly x: number;
}

/** Least white between two dates. */
const DATE_GAP = 20;

/** The dates that have room beside the one before; the others keep their mark on the axis. */
function apart(labels: readonly DateLabel[]): readonly DateLabel[] {
  const halfOf = ({ text }: DateLabel) => widthOf(text, SMALL) / 2;
  return labels.reduce<readonly DateLabel[]>((kept, label) => {
    const last = kept.at(-1);
    const free = last === undefined || label.x - halfOf(label) >= last.x + halfOf(last) + DATE_GAP;
    return free ? [...kept, label] : kept;
  }, []);
}

// A date under the last day would run over the edge.
function within(x: number, text: string, edge: number): number {
  return Math.min(x, edge - widthOf(text, SMALL) / 2);
}

/** Beside the plot, from the lowest up, none over another. */
function limitLabels({ limits }: DayChart, { right, yOf }: Frame): readonly Label[] {
  const rising = limits.toSorted((a, b) => a.value - b.value);
  return rising.reduce<readonly Label[]>((labels, { value, text }) => {
    const below = labels.at(-1)?.y ?? Infinity;
    const y = Math.min(yOf(value) + SMALL * 0.34, below - SMALL * 1.1);
    return [...labels, words(text, { x: right + LIMIT_GAP / 2, y, anchor: 'start' }, 'arc', 'bold', SMALL)];
  }, []);
}

function numberOf(value: number): string {
  const rounded = Math.round(value * 100) / 100;
  return rounded < 0 ? `−${Math.abs(rounded)}` : String(rounded);
}
