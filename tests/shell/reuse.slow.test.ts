/** Only what differs is made again, with the bytes of a build from nothing, whatever was done to consults, library, site and cache. */
import { copyFileSync, existsSync, readFileSync, rmSync, statSync, utimesSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { cacheFolder } from '../../src/shell/io/cache.ts';
import { hashesOf, runHere, smallClinic, withoutHistory, type Clinic } from './workbench.ts';

const PEOPLE = ['finch', 'wren', 'kite'];

/** How many rows of edits are tried, those below first: a slice of the law; with REUSE_ROWS set, as many. */
const ROWS = Number(process.env['REUSE_ROWS'] ?? 3);
const EDITS_A_ROW = 5;
const ROWS_MS = 300_000;

let own: Clinic;
let first: string;
beforeAll(() => {
  own = smallClinic();
  first = readFileSync(join(own.content, 'consults/finch-r1.md'), 'utf8');
  for (const alias of PEOPLE) writeFileSync(consultOf(alias), textOf(alias));
});
afterAll(() => own.remove());

const consultOf = (alias: string, revision = 1) => join(own.content, `consults/${alias}-r${revision}.md`);
const textOf = (alias: string, revision = 1, pain = 2) =>
  first
    .replace('alias: finch', `alias: ${alias}`)
    .replace('revision: 1', `revision: ${revision}`)
    .replace('usualMorningPain: 2', `usualMorningPain: ${pain}`);
const inSite = (path: string) => join(own.site, path);
const madeFrom = () => join(cacheFolder(own.site), 'made-from.json');
const overwrite = (place: string, change: (bytes: Buffer) => Buffer | string) => {
  if (existsSync(place)) writeFileSync(place, change(readFileSync(place)));
};

/** Everything that may happen between two builds. */
const EDITS: Readonly<Record<string, (alias: string, number: number) => void>> = {
  'another morning pain': (alias, number) => writeFileSync(consultOf(alias), textOf(alias, 1, number % 4)),
  'a second revision': (alias, number) =>
    writeFileSync(consultOf(alias, 2), textOf(alias, 2, 1 + (number % 2))),
  'no second revision': (alias) => rmSync(consultOf(alias, 2), { force: true }),
  'no consult': (alias) => rmSync(consultOf(alias), { force: true }),
  'a consult that cannot be read': (alias) => writeFileSync(consultOf(alias), '---\nalias: [\n---\n'),
  'a red flag': (alias) =>
    writeFileSync(consultOf(alias), textOf(alias).replace('footDrop: no', 'footDrop: yes')),
  'a file of another alias': (alias, number) =>
    writeFileSync(consultOf(alias), textOf(PEOPLE[number % 3] ?? '')),
  'a draft': (alias) =>
    writeFileSync(consultOf(alias, 3), textOf(alias, 3).replace('revision: 3', 'revision: 3\ndraft: yes')),
  'other words of a card': (_, number) =>
    overwrite(join(own.content, 'advice/one-thing.md'), (bytes) =>
      String(bytes).replace(/\n(?:Do it \d times\.\n)?$/, `\nDo it ${number} times.\n`),
    ),
  'a leaflet changed by hand': (alias) =>
    overwrite(inSite(`private/${alias}/leaflet.html`), (bytes) => `${String(bytes)}x`),
  'a note that is gone': (alias) => rmSync(inSite(`private/${alias}/note.txt`), { force: true }),
  'a folder that is gone': (alias) => rmSync(inSite(`private/${alias}`), { recursive: true, force: true }),
  'a page changed by hand': () => overwrite(inSite('public/index.html'), () => 'x'),
  'no manifest': () => rmSync(inSite('manifest.json'), { force: true }),
  'no cache': () => rmSync(cacheFolder(own.site), { recursive: true, force: true }),
  'a cache with one letter changed': (_, number) =>
    overwrite(madeFrom(), (bytes) => {
      bytes[(number * 97) % bytes.length] = 0x78;
      return bytes;
    }),
  'a touched file': (alias) => {
    if (existsSync(inSite(`private/${alias}/note.txt`)))
      utimesSync(inSite(`private/${alias}/note.txt`), 1, 1);
  },
  'one person built alone': () => undefined,
};

interface Edit {
  readonly name: string;
  readonly alias: string;
  readonly number: number;
}

/** Rows that are always tried, with what a hash could leave out: each stands against one rule. */
const ALWAYS: readonly (readonly string[])[] = [
  [
    'another morning pain',
    'a second revision',
    'other words of a card',
    'a red flag',
    'another morning pain',
  ],
  [
    'a file of another alias',
    'a leaflet changed by hand',
    'no manifest',
    'a cache with one letter changed',
    'no consult',
  ],
];
const always = ALWAYS.map((names): [Edit[]] => [
  names.map((name, at) => ({ name, alias: 'finch', number: at === 0 ? 3 : at })),
]);

describe('a build of what differs', () => {
  it(
    'has the bytes of a build from nothing after any edits',
    async () => {
      const edit = fc.record({
        name: fc.constantFrom(...Object.keys(EDITS)),
        alias: fc.constantFrom(...PEOPLE),
        number: fc.nat(9),
      });
      const row = fc.array(edit, { minLength: EDITS_A_ROW, maxLength: EDITS_A_ROW });
      await fc.assert(
        fc.asyncProperty(row, async (edits) => {
          for (const { name, alias, number } of edits) {
            EDITS[name]?.(alias, number);
            if (name === 'one person built alone' && existsSync(consultOf(alias)))
              await own.run('build', alias, '--quiet');
            await own.run('build', '--quiet');
            const nothing = join(own.top, 'nothing');
            await runHere(['build', '--quiet', '--content', own.content, '--out', nothing]);
            const hashes = withoutHistory(hashesOf(nothing));
            rmSync(nothing, { recursive: true });
            rmSync(cacheFolder(nothing), { recursive: true });
            expect(standing(own.hashes()), `${name} ${alias}`).toEqual(standing(hashes));
          }
        }),
        { numRuns: ROWS, examples: always },
      );
    },
    ROWS_MS,
  );

  /** What hands left lying beside a site is no file of it; the manifest says what is. */
  const standing = (hashes: Readonly<Record<string, string>>) =>
    Object.fromEntries(Object.entries(hashes).filter(([path]) => path !== 'manifest.json'));

  it('sees a change whose size and time were put back', async () => {
    for (const alias of PEOPLE) writeFileSync(consultOf(alias), textOf(alias));
    for (const revision of [2, 3])
      for (const alias of PEOPLE) rmSync(consultOf(alias, revision), { force: true });
    await own.run('build', '--quiet');
    const note = inSite('private/finch/note.txt');
    const before = statSync(note);
    const copy = readFileSync(note);
    // Of the same length, and its times put back: all but the time of the entry, which nobody can set.
    writeFileSync(note, copy.toString().replace(/.$/m, 'x'));
    utimesSync(note, before.atime, before.mtime);
    const run = await own.run('build');
    expect(run.err).toContain('private/finch/note.txt was changed by hand; it is written anew');
    expect(readFileSync(note)).toEqual(copy);
  });

  it('is asked to read with --verify, and then finds what shows in no time', async () => {
    await own.run('build', '--quiet');
    const page = inSite('public/index.html');
    const text = readFileSync(page);
    overwrite(page, () => 'x'.repeat(text.length));
    // The ledger is told that the page looks just so.
    const bytes = readFileSync(madeFrom());
    const { ino, size, mtimeMs, ctimeMs } = statSync(page);
    const ledger = JSON.parse(bytes.subarray(64).toString()) as {
      library: { files: { path: string; state: number[] }[] };
    };
    for (const file of ledger.library.files)
      if (file.path === 'public/index.html') file.state = [size, mtimeMs, ctimeMs, ino];
    const { keep } = await import('../../src/shell/io/cache.ts');
    keep(own.site, 'made-from.json', Buffer.from(JSON.stringify(ledger)));
    await own.run('build', '--quiet');
    expect(readFileSync(page)).not.toEqual(text);
    const run = await own.run('build', '--verify');
    expect(run.err).toContain('public/index.html was changed by hand; it is written anew');
    expect(readFileSync(page)).toEqual(text);
  });
});

describe('the cache', () => {
  it('is for this user alone, outside the site, and holds no word of a leaflet', async () => {
    await own.run('build', '--quiet');
    const folder = cacheFolder(own.site);
    expect(folder.startsWith(`${own.site}/`)).toBe(false);
    expect(statSync(folder).mode & 0o777).toBe(0o700);
    expect(statSync(madeFrom()).mode & 0o777).toBe(0o600);
    expect(readFileSync(madeFrom(), 'utf8')).not.toMatch(/pain|R\. Sample/i);
  });

  it.each([
    ['withdrawn', () => EDITS['a red flag']?.('wren', 0)],
    ['without a consult', () => EDITS['no consult']?.('wren', 0)],
  ])('forgets who is %s', async (_, edit) => {
    writeFileSync(consultOf('wren'), textOf('wren'));
    await own.run('build', '--quiet');
    expect(peopleKept()).toContain('wren');
    edit();
    await own.run('build', '--quiet');
    expect(peopleKept()).toEqual(['finch', 'kite']);
  });

  it('laid out by somebody else is not looked at', async () => {
    await own.run('build', '--quiet');
    const folder = cacheFolder(own.site);
    copyFileSync(madeFrom(), join(own.top, 'elsewhere'));
    rmSync(folder, { recursive: true });
    const { symlinkSync, mkdirSync } = await import('node:fs');
    mkdirSync(join(own.top, 'theirs'));
    copyFileSync(join(own.top, 'elsewhere'), join(own.top, 'theirs/made-from.json'));
    symlinkSync(join(own.top, 'theirs'), folder);
    const { readLedger, NO_LEDGER } = await import('../../src/shell/io/ledger.ts');
    expect(readLedger(own.site)).toEqual(NO_LEDGER);
    rmSync(folder);
  });

  const peopleKept = () =>
    Object.keys(
      (JSON.parse(readFileSync(madeFrom()).subarray(64).toString()) as { people: object }).people,
    ).sort();
});
