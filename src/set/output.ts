/** One output of a person's set, and what is at hand while a set is made. */
import type * as calendar from '../outputs/calendar/index.ts';
import type { PageAssets } from '../outputs/html/assets.ts';
import type * as html from '../outputs/html/index.ts';
import type * as mail from '../outputs/mail/index.ts';
import type { Link } from '../outputs/mail/messageText.ts';
import type * as pdf from '../outputs/pdf/index.ts';
import type { PaperAssets } from '../outputs/pdf/leaflet.ts';
import type * as text from '../outputs/text/index.ts';
import type { Programme } from '../programme/programme.ts';

export type Bytes = Uint8Array | string;

/** The rooms of `outputs/` that a set is made by: what each of them gives stands in its `index.ts`. */
export interface Rooms {
  readonly html: typeof html;
  readonly pdf: typeof pdf;
  readonly text: typeof text;
  readonly calendar: typeof calendar;
  readonly mail: typeof mail;
}
export type Room = keyof Rooms;

/** What is asked of a set besides the programme. */
export interface Wish {
  /** A sheet for the fridge, whatever the clinic's setting. */
  readonly isFridgeAsked: boolean;
  readonly isSealed: boolean;
}

/** What build and desk bring, each in its own way. */
export interface Means extends Wish {
  readonly rooms: Rooms;
  readonly assets: { readonly pages: PageAssets; readonly paper: PaperAssets };
  /** Where the sealed leaflet opens; null where nothing is sealed. */
  readonly link: () => Promise<Link | null>;
}

export interface Making extends Means {
  /** Another output of the same set, made once; null where there is none. Throws for a name that no output has. */
  readonly part: (file: string) => Promise<Bytes | null>;
}

export interface Output {
  /** Its name in the set. */
  readonly file: string;
  /** Null for what none of them makes. */
  readonly room: Room | null;
  /** Outputs that stand in it, or that it tells of. */
  readonly parts?: readonly string[];
  /** The desk puts the first name on it that was typed: the patient is given it. */
  readonly isNamed?: true;
  /** Tells where the sealed leaflet is. */
  readonly tellsLink?: true;
  /** A line to copy, the same in every make. */
  readonly hasNoMark?: true;
  /** Left out: everybody has it. */
  readonly isFor?: (programme: Programme, wish: Wish) => boolean;
  /** Null where it turns out that there is none. */
  readonly make: (programme: Programme, making: Making) => Promise<Bytes | null> | Bytes | null;
}
