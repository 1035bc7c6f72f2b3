/** The server of the command line: its addresses, who may read, what it builds again. */
import { spawn, type ChildProcess } from 'node:child_process';
import { request } from 'node:http';
import { connect } from 'node:net';
import { mkdirSync, readFileSync, symlinkSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { MAIN, smallClinic, type Clinic } from './workbench.ts';

interface Served {
  readonly ok: boolean;
  readonly out: string;
  readonly pages: readonly { readonly alias: string | null; readonly address: string }[];
}

let own: Clinic;
let child: ChildProcess;
let said = '';
let served: Served;
let port: number;

beforeAll(async () => {
  own = smallClinic();
  child = spawn(process.execPath, [MAIN, 'serve', '--json', '--content', own.content, '--out', own.site]);
  let out = '';
  child.stdout?.on('data', (bytes: Buffer) => (out += bytes.toString()));
  child.stderr?.on('data', (bytes: Buffer) => (said += bytes.toString()));
  await until(() => out.endsWith('}\n'));
  served = JSON.parse(out) as Served;
  port = Number(new URL(served.pages[0]!.address).port);
  mkdirSync(`${own.site}-leak`);
  writeFileSync(join(`${own.site}-leak`, 'page.html'), 'leaked');
  writeFileSync(join(own.top, 'page.html'), 'leaked');
  writeFileSync(join(own.site, 'public/.hidden.html'), 'leaked');
  symlinkSync(`${own.site}-leak`, join(own.site, 'public/link'));
});
afterAll(() => {
  child.kill('SIGKILL');
  own.remove();
});

describe('what it says', () => {
  it('is the address of every page, on this machine', () => {
    const at = `http://127.0.0.1:${port}`;
    expect(served).toEqual({
      ok: true,
      out: own.site,
      pages: [
        { alias: null, address: `${at}/public/` },
        { alias: 'finch', address: `${at}/private/finch/leaflet.html` },
      ],
    });
    for (const { address } of served.pages) expect(said).toContain(`${address}\n`);
  });

  it('leads to pages that are there', async () => {
    for (const { address } of served.pages) {
      const response = await fetch(address);
      expect(response.status).toBe(200);
      expect(response.headers.get('content-type')).toBe('text/html; charset=utf-8');
      expect(response.headers.get('cache-control')).toBe('no-store');
    }
    expect((await fetch(`http://127.0.0.1:${port}/`)).url).toBe(served.pages[0]!.address);
    const pdf = await fetch(`http://127.0.0.1:${port}/private/finch/leaflet.pdf`);
    expect(Buffer.from(await pdf.arrayBuffer())).toEqual(
      readFileSync(join(own.site, 'private/finch/leaflet.pdf')),
    );
  });
});

describe('what it refuses', () => {
  it.each([
    // method  path                                    host              status
    ['GET', '/public/', 'example.org', 403],
    ['GET', '/public/', '127.0.0.1.example.org', 403],
    ['GET', '/public/', '', 403],
    ['GET', '/public/', 'localhost', 200],
    ['HEAD', '/public/', '127.0.0.1', 200],
    ['POST', '/public/', '127.0.0.1', 405],
    ['DELETE', '/private/finch/leaflet.html', '127.0.0.1', 405],
    ['GET', '/../page.html', '127.0.0.1', 404],
    ['GET', '/..%2fpage.html', '127.0.0.1', 404],
    ['GET', '/%2e%2e/page.html', '127.0.0.1', 404],
    ['GET', '/%2e%2e%2fsite-leak/page.html', '127.0.0.1', 404],
    ['GET', '/../site-leak/page.html', '127.0.0.1', 404],
    ['GET', '/public/link/page.html', '127.0.0.1', 404],
    ['GET', '/public/.hidden.html', '127.0.0.1', 404],
    ['GET', '/.loadleaf-lock', '127.0.0.1', 404],
    ['GET', '/private/', '127.0.0.1', 404],
    ['GET', '/public', '127.0.0.1', 302],
    ['GET', '//example.org/', '127.0.0.1', 302],
    ['GET', '/%', '127.0.0.1', 400],
    ['GET', '/%ff', '127.0.0.1', 400],
    ['GET', '/a%00b', '127.0.0.1', 400],
    ['GET', 'http://[', '127.0.0.1', 400],
    ['GET', `/${'a'.repeat(5000)}`, '127.0.0.1', 404],
  ])('%s %s for %j is answered with %d', async (method, path, host, status) => {
    const answer = await asked(method, path, host);
    expect(answer.status).toBe(status);
    expect(answer.body).not.toContain('leaked');
    if (method === 'HEAD') expect(answer.body).toBe('');
    // Wherever it sends a reader, that is here.
    if (status === 302) expect(answer.location).toBe('/public/');
  });

  it('leaves it standing, even what is no request', async () => {
    const socket = connect(port, '127.0.0.1');
    socket.on('error', () => undefined);
    socket.resume();
    socket.write('\0\0\0 not http\r\n\r\n');
    await new Promise((resolve) => socket.once('close', resolve));
    expect((await asked('GET', '/public/', '127.0.0.1')).status).toBe(200);
    expect(child.exitCode).toBeNull();
  });
});

describe('what it builds again', () => {
  const leaflet = () => readFileSync(join(own.site, 'private/finch/leaflet.html'), 'utf8');

  it('is a leaflet whose consult was saved, or a library that was', async () => {
    const before = leaflet();
    own.edit('consults/finch-r1.md', 'usualMorningPain: 2', 'usualMorningPain: 3');
    await until(() => leaflet() !== before);
    const page = leaflet();
    own.edit('exercises/wall-bridge.md', /title: .*/, 'title: Renamed bridge');
    await until(() => leaflet() !== page && leaflet().includes('Renamed bridge'));
  });

  it('is nothing where the library has an error: that is printed, and the last good site stays', async () => {
    const page = leaflet();
    const restore = own.edit('exercises/wall-bridge.md', 'kind: isometric', 'kind: isometrc');
    await until(() => said.includes('nothing was built'));
    expect(leaflet()).toBe(page);
    expect((await asked('GET', '/private/finch/leaflet.html', '127.0.0.1')).status).toBe(200);
    restore();
  });

  it('ends with a good exit when it is stopped', async () => {
    const ended = new Promise((resolve) => child.once('exit', resolve));
    child.kill('SIGINT');
    expect(await ended).toBe(0);
  });
});

function asked(
  method: string,
  path: string,
  host: string,
): Promise<{ readonly status: number; readonly body: string; readonly location: string | undefined }> {
  return new Promise((resolve, reject) => {
    const options = { port, host: '127.0.0.1', method, path, headers: { host }, setHost: false };
    request(options, (response) => {
      let body = '';
      response.on('data', (bytes: Buffer) => (body += bytes.toString()));
      response.on('end', () =>
        resolve({ status: response.statusCode ?? 0, body, location: response.headers.location }),
      );
    })
      .on('error', reject)
      .end();
  });
}

async function until(holds: () => boolean): Promise<void> {
  for (const end = Date.now() + 60_000; !holds(); await setTimeout(50))
    if (Date.now() > end) throw new Error(`waited too long; it said: ${said}`);
}
