/** What git would leave out, held against git itself: `git check-ignore` of gitignore(5). */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { hasTakenIn, isLeftOut } from '../../src/shell/io/git.ts';
import { isIgnored, isTracked, repositoryAround } from '../../src/shell/io/gitIgnore.ts';

let top: string;
beforeAll(() => {
  top = realpathSync(mkdtempSync(join(tmpdir(), 'loadleaf-git-')));
});
afterAll(() => rmSync(top, { recursive: true }));

const FILE = 'site/private/otter/leaflet.html';

function git(repository: string, ...words: string[]) {
  return spawnSync('git', ['-C', repository, ...words], { encoding: 'utf8' });
}

function repositoryWith(lists: Readonly<Record<string, string>>): string {
  const repository = mkdtempSync(join(top, 'r-'));
  expect(git(repository, 'init', '-q').status).toBe(0);
  for (const [list, text] of Object.entries(lists)) {
    mkdirSync(dirname(join(repository, list)), { recursive: true });
    writeFileSync(join(repository, list), text);
  }
  return repository;
}

describe('a leaflet in a repository', () => {
  it.each([
    // the lists                                                   left out
    [{}, false],
    [{ '.gitignore': '' }, false],
    [{ '.gitignore': '# site\n\n' }, false],
    [{ '.gitignore': '*' }, true],
    [{ '.gitignore': 'site' }, true],
    [{ '.gitignore': 'site/' }, true],
    [{ '.gitignore': '/site/' }, true],
    [{ '.gitignore': 'site/  ' }, true],
    [{ '.gitignore': 'private' }, true],
    [{ '.gitignore': '/private' }, false],
    [{ '.gitignore': 'site/private' }, true],
    [{ '.gitignore': '/site/private/' }, true],
    [{ '.gitignore': 'private/otter' }, false],
    [{ '.gitignore': '**/private/' }, true],
    [{ '.gitignore': 'site/**' }, true],
    [{ '.gitignore': 'site/*' }, true],
    [{ '.gitignore': 'site/*.html' }, false],
    [{ '.gitignore': '*.html' }, true],
    [{ '.gitignore': 'site/**/leaflet.html' }, true],
    [{ '.gitignore': 'leaflet.html/' }, false],
    [{ '.gitignore': 's?te' }, true],
    [{ '.gitignore': '[st]ite' }, true],
    [{ '.gitignore': '[!s]ite' }, false],
    [{ '.gitignore': 'site.' }, false],
    [{ '.gitignore': 'Site' }, false],
    [{ '.gitignore': '\\!site\n\\#site' }, false],
    [{ '.gitignore': 's\\ite' }, true],
    [{ '.gitignore': 'site\r\n' }, true],
    [{ '.gitignore': 'site/*\n!site/private' }, false],
    [{ '.gitignore': 'site/\n!site/private' }, true],
    [{ '.gitignore': '*\n!*.html\n!*/' }, false],
    [{ '.gitignore': '!site\nsite' }, true],
    [{ 'site/.gitignore': '*\n!.gitignore' }, true],
    [{ 'site/.gitignore': '/private/' }, true],
    [{ 'site/.gitignore': '/site/private/' }, false],
    [{ 'site/private/.gitignore': '*' }, true],
    [{ '.gitignore': 'site/private/*', 'site/.gitignore': '!private/otter' }, false],
    [{ '.gitignore': '!private', '.git/info/exclude': 'private' }, false],
    [{ '.git/info/exclude': 'private' }, true],
    [{ '.gitignore': '[' }, false],
  ])('with %j: %s', (lists, leftOut) => {
    const repository = repositoryWith(lists as Record<string, string>);
    const status = git(repository, 'check-ignore', '-q', '--no-index', FILE).status;
    expect(status, 'git itself').toBe(leftOut ? 0 : 1);
    expect(isIgnored(join(repository, FILE), repository)).toBe(leftOut);
    expect(repositoryAround(join(repository, FILE))).toBe(repository);
  });

  it('is taken in when it was added, whatever the lists say now', () => {
    const repository = repositoryWith({ [FILE]: 'x', 'site/private-notes.txt': 'y' });
    git(repository, 'add', 'site/private-notes.txt');
    expect(isTracked(join(repository, 'site/private'), repository)).toBe(false);
    git(repository, 'add', FILE);
    expect(isTracked(join(repository, 'site/private'), repository)).toBe(true);
  });

  it('of another work tree goes by that one’s own index', () => {
    const repository = repositoryWith({ 'a.txt': 'a' });
    git(repository, 'add', '.');
    git(repository, '-c', 'user.name=a', '-c', 'user.email=a@example.org', 'commit', '-qm', 'a');
    const tree = join(top, 'tree');
    expect(git(repository, 'worktree', 'add', '-q', tree).status).toBe(0);
    expect(repositoryAround(join(tree, FILE))).toBe(tree);
    expect(isTracked(join(tree, 'site/private'), tree)).toBe(false);
    mkdirSync(dirname(join(tree, FILE)), { recursive: true });
    writeFileSync(join(tree, FILE), 'x');
    git(tree, 'add', FILE);
    expect(isTracked(join(tree, 'site/private'), tree)).toBe(true);
  });

  describe.each([
    ['git itself', hasTakenIn],
    ['our own reading', isTracked],
  ])('asked of %s', (_, isTaken) => {
    const many = Object.fromEntries(
      Array.from({ length: 300 }, (__, index) => [`site/public/${'x'.repeat(index)}.txt`.slice(0, 240), 'x']),
    );
    it.each<[string, (repository: string) => void]>([
      ['an index of format 2', () => undefined],
      ['an index of format 3', (r) => git(r, 'add', '--intent-to-add', '.')],
      ['an index of format 4', (r) => git(r, 'update-index', '--index-version', '4')],
      ['a split index', (r) => git(r, 'update-index', '--split-index')],
    ])('is taken in by %s only when it was added', (__, change) => {
      const repository = repositoryWith({ 'private/a.txt': 'a', ...many, 'site/private-notes.txt': 'y' });
      git(repository, 'add', '.');
      change(repository);
      const folder = join(repository, 'site/private');
      expect(isTaken(folder, repository)).toBe(false);
      mkdirSync(dirname(join(repository, FILE)), { recursive: true });
      writeFileSync(join(repository, FILE), 'x');
      expect(git(repository, 'add', FILE).status).toBe(0);
      expect(isTaken(folder, repository)).toBe(true);
    });

    it('is taken in by a sparse index that has the folder alone', () => {
      const repository = repositoryWith({ 'a.txt': 'a', [FILE]: 'x' });
      git(repository, 'add', '.');
      git(repository, '-c', 'user.name=a', '-c', 'user.email=a@example.org', 'commit', '-qm', 'a');
      expect(git(repository, 'sparse-checkout', 'set', '--cone', '--sparse-index', 'other').status).toBe(0);
      expect(isTaken(join(repository, 'site/private'), repository)).toBe(true);
      expect(isTaken(join(repository, 'other/private'), repository)).toBe(false);
    });
  });

  it('is left out by a list of the user’s own when git is there to say so', () => {
    const own = mkdtempSync(join(top, 'own-'));
    writeFileSync(join(own, 'ignore'), 'private/\n');
    const repository = repositoryWith({ 'a.txt': 'a' });
    expect(isLeftOut(join(repository, FILE), repository)).toBe(false);
    git(repository, 'config', 'core.excludesFile', join(own, 'ignore'));
    expect(isLeftOut(join(repository, FILE), repository)).toBe(true);
    // Without git nobody knows of that list: it counts as taken in.
    expect(isIgnored(join(repository, FILE), repository)).toBe(false);
  });

  it('is read from the files where git does not answer', () => {
    const repository = repositoryWith({ '.gitignore': 'site/', [FILE]: 'x' });
    git(repository, 'add', '-f', FILE);
    writeFileSync(join(repository, '.git/HEAD'), 'spoilt');
    expect(git(repository, 'ls-files').status).toBe(128);
    expect(isLeftOut(join(repository, 'site/private/other'), repository)).toBe(true);
    expect(hasTakenIn(join(repository, 'site/private'), repository)).toBe(true);
    expect(hasTakenIn(join(repository, 'site/public'), repository)).toBe(false);
  });
});
