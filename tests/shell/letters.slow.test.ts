/** A letter that cannot be printed is shown at the field it was written in. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { smallClinic, type Clinic } from './workbench.ts';

let own: Clinic;
beforeAll(() => {
  own = smallClinic();
  own.edit('consults/finch-r1.md', '\nsitting:', '\ngoals:\n  - what: run to the lake\nsitting:');
});
afterAll(() => own.remove());

interface Told {
  readonly problems: readonly { code: string; file: string; line: number; column: number; path: string }[];
}

describe('a letter the typeface lacks', () => {
  it.each([
    // file                        key                 path
    ['consults/finch-r1.md', /(\n {2}- what: )/, 'goals[0].what'],
    ['consults/finch-r1.md', /(\nclinician: )/, 'clinician'],
    ['exercises/wall-bridge.md', /(\ntitle: )/, 'title'],
    ['exercises/wall-bridge.md', /(\n## Move\n+)/, ''],
    ['clinic.md', /(\nname: )/, 'name'],
    ['protocols/own-way.md', /(\ntendon: )/, 'tendon'],
  ])('in %s after %s points at %j, line and column', async (file, key, path) => {
    const restore = own.edit(file, key, (found) => `${found}my 腰 `);
    const text = readFileSync(join(own.content, file), 'utf8');
    const before = text.slice(0, text.indexOf('腰'));
    const place = { line: before.split('\n').length, column: before.length - before.lastIndexOf('\n') };
    const runs = [await own.answer('check'), await own.answer('build')] as unknown as Told[];
    restore();
    for (const { problems } of runs) {
      const told = problems.filter(({ code }) => code === 'letter-not-in-font');
      expect(told).toMatchObject([{ file, path, ...place }]);
    }
  });
});
