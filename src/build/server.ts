/** Hands out the files of a folder to this machine, and nothing else to nobody else. */
import { readFileSync, realpathSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server } from 'node:http';
import { extname, join, relative, sep } from 'node:path';
import { contains } from './disk.ts';

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

const HEADERS = {
  'cache-control': 'no-store',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
};

// A page elsewhere must not reach this server through a name of its own that leads here.
const OWN_NAME = /^(127\.0\.0\.1|localhost)(:\d{1,5})?$/i;

/** Not listening yet. Only GET and HEAD; no listing, no hidden file, nothing outside the folder. */
export function siteServer(root: string): Server {
  return createServer((request, response) => {
    const { status, headers, body } = answerTo(request, root);
    response.writeHead(status, { ...HEADERS, ...headers, 'content-length': body.length });
    response.end(request.method === 'HEAD' ? undefined : body);
  });
}

interface Answer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Buffer;
}

/** What to answer; never throws, whatever the address. */
export function answerTo(
  { method, url, headers }: Pick<IncomingMessage, 'method' | 'url' | 'headers'>,
  root: string,
): Answer {
  if (!OWN_NAME.test(headers.host ?? '')) return plain(403, 'only for this machine');
  if (method !== 'GET' && method !== 'HEAD') return plain(405, 'only for reading', { allow: 'GET, HEAD' });
  try {
    const path = pathOf(url ?? '/');
    return path === null ? plain(400, 'not an address') : fileAnswer(path, root);
  } catch {
    return plain(404, 'not there');
  }
}

/** The decoded way below the root, decoded once; null for what is no address. */
function pathOf(url: string): string | null {
  try {
    const path = decodeURIComponent(new URL(url, 'http://127.0.0.1').pathname);
    return path.includes('\0') ? null : path;
  } catch {
    return null;
  }
}

function fileAnswer(path: string, root: string): Answer {
  if (path === '/') return movedTo('public', root, root);
  const place = join(root, path);
  if (!isShown(place, root)) return plain(404, 'not there');
  if (!statSync(place).isDirectory()) return fileAt(place);
  const index = join(place, 'index.html');
  if (!isShown(index, root)) return plain(404, 'not there');
  return path.endsWith('/') ? fileAt(index) : movedTo(relative(root, place), root, place);
}

// By real paths with a separator between: `site-leak` does not lie in `site`, and a link leads where it leads.
function isShown(place: string, root: string): boolean {
  if (statSync(place, { throwIfNoEntry: false }) === undefined) return false;
  const isHidden = relative(root, place)
    .split(sep)
    .some((step) => step.startsWith('.'));
  return !isHidden && contains(realpathSync(root), realpathSync(place));
}

function fileAt(place: string): Answer {
  const type = TYPES[extname(place)] ?? 'application/octet-stream';
  return { status: 200, headers: { 'content-type': type }, body: readFileSync(place) };
}

// Without the stroke at its end the links of a page would lead one folder too high.
function movedTo(folder: string, root: string, place: string): Answer {
  if (!isShown(join(place === root ? join(root, folder) : place, 'index.html'), root))
    return plain(404, 'not there');
  const location = `/${folder.split(sep).map(encodeURIComponent).join('/')}/`;
  return plain(302, 'moved', { location });
}

function plain(status: number, text: string, headers: Answer['headers'] = {}): Answer {
  return {
    status,
    headers: { 'content-type': 'text/plain; charset=utf-8', ...headers },
    body: Buffer.from(`${text}\n`),
  };
}
