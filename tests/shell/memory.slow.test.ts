/** Three hundred persons take no more memory than three: one is made and written after the other, and let go. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { loadleaf, smallClinic, type Clinic } from './workbench.ts';

// Says on standard error whose file is written, each time that it is another's.
const WATCH = `
  import fs, { writeSync } from 'node:fs'; import { syncBuiltinESMExports } from 'node:module';
  let whose = null;
  const look = (path) => {
    const [, alias] = /[\\\\/]private[\\\\/][.]?(p\\d+)[^\\\\/]*[\\\\/]/.exec(String(path)) ?? [];
    if (alias === undefined || alias === whose) return;
    whose = alias;
    writeSync(2, 'wrote ' + alias + '\\n');
  };
  for (const name of ['writeFileSync', 'renameSync']) {
    const own = fs[name];
    fs[name] = (path, ...rest) => { look(path); return own(path, ...rest); };
  }
  syncBuiltinESMExports();
`;

const ALIASES = ['p1', 'p2', 'p3', 'p4'];

let own: Clinic;
beforeAll(() => {
  own = smallClinic();
  writeFileSync(join(own.top, 'watch.mjs'), WATCH);
  const consult = readFileSync(join(own.content, 'consults/finch-r1.md'), 'utf8');
  for (const alias of ALIASES)
    writeFileSync(
      join(own.content, `consults/${alias}-r1.md`),
      consult.replace('alias: finch', `alias: ${alias}`),
    );
});
afterAll(() => own.remove());

it('writes all files of one person before the first of the next', () => {
  const run = loadleaf(['build', '--content', own.content, '--out', own.site], {
    node: ['--import', join(own.top, 'watch.mjs')],
  });
  expect(run.exit).toBe(0);
  expect([...run.err.matchAll(/^wrote (.*)$/gm)].map(([, alias]) => alias)).toEqual(ALIASES);
});

// What a build of hundreds of people holds at its peak is measured by hand (DEVELOPERS.md); this is what keeps it there.
it('lets garbage grow to twice what is alive, not more', () => {
  writeFileSync(
    join(own.top, 'flags.mjs'),
    `import v8 from 'node:v8'; import { writeSync } from 'node:fs'; import { syncBuiltinESMExports } from 'node:module';
     const set = v8.setFlagsFromString;
     v8.setFlagsFromString = (flag) => { writeSync(2, flag + '\\n'); return set(flag); };
     syncBuiltinESMExports();`,
  );
  const run = loadleaf(['--version'], { node: ['--import', join(own.top, 'flags.mjs')] });
  expect(run).toMatchObject({ exit: 0, err: '--heap-growing-percent=100\n' });
});
