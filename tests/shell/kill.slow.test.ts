/** A build that is killed leaves every person one whole set, and the next build heals. */
import { spawn } from 'node:child_process';
import { cpSync, mkdirSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { setTimeout } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hashesOf, loadleaf, MAIN, runHere, smallClinic, withoutHistory, type Clinic } from './workbench.ts';

/** Ours while a build is at work; of no use to anybody when it has died. */
const WORKING = /(^|\/)\.loadleaf-(lock|journal)|\.loadleaf-(part|new|old)(\/|$)/;

describe('killed at a random moment', () => {
  const KILLS = 4;
  let own: Clinic;
  beforeAll(async () => {
    own = smallClinic();
  });
  afterAll(() => own.remove());

  const marksIn = (out: string) => {
    const folder = join(out, 'private/finch');
    const page = /data-mark="(.{8})"/.exec(readFileSync(join(folder, 'leaflet.html'), 'utf8'))?.[1];
    const record = (JSON.parse(readFileSync(join(folder, 'record.json'), 'utf8')) as { mark: string }).mark;
    const note = /Mark (.{8})\.\n$/.exec(readFileSync(join(folder, 'note.txt'), 'utf8'))?.[1];
    const paper = /Keywords>mark (.{8})</.exec(readFileSync(join(folder, 'leaflet.pdf'), 'latin1'))?.[1];
    return [page, record, note, paper];
  };

  it(`${KILLS} times, a build of the command line leaves one set and heals`, async () => {
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
    const healthy = withoutHistory(hashesOf(wholeOut));
    expect(healthy).not.toEqual(old);
    const marks = [marksIn(join(own.top, 'old')), marksIn(wholeOut)];
    for (const each of marks) expect(new Set(each).size).toBe(1);
    for (let kill = 0; kill < KILLS; kill += 1) {
      const out = join(own.top, `kill-${kill}`);
      cpSync(join(own.top, 'old'), out, { recursive: true });
      const child = spawn(process.execPath, [MAIN, 'build', '--content', own.content, '--out', out]);
      const ended = new Promise((resolve) => child.once('exit', resolve));
      // The last third is where it writes.
      await setTimeout(lastsMs * (0.4 + 0.6 * Math.random()));
      child.kill('SIGKILL');
      await ended;
      for (const [path, hash] of Object.entries(withoutHistory(hashesOf(out))))
        if (!WORKING.test(path)) expect([old[path], healthy[path]], path).toContain(hash);
      if (readdirSync(join(out, 'private')).includes('finch')) expect(marks).toContainEqual(marksIn(out));
      if (kill % 3 > 0) continue;
      expect(await runHere(['build', '--content', own.content, '--out', out])).toMatchObject({
        exit: 0,
        err: '',
      });
      expect(withoutHistory(hashesOf(out))).toEqual(healthy);
    }
  });
});
