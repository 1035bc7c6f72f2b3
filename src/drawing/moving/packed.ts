/** Moving figures of one page as its block holds them: what figures have in common is written once. */
import { wholeOf } from '../../units/round.ts';
import type { Track } from '../../units/track.ts';
import { classesOf } from '../svg.ts';
import type { Joint, Layer, Morph, MovingFigure, Piece } from './movingFigure.ts';

/** The joint it hangs on (null: none), x, y, degrees. */
export type PackedJoint = readonly [on: number | null, x: Track, y: Track, deg: Track];
/** By their places: the joint in the figure, the outline among all. */
export type PackedPiece = readonly [joint: number, outline: number];

/** Classes, width of the line, the height under which nothing is seen, and the parts or the changing shape. */
export type PackedLayer = readonly [
  fill: string,
  line: string,
  width: number,
  floor: number | null,
  parts: readonly PackedPiece[] | readonly [letters: string, ...numbers: readonly Track[]],
];

export interface PackedFigure {
  readonly still: number;
  /** Scales across and up, and where its zero lies, in units of the page's pictures. */
  readonly sheet: readonly [across: number, up: number, x: number, y: number];
  readonly joints: readonly PackedJoint[];
  /** Places in the list of all layers, in the order of painting. */
  readonly layers: readonly number[];
}

export interface PackedFigures {
  readonly outlines: readonly string[];
  readonly layers: readonly PackedLayer[];
  readonly figures: Readonly<Record<string, PackedFigure>>;
}

/** The page's way with pictures: a path in fewer letters and in its units, and how many millimetres such a unit is. */
interface PagePaths {
  readonly shorter: (d: string, unitMm: number) => string;
  readonly unitMm: number;
}

/** The figures by the names they are asked for, every length in the page's units. */
export function packed(
  figures: ReadonlyMap<string, MovingFigure>,
  { shorter, unitMm }: PagePaths,
): PackedFigures {
  const outlines = once<string>();
  const layers = once<PackedLayer>();
  // Most figures of a page have the limbs of one body: an outline is made shorter once.
  const places = new Map<string, number>();
  const outline = (d: string) => {
    const place = places.get(d) ?? outlines.placeOf(shorter(d, unitMm));
    places.set(d, place);
    return place;
  };
  const all = [...figures].map(([name, { still, sheet, joints, layers: own }]): [string, PackedFigure] => [
    name,
    {
      still,
      sheet: [sheet.across, 1, sheet.x / unitMm, sheet.y / unitMm],
      joints: joints.map(({ on, x, y, deg }: Joint): PackedJoint => [
        on,
        inUnits(x, unitMm),
        inUnits(y, unitMm),
        deg,
      ]),
      layers: own.map((layer) => layers.placeOf(packedLayer(layer, unitMm, outline))),
    },
  ]);
  return { outlines: outlines.list, layers: layers.list, figures: Object.fromEntries(all) };
}

function packedLayer(
  { fill, line, widthMm, floorMm, parts }: Layer,
  unitMm: number,
  placeOf: (d: string) => number,
): PackedLayer {
  const [filled, lined] = [classesOf(fill, null), classesOf(null, line)];
  const floor = floorMm === null ? null : floorMm / unitMm;
  return [filled, lined, widthMm / unitMm, floor, 'letters' in parts ? shape(parts) : parts.map(piece)];

  function shape({ letters, numbers }: Morph): readonly [string, ...Track[]] {
    return [letters, ...numbers.map((track) => inUnits(track, unitMm))];
  }

  function piece({ joint, d }: Piece): PackedPiece {
    return [joint, placeOf(d)];
  }
}

/** Lengths at the nearest whole unit. */
function inUnits(track: Track, unitMm: number): Track {
  if (typeof track === 'number') return wholeOf(track / unitMm);
  const values = track.map((mm) => wholeOf(mm / unitMm));
  return values.every((value) => value === values[0]) ? (values[0] ?? 0) : values;
}

/** A list that holds each thing once. */
function once<T>(): { readonly list: T[]; placeOf(thing: T): number } {
  const list: T[] = [];
  const places = new Map<string, number>();
  return {
    list,
    placeOf: (thing) => {
      const key = JSON.stringify(thing);
      const known = places.get(key);
      if (known !== undefined) return known;
      places.set(key, list.length);
      return list.push(thing) - 1;
    },
  };
}
