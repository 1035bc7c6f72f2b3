/** What was left out of the desk's scripts to keep them small. */
import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { builtDeskScript, bundledDeskScript, OTHERS_WORDS } from '../../scripts/bundle.mjs';
import { withoutParts } from '../../scripts/leftOut.mjs';

const sourcesOf = async (name: 'worker' | 'later') =>
  (await builtDeskScript(name)).sources.filter((file) => file.startsWith('src/'));

/** Functions and tables that a file of sentences gives away. */
function given(file: string): string[] {
  return [...readFileSync(file, 'utf8').matchAll(/^export (?:function|const) (\w+)/gm)].map(
    ([, name = '']) => name,
  );
}

it('nothing in the worker asks for the sentences that were left out of it', async () => {
  const files = (await Promise.all([sourcesOf('worker'), sourcesOf('later')])).flat();
  const sentences = readdirSync('src/messages/en', { recursive: true, encoding: 'utf8' });
  const others = new Set(
    sentences
      .map((file) => `src/messages/en/${file}`)
      .filter((file) => OTHERS_WORDS.test(file))
      .flatMap(given),
  );
  expect(others.size).toBeGreaterThan(50);
  const asked = files
    .filter((file) => !OTHERS_WORDS.test(file))
    .flatMap((file) =>
      [...readFileSync(file, 'utf8').matchAll(/\bsay\.(\w+)/g)].map(([, name = '']) => name),
    );
  expect(asked.length).toBeGreaterThan(100);
  expect(asked.filter((name) => others.has(name))).toEqual([]);
});

it.each(['desk', 'worker'] as const)('the script %s leaves YAML to the one they share', async (name) => {
  const text = await bundledDeskScript(name);
  expect(text).toContain('loadleafYaml');
  expect(text).not.toContain('Nested mappings are not allowed');
});

it('the worker leaves to its second part what no leaflet beside the form needs', async () => {
  const [worker, later] = await Promise.all([sourcesOf('worker'), sourcesOf('later')]);
  for (const file of ['src/review/review.ts', 'src/outputs/html/record.ts', 'src/drafting/nextDraft.ts']) {
    expect(worker).not.toContain(file);
    expect(later).toContain(file);
  }
});

describe('a package without parts of it', () => {
  const PACKAGE = [
    'const big = { a: 1, b: 2 };',
    'class Drawn extends Base { draw() { return big; } }',
    'function packed() { return 7; }',
    'const mixin = { one() { return 1; }, two() { return 2; }, three() { return 3; } };',
    'export { big, Drawn, packed, mixin };',
  ].join('\n');

  it('has nothing in them, and all else as it was', () => {
    const parts = { gone: ['big', 'Drawn', 'packed'], kept: { mixin: ['one', 'three'] } };
    expect(withoutParts(PACKAGE, parts).split('\n')).toEqual([
      'const big = null;',
      'class Drawn {}',
      "function packed() { throw new Error('no leaflet asks for this'); }",
      'const mixin = { one() { return 1; }, three() { return 3; } };',
      'export { big, Drawn, packed, mixin };',
    ]);
  });

  it('is refused where one is not there any more', () => {
    expect(() => withoutParts(PACKAGE, { gone: ['big', 'bigger'] })).toThrow('not where it was: bigger');
  });

  // What does not stand in them is told by its words: the text itself is long.
  it.each([
    ['paper', ['Prohibited character', 'exclamsmall', 'aliceblue'], false],
    ['worker', ['How much a step, in its own unit'], false],
    ['worker', ['Counts the programmes written for this person'], true],
  ] as const)('%s and %j', async (name, words, isThere) => {
    const text = await bundledDeskScript(name);
    expect(words.filter((one) => text.includes(one))).toEqual(isThere ? words : []);
  });
});
