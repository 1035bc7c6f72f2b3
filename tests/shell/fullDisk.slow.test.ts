/** A disk that is full from the first byte takes no lock and no list, but no leaflet stays in force that must not be followed. */
import {
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { linesOf } from '../../src/shell/io/issued.ts';
import { thisHolder } from '../../src/shell/io/holder.ts';
import { fullFrom, watchingDisk } from './diskEffects.ts';
import { copyOf, hashesOf, smallClinic, writeStarter, type Clinic } from './workbench.ts';

let built: Clinic;
let own: Clinic;
beforeAll(async () => {
  built = own = smallClinic();
  writeStarter(own.content, 'consult', 'consults/wren-r1.md');
  expect(await build('--quiet')).toMatchObject({ exit: 0, err: '' });
});
afterAll(() => built.remove());
beforeEach(() => {
  own = copyOf(built);
});
afterEach(() => own.remove());

const build = (...words: string[]) => own.run('build', ...words, '--on', '2026-11-25');
const at = (path: string) => join(own.site, 'private', path);
const flag = () => own.edit('consults/finch-r1.md', 'footDrop: no', 'footDrop: yes');
const breakLibrary = () => own.edit('exercises/wall-bridge.md', /title: .*/, 'title: 7');
const full = (...words: string[]) => watchingDisk(own.site, fullFrom(1), () => build(...words));
const toldOf = (alias: string) =>
  linesOf(readFileSync(at(`${alias}/issued.jsonl`), 'utf8')).map(({ event }) => event);

describe('a red flag on a full disk', () => {
  it.each<[string, () => void, string[]]>([
    ['in a build of everything', () => undefined, []],
    ['in a build of somebody else', () => undefined, ['wren']],
    ['beside a library with an error', breakLibrary, []],
    ['without the list that keeps it out of a repository', () => renameSync(at('.gitignore'), at('x')), []],
  ])('takes the leaflet away, %s', async (_, before, words) => {
    const given = hashesOf(at('finch'));
    const theirs = hashesOf(at('wren'));
    flag();
    before();
    const run = await full(...words);
    expect(run.exit).toBe(74);
    expect(run.err).toContain(`the files of finch were taken away to ${at('.finch.loadleaf-away')}`);
    expect(existsSync(at('finch'))).toBe(false);
    expect(hashesOf(at('.finch.loadleaf-away'))).toEqual(given);
    expect(hashesOf(at('wren'))).toEqual(theirs);
    expect(readdirSync(own.site).filter((name) => name.startsWith('.loadleaf'))).toEqual([]);
  });

  it('is told by check, and set aside by the next build of whomever, never in force in between', async () => {
    const given = hashesOf(at('finch'));
    flag();
    await full();
    expect((await full()).exit).toBe(74);
    const told = await own.run('check');
    expect(told.exit).toBe(65);
    expect(told.out + told.err).toContain('make room on the disk and build again');
    expect((await build('wren')).exit).toBe(0);
    expect(readdirSync(at('finch'))).toEqual(['issued.jsonl', 'set-aside']);
    expect({ ...hashesOf(at('finch/set-aside')), 'issued.jsonl': given['issued.jsonl'] }).toMatchObject(
      given,
    );
    expect(existsSync(at('.finch.loadleaf-away'))).toBe(false);
    expect(toldOf('finch')).toEqual(['issued', 'withdrawn']);
    expect((await own.run('check', '--json')).out).not.toContain('"issued"');
  });

  it('that was a slip brings the set back as it was', async () => {
    const given = hashesOf(at('finch'));
    const restore = flag();
    await full();
    restore();
    expect((await build('wren')).exit).toBe(0);
    expect(existsSync(at('finch'))).toBe(false);
    expect((await build()).exit).toBe(0);
    expect(hashesOf(at('finch'))).toEqual(given);
    expect(existsSync(at('.finch.loadleaf-away'))).toBe(false);
  });

  it('waits for a build that is at work', async () => {
    const lock = join(own.site, '.loadleaf-lock');
    mkdirSync(lock);
    writeFileSync(join(lock, `${process.pid}-a`), JSON.stringify(thisHolder()));
    flag();
    expect((await full()).exit).toBe(74);
    expect(existsSync(at('finch/leaflet.html'))).toBe(true);
  });

  it('says so where not even a name can be taken away', async () => {
    flag();
    const run = await watchingDisk(
      own.site,
      ({ name, path }) => {
        throw Object.assign(new Error(`EROFS: read-only file system, ${name} '${path}'`), { code: 'EROFS' });
      },
      () => build(),
    );
    expect(run.exit).toBe(73);
    expect(run.err).toContain('the leaflet of finch must not be followed and is still in its place');
  });
});

describe('a consult that was deleted, on a full disk', () => {
  const remove = (alias: string) => rmSync(join(own.content, `consults/${alias}-r1.md`));
  const touch = () => own.edit('consults/wren-r1.md', /^minutesPerDay: .*$/m, 'minutesPerDay: 31');

  // Where nothing else has changed the build reads no file, and takes another way.
  it.each<[string, () => unknown]>([
    ['and nothing else', () => undefined],
    ['beside another that was edited', touch],
  ])('%s, takes its leaflet away', async (_, before) => {
    const given = hashesOf(at('finch'));
    remove('finch');
    before();
    const run = await full();
    expect(run.exit).toBe(74);
    expect(run.err).toContain(`the files of finch were taken away to ${at('.finch.loadleaf-away')}`);
    expect(existsSync(at('finch'))).toBe(false);
    expect(hashesOf(at('.finch.loadleaf-away'))).toEqual(given);
    expect((await build()).exit).toBe(0);
    expect(readdirSync(at('finch'))).toEqual(['issued.jsonl', 'set-aside']);
    expect(toldOf('finch')).toEqual(['issued', 'withdrawn']);
  });

  it('goes before anything is written: a disk that fills on the way finds it set aside', async () => {
    remove('finch');
    touch();
    const run = await watchingDisk(
      own.site,
      (effect) => {
        if (/private\/\.?wren/.test(effect.path)) fullFrom(1)(effect);
      },
      () => build(),
    );
    expect(run.exit).toBe(74);
    expect(readdirSync(at('finch'))).toEqual(['issued.jsonl', 'set-aside']);
  });

  it('leaves it where only somebody else was asked for', async () => {
    remove('finch');
    expect((await full('wren')).exit).toBe(74);
    expect(existsSync(at('finch/leaflet.html'))).toBe(true);
  });
});

describe('a command that stops before it builds', () => {
  it.each<[string, () => string[], number]>([
    ['for a name there is no consult of', () => ['otter'], 66],
    [
      'for a place where no leaflet may lie',
      () => {
        writeFileSync(join(own.site, '.htaccess'), '');
        return [];
      },
      64,
    ],
  ])('%s withdraws all the same, and says so', async (_, before, exit) => {
    const words = before();
    flag();
    const run = await build(...words);
    expect(run.exit).toBe(exit);
    expect(run.err).toContain('the leaflet of finch is set aside');
    expect(readdirSync(at('finch'))).toEqual(['issued.jsonl', 'set-aside']);
  });
});

describe('a swap that was stopped between its two renames', () => {
  const stop = (alias: string) => renameSync(at(alias), at(`.${alias}.loadleaf-old`));

  it.each<[string, () => void, string[], number]>([
    ['of everything', () => undefined, [], 0],
    ['of somebody else', () => undefined, ['wren'], 0],
    ['that a library with an error stops', breakLibrary, [], 65],
    ['that stops for a name there is no consult of', () => undefined, ['otter'], 66],
  ])('is put back by a build %s', async (_, before, words, exit) => {
    const given = hashesOf(at('finch'));
    stop('finch');
    before();
    expect((await build(...words)).exit).toBe(exit);
    expect(hashesOf(at('finch'))).toEqual(given);
    expect(existsSync(at('.finch.loadleaf-old'))).toBe(false);
  });

  it('is told by check with the cure, and check changes nothing', async () => {
    stop('finch');
    stop('wren');
    // Somebody has put a folder of their own in its place.
    cpSync(join(own.content, 'consults'), at('wren'), { recursive: true });
    const before = hashesOf(own.site);
    const { problems } = await own.answer('check');
    expect((problems as { code: string }[]).filter(({ code }) => code === 'issued')).toMatchObject([
      {
        code: 'issued',
        file: expect.stringMatching(/\.wren\.loadleaf-old$/),
        fix: expect.stringMatching(/by hand/),
      },
      {
        code: 'issued',
        file: expect.stringMatching(/private\/finch$/),
        fix: expect.stringMatching(/^build again/),
      },
      { file: expect.stringMatching(/private\/wren\/issued\.jsonl$/) },
    ]);
    expect(hashesOf(own.site)).toEqual(before);
  });
});
