/** What a build writes, removes, and leaves alone. */
import {
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hashesOf, runHere, smallClinic, writeStarter, type Clinic } from './workbench.ts';

let own: Clinic;
beforeAll(async () => {
  own = smallClinic();
  writeStarter(own.content, 'consult', 'consults/wren-r1.md');
  expect(await own.run('build')).toMatchObject({ exit: 0, err: '' });
});
afterAll(() => own.remove());

/** Files of one person that may be followed. */
const inForce = (alias: string) =>
  Object.keys(own.hashes()).filter((path) => path.startsWith(`private/${alias}/`));

const FILES = ['leaflet.html', 'leaflet.pdf', 'note.txt', 'record.html', 'record.json'];

describe('a build', () => {
  it('answers with what it wrote, and writes what it names', async () => {
    const answer = await own.answer('build');
    expect(Object.keys(answer)).toEqual(['ok', 'out', 'files', 'programmes', 'problems']);
    expect(answer).toMatchObject({
      ok: true,
      out: own.site,
      programmes: [
        { alias: 'finch', revision: 1, stage: 1, step: 1 },
        { alias: 'wren', revision: 1, stage: 1, step: 1 },
      ],
      problems: [],
    });
    const files = answer['files'] as { path: string; sha256: string }[];
    const {
      'manifest.json': manifest,
      '.gitignore': around,
      'private/.gitignore': within,
      ...written
    } = own.hashes();
    for (const beside of [manifest, around, within]) expect(beside).toBeDefined();
    expect(Object.fromEntries(files.map(({ path, sha256 }) => [path, sha256]))).toEqual(written);
    for (const file of FILES) expect(written).toHaveProperty([`private/finch/${file}`]);
    expect(JSON.parse(readFileSync(join(own.site, 'manifest.json'), 'utf8'))).toEqual({ files, left: [] });
  });

  it('--fridge makes the one-page sheet for everybody asked for, which the note tells; without it that goes', async () => {
    const place = join(own.site, 'private/finch/fridge.pdf');
    const note = () => readFileSync(join(own.site, 'private/finch/note.txt'), 'utf8');
    expect((await own.run('build', 'finch', '--fridge')).exit).toBe(0);
    expect(readFileSync(place, 'latin1')).toMatch(/^%PDF-/);
    expect(note()).toContain('sheet for the fridge');
    expect(inForce('wren')).not.toContain('private/wren/fridge.pdf');
    expect((await own.run('build')).exit).toBe(0);
    expect(existsSync(place)).toBe(false);
    expect(note()).not.toContain('sheet for the fridge');
  });

  it('keeps what is not its own, the ignore file of the folder above all', async () => {
    writeFileSync(join(own.site, '.gitignore'), '*\n');
    writeFileSync(join(own.site, 'private/finch/own.txt'), 'not ours');
    await own.run('build');
    expect(readFileSync(join(own.site, '.gitignore'), 'utf8')).toBe('*\n');
    expect(readFileSync(join(own.site, 'private/finch/own.txt'), 'utf8')).toBe('not ours');
    rmSync(join(own.site, '.gitignore'));
    rmSync(join(own.site, 'private/finch/own.txt'));
  });

  it('goes by the highest revision, whatever the file is called', async () => {
    writeStarter(own.content, 'consult', 'consults/finch-r2.md');
    const odd = join(own.content, 'consults/autumn.md');
    writeFileSync(odd, readFileSync(join(own.content, 'consults/finch-r2.md')));
    rmSync(join(own.content, 'consults/finch-r2.md'));
    const programmes = (await own.answer('build'))['programmes'] as object[];
    rmSync(odd);
    expect(programmes[0]).toMatchObject({ alias: 'finch', revision: 2 });
    expect(existsSync(join(own.site, 'private/autumn'))).toBe(false);
  });

  it('puts no alias into the public part and no name into a path', async () => {
    await own.run('build', '--quiet');
    for (const path of Object.keys(own.hashes())) {
      expect(path).toMatch(
        /^(\.gitignore|manifest\.json|public\/[a-z./-]+|public\/desk\/[a-z]+-[0-9a-f]{10}\.[a-z]+|private\/(\.gitignore|PRIVATE\.txt|(finch|wren)\/[a-z.]+))$/,
      );
      // Birds are among the words that open a sealed leaflet.
      if (path.startsWith('public/') && !path.startsWith('public/desk/post-'))
        expect(/finch|wren/.test(readFileSync(join(own.site, path), 'utf8')), path).toBe(false);
    }
  });
});

