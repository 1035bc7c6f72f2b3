/** One drawing as data: filled and stroked paths and words, for any surface. Colours are names; the surface knows them. */

/** What a stroke or fill depicts. Page and paper give each a colour, in light, dark and grey. */
export const PAINTS = [
  'workLeg',
  'body',
  'arm',
  'otherLegLine',
  'arc',
  'arrow',
  'prop',
  'propFill',
  'pillow',
  'weight',
  'weightLine',
  'hair',
  'hairLine',
  'floor',
  'ghost',
  'paperWhite',
  'ink',
  'quiet',
] as const;
export type Paint = (typeof PAINTS)[number];

/** Paint every shape in order: fill first, then stroke. */
export interface Shape {
  /** SVG path text of absolute M, L, C and Z with whole numbers; `doc.path(d)` takes it as it stands. */
  readonly d: string;
  readonly fill: Paint | null;
  readonly stroke: Paint | null;
  /** Stroke width, 0 when there is no stroke. */
  readonly width: number;
  /** On and off lengths of a dashed stroke. */
  readonly dash: readonly [number, number] | null;
  /** Ends of the stroke; corners are always round. */
  readonly cap: 'butt' | 'round';
}

export interface Label {
  readonly text: string;
  /** The anchor point on the baseline. */
  readonly x: number;
  readonly y: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** Font size. */
  readonly size: number;
  readonly paint: Paint;
  readonly weight: 'regular' | 'bold';
}

/**
 * Everything counts in the units of `viewBox`, y down. Figures: one unit is a millimetre of the pictured world.
 * Charts: one unit is a tenth of a millimetre of paper.
 */
export interface Drawing {
  readonly viewBox: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
  readonly shapes: readonly Shape[];
  readonly labels: readonly Label[];
}
