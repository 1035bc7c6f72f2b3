/** A build that is killed leaves every file wholly old or wholly new, and the next build heals. */
import { spawn, spawnSync } from 'node:child_process';
import { cpSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { setTimeout } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hashesOf, loadleaf, MAIN, runHere, smallClinic, type Clinic } from './workbench.ts';

/** Ours while a build is at work; of no use to anybody when it has died. */
const WORKING = /(^|\/)\.loadleaf-(lock|journal)|\.loadleaf-part$/;

describe('killed before its nth touch of the disk', () => {
  // A writer with the real lock, journal and manifest, and small files in place of leaflets. Before the nth call that
  // changes the disk it kills itself; where that call writes, half of the bytes are on the disk already.
  const WRITER = `
    import fs from 'node:fs';
    import { syncBuiltinESMExports } from 'node:module';
    const [out, word, last] = process.argv.slice(2);
    let touches = 0;
    for (const name of ['writeFileSync', 'appendFileSync', 'renameSync', 'mkdirSync', 'rmSync', 'rmdirSync']) {
      const real = fs[name];
      fs[name] = (path, bytes, ...rest) => {
        touches += 1;
        if (touches === Number(last)) {
          if (name === 'writeFileSync' || name === 'appendFileSync') real(path, bytes.slice(0, bytes.length / 2));
          process.kill(process.pid, 'SIGKILL');
        }
        return bytes === undefined ? real(path) : real(path, bytes, ...rest);
      };
    }
    syncBuiltinESMExports();
    const { locked } = await import(process.env.DIST + 'build/lock.js');
    const { openSite } = await import(process.env.DIST + 'build/site.js');
    await locked(out, async () => {
      const site = openSite(out);
      site.drop('private/gone');
      site.write({ path: 'public/index.html', bytes: 'page ' + word });
      site.write({ path: 'private/finch/leaflet.html', bytes: 'leaflet ' + word });
      site.write({ path: 'private/new-' + word + '/leaflet.html', bytes: word });
      site.finish(() => false);
    });
    process.stdout.write(String(touches));
  `;
  let top: string;
  const write = (out: string, word: string, last = 0) =>
    spawnSync(process.execPath, [join(top, 'writer.mjs'), out, word, String(last)], {
      encoding: 'utf8',
      env: { ...process.env, DIST: pathToFileURL(join(MAIN, '../../')).href },
    });
  beforeAll(async () => {
    top = mkdtempSync(join(tmpdir(), 'loadleaf-kill-'));
    writeFileSync(join(top, 'writer.mjs'), WRITER);
    // The site before: an older page and leaflet, and two leaflets that the next build must take away.
    const before = join(top, 'before');
    expect(write(before, 'old').status).toBe(0);
  });
  afterAll(() => rmSync(top, { recursive: true }));

  it('every file is the old one or the new one, and the next build gives what an unbroken one gives', async () => {
    const whole = join(top, 'whole');
    cpSync(join(top, 'before'), whole, { recursive: true });
    const touches = Number(write(whole, 'new').stdout);
    expect(touches).toBeGreaterThan(15);
    const old = hashesOf(join(top, 'before'));
    const healthy = hashesOf(whole);
    expect(healthy).not.toHaveProperty(['private/new-old/leaflet.html']);
    for (let last = 1; last <= touches; last += 1) {
      const out = join(top, `at-${last}`);
      cpSync(join(top, 'before'), out, { recursive: true });
      expect(write(out, 'new', last).signal, `touch ${last}`).toBe('SIGKILL');
      for (const [path, hash] of Object.entries(hashesOf(out)))
        if (!WORKING.test(path)) expect([old[path], healthy[path]], `${path} at ${last}`).toContain(hash);
      // The build after it has something else to write, so that nothing heals by being the same.
      expect(write(out, 'next').stderr).toBe('');
      const { files } = JSON.parse(readFileSync(join(out, 'manifest.json'), 'utf8')) as {
        files: { path: string; sha256: string }[];
      };
      const { 'manifest.json': manifest, ...there } = hashesOf(out);
      expect(manifest).toBeDefined();
      expect(there, `after ${last}`).toEqual(
        Object.fromEntries(files.map(({ path, sha256 }) => [path, sha256])),
      );
      expect(Object.keys(there).sort()).toEqual([
        'private/finch/leaflet.html',
        'private/new-next/leaflet.html',
        'public/index.html',
      ]);
      expect(readdirSync(out).filter((name) => name.startsWith('.'))).toEqual([]);
    }
  });
});

describe('killed at a random moment', () => {
  const KILLS = 8;
  let own: Clinic;
  beforeAll(async () => {
    own = smallClinic();
  });
  afterAll(() => own.remove());

  it(`${KILLS} times, a build of the command line heals`, async () => {
    await own.run('build', '--quiet');
    const old = own.hashes();
    cpSync(own.site, join(own.top, 'old'), { recursive: true });
    own.edit('consults/finch-r1.md', 'usualMorningPain: 2', 'usualMorningPain: 3');
    const wholeOut = join(own.top, 'whole');
    mkdirSync(wholeOut);
    cpSync(own.site, wholeOut, { recursive: true });
    const start = performance.now();
    loadleaf(['build', '--quiet', '--content', own.content, '--out', wholeOut]);
    const lastsMs = performance.now() - start;
    const healthy = hashesOf(wholeOut);
    expect(healthy).not.toEqual(old);
    for (let kill = 0; kill < KILLS; kill += 1) {
      const out = join(own.top, `kill-${kill}`);
      cpSync(join(own.top, 'old'), out, { recursive: true });
      const child = spawn(process.execPath, [MAIN, 'build', '--content', own.content, '--out', out]);
      const ended = new Promise((resolve) => child.once('exit', resolve));
      // The last third is where it writes.
      await setTimeout(lastsMs * (0.4 + 0.6 * Math.random()));
      child.kill('SIGKILL');
      await ended;
      for (const [path, hash] of Object.entries(hashesOf(out)))
        if (!WORKING.test(path)) expect([old[path], healthy[path]], path).toContain(hash);
      if (kill % 3 > 0) continue;
      expect(await runHere(['build', '--content', own.content, '--out', out])).toMatchObject({
        exit: 0,
        err: '',
      });
      expect(hashesOf(out)).toEqual(healthy);
    }
  });
});