describe('an error in a library or clinic file', () => {
  it.each([
    // what                          file                        from                   to                     code
    ['a card that is wrong', 'exercises/wall-bridge.md', 'kind: isometric', 'kind: isometrc', 'wrong-word'],
    ['a pose no body takes', 'exercises/wall-bridge.md', 'knee: 95', 'knee: -5', 'pose-cannot-close'],
    [
      'a letter that cannot be printed',
      'exercises/wall-bridge.md',
      /title: .*/,
      'title: 橋',
      'letter-not-in-font',
    ],
    [
      'such a letter in a word of advice',
      'advice/one-thing.md',
      /title: .*/,
      'title: 橋',
      'letter-not-in-font',
    ],
    ['a protocol that is wrong', 'protocols/own-way.md', 'angle: hipFlexion', 'angle: hip', 'wrong-word'],
    ['a clinic that is wrong', 'clinic.md', 'paper: A4', 'paper: A5', 'wrong-word'],
    ['a logo that is not there', 'clinic.md', 'paper: A4', 'paper: A4\nlogo: sign.png', 'image'],
  ] as const)('(%s) stops everything and changes nothing', async (_, file, from, to, code) => {
    const before = own.hashes();
    const restore = own.edit(file, from, to);
    const fresh = join(own.top, 'fresh');
    const runs = [await own.run('build', '--json'), await own.run('build', 'finch', '--json')];
    const elsewhere = await runHere(['build', '--content', own.content, '--out', fresh]);
    restore();
    for (const run of runs) {
      expect(run.exit).toBe(65);
      expect(JSON.parse(run.out)).toMatchObject({
        ok: false,
        files: [],
        programmes: [],
        problems: [{ code, file }],
      });
      expect(run.err).toContain('nothing was built, and nothing was changed');
    }
    expect(own.hashes()).toEqual(before);
    expect(elsewhere.exit).toBe(65);
    expect(existsSync(fresh)).toBe(false);
  });
});

describe('an error in a consult', () => {
  it('stops that programme only; its leaflet is set aside and named', async () => {
    const restore = own.edit('consults/finch-r1.md', 'massKg: 65', 'massKg: 700');
    const run = await own.run('build', '--json');
    restore();
    expect(run.exit).toBe(65);
    expect(run.err).toContain(
      `finch: no programme was written; its leaflet is set aside in ${own.site}/private/finch/set-aside.`,
    );
    expect(JSON.parse(run.out)).toMatchObject({
      ok: false,
      programmes: [{ alias: 'wren' }],
      problems: [{ code: 'out-of-range', file: 'consults/finch-r1.md' }],
    });
    expect(inForce('finch')).toEqual([]);
    expect(existsSync(join(own.site, 'private/wren/leaflet.pdf'))).toBe(true);
    expect((await own.run('build')).exit).toBe(0);
    expect(existsSync(join(own.site, 'private/finch/leaflet.pdf'))).toBe(true);
  });

  it.each([
    ['that shows only in the programme', 'footDrop: no', 'footDrop: yes', 'screen-block'],
    ['in a letter', '\nscreen:', '\ngoals: [{ what: 腰 }]\nscreen:', 'letter-not-in-font'],
  ])('%s does the same', async (_, from, to, code) => {
    await own.run('build', '--quiet');
    const restore = own.edit('consults/finch-r1.md', from, to);
    const answer = await own.answer('build');
    restore();
    expect(answer).toMatchObject({ ok: false, programmes: [{ alias: 'wren' }], problems: [{ code }] });
    expect(inForce('finch')).toEqual([]);
  });

  it('goes by the keys, and by the file name where they cannot be read', async () => {
    await own.run('build', '--quiet');
    const restore = own.edit('consults/finch-r1.md', 'alias: finch', 'alias: [finch');
    const run = await own.run('build');
    restore();
    expect(run.err).toContain('finch: no programme was written; its leaflet is set aside');
  });

  it('that is gone takes its leaflet out of force', async () => {
    await own.run('build', '--quiet');
    const file = join(own.content, 'consults/wren-r1.md');
    const text = readFileSync(file);
    rmSync(file);
    const run = await own.run('build');
    writeFileSync(file, text);
    expect(run.exit).toBe(0);
    expect(run.err).toBe(
      `wren: there is no consult any more; its leaflet is set aside in ${own.site}/private/wren/set-aside.\n`,
    );
    expect(inForce('wren')).toEqual([]);
    expect(readFileSync(join(own.site, 'private/wren/set-aside/why.txt'), 'utf8')).toContain(
      'no consult of wren',
    );
  });
});

