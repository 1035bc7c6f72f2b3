/** The public folder served below a path of somebody's site, from memory. */
import { createServer, type Server } from 'node:http';
import { extname } from 'node:path';
import type { Page } from '../../../../src/outputs/html/site.ts';

export const BELOW = '/clinic/our-library/';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
};

/** Its address ends in a slash; whatever is asked for and not there is kept in `missed`. */
export async function served(
  pages: readonly Page[],
): Promise<{ readonly server: Server; readonly address: string; readonly missed: string[] }> {
  const files = new Map(pages.map(({ path, content }) => [path.replace(/^public\//, BELOW), content]));
  const missed: string[] = [];
  const server = createServer((request, response) => {
    const path = new URL(request.url ?? '/', 'http://localhost').pathname;
    const content = files.get(path.endsWith('/') ? `${path}index.html` : path);
    if (content === undefined) missed.push(path);
    response.writeHead(content === undefined ? 404 : 200, {
      'content-type': TYPES[extname(path)] ?? 'text/html; charset=utf-8',
    });
    response.end(content ?? 'not there');
  });
  await new Promise<void>((listening) => server.listen(0, '127.0.0.1', listening));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('no port');
  return { server, address: `http://127.0.0.1:${address.port}${BELOW}`, missed };
}
