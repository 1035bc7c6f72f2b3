/** From one consult to the set of its leaflet, with nothing of the disk and nothing of the other persons. */
import type { Consult } from '../../content/library.ts';
import type { Problem } from '../../content/problem.ts';
import type { PageAssets } from '../../outputs/html/assets.ts';
import type { Link } from '../../outputs/mail/messageText.ts';
import type { PaperAssets } from '../../outputs/pdf/leaflet.ts';
import { letterProblems, type Read } from '../../outputs/pdf/letterProblems.ts';
import type { LetterRefusal } from '../../outputs/pdf/letters.ts';
import { marked } from '../../outputs/text/mark.ts';
import type { Workshop } from '../../programme/assemble.ts';
import type { Programme } from '../../programme/programme.ts';
import type { Refusal } from '../../units/refusal.ts';
import type { InUse } from '../io/person.ts';
import type { PersonSet } from '../io/personSet.ts';
import type { OutFile } from '../io/site.ts';
import type { Workspace } from '../io/workspace.ts';
import type { Chosen } from './buildAsk.ts';
import { assembled, type Revisions } from '../../programme/revisions.ts';
import { setFiles } from './make.ts';
import { photoBytes } from '../../outputs/html/parts/photos.ts';
import { photosTooLarge } from '../../outputs/html/photosTooLarge.ts';

/** All that is known of one person: the consult to be made, the revisions before it, and what was written down of each. */
export interface Order extends Revisions {
  readonly consult: Consult;
}

export interface Tools {
  readonly workshop: Workshop;
  readonly pages: PageAssets;
  readonly paper: PaperAssets;
  /** Whether a sheet for the fridge is asked for. */
  readonly fridge: boolean;
}

/** A set and what is told of it, or what stands against the programme and against the letters it is printed with. */
export type OneSet =
  | { readonly set: PersonSet; readonly chosen: Chosen }
  | { readonly refusals: readonly Refusal[]; readonly letters: readonly LetterRefusal[] };

/** What stands against one, before it is put beside its file. */
export type Against = Extract<OneSet, { readonly refusals: unknown }>;

export type Marked = Programme & { readonly mark: string };

/** What was read of one person, for the revision in use. */
export function orderOf(
  { alias, revision, id }: InUse,
  { revisionsOf }: Pick<Workspace, 'revisionsOf'>,
): Order {
  const revisions = revisionsOf(alias);
  const consult = revisions.consults.find((one) => one.revision === revision);
  if (consult === undefined) throw new Error(`${id} was read before, and must be read again`);
  return { consult, ...revisions };
}

/** The programme of an order, with the mark of its make, where nothing stands against it. */
export async function oneProgramme(
  order: Order,
  {
    workshop,
    paper,
    pages,
  }: Pick<Tools, 'workshop' | 'paper'> & { readonly pages: Pick<PageAssets, 'photos'> },
): Promise<{ readonly programme: Marked } | Against> {
  const made = assembled(order.consult, order, workshop);
  if (!('programme' in made)) return { refusals: made.refusals, letters: [] };
  const photos = photosTooLarge(
    made.programme,
    (card) => photoBytes(pages.photos.get(card)),
    workshop.library.clinic,
  );
  if (photos !== null) return { refusals: [photos], letters: [] };
  const { letterRefusals } = await import('../../outputs/pdf/letters.ts');
  const letters = letterRefusals(made.programme, paper.fonts);
  return letters.length > 0 ? { refusals: [], letters } : { programme: marked(made.programme) };
}

/** Of a person whose pages nobody else's go with, and whose leaflet is not sealed. */
export async function oneSet(order: Order, tools: Tools): Promise<OneSet> {
  const made = await oneProgramme(order, tools);
  if (!('programme' in made)) return made;
  const { programme } = made;
  return { set: await setOf(programme, [], tools, null), chosen: chosenOf(programme) };
}

/** The same, at the lines of the files it comes from. */
export function problemsOf({ refusals, letters }: Against, read: Read): Problem[] {
  return [...refusals.map(read.asProblem), ...letterProblems(letters, read)];
}

export function chosenOf({ alias, revision, stage: { chosen }, step }: Programme): Chosen {
  return { alias, revision, stage: { chosen }, step };
}

/** Everything of one make. `pages`: those that came with the pages of others; the rest is made here. */
export async function setOf(
  programme: Marked,
  pages: readonly OutFile[],
  tools: Tools,
  link: Link | null,
): Promise<PersonSet> {
  const { alias, revision, mark } = programme;
  const { loadleaf, library } = tools.workshop;
  const before = `private/${alias}/`;
  const own = pages
    .filter(({ path }) => path.startsWith(before))
    .map(({ path, bytes }) => ({ name: path.slice(before.length), bytes }));
  const files = await setFiles(programme, { ...tools, link }, own);
  return { alias, revision, mark, files, loadleaf, library: library.version };
}
