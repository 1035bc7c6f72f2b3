/** The command that writes the site: the library's public part, and a leaflet and record for every consult. */
import { buildSite } from '../building/buildSite.ts';
import type { Built } from '../building/built.ts';
import { libraryText } from '../io/counted.ts';
import { EXIT } from '../exit.ts';
import type { Flags } from '../flags.ts';
import { foldersOf } from '../io/folders.ts';
import type { Outcome } from '../io/site.ts';
import type { Report } from '../report.ts';
import { shownPath } from '../io/shownPath.ts';
import { onDay } from '../io/today.ts';
import { readSealedList } from '../io/sealedList.ts';
import { sealingOf, stillOpen } from '../building/sealing.ts';

const NOT_BUILT = 'The library has errors: nothing was built, and nothing was changed';

/** What became of a build that the library stood against. */
export function notBuiltText({ setAside }: Pick<Built, 'setAside'>): string {
  return setAside.length === 0
    ? `${NOT_BUILT}.`
    : `${NOT_BUILT} but for what must not be followed: the leaflet of ${setAside.join(', ')} is set aside.`;
}

/** Exit 65 when a consult has a Problem (the others are written), or a library file (nothing is). */
export async function build(flags: Flags, aliases: readonly string[], report: Report): Promise<number> {
  const folders = foldersOf(flags);
  const sealing = await sealingOf(flags);
  const built = await buildSite(folders, { aliases, on: onDay(flags), flags, sealing });
  const isGood = await tellOf(built, folders.out, report);
  if (sealing === null && readSealedList(folders.out).length > 0)
    report.warn('Sealed leaflets stand as they were; build with --sealed to renew them.');
  report.answer({
    ok: isGood,
    out: folders.out,
    files: built.outcome?.files ?? [],
    programmes: built.programmes.map(({ alias, revision, stage, step }) => ({
      alias,
      revision,
      stage: stage.chosen,
      step,
    })),
    problems: built.problems,
  });
  return isGood ? EXIT.good : EXIT.content;
}

/** Prints what was built and what stood against the rest; whether there was no error. */
export async function tellOf(built: Built, out: string, report: Report): Promise<boolean> {
  const { workspace, problems, outcome } = built;
  await report.problems(problems, workspace.files);
  const shown = shownPath(out);
  if (outcome === null) report.warn(notBuiltText(built));
  else tellWritten(built, outcome, shown, report);
  tellStillOpen(built, out, report);
  if (!built.isClosed)
    report.warn(
      `This disk keeps no file modes: who may read ${shown}/private is for the rights of that folder to say. Set them so that only you may.`,
    );
  return outcome !== null && problems.every(({ severity }) => severity !== 'error');
}

function tellWritten(built: Built, outcome: Outcome, shown: string, report: Report): void {
  const {
    programmes,
    failed,
    workspace: { counts },
  } = built;
  for (const { alias, revision, stage, step } of programmes) {
    const where = stage.chosen === 'keepGoing' ? 'keep-going stage' : `stage ${stage.chosen}`;
    report.say(
      `${alias}, revision ${revision}: ${where}, step ${step}  ${shown}/private/${alias}/leaflet.html, leaflet.pdf, record.html`,
    );
  }
  tellSealed(built, shown, report);
  for (const alias of failed)
    report.warn(`${alias}: no programme was written${goneText(alias, outcome, shown)}.`);
  tellRest(built, outcome, shown, report);
  if (outcome.files.some(({ path }) => path === 'public/index.html'))
    report.say(`Library: ${libraryText(counts)}  ${shown}/public/index.html`);
  report.say(
    `${outcome.files.length} files in ${shown}. Only ${shown}/public is for the web; ${shown}/private is for the persons named.`,
  );
}

/** The link stands in a file, the words on the screen of the one who builds and nowhere else. */
function tellSealed({ sealed }: Built, shown: string, report: Report): void {
  for (const { alias, words } of sealed) {
    report.say(`${alias}: sealed; its link is in ${shown}/private/${alias}/link.txt`);
    if (words === null) continue;
    // What is no terminal may be a file or a log.
    if (process.stderr.isTTY) report.warn(`${alias}: tell these five words by telephone: ${words}`);
    else report.warn(`${alias}: its five words are shown on a terminal only; build there.`);
  }
}

/** Sealed leaflets that a log takes back, and those that an error leaves where they are. */
function tellStillOpen({ workspace, outcome }: Built, out: string, report: Report): void {
  const { toBeSeen, stopped, unreadable } = workspace;
  if (outcome === null && readSealedList(out).length > 0)
    report.warn('Sealed leaflets were not renewed, and no log was looked back on.');
  for (const { alias, because } of toBeSeen)
    report.warn(
      `${alias}: the log leads to "stop and be seen": ${because.join(' ')} The sealed leaflet is taken back: put the new for/ on the host, and ring.`,
    );
  for (const alias of stillOpen(out, stopped))
    report.warn(
      `${alias}: its sealed leaflet is STILL OPEN to whoever has the link, since ${unreadable.includes(alias) ? 'the screen of its newest consult cannot be read and may say anything' : 'its newest consult has an error'}. Mend it, or write withdraw: yes into it, and build again.`,
    );
}

/** Leaflets that are out of force though nobody asked for their build, and what hands have changed. */
function tellRest(
  { failed, workspace }: Built,
  { setAside, left, restored }: Outcome,
  shown: string,
  report: Report,
): void {
  for (const alias of setAside.filter((one) => !failed.includes(one))) {
    const why = workspace.blocked.includes(alias)
      ? 'its screen stops every programme'
      : 'there is no consult any more';
    report.warn(`${alias}: ${why}; its leaflet is set aside in ${shown}/private/${alias}/set-aside.`);
  }
  for (const path of left)
    report.warn(`${shown}/${path} is no longer part of the site but was changed by hand; it is left.`);
  for (const path of restored) report.warn(`${shown}/${path} was changed by hand; it is written anew.`);
}

/** What became of the leaflet of somebody who may follow it no longer. */
function goneText(alias: string, { setAside }: Outcome, shown: string): string {
  return setAside.includes(alias) ? `; its leaflet is set aside in ${shown}/private/${alias}/set-aside` : '';
}
