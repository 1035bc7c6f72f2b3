/** The command that shows the built site at 127.0.0.1 and builds again when a file changes. For the author's own eyes. */
import { randomBytes } from 'node:crypto';
import { notBuiltText, tellOf } from './build.ts';
import { buildSite } from '../building/buildSite.ts';
import type { Built } from '../building/built.ts';
import { counted } from '../io/counted.ts';
import { EXIT } from '../exit.ts';
import type { Flags } from '../flags.ts';
import { contains, isFolder } from '../io/disk.ts';
import { foldersOf, type Folders } from '../io/folders.ts';
import { liveChannel, type Live } from '../server/live.ts';
import { rebuilder, type Meanwhile } from '../server/rebuilder.ts';
import type { Report } from '../report.ts';
import { siteServer } from '../server/server.ts';
import { liveScripts } from '../io/assets.ts';
import { Stop } from '../io/stop.ts';
import { onDay } from '../io/today.ts';
import { watchTree, type Watching } from '../server/watch.ts';

// 128 bits, as is common for the name of a session: nobody tries them out (from memory).
const PATH_BYTES = 16;

/** Ends with Ctrl-C. Problems are printed and shown on open pages; where the library has an error the last good site stays up. */
export async function serve(flags: Flags, report: Report): Promise<number> {
  const folders = foldersOf(flags);
  const live = liveChannel();
  const haste = { libraryWritten: () => undefined, isStale: () => false, settled: async () => undefined };
  const built = await buildSite(folders, { aliases: [], on: onDay(flags), flags, haste });
  await tellOf(built, folders.out, report);
  await tellPages(built, live);
  // Whoever else uses this machine finds the port, but not the path: it is another in every run.
  const way = `/${randomBytes(PATH_BYTES).toString('hex')}`;
  const door = { folder: folders.consults, key: randomBytes(PATH_BYTES).toString('hex') };
  const server = siteServer(folders.out, live, liveScripts(), way, door);
  const port = await listening(server, flags.port ?? 0);
  sayAddresses(`http://127.0.0.1:${port}${way}`, built, folders.out, report);
  const again = rebuilder((meanwhile) => buildAgain(folders, flags, meanwhile, live, report), report);
  const watchers = watched(folders).map((folder) => watching(folder, again.wake, report));
  await stopAsked();
  again.stop();
  for (const watcher of watchers) watcher.close();
  server.close();
  server.closeAllConnections();
  return EXIT.good;
}

async function buildAgain(
  folders: Folders,
  flags: Flags,
  meanwhile: Meanwhile,
  live: Live,
  report: Report,
): Promise<void> {
  try {
    const haste = { libraryWritten: () => live.rebuilt('public'), ...meanwhile };
    const built = await buildSite(folders, { aliases: [], on: onDay(flags), flags, haste });
    const { outcome, workspace, problems, failed } = built;
    await report.problems(problems, workspace.files);
    if (outcome === null) report.warn(notBuiltText(built));
    for (const alias of failed) report.warn(`${alias}: no programme was written.`);
    const changed = [...(outcome?.written ?? []), ...(outcome?.removed ?? [])];
    if (built.setAside.length > 0 || changed.some((path) => path.startsWith('private/')))
      live.rebuilt('private');
    if (changed.length > 0) report.say(`Built again: ${counted(changed.length, 'changed file')}.`);
    else if (outcome !== null && live.notice().heading !== '') report.say('Good again; no file is changed.');
    await tellPages(built, live);
  } catch (error) {
    if (!(error instanceof Stop && error.exit === EXIT.busy))
      live.say('Nothing was built.', error instanceof Error ? error.message : String(error));
    throw error;
  }
}

/** What stands against the build, above every open page. */
async function tellPages(built: Built, live: Live): Promise<void> {
  const { outcome, failed, problems, workspace } = built;
  const { lineFinder, problemText } = await import('../../content/problemText.ts');
  const lineOf = lineFinder(workspace.files);
  const text = problems.map((problem) => problemText(problem, lineOf(problem.file, problem.line)));
  const heading =
    outcome === null ? notBuiltText(built) : failed.length > 0 ? `Not built: ${failed.join(', ')}.` : '';
  live.say(heading, heading === '' ? '' : text.join('\n\n'));
}

function listening(server: ReturnType<typeof siteServer>, port: number): Promise<number> {
  return new Promise((resolve, reject) => {
    server.once('error', ({ message }) =>
      reject(new Stop(EXIT.busy, `cannot listen at 127.0.0.1, port ${port}: ${message}`)),
    );
    server.listen(port, '127.0.0.1', () => {
      const address = server.address();
      resolve(typeof address === 'object' && address !== null ? address.port : port);
    });
  });
}

function sayAddresses(at: string, { programmes }: Built, out: string, report: Report): void {
  const pages = [
    { alias: null, address: `${at}/public/` },
    ...programmes.map(({ alias }) => ({ alias, address: `${at}/private/${alias}/leaflet.html` })),
  ];
  for (const { address } of pages) report.say(address);
  report.say(`The desk: ${at}/public/desk/`);
  report.say('Ctrl-C stops.');
  report.answer({ ok: true, out, pages });
}

// The consults usually lie inside the library folder.
function watched({ content, consults }: Folders): string[] {
  return contains(content, consults) || !isFolder(consults) ? [content] : [content, consults];
}

function watching(folder: string, wake: () => void, report: Report): Watching {
  return watchTree(folder, wake, ({ message }) =>
    report.warn(`Changes in ${folder} are not seen any longer (${message}); start again.`),
  );
}

function stopAsked(): Promise<void> {
  return new Promise((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
}