describe('a build of some aliases', () => {
  it('makes theirs and keeps the rest, the Problems of others apart', async () => {
    await own.run('build', '--quiet');
    const before = own.hashes();
    const restores = [
      own.edit('consults/finch-r1.md', 'usualMorningPain: 2', 'usualMorningPain: 3'),
      own.edit('consults/wren-r1.md', 'massKg: 65', 'massKg: 700'),
    ];
    const run = await own.run('build', 'finch', '--json');
    restores.forEach((restore) => restore());
    const after = own.hashes();
    const changed = Object.keys({ ...before, ...after }).filter((path) => before[path] !== after[path]);
    expect(run.exit).toBe(0);
    expect(JSON.parse(run.out)).toMatchObject({ ok: true, programmes: [{ alias: 'finch' }], problems: [] });
    expect(changed).toContain('private/finch/leaflet.html');
    expect(changed.filter((path) => !path.startsWith('private/finch/'))).toEqual(['manifest.json']);
  });

  it('gives the same bytes as a build of all', async () => {
    await own.run('build', '--quiet');
    const before = own.hashes();
    rmSync(join(own.site, 'private/finch'), { recursive: true });
    expect((await own.run('build', 'finch')).exit).toBe(0);
    expect(own.hashes()).toEqual(before);
  });

  it('sets the leaflet aside of one that has an error now', async () => {
    const restore = own.edit('consults/wren-r1.md', 'massKg: 65', 'massKg: 700');
    const run = await own.run('build', 'wren');
    restore();
    expect(run.exit).toBe(65);
    expect(inForce('wren')).toEqual([]);
    expect(existsSync(join(own.site, 'private/finch/leaflet.html'))).toBe(true);
  });
});

describe('what hands have changed', () => {
  it('is set aside with the rest, lies there on, and is written anew where it stands in a set', async () => {
    await own.run('build', '--quiet');
    const note = join(own.site, 'private/finch/note.txt');
    const aside = join(own.site, 'private/finch/set-aside/note.txt');
    writeFileSync(note, 'changed by hand');
    const restore = own.edit('consults/finch-r1.md', 'massKg: 65', 'massKg: 700');
    await own.run('build');
    restore();
    expect(inForce('finch')).toEqual([]);
    expect(readFileSync(aside, 'utf8')).toBe('changed by hand');
    await own.run('build');
    expect(readdirSync(join(own.site, 'private/finch/set-aside'))).toEqual(['note.txt']);
    writeFileSync(note, 'changed by hand');
    const healed = await own.run('build');
    expect(healed.err).toContain('note.txt was changed by hand; it is written anew.');
    expect(readFileSync(note, 'utf8')).not.toBe('changed by hand');
    rmSync(dirname(aside), { recursive: true });
  });

  it('is left and named where it is no part of the library any more', async () => {
    await own.run('build', '--quiet');
    const page = Object.keys(own.hashes()).find((path) => path.startsWith('public/advice/'))!;
    writeFileSync(join(own.site, page), 'changed by hand');
    const file = join(own.content, 'advice/one-thing.md');
    const text = readFileSync(file);
    rmSync(file);
    const runs = [await own.run('build'), await own.run('build')];
    writeFileSync(file, text);
    for (const run of runs)
      expect(run.err).toContain(`${page} is no longer part of the site but was changed by hand; it is left.`);
    expect(readFileSync(join(own.site, page), 'utf8')).toBe('changed by hand');
    await own.run('build');
  });
});

describe('the walls of the output folder', () => {
  it('stand before a folder that is read', async () => {
    for (const out of [own.content, join(own.content, 'site'), join(own.content, 'consults')])
      expect((await runHere(['build', '--content', own.content, '--out', out])).exit).toBe(64);
    const link = join(own.top, 'link');
    symlinkSync(own.content, link);
    expect((await runHere(['build', '--content', own.content, '--out', join(link, 'site')])).exit).toBe(64);
  });

  it('let no leaflet out by a link', async () => {
    const site = join(own.top, 'linked');
    const outside = join(own.top, 'outside');
    mkdirSync(join(site, 'private'), { recursive: true });
    mkdirSync(outside);
    symlinkSync(outside, join(site, 'private/finch'));
    const run = await runHere(['build', '--content', own.content, '--out', site]);
    expect(run.exit).toBe(73);
    expect(run.err).toContain('leads out of');
    expect(hashesOf(outside)).toEqual({});
  });

  it('keep a file of somebody else that is in the way', async () => {
    const site = join(own.top, 'taken');
    mkdirSync(join(site, 'public'), { recursive: true });
    writeFileSync(join(site, 'public/index.html'), 'my own page');
    const run = await runHere(['build', '--content', own.content, '--out', site]);
    expect(run.exit).toBe(73);
    expect(run.err).toContain('was not written by a build');
    expect(readFileSync(join(site, 'public/index.html'), 'utf8')).toBe('my own page');
  });

  it('keep real patients out of a repository', async () => {
    const patients = join(own.top, 'patients');
    const repository = join(own.top, 'repository');
    mkdirSync(join(repository, '.git'), { recursive: true });
    mkdirSync(patients);
    const words = ['build', '--content', own.content, '--consults', patients];
    const inside = await runHere([...words, '--out', join(repository, 'site')]);
    expect(inside.exit).toBe(64);
    expect(inside.err).toContain('--out must lie outside it too');
    // The folder that is taken when --out is left out lies in the repository of the tool.
    expect((await runHere(words)).exit).toBe(64);
    expect(existsSync(join(repository, 'site'))).toBe(false);
    expect((await runHere([...words, '--out', join(own.top, 'their-site')])).exit).toBe(0);
  });
});
