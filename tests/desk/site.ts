/** The built desk on a server of its own, and Chromium to open it. */
import { readFileSync } from 'node:fs';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize } from 'node:path';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { spawnSync } from 'node:child_process';
import type { AddressInfo } from 'node:net';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
};

export interface Served {
  /** Of the desk. */
  readonly address: string;
  readonly server: Server;
}

export interface Site extends Served {
  readonly out: string;
}

/** The demo built by the command, and its public folder served. `more`: what is said to the command besides. */
export async function builtSite(...more: readonly string[]): Promise<Site> {
  const out = mkdtempSync(join(tmpdir(), 'desk-'));
  const words = ['dist/shell/main.js', 'build', '--out', out, '--quiet', ...more];
  const { status, stderr } = spawnSync(process.execPath, words, { encoding: 'utf8' });
  if (status !== 0) throw new Error(stderr);
  return { out, ...(await served(out)) };
}

/** The public folder of a site on a port of this machine. */
export async function served(out: string): Promise<Served> {
  const server = createServer(({ url = '/' }, response) => {
    const path = normalize(new URL(url, 'http://x').pathname);
    const place = join(out, 'public', path.endsWith('/') ? `${path}index.html` : path);
    try {
      const bytes = readFileSync(place);
      response.writeHead(200, { 'content-type': TYPES[extname(place)] ?? 'application/octet-stream' });
      response.end(bytes);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const { port } = server.address() as AddressInfo;
  return { address: `http://127.0.0.1:${port}/desk/index.html`, server };
}
