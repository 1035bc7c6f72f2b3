/**
 * What git would make of a path, told from `.git` and the `.gitignore` files alone (gitignore(5)), for where git itself is
 * not there. A user's own ignore list is not read: what it alone leaves out counts as taken in, which is the safe way.
 */
import { existsSync, readFileSync, statSync } from 'node:fs';
import { dirname, join, relative, resolve, sep } from 'node:path';
import { hasTaken } from './gitIndex.ts';

/** The nearest folder above that holds `.git`; null when there is none. */
export function repositoryAround(path: string): string | null {
  for (let at = path; ; at = dirname(at)) {
    if (existsSync(join(at, '.git'))) return at;
    if (at === dirname(at)) return null;
  }
}

/** Whether a file that is not there yet would be left out of the repository. */
export function isIgnored(path: string, repository: string): boolean {
  const steps = relative(repository, path).split(sep);
  const rules = [...rulesOf(join(gitFolder(repository), 'info', 'exclude'), 0)];
  for (const index of steps.keys()) {
    rules.push(...rulesOf(join(repository, ...steps.slice(0, index), '.gitignore'), index));
    const isFolder = index < steps.length - 1;
    const last = rules.findLast((rule) => matches(rule, steps.slice(0, index + 1), isFolder));
    // Below a folder that is left out nothing is taken in again.
    if (last?.leavesOut === true) return true;
  }
  return false;
}

/** Whether the repository has taken in something below the folder, which no ignore list takes out again. */
export function isTracked(folder: string, repository: string): boolean {
  return hasTaken(gitFolder(repository), relative(repository, folder).split(sep).join('/'));
}

interface Rule {
  readonly pattern: RegExp;
  readonly leavesOut: boolean;
  readonly foldersOnly: boolean;
  /** Steps from the repository to the list it stands in. */
  readonly depth: number;
  /** A pattern without a stroke stands for a name in any folder below. */
  readonly isName: boolean;
}

// In a worktree or a module `.git` is a file that says where the folder is.
function gitFolder(repository: string): string {
  const place = join(repository, '.git');
  if (statSync(place).isDirectory()) return place;
  const [, way = ''] = /^gitdir: (.*)$/m.exec(readFileSync(place, 'utf8')) ?? [];
  return resolve(repository, way);
}

function rulesOf(list: string, depth: number): Rule[] {
  if (statSync(list, { throwIfNoEntry: false })?.isFile() !== true) return [];
  return readFileSync(list, 'utf8')
    .split(/\r?\n/)
    .flatMap((line) => ruleOf(line, depth) ?? []);
}

function ruleOf(line: string, depth: number): Rule | null {
  const text = line.replace(/(?<!\\) +$/, '');
  if (text === '' || text.startsWith('#')) return null;
  const leavesOut = !text.startsWith('!');
  const written = leavesOut ? text : text.slice(1);
  const foldersOnly = written.endsWith('/');
  const body = foldersOnly ? written.slice(0, -1) : written;
  const pattern = patternOf(body.replace(/^\//, ''));
  return pattern === null ? null : { pattern, leavesOut, foldersOnly, depth, isName: !body.includes('/') };
}

const PARTS = /\/\*\*\/|^\*\*\/|\/\*\*$|\*+|\?|\[[!^]?\]?[^\]]*\]|\\.|[^]/g;

/** Null for what is no pattern: git passes it over. */
function patternOf(text: string): RegExp | null {
  try {
    return new RegExp(`^${text.replace(PARTS, partOf)}$`);
  } catch {
    return null;
  }
}

function partOf(part: string): string {
  if (part === '/**/') return '/(?:.*/)?';
  if (part === '**/') return '(?:.*/)?';
  if (part === '/**') return '/.+';
  if (part.startsWith('*')) return '[^/]*';
  if (part === '?') return '[^/]';
  if (part.length > 2 && part.startsWith('[')) return `(?!/)${part.replace(/^\[!/, '[^')}`;
  const sign = part.startsWith('\\') && part.length > 1 ? part.slice(1) : part;
  return sign.replace(/[\\^$.*+?()[\]{}|/]/, '\\$&');
}

function matches({ pattern, foldersOnly, depth, isName }: Rule, steps: readonly string[], isFolder: boolean) {
  if (foldersOnly && !isFolder) return false;
  return pattern.test(isName ? (steps.at(-1) ?? '') : steps.slice(depth).join('/'));
}
