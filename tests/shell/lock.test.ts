/** Who is waited for at a folder, and whose lock is broken. */
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { holderOf, lives, thisHolder } from '../../src/shell/io/holder.ts';
import { locked } from '../../src/shell/io/lock.ts';

let out: string;
beforeEach(() => {
  out = mkdtempSync(join(tmpdir(), 'loadleaf-lock-'));
});
afterEach(() => rmSync(out, { recursive: true }));

const lock = () => join(out, '.loadleaf-lock');
const work = async () => 'worked';

/** A lock as some holder left it, last heard of so many seconds ago. */
function heldBy(name: string, holder: object | null, agoS: number): void {
  mkdirSync(lock());
  const place = join(lock(), name);
  writeFileSync(place, holder === null ? '' : JSON.stringify(holder));
  const at = Date.now() / 1000 - agoS;
  utimesSync(place, at, at);
}

const here = thisHolder();
// Where a system tells no start, a process of the same number is waited for until it is long silent.
const isTold = here.began !== null;
const elsewhere = { ...here, machine: 'another host' };
// As high as no system numbers its processes.
const nobody = 2 ** 22 + 12345;

describe('a lock', () => {
  it.each([
    // of whom                                                  name                     holder                       last sign  is free
    ['this process, a moment ago', `${process.pid}-a`, here, 0, false],
    ['this process, long silent but alive', `${process.pid}-a`, here, 3600, false],
    ['a process that died here', `${nobody}-a`, { ...here, pid: nobody }, 0, true],
    [
      'one that died and whose number is used again',
      `${process.ppid}-a`,
      { ...here, pid: process.ppid, began: '1' },
      0,
      isTold,
    ],
    ['one whose number we have ourselves now', `${process.pid}-a`, { ...here, began: '1' }, 0, isTold],
    ['a host or container elsewhere, with our number', `${process.pid}-a`, elsewhere, 30, false],
    ['one elsewhere that is long silent', `${process.pid}-a`, elsewhere, 300, true],
    ['an earlier version, its process alive', `${process.ppid}`, null, 0, false],
    ['an earlier version, a number long used again', `${process.ppid}`, null, 300, true],
    ['an earlier version that died', '999999999', null, 0, true],
  ] as const)('of %s', async (_, name, holder, agoS, isFree) => {
    heldBy(name, holder, agoS);
    if (isFree) {
      expect(await locked(out, work)).toBe('worked');
      expect(readdirSync(out)).toEqual([]);
    } else {
      await expect(locked(out, work)).rejects.toMatchObject({ exit: 75 });
      expect(readdirSync(out)).toEqual(['.loadleaf-lock']);
      expect(readdirSync(lock())).toEqual([name]);
    }
  });

  it('is held while the work goes on, and names its holder', async () => {
    await locked(out, async () => {
      const [name = ''] = readdirSync(lock());
      expect(holderOf(readFileSync(join(lock(), name), 'utf8'))).toEqual(here);
      await expect(locked(out, work)).rejects.toMatchObject({ exit: 75 });
      expect(readdirSync(lock())).toEqual([name]);
    });
    expect(existsSync(lock())).toBe(false);
  });

  it('that others gave up stops the work before it changes anything more, and stays theirs', async () => {
    const run = locked(out, async (hold) => {
      hold();
      for (const name of readdirSync(lock())) rmSync(join(lock(), name));
      writeFileSync(join(lock(), 'theirs'), '');
      hold();
    });
    await expect(run).rejects.toMatchObject({ exit: 75 });
    expect(readdirSync(lock())).toEqual(['theirs']);
  });

  it('is had by one of many that come at one time', async () => {
    const done = await Promise.allSettled(
      Array.from({ length: 20 }, () => locked(out, () => new Promise((resolve) => setTimeout(resolve, 5)))),
    );
    expect(done.filter(({ status }) => status === 'fulfilled')).toHaveLength(1);
    expect(readdirSync(out)).toEqual([]);
  });
});

describe('a holder', () => {
  it.each([
    ['this process', here, isTold ? true : null],
    ['its number with another start', { ...here, began: '1' }, isTold ? false : null],
    ['a number nobody has', { ...here, pid: nobody }, false],
    ['another machine', elsewhere, null],
    ['a system that tells no start', { ...here, began: null }, null],
  ])('%s', (_, holder, isAlive) => {
    expect(lives(holder)).toBe(isAlive);
  });

  it.each(['', '{}', 'null', '[]', '{"machine":"a","pid":"1"}', '{"machine":"a","pid":-1}'])(
    '%j is none',
    (text) => {
      expect(holderOf(text)).toBe(null);
    },
  );
});
