/** What a build does when the disk does not do as it should, or another build is at work. */
import { chmodSync, existsSync, mkdirSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { loadleaf, runHere, smallClinic, type Clinic } from './workbench.ts';

let own: Clinic;
beforeAll(async () => {
  own = smallClinic();
});
afterAll(() => own.remove());

const build = (out: string) => runHere(['build', '--json', '--content', own.content, '--out', out]);

describe('a folder that cannot be written', () => {
  it.each([
    ['below a file', () => join(standing(join(own.top, 'no-folder')), 'site')],
    ['with a name too long for any disk', () => join(own.top, 'x'.repeat(300))],
    ['that a file stands for', () => standing(join(own.top, 'a-file'))],
    ['whose private part is a file', () => dirname(standing(join(made(join(own.top, 'site')), 'private')))],
    ['whose system makes no folders', () => (existsSync('/proc/self') ? '/proc/site' : '/dev/null/site')],
  ])('%s ends with 73', async (_, out) => {
    const run = await build(out());
    expect(run.exit).toBe(73);
    expect(run.err).toContain('cannot create');
    expect(JSON.parse(run.out)).toMatchObject({ ok: false, exit: 73 });
  });

  it('closed to this user ends with 73; root may write anywhere', async () => {
    const closed = join(own.top, 'closed');
    mkdirSync(closed);
    chmodSync(closed, 0o555);
    const run = await build(closed);
    chmodSync(closed, 0o755);
    expect(run.exit).toBe(process.getuid?.() === 0 ? 0 : 73);
  });

  it('deep below the longest way a system takes ends with 73 and leaves no half file', async () => {
    const deep = join(own.top, ...Array.from({ length: 20 }, () => 'y'.repeat(250)));
    expect((await build(deep)).exit).toBe(73);
  });
});

describe('a disk that takes no more bytes', () => {
  it('ends with 74, leaves no half file, and the next build heals', async () => {
    const out = join(own.top, 'full');
    // A limit on the size of a file fails as a full disk does, on any system and for root too.
    const words = ['build', '--json', '--content', own.content, '--out', out];
    const run = loadleaf(words, { shell: 'ulimit -f 60' });
    expect(run.exit).toBe(74);
    expect(run.err).toContain('cannot write');
    const left = readdirSync(out, { recursive: true, encoding: 'utf8' });
    expect(left.filter((file) => file.endsWith('part'))).toEqual([]);
    expect(left).not.toContain('manifest.json');
    expect((await build(out)).exit).toBe(0);
    expect(readdirSync(out).sort()).toEqual(['.gitignore', 'manifest.json', 'private', 'public']);
  });
});

describe('the lock', () => {
  it('held by a living process ends with 75 and changes nothing', async () => {
    const out = join(own.top, 'locked');
    const lock = join(out, '.loadleaf-lock');
    mkdirSync(lock, { recursive: true });
    writeFileSync(join(lock, String(process.ppid)), '');
    const run = await build(out);
    expect(run.exit).toBe(75);
    expect(run.err).toContain('another build is at work');
    expect(readdirSync(out)).toEqual(['.loadleaf-lock']);
  });

  it('of a build that died is taken over', async () => {
    const out = join(own.top, 'abandoned');
    const lock = join(out, '.loadleaf-lock');
    mkdirSync(lock, { recursive: true });
    writeFileSync(join(lock, '999999999'), '');
    expect((await build(out)).exit).toBe(0);
    expect(existsSync(lock)).toBe(false);
  });

  it('another manifest in the folder is not ours to overwrite', async () => {
    const out = join(own.top, 'other');
    mkdirSync(out);
    writeFileSync(join(out, 'manifest.json'), '{"name":"an app"}');
    const run = await build(out);
    expect(run.exit).toBe(73);
    expect(run.err).toContain('is no manifest of ours');
  });
});

describe('a content folder that cannot be read', () => {
  it('ends with 65 for a link to itself, with its place', async () => {
    const link = join(own.content, 'exercises/circle.md');
    symlinkSync('circle.md', link);
    const run = await own.run('check', '--json');
    rmSync(link);
    expect(run.exit).toBe(65);
    expect(JSON.parse(run.out)).toMatchObject({
      problems: [{ code: 'link-out', file: 'exercises/circle.md', line: 1 }],
    });
  });

  it('ends with 66 for a way below a file', async () => {
    const run = await runHere(['check', '--content', join(own.content, 'clinic.md/below')]);
    expect(run.exit).toBe(66);
  });

  it('ends with 66 for a folder closed to this user; root may read anywhere', async () => {
    const closed = join(own.content, 'advice');
    chmodSync(closed, 0o000);
    const run = await own.run('check');
    chmodSync(closed, 0o755);
    expect(run.exit).toBe(process.getuid?.() === 0 ? 0 : 66);
  });
});

function made(folder: string): string {
  mkdirSync(folder);
  return folder;
}

function standing(file: string): string {
  writeFileSync(file, '');
  return file;
}
