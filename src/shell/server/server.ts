/** Hands out the files of a folder to this machine, and nothing else to nobody else. */
import { readFileSync, realpathSync, statSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { extname, join, relative, sep } from 'node:path';
import { MOST_TEXT_BYTES } from '../../content/fileSize.ts';
import { DOOR, doorAnswer, type Door } from './door.ts';
import { contains } from '../io/disk.ts';
import { LIVE_CHANGES, LIVE_SCRIPT, LIVE_WORKER, livePage, type Live, type Part } from './live.ts';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.pdf': 'application/pdf',
  '.ttf': 'font/ttf',
  '.woff2': 'font/woff2',
  '.webp': 'image/webp',
  '.jpg': 'image/jpeg',
  '.png': 'image/png',
};

const HEADERS = {
  'cache-control': 'no-store',
  'x-content-type-options': 'nosniff',
  'referrer-policy': 'no-referrer',
  // No page elsewhere may show a leaflet or a photo as its own.
  'cross-origin-resource-policy': 'same-origin',
  'x-frame-options': 'SAMEORIGIN',
};

// What a browser would show, were it there.
const IS_PAGE = /(?:\/|\.html)$/;

// A page elsewhere must not reach this server through a name of its own that leads here.
const OWN_NAME = /^(127\.0\.0\.1|localhost)(:\d{1,5})?$/i;

/** What `serve` adds to the site it shows. */
export interface LiveScripts {
  /** Of each page. */
  readonly page: string;
  /** Of all of them together. */
  readonly worker: string;
}

/**
 * Not listening yet. Only GET and HEAD; no listing, no hidden file, nothing outside the folder, and nothing at all for
 * those who do not know `way`, the path of this run (`/` and what nobody guesses). Pages are handed out with the script
 * of `live`, so that they follow what is built.
 */
export function siteServer(
  root: string,
  live: Live,
  scripts: LiveScripts,
  way: string,
  door: Door | null = null,
): Server {
  return createServer((request, response) => {
    const inside = below(way, request.url) ?? '';
    if (door !== null && inside.startsWith(DOOR)) return void atDoor(request, response, inside, door);
    const answer = answerTo(request, root, way);
    if (answer === 'changes') return follow(live, request, response);
    const { status, headers, body } =
      typeof answer === 'string'
        ? scriptAnswer(scripts[answer])
        : withLive(withKey(answer, inside, door), partOf(inside), live, way);
    response.writeHead(status, { ...HEADERS, ...headers, 'content-length': body.length });
    response.end(request.method === 'HEAD' ? undefined : body);
  });
}

// A consult has some kB; more is not even listened to.
const MOST_SENT = MOST_TEXT_BYTES + 1;

async function atDoor(
  request: IncomingMessage,
  response: ServerResponse,
  inside: string,
  door: Door,
): Promise<void> {
  const parts: Buffer[] = [];
  let length = 0;
  try {
    for await (const part of request as AsyncIterable<Buffer>) {
      if (length < MOST_SENT) parts.push(part);
      length += part.length;
    }
  } catch {
    return;
  }
  const { headers } = request;
  const { status, type, body } = OWN_NAME.test(headers.host ?? '')
    ? doorAnswer(request, inside.slice(DOOR.length), Buffer.concat(parts), door)
    : { status: 403, type: 'text/plain; charset=utf-8', body: 'only for this machine\n' };
  response.writeHead(status, { ...HEADERS, 'content-type': type });
  response.end(body);
}

/** The desk, and no other page, is given the key of the door. */
function withKey(answer: Answer, inside: string, door: Door | null): Answer {
  if (door === null || answer.status !== 200 || !/^\/public\/desk\/(index\.html)?$/.test(inside))
    return answer;
  const markup = answer.body
    .toString()
    .replace('</head>', () => `<meta name="loadleaf-door" content="${door.key}" /></head>`);
  return { ...answer, body: Buffer.from(markup) };
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
  way: string,
): Answer | keyof LiveScripts | 'changes' {
  if (!OWN_NAME.test(headers.host ?? '')) return plain(403, 'only for this machine');
  if (method !== 'GET' && method !== 'HEAD') return plain(405, 'only for reading', { allow: 'GET, HEAD' });
  const inside = below(way, url);
  if (inside === null) return plain(404, 'not there');
  if (inside === LIVE_SCRIPT) return 'page';
  if (inside === LIVE_WORKER) return 'worker';
  if (inside === LIVE_CHANGES) return 'changes';
  try {
    const path = pathOf(inside);
    if (path === null) return plain(400, 'not an address');
    const answer = fileAnswer(path, root, way);
    return answer.status === 404 && IS_PAGE.test(path) ? goneAnswer() : answer;
  } catch {
    return plain(404, 'not there');
  }
}

/** What of an address comes after the path of the run; null where that is another. */
function below(way: string, url: string | undefined): string | null {
  return url?.startsWith(`${way}/`) === true ? url.slice(way.length) : null;
}

function follow(live: Live, { method }: IncomingMessage, response: ServerResponse): void {
  response.writeHead(200, { ...HEADERS, 'content-type': 'text/event-stream; charset=utf-8' });
  if (method === 'HEAD') response.end();
  else live.follow(response);
}

function scriptAnswer(script: string): Answer {
  return { status: 200, headers: { 'content-type': TYPES['.js'] ?? '' }, body: Buffer.from(script) };
}

function withLive({ status, headers, body }: Answer, part: Part, live: Live, way: string): Answer {
  if (headers['content-type'] !== TYPES['.html']) return { status, headers, body };
  return { status, headers, body: Buffer.from(livePage(body.toString(), part, live.notice(), way)) };
}

function partOf(url: string): Part {
  return pathOf(url)?.startsWith('/private/') === true ? 'private' : 'public';
}

// A leaflet that was taken away comes back when its consult is mended; the page waits for it.
function goneAnswer(): Answer {
  const page =
    '<!doctype html><html lang="en"><head><meta charset="utf-8" /><title>Not there</title></head><body><p>There is no such page now. It is shown as soon as there is one.</p></body></html>\n';
  return { status: 404, headers: { 'content-type': TYPES['.html'] ?? '' }, body: Buffer.from(page) };
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

function fileAnswer(path: string, root: string, way: string): Answer {
  if (path === '/') return movedTo('public', root, root, way);
  const place = join(root, path);
  if (!isShown(place, root)) return plain(404, 'not there');
  if (!statSync(place).isDirectory()) return fileAt(place);
  const index = join(place, 'index.html');
  if (!isShown(index, root)) return plain(404, 'not there');
  return path.endsWith('/') ? fileAt(index) : movedTo(relative(root, place), root, place, way);
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
function movedTo(folder: string, root: string, place: string, way: string): Answer {
  if (!isShown(join(place === root ? join(root, folder) : place, 'index.html'), root))
    return plain(404, 'not there');
  const location = `${way}/${folder.split(sep).map(encodeURIComponent).join('/')}/`;
  return plain(302, 'moved', { location });
}

function plain(status: number, text: string, headers: Answer['headers'] = {}): Answer {
  return {
    status,
    headers: { 'content-type': 'text/plain; charset=utf-8', ...headers },
    body: Buffer.from(`${text}\n`),
  };
}
