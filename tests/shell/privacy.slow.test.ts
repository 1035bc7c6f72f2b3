/** Private by default: who may read a leaflet, what keeps it out of a repository, and where none may be built. */
import { spawnSync } from 'node:child_process';
import { chmodSync, lstatSync, mkdirSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { cpSync, existsSync, symlinkSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadleaf, runHere, smallClinic, type Clinic } from './workbench.ts';

let own: Clinic;
beforeAll(() => {
  own = smallClinic();
});
afterAll(() => own.remove());

const modeOf = (place: string) => (lstatSync(place).mode & 0o777).toString(8);

/** The modes there are below a folder and of itself. */
function modesIn(folder: string): { readonly folders: string[]; readonly files: string[] } {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  const of = (are: boolean) =>
    entries
      .filter((one) => one.isDirectory() === are)
      .map(({ parentPath, name }) => modeOf(join(parentPath, name)));
  return { folders: [...new Set([modeOf(folder), ...of(true)])], files: [...new Set(of(false))] };
}

const CLOSED = { folders: ['700'], files: ['600'] };
const build = (out: string, shell?: string, node: readonly string[] = []) =>
  loadleaf(['build', '--content', own.content, '--out', out], {
    ...(shell === undefined ? {} : { shell }),
    node,
  });

describe.skipIf(process.platform === 'win32')('who may read', () => {
  it.each(['umask 000', 'umask 022', 'umask 077', 'umask 277'])(
    'private folders and files is their user alone, with %s',
    (umask) => {
      const out = join(own.top, umask.replace(' ', '-'));
      mkdirSync(out);
      expect(build(out, umask)).toMatchObject({ exit: 0, err: '' });
      expect(modesIn(join(out, 'private'))).toEqual(CLOSED);
      expect(modeOf(join(out, 'manifest.json'))).toBe('600');
    },
  );

  it('a public page is everybody', () => {
    const out = join(own.top, 'umask-022');
    expect(modeOf(join(out, 'public'))).toBe('755');
    expect(modeOf(join(out, 'public/index.html'))).toBe('644');
  });

  it('what an older build left open is nobody else after the next', () => {
    const out = join(own.top, 'open');
    expect(build(out).exit).toBe(0);
    for (const place of ['private', 'private/finch']) chmodSync(join(out, place), 0o755);
    for (const place of ['private/finch/leaflet.pdf', 'private/PRIVATE.txt'])
      chmodSync(join(out, place), 0o644);
    expect(build(out).exit).toBe(0);
    expect(modesIn(join(out, 'private'))).toEqual(CLOSED);
  });

  it('a consult that was begun is its user alone, a card is not', async () => {
    const consults = join(own.top, 'patients');
    const run = await runHere(['new', 'consult', 'wren', '--content', own.content, '--consults', consults]);
    expect(run.exit).toBe(66);
    mkdirSync(consults);
    const words = ['--content', own.content, '--consults', consults];
    expect((await runHere(['new', 'consult', 'wren', ...words])).exit).toBe(0);
    expect(modeOf(join(consults, 'wren-r1.md'))).toBe('600');
    expect((await runHere(['new', 'exercise', 'wall-sit', '--content', own.content])).exit).toBe(0);
    expect(modeOf(join(own.content, 'exercises/wall-sit.md'))).not.toBe('600');
    rmSync(join(own.content, 'exercises/wall-sit.md'));
  });

  it('a disk without modes cannot be told: that is said, once', () => {
    // As such a disk is seen: every mode is the same, and setting one changes nothing.
    const without = join(own.top, 'no-modes.mjs');
    writeFileSync(
      without,
      `import fs from 'node:fs'; import { syncBuiltinESMExports } from 'node:module';
       const look = fs.lstatSync;
       fs.lstatSync = (...words) => { const found = look(...words); if (found) found.mode |= 0o777; return found; };
       fs.chmodSync = () => undefined;
       syncBuiltinESMExports();`,
    );
    const run = build(join(own.top, 'no-modes'), undefined, ['--import', without]);
    expect(run.exit).toBe(0);
    expect(run.err.split('keeps no file modes')).toHaveLength(2);
  });

  it('a folder that a private one is a link to keeps its mode', () => {
    const out = join(own.top, 'linked');
    const elsewhere = join(own.top, 'elsewhere');
    mkdirSync(out);
    mkdirSync(elsewhere);
    chmodSync(elsewhere, 0o755);
    symlinkSync(elsewhere, join(out, 'private'));
    expect(build(out).exit).toBe(73);
    expect(modeOf(elsewhere)).toBe('755');
    expect(readdirSync(elsewhere)).toEqual([]);
  });
});

describe('what keeps leaflets out of a repository', () => {
  it('stands there before the first of them, and every file of theirs is left out', () => {
    const repository = join(own.top, 'repository');
    cpSync(own.content, join(repository, 'content'), { recursive: true });
    expect(git(repository, 'init', '-q').status).toBe(0);
    const watch = join(own.top, 'watch.mjs');
    writeFileSync(
      watch,
      `import fs, { writeSync } from 'node:fs'; import { syncBuiltinESMExports } from 'node:module';
       const write = fs.writeFileSync;
       fs.writeFileSync = (...words) => { writeSync(2, 'wrote ' + words[0] + '\\n'); return write(...words); };
       syncBuiltinESMExports();`,
    );
    const out = join(repository, 'site');
    const words = ['build', '--content', join(repository, 'content'), '--out', out];
    const run = loadleaf(words, { node: ['--import', watch] });
    expect(run.exit).toBe(0);
    const written = [...run.err.matchAll(/^wrote .*\/site\/(.*)$/gm)].map(([, path]) => path!);
    const theirs = written.findIndex((path) => path.startsWith('private/.finch.loadleaf-new/'));
    for (const list of ['.gitignore', 'private/..gitignore.loadleaf-part'])
      expect(written.indexOf(list), list).toBeGreaterThanOrEqual(0);
    expect(theirs).toBeGreaterThan(written.indexOf('private/..gitignore.loadleaf-part'));
    expect(git(repository, 'add', '-A').status).toBe(0);
    const taken = git(repository, 'ls-files', 'site').stdout.split('\n').filter(Boolean);
    expect(taken).toContain('site/public/index.html');
    expect(taken.filter((path) => !path.startsWith('site/public/'))).toEqual(['site/.gitignore']);
  });

  it('is put back when it was emptied; a list of somebody else stays as it is', () => {
    const out = join(own.top, 'repository/site');
    writeFileSync(join(out, 'private/.gitignore'), '');
    writeFileSync(join(out, '.gitignore'), '# mine\n');
    const content = join(own.top, 'repository/content');
    expect(loadleaf(['build', '--content', content, '--out', out]).exit).toBe(0);
    expect(readFileSync(join(out, 'private/.gitignore'), 'utf8')).toMatch(/^\*$/m);
    expect(readFileSync(join(out, '.gitignore'), 'utf8')).toBe('# mine\n');
  });
});

describe('a place where none may be built', () => {
  const inside = (name: string, files: Readonly<Record<string, string>>, way = 'site') => {
    const folder = join(own.top, name);
    for (const [file, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, file)), { recursive: true });
      writeFileSync(join(folder, file), text);
    }
    return join(folder, way);
  };
  const repository = (name: string, files: Readonly<Record<string, string>> = {}) => {
    const out = inside(name, { 'a.txt': '', ...files });
    git(join(own.top, name), 'init', '-q');
    return out;
  };

  it.each<[string, () => string, RegExp]>([
    [
      'a repository of somebody else',
      () => repository('theirs'),
      /would take in .* put the line \/private\//,
    ],
    [
      'one that leaves out pages only',
      () => repository('pages', { '.gitignore': '*.html\n' }),
      /would take in/,
    ],
    [
      'one that has a leaflet already',
      () => {
        const out = repository('has', { '.gitignore': '/site/\n', 'site/private/finch/note.txt': 'x' });
        git(join(own.top, 'has'), 'add', '-f', 'site/private/finch/note.txt');
        return out;
      },
      /has taken in files of/,
    ],
    ['a folder with .htaccess', () => inside('www', { 'site/.htaccess': '' }), /a web server may hand out/],
    ['one below it', () => inside('www2', { '.htaccess': '' }, 'a/b/site'), /there is .*\.htaccess/],
    [
      'one whose public is a server’s',
      () => inside('www3', { 'site/public/.htaccess': '' }),
      /copy only its public\//,
    ],
    ['one with an index page', () => inside('www4', { 'site/index.html': '' }), /there is .*index\.html/],
    ['a public_html', () => inside('x', {}, 'public_html/leaflets'), /it lies in .*public_html/],
    ['/var/www', () => '/var/www/leaflets', /it lies in \/var\/www/],
  ])('%s ends with 64 and the cure, and nothing is written', async (_, out, said) => {
    const place = out();
    const before = existsSync(place) ? readdirSync(place, { recursive: true }) : null;
    const run = await runHere(['build', '--content', own.content, '--out', place]);
    expect(run.exit).toBe(64);
    expect(run.err).toMatch(said);
    expect(run.err).toContain('--out');
    expect(existsSync(place) ? readdirSync(place, { recursive: true }) : null).toEqual(before);
  });

  it.each<[string, () => string]>([
    [
      'a repository that leaves everything out',
      () => repository('out', { 'site/.gitignore': '*\n!.gitignore\n' }),
    ],
    ['a workshop of pages with an index further up', () => inside('vite', { 'index.html': '' })],
  ])('%s is none', async (_, out) => {
    expect((await runHere(['build', '--content', own.content, '--out', out()])).exit).toBe(0);
  });

  it('is none for a library without consults', async () => {
    const library = join(own.top, 'library');
    cpSync(own.content, library, { recursive: true });
    rmSync(join(library, 'consults'), { recursive: true });
    const out = inside('www5', { 'site/.htaccess': '' });
    expect((await runHere(['build', '--content', library, '--out', out])).exit).toBe(0);
  });
});

function git(repository: string, ...words: string[]) {
  return spawnSync('git', ['-C', repository, ...words], { encoding: 'utf8' });
}
