/** The same input gives the same bytes, wherever and whenever it is built, without a network. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hashesOf, loadleaf, MAIN, shippedClinic, withoutHistory, type Clinic } from './workbench.ts';

const CUT = `
  import dgram from 'node:dgram'; import dns from 'node:dns'; import http from 'node:http';
  import http2 from 'node:http2'; import https from 'node:https'; import net from 'node:net'; import tls from 'node:tls';
  import { syncBuiltinESMExports } from 'node:module';
  const none = () => { throw new Error('no network'); };
  net.Socket.prototype.connect = none;
  for (const room of [net, tls, http2]) room.connect = none;
  for (const room of [http, https]) { room.request = none; room.get = none; }
  for (const name of Object.keys(dns)) if (/^(lookup|resolve|reverse)/.test(name)) dns[name] = none;
  for (const name of Object.keys(dns.promises)) if (/^(lookup|resolve|reverse)/.test(name)) dns.promises[name] = none;
  dgram.createSocket = none;
  globalThis.fetch = none;
  syncBuiltinESMExports();
`;

let own: Clinic;
/** Cuts a process off the network, by `--import`. */
let cut: string;
beforeAll(async () => {
  own = shippedClinic();
  cut = join(own.top, 'cut.mjs');
  writeFileSync(cut, CUT);
  expect(await own.run('build')).toMatchObject({ exit: 0, err: '' });
});
afterAll(() => own.remove());

describe('the bytes of a build', () => {
  it('are the same in another folder, working folder, time zone, locale and umask, on another day, without a network', async () => {
    const elsewhere = join(own.top, 'another place', 'ä');
    const from = join(own.top, 'from');
    mkdirSync(from);
    const run = loadleaf(
      [
        'build',
        '--content',
        relative(from, own.content),
        '--out',
        relative(from, elsewhere),
        '--on',
        '2031-02-03',
      ],
      {
        cwd: from,
        env: { TZ: 'Pacific/Kiritimati', LC_ALL: 'tr_TR.UTF-8', LANG: 'tr_TR.UTF-8' },
        shell: 'umask 077',
        node: ['--import', cut],
      },
    );
    expect(run).toMatchObject({ exit: 0, err: '' });
    expect(withoutHistory(hashesOf(elsewhere))).toEqual(own.hashes());
    rmSync(elsewhere, { recursive: true });
  });

  it('are the same again, by way of Eleventy or without', async () => {
    const before = own.hashes();
    rmSync(join(own.site, 'private/otter/leaflet.html'));
    expect((await own.run('build', 'otter')).exit).toBe(0);
    expect(own.hashes()).toEqual(before);
    expect((await own.run('build')).exit).toBe(0);
    expect(own.hashes()).toEqual(before);
  });
});

describe('the network', () => {
  // The build above does without.
  it.each([[['check']], [['explain', 'otter']]])('is not asked for by %j', (words) => {
    const run = loadleaf([...words, '--content', own.content], { node: ['--import', cut] });
    expect(run.err).not.toContain('no network');
    expect(run.exit).toBe(0);
  });

  it('is really cut off there', () => {
    const probe = join(own.top, 'probe.mjs');
    writeFileSync(probe, `import net from 'node:net'; net.connect(9, '127.0.0.1');`);
    const { status, stderr } = spawnSync(process.execPath, ['--import', cut, probe], {
      encoding: 'utf8',
    });
    expect(status).not.toBe(0);
    expect(stderr).toContain('no network');
  });
});

describe('what a leaflet says of where it was made', () => {
  it('is nothing: no path of this machine stands in any file', async () => {
    for (const path of Object.keys(own.hashes())) {
      const text = readFileSync(join(own.site, path), 'latin1');
      expect(text.includes(own.top) || text.includes(MAIN), path).toBe(false);
    }
  });
});
