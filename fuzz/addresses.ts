/** Addresses asked of `serve`: nothing outside the folder, nothing hidden, no listing, and it stands whatever is asked. */
import { mkdirSync, mkdtempSync, realpathSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { connect, type AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { liveChannel } from '../src/shell/server/live.ts';
import { siteServer } from '../src/shell/server/server.ts';
import type { Chance } from './chance.ts';
import type { Family, Verdict } from './family.ts';

const WAY = `/${'a1'.repeat(16)}`;
const SECRET = 'leaked-words';
const STATUSES = [200, 302, 400, 403, 404, 405, 431];

export const addresses: Family = {
  name: 'addresses',
  what: 'addresses and requests at the server',
  open: async () => {
    const top = realpathSync(mkdtempSync(join(tmpdir(), 'loadleaf-serve-')));
    const server = siteServer(siteBelow(top), liveChannel(), { page: '', worker: '' }, WAY);
    await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
    const { port } = server.address() as AddressInfo;
    return {
      attempt: (chance) => asked(port, requestOf(chance)),
      close: () => {
        server.closeAllConnections();
        server.close();
        rmSync(top, { recursive: true });
      },
    };
  },
};

/** What may be shown, and beside and below it what may not. */
function siteBelow(top: string): string {
  const root = join(top, 'site');
  for (const folder of ['site/public/exercises', 'site/private/finch', 'site-leak', 'site/.loadleaf-lock'])
    mkdirSync(join(top, folder), { recursive: true });
  const shown = ['public/index.html', 'public/exercises/bridge.html', 'private/finch/leaflet.html'];
  for (const file of shown) writeFileSync(join(root, file), '<p>shown</p>');
  for (const file of [
    'page.html',
    'site-leak/page.html',
    'site/public/.hidden.html',
    'site/.loadleaf-lock/1',
  ])
    writeFileSync(join(top, file), SECRET);
  symlinkSync(join(top, 'site-leak'), join(root, 'public/link'));
  return root;
}

const PIECES = [
  '/',
  '//',
  '..',
  '/../',
  '%2e%2e',
  '%2E%2e%2f',
  '..%5c',
  '\\',
  '%5c',
  '.',
  '%00',
  '%',
  '%ff',
  '%c0%ae',
  '%252e%252e%252f',
  '?',
  '#',
  ';',
  'public',
  'private',
  'finch',
  'leaflet.html',
  'page.html',
  'site-leak',
  'link',
  '.hidden.html',
  '.loadleaf-lock',
  '1',
  'exercises',
  'index.html',
  '.live/',
  '.live/page.js',
  'http://127.0.0.1/',
  'file:///etc/passwd',
  '//elsewhere.example',
  'é',
  '日',
  '[::1',
  '*',
  'a'.repeat(300),
];
/** What is there, shown or not. */
const KNOWN = [
  '/public/index.html',
  '/public/',
  '/public/exercises/bridge.html',
  '/private/finch/leaflet.html',
  '/public/.hidden.html',
  '/.loadleaf-lock/1',
  '/public/link/page.html',
  '/../page.html',
  '/../site-leak/page.html',
  '/.live/changes',
];
const HOSTS = [
  '127.0.0.1',
  '127.0.0.1',
  '127.0.0.1',
  'localhost',
  'localhost:1',
  'elsewhere.example',
  '',
  '127.0.0.1@a',
  '[::1]',
];
const METHODS = ['GET', 'GET', 'GET', 'GET', 'HEAD', 'POST', 'OPTIONS', 'TRACE', 'get', 'PUT'];
const HEADERS = [
  'Range: bytes=0-1',
  'Origin: null',
  'X: \u001b',
  'Expect: 100-continue',
  'Content-Length: -1',
  'Transfer-Encoding: chunked',
];

interface Request {
  readonly host: string;
  readonly path: string;
  readonly bytes: string;
}

function requestOf(chance: Chance): Request {
  const pieces = Array.from({ length: 1 + chance.below(6) }, () => chance.of(PIECES)).join(
    chance.of(['', '/']),
  );
  const known = chance.of(KNOWN);
  if (chance.onceIn(4))
    return asRequest(`${WAY}${chance.onceIn(2) ? known : disguised(known, chance)}`, chance);
  const start = chance.of([`${WAY}/`, `${WAY}/`, `${WAY}/public/`, WAY, '/', '', WAY.toUpperCase()]);
  return asRequest(`${start}${pieces}`, chance);
}

/** The same address in other letters: an escape, a detour. */
function disguised(path: string, chance: Chance): string {
  const at = chance.below(path.length);
  const escape = `%${path.charCodeAt(at).toString(16)}`;
  return (
    path.slice(0, at) +
    chance.of([escape, '/./', '/x/../', '/x/%2e%2e/', '//']) +
    path.slice(at + chance.below(2))
  );
}

function asRequest(path: string, chance: Chance): Request {
  const host = chance.of(HOSTS);
  const more = chance.onceIn(4) ? `${chance.of(HEADERS)}\r\n` : '';
  const bytes = `${chance.of(METHODS)} ${path} HTTP/1.1\r\nHost: ${host}\r\n${more}Connection: close\r\n\r\n`;
  return { host, path, bytes };
}

async function asked(port: number, { path, host, bytes }: Request): Promise<Verdict> {
  // What a server says before its answer (RFC 9110, 15.2) is no answer.
  const answer = (await answerOf(port, bytes)).replace(/^HTTP\/1\.1 100 Continue\r\n\r\n/, '');
  const status = Number(/^HTTP\/1\.1 (\d+)/.exec(answer)?.[1] ?? NaN);
  const location = /\r\nlocation: (.*)\r\n/i.exec(answer)?.[1];
  const isOwn = /^(127\.0\.0\.1|localhost)(:\d+)?$/.test(host);
  const faults = [
    STATUSES.includes(status) ? null : `answered ${status || JSON.stringify(answer.slice(0, 80))}`,
    answer.includes(SECRET) ? 'leaks what is outside or hidden' : null,
    /root:|page\.html|leaflet\.html/.test(bodyOf(answer))
      ? 'lists a folder or shows a file of the system'
      : null,
    status === 200 && !isOwn ? 'answers to another host' : null,
    (status === 200 || status === 302) && !path.startsWith(`${WAY}/`) ? 'answers without its path' : null,
    location !== undefined && !location.startsWith(`${WAY}/`) ? `sends to ${location}` : null,
  ].filter((one) => one !== null);
  return { end: status === 200 ? 'built' : 'refused', tried: JSON.stringify(bytes), faults };
}

function bodyOf(answer: string): string {
  return answer.slice(answer.indexOf('\r\n\r\n') + 4);
}

// A stream of changes never ends by itself: what has come by then is the answer.
const MOST_MS = 400;

function answerOf(port: number, bytes: string): Promise<string> {
  return new Promise((resolve, reject) => {
    let answer = '';
    const socket = connect(port, '127.0.0.1', () => socket.write(bytes));
    socket.setTimeout(MOST_MS, () => socket.destroy());
    socket.on('data', (data) => (answer += data.toString('latin1')));
    socket.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'ECONNRESET' && error.code !== 'EPIPE') reject(error);
    });
    socket.on('close', () => resolve(answer));
  });
}
