/** Parts that were built apart and joined are the site of a single build; what does not belong together is not joined. */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { partOf } from '../../src/shell/io/sources.ts';
import { hashesOf, runHere, smallClinic, withoutHistory, type Clinic } from './workbench.ts';

const PEOPLE = ['kite', 'lark', 'mole', 'newt', 'wren'];

let own: Clinic;
beforeAll(async () => {
  own = smallClinic();
  const text = readFileSync(join(own.content, 'consults/finch-r1.md'), 'utf8');
  for (const alias of PEOPLE)
    writeFileSync(
      join(own.content, `consults/${alias}-r1.md`),
      text.replace('alias: finch', `alias: ${alias}`),
    );
  for (const part of [1, 2, 3])
    expect(
      await runHere(['build', '--quiet', '--content', own.content, '--out', at(part), '--part', `${part}/3`]),
    ).toMatchObject({ exit: 0, err: '' });
});
afterAll(() => own.remove());

const at = (part: number) => join(own.top, `part-${part}`);
const joined = () => join(own.top, 'joined');
const joinAll = (...parts: readonly number[]) => runHere(['join', ...parts.map(at), '--out', joined()]);

describe('join', () => {
  it('makes of all parts the site of a single build, byte for byte', async () => {
    await own.run('build', '--quiet');
    expect(await joinAll(1, 2, 3)).toMatchObject({ exit: 0, err: '' });
    expect(withoutHistory(hashesOf(joined()))).toEqual(own.hashes());
    expect(readFileSync(join(joined(), 'manifest.json'))).toEqual(
      readFileSync(join(own.site, 'manifest.json')),
    );
  });

  it('changes nothing the second time, whatever the order', async () => {
    const before = hashesOf(joined());
    expect(await joinAll(3, 1, 2)).toMatchObject({ exit: 0 });
    expect(hashesOf(joined())).toEqual(before);
  });

  it('has each person in one part by the alias alone', () => {
    for (const alias of ['finch', ...PEOPLE])
      for (const part of [1, 2, 3])
        expect(existsSync(join(at(part), 'private', alias)), alias).toBe(partOf(alias, 3) === part);
  });

  // Worked out with coreutils sha256sum and shell arithmetic: first 32 bits modulo the number of parts, and one.
  it.each([
    ['finch', 1],
    ['otter', 3],
    ['wren', 5],
  ])('%s is in part %i of 8, for good', (alias, part) => expect(partOf(alias, 8)).toBe(part));

  it('takes out of force who is in no part', async () => {
    const part = partOf('finch', 3);
    await joinAll(...[1, 2, 3].filter((one) => one !== part));
    expect(existsSync(join(joined(), 'private/finch/leaflet.html'))).toBe(false);
    expect(existsSync(join(joined(), 'private/finch/set-aside/leaflet.html'))).toBe(true);
    await joinAll(1, 2, 3);
    expect(existsSync(join(joined(), 'private/finch/leaflet.html'))).toBe(true);
  });

  it.each([
    ['the same part twice', () => joinAll(1, 1), 65, 'in two of the parts'],
    ['a folder without a site', () => joinAll(1, 9), 66, 'no finished site'],
    [
      'a file that hands have changed',
      async () => {
        const page = join(at(2), 'public/index.html');
        const text = readFileSync(page);
        writeFileSync(page, 'x');
        const run = await joinAll(1, 2, 3);
        writeFileSync(page, text);
        return run;
      },
      65,
      'is not as it was built',
    ],
  ])('refuses %s, and writes nothing', async (_, run, exit, says) => {
    const before = hashesOf(joined());
    const told = await run();
    expect(told.exit).toBe(exit);
    expect(told.err).toContain(says);
    expect(hashesOf(joined())).toEqual(before);
  });

  it.each(['0/3', '4/3', '3', 'a/b', '1/0'])('--part %s is no part', async (part) => {
    expect((await own.run('build', '--part', part)).exit).toBe(64);
  });
});
