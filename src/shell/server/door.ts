/**
 * The desk's way to the folder of the consults, through `serve` alone: reads and writes consults and their logs, nothing else.
 * Whoever comes must come from the server's own page, by its own name, with the key that this run gave to that page.
 */
import { createHash, timingSafeEqual } from 'node:crypto';
import { existsSync, lstatSync, readdirSync, readFileSync } from 'node:fs';
import type { IncomingMessage } from 'node:http';
import { join } from 'node:path';
import { MOST_TEXT_BYTES } from '../../content/fileSize.ts';
import { isPersonFile } from '../../desk/folder/personFiles.ts';
import { putFile } from '../io/disk.ts';

/** Below the path of the run; hidden, so that no file of a site has it. */
export const DOOR = '/.door/';

export interface Door {
  /** The folder of the consults. */
  readonly folder: string;
  readonly key: string;
}

export interface DoorAnswer {
  readonly status: number;
  readonly type: string;
  readonly body: string;
}

/** What to answer at the door; never throws, whatever comes. `inside`: what comes after the door in the address. */
export function doorAnswer(
  { method = '', headers }: Pick<IncomingMessage, 'method' | 'headers'>,
  inside: string,
  sent: Buffer,
  door: Door,
): DoorAnswer {
  if (!isKnown(headers, door.key)) return plain(403, 'only for the desk of this server');
  try {
    if (inside === 'consults' && method === 'GET') return json(namesIn(door.folder));
    const name = inside.startsWith('consults/') ? decodeURIComponent(inside.slice('consults/'.length)) : '';
    if (!isPersonFile(name)) return plain(404, 'no such consult');
    const place = join(door.folder, name);
    if (method === 'GET')
      return isFile(place) ? text(200, readFileSync(place, 'utf8')) : plain(404, 'no such consult');
    if (method === 'PUT') return put(place, sent, String(headers['if-match'] ?? ''));
    return plain(405, 'read or write');
  } catch (error) {
    return plain(500, error instanceof Error ? error.message : String(error));
  }
}

/** A page of another origin sends its own name; one that was led here by another name sends that as the host. */
function isKnown(headers: IncomingMessage['headers'], key: string): boolean {
  const { host = '', origin, 'sec-fetch-site': site } = headers;
  const given = Buffer.from(String(headers['x-loadleaf-key'] ?? ''));
  const wanted = Buffer.from(key);
  return (
    (origin === undefined || origin === `http://${host}`) &&
    (site === undefined || site === 'same-origin') &&
    given.length === wanted.length &&
    timingSafeEqual(given, wanted)
  );
}

/** Writes where what the desk read still stands; else nothing, and what stands there is the answer. */
function put(place: string, sent: Buffer, known: string): DoorAnswer {
  if (sent.length > MOST_TEXT_BYTES) return plain(413, `at most ${MOST_TEXT_BYTES / 1024} kB`);
  if (existsSync(place) && !isFile(place)) return plain(409, 'there is something else in its place');
  const there = existsSync(place) ? readFileSync(place) : null;
  const now = there === null ? 'none' : createHash('sha256').update(there).digest('hex');
  if (now !== known) return text(412, there?.toString('utf8') ?? '');
  putFile(place, sent, true);
  return plain(204, '');
}

function namesIn(folder: string): readonly string[] {
  const names = existsSync(folder) ? readdirSync(folder) : [];
  return names.filter((name) => isPersonFile(name) && isFile(join(folder, name))).sort();
}

function isFile(place: string): boolean {
  return lstatSync(place, { throwIfNoEntry: false })?.isFile() === true;
}

function json(value: unknown): DoorAnswer {
  return { status: 200, type: 'application/json; charset=utf-8', body: JSON.stringify(value) };
}

function text(status: number, body: string): DoorAnswer {
  return { status, type: 'text/plain; charset=utf-8', body };
}

function plain(status: number, words: string): DoorAnswer {
  return text(status, words === '' ? '' : `${words}\n`);
}
