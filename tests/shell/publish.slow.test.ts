/** The workflow that publishes a library: what it puts on the host, and what it leaves there. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';

interface Step {
  readonly name?: string;
  readonly run?: string;
}
const workflow = parse(readFileSync('shared/publish/library.yml', 'utf8')) as {
  readonly permissions: unknown;
  readonly jobs: { readonly library: { readonly steps: readonly Step[] } };
};
const { steps } = workflow.jobs.library;
const runOf = (name: string) => steps.find((step) => step.name === name)?.run ?? '';
const bash = (script: string, env: Readonly<Record<string, string>>, cwd: string) =>
  spawnSync('bash', ['-e', '-o', 'pipefail', '-c', script], { cwd, env: { ...process.env, ...env } });

const hasRsync = spawnSync('rsync', ['--version']).status === 0;

function folderWith(files: Readonly<Record<string, string>>): string {
  const folder = mkdtempSync(join(tmpdir(), 'publish-'));
  for (const [name, text] of Object.entries(files)) {
    mkdirSync(join(folder, name, '..'), { recursive: true });
    writeFileSync(join(folder, name), text);
  }
  return folder;
}

const filesOf = (folder: string) =>
  Object.fromEntries(
    readdirSync(folder, { recursive: true, withFileTypes: true })
      .filter((one) => one.isFile())
      .map((one) => join(one.parentPath, one.name))
      .sort()
      .map((place) => [place.slice(folder.length + 1), readFileSync(place, 'utf8')]),
  );

describe('the workflow', () => {
  it('reads only, and looks through what it publishes before it does', () => {
    expect(workflow.permissions).toEqual({ contents: 'read' });
    const names = steps.flatMap(({ name }) => name ?? []);
    expect(names.indexOf('Nothing private is in it')).toBeLessThan(names.indexOf('Publish'));
    expect(runOf('Nothing private is in it')).toContain('check --public');
    expect(runOf('Publish').match(/\brsync\b/g)).toHaveLength(1);
    expect(runOf('Publish')).toContain('--exclude=/for/');
  });

  it.each([
    ['nothing of a person', { 'clinic/clinic.md': 'x' }, 0],
    ['a consult', { 'clinic/consults/finch-r1.md': 'x' }, 1],
    ['a log', { 'clinic/finch-r1.log.csv': 'x' }, 1],
    ['the secret', { 'clinic/notes.txt': 'loadleaf-secret-1 x' }, 1],
  ])('ends early over %s: %j', (_, files, status) => {
    const { status: found } = bash(
      runOf('No consult and no secret is in the repository'),
      {},
      folderWith(files),
    );
    expect(found === 0 ? 0 : 1).toBe(status);
  });

  it.runIf(hasRsync)('leaves for/ on the host as it was (where rsync is installed)', () => {
    const host = folderWith({
      'index.html': 'old',
      'gone/index.html': 'old',
      'for/abc/index.html': 'sealed',
      'for/abc/sw.js': 'worker',
    });
    const temp = folderWith({ 'site/public/index.html': 'new', 'site/public/cards/a/index.html': 'new' });
    const copy = runOf('Publish')
      .split('\n')
      .find((line) => line.startsWith('rsync'));
    expect(bash(copy ?? 'false', { RUNNER_TEMP: temp, TARGET: `${host}/` }, temp).status).toBe(0);
    expect(filesOf(host)).toEqual({
      'cards/a/index.html': 'new',
      'for/abc/index.html': 'sealed',
      'for/abc/sw.js': 'worker',
      'index.html': 'new',
    });
  });
});
