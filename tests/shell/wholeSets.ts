/** One person's files are one set at every moment: killed, on a full disk, after a power cut. */
import { cpSync, existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { brokenAt } from '../../src/shell/io/issued.ts';
import { orTakenAway } from '../../src/shell/io/lastResort.ts';
import { locked } from '../../src/shell/io/lock.ts';
import { readEnds, reaches } from '../../src/shell/io/issuedEnds.ts';
import { peopleIn } from '../../src/shell/io/people.ts';
import { openSite, type Site } from '../../src/shell/io/site.ts';
import { isoDate } from '../../src/units/date.ts';
import { freezingAt, Frozen, fullFrom, watchingDisk, type Effect } from './diskEffects.ts';
import { modelOf } from './powerCut.ts';
import { hashesOf } from './workbench.ts';

const PEOPLE = ['finch', 'flag', 'later', 'gone', 'fresh'];
const MARKS: Readonly<Record<string, string>> = { old: '01d01d01', new: '0e0e0e0e', next: '0f0f0f0f' };

let top: string;

/** The real lock, journal, swap and manifest; small files in place of leaflets. */
function write(out: string, work: (site: Site) => void): Promise<void> {
  return orTakenAway(out, ['flag'], () =>
    locked(out, async (hold) => {
      const site = openSite(out, { on: isoDate('2026-11-25')!, loadleaf: '0', isHasty: false, hold });
      work(site);
      site.finish();
    }),
  );
}

/** Everything that can become of a person: withdrawn, changed, a revision more, new, gone. */
function change(site: Site): void {
  site.withdraw('flag', { because: ['screen-block'], lines: ['A red flag.'] });
  page(site, 'new');
  give(site, 'finch', 1, 'new');
  give(site, 'later', 2, 'new');
  give(site, 'fresh', 1, 'new');
  site.withdraw('gone', { because: ['no-consult'], lines: ['No consult.'] });
}

function page(site: Site, word: string): void {
  site.write({ path: 'public/index.html', bytes: `page ${word}` });
}

function give(site: Site, alias: string, revision: number, word: string): void {
  const mark = MARKS[word] ?? '';
  const files = [
    { name: 'leaflet.html', bytes: `<p data-mark="${mark}">` },
    { name: 'leaflet.pdf', bytes: `paper ${word} mark ${mark}` },
    { name: 'record.json', bytes: JSON.stringify({ mark, revision }, null, 2) },
    { name: 'note.txt', bytes: `note ${word} Mark ${mark}.\n` },
    ...(word === 'new' ? [{ name: 'letter.txt', bytes: `letter Mark ${mark}\n` }] : []),
  ];
  site.issue({ alias, revision, mark, files, loadleaf: '0', library: '0' });
}

const treeOf = (out: string, alias: string) => hashesOf(join(out, 'private', alias));
/** Under its journal name, or where what must not be followed is taken away to. */
const waitingOf = (out: string, alias: string) =>
  ['old', 'away'].map((name) => join(out, `private/.${alias}.loadleaf-${name}`)).find(existsSync) ?? '';

/** Each person has the old folder or the new one, to the last file; in between the old one lies under its journal name. */
function expectWhole(out: string, at: string): void {
  for (const alias of PEOPLE) {
    const [old, fresh] = [treeOf(join(top, 'old'), alias), treeOf(join(top, 'new'), alias)];
    if (existsSync(join(out, 'private', alias)))
      expect([old, fresh], `${alias} ${at}`).toContainEqual(treeOf(out, alias));
    else if (Object.keys(old).length > 0)
      expect(hashesOf(waitingOf(out, alias)), `${alias} ${at}`).toEqual(old);
  }
}

/** The next build has something else to write, so that nothing heals by being the same. */
async function expectHeals(out: string, at: string): Promise<void> {
  const next = (site: Site) => {
    page(site, 'next');
    give(site, 'finch', 1, 'next');
    give(site, 'later', 2, 'next');
    for (const alias of ['flag', 'gone', 'fresh'])
      site.withdraw(alias, { because: ['screen-block'], lines: ['A red flag.'] });
  };
  await watchingDisk(
    out,
    () => undefined,
    () => write(out, next),
  );
  const files = (alias: string) => Object.keys(treeOf(out, alias));
  const four = ['leaflet.html', 'leaflet.pdf', 'note.txt', 'record.json'];
  expect(files('finch'), at).toEqual(['issued.jsonl', ...four].sort());
  expect(
    files('later').filter((name) => !name.startsWith('r')),
    at,
  ).toEqual(['issued.jsonl', ...four.slice(0, 3)]);
  expect(
    files('later').filter((name) => name.startsWith('r1/')),
    at,
  ).toEqual(four.map((name) => `r1/${name}`));
  expect(files('flag'), at).toEqual([
    'issued.jsonl',
    ...[...four, 'why.txt'].map((name) => `set-aside/${name}`),
  ]);
  expect(files('gone'), at).toEqual(files('flag'));
  for (const alias of peopleIn(out)) {
    const chain = readFileSync(join(out, 'private', alias, 'issued.jsonl'), 'utf8');
    expect(brokenAt(chain), `${alias} ${at}`).toBe(null);
    expect(reaches(chain, readEnds(out)[alias]!), `${alias} ${at}`).toBe(true);
  }
  expect(readdirSync(out).sort(), at).toEqual(['manifest.json', 'private', 'public']);
  expect(
    Object.keys(hashesOf(out)).filter((path) => /loadleaf-/.test(path)),
    at,
  ).toEqual([]);
}

/** All changes of one build, in their order. */
async function effectsOf(): Promise<Effect[]> {
  const out = copyOld('watched');
  const effects: Effect[] = [];
  await watchingDisk(
    out,
    (effect) => effects.push(effect),
    () => write(out, change),
  );
  return effects.map((effect) => ({
    ...effect,
    path: effect.path.slice(out.length),
    to: effect.to.slice(out.length),
  }));
}

/** The process that died held the lock; this one lives on in its place. */
function breakLock(out: string): void {
  for (const name of readdirSync(out))
    if (name.startsWith('.loadleaf-lock')) rmSync(join(out, name), { recursive: true });
}

const faultOf = (out: string, before: (effect: Effect) => void): Promise<unknown> =>
  watchingDisk(out, before, () => write(out, change)).then(
    () => null,
    (error: unknown) => error,
  );

const copyOld = (name: string) => {
  const out = join(top, name);
  rmSync(out, { recursive: true, force: true });
  cpSync(join(top, 'old'), out, { recursive: true });
  return out;
};

/** The tests, which look at every so many-th state. */
export function wholeSets(every: number): void {
  beforeAll(async () => {
    top = mkdtempSync(join(tmpdir(), 'loadleaf-sets-'));
    await write(join(top, 'old'), (site) => {
      page(site, 'old');
      for (const alias of ['finch', 'flag', 'later', 'gone']) give(site, alias, 1, 'old');
    });
    cpSync(join(top, 'old'), join(top, 'new'), { recursive: true });
    await write(join(top, 'new'), change);
  });
  afterAll(() => rmSync(top, { recursive: true }));

  describe('stopped at its nth change of the disk', () => {
    it('a build leaves every person one whole set, and the next one heals', async () => {
      const { length } = await effectsOf();
      expect(length).toBeGreaterThan(80);
      for (let last = 1; last <= length; last += every) {
        const out = copyOld('killed');
        const fault = await faultOf(out, freezingAt(last));
        // Of the lock's own end nobody needs to know.
        if (fault !== null) expect(fault).toBeInstanceOf(Frozen);
        expectWhole(out, `before change ${last}`);
        breakLock(out);
        await expectHeals(out, `after change ${last}`);
      }
    });
  });

  describe('a disk that is full from its nth change on', () => {
    it('leaves every person one whole set, and what must not be followed is in force nowhere', async () => {
      const effects = await effectsOf();
      let filled = 0;
      for (let last = 1; last <= effects.length; last += every) {
        const out = copyOld('full');
        const fault = await faultOf(out, fullFrom(last));
        if (fault === null) continue;
        filled += 1;
        expect(fault, `${last}`).toMatchObject({ exit: 74 });
        expectWhole(out, `full from ${last}`);
        // Whatever the disk: a leaflet against which a red flag stands is gone from its place.
        expect(existsSync(join(out, 'private/flag/leaflet.html')), `flag, full from ${last}`).toBe(false);
        expect(
          Object.keys(hashesOf(out)).filter((path) => /loadleaf-(part|new)/.test(path)),
          `${last}`,
        ).toEqual([]);
        await expectHeals(out, `full from ${last}`);
      }
      expect(filled).toBeGreaterThan(60 / every);
    });
  });

  describe('a power cut', () => {
    it('at any moment leaves every person one whole set, and the next build heals', async () => {
      const effects = await effectsOf();
      const random = randomOf(20261125);
      const picks: ((most: number) => number)[] = [() => 0, (most) => most, random, random];
      for (let cut = 1; cut <= effects.length; cut += every) {
        for (const [way, pick] of picks.entries()) {
          const disk = modelOf(join(top, 'old'));
          for (const effect of effects.slice(0, cut)) disk.apply(effect);
          const out = join(top, 'cut');
          rmSync(out, { recursive: true, force: true });
          disk.leave(out, pick);
          const at = `cut after ${cut}, way ${way}`;
          breakLock(out);
          expectWhole(out, at);
          await expectHeals(out, at);
        }
      }
    });
  });
}

/** Whole numbers from 0 to `most`, the same in every run (Park and Miller 1988, the minimal standard). */
function randomOf(seed: number): (most: number) => number {
  let state = seed;
  return (most) => {
    state = (state * 48271) % 2147483647;
    return state % (most + 1);
  };
}
