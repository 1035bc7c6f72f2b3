/** Paper, ink and type: what `shared/tokens.json` holds for print, as lengths in points and named styles. */
import type { Paint } from '../../drawing/drawing.ts';

/** The part of `shared/tokens.json` this room reads; build hands the whole file in. */
export interface PaperTokens {
  readonly colour: { readonly print: Readonly<Record<ColourName, string>> };
  /** What each paint of a drawing is coloured with. */
  readonly paint: Readonly<Record<Paint, string>>;
  readonly type: { readonly paper: Readonly<Record<TypeName, TypeToken>> };
  readonly space: { readonly paper: Readonly<Record<'hairPt' | 'smallPt' | 'mediumPt' | 'largePt', number>> };
  readonly line: { readonly paper: Readonly<Record<'hairPt' | 'rulePt' | 'heavyPt', number>> };
  readonly sheet: {
    readonly paper: Readonly<
      Record<'marginTopMm' | 'marginSideMm' | 'marginBottomMm' | 'figureWidthMm', number>
    >;
  };
}

interface TypeToken {
  readonly sizePt: number;
  readonly leadingPt: number;
  readonly weight: number;
}

export type ColourName =
  | 'paper'
  | 'ink'
  | 'quiet'
  | 'hair'
  | 'rule'
  | 'wash'
  | 'accent'
  | 'cautionPaper'
  | 'cautionInk'
  | 'cautionRule';

export type TypeName =
  'note' | 'small' | 'body' | 'lead' | 'label' | 'heading3' | 'heading2' | 'heading1' | 'dose';

/** How a run of text is set. */
export interface TextStyle {
  readonly cut: 'regular' | 'bold';
  readonly sizePt: number;
  readonly leadingPt: number;
  readonly colour: string;
  /** Digits of one width, for columns of numbers. */
  readonly tabular: boolean;
}

/** One sheet with the box its text stands in, points from the upper left corner. */
export interface Sheet {
  readonly widthPt: number;
  readonly heightPt: number;
  readonly leftPt: number;
  readonly topPt: number;
  readonly rightPt: number;
  readonly bottomPt: number;
}

/** Everything about looks that a block asks for. */
export interface Look {
  readonly sheet: Sheet;
  readonly colour: PaperTokens['colour']['print'];
  readonly space: PaperTokens['space']['paper'];
  readonly line: PaperTokens['line']['paper'];
  /** Width the figures of an exercise are drawn for, points. */
  readonly figureWidthPt: number;
  /** `#rrggbb` of a drawing's paint. */
  paint(name: Paint): string;
  /** The named type, in ink unless another colour is asked for. */
  style(name: TypeName, colour?: ColourName): TextStyle;
}

/** Points in a millimetre, by the definition of the inch (25.4 mm) and the PDF point (1/72 inch, ISO 32000-1 8.3.2.3). */
const PT_PER_MM = 72 / 25.4;

/** ISO 216 A4 is 210 by 297 mm; ANSI Letter is 8.5 by 11 inches. */
const SIZES_PT = { A4: [210 * PT_PER_MM, 297 * PT_PER_MM], Letter: [612, 792] } as const;

/** The sheet and styles for a paper size, all type grown with the size of running text, points. */
export function lookOf(paper: 'A4' | 'Letter', bodyPt: number, tokens: PaperTokens): Look {
  const grown = bodyPt / tokens.type.paper.body.sizePt;
  const colour = tokens.colour.print;
  const [widthPt, heightPt] = SIZES_PT[paper];
  const margin = tokens.sheet.paper;
  return {
    sheet: {
      widthPt,
      heightPt,
      leftPt: margin.marginSideMm * PT_PER_MM,
      topPt: margin.marginTopMm * PT_PER_MM,
      rightPt: widthPt - margin.marginSideMm * PT_PER_MM,
      bottomPt: heightPt - margin.marginBottomMm * PT_PER_MM,
    },
    colour,
    space: tokens.space.paper,
    line: tokens.line.paper,
    figureWidthPt: margin.figureWidthMm * PT_PER_MM,
    paint: (name) => (colour as Readonly<Record<string, string>>)[tokens.paint[name]] ?? colour.ink,
    style: (name, ink = 'ink') => {
      const { sizePt, leadingPt, weight } = tokens.type.paper[name];
      const cut = weight >= 600 ? 'bold' : 'regular';
      return {
        cut,
        sizePt: sizePt * grown,
        leadingPt: leadingPt * grown,
        colour: colour[ink],
        tabular: false,
      };
    },
  };
}
