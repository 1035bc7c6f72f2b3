/** From consults to the files of their leaflets, in memory; nothing here touches the disk. */
import type { Consult } from '../content/library.ts';
import type { Problem } from '../content/problem.ts';
import type { PageAssets } from '../page/assets.ts';
import type { PaperAssets } from '../paper/leaflet.ts';
import { assembleProgramme, type Workshop } from '../programme/assemble.ts';
import type { Programme } from '../programme/programme.ts';
import type { OutFile } from './output.ts';
import type { Workspace } from './workspace.ts';

export interface Made {
  readonly programmes: readonly Programme[];
  readonly problems: readonly Problem[];
}

/** The programme of every consult, and the Problems of those that have none. */
export function makeProgrammes(consults: readonly Consult[], workspace: Workspace, workshop: Workshop): Made {
  const programmes: Programme[] = [];
  const problems: Problem[] = [];
  for (const consult of consults) {
    const made = assembleProgramme(consult, previousOf(consult, workspace, workshop), workshop);
    if ('refusals' in made) problems.push(...made.refusals.map(workspace.asProblem));
    else programmes.push(made.programme);
  }
  return { programmes, problems };
}

/** The revision before, made again from its own file; null when there is none that can be made. */
function previousOf(consult: Consult, { consults }: Workspace, workshop: Workshop): Programme | null {
  const before = consults
    .filter(({ alias, revision }) => alias === consult.alias && revision < consult.revision)
    .at(-1);
  if (before === undefined) return null;
  const made = assembleProgramme(before, null, workshop);
  return 'programme' in made ? made.programme : null;
}

/** A leaflet whose text has a letter the typeface lacks is refused before anything is drawn. */
export async function letterProblems(
  programme: Programme,
  paper: PaperAssets,
  workspace: Workspace,
): Promise<Problem[]> {
  const { letterRefusals } = await import('../paper/letters.ts');
  return letterRefusals(programme, paper.fonts).map(workspace.asProblem);
}

/** PDF, JSON and note of one programme; its pages come with those of the others. */
export async function papersOf(programme: Programme, paper: PaperAssets): Promise<OutFile[]> {
  const [{ leafletPdf }, { recordJson }, { noteText }] = await Promise.all([
    import('../paper/leaflet.ts'),
    import('../record/recordJson.ts'),
    import('../record/noteText.ts'),
  ]);
  const folder = `private/${programme.alias}`;
  return [
    { path: `${folder}/leaflet.pdf`, bytes: await leafletPdf(programme, paper) },
    { path: `${folder}/record.json`, bytes: recordJson(programme) },
    { path: `${folder}/note.txt`, bytes: noteText(programme) },
  ];
}

/** A few pages are rendered directly; Eleventy takes half a second to start and pays from many on. */
export async function pagesOf(
  programmes: readonly Programme[],
  workshop: Workshop,
  assets: PageAssets,
  templates: string,
  onlyThese: boolean,
): Promise<OutFile[]> {
  const { programmePages, renderPages } = await import('../page/site.ts');
  const { name, contact } = workshop.library.clinic;
  const front = {
    language: 'en' as const,
    clinic: { name, contact, logo: null },
    notice: (await import('../programme/phrases/opening.ts')).NOTICE.slice(0, 1),
  };
  const pages = onlyThese
    ? programmes.flatMap((one) => programmePages(one, assets))
    : await renderPages(programmes, front, assets, templates);
  return pages.map(({ path, content }) => ({ path, bytes: content }));
}
