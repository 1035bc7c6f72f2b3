/** Cures that list what there is: whole sentences, whatever was written and however large the library is. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { problemText } from '../../src/content/problemText.ts';
import { readConsults } from '../../src/content/readConsults.ts';
import { fileOf } from '../content/sample.ts';
import { shipped } from '../programme/shipped.ts';

const OTTER = readFileSync('content/consults/otter-r1.md', 'utf8');

function fixes(from: string, to: string): string[] {
  if (!OTTER.includes(from)) throw new Error(`the consult must hold ${from}`);
  const file = fileOf(
    'consults/otter-r1.md',
    OTTER.replace(from, () => to),
  );
  return readConsults([file], shipped).problems.map((one) =>
    problemText(one, null).replace(/^.*\nFix: /s, ''),
  );
}

describe('a band', () => {
  it.each([
    ['light loop', 'write light-loop.'],
    ['Light Loop', 'write light-loop.'],
    [
      'ligth-loop',
      'write light-loop if that is meant, or add ligth-loop with its force to bandNewtons in clinic.md.',
    ],
    [
      'my red band',
      'add my-red-band with its force to bandNewtons in clinic.md and write it so here, or take it out.',
    ],
    ['long-red', 'add long-red with its force to bandNewtons in clinic.md, or take it out.'],
    [
      'rød bånd',
      'add an id of small letters, digits and hyphens with its force to bandNewtons in clinic.md and write it so here, or take it out.',
    ],
  ])('%s', (band, fix) => {
    expect(fixes('    - light-loop', `    - ${band}`)).toEqual([fix]);
  });
});

describe('a test nobody knows', () => {
  it.each([...shipped.protocols.keys()])(
    'in %s: its tests whole, as many cards as can be read',
    (protocol) => {
      const text = fixes('protocol: proximal-hamstring', `protocol: ${protocol}`).concat(
        fixes('test: arabesque', 'test: shoe-off'),
      );
      const [fix = ''] = text.filter((one) => one.includes('The tests of'));
      expect(fix).not.toContain('…');
      expect(fix.length).toBeLessThan(1600);
      expect(fix).not.toContain('more in the protocol');
      expect(fix).toMatch(/ in exercises\/\.$/);
      for (const id of fix
        .replace(/^.*The cards are /, '')
        .replace(/ and \d+ more.*$/, '')
        .split(', '))
        expect(shipped.exercises.has(id), id).toBe(true);
    },
  );

  it('beside one of nearly that name: that one first, with what it is', () => {
    expect(fixes('test: arabesque', 'test: arabesqe')[0]).toMatch(
      /^write arabesque \(.*\), if that was done\. The tests of/,
    );
  });
});
