/** The shapes of what is said, whatever the language: headings, lists, tables, and the sheets that are filled in. */
import type { CellName } from '../decisions/terms/cell.ts';
import type { IsoDate } from '../units/date.ts';
import type { ForeignWord } from './foreign.ts';

/** A heading with what stands under it. */
export interface Section {
  readonly id: string;
  readonly heading: string;
  readonly parts: readonly Part[];
}

export type Part =
  | { readonly kind: 'paragraph'; readonly text: string; readonly weight: 'normal' | 'strong' | 'quiet' }
  | { readonly kind: 'list'; readonly ordered: boolean; readonly entries: readonly string[] }
  | { readonly kind: 'table'; readonly table: Table };

/** A plain table of text: the first column is the row's header. */
export interface Table {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface EmergencyBox {
  readonly country: string;
  readonly heading: string;
  /** Whom to call; the signs follow it. */
  readonly call: string;
  /** A sign each. */
  readonly lines: readonly string[];
  /** What to do when it is less than that, a sentence each. */
  readonly then: readonly string[];
  /** Words of these texts in another language than the leaflet. */
  readonly foreign: readonly ForeignWord[];
}

/** A word of the trade and what it means here. */
export interface Term {
  readonly term: string;
  readonly meaning: string;
}

/** A sheet to fill in with a pen: one row a day. */
export interface LogSheet {
  readonly heading: string;
  readonly hint: string;
  readonly columns: readonly string[];
  readonly days: readonly { readonly on: IsoDate; readonly label: string; readonly planned: string }[];
}

/** The dose in big type by its parts, put together without a space: figures, a sign after them, and a unit. */
export interface DoseSign {
  readonly figures: string;
  readonly sign: string;
  readonly unit: string;
}

/** A part of a sentence; `cell` is the number of the dosage table it says, null between them. */
export interface SaidPart {
  readonly text: string;
  readonly cell: CellName | null;
}

/** What an author is told of a fault: what is there, what should be, and how to mend it. */
export interface CureWords {
  readonly found: string;
  readonly expected: string;
  readonly fix: string;
}

/** A paragraph of a section. */
export function paragraph(text: string, weight: 'normal' | 'strong' | 'quiet' = 'normal'): Part {
  return { kind: 'paragraph', text, weight };
}

/** A list of a section. */
export function list(entries: readonly string[], ordered = false): Part {
  return { kind: 'list', ordered, entries };
}

/** A table of a section; the first column heads its rows. */
export function table(
  caption: string,
  columns: readonly string[],
  rows: readonly (readonly string[])[],
): Part {
  return { kind: 'table', table: { caption, columns, rows } };
}

/** A heading with what stands under it. */
export function section(id: string, heading: string, parts: readonly Part[]): Section {
  return { id, heading, parts };
}
