/** Sealed leaflets from secret to folder: what stands where, what replaces it, and what never gets out. */
import {
  chmodSync,
  existsSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { logFile } from '../../src/content/log/format.ts';
import type { LogRow } from '../../src/content/log/columns.ts';
import { addDays, isoDate } from '../../src/units/date.ts';
import { smallClinic, type Clinic } from './workbench.ts';

const SITE = 'https://larkfield.example';
const CONSULT = 'consults/finch-r1.md';

/** A line of a log that says nothing yet. */
const NO_ENTRY: Omit<LogRow, 'date'> = {
  occasion: 1,
  kind: 'morning',
  card: '',
  side: null,
  edit: 0,
  done: null,
  sets: null,
  repetitions: null,
  seconds: null,
  loadKg: null,
  painDuring: null,
  morning: null,
  minutes: null,
  km: null,
  note: '',
};
let clinic: Clinic;
let secret: string;

beforeAll(() => {
  clinic = smallClinic();
  secret = join(clinic.top, 'keys', 'secret');
});
afterAll(() => clinic.remove());

const sealed = (...words: string[]) =>
  clinic.run('build', ...words, '--sealed', '--site', SITE, '--secret', secret);
const folders = () => {
  const place = join(clinic.site, 'public', 'for');
  return existsSync(place) ? readdirSync(place) : [];
};
const page = () => readFileSync(join(clinic.site, 'public', 'for', folders()[0] ?? '', 'index.html'), 'utf8');
const link = () => readFileSync(join(clinic.site, 'private', 'finch', 'link.txt'), 'utf8').trim();
const publicFiles = () =>
  readdirSync(join(clinic.site, 'public'), { recursive: true, withFileTypes: true })
    // Birds are among the words that the desk seals with.
    .filter((one) => one.isFile() && !/^post-[0-9a-f]{10}\.js$/.test(one.name))
    .map((one) => readFileSync(join(one.parentPath, one.name)));

/** Sets a line of the consult, and takes it back after the work. */
async function withLine(line: string, work: () => Promise<void>): Promise<void> {
  const back = clinic.edit(CONSULT, /\n---\n/, `\n${line}\n---\n`);
  try {
    await work();
  } finally {
    back();
  }
}

describe('the secret', () => {
  it('is made once, for this user alone', async () => {
    expect((await clinic.run('new', 'secret', '--secret', secret)).exit).toBe(0);
    expect(readFileSync(secret, 'utf8')).toMatch(/^loadleaf-secret-1 [A-Za-z0-9_-]{43}\n$/);
    expect(statSync(secret).mode & 0o777).toBe(0o600);
    const before = readFileSync(secret);
    expect((await clinic.run('new', 'secret', '--secret', secret)).exit).toBe(73);
    expect(readFileSync(secret)).toEqual(before);
  });

  it('never within a repository', async () => {
    const repository = join(clinic.top, 'repository');
    mkdirSync(join(repository, '.git'), { recursive: true });
    const place = join(repository, 'secret');
    expect((await clinic.run('new', 'secret', '--secret', place)).exit).toBe(64);
    expect(existsSync(place)).toBe(false);
    writeFileSync(place, readFileSync(secret), { mode: 0o600 });
    expect((await clinic.run('build', '--sealed', '--site', SITE, '--secret', place)).exit).toBe(64);
  });

  it.each([
    ['is not there', 66, () => undefined],
    [
      'may be read by others',
      64,
      (place: string) => (writeFileSync(place, readFileSync(secret)), chmodSync(place, 0o640)),
    ],
    ['is something else', 65, (place: string) => writeFileSync(place, 'a password\n', { mode: 0o600 })],
  ])('that %s stops with %i, and nothing is sealed', async (name, exit, make) => {
    const place = join(clinic.top, `${name.replaceAll(' ', '-')}`);
    make(place);
    expect((await clinic.run('build', '--sealed', '--site', SITE, '--secret', place)).exit).toBe(exit);
    expect(folders()).toEqual([]);
  });

  it.each([
    [['--sealed']],
    [['--site', SITE]],
    [['--sealed', '--site', 'http://larkfield.example']],
    [['--sealed', '--site', `${SITE}/?a=b`]],
    [['--sealed', '--site', 'larkfield']],
  ])('build %j is a slip', async (words) => {
    expect((await clinic.run('build', ...words, '--secret', secret)).exit).toBe(64);
  });
});

describe('a sealed leaflet', () => {
  it('stands in a folder that tells nobody, with its worker; the link is private', async () => {
    const { exit, out, err } = await sealed();
    expect([exit, err]).toEqual([0, '']);
    expect(folders()).toHaveLength(1);
    expect(readdirSync(join(clinic.site, 'public', 'for', folders()[0]!)).sort()).toEqual([
      'index.html',
      'sw.js',
    ]);
    expect(link()).toMatch(new RegExp(`^${SITE}/for/${folders()[0]}/#[A-Za-z0-9_-]{43}$`));
    const [, key = ''] = link().split('#');
    expect(publicFiles().some((bytes) => bytes.includes(key))).toBe(false);
    expect(publicFiles().some((bytes) => bytes.includes('finch'))).toBe(false);
    expect(out + err).not.toContain(key);
    expect(page()).toContain('noindex, nofollow, noarchive');
    expect(page()).toContain('<meta name="referrer" content="no-referrer" />');
    expect(Buffer.byteLength(page())).toBeLessThan(140_000);
    expect(readFileSync(join(clinic.site, 'private', 'finch', 'message.txt'), 'utf8')).toContain(link());
    expect(readFileSync(join(clinic.site, 'private', 'finch', 'note.txt'), 'utf8')).toContain('sealed page');
  });

  it('is the same bytes when it is built again', async () => {
    const before = clinic.hashes();
    expect((await sealed()).exit).toBe(0);
    expect(clinic.hashes()).toEqual(before);
  });

  it('stays as it is in a build that seals nothing, and after a Problem that is no danger', async () => {
    const before = page();
    const { exit, err } = await clinic.run('build');
    expect([exit, err]).toEqual([
      0,
      'Sealed leaflets stand as they were; build with --sealed to renew them.\n',
    ]);
    expect(page()).toBe(before);
    const back = clinic.edit(CONSULT, /\nminutesPerDay: .*/, '\nminutesPerDay: many');
    expect((await sealed()).exit).toBe(65);
    expect(page()).toBe(before);
    back();
    expect((await sealed()).exit).toBe(0);
  });

  it('has other content in a later revision under the same address', async () => {
    const [before, address] = [page(), link()];
    const text = readFileSync(join(clinic.content, CONSULT), 'utf8');
    const second = join(clinic.content, 'consults', 'finch-r2.md');
    writeFileSync(second, text.replace(/^revision: .*$/m, 'revision: 2'));
    expect((await sealed()).err).toBe('');
    expect(link()).toBe(address);
    expect(page()).not.toBe(before);
    rmSync(second);
    await sealed();
    expect(page()).toBe(before);
  });

  const isWithdrawn = () =>
    page().includes('data-sealed="withdrawn"') && !page().includes('application/jose');

  it.each([
    ['withdraw: yes', [], true],
    ['withdrawOn: 2026-11-25', ['--on', '2026-11-25'], true],
    ['withdrawOn: 2026-11-25', ['--on', '2026-11-24'], false],
  ])('%s, %j: withdrawn %s', async (line, words, isGone) => {
    await withLine(line, async () => {
      await sealed(...words);
      expect(isWithdrawn()).toBe(isGone);
      expect(page().includes('Larkfield')).toBe(true);
    });
    await sealed();
    expect(isWithdrawn()).toBe(false);
  });

  it.each([
    ['a screen that blocks, without the secret', () => clinic.edit(CONSULT, /footDrop: no/, 'footDrop: yes')],
    [
      'the same beside an error in the library',
      () => {
        const backs = [
          clinic.edit(CONSULT, /footDrop: no/, 'footDrop: yes'),
          clinic.edit('exercises/wall-bridge.md', /\ntitle: .*/, '\ntitel: x'),
        ];
        return () => backs.forEach((back) => back());
      },
    ],
  ])('%s: withdrawn', async (_, spoil) => {
    const back = spoil();
    expect((await clinic.run('build')).exit).toBe(65);
    expect(isWithdrawn()).toBe(true);
    back();
    await sealed();
    expect(isWithdrawn()).toBe(false);
  });

  /** Scores of mornings from the start on, as they are shared from the phone. */
  const withLog = async (scores: readonly number[], work: () => Promise<void>) => {
    const consult = readFileSync(join(clinic.content, CONSULT), 'utf8');
    const [, start = ''] = /^startOn: (.*)$/m.exec(consult) ?? [];
    const place = join(clinic.content, 'consults', 'finch-r1.log.csv');
    const entries = scores.map((morning, at) => ({
      ...NO_ENTRY,
      date: addDays(isoDate(start)!, at),
      morning,
    }));
    writeFileSync(place, logFile(entries));
    await work();
    rmSync(place);
  };

  it('a log that leads to "stop and be seen", without the secret: withdrawn in the same build; with calmer mornings it comes back', async () => {
    const [on, calm] = [
      ['--on', '2026-12-10'],
      [2, 2, 2, 2, 2, 2, 2, 2],
    ];
    await withLog([5, 5, 5, 5, 5, 5, 5, 5], async () => {
      const { exit, err } = await clinic.run('build', ...on);
      expect(exit).toBe(0);
      expect(err).toContain('finch: the log leads to "stop and be seen": Not settled for 8 mornings');
      expect(isWithdrawn()).toBe(true);
      await sealed(...on);
      expect(isWithdrawn()).toBe(true);
      expect(existsSync(join(clinic.site, 'private', 'finch', 'link.txt'))).toBe(false);
      // An error elsewhere in the library holds nothing back that was withdrawn.
      const back = clinic.edit('exercises/wall-bridge.md', /\ntitle: .*/, '\ntitel: x');
      expect((await clinic.run('build', ...on)).err).toContain('no log was looked back on');
      expect(isWithdrawn()).toBe(true);
      back();
    });
    await withLog(calm, async () => {
      expect((await sealed(...on)).err).toBe('');
      expect(isWithdrawn()).toBe(false);
    });
    await sealed();
  });

  it('an alarm in the log: withdrawn', async () => {
    const place = join(clinic.content, 'consults', 'finch-r1.log.csv');
    const said = { kind: 'alarm', card: 'saddleNumbness', done: 'yes' } as const;
    writeFileSync(place, logFile([{ ...NO_ENTRY, date: '2026-11-26', ...said }]));
    expect((await clinic.run('build')).exit).toBe(65);
    expect(isWithdrawn()).toBe(true);
    rmSync(place);
    await sealed();
    expect(isWithdrawn()).toBe(false);
  });

  it.each([
    ['its screen cannot be read', () => clinic.edit(CONSULT, /\nscreen:\n/, '\nscreen: ['), 'cannot be read'],
    ['it has an error', () => clinic.edit(CONSULT, /\nminutesPerDay: .*/, '\nminutesPerDay: x'), 'an error'],
  ])(
    'the newest consult is wrong (%s): the last good one stands, which is said loudly',
    async (_, spoil, why) => {
      const before = page();
      const back = spoil();
      const { exit, err } = await clinic.run('build');
      expect(exit).toBe(65);
      expect(err).toContain('finch: its sealed leaflet is STILL OPEN to whoever has the link');
      expect(err).toContain(why);
      expect(page()).toBe(before);
      // What it was withdrawn by counts, however wrong the rest is.
      const again = clinic.edit(CONSULT, /\n---\n/, '\nwithdraw: yes\n---\n');
      expect((await clinic.run('build')).err).not.toContain('STILL OPEN');
      expect(isWithdrawn()).toBe(true);
      again();
      back();
      await sealed();
      expect(page()).toBe(before);
    },
  );

  it('withdrawn when its consult is gone, and empties what a phone kept', async () => {
    const { renameSync } = await import('node:fs');
    const [from, to] = [join(clinic.content, CONSULT), join(clinic.top, 'away.md')];
    renameSync(from, to);
    expect((await clinic.run('build')).exit).toBe(0);
    expect(isWithdrawn()).toBe(true);
    expect(readFileSync(join(clinic.site, 'public', 'for', folders()[0]!, 'sw.js'), 'utf8')).toContain(
      'unregister',
    );
    renameSync(to, from);
    await sealed();
  });
});

describe('check --public', () => {
  const check = () => clinic.run('check', '--public', join(clinic.site, 'public'));

  it('is content with what a build made', async () => {
    expect(await check()).toMatchObject({ exit: 0 });
  });

  it.each([
    [
      'the page of a person',
      'a.html',
      () => readFileSync(join(clinic.site, 'private', 'finch', 'leaflet.html')),
    ],
    ['a record', 'data.json', () => readFileSync(join(clinic.site, 'private', 'finch', 'record.json'))],
    ['a PDF', 'x.bin', () => readFileSync(join(clinic.site, 'private', 'finch', 'leaflet.pdf'))],
    ['a calendar', 'x', () => readFileSync(join(clinic.site, 'private', 'finch', 'sessions.ics'))],
    ['a message', 'y', () => readFileSync(join(clinic.site, 'private', 'finch', 'message.eml'))],
    ['a note', 'n', () => readFileSync(join(clinic.site, 'private', 'finch', 'note.txt'))],
    ['the text of a message', 't', () => readFileSync(join(clinic.site, 'private', 'finch', 'message.txt'))],
    ['the link', 'z', () => readFileSync(join(clinic.site, 'private', 'finch', 'link.txt'))],
    ['the secret', 's', () => readFileSync(secret)],
    ['a consult', 'finch-r1.md', () => Buffer.from('x')],
    ['a page among the sealed ones', `for/${'0'.repeat(32)}/index.html`, () => Buffer.from('<p>Hello')],
    ['a folder among them', 'for/finch/index.html', () => Buffer.from('<p>Hello')],
  ])('finds %s under the name %s', async (_, name, bytes) => {
    const place = join(clinic.site, 'public', name);
    mkdirSync(join(place, '..'), { recursive: true });
    writeFileSync(place, bytes());
    const { exit, err } = await check();
    rmSync(place);
    expect(exit).toBe(65);
    expect(err).toContain(name);
  });
});
