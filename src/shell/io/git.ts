/**
 * What a repository would do with private leaflets: git itself is asked where it is there, for it alone knows every kind of
 * index and the user's own ignore lists; where it is not, or does not answer, the files are read (gitIgnore.ts).
 */
import { spawnSync } from 'node:child_process';
import { relative, sep } from 'node:path';
import { isIgnored, isTracked } from './gitIgnore.ts';

/** Longer than the largest repositories take [choice]. */
const WAIT_MS = 20_000;

/** Whether the repository has taken in something below the folder. */
export function hasTakenIn(folder: string, repository: string): boolean {
  const path = relative(repository, folder).split(sep).join('/');
  const said = ask(repository, '--literal-pathspecs', 'ls-files', '-z', '--cached', '--', path);
  return said === null || said.status !== 0 ? isTracked(folder, repository) : said.stdout !== '';
}

/** Whether a file that is not there yet would be left out of the repository. */
export function isLeftOut(path: string, repository: string): boolean {
  const said = ask(repository, 'check-ignore', '-q', '--', path);
  // 0: it is left out; 1: it is not; anything else is no answer.
  return said === null || said.status > 1 ? isIgnored(path, repository) : said.status === 0;
}

function ask(repository: string, ...words: string[]): { status: number; stdout: string } | null {
  // Nothing of the repository's own may be run for a question.
  const command = ['-C', repository, '-c', 'core.fsmonitor=false', ...words];
  const { status, stdout, error } = spawnSync('git', command, {
    encoding: 'utf8',
    timeout: WAIT_MS,
    maxBuffer: Infinity,
    env: withoutGit(process.env),
    stdio: ['ignore', 'pipe', 'ignore'],
    windowsHide: true,
  });
  return error !== undefined || status === null ? null : { status, stdout };
}

// Within a hook of another repository these would lead to that one.
function withoutGit(env: NodeJS.ProcessEnv): NodeJS.ProcessEnv {
  return Object.fromEntries(Object.entries(env).filter(([name]) => !/^GIT_(?!CONFIG)/.test(name)));
}
