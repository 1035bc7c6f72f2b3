/** A temporary clinic and the compiled command line, for tests of what a command does on a disk. */
import { spawnSync } from 'node:child_process';
import {
  cpSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { createHash } from 'node:crypto';

const MAIN = resolve('dist/build/main.js');

export interface Run {
  readonly exit: number | null;
  readonly out: string;
  readonly err: string;
}

export interface Clinic {
  readonly top: string;
  readonly content: string;
  readonly site: string;
  /** Runs a command with this clinic's folders. */
  run(...words: string[]): Run;
  /** Replaces the first occurrence in a file of the content folder; throws when there is none. */
  edit(file: string, from: string | RegExp, to: string): void;
  /** Path to SHA-256 of every file of the site. */
  hashes(): Record<string, string>;
  remove(): void;
}

/** A copy of the shipped content in a folder of its own. */
export function clinic(): Clinic {
  const top = mkdtempSync(join(tmpdir(), 'loadleaf-clinic-'));
  const content = join(top, 'content');
  const site = join(top, 'site');
  cpSync('content', content, { recursive: true });
  return {
    top,
    content,
    site,
    run: (...words) => loadleaf([...words, '--content', content, '--out', site]),
    edit: (file, from, to) => {
      const path = join(content, file);
      const before = readFileSync(path, 'utf8');
      const after = before.replace(from, to);
      if (after === before) throw new Error(`${file} has no ${String(from)}`);
      writeFileSync(path, after);
    },
    hashes: () => hashesOf(site),
    remove: () => rmSync(top, { recursive: true, force: true }),
  };
}

export function loadleaf(
  words: readonly string[],
  options: { env?: Record<string, string>; cwd?: string; node?: readonly string[] } = {},
): Run {
  const { status, stdout, stderr } = spawnSync(process.execPath, [...(options.node ?? []), MAIN, ...words], {
    encoding: 'utf8',
    cwd: options.cwd ?? process.cwd(),
    env: { ...process.env, NO_COLOR: '', ...options.env },
  });
  return { exit: status, out: stdout, err: stderr };
}

export function hashesOf(folder: string): Record<string, string> {
  if (!existsSync(folder)) return {};
  const files = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter((file) =>
    statSync(join(folder, file)).isFile(),
  );
  return Object.fromEntries(
    files.sort().map((file) => [
      file,
      createHash('sha256')
        .update(readFileSync(join(folder, file)))
        .digest('hex'),
    ]),
  );
}
