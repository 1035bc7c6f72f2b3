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

export interface Site {
  readonly address: string;
  readonly out: string;
  readonly server: Server;
}

/** The demo built by the command, and its public folder served. `words`: what is said to the command besides. */
export async function builtSite(...words: readonly string[]): Promise<Site> {
  const out = mkdtempSync(join(tmpdir(), 'desk-'));
  const { status, stderr } = spawnSync(
    process.execPath,
    ['dist/shell/main.js', 'build', '--out', out, '--quiet', ...words],
    {
      encoding: 'utf8',
    },
  );
  if (status !== 0) throw new Error(stderr);
  const server = createServer(({ url = '/' }, response) => {
    const path = normalize(new URL(url, 'http://x').pathname);
    const place = join(out, 'public', path.endsWith('/') ? `${path}index.html` : path);
    try {
      response.writeHead(200, { 'content-type': TYPES[extname(place)] ?? 'application/octet-stream' });
      response.end(readFileSync(place));
    } catch {
      response.end();
    }
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/desk/index.html`,
    out,
    server,
  };
}
