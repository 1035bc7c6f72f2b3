/** Shows the built site at 127.0.0.1 and builds again when a file changes. For the author's own eyes only. */
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import { readFileSync, realpathSync, statSync, watch } from 'node:fs';
import { extname, join, sep } from 'node:path';
import { build } from './build.ts';
import { EXIT } from './exit.ts';
import type { Flags } from './flags.ts';
import { foldersOf } from './folders.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.pdf': 'application/pdf',
  '.woff2': 'font/woff2',
  '.webp': 'image/webp',
  '.jpg': 'image/jpeg',
  '.png': 'image/png',
};

// An editor that saves in two strokes must not start two builds.
const SETTLE_MS = 150;

/** Resolves when the server is stopped with Ctrl-C. Problems are printed and the last good site stays up. */
export async function serve(flags: Flags): Promise<number> {
  const { content, consults, out } = foldersOf(flags);
  await build(flags, []);
  const server = createServer((request, response) => answer(out, request, response));
  await new Promise<void>((listening) => server.listen(flags.port ?? 0, '127.0.0.1', listening));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  process.stderr.write(
    `http://127.0.0.1:${port}/public/\nhttp://127.0.0.1:${port}/private/<alias>/leaflet.html\nCtrl-C stops.\n`,
  );
  const rebuild = settled(() => build(flags, []));
  const watchers = [...new Set([content, consults])].map((folder) =>
    watch(folder, { recursive: true }, rebuild),
  );
  await new Promise<void>((stop) => process.once('SIGINT', stop));
  for (const watcher of watchers) watcher.close();
  server.close();
  return EXIT.good;
}

/** Runs the work once changes have settled, and once more when something changed while it ran. */
function settled(work: () => Promise<number>): () => void {
  let waiting: NodeJS.Timeout | undefined;
  let running = false;
  let again = false;
  const go = async (): Promise<void> => {
    if (running) {
      again = true;
      return;
    }
    running = true;
    try {
      await work();
    } catch (error) {
      process.stderr.write(`loadleaf: ${error instanceof Error ? error.message : String(error)}\n`);
    }
    running = false;
    if (again) {
      again = false;
      await go();
    }
  };
  return () => {
    clearTimeout(waiting);
    waiting = setTimeout(() => void go(), SETTLE_MS);
  };
}

function answer(root: string, request: IncomingMessage, response: ServerResponse): void {
  const end = (status: number, body: string | Buffer, type = 'text/plain; charset=utf-8'): void => {
    response.writeHead(status, {
      'content-type': type,
      'cache-control': 'no-store',
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
    });
    response.end(request.method === 'HEAD' ? undefined : body);
  };
  try {
    // A page elsewhere must not reach this server through a name of its own.
    if (!/^(127\.0\.0\.1|localhost)(:\d+)?$/.test(request.headers.host ?? ''))
      return end(403, 'only for this machine');
    if (request.method !== 'GET' && request.method !== 'HEAD') return end(405, 'only for reading');
    const file = fileFor(root, request.url ?? '/');
    return file === null
      ? end(404, 'not there')
      : end(200, readFileSync(file), TYPES[extname(file)] ?? 'application/octet-stream');
  } catch {
    return end(400, 'not an address');
  }
}

/** The file an address names, inside the root and nowhere else; null when there is none. */
function fileFor(root: string, url: string): string | null {
  const path = decodeURIComponent(new URL(url, 'http://127.0.0.1').pathname);
  if (path.includes('\0')) return null;
  const place = join(root, path);
  const found =
    statSync(place, { throwIfNoEntry: false })?.isDirectory() === true ? join(place, 'index.html') : place;
  if (statSync(found, { throwIfNoEntry: false })?.isFile() !== true) return null;
  return realpathSync(found).startsWith(realpathSync(root) + sep) ? found : null;
}
