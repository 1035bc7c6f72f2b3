/** What the page and its worker say to each other. */
import type { LogHead } from '../content/log/format.ts';
import type { Problem } from '../content/problem.ts';
import type { Beside } from '../outputs/html/desk/beside.ts';
import type { Sealing } from '../post/sealedFiles.ts';
import type { LogLine } from './log/lines.ts';
import type { DeskDress, DeskFile, DeskData } from './deskData.ts';
import type { Table } from '../messages/shapes.ts';
import type { Move } from '../review/terms.ts';
import type { OpenedLog, WrittenLog } from './worker/logSheet.ts';
import type { OutputFile } from '../set/outputs.ts';
import type { IsoDate } from '../units/date.ts';

/** Files of one make, by the names of `build`; the link is shown beside the archive of what it opens. */
export type MadeName = Exclude<OutputFile, 'link.txt'> | 'sealed';

/** What the page fetches when it is first needed: style and scripts of pages, what draws PDFs, what writes the post. */
export type Fetched = 'dress' | 'paper' | 'post';

/** What can be made of a programme, what is to be fetched before, and whether it tells where the sealed leaflet opens. */
export type ToMake = Readonly<
  Partial<Record<MadeName, { readonly needs: readonly Fetched[]; readonly tellsLink: boolean }>>
>;

export interface SheetText {
  readonly name: string;
  readonly text: string;
  readonly others: readonly DeskFile[];
}

export type Ask =
  /** `later`: where the worker's second part lies. */
  | { readonly ask: 'bench'; readonly library: DeskData; readonly later: string }
  | { readonly ask: 'dress'; readonly dress: DeskDress }
  | { readonly ask: 'view'; readonly at: number; readonly sheet: SheetText }
  | {
      readonly ask: 'make';
      readonly at: number;
      readonly sheet: SheetText;
      readonly name: MadeName;
      readonly firstName: string;
      /** Null while no secret is chosen. */
      readonly seal: Pick<Sealing, 'site' | 'secret'> | null;
    }
  | { readonly ask: 'post'; readonly script: string; readonly dress: Sealing['dress'] }
  | {
      readonly ask: 'paper';
      readonly script: string;
      readonly regular: Uint8Array;
      readonly bold: Uint8Array;
    }
  | { readonly ask: 'read'; readonly at: number; readonly name: string; readonly bytes: Uint8Array }
  | {
      readonly ask: 'openLog';
      readonly at: number;
      readonly name: string;
      readonly bytes: Uint8Array;
      readonly whose: LogHead;
    }
  | {
      readonly ask: 'writeLog';
      readonly at: number;
      readonly lines: readonly LogLine[];
      readonly whose: LogHead;
    }
  | {
      readonly ask: 'review';
      readonly at: number;
      readonly sheet: SheetText;
      readonly day: ReviewOn;
    }
  | { readonly ask: 'person'; readonly at: number; readonly sheet: SheetText }
  | {
      readonly ask: 'landmarks';
      readonly at: number;
      readonly card: string;
      readonly heightM: number | null;
      readonly massKg: number | null;
      readonly protocol: string;
    };

export type Answer =
  | { readonly answer: 'bench' }
  | { readonly answer: 'dress' }
  /** Null where a newer one was asked for before it was done. */
  | { readonly answer: 'view'; readonly at: number; readonly view: View | null }
  | {
      readonly answer: 'made';
      readonly at: number;
      readonly name: MadeName;
      readonly bytes: Uint8Array | string | null;
      readonly link?: SealedLink;
    }
  | { readonly answer: 'paper' }
  | { readonly answer: 'post' }
  | {
      readonly answer: 'read';
      readonly at: number;
      readonly text: string | null;
      readonly problems: readonly Problem[];
    }
  | ({ readonly answer: 'openLog'; readonly at: number } & OpenedLog)
  | ({ readonly answer: 'writeLog'; readonly at: number } & WrittenLog)
  | { readonly answer: 'review'; readonly at: number; readonly review: ReviewShown | null }
  | { readonly answer: 'person'; readonly at: number; readonly person: PersonShown }
  | { readonly answer: 'landmarks'; readonly at: number; readonly landmarks: readonly Landmark[] }
  | { readonly answer: 'fault'; readonly at: number | null; readonly text: string };

/** Where the newest revision of somebody stands. */
export interface PersonShown {
  readonly state: 'made' | 'stopped' | 'draft';
  readonly stage: { readonly chosen: string; readonly step: number } | null;
  readonly isEnded: boolean;
  readonly reviewOn: string | null;
  /** The newest day of any log. */
  readonly lastLog: string | null;
}

/** The day of a review: `isAsked` where somebody wrote it, else the day of this machine. */
export interface ReviewOn {
  readonly on: IsoDate;
  readonly isAsked: boolean;
}

/** A review in words, and the file of the next revision. */
export interface ReviewShown {
  readonly decision: string;
  readonly move: Move;
  /** Every ground with the entries that decided it, and its rule. */
  readonly table: Table;
  readonly weeks: Table;
  readonly asks: readonly string[];
  readonly next: { readonly name: string; readonly text: string };
}

/** Where a sealed leaflet opens, and the words it asks for; null for none. Told once, kept nowhere. */
export interface SealedLink {
  readonly address: string;
  readonly words: string | null;
}

/** What was seen of a bend, and the degrees the model makes of it for this body. */
export interface Landmark {
  readonly words: string;
  readonly deg: number;
}

export type View = Ready | Stopped;

export interface Stopped {
  readonly state: 'incomplete' | 'refused';
  readonly problems: readonly Problem[];
}

export interface Ready {
  readonly state: 'ready';
  readonly alias: string;
  readonly revision: number;
  readonly title: string;
  readonly stage: {
    readonly chosen: string;
    readonly name: string;
    readonly proposed: string;
    readonly because: readonly string[];
    readonly step: number;
  };
  readonly beside: Beside;
  readonly reasons: Readonly<Record<string, Reason>>;
  readonly slots: readonly SlotOffer[];
  /** Ids of the exercises in it. */
  readonly cards: readonly string[];
  readonly toMake: ToMake;
}

/** Why a number is what it is, by `step|card|cell`. */
export interface Reason {
  readonly title: string;
  readonly label: string;
  readonly text: string;
  readonly rule: string;
  readonly inputs: string;
  readonly decidedBy: string;
  readonly source: string;
  readonly mark: string;
}

/** A slot of the present stage with the card in it, what else would fit, and what would not. */
export interface SlotOffer {
  readonly slot: string;
  readonly needed: boolean;
  /** Whether the clinician chose it. */
  readonly isOwn: boolean;
  readonly card: string | null;
  readonly title: string | null;
  readonly fits: readonly Offer[];
  readonly others: readonly Offer[];
}

export interface Offer {
  readonly card: string;
  readonly title: string;
  /** Empty for one that fits. */
  readonly limit: string;
  readonly because: string;
  /** `beyond`: only above a cap of the house, with a decision. */
  readonly may: 'now' | 'beyond' | 'never';
}

export function reasonKey(step: string | number, card: string, cell: string): string {
  return `${step}|${card}|${cell}`;
}
