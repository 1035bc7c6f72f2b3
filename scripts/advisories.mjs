// Asks npm's source of advisories about the packages that run. Ends with 0 when none is known, 1 when there are some, and
// 75 when the source could not be asked: then nothing was checked, and that is said.
import { spawnSync } from 'node:child_process';
import { pathToFileURL } from 'node:url';
import { TOP } from './lock.mjs';

/** What npm answered, in words and as an exit code. `answer`: the text of `npm audit --json`. */
export function verdictOf(answer) {
  const value = parsed(answer);
  const counts = value?.metadata?.vulnerabilities;
  if (typeof counts?.total !== 'number') {
    const why =
      typeof value?.message === 'string' ? value.message.replace(/https?:\S+/g, 'the registry') : 'no answer';
    return { exit: 75, says: `The source of advisories could not be asked (${why}): nothing was checked.` };
  }
  if (counts.total === 0) return { exit: 0, says: 'No advisory is known of any package that runs.' };
  const rows = Object.values(value.vulnerabilities ?? {}).map(
    ({ name, severity, range }) => `${severity}: ${name} ${range}`,
  );
  return { exit: 1, says: [`Advisories of ${counts.total} packages that run:`, ...rows].join('\n') };
}

function parsed(text) {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { stdout } = spawnSync('npm', ['audit', '--omit=dev', '--json'], { cwd: TOP, encoding: 'utf8' });
  const { exit, says } = verdictOf(stdout ?? '');
  process.stdout.write(`${says}\n`);
  process.exitCode = exit;
}
