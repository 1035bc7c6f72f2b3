/**
 * The one finished value behind the public pages: what they show of every card, protocol and advice card, of the body
 * model and of the files authors write. No person stands in it, and the pages work nothing out.
 */
import type { Language } from '../content/schema/words.ts';
import type { ProseSection } from '../content/prose/block.ts';
import type { Source } from '../units/source.ts';
import type { CompressionLadder, FigureText, RangeRuler } from '../programme/programme.ts';
import type { Part, Section, Table, Term } from '../messages/shapes.ts';
import type { Dress } from '../content/dress.ts';
import type { IsoDate } from '../units/date.ts';
import type { FilterKey } from '../decisions/terms/scale.ts';

export interface LibraryView {
  readonly language: Language;
  readonly clinic: { readonly name: string; readonly contact: readonly string[] };
  readonly notice: readonly string[];
  /** Which library it is, as short as an address may carry it, and in words. */
  readonly id: string;
  readonly version: string;
  readonly front: FrontView;
  /** In the order of the index: least squeeze first, then least hip bend, then title. */
  readonly cards: readonly CardView[];
  readonly filters: readonly Filter[];
  readonly protocols: readonly ProtocolView[];
  readonly advice: readonly AdviceView[];
  readonly numbers: PlainPage;
  readonly glossary: readonly Term[];
  /** The clinic's own, in the order of the menu. */
  readonly pages: readonly PageView[];
  readonly dress: Dress;
  /** Null where nobody said where the site is published. */
  readonly site: SiteView | null;
  readonly authors: PlainPage;
}

/** A page of headed sections. */
export interface PlainPage {
  readonly title: string;
  readonly lead: string;
  readonly sections: readonly Section[];
}

/** A card, protocol or advice card to go to. */
export interface Link {
  readonly id: string;
  readonly title: string;
}

export interface FrontView {
  readonly lead: readonly string[];
  /** A few cards from the least squeeze to the most. */
  readonly row: readonly RowFigure[];
  /** Ways into the index: a query of its filters each. */
  readonly ways: readonly { readonly heading: string; readonly entries: readonly FilterLink[] }[];
  /** How many of each there are, for example `61 exercises`. */
  readonly rowCaption: string;
  readonly counts: Readonly<Record<'exercises' | 'protocols' | 'advice', string>>;
}

/** A card as it stands in the row of figures from the least squeeze to the most. */
export interface RowFigure {
  readonly card: Link;
  /** Its squeeze in body weights, as text. */
  readonly squeeze: string;
}

export interface FilterLink {
  readonly label: string;
  readonly filter: FilterKey;
  readonly value: string;
  readonly count: string;
}

/** What a card is found by: for each filter the words that hold of it. Numbers are written plainly. */
export type Facets = Readonly<Record<FilterKey, readonly string[]>>;

/**
 * How the words chosen are held against those of a card. `atMost`: its number is not above the one chosen. `any`: they
 * share one. `within`: all of the card's are among those chosen. `none`: they share none. Nothing chosen admits all.
 */
export type FilterRule = 'atMost' | 'any' | 'within' | 'none';

export interface Filter {
  readonly key: FilterKey;
  readonly rule: FilterRule;
  readonly heading: string;
  readonly options: readonly FilterOption[];
}

export interface FilterOption {
  readonly value: string;
  readonly label: string;
  /** Heading of the options it stands with; empty where they need none. */
  readonly group: string;
  /** What is typed into the search to choose it, parted by commas; empty where it has to be pressed. */
  readonly asked: string;
}

/** Whose a card is, in words; empty for one that stands as it was shipped. */
export type Origin = string;

export interface CardView extends Link {
  readonly origin: Origin;
  /** What it is in a line: `Slow strength. Hip bend up to 60°. Middling squeeze.` */
  readonly summary: string;
  readonly facets: Facets;
  /** What it is looked for by besides its text: its names, the title first; then kind, kit and muscles. */
  readonly names: readonly string[];
  readonly terms: readonly string[];
  /** For the reference body, without a weight, over the whole movement; null without a pose. */
  readonly figures: FigureText | null;
  readonly photos: readonly PhotoView[];
  /** Label and text. */
  readonly facts: readonly Fact[];
  readonly rulers: readonly { readonly caption: string; readonly ruler: RangeRuler }[];
  readonly estimate: EstimateView;
  readonly neighbours: readonly { readonly heading: string; readonly cards: readonly Link[] }[];
  readonly uses: readonly { readonly protocol: Link; readonly stage: string; readonly slot: string }[];
  readonly body: readonly ProseSection[];
  readonly cautions: readonly string[];
  readonly evidence: readonly Source[];
  readonly reviewed: string;
}

export interface Fact {
  readonly label: string;
  readonly text: string;
}

/** What the model says of a card, or why it says nothing. */
export interface EstimateView {
  readonly sentences: readonly string[];
  readonly tables: readonly Table[];
  readonly curve: CurveView | null;
}

/** Squeeze against hip bend along the movement. */
export interface CurveView {
  readonly samples: readonly { readonly hipFlexionDeg: number; readonly compressionBw: number }[];
  readonly capBw: number | null;
  /** Words at the axes and the cap. */
  readonly across: string;
  readonly up: string;
  readonly cap: string;
  readonly alt: string;
}

/** A photo in the sizes the build made of it, smallest first; every size stands there as WebP and as JPEG. */
export interface PhotoView {
  /** Name of its files before the width, for example `hip-hinge-1`. */
  readonly name: string;
  readonly alt: string;
  readonly sizes: readonly PhotoSize[];
}

export interface PhotoSize {
  readonly widthPx: number;
  readonly heightPx: number;
}

export interface ProtocolView extends Link {
  readonly origin: Origin;
  readonly tendon: string;
  /** What colleagues call what it is for. */
  readonly alsoCalled: readonly string[];
  /** What guards it: the model, or position and joint angle alone. */
  readonly guard: string;
  readonly why: readonly string[];
  readonly body: readonly ProseSection[];
  readonly stageTable: Table;
  readonly stages: readonly StageView[];
  readonly ladder: CompressionLadder | null;
  readonly ladderNote: string;
  /** What a clinic changed of the protocol it extends; empty where it is whole by itself. */
  readonly ownChanges: readonly Section[];
  readonly sections: readonly Section[];
  /** A table for each group of house numbers. */
  readonly settings: readonly Table[];
  readonly sources: readonly Source[];
}

export interface StageView {
  /** Value of the stage in the filter `stage`. */
  readonly facet: string;
  readonly heading: string;
  readonly parts: readonly Part[];
  readonly slots: readonly SlotView[];
}

export interface SlotView {
  readonly heading: string;
  readonly sentences: readonly string[];
  readonly cards: readonly Link[];
  readonly source: Source;
}

export interface AdviceView extends Link {
  readonly origin: Origin;
  readonly shown: string;
  readonly body: readonly ProseSection[];
  readonly sources: readonly Source[];
}

export interface PageView extends Link {
  readonly menu: string;
  readonly lead: string;
  readonly body: readonly ProseSection[];
}

export interface SiteView {
  /** Of the public folder, with a slash behind. */
  readonly address: string;
  readonly pathPrefix: string;
  /** Day of the last change by folder and id, for example `exercises/hip-hinge`. */
  readonly changedOn: ReadonlyMap<string, IsoDate>;
  /** Newest first; empty where no file has a date. */
  readonly feed: readonly FeedEntry[];
  readonly feedTitle: string;
}

export interface FeedEntry {
  /** Shelf and id of the page. */
  readonly page: string;
  readonly title: string;
  readonly on: IsoDate;
  readonly what: string;
}
