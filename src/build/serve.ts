/** The command that shows the built site at 127.0.0.1 and builds again when a file changes. For the author's own eyes. */
import { watch, type FSWatcher } from 'node:fs';
import { tellOf } from './build.ts';
import { buildSite, type Built } from './buildSite.ts';
import { EXIT } from './exit.ts';
import type { Flags } from './flags.ts';
import { contains } from './disk.ts';
import { foldersOf, isFolder, type Folders } from './folders.ts';
import { rebuilder } from './rebuilder.ts';
import type { Report } from './report.ts';
import { siteServer } from './server.ts';
import { Stop } from './stop.ts';

/** Ends with Ctrl-C. Problems are printed; where the library has an error the last good site stays up. */
export async function serve(flags: Flags, report: Report): Promise<number> {
  const folders = foldersOf(flags);
  const built = await buildAndTell(folders, report);
  const server = siteServer(folders.out);
  const port = await listening(server, flags.port ?? 0);
  sayAddresses(`http://127.0.0.1:${port}`, built, folders.out, report);
  const again = rebuilder(async () => {
    await buildAndTell(folders, report);
  }, report);
  const watchers = watched(folders).map((folder) => watching(folder, again.wake, report));
  await stopAsked();
  again.stop();
  for (const watcher of watchers) watcher.close();
  server.close();
  server.closeAllConnections();
  return EXIT.good;
}

async function buildAndTell(folders: Folders, report: Report): Promise<Built> {
  const built = await buildSite(folders, []);
  await tellOf(built, folders.out, report);
  return built;
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
  report.say('Ctrl-C stops.');
  report.answer({ ok: true, out, pages });
}

// The consults usually lie inside the library folder.
function watched({ content, consults }: Folders): string[] {
  return contains(content, consults) || !isFolder(consults) ? [content] : [content, consults];
}

function watching(folder: string, wake: () => void, report: Report): Pick<FSWatcher, 'close'> {
  const cannot = ({ message }: Error): void =>
    report.warn(`Changes in ${folder} are not seen any longer (${message}); start again.`);
  try {
    return watch(folder, { recursive: true }, wake).on('error', cannot);
  } catch (error) {
    cannot(error as Error);
    return { close: () => undefined };
  }
}

function stopAsked(): Promise<void> {
  return new Promise((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
}
